/** Resistance and reactance from five simultaneous readings: the case where dropping the correlations misleads. */
import { type Checks, checkSubject } from '@longrein/laws/check';
import { drawCases } from './cases.ts';
import { once } from './once.ts';
import { correlation, mean, standardDeviation } from './summary.ts';

const SOURCE = 'JCGM 100:2008, Annex H.2, simultaneous resistance and reactance';
const CASES = 20_000;

const READINGS = {
  voltage: [5.007, 4.994, 5.005, 4.99, 4.999],
  current: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
  phase: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
};

const study = once(() => {
  const ids = Object.keys(READINGS);
  const readings = Object.values(READINGS);
  const inputs = readings.map((values, k) => ({
    id: ids[k] ?? '',
    kind: 'doubt' as const,
    quantity: {
      value: mean(values),
      doubt: standardDeviation(values) / Math.sqrt(values.length),
      spread: 'normal' as const,
    },
  }));
  const matrix = readings.map((a) => readings.map((b) => correlation(a, b)));
  const cases = drawCases(inputs, { cases: CASES, seed: 1, correlations: [{ ids, matrix }] });
  const column = (id: string) => cases.columns.get(id)?.values ?? new Float64Array(CASES);
  const [voltage, current, phase] = [column('voltage'), column('current'), column('phase')];
  const impedance = voltage.map((v, i) => v / (current[i] ?? Number.NaN));
  const resistance = impedance.map((z, i) => z * Math.cos(phase[i] ?? Number.NaN));
  const reactance = impedance.map((z, i) => z * Math.sin(phase[i] ?? Number.NaN));
  return { voltage, current, phase, resistance, reactance, impedance };
});

type Name = keyof ReturnType<typeof study>;

const row = (what: string, expected: number, allowed: number, ours: () => number) =>
  ({ case: what, source: SOURCE, kind: 'published', expected, allowed, ours }) as const;
const value = (name: Name, expected: number, allowed: number) =>
  row(`estimate of the ${name}, from five readings`, expected, allowed, () => mean(study()[name]));
const doubt = (name: Name, expected: number, allowed: number) =>
  row(`standard uncertainty of the ${name}`, expected, allowed, () => standardDeviation(study()[name]));
const tie = (a: Name, b: Name, expected: number, allowed: number) =>
  row(`correlation of ${a} and ${b}`, expected, allowed, () => correlation(study()[a], study()[b]));

/** Allowances are those of the printed digits, which are wider than the scatter between 20 seeds at 20,000 cases. */
export const gumH2Checks: Checks = checkSubject('cases with correlations', [
  value('voltage', 4.999, 1e-5),
  value('current', 19.661e-3, 1e-5),
  value('phase', 1.04446, 1e-5),
  doubt('voltage', 0.0032, 0.02),
  doubt('current', 0.0095e-3, 0.01),
  doubt('phase', 0.00075, 0.01),
  tie('voltage', 'current', -0.36, 0.015),
  tie('voltage', 'phase', 0.86, 0.006),
  tie('current', 'phase', -0.65, 0.009),
  value('resistance', 127.732, 1e-5),
  value('reactance', 219.847, 1e-5),
  value('impedance', 254.26, 1e-5),
  doubt('resistance', 0.071, 0.015),
  doubt('reactance', 0.295, 0.005),
  doubt('impedance', 0.236, 0.005),
  tie('resistance', 'reactance', -0.588, 0.003),
  tie('resistance', 'impedance', -0.485, 0.003),
  tie('reactance', 'impedance', 0.993, 0.001),
]);
