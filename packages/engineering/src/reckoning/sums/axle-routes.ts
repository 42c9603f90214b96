/**
 * Routes of sums that read something of every axle. What a route uses is fixed, so there is one route for each number
 * of axles, and for springs one for each set of sprung axles; they are made here instead of written out.
 */
import type { Layout } from '../../dossier/resolve.ts';
import type { Ref, Route } from '../sum.ts';

export const AXLES = [1, 2, 3, 4] as const;
export type AxleNumber = (typeof AXLES)[number];

/** One name and reference for each of these axles: 'load1', 'load2' … */
export function perAxle<const N extends string>(
  name: N,
  axles: readonly AxleNumber[],
  ref: (axle: AxleNumber) => Ref,
): Readonly<Record<`${N}${AxleNumber}`, Ref>> {
  return Object.fromEntries(axles.map((axle) => [`${name}${axle}`, ref(axle)])) as Record<`${N}${AxleNumber}`, Ref>;
}

/** The values of such names, in order. */
export function eachAxle<N extends string>(
  x: { readonly [K in `${N}${AxleNumber}`]: number },
  name: N,
  axles: readonly AxleNumber[],
): number[] {
  return axles.map((axle) => x[`${name}${axle}` as `${N}${AxleNumber}`]);
}

/** Positions of all axles but the first, which stands at 0. */
export const usePositions = (axles: readonly AxleNumber[]) =>
  perAxle('position', axles.slice(1), (axle) => `axle.${axle}.position`);

/** Positions of all axles, the first at 0. */
export const positionsOf = (
  x: { readonly [K in `position${AxleNumber}`]: number },
  axles: readonly AxleNumber[],
): number[] => [0, ...eachAxle(x, 'position', axles.slice(1))];

/** The names as they stand in a formula: '{load1}, {load2}'. */
export const names = (name: string, axles: readonly AxleNumber[], joint = ', '): string =>
  axles.map((axle) => `{${name}${axle}}`).join(joint);

/** The positions as they stand in a formula: '0, {position2}'. */
export const placesOf = (axles: readonly AxleNumber[]): string =>
  ['0', ...axles.slice(1).map((axle) => `{position${axle}}`)].join(', ');

/** The same route, applying to such vehicles only. */
export const onlyFor = (route: Route, applies: (layout: Layout) => boolean): Route => ({
  ...route,
  when: (...known) => applies(known[0]) && (route.when?.(...known) ?? true),
});

/** One route for each number of axles, from `least` on. */
export function byAxleCount(make: (axles: readonly AxleNumber[]) => Route, least: AxleNumber = 1): Route[] {
  return AXLES.filter((count) => count >= least).map((count) =>
    onlyFor({ name: `${count} axles`, ...make(AXLES.slice(0, count)) }, ({ axles }) => axles.length === count),
  );
}

/** The axles that have springs of a known rate. */
export const sprungAxles = ({ axles }: Layout): AxleNumber[] =>
  AXLES.slice(0, axles.length).filter((axle) => axles[axle - 1]?.sprung === true);

/** One route for each set of sprung axles that is not empty. */
export function bySprungAxles(make: (sprung: readonly AxleNumber[]) => Route): Route[] {
  const sets = Array.from({ length: 2 ** AXLES.length - 1 }, (_, i) =>
    AXLES.filter((axle) => ((i + 1) >> (axle - 1)) & 1),
  );
  return sets.map((set) =>
    onlyFor({ name: `springs on axle ${set.join(', ')}`, ...make(set) }, (layout) => {
      const sprung = sprungAxles(layout);
      return sprung.length === set.length && sprung.every((axle, i) => axle === set[i]);
    }),
  );
}
