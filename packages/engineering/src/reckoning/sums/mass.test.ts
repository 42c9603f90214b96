/**
 * The sums of mass and of the mass centre: counted by hand, held to the law of combined centres with every part laid
 * out as a point mass, and to what must not change when nothing is changed.
 */
import { combinedCentre, type PlacedMass } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../dossier/resolve.ts';
import type { Ref } from '../sum.ts';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { massSums } from './mass.ts';

const RUNS = ['pack', 'bridge', 'motor', 'converter', 'board'] as const;
const PARTS = [
  'pack',
  'converter',
  'bridge',
  'computer',
  'camera',
  'modem',
  'aerial',
  'servo',
  'enclosure',
  'fixings',
] as const;

const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const layout = (changes: Partial<Layout>): Layout => ({ ...PLAIN_LAYOUT, ...changes });
const BARE = layout({ steering: 'on-off', enclosure: false });

/** Every part weighs the same. */
const equalParts = (mass: number): Values => ({
  ...Object.fromEntries(PARTS.map((part) => [`${part}.mass`, mass])),
  'fuse.mass': mass,
  'mass.wiring': mass,
});

describe('what the conversion adds', () => {
  it('counts every run out and back, and the motor run once a motor', () => {
    const values = Object.fromEntries(
      RUNS.flatMap((run): [Ref, number][] => [
        [`run.${run}.length`, 0.2],
        [`run.${run}.massPerMetre`, 0.01],
        [`run.${run}.contactMass`, 0.003],
      ]),
    );
    // 0.4 m of wire at 10 g/m and 3 g of contacts make 7 g a run: four runs and two motor runs.
    expect(evaluateSum(massSums['mass.wiring'], values, layout({ motors: 2 }))).toBeCloseTo(0.042, 12);
  });

  it('counts a servo and an enclosure where the vehicle has them, and each bridge board', () => {
    const values = equalParts(0.01);
    expect(evaluateSum(massSums['mass.added'], values)).toBeCloseTo(0.12, 12);
    expect(evaluateSum(massSums['mass.added'], values, BARE)).toBeCloseTo(0.1, 12);
    expect(evaluateSum(massSums['mass.added'], values, layout({ bridges: 3 }))).toBeCloseTo(0.14, 12);
  });

  it('takes out what is removed and puts the payload on top', () => {
    const values: Values = { 'toy.mass': 1.6, 'toy.removed': 0.25, 'mass.added': 0.7, 'want.payload': 0.1 };
    expect(evaluateSum(massSums['mass.total'], values)).toBeCloseTo(2.15, 12);
    expect(evaluateSum(massSums['mass.ratio'], { 'mass.total': 2.4, 'toy.mass': 1.6 })).toBeCloseTo(1.5, 12);
  });
});

describe('the mass centre', () => {
  const places = fc.record({
    toy: span(0.8, 4),
    removed: span(0, 0.3),
    centre: span(0.05, 0.2),
    parts: fc.array(fc.record({ mass: span(0.005, 0.4), at: span(0.01, 0.3) }), { minLength: 11, maxLength: 11 }),
    fuse: span(0.001, 0.02),
    wiring: span(0.01, 0.1),
  });

  it('is that of all point masses together, what was removed counted negative', () => {
    fc.assert(
      fc.property(places, fc.constantFrom('behind', 'height') as fc.Arbitrary<'behind' | 'height'>, (drawn, way) => {
        const placed = [...PARTS, 'payload'] as const;
        const mass = (part: (typeof placed)[number]): Ref => (part === 'payload' ? 'want.payload' : `${part}.mass`);
        const values: Record<string, number> = {
          'toy.mass': drawn.toy,
          'toy.removed': drawn.removed,
          'balance.toyCentreBehind': drawn.centre,
          'toy.centreHeight': drawn.centre,
          'fuse.mass': drawn.fuse,
          'mass.wiring': drawn.wiring,
        };
        placed.forEach((part, i) => {
          values[mass(part)] = drawn.parts[i]?.mass ?? 0;
          values[`at.${part}.${way}`] = drawn.parts[i]?.at ?? 0;
        });
        const points: PlacedMass[] = [
          { mass: drawn.toy, at: drawn.centre },
          { mass: -drawn.removed, at: drawn.centre },
          ...drawn.parts,
          { mass: drawn.fuse, at: values[`at.pack.${way}`] as number },
          { mass: drawn.wiring, at: values[`at.bridge.${way}`] as number },
        ];
        const moment = way === 'behind' ? 'mass.momentBehind' : 'mass.momentHeight';
        const centre = way === 'behind' ? 'balance.centreBehind' : 'balance.centreHeight';
        values[moment] = evaluateSum(massSums[moment], values);
        values['mass.total'] = points.reduce((total, point) => total + point.mass, 0);
        expect(evaluateSum(massSums[centre], values)).toBeCloseTo(combinedCentre(points), 9);
      }),
    );
  });

  it('stays where it was when parts are added at it', () => {
    const at = (way: string) => [...PARTS, 'payload'].map((part) => [`at.${part}.${way}`, 0.1]);
    const values = { ...equalParts(0.03), 'want.payload': 0.2, ...Object.fromEntries(at('behind')) };
    const total = 1.5 - 0.2 + 12 * 0.03 + 0.2;
    const moment = evaluateSum(massSums['mass.momentBehind'], values);
    expect(
      evaluateSum(massSums['balance.centreBehind'], {
        'toy.mass': 1.5,
        'toy.removed': 0.2,
        'balance.toyCentreBehind': 0.1,
        'mass.momentBehind': moment,
        'mass.total': total,
      }),
    ).toBeCloseTo(0.1, 12);
  });

  it('rises with a mast and never with what is taken out', () => {
    const height = (mast: number, removed: number) => {
      const values: Values = {
        ...equalParts(0.05),
        'want.payload': 0,
        ...Object.fromEntries([...PARTS, 'payload'].map((part) => [`at.${part}.height`, 0.08])),
        'at.camera.height': mast,
        'toy.mass': 1.5,
        'toy.removed': removed,
        'toy.centreHeight': 0.06,
        'mass.total': 1.5 - removed + 0.6,
      };
      const moment = evaluateSum(massSums['mass.momentHeight'], values);
      return evaluateSum(massSums['balance.centreHeight'], { ...values, 'mass.momentHeight': moment });
    };
    // 50 g raised by 0.4 m on 1.9 kg: 0.02 kg·m / 1.9 kg.
    expect(height(0.5, 0.2) - height(0.1, 0.2)).toBeCloseTo(0.02 / 1.9, 9);
    expect(height(0.5, 0.4)).toBeGreaterThan(height(0.5, 0));
  });

  it('of the toy is taken as stated, else from the axle weights', () => {
    const positions: Values = { 'axle.2.position': 0.1, 'axle.3.position': 0.25, 'balance.wheelbase': 0.25 };
    const [first, second] = PLAIN_LAYOUT.axles as [Layout['axles'][0], Layout['axles'][0]];
    const three = layout({ axles: [first, second, second] });
    const centre = (values: Values, on = PLAIN_LAYOUT) =>
      evaluateSum(massSums['balance.toyCentreBehind'], { ...positions, ...values }, on);
    expect(centre({ 'toy.centreBehind': 0.09 })).toBe(0.09);
    // Two scales that read 400 g and 600 g, 0.25 m apart: 0.25 · 0.6.
    expect(centre({ 'axle.1.load': 0.4, 'axle.2.load': 0.6 })).toBeCloseTo(0.15, 12);
    expect(centre({ 'axle.1.load': 0.5, 'axle.2.load': 0.3, 'axle.3.load': 0.2 }, three)).toBeCloseTo(0.08, 12);
  });
});

describe('wheelbase and track', () => {
  const [front, rear] = PLAIN_LAYOUT.axles as [Layout['axles'][0], Layout['axles'][0]];
  const three = layout({ axles: [front, rear, rear] });
  const single = layout({ axles: [{ ...front, wheels: 1 }, rear] });

  it('end at the last axle, whatever the number of axles', () => {
    const positions: Values = { 'axle.2.position': 0.13, 'axle.3.position': 0.26 };
    expect(evaluateSum(massSums['balance.wheelbase'], positions)).toBe(0.13);
    expect(evaluateSum(massSums['balance.wheelbase'], positions, three)).toBe(0.26);
    expect(massSums['balance.wheelbase'].when?.(layout({ axles: [rear] }), () => false)).toBe(false);
  });

  it('take the narrowest pair of wheels and never a single wheel', () => {
    const tracks: Values = { 'axle.1.track': 0.15, 'axle.2.track': 0.18 };
    expect(evaluateSum(massSums['balance.track'], tracks)).toBe(0.15);
    expect(evaluateSum(massSums['balance.track'], tracks, single)).toBe(0.18);
  });
});

describe('every sum of mass and balance', () => {
  it.each(Object.entries(massSums))('%s names in its formula what it uses, and nothing else', (_, sum) => {
    expect(strayNames(sum)).toEqual([]);
  });
});
