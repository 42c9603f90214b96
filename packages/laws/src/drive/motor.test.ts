/**
 * Goal: the laws of a motor agree with one another and with the balance of power.
 * Method: round trips from motor to bench readings and back, and brute force over all operating points.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  lockedRotorResistance,
  motorConstantFromNoLoad,
  motorConstantFromStall,
  motorCurrentAtSpeed,
  motorCurrentAtTorque,
  motorNoLoadSpeed,
  motorSpeedAtTorque,
  motorStallCurrent,
  motorStallTorque,
  motorTorqueAtCurrent,
} from './motor.ts';
import { motorBestCurrent, motorPeakEfficiency, motorPeakPower, motorSpeedGradient } from './motor-best.ts';

/** Motors from coreless to toy can, whose friction takes 1 to 15 % of the stall current. */
const motors = fc
  .record({
    voltage: fc.double({ min: 1, max: 24, noNaN: true }),
    resistance: fc.double({ min: 0.1, max: 50, noNaN: true }),
    motorConstant: fc.double({ min: 5e-4, max: 0.05, noNaN: true }),
    friction: fc.double({ min: 0.01, max: 0.15, noNaN: true }),
  })
  .map(({ friction, ...m }) => ({ ...m, noLoadCurrent: (friction * m.voltage) / m.resistance }));

const near = (a: number, b: number): void => expect(a / b).toBeCloseTo(1, 9);

describe('a motor', () => {
  it('is identified again from the readings it would give on the bench', () => {
    fc.assert(
      fc.property(motors, ({ voltage, resistance, motorConstant, noLoadCurrent }) => {
        const stall = motorStallCurrent({ voltage, resistance });
        near(lockedRotorResistance({ voltage, current: stall, leadResistance: 0 }), resistance);
        const noLoadSpeed = motorNoLoadSpeed({ voltage, resistance, motorConstant, noLoadCurrent });
        near(motorConstantFromNoLoad({ voltage, resistance, noLoadCurrent, noLoadSpeed }), motorConstant);
        const stallTorque = motorStallTorque({ voltage, resistance, motorConstant, noLoadCurrent });
        near(motorConstantFromStall({ stallTorque, stallCurrent: stall, noLoadCurrent }), motorConstant);
      }),
    );
  });

  it('turns all of its power into heat, friction and work', () => {
    fc.assert(
      fc.property(
        motors,
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ voltage, resistance, motorConstant, noLoadCurrent }, part) => {
          const torque = part * motorStallTorque({ voltage, resistance, motorConstant, noLoadCurrent });
          const speed = motorSpeedAtTorque({ voltage, resistance, motorConstant, noLoadCurrent, torque });
          const current = motorCurrentAtTorque({ torque, motorConstant, noLoadCurrent });
          const friction = motorConstant * noLoadCurrent * speed;
          near(current ** 2 * resistance + friction + torque * speed, voltage * current);
          near(motorCurrentAtSpeed({ voltage, resistance, motorConstant, speed }), current);
        },
      ),
    );
  });

  it('slows from no load to stall by its gradient', () => {
    fc.assert(
      fc.property(motors, ({ voltage, resistance, motorConstant, noLoadCurrent }) => {
        const stall = motorStallTorque({ voltage, resistance, motorConstant, noLoadCurrent });
        near(
          motorNoLoadSpeed({ voltage, resistance, motorConstant, noLoadCurrent }),
          stall * motorSpeedGradient({ resistance, motorConstant }),
        );
      }),
    );
  });

  it('does no better at any current than at its best one, for efficiency and for power', () => {
    fc.assert(
      fc.property(motors, ({ voltage, resistance, motorConstant, noLoadCurrent }) => {
        const stallCurrent = motorStallCurrent({ voltage, resistance });
        const power = (i: number): number =>
          motorTorqueAtCurrent({ current: i, motorConstant, noLoadCurrent }) *
          ((voltage - resistance * i) / motorConstant);
        const currents = Array.from(
          { length: 200 },
          (_, n) => noLoadCurrent + ((n + 1) / 201) * (stallCurrent - noLoadCurrent),
        );
        const best = motorPeakEfficiency({ noLoadCurrent, stallCurrent, gap: 1 });
        const at = motorBestCurrent({ noLoadCurrent, stallCurrent });
        near(power(at) / (voltage * at), best);
        expect(Math.max(...currents.map((i) => power(i) / (voltage * i)))).toBeLessThanOrEqual(best * (1 + 1e-9));
        const most = motorPeakPower({ voltage, resistance, noLoadCurrent });
        near(power((noLoadCurrent + stallCurrent) / 2), most);
        expect(Math.max(...currents.map(power))).toBeLessThanOrEqual(most * (1 + 1e-9));
      }),
    );
  });

  it('stands still when the voltage cannot overcome its friction', () => {
    expect(motorNoLoadSpeed({ voltage: 0.2, resistance: 1, motorConstant: 0.002, noLoadCurrent: 0.3 })).toBe(0);
  });
});
