/**
 * The end gauge of the guide to the expression of uncertainty, in nanometres above 50 mm. Allowances are those of the
 * printed digits, or four times the scatter between 20 seeds at 100,000 cases where that is wider.
 */
import { type Checks, checkSubject } from '@longrein/laws/check';
import { drawCases } from './cases.ts';
import { once } from './once.ts';
import { classify, influences } from './sensitivity.ts';
import type { CaseInput, Spread } from './shapes.ts';
import { mean, standardDeviation } from './summary.ts';

const SOURCE = 'JCGM 100:2008, Annex H.1, end-gauge calibration';
const STANDARD = 50_000_623;
const NOMINAL = 50_000_000;
const CASES = 100_000;

const input = (id: string, value: number, doubt: number, spread: Spread): CaseInput => ({
  id,
  kind: 'doubt',
  quantity: { value, doubt, spread },
});

const inputs: readonly CaseInput[] = [
  input('standard', STANDARD, 25, 'normal'),
  input('difference', 215, 9.7, 'normal'),
  input('expansion', 11.5e-6, 2e-6, 'rectangular'),
  input('bath', -0.1, 0.2, 'normal'),
  // A sine of an angle that is anything alike has the arcsine density of a cycling temperature.
  input('cycling', 0, Math.PI / 2, 'rectangular'),
  input('expansionDifference', 0, 1e-6, 'rectangular'),
  input('temperatureDifference', 0, 0.05, 'rectangular'),
];

const study = once(() => {
  const cases = drawCases(inputs, { cases: CASES, seed: 1 });
  const of = (id: string, i: number): number => cases.columns.get(id)?.values[i] ?? Number.NaN;
  const full = new Float64Array(CASES);
  const linear = new Float64Array(CASES);
  for (let i = 0; i < CASES; i++) {
    const theta = of('bath', i) + 0.5 * Math.sin(of('cycling', i));
    const sum = of('standard', i) + of('difference', i);
    const expanded = of('expansionDifference', i) * theta + of('expansion', i) * of('temperatureDifference', i);
    full[i] = sum - of('standard', i) * expanded - NOMINAL;
    // The guide's first order: sensitivity coefficients at the estimates, θ = −0.1 K and αs = 11.5e-6 /K.
    const firstOrder = -0.1 * of('expansionDifference', i) + 11.5e-6 * of('temperatureDifference', i);
    linear[i] = sum - STANDARD * firstOrder - NOMINAL;
  }
  const shares = influences(classify(cases), linear).ranked;
  const share = (id: string) => shares.find((one) => one.id === id)?.index ?? Number.NaN;
  return { full, linear, share };
});

const given = 'ls 50 000 623 nm u 25, d 215 nm u 9.7, αs 11.5e-6 ± 2e-6 /K, θ −0.1 K, δα ± 1e-6 /K, δθ ± 0.05 K';

export const gumH1Checks: Checks = checkSubject('cases', [
  {
    case: `length above 50 mm [nm]; ${given}`,
    source: SOURCE,
    kind: 'published',
    expected: 838,
    allowed: 0.001,
    ours: () => mean(study().full),
  },
  {
    case: 'its standard uncertainty to first order [nm], printed 32',
    source: SOURCE,
    kind: 'published',
    // The sum of the printed contributions 25.0, 9.7, 2.9 and 16.7 nm.
    expected: 31.71,
    allowed: 0.012,
    ours: () => standardDeviation(study().linear),
  },
  {
    case: 'its standard uncertainty with terms of second order [nm], printed 34',
    source: SOURCE,
    kind: 'published',
    // The guide rounds δα to 0.58e-6 and θ to 0.41 K first, which adds 0.3 %, and prints two digits.
    expected: 34,
    allowed: 0.015,
    ours: () => standardDeviation(study().full),
  },
]);

export const gumH1ShareChecks: Checks = checkSubject('influences', [
  {
    case: 'share of the length standard in the variance, (25.0 / 31.71)²',
    source: SOURCE,
    kind: 'published',
    expected: (25.0 / 31.71) ** 2,
    allowed: 0.02,
    ours: () => study().share('standard'),
  },
  {
    case: 'share of the temperature difference, (16.7 / 31.71)²',
    source: SOURCE,
    kind: 'published',
    expected: (16.7 / 31.71) ** 2,
    allowed: 0.055,
    ours: () => study().share('temperatureDifference'),
  },
  {
    case: 'share of the difference read, (9.7 / 31.71)²',
    source: SOURCE,
    kind: 'published',
    expected: (9.7 / 31.71) ** 2,
    allowed: 0.08,
    ours: () => study().share('difference'),
  },
]);
