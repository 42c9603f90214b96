/**
 * Goal: the first thing on the list is the one worth measuring, and measuring it does what the list promises.
 * Method: planted vehicles whose open verdicts hang on known inputs; burdock with its first input really measured.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Input } from '../dossier/resolve.ts';
import { quantile } from '../quantity/bands.ts';
import { makeQuantity } from '../quantity/quantity.ts';
import { measureNext } from './measure-next.ts';
import {
  constant,
  type PlantedInputs,
  plantedFinding,
  plantedSums,
  plantedVehicle,
  vehicleOf,
  withInput,
} from './planted.fixture.ts';
import { reckon, reckonWith } from './reckon.ts';
import { type Sum, sum } from './sum.ts';

const burdock = vehicleOf(readFileSync(new URL('../../../../examples/reedmere/burdock.json', import.meta.url), 'utf8'));
const about = { title: 'planted', unit: '1' };

const total: Sum = sum(about, {
  uses: { m: 'toy.mass', l: 'toy.length', w: 'toy.width' },
  formula: '{m} + {l} + {w}',
  laws: [],
  value: ({ m, l, w }) => m + l + w,
});

/** Measures next on a vehicle with one finding: that the total of three inputs is at least so much. */
function next(inputs: PlantedInputs, need: number, cases = 4000) {
  const sums = plantedSums({ 'mass.total': total, 'mass.ratio': constant(need) });
  const table = { 'approach-angle': plantedFinding('mass.total', 'mass.ratio') };
  return measureNext(reckonWith(sums, table, plantedVehicle(inputs), { cases }));
}

describe('one doubt that decides everything', () => {
  const alone = next({ 'toy.mass': '1 … 2 kg', 'toy.length': '1 m ± 0.1 mm', 'toy.width': '1 m ± 0.1 mm' }, 3.5);

  it('comes first and settles nearly all', () => {
    expect(alone.ranked[0]?.input.id).toBe('toy.mass');
    expect(alone.ranked[0]?.settles).toBeGreaterThan(0.95);
    expect(alone.ranked[0]?.settles).toBeLessThanOrEqual(1);
    expect(alone.ranked[0]?.findings.map(({ id }) => id)).toEqual(['approach-angle']);
  });

  it('leaves idle inputs off the list, above a floor that is printed', () => {
    expect(alone.ranked).toHaveLength(1);
    expect(alone.floor).toBeGreaterThan(0);
    expect(alone.floor).toBeLessThan(0.1);
  });

  it('leaves p (1 − p) open', () => {
    expect(alone.open).toBeCloseTo(0.25, 2);
    expect(next({ 'toy.mass': '1 … 2 kg', 'toy.length': '1 m', 'toy.width': '1 m' }, 3.9).open).toBeCloseTo(0.09, 2);
  });

  it('is nothing to measure where every verdict is plain', () => {
    const plain = next({ 'toy.mass': '1 … 2 kg', 'toy.length': '1 m', 'toy.width': '1 m' }, 1);
    expect(plain).toEqual({ ranked: [], open: 0, floor: 0 });
  });
});

describe('what cannot be measured away', () => {
  it('is never listed: settings, what varies from day to day, what is exact', () => {
    const ids = (is: 'setting' | 'variation' | 'worst') =>
      next({ 'toy.mass': { text: '1 … 2 kg', is }, 'toy.length': '1 … 1.5 m', 'toy.width': '1 m' }, 3.75).ranked.map(
        ({ input }) => input.id,
      );
    expect(ids('setting')).toEqual(['toy.length']);
    expect(ids('variation')).toEqual(['toy.length']);
    // The declared worst, such as the steepest slope of a place, can be looked at more closely.
    expect(ids('worst')).toEqual(['toy.mass', 'toy.length']);
  });

  it('takes no part in the list of burdock, whose every entry stands above the floor', () => {
    const { ranked, floor } = measureNext(reckon(burdock));
    expect(ranked.length).toBeGreaterThan(3);
    for (const { input, settles } of ranked) {
      expect(['doubt', 'worst'], input.id).toContain(input.behaviour);
      expect(input.quantity.spread, input.id).not.toBe('exact');
      expect(settles, input.id).toBeGreaterThan(floor);
    }
    const order = ranked.map(({ settles }) => settles);
    expect(order).toEqual([...order].sort((a, b) => b - a));
  });
});

describe('the promise of the list', () => {
  const CASES = { cases: 4000 };
  const before = reckon(burdock, CASES);
  const promised = measureNext(before);
  const [first] = promised.ranked;
  if (first === undefined) throw new Error('burdock has nothing to measure');
  const openWith = (input: Input) => measureNext(reckon(withInput(burdock, input), CASES)).open;

  it('holds for burdock: with the doubt of its first entry cut to a tenth, less is open', () => {
    const { quantity } = first.input;
    const finer = { ...quantity, doubt: quantity.doubt / 10 };
    expect(openWith({ ...first.input, quantity: finer })).toBeLessThan(promised.open);
  });

  it('holds in its amount: over all it may turn out to be, what is settled is the share that was named', () => {
    const column = before.study.inputs.get(first.input.id) ?? new Float64Array(0);
    const cases = column.subarray(0, before.study.count);
    // Ten equally likely truths, each in the middle of its tenth.
    const truths = Array.from({ length: 10 }, (_, i) => quantile(cases, (i + 0.5) / 10));
    const left = truths.map((value) => {
      const { unit } = first.input.facts;
      const exact = makeQuantity({ form: 'exact', number: 1, unit });
      return openWith({ ...first.input, quantity: { ...exact, value } });
    });
    const mean = left.reduce((sum, open) => sum + open, 0) / left.length;
    expect(Math.abs(1 - mean / promised.open - first.settles)).toBeLessThan(0.06);
  });
});
