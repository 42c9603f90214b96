/** For tests: works one sum out on given numbers, without drawing cases and without the other sums. */
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Layout } from '../dossier/resolve.ts';
import type { Ref, Route, Sum } from './sum.ts';

/** A rear-driven vehicle with a servo and a wireless network, on two lithium cells. */
export const PLAIN_LAYOUT: Layout = {
  chemistry: 'lipo',
  cells: 2,
  toyChemistry: 'nimh',
  toyCells: 6,
  bridge: 'mosfet',
  steering: 'servo',
  magnet: 'ferrite',
  axles: [
    { wheels: 2, driven: false, steered: true, sprung: false },
    { wheels: 2, driven: true, steered: false, sprung: false },
  ],
  motorPer: 'axle',
  motors: 1,
  motorsPerChannel: 1,
  channels: 1,
  clutch: false,
  modem: 'wlan',
  enclosure: true,
  chargerFits: true,
  protected: false,
  surfaces: [{ surface: 'asphalt, dry', share: 1 }],
};

/** Numbers by the id of the sum or input they stand for, in SI. */
export type Values = Readonly<Partial<Record<Ref, number>>>;

/** The route a sum takes when exactly these values are known. */
export function routeTaken(sum: Sum, values: Values, layout: Layout = PLAIN_LAYOUT): Route {
  const has = (id: InputId) => values[id] !== undefined;
  const taken = sum.routes.find(
    (route) =>
      (route.when?.(layout, has) ?? true) && Object.values(route.uses).every((ref) => values[ref] !== undefined),
  );
  if (taken === undefined) throw new Error(`no route of '${sum.title}' can be taken with ${Object.keys(values)}`);
  return taken;
}

/** The value of a sum from these values, by the route it takes with them. */
export function evaluateSum(sum: Sum, values: Values, layout: Layout = PLAIN_LAYOUT): number {
  const taken = routeTaken(sum, values, layout);
  const used = Object.entries(taken.uses).map(([name, ref]) => [name, values[ref] as number] as const);
  const given = Object.entries(taken.takes?.(layout) ?? {}).map(([name, { value }]) => [name, value] as const);
  return taken.value(Object.fromEntries([...used, ...given]), layout);
}
