/** Quantiles of type 7. */
import { type Checks, checkSubject, type FreeRow } from '@longrein/laws/check';
import { quantile } from './bands.ts';

const TEN = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
/** Miles per gallon of the 32 vehicles in the data set mtcars, which comes with R (Henderson & Velleman 1981). */
const MILES = [
  21, 21, 22.8, 21.4, 18.7, 18.1, 14.3, 24.4, 22.8, 19.2, 17.8, 16.4, 17.3, 15.2, 10.4, 10.4, 14.7, 32.4, 30.4, 33.9,
  21.5, 15.5, 15.2, 13.3, 19.2, 27.3, 26, 30.4, 15.8, 19.7, 15, 21.4,
];

const row = (
  data: readonly number[],
  name: string,
  p: number,
  expected: number,
  facts: Pick<FreeRow, 'source' | 'kind'>,
) => ({
  ...facts,
  case: `${p * 100} % quantile of ${name}`,
  expected,
  allowed: 1e-12,
  ours: () => quantile(data, p),
});

const numpy = {
  source: 'NumPy 2.4.6, quantile, method linear (Hyndman & Fan 1996, type 7)',
  kind: 'reference library',
} as const;
const summary = { source: 'R, quantile(mtcars$mpg), type 7 by default', kind: 'memory' } as const;

export const quantileChecks: Checks = checkSubject('quantiles', [
  row(TEN, '1 … 10', 0.05, 1.45, numpy),
  row(TEN, '1 … 10', 0.25, 3.25, numpy),
  row(TEN, '1 … 10', 0.33, 3.97, numpy),
  row(TEN, '1 … 10', 0.9, 9.1, numpy),
  row(MILES, '32 vehicles', 0.25, 15.425, summary),
  row(MILES, '32 vehicles', 0.5, 19.2, summary),
  row(MILES, '32 vehicles', 0.75, 22.8, summary),
]);
