/**
 * Goal: streams are the published generator, do not repeat one another and are even.
 * Method: the published sequence with its zero, a twin of SplitMix64 in big integers, moments at four standard errors.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalBelow, normalQuantile } from './normal.ts';
import { SplitMix64, Stream, stream } from './random.ts';
import { correlation, mean, standardDeviation } from './summary.ts';

const DRAWS = 100_000;

describe('the generators', () => {
  it('give the published sequence, its zero included', () => {
    const generator = new Stream(1, 2, 3, 4);
    const words = Array.from({ length: 5 }, () => generator.word());
    expect(words).toEqual([11520, 0, 5927040, 70819200, 2031721883]);
  });

  it('agree with SplitMix64 in big integers for any state', () => {
    const mask = (1n << 64n) - 1n;
    const uint = fc.integer({ min: 0, max: 0xffffffff });
    fc.assert(
      fc.property(uint, uint, (high, low) => {
        let z = (((BigInt(high) << 32n) | BigInt(low)) + 0x9e3779b97f4a7c15n) & mask;
        z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & mask;
        z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & mask;
        z ^= z >> 31n;
        const ours = new SplitMix64(high, low).next();
        expect((BigInt(ours.high) << 32n) | BigInt(ours.low)).toBe(z);
      }),
      { numRuns: 1000 },
    );
  });

  it('refuse to start from zero alone', () => {
    expect(() => new Stream(0, 0, 0, 0)).toThrow(RangeError);
  });
});

describe('a stream', () => {
  it('is the same for the same seed, purpose and member, and another for any other', () => {
    const first = (seed: number, purpose: string, member?: number) => stream(seed, purpose, member).uniform();
    expect(first(1, 'wind', 3)).toBe(first(1, 'wind', 3));
    const seen = new Set<number>();
    let made = 0;
    for (const seed of [0, 1, 2, 2 ** 32, 2 ** 53 - 1]) {
      for (const purpose of ['', 'a', 'b', 'ab', 'ba', 'aa', 'wind', 'wind ']) {
        for (let member = 0; member < 50; member++) {
          seen.add(first(seed, purpose, member));
          made++;
        }
      }
    }
    expect(seen.size).toBe(made);
  });

  it('refuses a seed or member that is not a whole number', () => {
    expect(() => stream(0.5, 'wind')).toThrow(RangeError);
    expect(() => stream(1, 'wind', -1)).toThrow(RangeError);
  });

  it('does not follow its neighbour', () => {
    const column = (member: number) => {
      const one = stream(7, 'neighbours', member);
      return Float64Array.from({ length: 10_000 }, () => one.uniform());
    };
    for (let member = 0; member < 10; member++) {
      expect(Math.abs(correlation(column(member), column(member + 1)))).toBeLessThan(4 / Math.sqrt(10_000));
    }
  });

  it('gives uniform numbers with the mean and deviation of the uniform distribution', () => {
    const one = stream(1, 'uniform');
    const values = Float64Array.from({ length: DRAWS }, () => one.uniform());
    expect(Math.min(...values.subarray(0, 1000))).toBeGreaterThanOrEqual(0);
    expect(values.every((u) => u >= 0 && u < 1)).toBe(true);
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / DRAWS));
    expect(Math.abs(standardDeviation(values) - Math.sqrt(1 / 12))).toBeLessThan(0.002);
  });

  it('gives normal numbers with the first four moments of the normal distribution', () => {
    const one = stream(1, 'normal');
    const z = Float64Array.from({ length: DRAWS }, () => one.normal());
    const moment = (k: number) => mean(z.map((x) => x ** k));
    expect(Math.abs(moment(1))).toBeLessThan(4 / Math.sqrt(DRAWS));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(4 * Math.sqrt(2 / DRAWS));
    expect(Math.abs(moment(3))).toBeLessThan(4 * Math.sqrt(15 / DRAWS));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(4 * Math.sqrt(96 / DRAWS));
  });

  it('gives every whole number below n about equally often', () => {
    const one = stream(1, 'dice');
    const counts = new Float64Array(6);
    for (let i = 0; i < 60_000; i++) {
      const face = one.below(6);
      counts[face] = (counts[face] ?? 0) + 1;
    }
    const chiSquare = counts.reduce((sum, n) => sum + (n - 10_000) ** 2 / 10_000, 0);
    // 99.9 % of the chi-square distribution with five degrees of freedom.
    expect(chiSquare).toBeLessThan(20.515);
  });
});

describe('the normal distribution', () => {
  it('and its inverse undo one another', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 5, noNaN: true }), (z) => {
        expect(normalQuantile(normalBelow(z))).toBeCloseTo(z, 9);
      }),
    );
  });

  it('reaches its ends', () => {
    expect([normalBelow(Number.NEGATIVE_INFINITY), normalBelow(0), normalBelow(Number.POSITIVE_INFINITY)]).toEqual([
      0, 0.5, 1,
    ]);
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
    expect(normalQuantile(-0.1)).toBeNaN();
    expect(normalQuantile(1.1)).toBeNaN();
  });
});
