/** Median loss below the roofs, by surroundings. */
import { law } from '../law.ts';

/** Surroundings of the general street law. */
export const STREETS = ['in sight', 'residential, out of sight', 'high-rise, out of sight'] as const;

/** One row of the general street law: L = 10·α·log10(d) + β + 10·γ·log10(f in GHz), σ about it. */
export interface Street {
  readonly alpha: number;
  readonly beta: number;
  readonly gamma: number;
  /** Standard deviation of the loss about its median [dB]. */
  readonly sigma: number;
  /** Distances the row was fitted for [m]. */
  readonly nearest: number;
  readonly farthest: number;
  readonly source: string;
}

const TABLE = 'Rec. ITU-R P.1411-12, table 4, both ends below the roofs';

/** Coefficients by surroundings, 0.8 to 73 GHz. */
export const STREET_ROWS: Readonly<Record<(typeof STREETS)[number], Street>> = {
  'in sight': { alpha: 2.12, beta: 29.2, gamma: 2.11, sigma: 5.06, nearest: 5, farthest: 660, source: TABLE },
  'residential, out of sight': {
    alpha: 3.01,
    beta: 18.8,
    gamma: 2.07,
    sigma: 3.07,
    nearest: 30,
    farthest: 170,
    source: TABLE,
  },
  'high-rise, out of sight': {
    alpha: 4.0,
    beta: 10.2,
    gamma: 2.36,
    sigma: 7.6,
    nearest: 30,
    farthest: 715,
    source: TABLE,
  },
};

/** Median loss between two aerials below the roofs. */
export const streetLoss = law(
  {
    id: 'street-loss',
    title: 'Median loss along a street',
    equation: 'L = 10 · α(place) · log10(d) + β(place) + 10 · γ(place) · log10(f / 1 GHz)',
    args: {
      place: { symbol: 'place', is: 'surroundings', unit: 'name', oneOf: STREETS },
      frequency: { symbol: 'f', is: 'carrier frequency', unit: 'Hz', from: 0.8e9, to: 73e9 },
      distance: { symbol: 'd', is: 'distance', unit: 'm', from: 5, to: 715 },
    },
    gives: { symbol: 'L', is: 'median loss between isotropic aerials', unit: 'dB' },
    validFor: 'both ends below the roofs and about 1.5 m up or higher, within the distances of the row',
    leavesOut: 'aerials near the ground, which lose more beyond the breakpoint; the spread, given in the row',
    source: TABLE,
  },
  ({ place, frequency, distance }) => {
    const { alpha, beta, gamma } = STREET_ROWS[place];
    return 10 * alpha * Math.log10(distance) + beta + 10 * gamma * Math.log10(frequency / 1e9);
  },
);
