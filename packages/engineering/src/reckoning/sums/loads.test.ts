/**
 * The sums of axle loads and springs: balances of forces and moments on random vehicles, springs worked out by hand, and
 * the straight line of loads that equal springs give.
 */
import { equalSpringLoad, GRAVITY, OutOfRange } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../dossier/resolve.ts';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { loadSums } from './loads.ts';
import { springSums } from './springs.ts';

const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A layout of axles written as 'D' driven, 'S' sprung, '-' neither, 'B' both. */
const withAxles = (axles: string): Layout => ({
  ...PLAIN_LAYOUT,
  axles: [...axles].map((axle) => ({
    wheels: 2,
    driven: axle === 'D' || axle === 'B',
    steered: false,
    sprung: axle === 'S' || axle === 'B',
  })),
});

const AXLES = [1, 2, 3, 4] as const;
const loadsOf = (kind: 'toyLoad' | 'load', values: Values, layout: Layout) =>
  AXLES.slice(0, layout.axles.length).map((axle) => evaluateSum(loadSums[`balance.${kind}.${axle}`], values, layout));
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** Toy of 2 kg and vehicle of 3 kg on axles at these places, given as values. */
const standing = (places: readonly number[], toyCentre: number, centre: number): Values => ({
  ...Object.fromEntries(places.map((place, i) => [`axle.${i + 1}.position`, place])),
  'balance.wheelbase': places.at(-1) ?? 0,
  'toy.mass': 2,
  'mass.total': 3,
  'balance.toyCentreBehind': toyCentre,
  'balance.centreBehind': centre,
});

describe('axle loads', () => {
  it('balance the weight and its moment about the front axle, on two to four axles', () => {
    const places = fc.constantFrom([0, 0.25], [0, 0.12, 0.25], [0, 0.09, 0.16, 0.28]);
    fc.assert(
      fc.property(places, span(0.4, 0.6), span(0.4, 0.6), span(1000, 4000), (at, toyShare, share, rate) => {
        const last = at.at(-1) as number;
        const values = {
          ...standing(at, toyShare * last, share * last),
          ...Object.fromEntries(at.map((_, i) => [`axle.${i + 1}.springRate`, rate * (1 + 0.3 * i)])),
        };
        for (const layout of [withAxles('-'.repeat(at.length)), withAxles('S'.repeat(at.length))]) {
          const before = loadsOf('toyLoad', values, layout);
          const toyValues = Object.fromEntries(before.map((load, i) => [`balance.toyLoad.${i + 1}`, load]));
          const loads = loadsOf('load', { ...values, ...toyValues }, layout);
          expect(total(before)).toBeCloseTo(2 * GRAVITY, 9);
          expect(total(loads)).toBeCloseTo(3 * GRAVITY, 9);
          const moment = total(loads.map((load, i) => load * (at[i] as number)));
          expect(moment).toBeCloseTo(3 * GRAVITY * share * last, 9);
        }
      }),
    );
  });

  it('of equal springs lie on the straight line of the pile-group rule', () => {
    const places = [0, 0.11, 0.26];
    const values = standing(places, 0.12, 0.15);
    const mean = total(places) / 3;
    const spread = total(places.map((place) => (place - mean) ** 2));
    const expected = places.map((place) =>
      equalSpringLoad({
        load: 2 * GRAVITY,
        axles: 3,
        moment: 2 * GRAVITY * (0.12 - mean),
        position: place - mean,
        spread,
      }),
    );
    loadsOf('toyLoad', values, withAxles('---')).forEach((load, i) => {
      expect(load).toBeCloseTo(expected[i] as number, 9);
    });
  });

  it('of more than two axles keep what was weighed, and share out only what changed', () => {
    const layout = withAxles('---');
    const weighed: Values = { 'axle.1.load': 0.9, 'axle.2.load': 0.2, 'axle.3.load': 0.9 };
    const values = { ...standing([0, 0.12, 0.24], 0.12, 0.12), ...weighed };
    const before = loadsOf('toyLoad', values, layout);
    expect(before.map((load) => load / GRAVITY)).toEqual([0.9, 0.2, 0.9].map((kg) => expect.closeTo(kg, 9)));
    const loads = loadsOf(
      'load',
      { ...values, ...Object.fromEntries(before.map((load, i) => [`balance.toyLoad.${i + 1}`, load])) },
      layout,
    );
    // One kilogram more, in the middle of three equal springs: a third each.
    expect(loads.map((load) => load / GRAVITY - 1 / 3)).toEqual([0.9, 0.2, 0.9].map((kg) => expect.closeTo(kg, 9)));
  });

  it('are refused where the mass centre lies outside the axles, because it tips over', () => {
    for (const centre of [-0.02, 0.27]) {
      const values = standing([0, 0.25], 0.12, centre);
      expect(() => loadsOf('load', values, withAxles('--'))).toThrow(OutOfRange);
      expect(() => loadsOf('load', values, withAxles('--'))).toThrow(/tips over/);
    }
  });

  it('of a single axle are the whole weight', () => {
    expect(loadsOf('load', { 'mass.total': 3 }, withAxles('D'))).toEqual([expect.closeTo(29.41995, 9)]);
  });

  it('grow by the worst axle, not by the mean', () => {
    const values: Values = {
      'balance.toyLoad.1': 10,
      'balance.toyLoad.2': 5,
      'balance.load.1': 12,
      'balance.load.2': 9,
    };
    expect(evaluateSum(loadSums['balance.loadGrowth'], values)).toBeCloseTo(1.8, 12);
  });
});

describe('an inner axle on a crest', () => {
  const growth = (step: number, rate = 1500) =>
    evaluateSum(
      loadSums['balance.crestGrowth'],
      {
        ...standing([0, 0.12, 0.24], 0.12, 0.12),
        'axle.1.springRate': rate,
        'axle.2.springRate': rate,
        'axle.3.springRate': rate,
        'want.step': step,
      },
      withAxles('SSS'),
    );

  it('carries a third of the weight and two thirds of what raising its spring alone would add', () => {
    expect(growth(0)).toBeCloseTo(1, 12);
    const third = GRAVITY; // of 3 kg
    expect(growth(0.002)).toBeCloseTo((third + (2 / 3) * 1500 * 0.002) / third, 9);
  });

  it('ends by carrying all of it, when the crest is so high that the others hang', () => {
    expect(growth(0.05, 20_000)).toBeCloseTo(3, 6);
  });

  it('means something only where every spring of three axles or more is known', () => {
    const when = loadSums['balance.crestGrowth'].when;
    expect(['SSS', 'SS', 'SS-', '---'].map((axles) => when?.(withAxles(axles), () => false))).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
});

describe('the driven share', () => {
  it('is the weight on driven axles over all of it', () => {
    const values: Values = { 'balance.load.1': 4, 'balance.load.2': 6, 'balance.load.3': 10 };
    const share = (axles: string) => evaluateSum(loadSums['balance.drivenShare'], values, withAxles(axles));
    expect(share('-DD')).toBeCloseTo(0.8, 12);
    expect(share('D--')).toBeCloseTo(0.2, 12);
    expect(share('DDD')).toBe(1);
  });

  it('needed is the whole weight where the slope is the one that grip allows with every wheel driven', () => {
    // Adhesion 0.6, rolling 0.05: tan θ = 0.55, 28.81° (a published rule of traction, worked by hand).
    const needed = evaluateSum(loadSums['balance.drivenNeeded'], {
      'want.slope': Math.atan(0.55),
      'ground.rollingWorst': 0.05,
      'ground.adhesionWorst': 0.6,
    });
    expect(needed).toBeCloseTo(1, 12);
  });
});

describe('the springs', () => {
  /** One kilogram more on the rear axle and nothing on the front one. */
  const values: Values = {
    'balance.toyLoad.1': 10,
    'balance.load.1': 10,
    'balance.toyLoad.2': 10,
    'balance.load.2': 10 + GRAVITY,
    'axle.1.springRate': 1000,
    'axle.2.springRate': 1000,
    'axle.1.springTravel': 0.008,
    'axle.2.springTravel': 0.015,
    'toy.clearance': 0.03,
    'balance.springUsed': 0.01,
  };

  it('of 1000 N/m sink 9.81 mm under a kilogram', () => {
    expect(evaluateSum(springSums['balance.springUsed'], values, withAxles('SS'))).toBeCloseTo(0.00980665, 9);
  });

  it('keep their travel by the worst axle', () => {
    expect(evaluateSum(springSums['balance.springLeft'], values, withAxles('SS'))).toBeCloseTo(0.015 - 0.00980665, 9);
    expect(evaluateSum(springSums['balance.springLeft'], values, withAxles('S-'))).toBeCloseTo(0.008, 9);
  });

  it('count where they are: a stiff axle neither sinks nor costs clearance', () => {
    expect(evaluateSum(springSums['balance.springUsed'], values, withAxles('S-'))).toBeCloseTo(0, 12);
    expect(evaluateSum(springSums['balance.clearance'], values, withAxles('SS'))).toBeCloseTo(0.02, 12);
    expect(evaluateSum(springSums['balance.clearance'], values, withAxles('--'))).toBe(0.03);
    expect(springSums['balance.springUsed'].when?.(withAxles('--'), () => false)).toBe(false);
  });
});

describe('every sum of loads and springs', () => {
  it.each(Object.entries({ ...loadSums, ...springSums }))('%s names what it uses, and nothing else', (_, sum) => {
    expect(strayNames(sum)).toEqual([]);
  });
});
