/**
 * Goal: the laws of grade, tipping, stopping, clearance, steering and skidding fit together and refuse the impossible.
 * Method: each limit is put back into the forces or loads it came from, on random vehicles.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../constants.ts';
import { combinedCentre, frontAxleLoad, rearAxleLoad } from './axles.ts';
import { breakoverAngle, crestClearance, overhangAngle } from './clearance.ts';
import { coastDistance, coastTime, rampRolling } from './coasting.ts';
import { firstClimbLimit, gradeAngle, gradeOfAngle, powerSlope, torqueSlope, tractionSlope } from './grade.ts';
import { settledSkidThrust, skidMomentTrack, skidMomentWheels, skidThrustNeeded } from './skid.ts';
import { differentialRadius, innerSteer, offTracking, outerSteer, turningRadius } from './steering.ts';
import { brakingDistance, meetingSpeed, sightSpeed, stoppingDistance } from './stopping.ts';
import { roadLoad } from './surface.ts';
import {
  brakingTip,
  corneringLimit,
  corneringSlideSpeed,
  corneringTipSpeed,
  pullAwayTip,
  tipNoseDown,
  tipNoseUp,
} from './tipping.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const shape = fc
  .record({ wheelbase: double(0.15, 0.5), along: double(0.3, 0.7), cgHeight: double(0.03, 0.12) })
  .map(({ wheelbase, along, cgHeight }) => ({ wheelbase, cgBehindFront: along * wheelbase, cgHeight }));

describe('slopes', () => {
  it('limited by grip need exactly the grip of the driven axles', () => {
    const drive = fc.constantFrom('all', 'rear', 'front');
    fc.assert(
      fc.property(shape, drive, double(0.2, 1), double(0, 0.1), (of, driven, adhesion, rolling) => {
        const slope = tractionSlope({ ...of, drive: driven, adhesion, rolling });
        const at = { ...of, mass: 3, slope, acceleration: 0 };
        const front = driven === 'rear' ? 0 : frontAxleLoad(at);
        const rear = driven === 'front' ? 0 : rearAxleLoad(at);
        expect(adhesion * (front + rear)).toBeCloseTo(roadLoad({ rolling, mass: 3, slope }), 9);
      }),
    );
  });

  it('limited by power or torque need exactly that power or torque', () => {
    fc.assert(
      fc.property(double(0.1, 0.9), double(0, 0.3), (part, rolling) => {
        const force = part * 2 * GRAVITY;
        const byPower = powerSlope({ power: force * 0.7, mass: 2, speed: 0.7, rolling });
        const byTorque = torqueSlope({ torque: force * 0.05, radius: 0.05, mass: 2, rolling });
        expect(roadLoad({ rolling, mass: 2, slope: byPower })).toBeCloseTo(force, 9);
        expect(byTorque).toBeCloseTo(byPower, 12);
      }),
    );
  });

  it('turn from percent to degrees and back', () => {
    fc.assert(
      fc.property(double(-3, 3), (grade) => {
        expect(gradeOfAngle({ slope: gradeAngle({ grade }) })).toBeCloseTo(grade, 9);
      }),
    );
  });

  it('say which limit comes first and what it gives out before', () => {
    const first = firstClimbLimit([
      { by: 'grip', slope: 0.5 },
      { by: 'torque', slope: 0.3 },
      { by: 'tipping', slope: 0.9 },
    ]);
    expect(first).toMatchObject({ by: 'torque', slope: 0.3, why: 'torque gives out before grip' });
    expect(first.ahead).toBeCloseTo(0.2, 12);
    expect(firstClimbLimit([{ by: 'grip', slope: 0.5 }]).ahead).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('tipping', () => {
  it('begins where an axle carries nothing', () => {
    fc.assert(
      fc.property(shape, double(-0.3, 0.3), (of, slope) => {
        const { cgBehindFront, cgHeight } = of;
        const at = { ...of, mass: 2, slope, acceleration: 0 };
        expect(frontAxleLoad({ ...at, slope: tipNoseUp(of) })).toBeCloseTo(0, 9);
        expect(rearAxleLoad({ ...at, slope: -tipNoseDown({ cgBehindFront, cgHeight }) })).toBeCloseTo(0, 9);
        const braking = -brakingTip({ cgBehindFront, cgHeight, slope });
        expect(rearAxleLoad({ ...at, acceleration: braking })).toBeCloseTo(0, 9);
        expect(frontAxleLoad({ ...at, acceleration: pullAwayTip({ ...of, slope }) })).toBeCloseTo(0, 9);
      }),
    );
  });

  it('or sliding ends a turn, whichever comes at the lower speed', () => {
    const beta = double(-0.2, 0.2);
    fc.assert(
      fc.property(double(0.4, 2), double(0.3, 1.4), beta, (stability, adhesion, sideSlope) => {
        const turn = { radius: 1.5, sideSlope };
        const tip = corneringTipSpeed({ ...turn, stability });
        const slide = corneringSlideSpeed({ ...turn, adhesion });
        expect(corneringLimit({ ...turn, stability, adhesion }).speed).toBeCloseTo(Math.min(tip, slide), 12);
      }),
    );
  });

  it('takes no speed at all on a side slope steeper than the tilt angle', () => {
    expect(corneringTipSpeed({ stability: 0.5, radius: 2, sideSlope: 0.6 })).toBe(0);
  });
});

describe('the centre of gravity of several parts', () => {
  it('lies between them and moves with them', () => {
    const part = fc.record({ mass: double(0.01, 5), at: double(-1, 1) });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), double(-2, 2), (parts, shift) => {
        const centre = combinedCentre(parts);
        const places = parts.map(({ at }) => at);
        expect(centre).toBeGreaterThanOrEqual(Math.min(...places) - 1e-9);
        expect(centre).toBeLessThanOrEqual(Math.max(...places) + 1e-9);
        const moved = combinedCentre(parts.map(({ mass, at }) => ({ mass, at: at + shift })));
        expect(moved).toBeCloseTo(centre + shift, 9);
      }),
    );
  });

  it('does not exist without mass', () => {
    expect(() => combinedCentre([])).toThrow(RangeError);
  });
});

describe('stopping', () => {
  it('from the speed of the sight distance uses up the sight distance', () => {
    fc.assert(
      fc.property(double(0.1, 50), double(0, 3), double(0.3, 6), (sight, reaction, deceleration) => {
        const speed = sightSpeed({ sight, reaction, deceleration });
        expect(stoppingDistance({ speed, reaction, deceleration })).toBeCloseTo(sight, 9);
        expect(brakingDistance({ speed, deceleration })).toBeLessThanOrEqual(sight + 1e-9);
      }),
    );
  });

  it('for somebody who approaches allows less speed, and refuses when he is there before the brake bites', () => {
    fc.assert(
      fc.property(double(0.2, 1.5), double(0.3, 4), (walking, deceleration) => {
        const at = { sight: 6, reaction: 1, deceleration };
        expect(meetingSpeed({ ...at, walking })).toBeLessThan(sightSpeed(at));
      }),
    );
    expect(() => meetingSpeed({ sight: 0.5, reaction: 1, deceleration: 2, walking: 1 })).toThrow(/too near/);
  });

  it('by coasting tends to the plain braking law as the air goes', () => {
    const still = { from: 3, to: 0, constant: 0.3, quadratic: 1e-9 };
    expect(coastTime(still)).toBeCloseTo(3 / 0.3, 5);
    expect(coastDistance(still)).toBeCloseTo(brakingDistance({ speed: 3, deceleration: 0.3 }), 5);
  });

  it('on a ramp longer than its drop only', () => {
    expect(() => rampRolling({ drop: 1, ramp: 1, run: 2 })).toThrow(/less than its length/);
  });
});

describe('clearance', () => {
  it('angles are zero for a point on the ground and grow as the point rises', () => {
    expect(overhangAngle({ radius: 0.06, ahead: 0.1, height: 0 })).toBeCloseTo(0, 12);
    fc.assert(
      fc.property(double(0, 0.1), (height) => {
        const at = (z: number) => overhangAngle({ radius: 0.06, ahead: 0.1, height: z });
        expect(at(height + 0.002)).toBeGreaterThan(at(height));
      }),
    );
  });

  it('angles are those of a line swept until it meets the tyre', () => {
    fc.assert(
      fc.property(double(0.05, 0.1), double(0.06, 0.2), double(0.005, 0.08), (radius, ahead, height) => {
        if (Math.hypot(ahead, height - radius) <= radius) return;
        let low = 0;
        let high = Math.PI;
        for (let i = 0; i < 60; i++) {
          const angle = (low + high) / 2;
          // Distance of the wheel centre from a line that falls from the hard point towards the tyre.
          const away = (radius - height) * Math.cos(angle) + ahead * Math.sin(angle);
          if (away >= radius) high = angle;
          else low = angle;
          if (angle > Math.PI / 2 && away < radius) high = angle;
        }
        if (high < Math.PI / 2) expect(overhangAngle({ radius, ahead, height })).toBeCloseTo(high, 9);
      }),
    );
  });

  it('is refused for a point inside the tyre, beyond the axles, or for a crest shorter than the vehicle', () => {
    expect(() => overhangAngle({ radius: 0.06, ahead: 0.03, height: 0.05 })).toThrow(/no line touches/);
    const belly = { radius: 0.05, wheelbase: 0.2, behindFront: 0.3, clearance: 0.03 };
    expect(() => breakoverAngle(belly)).toThrow(/no line touches/);
    expect(() => crestClearance({ crest: 0.01, radius: 0.02, wheelbase: 0.2, clearance: 0.03 })).toThrow(/beyond/);
  });

  it('is all there on a crest as flat as the ground', () => {
    const flat = crestClearance({ crest: 1e5, radius: 0.05, wheelbase: 0.2, clearance: 0.03 });
    expect(flat).toBeCloseTo(0.03, 6);
  });
});

describe('steering', () => {
  it('turns the inner wheel more than the outer, with the mean angle between them', () => {
    fc.assert(
      fc.property(double(0.1, 0.9), (steer) => {
        const radius = turningRadius({ wheelbase: 0.25, steer });
        const inner = innerSteer({ wheelbase: 0.25, radius, track: 0.2 });
        const outer = outerSteer({ wheelbase: 0.25, radius, track: 0.2 });
        expect(inner).toBeGreaterThan(steer);
        expect(outer).toBeLessThan(steer);
      }),
    );
  });

  it('refuses circles that do not exist', () => {
    expect(() => offTracking({ frontRadius: 1, wheelbase: 1.2 })).toThrow(/no circle/);
    expect(() => differentialRadius({ track: 0.2, outer: 1, inner: 1 })).toThrow(/straight/);
  });

  it('turns on the spot when the sides run against each other', () => {
    expect(differentialRadius({ track: 0.2, outer: 1, inner: -1 })).toBe(0);
  });
});

describe('skidding', () => {
  it('of wheels is the sum of friction times lever, and tends to that of a track', () => {
    const of = { adhesion: 0.7, weight: 30, length: 0.24 };
    for (let axles = 2; axles <= 12; axles++) {
      const levers = Array.from({ length: axles }, (_, i) => Math.abs(i / (axles - 1) - 0.5) * of.length);
      const sum = levers.reduce((total, lever) => total + (of.adhesion * of.weight * lever) / axles, 0);
      expect(skidMomentWheels({ ...of, axles })).toBeCloseTo(sum, 9);
    }
    expect(skidMomentWheels.bare({ ...of, axles: 1e6 })).toBeCloseTo(skidMomentTrack(of), 5);
  });

  it('never needs more push than the grip of one side', () => {
    fc.assert(
      fc.property(double(0.2, 1), double(0.1, 0.4), double(0.1, 0.4), (adhesion, length, track) => {
        const of = { adhesion, weight: 40, length, track };
        const need = skidThrustNeeded(of);
        expect(need.thrust).toBeLessThanOrEqual(adhesion * 20);
        expect(need.thrust).toBeLessThanOrEqual(settledSkidThrust(of) + 1e-12);
      }),
    );
  });
});
