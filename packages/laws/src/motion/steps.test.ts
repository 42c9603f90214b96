/**
 * Goal: no higher step is promised than contact forces allow, and none that they allow is refused.
 * Method: a search over all admissible friction forces just below and just above the step given; orders between the rules.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoAxleStepLimit, twoAxleSteps } from './step-limit.ts';
import { stepAllDriven, stepByOwnTorque, stepFrontAxle, stepPushForce, stepRearAxle } from './steps.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const vehicle = fc.record({
  radius: double(0.03, 0.08),
  wheelbase: double(0.2, 0.4),
  along: double(0.3, 0.7),
  adhesion: double(0.3, 1),
});

interface Contact {
  readonly x: number;
  readonly z: number;
  /** Lean of the contact normal backwards from the vertical. */
  readonly lean: number;
}

/**
 * Can two contacts hold a unit weight above gx with friction within μ?
 * Each contact force is its normal turned by an angle of at most atan μ; three equations leave one of four unknowns
 * free, so trying every angle of one contact settles it: the other force must close the triangle through one point.
 */
function holds(p: Contact, q: Contact, gx: number, mu: number): boolean {
  const cone = Math.atan(mu);
  const tries = 4000;
  for (let i = 0; i <= tries; i++) {
    const turn = p.lean + cone - (2 * cone * i) / tries;
    // Direction of the force at p; positive lean pushes backwards.
    const dx = -Math.sin(turn);
    const dz = Math.cos(turn);
    const lever = (gx - q.x) / ((p.x - q.x) * dz - (p.z - q.z) * dx);
    if (!(lever > 0)) continue;
    const fx = -lever * dx;
    const fz = 1 - lever * dz;
    const along = -fx * Math.sin(q.lean) + fz * Math.cos(q.lean);
    const across = fx * Math.cos(q.lean) + fz * Math.sin(q.lean);
    if (along > 0 && Math.abs(across) <= mu * along * (1 + 1e-9)) return true;
  }
  return false;
}

const frontHolds = (radius: number, wheelbase: number, a: number, mu: number, step: number): boolean => {
  const lean = Math.acos(1 - step / radius);
  const edge = { x: wheelbase + radius * Math.sin(lean), z: step, lean };
  return holds(edge, { x: 0, z: 0, lean: 0 }, wheelbase - a, mu);
};

const rearHolds = (radius: number, wheelbase: number, a: number, above: number, mu: number, step: number): boolean => {
  const lean = Math.acos(1 - step / radius);
  const pitch = Math.asin(step / wheelbase);
  const edge = { x: radius * Math.sin(lean), z: step, lean };
  const arm = wheelbase - a;
  const front = { x: wheelbase * Math.cos(pitch), z: step, lean: 0 };
  return holds(edge, front, arm * Math.cos(pitch) - above * Math.sin(pitch), mu);
};

describe('a step before two driven axles', () => {
  it('is climbed by the front axle just below the height given and not just above', () => {
    let limited = 0;
    fc.assert(
      fc.property(vehicle, ({ radius, wheelbase, along, adhesion }) => {
        const a = along * wheelbase;
        const step = stepFrontAxle({ radius, wheelbase, cgBehindFront: a, adhesion });
        expect(frontHolds(radius, wheelbase, a, adhesion, 0.998 * step)).toBe(true);
        if (step > 0.995 * radius) return;
        limited++;
        expect(frontHolds(radius, wheelbase, a, adhesion, 1.002 * step)).toBe(false);
      }),
    );
    expect(limited).toBeGreaterThan(10);
  });

  it('is climbed by the rear axle just below the height given and not just above', () => {
    let limited = 0;
    fc.assert(
      fc.property(vehicle, double(-0.02, 0.05), ({ radius, wheelbase, along, adhesion }, above) => {
        const a = along * wheelbase;
        const step = stepRearAxle({ radius, wheelbase, cgBehindFront: a, cgHeight: radius + above, adhesion });
        expect(rearHolds(radius, wheelbase, a, above, adhesion, 0.998 * step)).toBe(true);
        if (step > 0.995 * radius) return;
        limited++;
        expect(rearHolds(radius, wheelbase, a, above, adhesion, 1.002 * step)).toBe(false);
      }),
    );
    expect(limited).toBeGreaterThan(10);
  });

  it('is never higher than the wheel’s radius and never lower than one wheel climbs alone', () => {
    fc.assert(
      fc.property(vehicle, ({ radius, wheelbase, along, adhesion }) => {
        const of = { radius, wheelbase, cgBehindFront: along * wheelbase, cgHeight: radius, adhesion } as const;
        const alone = stepByOwnTorque({ radius, adhesion });
        for (const step of twoAxleSteps({ ...of, drive: 'all' })) {
          expect(step).toBeGreaterThanOrEqual(alone * (1 - 1e-9));
          expect(step).toBeLessThanOrEqual(radius);
        }
      }),
    );
  });

  it('is limited by the lower of both axles, with every drive', () => {
    fc.assert(
      fc.property(vehicle, fc.constantFrom('all', 'front', 'rear'), ({ along, ...rest }, drive) => {
        const of = { ...rest, cgBehindFront: along * rest.wheelbase, cgHeight: rest.radius, drive } as const;
        const steps = twoAxleSteps(of);
        const limit = twoAxleStepLimit(of);
        expect(limit.step).toBe(Math.min(...steps));
        expect(steps[limit.axle]).toBe(limit.step);
        expect(limit.why).toContain(limit.axle === 0 ? 'front axle stops' : 'rear axle stops');
      }),
    );
  });

  it('grows with grip', () => {
    fc.assert(
      fc.property(double(0.2, 0.6), double(0.3, 1), (share, adhesion) => {
        const at = (mu: number) => stepAllDriven({ radius: 0.05, share, adhesion: mu });
        expect(at(adhesion * 1.05)).toBeGreaterThanOrEqual(at(adhesion));
      }),
    );
  });

  it('as high as the axle is refused to a wheel that is only pushed', () => {
    expect(() => stepPushForce({ load: 10, radius: 0.05, step: 0.05 })).toThrow(/no push is enough/);
  });
});
