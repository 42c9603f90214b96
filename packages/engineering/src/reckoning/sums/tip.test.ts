/**
 * The sums of tipping: a worked vehicle of 250 mm wheelbase, turns put back into the acceleration that tips, and the
 * outline of three wheels searched by brute force.
 */
import { GRAVITY, tipAcceleration } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../dossier/resolve.ts';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values, withSums } from '../testing.ts';
import { tipSums } from './tip.ts';

const DEGREE = Math.PI / 180;
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Wheelbase 250 mm, mass centre 140 mm behind the front axle and 80 mm up, track 200 mm. */
const WORKED: Values = {
  'balance.wheelbase': 0.25,
  'balance.centreBehind': 0.14,
  'balance.centreHeight': 0.08,
  'balance.track': 0.2,
  'tip.support': 0.2,
  'want.slope': 0,
};

const wheels = (...counts: number[]): Layout => ({
  ...PLAIN_LAYOUT,
  axles: counts.map((count) => ({ wheels: count, driven: true, steered: false, sprung: false })),
});

describe('the worked vehicle', () => {
  it('tips at 53.97° nose up, 60.26° nose down and 51.34° sideways', () => {
    // Static load transfer after Gillespie, chapters 1 and 9; 51.34° is atan 1.25.
    expect(evaluateSum(tipSums['tip.noseUp'], WORKED) / DEGREE).toBeCloseTo(53.97, 2);
    expect(evaluateSum(tipSums['tip.noseDown'], WORKED) / DEGREE).toBeCloseTo(60.26, 2);
    expect(evaluateSum(tipSums['tip.side'], WORKED) / DEGREE).toBeCloseTo(51.34, 2);
  });

  it('has a static stability factor of 1.25, and is tipped by braking of 17.16 m/s² on the level', () => {
    expect(evaluateSum(tipSums['tip.factor'], WORKED)).toBeCloseTo(1.25, 12);
    expect(evaluateSum(tipSums['tip.braking'], WORKED)).toBeCloseTo(17.16, 2);
  });

  it('tips in turns of 2 m at 4.951 m/s and of 0.8 m at 3.132 m/s', () => {
    const speed = (radius: number) =>
      evaluateSum(tipSums['tip.cornerSpeed'], { 'tip.factor': 1.25, 'want.cornerRadius': radius });
    expect(speed(2)).toBeCloseTo(4.951, 3);
    expect(speed(0.8)).toBeCloseTo(3.132, 3);
  });

  it('tips on the level where the mass centre lies outside the axles', () => {
    for (const centre of [-0.01, 0.26]) {
      const values = { ...WORKED, 'balance.centreBehind': centre };
      expect(evaluateSum(tipSums['tip.noseUp'], values)).toBe(0);
      expect(evaluateSum(tipSums['tip.noseDown'], values)).toBe(0);
    }
  });
});

describe('turning', () => {
  it('on the side slope found has just the acceleration that tips it there', () => {
    fc.assert(
      fc.property(span(0.3, 2.5), span(0.2, 1.5), span(0.5, 5), (factor, cap, radius) => {
        const slope = evaluateSum(tipSums['tip.sideTurning'], {
          'tip.factor': factor,
          'safe.speedCap': cap,
          'want.cornerRadius': radius,
        });
        fc.pre(slope > 0);
        expect(tipAcceleration({ stability: factor, sideSlope: slope })).toBeCloseTo(cap ** 2 / radius, 9);
      }),
    );
  });

  it('at 7.214 m/s² tips a factor of 1.25 on a side slope of 15°', () => {
    const values: Values = { 'tip.factor': 1.25, 'safe.speedCap': Math.sqrt(7.214), 'want.cornerRadius': 1 };
    expect(evaluateSum(tipSums['tip.sideTurning'], values) / DEGREE).toBeCloseTo(15, 2);
  });

  it('that tips it by itself leaves no side slope', () => {
    const values: Values = { 'tip.factor': 0.4, 'safe.speedCap': 3, 'want.cornerRadius': 0.5 };
    expect(evaluateSum(tipSums['tip.sideTurning'], values)).toBe(0);
  });

  it('at the wanted tip speed uses three fifths of the acceleration that tips it', () => {
    const need = evaluateSum(tipSums['tip.cornerNeeded'], { 'safe.speedCap': 1.2 });
    expect(1.2 ** 2 / need ** 2).toBeCloseTo(0.6, 12);
  });

  it('at the corner limit is held by the ground and stays below three fifths of tipping, one of them just so', () => {
    fc.assert(
      fc.property(span(0.2, 2.5), span(0.1, 1.2), span(0.3, 5), (factor, adhesion, radius) => {
        const values = withSums(
          { a: tipSums['tip.sideAcceleration'] },
          { 'tip.factor': factor, 'ground.adhesionWorst': adhesion, 'want.cornerRadius': radius },
        );
        const acceleration = evaluateSum(tipSums['tip.sideAcceleration'], values);
        const speed = evaluateSum(tipSums['tip.cornerLimit'], { ...values, 'tip.sideAcceleration': acceleration });
        const needed = speed ** 2 / radius / GRAVITY;
        expect(Math.max(needed / adhesion, needed / (0.6 * factor))).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the width it stands on', () => {
  it('is the narrowest track where every axle has two wheels', () => {
    expect(evaluateSum(tipSums['tip.support'], { 'balance.track': 0.15 })).toBe(0.15);
  });

  it('of a three-wheeler shrinks towards the single wheel: found by leaning it until its weight leaves the triangle', () => {
    fc.assert(
      fc.property(span(0.1, 0.9), span(0.1, 0.3), fc.boolean(), (share, track, singleInFront) => {
        const wheelbase = 0.25;
        const at = share * wheelbase;
        const support = evaluateSum(
          tipSums['tip.support'],
          {
            'balance.centreBehind': at,
            'axle.1.track': track,
            'axle.2.track': track,
            'axle.2.position': wheelbase,
          },
          singleInFront ? wheels(1, 2) : wheels(2, 1),
        );
        const tip = singleInFront ? 0 : wheelbase;
        const base = wheelbase - tip;
        // The side of the triangle runs from the single wheel to the right wheel of the pair.
        const inside = (aside: number) => {
          const cross = (base - tip) * aside - (track / 2) * (at - tip);
          return Math.sign(base - tip) * cross <= 0;
        };
        let aside = 0;
        while (inside(aside)) aside += 1e-5;
        expect(support / 2).toBeCloseTo(aside, 4);
      }),
      { numRuns: 40 },
    );
  });

  it('of two wheels in line is nothing: it falls over', () => {
    const bicycle = wheels(1, 1);
    const values: Values = {
      'balance.centreBehind': 0.1,
      'axle.1.track': 0.1,
      'axle.2.track': 0.1,
      'axle.2.position': 0.25,
      'balance.centreHeight': 0.08,
    };
    const support = evaluateSum(tipSums['tip.support'], values, bicycle);
    expect(support).toBe(0);
    expect(evaluateSum(tipSums['tip.side'], { ...values, 'tip.support': support }, bicycle)).toBe(0);
    expect(evaluateSum(tipSums['tip.cornerSpeed'], { 'tip.factor': 0, 'want.cornerRadius': 1 }, bicycle)).toBe(0);
  });

  it('of wheels on three axles takes the outer pairs where the middle wheel stands alone', () => {
    const values: Values = {
      'balance.centreBehind': 0.12,
      'axle.1.track': 0.2,
      'axle.2.track': 0.2,
      'axle.3.track': 0.2,
      'axle.2.position': 0.12,
      'axle.3.position': 0.24,
    };
    expect(evaluateSum(tipSums['tip.support'], values, wheels(2, 1, 2))).toBeCloseTo(0.2, 12);
  });
});

describe('braking downhill', () => {
  it('tips on less the steeper the descent, by g · sin θ and the lost lever', () => {
    const at = (slope: number) => evaluateSum(tipSums['tip.braking'], { ...WORKED, 'want.slope': slope });
    // Where the slope alone tips it forwards, no braking is left.
    expect(at(Math.atan(0.14 / 0.08))).toBeCloseTo(0, 9);
    expect(at(0.2)).toBeLessThan(at(0.1));
  });

  it('at its hardest is what was measured, or what the motors do, but no more than the ordinary ground grips', () => {
    const level = (values: Values) => evaluateSum(tipSums['tip.brakingMost'], { 'want.slope': 0, ...values });
    expect(level({ 'driving.braking': 2, 'ground.adhesion': 0.6 })).toBeCloseTo(2, 12);
    // 0.6 · g is the 5.884 m/s² of a published stopping example.
    expect(level({ 'driving.braking': 9, 'ground.adhesion': 0.6 })).toBeCloseTo(5.884, 3);
    const motors: Values = { 'safe.shortedForce': 4, 'mass.total': 2, 'ground.rolling': 0.05, 'ground.adhesion': 0.6 };
    expect(level(motors)).toBeCloseTo(2 + 0.05 * GRAVITY, 12);
  });
});

describe('every sum of tipping', () => {
  it.each(Object.entries(tipSums))('%s names in its formula what it uses, and nothing else', (_, sum) => {
    expect(strayNames(sum)).toEqual([]);
  });
});
