/** The ground a vehicle must serve, from the surfaces it names and the share of the way on each. */
import { SURFACE_NAMES as NAMES, REFUSED_SURFACES, surfaceNamed } from '@longrein/laws';
import type { Assumption } from './facts/facts.ts';

export const SURFACE_NAMES: readonly string[] = NAMES;

/** Why a surface is refused, if it is one of those that are. */
export function refusalOf(name: string): string | undefined {
  return Object.hasOwn(REFUSED_SURFACES, name) ? REFUSED_SURFACES[name as keyof typeof REFUSED_SURFACES] : undefined;
}

/** Quantities of the ground that the table of surfaces knows. */
export type GroundId = 'ground.rolling' | 'ground.rollingWorst' | 'ground.adhesion' | 'ground.adhesionWorst';

/** Coefficients to three decimals: the table itself has no more. */
const range = (low: number, high: number) => `${low.toFixed(3)} … ${high.toFixed(3)}`;

/**
 * Assumptions about the ground: the day's coefficients lie between the share-weighted low and high ends, the worst
 * are the extreme ends of any one surface.
 */
export function groundOf(surfaces: readonly { surface: string; share: number }[]): [GroundId, Assumption][] {
  const rows = surfaces.map(({ surface, share }) => ({ ...surfaceNamed(surface), share }));
  const weighted = (pick: (row: (typeof rows)[number]) => number) =>
    rows.reduce((sum, row) => sum + pick(row) * row.share, 0);
  const because = `from the table of surfaces: ${surfaces.map((s) => s.surface).join('; ')}`;
  return [
    [
      'ground.rolling',
      {
        text: range(
          weighted((r) => r.rolling.low),
          weighted((r) => r.rolling.high),
        ),
        because,
      },
    ],
    ['ground.rollingWorst', { text: Math.max(...rows.map((r) => r.rolling.high)).toFixed(3), because }],
    [
      'ground.adhesion',
      {
        text: range(
          weighted((r) => r.adhesion.low),
          weighted((r) => r.adhesion.high),
        ),
        because,
      },
    ],
    ['ground.adhesionWorst', { text: Math.min(...rows.map((r) => r.adhesion.low)).toFixed(3), because }],
  ];
}
