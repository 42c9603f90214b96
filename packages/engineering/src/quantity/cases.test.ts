/**
 * Goal: the cases are a Latin hypercube of the spreads asked for, whatever other inputs there are.
 * Method: every stratum counted; columns compared across draws; moments and correlations against what was asked.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantile } from './bands.ts';
import { CASES_MAX, drawCases } from './cases.ts';
import { normalBelow } from './normal.ts';
import type { CaseInput, Cases, Limits, Spread } from './shapes.ts';
import { correlation, mean, standardDeviation } from './summary.ts';

const input = (id: string, value: number, doubt: number, spread: Spread, limits?: Limits): CaseInput => ({
  id,
  kind: 'doubt',
  quantity: { value, doubt, spread },
  ...(limits ? { limits } : {}),
});
const column = (cases: Cases, id: string): Float64Array => cases.columns.get(id)?.values ?? new Float64Array();

/** The chance below x for each spread, by its textbook formula. */
function chanceBelow({ quantity: { value, doubt, spread } }: CaseInput, x: number): number {
  if (spread === 'rectangular') return (x - value + doubt) / (2 * doubt);
  if (spread === 'normal') return normalBelow((x - value) / doubt);
  const s2 = Math.log(1 + (doubt / value) ** 2);
  return normalBelow((Math.log(x) - Math.log(value) + s2 / 2) / Math.sqrt(s2));
}

const strataOf = (one: CaseInput, values: Float64Array, low = 0, high = 1) =>
  [...values]
    .map((x) => Math.floor(((chanceBelow(one, x) - low) / (high - low)) * values.length))
    .sort((a, b) => a - b);

describe('drawn cases', () => {
  const spreads = fc.constantFrom<Spread>('normal', 'rectangular', 'lognormal');

  it('use every stratum of every spread exactly once', () => {
    fc.assert(
      fc.property(
        spreads,
        fc.integer({ min: 1, max: 400 }),
        fc.nat(),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (spread, count, seed, share) => {
          const one = input('x', 3, 3 * share, spread);
          const values = column(drawCases([one], { cases: count, seed }), 'x');
          expect(strataOf(one, values)).toEqual(Array.from({ length: count }, (_, i) => i));
        },
      ),
    );
  });

  it('come with their order: each case stands at the place that sorting its values gives it', () => {
    const limits = fc.constantFrom<Limits>({}, { above: 0 }, { from: 2, to: 3.5 }, { below: 1 });
    fc.assert(
      fc.property(spreads, fc.integer({ min: 1, max: 300 }), fc.nat(), limits, (spread, count, seed, cut) => {
        const one = input('x', 3, 2, spread, spread === 'rectangular' ? {} : cut);
        const drawn = drawCases([one], { cases: count, seed }).columns.get('x');
        const byPlace = new Float64Array(count).fill(Number.NaN);
        drawn?.values.forEach((value, i) => {
          byPlace[drawn.order?.[i] ?? Number.NaN] = value;
        });
        expect([...byPlace]).toEqual([...(drawn?.values ?? [])].sort((a, b) => a - b));
      }),
    );
  });

  it('use every stratum of the admitted range where limits cut the spread off, near or far out', () => {
    for (const [limits, low, high] of [
      [{ above: 0 }, 0, Number.POSITIVE_INFINITY],
      [{ from: 0.5, to: 2 }, 0.5, 2],
      [{ below: -1 }, Number.NEGATIVE_INFINITY, -1],
    ] as const) {
      const one = input('x', 1, 2, 'normal', limits);
      const values = column(drawCases([one], { cases: 300, seed: 5 }), 'x');
      const ends = [chanceBelow(one, low), chanceBelow(one, high)] as const;
      expect(strataOf(one, values, ...ends)).toEqual(Array.from({ length: 300 }, (_, i) => i));
      expect(Math.min(...values)).toBeGreaterThanOrEqual(low);
      expect(Math.max(...values)).toBeLessThanOrEqual(high);
    }
  });

  it('keep their digits where only the far tail is admitted', () => {
    const values = column(drawCases([input('x', 0, 1, 'normal', { above: 9 })], { cases: 1000, seed: 1 }), 'x');
    expect(Math.min(...values)).toBeGreaterThan(9);
    expect(new Set(values).size).toBe(1000);
    // Mean of a normal number above 9: φ(9) / Φ(−9), from the asymptotic series of the tail.
    expect(mean(values)).toBeCloseTo(9 + 1 / 9 - 2 / 9 ** 3 + 10 / 9 ** 5, 3);
  });

  it('agree with a spread that was cut off by throwing cases away', () => {
    const all = column(drawCases([input('x', 1, 0.8, 'lognormal')], { cases: 50_000, seed: 1 }), 'x');
    const kept = all.filter((x) => x >= 0.5 && x < 2);
    const ours = column(
      drawCases([input('x', 1, 0.8, 'lognormal', { from: 0.5, below: 2 })], { cases: 1000, seed: 2 }),
      'x',
    );
    for (const p of [0.05, 0.5, 0.95]) expect(quantile(ours, p)).toBeCloseTo(quantile(kept, p), 2);
  });

  it('give value and doubt as mean and standard deviation of every spread', () => {
    for (const [spread, share] of [
      ['normal', 1],
      ['lognormal', 1],
      ['rectangular', 1 / Math.sqrt(3)],
    ] as const) {
      const values = column(drawCases([input('x', 5, 2, spread)], { cases: 20_000, seed: 1 }), 'x');
      expect(mean(values)).toBeCloseTo(5, 2);
      expect(standardDeviation(values)).toBeCloseTo(2 * share, 2);
    }
    expect(new Set(column(drawCases([input('x', 5, 0, 'exact')], { cases: 50, seed: 1 }), 'x'))).toEqual(new Set([5]));
  });

  it('do not change an input when others are added, taken away or put in another order', () => {
    const [a, b, c] = [input('a', 1, 0.1, 'normal'), input('b', 2, 1, 'rectangular'), input('c', 3, 2, 'lognormal')];
    const options = { cases: 200, seed: 9 };
    const alone = column(drawCases([a], options), 'a');
    expect(column(drawCases([c, b, a], options), 'a')).toEqual(alone);
    const tied = {
      ...options,
      correlations: [
        {
          ids: ['b', 'c'],
          matrix: [
            [1, 0.8],
            [0.8, 1],
          ],
        },
      ],
    };
    expect(column(drawCases([a, b, c], tied), 'a')).toEqual(alone);
    expect(column(drawCases([a], { ...options, seed: 10 }), 'a')).not.toEqual(alone);
  });

  it('carry the kind of each input', () => {
    const weather: CaseInput = { ...input('w', 1, 1, 'normal'), kind: 'variation' };
    expect(drawCases([weather], { cases: 1, seed: 1 }).columns.get('w')?.kind).toBe('variation');
  });

  it('draw 100,000 cases with all strata used', () => {
    const one = input('x', 0, 1, 'rectangular');
    const values = column(drawCases([one], { cases: 100_000, seed: 1 }), 'x').sort();
    // A stratum may be missed by the rounding of x at its border, by far less than its width.
    expect(values.every((x, i) => Math.abs((x + 1) / 2 - (i + 0.5) / 100_000) < 0.5000001 / 100_000)).toBe(true);
  });

  it('are as little correlated as chance makes them', () => {
    const cases = drawCases(
      Array.from({ length: 20 }, (_, i) => input(`x${i}`, 0, 1, 'normal')),
      { cases: 1000, seed: 1 },
    );
    const columns = [...cases.columns.values()].map(({ values }) => values);
    const pairs = columns.flatMap((a, i) => columns.slice(i + 1).map((b) => correlation(a, b) * Math.sqrt(1000)));
    expect(Math.max(...pairs.map(Math.abs))).toBeLessThan(4.5);
    expect(standardDeviation(pairs)).toBeGreaterThan(0.8);
    expect(standardDeviation(pairs)).toBeLessThan(1.2);
  });
});

describe('tied inputs', () => {
  const ids = ['a', 'b', 'c'];
  const three = ids.map((id) => input(id, 10, 1, 'normal'));

  it('have the correlations asked for and exactly the same values as free ones', () => {
    const angle = fc.double({ min: -0.95, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(angle, angle, angle, fc.nat(), (p, q, partial, seed) => {
        const r = p * q + partial * Math.sqrt((1 - p * p) * (1 - q * q));
        const matrix = [
          [1, p, q],
          [p, 1, r],
          [q, r, 1],
        ];
        const free = drawCases(three, { cases: 1000, seed });
        const tied = drawCases(three, { cases: 1000, seed, correlations: [{ ids, matrix }] });
        for (const [i, one] of ids.entries()) {
          expect(column(tied, one).slice().sort()).toEqual(column(free, one).slice().sort());
          for (const [j, other] of ids.entries()) {
            expect(Math.abs(correlation(column(tied, one), column(tied, other)) - (matrix[i]?.[j] ?? 0))).toBeLessThan(
              0.01,
            );
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('move as one when their correlation is 1, and against one another when it is −1', () => {
    for (const r of [1, -1]) {
      const correlations = [
        {
          ids: ['a', 'b'],
          matrix: [
            [1, r],
            [r, 1],
          ],
        },
      ];
      const cases = drawCases(three, { cases: 500, seed: 3, correlations });
      expect(correlation(column(cases, 'a'), column(cases, 'b')) * r).toBeGreaterThan(0.9999);
    }
  });

  it('keep all strata where there are fewer cases than inputs', () => {
    const matrix = [
      [1, 0.5, 0.5],
      [0.5, 1, 0.5],
      [0.5, 0.5, 1],
    ];
    for (const count of [1, 2, 3]) {
      const cases = drawCases(three, { cases: count, seed: 1, correlations: [{ ids, matrix }] });
      const free = drawCases(three, { cases: count, seed: 1 });
      for (const id of ids) expect(column(cases, id).slice().sort()).toEqual(column(free, id).slice().sort());
    }
  });

  it.each([
    [
      'contradictory correlations',
      ids,
      [
        [1, 0.9, -0.9],
        [0.9, 1, 0.9],
        [-0.9, 0.9, 1],
      ],
      'contradict',
    ],
    [
      'a matrix that is not symmetrical',
      ['a', 'b'],
      [
        [1, 0.5],
        [0.4, 1],
      ],
      'symmetrical',
    ],
    ['a matrix that is not square', ['a', 'b'], [[1, 0.5]], 'square'],
    [
      'a correlation above 1',
      ['a', 'b'],
      [
        [1, 1.5],
        [1.5, 1],
      ],
      'no correlation',
    ],
    [
      'a covariance',
      ['a', 'b'],
      [
        [0.5, 0],
        [0, 0.5],
      ],
      'diagonal',
    ],
    [
      'an unknown input',
      ['a', 'z'],
      [
        [1, 0],
        [0, 1],
      ],
      'no input',
    ],
  ])('refuse %s', (_name, tied, matrix, message) => {
    expect(() => drawCases(three, { cases: 10, seed: 1, correlations: [{ ids: tied, matrix }] })).toThrow(message);
  });

  it('refuse an input in two groups', () => {
    const group = {
      ids: ['a', 'b'],
      matrix: [
        [1, 0],
        [0, 1],
      ],
    };
    expect(() => drawCases(three, { cases: 10, seed: 1, correlations: [group, group] })).toThrow('two correlations');
  });
});

describe('a draw', () => {
  it('refuses a number of cases out of bounds, a repeated input and an input without a number', () => {
    const one = input('x', 1, 1, 'normal');
    for (const cases of [0, -1, 1.5, CASES_MAX + 1])
      expect(() => drawCases([one], { cases, seed: 1 })).toThrow(RangeError);
    expect(() => drawCases([one, one], { cases: 5, seed: 1 })).toThrow('twice');
    expect(() => drawCases([input('x', Number.NaN, 1, 'normal')], { cases: 5, seed: 1 })).toThrow("'x'");
  });

  it.each<[Spread, number, Limits]>([
    ['exact', 1, { above: 1 }],
    ['rectangular', 1, { from: 3 }],
    ['normal', 1, { above: 100 }],
    ['lognormal', 1, { below: 0 }],
  ])('refuses limits that admit nothing of a spread that is %s', (spread, value, limits) => {
    const doubt = spread === 'exact' ? 0 : 1;
    expect(() => drawCases([input('x', value, doubt, spread, limits)], { cases: 5, seed: 1 })).toThrow('admit nothing');
  });
});
