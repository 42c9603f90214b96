/**
 * Goal: the zero is found where it is, in few steps for smooth functions, and safely for rough ones.
 * Method: functions whose zero is known; counted steps.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { zeroOfRising } from './root.ts';

const solve = (f: (x: number) => number, low: number, high: number) => zeroOfRising(f, low, high, f(low), f(high));

describe('the zero of a rising function', () => {
  it('is the root of every power between the square root and the square, wherever it lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        (power, root) => {
          expect(solve((x) => x ** power - root ** power, 0, 1) / root).toBeCloseTo(1, 8);
        },
      ),
    );
  });

  it('is found within fifteen steps where heat grows a little faster than the rise', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (p, x0) => {
          let steps = 0;
          solve(
            (x) => {
              steps++;
              return x ** p - x0 ** p;
            },
            0,
            1,
          );
          expect(steps).toBeLessThanOrEqual(2 + 15);
        },
      ),
    );
  });

  it('is the jump where the function leaps over nothing', () => {
    expect(solve((x) => (x < 0.3 ? x - 1 : x + 1), 0, 1)).toBeCloseTo(0.3, 8);
  });

  it('is the end beyond which it would lie', () => {
    expect(solve((x) => x + 1, 0, 1)).toBe(0);
    expect(solve((x) => x - 2, 0, 1)).toBe(1);
  });
});
