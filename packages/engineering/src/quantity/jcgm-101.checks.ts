/** The examples of the supplement on propagating distributions by a Monte Carlo method. */
import { type Checks, checkSubject, type FreeRow } from '@longrein/laws/check';
import { quantile } from './bands.ts';
import { drawCases } from './cases.ts';
import { once } from './once.ts';
import type { CaseInput, Spread } from './shapes.ts';
import { mean, standardDeviation } from './summary.ts';

const CASES = 100_000;

type Draw = readonly [value: number, doubt: number, spread: Spread];

/** Evaluates a model in every case. */
function outputs(draws: readonly Draw[], model: (x: readonly number[]) => number): Float64Array {
  const inputs: CaseInput[] = draws.map(([value, doubt, spread], k) => ({
    id: `x${k + 1}`,
    kind: 'doubt',
    quantity: { value, doubt, spread },
  }));
  const columns = [...drawCases(inputs, { cases: CASES, seed: 101 }).columns.values()];
  const y = new Float64Array(CASES);
  for (let i = 0; i < CASES; i++) y[i] = model(columns.map(({ values }) => values[i] ?? Number.NaN));
  return y;
}

const add = (x: readonly number[]) => x.reduce((a, b) => a + b, 0);
/** A rectangular spread of standard deviation s has the half-width s·√3. */
const rectangle = (s: number): Draw => [0, s * Math.sqrt(3), 'rectangular'];
const squares = (x: readonly number[]) => add(x.map((one) => one * one));

const fourNormal = once(() =>
  outputs(
    [1, 2, 3, 4].map((): Draw => [0, 1, 'normal']),
    add,
  ),
);
const fourRectangular = once(() => outputs([1, 1, 1, 1].map(rectangle), add));
const oneWide = once(() => outputs([1, 1, 1, 10].map(rectangle), add));
const matched = once(() =>
  outputs(
    [0, 0].map((x): Draw => [x, 0.005, 'normal']),
    squares,
  ),
);
const mismatched = once(() =>
  outputs(
    [0.05, 0].map((x): Draw => [x, 0.005, 'normal']),
    squares,
  ),
);

/** Mass of a weight against a reference in air, in milligrams above 100 g. */
const mass = once(() =>
  outputs(
    [
      [100_000, 0.05, 'normal'],
      [1.234, 0.02, 'normal'],
      [1.2, 0.1, 'rectangular'],
      [8000, 1000, 'rectangular'],
      [8000, 50, 'rectangular'],
    ],
    ([reference = 0, added = 0, air = 0, weight = 0, standard = 0]) =>
      (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100_000,
  ),
);

const row = (clause: string, what: string, expected: number, allowed: number, ours: () => number): FreeRow => ({
  case: what,
  source: `JCGM 101:2008, ${clause}`,
  kind: 'published',
  expected,
  allowed,
  ours,
});

/** Allowances: the printed digits, or four times the scatter between 20 seeds at 100,000 cases where that is wider. */
export const jcgm101Checks: Checks = checkSubject('cases and quantiles', [
  row('9.2.2', 'sum of four standard normal inputs: standard uncertainty', 2, 0.01, () =>
    standardDeviation(fourNormal()),
  ),
  row('9.2.2', 'the same: 97.5 % quantile', 3.92, 0.02, () => quantile(fourNormal(), 0.975)),
  row('9.2.2', 'the same: 2.5 % quantile', -3.92, 0.02, () => quantile(fourNormal(), 0.025)),
  row('9.2.3', 'sum of four rectangular inputs of deviation 1: standard uncertainty', 2, 0.01, () =>
    standardDeviation(fourRectangular()),
  ),
  row('9.2.3', 'the same: 97.5 % quantile', 3.88, 0.01, () => quantile(fourRectangular(), 0.975)),
  row('9.2.4', 'three rectangular inputs of deviation 1 and one of 10: standard uncertainty', 10.1, 0.01, () =>
    standardDeviation(oneWide()),
  ),
  row('9.2.4', 'the same: 97.5 % quantile, where a normal result would have 19.9', 17, 0.01, () =>
    quantile(oneWide(), 0.975),
  ),
  row('9.3, Table 6', 'mass calibration: deviation from nominal [mg]', 1.234, 0.001, () => mean(mass())),
  row('9.3, Table 6', 'the same: standard uncertainty [mg], where first order gives 0.0539', 0.0754, 0.015, () =>
    standardDeviation(mass()),
  ),
  row('9.4', 'loss of a matched power meter, x1 = 0, u 0.005: estimate', 50e-6, 0.01, () => mean(matched())),
  row('9.4', 'the same: standard uncertainty, where first order gives none', 50e-6, 0.03, () =>
    standardDeviation(matched()),
  ),
  row('9.4', 'the same: upper end of the shortest 95 % interval, which begins at 0', 150e-6, 0.03, () =>
    quantile(matched(), 0.95),
  ),
  row('9.4', 'mismatch x1 = 0.050: estimate', 2550e-6, 0.002, () => mean(mismatched())),
  row('9.4', 'the same: standard uncertainty', 502e-6, 0.01, () => standardDeviation(mismatched())),
]);
