/** Certified means and standard deviations, among them sets that break a careless formula. */
import { type Checks, checkSubject } from '@longrein/laws/check';
import { mean, standardDeviation } from './summary.ts';

const MAVRO = [
  2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015, 2.0017, 2.0018, 2.0018, 2.0019,
  2.0019, 2.0021, 2.002, 2.0016, 2.0014, 2.0013, 2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014, 2.0013, 2.0014, 2.0015,
  2.0014, 2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.002, 2.002, 2.0021, 2.0022, 2.0023, 2.0024, 2.0025, 2.0027, 2.0026,
  2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024,
];
/** Michelson's speed of light in air, in thousands of km/s. */
const MICHELSON = [
  299.85, 299.74, 299.9, 300.07, 299.93, 299.85, 299.95, 299.98, 299.98, 299.88, 300, 299.98, 299.93, 299.65, 299.76,
  299.81, 300, 300, 299.96, 299.96, 299.96, 299.94, 299.96, 299.94, 299.88, 299.8, 299.85, 299.88, 299.9, 299.84,
  299.83, 299.79, 299.81, 299.88, 299.88, 299.83, 299.8, 299.79, 299.76, 299.8, 299.88, 299.88, 299.88, 299.86, 299.72,
  299.72, 299.62, 299.86, 299.97, 299.95, 299.88, 299.91, 299.85, 299.87, 299.84, 299.84, 299.85, 299.84, 299.84,
  299.84, 299.89, 299.81, 299.81, 299.82, 299.8, 299.77, 299.76, 299.74, 299.75, 299.76, 299.91, 299.92, 299.89, 299.86,
  299.88, 299.72, 299.84, 299.85, 299.85, 299.78, 299.89, 299.84, 299.78, 299.81, 299.76, 299.81, 299.79, 299.81,
  299.82, 299.85, 299.87, 299.87, 299.81, 299.74, 299.81, 299.94, 299.95, 299.8, 299.81, 299.87,
];

/** The generated sets: m, then 500 pairs of m − 0.1 and m + 0.1. */
const pairs = (m: number): number[] => [
  m,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? m - 0.1 : m + 0.1)),
];

const SETS = [
  { name: 'Mavro', data: MAVRO, mean: 2.001856, deviation: 0.000429123454003053, allowed: 1e-12 },
  { name: 'Michelso', data: MICHELSON, mean: 299.8524, deviation: 0.0790105478190518, allowed: 1e-12 },
  { name: 'NumAcc1', data: [10_000_001, 10_000_003, 10_000_002], mean: 10_000_002, deviation: 1, allowed: 1e-14 },
  { name: 'NumAcc2', data: pairs(1.2), mean: 1.2, deviation: 0.1, allowed: 1e-12 },
  // The data themselves lose digits when they are written as doubles; no method can do better than this.
  { name: 'NumAcc3', data: pairs(1_000_000.2), mean: 1_000_000.2, deviation: 0.1, allowed: 1e-9 },
  { name: 'NumAcc4', data: pairs(10_000_000.2), mean: 10_000_000.2, deviation: 0.1, allowed: 1e-8 },
];

const SOURCE = 'NIST Statistical Reference Datasets, univariate summary statistics';

export const strdChecks: Checks = checkSubject(
  'mean and standard deviation',
  SETS.flatMap(({ name, data, mean: middle, deviation, allowed }) => [
    {
      case: `${name}: mean`,
      source: SOURCE,
      kind: 'published' as const,
      expected: middle,
      allowed: 1e-14,
      ours: () => mean(data),
    },
    {
      case: `${name}: standard deviation`,
      source: SOURCE,
      kind: 'published' as const,
      expected: deviation,
      allowed,
      ours: () => standardDeviation(data),
    },
  ]),
);
