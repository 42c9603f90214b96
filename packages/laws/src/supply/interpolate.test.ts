/**
 * Goal: the interpolation keeps to published points and never invents a turn between them.
 * Method: values of a reference library, random rising tables, and refusal outside the table.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanOf, monotoneCurve, straightLines, whereRising } from './interpolate.ts';

/** A random table with rising abscissae and non-falling ordinates. */
const risingTable = fc
  .array(fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
    minLength: 2,
    maxLength: 12,
  })
  .map((steps) => {
    const [xs, ys] = [[0], [0]];
    for (const [dx, dy] of steps) {
      xs.push((xs.at(-1) ?? 0) + dx);
      ys.push((ys.at(-1) ?? 0) + dy);
    }
    return { xs, ys };
  });

describe('the monotone cubic', () => {
  it('agrees with SciPy PchipInterpolator on a table with a flat part and a steep end', () => {
    const curve = monotoneCurve(
      [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
      [1.1, 1.2, 1.23, 1.26, 1.28, 1.3, 1.32, 1.34, 1.38, 1.44, 1.59],
    );
    expect(curve(0.07)).toBeCloseTo(1.1801203846153847, 12);
    expect(curve(0.15)).toBeCloseTo(1.2170192307692307, 12);
    expect(curve(0.93)).toBeCloseTo(1.472715, 12);
  });

  it('passes through every point and never falls on a table that never falls', () => {
    fc.assert(
      fc.property(risingTable, ({ xs, ys }) => {
        const curve = monotoneCurve(xs, ys);
        for (const [i, x] of xs.entries()) expect(curve(x)).toBeCloseTo(ys[i] ?? Number.NaN, 9);
        const end = xs.at(-1) ?? 0;
        let before = curve(0);
        for (let i = 1; i <= 200; i++) {
          const here = curve(Math.min((end * i) / 200, end));
          expect(here).toBeGreaterThanOrEqual(before - 1e-9);
          before = here;
        }
      }),
    );
  });

  it('refuses to answer outside its table', () => {
    const curve = monotoneCurve([0, 1, 2], [0, 1, 4]);
    expect(() => curve(-1e-9)).toThrow(RangeError);
    expect(() => curve(2.000001)).toThrow(RangeError);
    expect(() => curve(Number.NaN)).toThrow(RangeError);
    expect(() => straightLines([0, 1], [0, 1], 1.5)).toThrow(RangeError);
  });

  it('is inverted by bisection and averaged exactly for a cubic', () => {
    expect(whereRising((x) => x ** 3, 0.027, 0, 1)).toBeCloseTo(0.3, 12);
    expect(meanOf((x) => x ** 3, 0, 1)).toBeCloseTo(0.25, 12);
  });
});
