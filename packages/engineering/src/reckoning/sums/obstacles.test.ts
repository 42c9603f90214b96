/**
 * The sums of obstacles: published clearance angles and step problems, a plane swept over nose and tyre, and contact
 * forces searched for the highest step.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../dossier/resolve.ts';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { obstacleSums } from './obstacles.ts';

const DEGREE = Math.PI / 180;
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Axles from the front: 'D' driven, 'S' steered, 'B' both, '-' neither; 'p' sprung and driven. */
const withAxles = (axles: string, changes: Partial<Layout> = {}): Layout => ({
  ...PLAIN_LAYOUT,
  axles: [...axles].map((axle) => ({
    wheels: 2,
    driven: 'DBp'.includes(axle),
    steered: 'SB'.includes(axle),
    sprung: axle === 'p',
  })),
  ...changes,
});

const approach = (radius: number, ahead: number, height: number) =>
  evaluateSum(obstacleSums['clear.approach'], {
    'toy.wheelDiameter': 2 * radius,
    'toy.frontOverhang': ahead,
    'clear.noseHeight': height,
  });

describe('approach and departure', () => {
  it.each([
    [0.06, 0.08, 0.04, 32.65],
    [0.06, 0.1, 0.05, 30.946],
    [0.05, 0.1, 0.05, 30],
  ])('of wheels of radius %f with a hard point %f ahead and %f up is %f°', (radius, ahead, height, degrees) => {
    // ISO 612 geometry; the last row is an identity (height = radius, ahead = two radii).
    expect(approach(radius, ahead, height) / DEGREE).toBeCloseTo(degrees, 2);
    const departure = evaluateSum(obstacleSums['clear.departure'], {
      'toy.wheelDiameter': 2 * radius,
      'toy.rearOverhang': ahead,
      'clear.tailHeight': height,
    });
    expect(departure / DEGREE).toBeCloseTo(degrees, 2);
  });

  it('is the first tilt of a plane rolling up the tyre at which the hard point stands out of it, and 90° if none is', () => {
    fc.assert(
      fc.property(span(0.02, 0.09), span(0.005, 0.15), span(0, 0.15), (radius, ahead, height) => {
        const step = 0.0005;
        let tilt = 0;
        // The plane touches the tyre; the point stands out where it lies farther along the plane's normal than the tyre.
        const outside = () => ahead * Math.sin(tilt) - (height - radius) * Math.cos(tilt) > radius;
        while (tilt < Math.PI / 2 && !outside()) tilt += step;
        const found = Math.min(tilt, Math.PI / 2);
        const angle = approach(radius, ahead, height);
        // A point that only just stands out of the tyre is passed over by the sweep.
        fc.pre(Math.abs(Math.hypot(ahead, height - radius) - radius) > 1e-4);
        expect(Math.abs(angle - found)).toBeLessThanOrEqual(step + 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  it('loses what the springs are pressed down by, and ends on the ground', () => {
    const height = (used: number) =>
      evaluateSum(
        obstacleSums['clear.noseHeight'],
        { 'toy.frontHeight': 0.04, 'balance.springUsed': used },
        withAxles('pp'),
      );
    expect(height(0.015)).toBeCloseTo(0.025, 12);
    expect(height(0.06)).toBe(0);
    expect(evaluateSum(obstacleSums['clear.tailHeight'], { 'toy.rearHeight': 0.04 }, withAxles('DD'))).toBe(0.04);
  });
});

describe('breakover', () => {
  const breakover = (places: readonly number[], clearance: number, radius: number) =>
    evaluateSum(
      obstacleSums['clear.breakover'],
      {
        ...Object.fromEntries(places.map((place, i) => [`axle.${i + 2}.position`, place])),
        'balance.clearance': clearance,
        'toy.wheelDiameter': 2 * radius,
      },
      withAxles('D'.repeat(places.length + 1)),
    ) / DEGREE;

  it('is 28.655°, 57.371° and 31.225° for three worked vehicles', () => {
    expect(breakover([0.25], 0.03, 0.06)).toBeCloseTo(28.655, 2);
    // 2 · asin 0.48: the belly at axle height.
    expect(breakover([0.25], 0.06, 0.06)).toBeCloseTo((2 * Math.asin(0.48)) / DEGREE, 9);
    expect(breakover([0.3], 0.04, 0.05)).toBeCloseTo(31.225, 2);
  });

  it('counts the widest gap between neighbours: a middle axle helps, an outer one does not', () => {
    expect(breakover([0.05, 0.3], 0.03, 0.06)).toBeCloseTo(28.655, 2);
    expect(breakover([0.15, 0.3], 0.03, 0.05)).toBeGreaterThan(breakover([0.3], 0.03, 0.05));
  });

  it('is never met where the tyres cover the belly', () => {
    expect(breakover([0.1], 0.055, 0.06)).toBe(180);
  });
});

describe('the highest step', () => {
  const twoAxles = (axles: string, adhesion: number, values: Values = {}) =>
    evaluateSum(
      obstacleSums['step.limit'],
      {
        'toy.wheelDiameter': 0.12,
        'balance.wheelbase': 0.25,
        'balance.centreBehind': 0.125,
        'balance.centreHeight': 0.09,
        'ground.adhesionWorst': adhesion,
        ...values,
      },
      withAxles(axles),
    );

  it.each([
    [0.4, 12.2],
    [0.6, 21.9],
    [0.8, 31.4],
    [1, 40.2],
  ])('with both axles driven and adhesion %f is %f mm, by a program for contact forces', (adhesion, millimetres) => {
    expect(twoAxles('DD', adhesion) * 1000).toBeCloseTo(millimetres, 1);
  });

  it('of a textbook kerb: 66.7 mm with the front axle driven, 36.4 mm with the rear', () => {
    // Statics, probably Beer & Johnston: wheels of 280 mm radius, adhesion 0.85, 60 % of the weight in front.
    const kerb: Values = { 'toy.wheelDiameter': 0.56, 'balance.wheelbase': 1, 'balance.centreBehind': 0.4 };
    expect(twoAxles('D-', 0.85, kerb) * 1000).toBeCloseTo(66.66, 1);
    expect(twoAxles('-D', 0.85, kerb) * 1000).toBeCloseTo(36.4, 1);
  });

  const manyAxles = (axles: string, loads: readonly number[], adhesion: number, radius = 0.06) =>
    evaluateSum(
      obstacleSums['step.limit'],
      {
        'toy.wheelDiameter': 2 * radius,
        'ground.adhesionWorst': adhesion,
        ...Object.fromEntries(loads.map((load, i) => [`balance.load.${i + 1}`, load])),
      },
      withAxles(axles),
    );

  it('of three equally loaded driven axles is 0.846 of the radius at adhesion 0.6, and all of it from 1/√2 on', () => {
    expect(manyAxles('DDD', [5, 5, 5], 0.6) / 0.06).toBeCloseTo(0.846, 3);
    // A vertical face is climbed where the share carried is μ²/(1 + μ²): a third at 1/√2.
    expect(manyAxles('DDD', [5, 5, 5], Math.SQRT1_2) / 0.06).toBeCloseTo(1, 9);
  });

  it('of a vehicle with undriven axles is the highest for which contact forces can be found at every axle', () => {
    const axle = fc.record({ load: span(1, 20), driven: fc.boolean() });
    fc.assert(
      fc.property(fc.array(axle, { minLength: 3, maxLength: 4 }), span(0.1, 1.2), (drawn, adhesion) => {
        fc.pre(drawn.some(({ driven }) => driven));
        const radius = 0.06;
        const found = drawn.map(({ load, driven }, i) => {
          const pull = drawn.reduce((sum, a, k) => (k !== i && a.driven ? sum + adhesion * a.load : sum), 0);
          const grip = driven ? adhesion : 0;
          // The edge pushes back at a lean; its grip is used in full, the others push with all they have.
          const passes = (lean: number) => {
            const normal = load / (Math.cos(lean) + grip * Math.sin(lean));
            return normal * (Math.sin(lean) - grip * Math.cos(lean)) <= pull;
          };
          let lean = 0;
          while (lean < Math.PI / 2 && passes(lean)) lean += 0.0005;
          return radius * (1 - Math.cos(Math.min(lean, Math.PI / 2)));
        });
        const step = manyAxles(
          drawn.map(({ driven }) => (driven ? 'D' : '-')).join(''),
          drawn.map(({ load }) => load),
          adhesion,
        );
        expect(Math.abs(step - Math.min(...found))).toBeLessThan(4e-5);
      }),
      { numRuns: 60 },
    );
  });

  it('of a single axle is what its wheels climb by themselves', () => {
    // h/r = 1 − 1/√2 at adhesion 1.
    expect(manyAxles('D', [10], 1) / 0.06).toBeCloseTo(1 - Math.SQRT1_2, 12);
  });
});

describe('the tightest turn', () => {
  const radius = (axles: string, degrees: number, places: readonly number[], changes: Partial<Layout> = {}) =>
    evaluateSum(
      obstacleSums['turn.radius'],
      {
        'steer.angle': degrees * DEGREE,
        ...Object.fromEntries(places.map((place, i) => [`axle.${i + 2}.position`, place])),
      },
      withAxles(axles, changes),
    );

  it.each([
    [20, 0.6869],
    [25, 0.5361],
    [30, 0.433],
  ])('of a 250 mm wheelbase steered by %f° has a radius of %f m', (degrees, expected) => {
    expect(radius('SD', degrees, [0.25])).toBeCloseTo(expected, 4);
    expect(radius('DS', degrees, [0.25])).toBeCloseTo(expected, 4);
  });

  it('turns a three-axled vehicle about the middle of its two fixed axles', () => {
    expect(radius('SDD', 25, [0.2, 0.3])).toBeCloseTo(0.5361, 4);
  });

  it('halves where both axles steer against each other, and is on the spot with skid steering', () => {
    expect(radius('BB', 25, [0.25])).toBeCloseTo(0.5361 / 2, 4);
    expect(radius('DD', 25, [0.25], { steering: 'skid' })).toBe(0);
  });
});

describe('every sum of obstacles', () => {
  it.each(Object.entries(obstacleSums))('%s names in its formula what it uses, and nothing else', (_, sum) => {
    expect(strayNames(sum)).toEqual([]);
  });
});
