/**
 * Goal: mean, deviation and correlation keep their digits and say when there is nothing to say.
 * Method: invariances under shift and scale, and the empty cases.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correlation, mean, standardDeviation } from './summary.ts';

const numbers = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 50 });

describe('summaries', () => {
  it('do not change their deviation when all values are moved by a million', () => {
    fc.assert(
      fc.property(numbers, (values) => {
        const moved = values.map((x) => x + 1e6);
        expect(mean(moved) - mean(values)).toBeCloseTo(1e6, 6);
        expect(standardDeviation(moved)).toBeCloseTo(standardDeviation(values), 6);
      }),
    );
  });

  it('find a straight relation to be 1 or −1', () => {
    fc.assert(
      fc.property(numbers, (values) => {
        fc.pre(new Set(values).size > 1);
        expect(
          correlation(
            values,
            values.map((x) => 3 * x - 7),
          ),
        ).toBeCloseTo(1, 9);
        expect(
          correlation(
            values,
            values.map((x) => -x),
          ),
        ).toBeCloseTo(-1, 9);
      }),
    );
  });

  it('are NaN where they do not exist', () => {
    expect(mean([])).toBeNaN();
    expect(standardDeviation([5])).toBeNaN();
    expect(correlation([1, 1, 1], [1, 2, 3])).toBeNaN();
    expect(() => correlation([1, 2], [1])).toThrow(RangeError);
  });
});
