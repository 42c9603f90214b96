/**
 * Goal: an influence is the share of the variance that an input explains, and chance alone rarely passes the floor.
 * Method: functions whose indices are known in closed form, and outputs that have nothing to do with any input.
 */
import { describe, expect, it } from 'vitest';
import { drawCases } from './cases.ts';
import { indicesOf, ishigami } from './ishigami.checks.ts';
import { stream } from './random.ts';
import { classify, influences } from './sensitivity.ts';
import type { CaseInput } from './shapes.ts';
import { mean, standardDeviation } from './summary.ts';

const CASES = 1000;
const normals = (count: number, cases = CASES, seed = 1) => {
  const inputs = Array.from(
    { length: count },
    (_, i): CaseInput => ({
      id: `x${i}`,
      kind: 'doubt',
      quantity: { value: 0, doubt: 1, spread: 'normal' },
    }),
  );
  const drawn = drawCases(inputs, { cases, seed });
  return { drawn, x: [...drawn.columns.values()].map(({ values }) => values) };
};
const at = (column: Float64Array | undefined, i: number): number => column?.[i] ?? Number.NaN;

describe('an influence', () => {
  it('is the share c²u² of the variance for a sum', () => {
    const { drawn, x } = normals(3, 20_000);
    const y = Float64Array.from({ length: 20_000 }, (_, i) => 3 * at(x[0], i) + 2 * at(x[1], i) + at(x[2], i));
    const { ranked } = influences(classify(drawn), y);
    expect(ranked.map(({ id }) => id)).toEqual(['x0', 'x1', 'x2']);
    for (const [k, share] of [9 / 14, 4 / 14, 1 / 14].entries()) expect(ranked[k]?.index).toBeCloseTo(share, 1.9);
  });

  it('is 1/3 for a finding that holds when the sum of two equal inputs is positive', () => {
    // E[y | x] is Φ(x), whose variance is 1/12; that of y is 1/4.
    const { drawn, x } = normals(2, 20_000);
    const holds = Uint8Array.from({ length: 20_000 }, (_, i) => (at(x[0], i) + at(x[1], i) > 0 ? 1 : 0));
    for (const { index } of influences(classify(drawn), holds).ranked)
      expect(Math.abs(index - 1 / 3)).toBeLessThan(0.015);
  });

  it('sees an input that acts through both of its ends alike', () => {
    const { drawn, x } = normals(20);
    const y = Float64Array.from({ length: CASES }, (_, i) => at(x[7], i) ** 2 + at(x[0], i) * 0.3);
    const [first] = influences(classify(drawn), y).ranked;
    expect(first).toMatchObject({ id: 'x7', clear: true });
  });

  it('has no bias for an idle input, and for the Ishigami function misses by what the classes hide', () => {
    const indices = Array.from({ length: 60 }, (_, seed) => indicesOf(3, 0, Math.PI, ishigami, { cases: CASES, seed }));
    // Standard deviations at 1,000 cases: 0.019, 0.017 and 0.007; the mean of 60 draws is √60 times closer. The 21
    // classes average the two waves of x2 over 2π/21 each, which takes off 1 − sinc²(2π/21), 3 % of its index.
    for (const [k, published, deviation, hidden] of [
      [1, 0.3139, 0.019, 0],
      [2, 0.4424, 0.017, 0.0131],
      [3, 0, 0.007, 0],
    ] as const) {
      const average = mean(indices.map(({ index }) => index(k)));
      expect(Math.abs(average - published + hidden)).toBeLessThan((4 * deviation) / Math.sqrt(60) + 0.002);
    }
  });
});

describe('the classes', () => {
  it('are the same whether the order of the cases is known or found by sorting', () => {
    const { drawn } = normals(3, 500);
    const unordered = new Map([...drawn.columns].map(([id, { kind, values }]) => [id, { id, kind, values }]));
    const found = classify({ ...drawn, columns: unordered }).columns.map(({ classOf }) => classOf);
    expect(found).toEqual(classify(drawn).columns.map(({ classOf }) => classOf));
  });

  it('keep equal values together and are otherwise as large as one another', () => {
    const values = Float64Array.from({ length: 400 }, (_, i) => (i % 4 === 0 ? 7 : (i * 37) % 400));
    const column = { id: 'x', kind: 'doubt', values } as const;
    const { count, columns } = classify({ count: 400, seed: 1, columns: new Map([['x', column]]) });
    const classOf = columns[0]?.classOf ?? new Uint8Array();
    expect(new Set([...classOf].filter((_, i) => values[i] === 7)).size).toBe(1);
    const ascending = [...values.keys()].sort((a, b) => at(values, a) - at(values, b));
    const inOrder = ascending.map((i) => classOf[i] ?? Number.NaN);
    expect(inOrder).toEqual([...inOrder].sort((a, b) => a - b));
    expect(columns[0]?.sizes.reduce((a, b) => a + b)).toBe(400);
    expect(Math.max(...(columns[0]?.sizes.slice(-5) ?? []))).toBeLessThanOrEqual(Math.ceil(400 / count) + 1);
  });
});

describe('the floor', () => {
  const { drawn } = normals(100);
  const classes = classify(drawn);
  const OUTPUTS = 300;

  it.each([
    ['normal', (z: number) => z],
    ['log-normal with a long tail', (z: number) => Math.exp(z / 2)],
    ['0 or 1, evenly', (z: number) => (z > 0 ? 1 : 0)],
    ['0 or 1, in 5 of 100 cases', (z: number) => (z > 1.645 ? 1 : 0)],
  ])('is passed by the best of 100 idle inputs about once in twenty outputs that are %s', (_name, shape) => {
    let passed = 0;
    const all: number[] = [];
    let deviation = 0;
    for (let member = 0; member < OUTPUTS; member++) {
      const random = stream(3, 'idle', member);
      const y = Float64Array.from({ length: CASES }, () => shape(random.normal()));
      const { ranked, floor, settled } = influences(classes, y);
      expect(settled).toBe(true);
      all.push(...ranked.map(({ index }) => index));
      deviation = floor.deviation;
      if (ranked.some(({ clear }) => clear)) passed++;
    }
    // 300 outputs at 5 % make 15, with a standard deviation of 3.8; rare outcomes may double it.
    expect(passed).toBeGreaterThan(2);
    expect(passed).toBeLessThan(31);
    expect(Math.abs(mean(all))).toBeLessThan((4 * deviation) / Math.sqrt(OUTPUTS));
    expect(standardDeviation(all) / deviation).toBeGreaterThan(0.95);
    expect(standardDeviation(all) / deviation).toBeLessThan(1.05);
  });

  it('rises with the number of inputs that could be lucky', () => {
    const few = influences(classify(normals(2).drawn), new Float64Array(CASES)).floor;
    const many = influences(classes, new Float64Array(CASES)).floor;
    expect(many.high).toBeGreaterThan(few.high);
    expect(many.deviation).toBe(few.deviation);
  });
});

describe('an output that cannot be ranked', () => {
  const { drawn, x } = normals(5);
  const classes = classify(drawn);

  it('is not settled when it is the same in all cases', () => {
    const { ranked, settled } = influences(classes, new Float64Array(CASES).fill(7));
    expect(settled).toBe(false);
    expect(ranked.every(({ index, clear }) => index === 0 && !clear)).toBe(true);
  });

  it('is decided by nothing when it is the same in all cases, although its mean misses it by a last digit', () => {
    const { drawn } = normals(3);
    // 0.1 has no exact binary form, so a thousand of them do not add up to a hundred exactly.
    const { ranked, settled } = influences(classify(drawn), new Float64Array(CASES).fill(0.1));
    expect(settled).toBe(false);
    for (const { index, clear } of ranked) expect([index, clear]).toEqual([0, false]);
  });

  it('is not settled when it differs in too few cases', () => {
    const rare = new Float64Array(CASES);
    for (let i = 0; i < 5; i++) rare[i] = 1;
    const { ranked, settled } = influences(classes, rare);
    expect(settled).toBe(false);
    expect(ranked.some(({ clear }) => clear)).toBe(false);
  });

  it('is not settled when it is endless in some cases', () => {
    const y = Float64Array.from({ length: CASES }, (_, i) => (i < 50 ? Number.POSITIVE_INFINITY : at(x[0], i)));
    expect(influences(classes, y)).toMatchObject({ settled: false, counted: CASES });
  });

  it('is not settled when there are hardly more cases than classes', () => {
    const few = normals(3, 4);
    expect(influences(classify(few.drawn), [1, 2, 3, 4])).toMatchObject({ settled: false });
  });

  it('leaves out the cases where it is NaN and counts them', () => {
    const y = Float64Array.from({ length: CASES }, (_, i) => (i % 4 === 0 ? Number.NaN : at(x[2], i)));
    const { ranked, counted, missing } = influences(classes, y);
    expect([counted, missing]).toEqual([750, 250]);
    expect(ranked[0]).toMatchObject({ id: 'x2', clear: true });
    expect(ranked[0]?.index).toBeGreaterThan(0.95);
  });

  it('gives an exact input no influence', () => {
    const exact: CaseInput = { id: 'fixed', kind: 'doubt', quantity: { value: 1, doubt: 0, spread: 'exact' } };
    const cases = drawCases([exact], { cases: CASES, seed: 1 });
    expect(influences(classify(cases), x[0] ?? []).ranked).toEqual([
      { id: 'fixed', kind: 'doubt', index: 0, clear: false },
    ]);
  });

  it('is refused when it has another number of cases', () => {
    expect(() => influences(classes, [1, 2])).toThrow(RangeError);
  });
});
