/**
 * Goal: the bus voltage is the stable answer of the circuit, and a source that cannot give the power says so.
 * Method: power balance over random packs, limits, refusal beyond collapse.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  collapsePower,
  collapsePowerWithStall,
  packCurrentConstantPower,
  packCurrentWithStall,
  packVoltageConstantPower,
  packVoltageWithStall,
} from './brown-out.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const circuit = fc.record({
  emf: double(3, 30),
  resistance: double(0.01, 1),
  motor: double(0.1, 10),
  share: double(0, 0.999),
});

describe('the bus', () => {
  it('balances: pack current is converter current plus motor current, for every pack that can give the power', () => {
    fc.assert(
      fc.property(circuit, ({ emf, resistance, motor, share }) => {
        const power = share * collapsePowerWithStall({ emf, resistance, motor });
        const voltage = packVoltageWithStall({ emf, resistance, power, motor });
        const current = packCurrentWithStall({ emf, resistance, power, motor });
        expect(current).toBeCloseTo(power / voltage + voltage / motor, 8);
        expect(voltage).toBeCloseTo(emf - resistance * current, 8);
      }),
    );
  });

  it('takes the upper, stable answer: never below half of what it stands at without the converter', () => {
    fc.assert(
      fc.property(circuit, ({ emf, resistance, motor, share }) => {
        const power = share * collapsePowerWithStall({ emf, resistance, motor });
        const unloaded = (emf * motor) / (motor + resistance);
        expect(packVoltageWithStall({ emf, resistance, power, motor })).toBeGreaterThanOrEqual(unloaded / 2);
      }),
    );
  });

  it('forgets a motor of endless resistance', () => {
    const pack = { emf: 7.4, resistance: 0.15, power: 5 };
    expect(packVoltageWithStall({ ...pack, motor: 1e12 })).toBeCloseTo(packVoltageConstantPower(pack), 9);
    expect(packCurrentWithStall({ ...pack, motor: 1e12 })).toBeCloseTo(packCurrentConstantPower(pack), 9);
  });

  it('stands at half the rested voltage at the collapse power, and refuses a thousandth more', () => {
    const pack = { emf: 7.4, resistance: 0.15 };
    const power = collapsePower(pack);
    expect(packVoltageConstantPower({ ...pack, power: power * (1 - 1e-12) })).toBeCloseTo(3.7, 4);
    expect(() => packVoltageConstantPower({ ...pack, power: power * 1.001 })).toThrow(/collapses/);
    expect(() => packVoltageWithStall({ ...pack, power: power * 0.99, motor: 1 })).toThrow(/collapses/);
  });
});
