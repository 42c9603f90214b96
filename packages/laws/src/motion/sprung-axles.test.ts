/**
 * Goal: the shared load is in balance, pushes only, and is the one the springs would find.
 * Method: balances on random bodies; a twin that lets the body settle by falling along its energy; known laws as limits.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../constants.ts';
import { equalSpringLoad, frontAxleLoad, rearAxleLoad } from './axles.ts';
import { type SprungAxle, type SprungBody, sprungAxleLoads } from './sprung-axles.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const axleGap = fc.record({ gap: double(0.1, 0.15), rate: double(100, 3000), ground: double(-0.01, 0.01) });
const body = fc
  .record({
    gaps: fc.array(axleGap, { minLength: 2, maxLength: 4 }),
    mass: double(1, 8),
    along: double(0.2, 0.8),
    cgHeight: double(0.02, 0.1),
    slope: double(-0.15, 0.15),
  })
  .map(({ gaps, mass, along, cgHeight, slope }): SprungBody => {
    let position = 0;
    const axles = gaps.map(({ gap, rate, ground }, i): SprungAxle => {
      if (i > 0) position += gap;
      return { position, rate, ground };
    });
    return { axles, mass, cgBehindFront: along * position, cgHeight, slope };
  });

/** Load square to the ground and its lever behind the foremost axle, on the slope. */
function pull({ mass, cgBehindFront, cgHeight, slope }: SprungBody) {
  const load = mass * GRAVITY * Math.cos(slope);
  return { load, moment: load * cgBehindFront + mass * GRAVITY * Math.sin(slope) * cgHeight };
}

/** The same loads found by letting heave and pitch settle in turn, with springs that cannot pull. */
function settle(of: SprungBody): number[] {
  const { load, moment } = pull(of);
  const push = (axle: SprungAxle, heave: number, pitch: number) =>
    axle.rate * Math.max(0, heave + pitch * axle.position + axle.ground);
  const solve = (lack: (x: number) => number): number => {
    let low = -10;
    let high = 10;
    for (let i = 0; i < 70; i++) {
      const middle = (low + high) / 2;
      if (lack(middle) > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const heaveAt = (pitch: number) =>
    solve((heave) => load - of.axles.reduce((sum, axle) => sum + push(axle, heave, pitch), 0));
  const pitch = solve((p) => {
    const heave = heaveAt(p);
    return moment - of.axles.reduce((sum, axle) => sum + push(axle, heave, p) * axle.position, 0);
  });
  const heave = heaveAt(pitch);
  return of.axles.map((axle) => push(axle, heave, pitch));
}

describe('sprung axles', () => {
  it('carry the weight and its moment, and only push', () => {
    fc.assert(
      fc.property(body, (of) => {
        const loads = sprungAxleLoads(of);
        const { load, moment } = pull(of);
        const sum = loads.reduce((total, n) => total + n, 0);
        const levers = loads.reduce((total, n, i) => total + n * (of.axles[i]?.position ?? 0), 0);
        expect(sum).toBeCloseTo(load, 6);
        expect(levers).toBeCloseTo(moment, 6);
        for (const n of loads) expect(n).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('carry what a settling body finds', () => {
    let hanging = 0;
    fc.assert(
      fc.property(body, (of) => {
        const loads = sprungAxleLoads(of);
        if (loads.includes(0)) hanging++;
        settle(of).forEach((n, i) => {
          expect(loads[i]).toBeCloseTo(n, 4);
        });
      }),
    );
    expect(hanging).toBeGreaterThan(0);
  });

  it('agree with the two-axle laws whatever the springs', () => {
    fc.assert(
      fc.property(body, (of) => {
        const [front, rear] = [of.axles[0], of.axles.at(-1)] as [SprungAxle, SprungAxle];
        const [nf, nr] = sprungAxleLoads({ ...of, axles: [front, rear] });
        const { mass, cgBehindFront, cgHeight, slope } = of;
        const args = { mass, wheelbase: rear.position, cgBehindFront, cgHeight, slope, acceleration: 0 };
        expect(nf).toBeCloseTo(frontAxleLoad(args), 6);
        expect(nr).toBeCloseTo(rearAxleLoad(args), 6);
      }),
    );
  });

  it('lie on the straight line of equal springs while none hangs', () => {
    const axles = [0, 0.08, 0.2].map((position) => ({ position, rate: 500, ground: 0 }));
    const mean = 0.28 / 3;
    const spread = axles.reduce((sum, { position }) => sum + (position - mean) ** 2, 0);
    const loads = sprungAxleLoads({ axles, mass: 3, cgBehindFront: 0.1, cgHeight: 0.05, slope: 0 });
    const load = 3 * GRAVITY;
    loads.forEach((n, i) => {
      const position = (axles[i]?.position ?? 0) - mean;
      const line = equalSpringLoad({ load, axles: 3, moment: load * (0.1 - mean), position, spread });
      expect(n).toBeCloseTo(line, 9);
    });
  });

  it('refuse a body that tips over the last axle', () => {
    const axles = [0, 0.1, 0.2].map((position) => ({ position, rate: 500, ground: 0 }));
    const over = { axles, mass: 3, cgBehindFront: 0.15, cgHeight: 0.2, slope: 0.5 };
    expect(() => sprungAxleLoads(over)).toThrow(/tips over/);
  });
});
