/**
 * The sums of safety: a shorted motor worked by hand, stops run in small steps of time, creep put back into the braking
 * force, slides put back into the axle load, and published stopping examples.
 */
import { GRAVITY, rearAxleLoad } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../dossier/resolve.ts';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { safetySums } from './safety.ts';

const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const layout = (driven: readonly boolean[], changes: Partial<Layout> = {}): Layout => ({
  ...PLAIN_LAYOUT,
  axles: driven.map((drives) => ({ wheels: 2, driven: drives, steered: false, sprung: false })),
  ...changes,
});

/**
 * At 80 °C the winding of 1 Ω has 1.2358 Ω, so that the loop is 1.4 Ω. Ferrite loses 0.2 %/K (from memory): at 60 °C the
 * constant is 0.92 of the one at 20 °C, which leaves 0.01 V·s/rad.
 */
const MOTOR: Values = {
  'drive.constant': 0.01 / 0.92,
  'drive.resistance': 1,
  'drive.noLoadCurrent': 0.2,
  'drive.ratio': 20,
  'gear.efficiency': 0.5,
  'toy.wheelDiameter': 0.12,
  'bridge.threshold': 0,
  'bridge.slope': 0.1,
  'wiring.motor.resistance': 0.0642,
  'safe.speedCap': 0.6,
};

describe('shorted motors', () => {
  const force = (values: Values, on = PLAIN_LAYOUT) =>
    evaluateSum(safetySums['safe.shortedForce'], { ...MOTOR, ...values }, on);

  it('of the worked train brake with 10.86 N at 0.6 m/s', () => {
    // 200 rad/s: 0.01² · 200 / 1.4 Ω + 0.01 · 0.2 A = 16.29 mN·m; · 20 / (0.5 · 60 mm).
    expect(force({})).toBeCloseTo(10.857, 2);
    expect(force({}, layout([true, true], { motors: 2 }))).toBeCloseTo(21.714, 2);
  });

  it('that share a channel brake less, since its resistance carries the current of both', () => {
    const shared = force({ 'bridge.slope': 1 }, layout([true, true], { motorsPerChannel: 2 }));
    expect(shared).toBeCloseTo(force({ 'bridge.slope': 2 }), 9);
  });

  it('on a bridge that drops voltage brake by friction alone below the speed that overcomes it', () => {
    // 1.5 V / 0.01 V·s/rad = 150 rad/s = 0.45 m/s.
    const friction = (0.01 * 0.2 * 20) / (0.5 * 0.06);
    expect(force({ 'bridge.threshold': 1.5, 'safe.speedCap': 0.4 })).toBeCloseTo(friction, 9);
    expect(force({ 'bridge.threshold': 1.5, 'safe.speedCap': 0.5 })).toBeGreaterThan(friction);
  });

  it('creep at the speed whose braking force is the pull of the slope', () => {
    fc.assert(
      fc.property(span(0.02, 0.6), span(0.5, 6), span(0, 2), (slope, mass, threshold) => {
        const values: Values = {
          ...MOTOR,
          'bridge.threshold': threshold,
          'safe.gravityForce': mass * GRAVITY * Math.sin(slope),
        };
        const creep = evaluateSum(safetySums['safe.creep'], values);
        const pull = mass * GRAVITY * Math.sin(slope);
        const friction = (0.01 * 0.2 * 20) / (0.5 * 0.06);
        if (pull <= friction) expect(creep).toBeCloseTo(0, 9);
        else expect(force({ 'bridge.threshold': threshold, 'safe.speedCap': creep }) / pull).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('deceleration', () => {
  const deceleration = (values: Values) => evaluateSum(safetySums['safe.deceleration'], values);

  it('never promises a shorter stop from the cap than shorted motors, friction and grip give, run in small steps', () => {
    fc.assert(
      fc.property(span(0.2, 3), span(0.8, 8), span(0, 1.5), span(0.5, 5), (cap, mass, threshold, grip) => {
        const circuit = { ...MOTOR, 'bridge.threshold': threshold };
        const forceAt = (speed: number) =>
          evaluateSum(safetySums['safe.shortedForce'], { ...circuit, 'safe.speedCap': speed });
        const promised = evaluateSum(safetySums['safe.shortedDeceleration'], {
          ...circuit,
          'safe.speedCap': cap,
          'mass.total': mass,
          'ground.rolling': 0.03,
          'safe.gripBraking': grip,
        });
        let [speed, way] = [cap, 0];
        const step = 5e-4;
        while (speed > 0) {
          const braking = Math.min((forceAt(speed) / mass + 0.03 * GRAVITY) / 1.3, grip);
          const time = Math.min(step, speed / braking);
          way += (speed - (braking * time) / 2) * time;
          speed = time < step ? 0 : speed - braking * step;
        }
        expect(cap ** 2 / (2 * promised)).toBeGreaterThanOrEqual(way * 0.999);
        // And it is no idle caution: the stop takes more than five sixths of what is promised.
        expect(cap ** 2 / (2 * promised)).toBeLessThanOrEqual(way * 1.2);
      }),
      { numRuns: 30 },
    );
  });

  it('that was measured holds as far as the worst ground grips', () => {
    expect(deceleration({ 'driving.braking': 2, 'safe.gripBraking': 3 })).toBe(2);
    expect(deceleration({ 'driving.braking': 4, 'safe.gripBraking': 3 })).toBe(3);
  });

  it('of locked wheels on adhesion 0.6 is 5.884 m/s² on the level and 4.879 m/s² down a tenth', () => {
    const level = evaluateSum(safetySums['safe.gripBraking'], { 'ground.adhesionWorst': 0.6 }, layout([true, true]));
    expect(level).toBeCloseTo(5.884, 3);
    const down = evaluateSum(safetySums['safe.descentDeceleration'], {
      'safe.deceleration': level,
      'want.slope': Math.atan(0.1),
    });
    expect(down).toBeCloseTo(4.879, 3);
  });

  it('of a braked rear axle is what its own load grips once braking has taken weight off it', () => {
    fc.assert(
      fc.property(span(0.1, 1.2), span(0.05, 0.2), span(0.03, 0.15), (adhesion, centre, height) => {
        const values: Values = {
          'ground.adhesionWorst': adhesion,
          'balance.wheelbase': 0.25,
          'balance.centreBehind': centre,
          'balance.centreHeight': height,
        };
        const braking = evaluateSum(safetySums['safe.gripBraking'], values, layout([false, true]));
        const rear = rearAxleLoad({
          mass: 1,
          wheelbase: 0.25,
          cgBehindFront: centre,
          cgHeight: height,
          slope: 0,
          acceleration: -braking,
        });
        expect(adhesion * rear).toBeCloseTo(braking, 9);
      }),
    );
  });

  it('of six wheels of which four drive is their share of the grip', () => {
    const values: Values = { 'ground.adhesionWorst': 0.5, 'balance.drivenShare': 0.7 };
    const grip = evaluateSum(safetySums['safe.gripBraking'], values, layout([false, true, true]));
    expect(grip).toBeCloseTo(0.35 * GRAVITY, 9);
  });
});

describe('stopping', () => {
  const stopping = (cap: number, actuation: number, down: number) =>
    evaluateSum(safetySums['safe.stopping'], {
      'safe.speedCap': cap,
      'driving.actuation': actuation,
      'safe.descentDeceleration': down,
    });

  it('takes 1.340 m, 2.010 m and 4.147 m in three worked stops', () => {
    expect(stopping(2, 0.5, 5.884)).toBeCloseTo(1.34, 3);
    expect(stopping(2, 0.8, 4.879)).toBeCloseTo(2.01, 3);
    expect(stopping(3, 1, 3.923)).toBeCloseTo(4.147, 3);
  });

  it('takes a kilometre, which stands for never, where the slope wins', () => {
    expect(stopping(0.5, 0.05, 0)).toBe(1000);
    expect(stopping(0.5, 0.05, -0.3)).toBe(1000);
    expect(stopping(0.5, 0.05, 1e-7)).toBe(1000);
  });

  it('carries 10 J with 5 kg at 2 m/s, 13.5 J with 3 kg at 3 m/s', () => {
    const energy = (mass: number, cap: number) =>
      evaluateSum(safetySums['safe.energy'], { 'mass.total': mass, 'safe.speedCap': cap });
    expect(energy(5, 2)).toBeCloseTo(10, 12);
    expect(energy(3, 3)).toBeCloseTo(13.5, 12);
  });

  it('starts from the cap as set, else from the top speed, and from a brisk walk at most', () => {
    const cap = (values: Values) => evaluateSum(safetySums['safe.speedCap'], values);
    expect(cap({ 'set.speedCap': 2.4, 'drive.topSpeed': 1 })).toBe(2.4);
    expect(cap({ 'drive.topSpeed': 1 })).toBe(1);
    expect(cap({ 'drive.topSpeed': 4 })).toBe(1.5);
    expect(cap({})).toBe(1.5);
  });
});

describe('standing on a slope', () => {
  it('pulls with 7.614 N on 3 kg at 15°', () => {
    const pull = evaluateSum(safetySums['safe.gravityForce'], { 'mass.total': 3, 'want.slope': Math.PI / 12 });
    expect(pull).toBeCloseTo(7.614, 3);
  });

  it('slides at 45° with every wheel held on adhesion 1, at 18.43° with the upper axle alone', () => {
    // tan θ = μ · b / (L + μ · h) = 0.11 / 0.33 for the axle that the slope unloads.
    const values: Values = {
      'ground.adhesionWorst': 1,
      'balance.wheelbase': 0.25,
      'balance.centreBehind': 0.14,
      'balance.centreHeight': 0.08,
    };
    const slide = (driven: readonly boolean[], more: Values = {}) =>
      (evaluateSum(safetySums['safe.slideSlope'], { ...values, ...more }, layout(driven)) * 180) / Math.PI;
    expect(slide([true, true])).toBeCloseTo(45, 9);
    expect(slide([true, false])).toBeCloseTo(18.43, 2);
    expect(slide([false, true], { 'balance.centreBehind': 0.11 })).toBeCloseTo(18.43, 2);
    expect(slide([false, true, true], { 'balance.drivenShare': 0.5 })).toBeCloseTo(26.565, 3);
  });

  it('with a held rear axle slides where the grip of its load, nose down, no longer holds the weight', () => {
    fc.assert(
      fc.property(span(0.1, 1.2), span(0.05, 0.2), span(0.03, 0.15), (adhesion, centre, height) => {
        const slope = evaluateSum(
          safetySums['safe.slideSlope'],
          {
            'ground.adhesionWorst': adhesion,
            'balance.wheelbase': 0.25,
            'balance.centreBehind': centre,
            'balance.centreHeight': height,
          },
          layout([false, true]),
        );
        const rear = rearAxleLoad({
          mass: 1,
          wheelbase: 0.25,
          cgBehindFront: centre,
          cgHeight: height,
          slope: -slope,
          acceleration: 0,
        });
        expect(adhesion * rear).toBeCloseTo(GRAVITY * Math.sin(slope), 9);
      }),
    );
  });
});

describe('every sum of safety', () => {
  it.each(Object.entries(safetySums))('%s names in its formula what it uses, and nothing else', (_, sum) => {
    expect(strayNames(sum)).toEqual([]);
  });
});
