/**
 * Goal: the heat laws of motors, coils and bridges close their own balances and refuse what would run away.
 * Method: residuals of the balance, limits in time, refusals.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { copperResistance } from '../conductors/wire.ts';
import { COPPER_REFERENCE, ZERO_CELSIUS } from '../constants.ts';
import { OutOfRange } from '../law.ts';
import { mosfetJunction, mosfetResistance } from './bridge.ts';
import {
  adiabaticHeatingRate,
  magnetConstantAt,
  motorContinuousCurrent,
  windingSteadyTemperature,
  windingTemperatureByResistance,
} from './motor-heat.ts';
import { windingAfterStall } from './motor-stall.ts';
import { heldCoilTemperature } from './steering.ts';

const AMBIENT = ZERO_CELSIUS + 25;
const motor = { resistance20: 1.2, windingToCan: 8, canToAir: 18, ambient: AMBIENT };
const bodies = { ...motor, windingCapacity: 3, canCapacity: 15, windingStart: AMBIENT, canStart: AMBIENT };

describe('the winding of a motor', () => {
  it('settles where the heat made equals the heat that leaves', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 1.9, noNaN: true }), (current) => {
        const temperature = windingSteadyTemperature({ current, ...motor });
        fc.pre(temperature < 473);
        const made = current ** 2 * copperResistance({ r20: motor.resistance20, temperature });
        expect((temperature - AMBIENT) / 26 / made).toBeCloseTo(1, 9);
      }),
    );
  });

  it('gives back the continuous current whose limit was asked for', () => {
    const current = motorContinuousCurrent({ limit: ZERO_CELSIUS + 120, ...motor });
    expect(windingSteadyTemperature({ current, ...motor })).toBeCloseTo(ZERO_CELSIUS + 120, 9);
  });

  it('refuses a current at which warming copper runs away', () => {
    expect(() => windingSteadyTemperature({ current: 3, ...motor })).toThrow(OutOfRange);
    expect(() => motorContinuousCurrent({ ...motor, limit: AMBIENT - 1 })).toThrow(OutOfRange);
  });

  it('starts a stall at its own temperature, rises at the adiabatic rate, and ends at the steady temperature', () => {
    const at = (current: number, time: number): number => windingAfterStall({ current, ...bodies, time });
    expect(at(2, 0)).toBeCloseTo(AMBIENT, 9);
    const resistance = copperResistance({ r20: motor.resistance20, temperature: AMBIENT });
    const rate = adiabaticHeatingRate({ current: 2, resistance, heatCapacity: bodies.windingCapacity });
    expect((at(2, 1e-3) - AMBIENT) / 1e-3 / rate).toBeCloseTo(1, 3);
    expect(at(1, 1e5)).toBeCloseTo(windingSteadyTemperature({ current: 1, ...motor }), 6);
  });

  it('cools to the air without current, whatever it was before', () => {
    const hot = { ...bodies, windingStart: ZERO_CELSIUS + 140, canStart: ZERO_CELSIUS + 90 };
    expect(windingAfterStall({ current: 0, ...hot, time: 1e5 })).toBeCloseTo(AMBIENT, 6);
  });

  it('is read again by the resistance method', () => {
    const temperature = ZERO_CELSIUS + 90;
    const hot = copperResistance({ r20: 2, temperature });
    const found = windingTemperatureByResistance({ cold: 2, hot, before: COPPER_REFERENCE });
    expect(Math.abs(found - temperature)).toBeLessThan(0.05);
  });

  it('of a coil at constant voltage is in balance, and cooler than cold resistance would say', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 6, noNaN: true }), (voltage) => {
        const coil = { voltage, resistance20: 5, thermalResistance: 12, ambient: AMBIENT };
        const temperature = heldCoilTemperature(coil);
        const heat = voltage ** 2 / copperResistance({ r20: 5, temperature });
        expect((temperature - AMBIENT) / (12 * heat)).toBeCloseTo(1, 9);
        expect(temperature - AMBIENT).toBeLessThan((12 * voltage ** 2) / 5);
      }),
    );
  });
});

describe('magnets', () => {
  it('lose most as ferrite and least as alnico, and nothing at 20 °C', () => {
    const at = (magnet: 'ferrite' | 'neodymium' | 'samarium-cobalt' | 'alnico', temperature: number): number =>
      magnetConstantAt({ constant20: 1, temperature, magnet });
    const warm = ZERO_CELSIUS + 80;
    expect(at('ferrite', warm)).toBeLessThan(at('neodymium', warm));
    expect(at('neodymium', warm)).toBeLessThan(at('samarium-cobalt', warm));
    expect(at('samarium-cobalt', warm)).toBeLessThan(at('alnico', warm));
    expect(at('ferrite', COPPER_REFERENCE)).toBe(1);
  });
});

describe('the junction of a bridge', () => {
  it('settles where the heat made equals the heat that leaves', () => {
    const bridge = { resistance25: 0.1, thermalResistance: 40, ambient: AMBIENT };
    for (const current of [0.5, 1, 2, 3]) {
      const junction = mosfetJunction({ current, ...bridge });
      const heat = current ** 2 * mosfetResistance({ resistance25: 0.1, junction });
      expect((junction - AMBIENT) / (40 * heat)).toBeCloseTo(1, 9);
    }
  });

  it('is refused where it would run away', () => {
    expect(() => mosfetJunction({ current: 8, resistance25: 0.1, thermalResistance: 40, ambient: AMBIENT })).toThrow(
      OutOfRange,
    );
  });
});
