/**
 * Goal: quantiles are of type 7, and what has no number is counted, not mixed in.
 * Method: a twin by linear interpolation between order statistics, and hand cases for NaN and infinity.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { band, quantile, quantiles } from './bands.ts';
import { select } from './select.ts';

const numbers = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 });
const chance = fc.double({ min: 0, max: 1, noNaN: true });

describe('quantiles', () => {
  it('put order statistic k of n at the chance (k − 1) / (n − 1)', () => {
    fc.assert(
      fc.property(numbers, fc.nat(), (values, pick) => {
        const sorted = [...values].sort((a, b) => a - b);
        const k = pick % sorted.length;
        const p = sorted.length === 1 ? 0 : k / (sorted.length - 1);
        expect(quantile(values, p)).toBeCloseTo(sorted[k] ?? 0, 6);
      }),
    );
  });

  it('never fall when the chance rises, and stay between least and greatest', () => {
    fc.assert(
      fc.property(numbers, chance, chance, (values, p, q) => {
        const [low = 0, high = 0] = quantiles(values, [Math.min(p, q), Math.max(p, q)]);
        expect(low).toBeLessThanOrEqual(high);
        expect(low).toBeGreaterThanOrEqual(Math.min(...values));
        expect(high).toBeLessThanOrEqual(Math.max(...values));
      }),
    );
  });

  it('leave the values as they were', () => {
    const values = Float64Array.of(3, 1, 2);
    quantile(values, 0.5);
    expect([...values]).toEqual([3, 1, 2]);
  });

  it('refuse a chance that is none', () => {
    expect(() => quantile([1], 1.5)).toThrow(RangeError);
    expect(() => quantile([1], Number.NaN)).toThrow(RangeError);
  });
});

/** Type 7 by sorting everything: the slow twin. */
function bySorting(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const h = (sorted.length - 1) * p;
  const [low = 0, high = 0] = [sorted[Math.floor(h)], sorted[Math.ceil(h)]];
  return low === high ? low : low + (h - Math.floor(h)) * (high - low);
}

describe('a place of the sorted order', () => {
  it('is found without sorting, with nothing greater before it and nothing smaller behind it', () => {
    const few = fc.array(fc.oneof(fc.integer({ min: 0, max: 5 }), fc.double({ noNaN: true })), { minLength: 1 });
    fc.assert(
      fc.property(few, fc.nat(), (values, pick) => {
        const place = pick % values.length;
        const sorted = [...values].sort((a, b) => a - b);
        const arranged = Float64Array.from(values);
        expect(select(arranged, place, 0, values.length - 1) === sorted[place]).toBe(true);
        expect(Math.max(...arranged.subarray(0, place + 1)) === sorted[place]).toBe(true);
        expect(Math.min(...arranged.subarray(place)) === sorted[place]).toBe(true);
      }),
    );
  });
});

describe('a band', () => {
  it('is that of a full sorting, for every count and however many are alike', () => {
    const alike = fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -1e3, max: 1e3, noNaN: true }));
    fc.assert(
      fc.property(fc.array(alike, { minLength: 1, maxLength: 150 }), (values) => {
        const found = band(values);
        expect(Math.abs(found.p5 - bySorting(values, 0.05))).toBe(0);
        expect(Math.abs(found.p50 - bySorting(values, 0.5))).toBe(0);
        expect(Math.abs(found.p95 - bySorting(values, 0.95))).toBe(0);
      }),
      { numRuns: 500 },
    );
  });

  it('leaves NaN out and counts it', () => {
    expect(band([Number.NaN, 1, 2, 3, Number.NaN])).toEqual({ p5: 1.1, p50: 2, p95: 2.9, counted: 3, missing: 2 });
  });

  it('is NaN where no case has a number', () => {
    expect(band([Number.NaN])).toMatchObject({ p5: Number.NaN, p50: Number.NaN, counted: 0, missing: 1 });
  });

  it('takes infinities for values', () => {
    const endless = [1, 2, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    expect(band(endless)).toMatchObject({ p50: Number.POSITIVE_INFINITY, p95: Number.POSITIVE_INFINITY, counted: 5 });
    expect(quantile(endless, 0.25)).toBe(2);
  });
});
