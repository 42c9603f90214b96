/** For tests: works one sum out on given numbers, without drawing cases and without the other sums. */
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Layout } from '../dossier/resolve.ts';
import type { Finding } from './finding.ts';
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
  bridges: 1,
  clutch: false,
  modem: 'wlan',
  enclosure: true,
  chargerFits: true,
  protected: false,
  surfaces: [{ surface: 'tarmac, dry', share: 1 }],
};

/** Numbers by the id of the sum or input they stand for, in SI. */
export type Values = Readonly<Partial<Record<Ref, number>>>;

/** The route a sum takes when exactly these values are known, those named last by assumption only. */
export function routeTaken(
  sum: Sum,
  values: Values,
  layout: Layout = PLAIN_LAYOUT,
  assumed: readonly InputId[] = [],
): Route {
  const has = (id: InputId) => values[id] !== undefined;
  const stated = (id: InputId) => has(id) && !assumed.includes(id);
  const taken = sum.routes.find(
    (route) =>
      (route.when?.(layout, has, stated) ?? true) &&
      Object.values(route.uses).every((ref) => values[ref] !== undefined),
  );
  if (taken === undefined) throw new Error(`no route of '${sum.title}' can be taken with ${Object.keys(values)}`);
  return taken;
}

/** The value of a sum from these values, by the route it takes with them. */
export function evaluateSum(
  sum: Sum,
  values: Values,
  layout: Layout = PLAIN_LAYOUT,
  assumed: readonly InputId[] = [],
): number {
  const taken = routeTaken(sum, values, layout, assumed);
  const used = Object.entries(taken.uses).map(([name, ref]) => [name, values[ref] as number] as const);
  const given = Object.entries(taken.takes?.(layout) ?? {}).map(([name, { value }]) => [name, value] as const);
  return taken.value(Object.fromEntries([...used, ...given]), layout);
}

/** These values with all sums of a table added that follow from them; a sum already among the values stays as given. */
export function withSums(
  sums: Readonly<Record<string, Sum>>,
  values: Values,
  layout: Layout = PLAIN_LAYOUT,
  assumed: readonly InputId[] = [],
): Values {
  const all: Record<string, number> = { ...values };
  const known = (id: InputId) => all[id] !== undefined;
  const stated = (id: InputId) => known(id) && !assumed.includes(id);
  const open = ({ when, uses }: Route) =>
    (when?.(layout, known, stated) ?? true) && Object.values(uses).every((ref) => all[ref] !== undefined);
  let before = -1;
  while (Object.keys(all).length > before) {
    before = Object.keys(all).length;
    for (const [id, sum] of Object.entries(sums)) {
      if (all[id] !== undefined || sum.when?.(layout, stated) === false || !sum.routes.some(open)) continue;
      all[id] = evaluateSum(sum, all as Values, layout, assumed);
    }
  }
  return all as Values;
}

/** Does a finding hold with these values? */
export function holds({ need, has, sense }: Finding, values: Values): boolean {
  const [wanted, found] = [values[need], values[has]];
  if (wanted === undefined || found === undefined) throw new Error(`${need} or ${has} is not among the values`);
  return sense === 'at least' ? found >= wanted : found <= wanted;
}

/** Names that a formula shows and its route does not know, or that the route reads and the formula does not show. */
export function strayNames(sum: Sum, layout: Layout = PLAIN_LAYOUT): string[] {
  return sum.routes.flatMap(({ uses, takes, formula }) => {
    const known = new Set([...Object.keys(uses), ...Object.keys(takes?.(layout) ?? {})]);
    const shown = new Set([...formula.matchAll(/\{(\w+)\}/g)].map(([, name]) => name as string));
    return [...known, ...shown].filter((name) => !(known.has(name) && shown.has(name)));
  });
}
