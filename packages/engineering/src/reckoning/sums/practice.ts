/** Sums that are rules of the trade: a figure with nothing behind it but practice, so that findings can name it. */
import { type Constant, type Sum, sum } from '../sum.ts';

/** A figure of common practice. */
export const practice = (value: number, unit: string, is: string): Constant => ({
  value,
  unit,
  is,
  source: 'common practice, no source',
});

/** A sum that is a rule of the trade. */
export const named = (title: string, unit: string, value: number, is: string): Sum =>
  sum(
    { title, unit },
    {
      uses: {},
      takes: () => ({ bound: practice(value, unit, is) }),
      formula: '{bound}',
      laws: [],
      value: ({ bound }) => bound,
    },
  );
