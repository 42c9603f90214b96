/**
 * Goal: member i of every column is possible vehicle i, the vehicle exactly as stated stands last and apart, an
 * unknown says where it comes from, and nothing but the seed and the inputs decides a column.
 * Method: planted sums with closed forms; sedge’s own columns worked out again by hand from the input columns.
 */
import { readFileSync } from 'node:fs';
import { law } from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import { correlation } from '../quantity/summary.ts';
import { constant, inputOf, plantedSums, plantedVehicle, vehicleOf, withInput } from './planted.fixture.ts';
import { ancestors, type Study, study } from './study.ts';
import { sum } from './sum.ts';
import { SUMS } from './sums/all.ts';
import type { SumId } from './sums/ids.ts';

const sedge = vehicleOf(readFileSync(new URL('../../../../examples/reedmere/sedge.json', import.meta.url), 'utf8'));
const column = (done: Study, id: SumId): Float64Array => done.sums.get(id)?.values ?? new Float64Array(0);
const input = (done: Study, id: Parameters<Study['inputs']['get']>[0]): Float64Array =>
  done.inputs.get(id) ?? new Float64Array(0);

describe('the columns of a study', () => {
  const done = study(SUMS, sedge, { cases: 200, seed: 3 });

  it('belong together case by case: sums worked out again from the input columns agree in each', () => {
    for (let i = 0; i <= done.count; i++) {
      const at = (id: Parameters<typeof input>[1]) => input(done, id)[i] as number;
      expect(column(done, 'pack.realCapacity')[i]).toBeCloseTo(at('pack.capacity') * at('pack.capacityShare'), 6);
      // Two axles, weighed one by one: the moments about the front axle must agree.
      const [front, rear, base] = [at('axle.1.load'), at('axle.2.load'), at('axle.2.position')];
      expect(column(done, 'balance.toyCentreBehind')[i]).toBeCloseTo((base * rear) / (front + rear), 9);
      // Pictures of width · height · bits per pixel, a byte having eight.
      const bytes = (at('picture.width') * at('picture.height') * at('picture.bitsPerPixel')) / 8;
      expect(column(done, 'picture.bytes')[i]).toBeCloseTo(bytes, 6);
    }
  });

  it('end with the vehicle exactly as stated', () => {
    for (const [id, { quantity }] of sedge.inputs) expect(input(done, id)[done.count]).toBe(quantity.value);
    for (const { values } of done.sums.values()) expect(values).toHaveLength(done.count + 1);
  });

  it('leave the vehicle as stated out of bands', () => {
    const vehicle = plantedVehicle({ 'toy.mass': '1 … 2 kg' });
    const outlier = sum(
      { title: 'planted', unit: '1' },
      // Only the value as stated, the middle, is hit exactly.
      { uses: { m: 'toy.mass' }, formula: '{m}', laws: [], value: ({ m }) => (m === 1.5 ? 1e9 : m) },
    );
    const planted = study(plantedSums({ 'mass.total': outlier }), vehicle, { cases: 21 });
    const { values, band } = planted.sums.get('mass.total') ?? { values: [], band: undefined };
    expect(values[21]).toBe(1e9);
    expect(band).toMatchObject({ counted: 21, missing: 0 });
    expect(band?.p95).toBeLessThan(2);
  });
});

describe('a law that is asked beyond its range', () => {
  const narrow = law(
    {
      id: 'narrow-law',
      title: 'A law of tests',
      equation: 'y = m',
      args: { mass: { symbol: 'm', is: 'a mass', unit: 'kg', to: 1.25 } },
      gives: { symbol: 'y', is: 'the same mass', unit: 'kg' },
      validFor: 'tests',
      leavesOut: 'everything',
      source: 'made up',
    },
    ({ mass }) => mass,
  );
  const about = { title: 'planted', unit: '1' };
  const sums = plantedSums({
    'mass.wiring': sum(about, {
      uses: { m: 'toy.mass' },
      formula: '{m}',
      laws: [narrow],
      value: ({ m }) => narrow({ mass: m }),
    }),
    // Neither a minimum nor a comparison may hide that what it rests on is unknown.
    'mass.added': sum(about, {
      uses: { w: 'mass.wiring' },
      formula: 'min(0, {w})',
      laws: [],
      value: ({ w }) => (w > 0 ? 1 : 0),
    }),
    'mass.total': sum(about, { uses: { a: 'mass.added' }, formula: '{a}', laws: [], value: ({ a }) => Math.min(0, a) }),
    'mass.ratio': constant(1),
    'mass.ratioMax': sum(about, {
      uses: { m: 'toy.mass' },
      formula: '1 / max(0, {m} − 1.5)',
      laws: [],
      value: ({ m }) => 1 / Math.max(0, m - 1.5),
    }),
  });
  // From 1 to 2 evenly, one case in each stratum: of 40 cases the upper 30 lie above 1.25.
  const done = study(sums, plantedVehicle({ 'toy.mass': '1 … 2 kg' }), { cases: 40 });

  it('leaves exactly those cases unknown where it cannot be used', () => {
    const masses = input(done, 'toy.mass');
    column(done, 'mass.wiring').forEach((value, i) => {
      const mass = masses[i] as number;
      if (mass > 1.25) expect(value).toBeNaN();
      else expect(value).toBe(mass);
    });
  });

  it('is named with its argument, the first value it refused and what it accepts', () => {
    const first = input(done, 'toy.mass').find((mass) => mass > 1.25);
    expect(done.sums.get('mass.wiring')?.cause).toEqual({
      cases: 30,
      at: 'mass.wiring',
      says: `narrow-law: m is ${first}; accepted: to 1.25 kg (made up)`,
    });
  });

  it('leaves every sum that rests on it unknown for the same cause, and no other', () => {
    const cause = done.sums.get('mass.wiring')?.cause;
    for (const id of ['mass.added', 'mass.total'] as const) {
      expect(done.sums.get(id)?.cause).toEqual(cause);
      expect([...column(done, id)].map(Number.isNaN)).toEqual([...column(done, 'mass.wiring')].map(Number.isNaN));
    }
    expect(done.sums.get('mass.ratio')?.cause).toBeUndefined();
  });

  it('differs from a sum that itself comes out infinite, which says so', () => {
    expect(done.sums.get('mass.ratioMax')?.cause).toEqual({
      cases: 20,
      at: 'mass.ratioMax',
      says: 'mass.ratioMax comes out as Infinity',
    });
  });

  it('counts no case where only the vehicle as stated is beyond', () => {
    const exact = sum(about, {
      uses: { m: 'toy.mass' },
      formula: '{m}',
      laws: [],
      value: ({ m }) => (m === 1.5 ? Number.NaN : m),
    });
    const planted = study(plantedSums({ 'mass.total': exact }), plantedVehicle({ 'toy.mass': '1 … 2 kg' }), {
      cases: 20,
    });
    expect(planted.sums.get('mass.total')?.cause?.cases).toBe(0);
    expect(planted.sums.get('mass.total')?.band.missing).toBe(0);
  });

  it('lets a mistake of the programmer through as it is', () => {
    const broken = sum(about, {
      uses: {},
      formula: '',
      laws: [],
      value: () => {
        throw new TypeError('slip');
      },
    });
    expect(() => study(plantedSums({ 'mass.total': broken }), plantedVehicle({}), { cases: 20 })).toThrow(TypeError);
  });
});

describe('what decides a column', () => {
  const sameColumns = (a: Study, b: Study, except: ReadonlySet<string> = new Set()) => {
    for (const [id, { values }] of a.sums) if (!except.has(id)) expect(b.sums.get(id)?.values, id).toEqual(values);
  };

  it('is neither the number of other inputs nor their order', () => {
    const before = study(SUMS, sedge, { cases: 50 });
    const unrelated = inputOf('modem.mass', '200 g ± 10 %');
    const turned = { ...sedge, inputs: new Map([...sedge.inputs].reverse()) };
    const after = study(SUMS, withInput(turned, unrelated), { cases: 50 });
    const touched = new Set<string>();
    for (const id of before.sums.keys()) {
      if (ancestors(before.graph, [id]).has('modem.mass')) touched.add(id);
    }
    expect(touched.size).toBeGreaterThan(5);
    expect(before.sums.size - touched.size).toBeGreaterThan(100);
    sameColumns(before, after, touched);
    for (const id of sedge.inputs.keys()) {
      if (id !== 'modem.mass') expect(after.inputs.get(id), id).toEqual(before.inputs.get(id));
    }
    expect(after.sums.get('mass.total')?.values).not.toEqual(before.sums.get('mass.total')?.values);
  });

  it('is the seed: the same gives the same, another another, the vehicle as stated always the same', () => {
    const [one, again, other] = [1, 1, 2].map((seed) => study(SUMS, sedge, { cases: 50, seed })) as [
      Study,
      Study,
      Study,
    ];
    sameColumns(one, again);
    let moved = 0;
    for (const [id, { values }] of one.sums) {
      expect(other.sums.get(id)?.values[50], id).toBe(values[50]);
      if (values.some((value, i) => value !== other.sums.get(id)?.values[i])) moved++;
    }
    expect(moved).toBeGreaterThan(100);
  });

  it('is a correlation that a fit has found, and none that it has not', () => {
    const done = study(plantedSums({}), sedge, { cases: 4000 });
    const r = (a: Parameters<typeof input>[1], b: Parameters<typeof input>[1]) =>
      correlation(input(done, a).subarray(0, 4000), input(done, b).subarray(0, 4000));
    expect(sedge.correlations).toEqual([
      {
        ids: ['motor.resistance', 'motor.noLoadSpeed'],
        matrix: [
          [1, 0.35],
          [0.35, 1],
        ],
      },
    ]);
    // The doubt of a correlation near 0.35 over 4000 cases is (1 − r²)/√N = 0.014, of one near 0 is 0.016.
    expect(Math.abs(r('motor.resistance', 'motor.noLoadSpeed') - 0.35)).toBeLessThan(0.05);
    expect(Math.abs(r('motor.resistance', 'motor.noLoadCurrent'))).toBeLessThan(0.05);
  });
});
