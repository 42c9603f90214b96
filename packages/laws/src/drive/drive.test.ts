/**
 * Goal: gears, pulses and brakes conserve power, and each form hands over to its rival where it should.
 * Method: power balances, limits, refusals outside the range of a law.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { brakeCurrent, brakeTorque, creepSpeed, pluggingCurrent } from './braking.ts';
import { BIPOLAR_BRIDGE, bipolarBridgeDrop } from './bridge.ts';
import { dutyCeiling } from './duty.ts';
import { backDriveEfficiency, roadSpeed, wheelForce } from './gear.ts';
import { pwmMeanAntiphase, pwmMeanDeadTime, pwmMeanSlowDecay, pwmSupplyCurrent } from './pwm.ts';
import { chooseRipple, pwmDiscontinuousMean, pwmRippleExact, pwmRippleSimple } from './ripple.ts';
import { LEWIS_FACTORS, lewisFormFactor } from './tooth.ts';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a gear train', () => {
  it('gives to the road its efficiency times what the motor gives to it', () => {
    fc.assert(
      fc.property(share(1, 200), share(0.2, 1), share(0.01, 0.2), (ratio, efficiency, wheelRadius) => {
        const force = wheelForce({ torque: 0.01, ratio, efficiency, wheelRadius });
        const speed = roadSpeed({ motorSpeed: 900, ratio, wheelRadius });
        expect((force * speed) / (0.01 * 900 * efficiency)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('without loss is without loss backwards, and holds by itself at one half', () => {
    expect(backDriveEfficiency({ efficiency: 1 })).toBe(1);
    expect(backDriveEfficiency({ efficiency: 0.5 })).toBe(0);
    expect(backDriveEfficiency({ efficiency: 0.35 })).toBe(0);
  });

  it('has stronger teeth the more it has of them', () => {
    for (const [i, row] of LEWIS_FACTORS.entries()) {
      expect(lewisFormFactor({ teeth: row.teeth })).toBe(row.factor);
      const before = LEWIS_FACTORS[i - 1];
      if (before) expect(row.factor).toBeGreaterThan(before.factor);
    }
    expect(() => lewisFormFactor({ teeth: 7 })).toThrow(OutOfRange);
  });
});

describe('pulse drive', () => {
  it('without drop takes from the supply what the motor gets', () => {
    fc.assert(
      fc.property(share(0, 1), share(0, 20), (duty, motorCurrent) => {
        const given = pwmMeanSlowDecay({ voltage: 8, duty, bridgeDrop: 0 }) * motorCurrent;
        expect(8 * pwmSupplyCurrent({ duty, motorCurrent, quiescent: 0 })).toBeCloseTo(given, 9);
      }),
    );
  });

  it('stands still at half duty in locked antiphase, and loses nothing to a dead time of zero', () => {
    expect(pwmMeanAntiphase({ voltage: 8, duty: 0.5, bridgeDrop: 0 })).toBe(0);
    expect(pwmMeanDeadTime({ voltage: 8, duty: 0.3, deadTime: 0, frequency: 2e4, diodeDrop: 0.7 })).toBeCloseTo(
      pwmMeanSlowDecay({ voltage: 8, duty: 0.3, bridgeDrop: 0 }),
      12,
    );
  });

  it('ripples the same at a duty and at its remainder, and most at one half', () => {
    fc.assert(
      fc.property(share(0.01, 0.99), share(200, 50_000), (duty, frequency) => {
        const drive = { swing: 8, resistance: 0.9, inductance: 3e-4, frequency };
        const ripple = pwmRippleExact({ ...drive, duty });
        expect(pwmRippleExact({ ...drive, duty: 1 - duty }) / ripple).toBeCloseTo(1, 9);
        expect(ripple).toBeLessThanOrEqual(pwmRippleExact({ ...drive, duty: 0.5 }) * (1 + 1e-12));
        expect(ripple).toBeLessThanOrEqual(
          pwmRippleSimple({ swing: 8, duty, inductance: 3e-4, frequency }) * (1 + 1e-12),
        );
      }),
    );
  });

  it('uses straight lines only where they are within a thousandth of the exact ripple', () => {
    fc.assert(
      fc.property(share(0.05, 0.95), share(100, 50_000), (duty, frequency) => {
        const drive = { swing: 8, duty, resistance: 0.9, inductance: 3e-4, frequency };
        const chosen = chooseRipple(drive);
        expect(Math.abs(chosen.ripple / pwmRippleExact(drive) - 1)).toBeLessThan(1e-3);
      }),
    );
    const drive = { swing: 8, duty: 0.5, resistance: 0.9, inductance: 3e-4 };
    expect(chooseRipple({ ...drive, frequency: 20e3 }).law).toBe('pwm-ripple-simple');
    expect(chooseRipple({ ...drive, frequency: 1e3 }).law).toBe('pwm-ripple-exact');
  });

  it('refuses the discontinuous form where the current does not stop', () => {
    const drive = { voltage: 7.4, backEmf: 0.5, offVoltage: 0, resistance: 0.9, inductance: 3e-4, frequency: 20e3 };
    expect(() => pwmDiscontinuousMean({ ...drive, duty: 0.6 })).toThrow(OutOfRange);
    expect(() => pwmDiscontinuousMean({ ...drive, backEmf: 8, duty: 0.6 })).toThrow(OutOfRange);
  });

  it('meets the continuous mean where the current just stops at the end of the pause', () => {
    // With a pause voltage of zero, both forms are (D·V − E)/R at the border, which is found by halving the duty.
    const drive = { voltage: 7.4, backEmf: 2, offVoltage: 0, resistance: 0.9, inductance: 3e-4, frequency: 2e3 };
    let [low, high] = [0.01, 0.99];
    for (let i = 0; i < 60; i++) {
      const duty = (low + high) / 2;
      try {
        pwmDiscontinuousMean({ ...drive, duty });
        low = duty;
      } catch {
        high = duty;
      }
    }
    expect(pwmDiscontinuousMean({ ...drive, duty: low })).toBeCloseTo((low * 7.4 - 2) / 0.9, 6);
  });

  it('never asks for more than full duty', () => {
    expect(dutyCeiling({ ratedVoltage: 9, bridgeDrop: 1, packVoltage: 6 })).toBe(1);
  });
});

describe('a bipolar bridge', () => {
  it('answers to one and a half times its second current and refuses beyond', () => {
    const { source: _source, ...points } = BIPOLAR_BRIDGE.typical;
    expect(bipolarBridgeDrop({ current: 3, ...points })).toBeCloseTo(4.85, 9);
    expect(() => bipolarBridgeDrop({ current: 3.1, ...points })).toThrow(OutOfRange);
  });
});

describe('braking by the motor', () => {
  const motor = { motorConstant: 4e-3, resistance: 0.8, pathResistance: 0.1 };

  it('creeps at the speed where the slope gives what copper and friction take', () => {
    fc.assert(
      fc.property(share(1, 20), share(10, 100), (force, ratio) => {
        const slope = { force, wheelRadius: 0.03, ratio, backEfficiency: 0.7, noLoadCurrent: 0.2 };
        const v = creepSpeed({ ...slope, ...motor });
        fc.pre(v > 0);
        const speed = (v * ratio) / 0.03;
        const current = brakeCurrent({ ...motor, speed });
        const taken = current ** 2 * 0.9 + motor.motorConstant * 0.2 * speed;
        expect((force * v * 0.7) / taken).toBeCloseTo(1, 9);
        expect((brakeTorque({ ...motor, speed, noLoadCurrent: 0.2 }) * ratio) / (force * 0.03 * 0.7)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('holds on a slope that its own friction outweighs', () => {
    expect(
      creepSpeed({ force: 0.5, wheelRadius: 0.03, ratio: 50, backEfficiency: 0.7, noLoadCurrent: 0.5, ...motor }),
    ).toBe(0);
  });

  it('by reversing at rest draws no more than the stall current, and at speed nearly twice', () => {
    expect(pluggingCurrent({ voltage: 7.2, speed: 0, ...motor })).toBeCloseTo(8, 9);
    expect(pluggingCurrent({ voltage: 7.2, speed: 1750, ...motor })).toBeGreaterThan(1.9 * 8);
  });
});
