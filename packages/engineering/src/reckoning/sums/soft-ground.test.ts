/** The sums of soft ground, held to worked wheels on printed soils, and to a wheel that sinks too deep. */
import { SOILS } from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../dossier/resolve.ts';
import { evaluateSum, PLAIN_LAYOUT, routeTaken, strayNames, type Values } from '../testing.ts';
import { softGroundSums } from './soft-ground.ts';

const on = (...surfaces: string[]): Layout => ({
  ...PLAIN_LAYOUT,
  surfaces: surfaces.map((surface) => ({ surface, share: 1 / surfaces.length })),
});

/** Five kilograms on four wheels of 120 mm by 50 mm: 12.258 N a wheel. */
const WORKED: Values = {
  'toy.wheelDiameter': 0.12,
  'toy.wheelWidth': 0.05,
  'balance.load.1': 2 * 12.258,
  'balance.load.2': 2 * 12.258,
};

const both = (values: Values, layout: Layout) => ({
  sinkage: evaluateSum(softGroundSums['soft.sinkage'], values, layout),
  resistance: evaluateSum(softGroundSums['soft.resistance'], values, layout),
});

describe('soft ground', () => {
  it('takes 10.877 mm of the worked wheel in dry sand, and 0.226 of its weight', () => {
    // Soil values of Wong, Theory of Ground Vehicles, 2008; the wheel integrated without series gives 10.897 mm.
    const { sinkage, resistance } = both(WORKED, on('sand, dry'));
    expect(sinkage * 1000).toBeCloseTo(10.877, 2);
    expect(resistance).toBeCloseTo(0.226, 3);
  });

  it('takes 1.979 mm and 0.099 on a moist sandy loam, which stands for damp sand', () => {
    const { sinkage, resistance } = both(WORKED, on('sand, damp'));
    expect(sinkage * 1000).toBeCloseTo(1.979, 2);
    expect(resistance).toBeCloseTo(0.099, 3);
  });

  it('takes 10.171 mm and 0.297 of a lighter wheel of 65 mm by 30 mm in dry sand', () => {
    const light: Values = {
      'toy.wheelDiameter': 0.065,
      'toy.wheelWidth': 0.03,
      'balance.load.1': 2 * 4.903,
      'balance.load.2': 2 * 4.903,
    };
    const { sinkage, resistance } = both(light, on('sand, dry'));
    expect(sinkage * 1000).toBeCloseTo(10.171, 2);
    expect(resistance).toBeCloseTo(0.297, 3);
  });

  it('is taken for the hardest going of the surfaces named, whatever their order', () => {
    const alone = (surface: string) => both(WORKED, on(surface)).resistance;
    expect(alone('earth, wet')).toBeGreaterThan(alone('sand, dry'));
    expect(alone('sand, dry')).toBeGreaterThan(alone('sand, damp'));
    expect(both(WORKED, on('sand, damp', 'tarmac, dry', 'earth, wet')).resistance).toBe(alone('earth, wet'));
  });

  it('means nothing where no surface is soft', () => {
    const hard = softGroundSums['soft.sinkage'].when?.(on('tarmac, dry', 'grass, short'), () => false);
    expect(hard).toBe(false);
  });

  it('sinks by the heaviest wheel: a single wheel under an axle carries all of it', () => {
    const three: Layout = {
      ...on('sand, damp'),
      axles: [
        { wheels: 1, driven: false, steered: true, sprung: false },
        { wheels: 2, driven: true, steered: false, sprung: false },
      ],
    };
    const values = { ...WORKED, 'balance.load.1': 12.258 };
    expect(both(values, three).sinkage * 1000).toBeCloseTo(1.979, 2);
  });

  it('refuses to answer for a wheel that sinks too deep, and says so', () => {
    const narrow = { ...WORKED, 'toy.wheelWidth': 0.012 };
    expect(() => both(narrow, on('sand, dry'))).toThrow(/sinks/);
  });

  it('says which soil of the table it took, with its source', () => {
    const taken = routeTaken(softGroundSums['soft.resistance'], WORKED, on('sand, dry')).takes?.(on('sand, dry')) ?? {};
    expect(taken.exponent?.value).toBe(SOILS['dry sand'].exponent);
    expect(Object.values(taken).every(({ is, source }) => /dry sand/.test(is) && /Wong/.test(source))).toBe(true);
  });

  it.each(Object.entries(softGroundSums))('%s names in its formula what it uses, and nothing else', (_, sum) => {
    expect(strayNames(sum, on('sand, dry'))).toEqual([]);
  });
});
