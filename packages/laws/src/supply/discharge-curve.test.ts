/**
 * Goal: constants taken off a printed curve give that curve back.
 * Method: random models, three of their own points read off, constants recovered.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chooseShepherd,
  dischargeVoltage,
  shepherdConstantVoltage,
  shepherdExponential,
  shepherdPolarisation,
  shepherdRate,
} from './discharge-curve.ts';

const H = 3600;
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('three-point extraction', () => {
  it('recovers A, K and E0 of any model from three points of its own curve', () => {
    fc.assert(
      fc.property(
        double(1, 15),
        double(0.05, 0.5),
        double(0.0005, 0.05),
        double(0.001, 0.1),
        double(1, 20),
        (e0, a, k, resistance, ah) => {
          const [capacity, current] = [ah * H, ah / 5];
          const [kneeCharge, nominalCharge] = [0.2 * capacity, 0.9 * capacity];
          const model = {
            e0,
            resistance,
            polarisation: k,
            exponential: a,
            exponentialRate: shepherdRate({ kneeCharge }),
            capacity,
            current,
          };
          const points = {
            fullVoltage: dischargeVoltage({ ...model, drawn: 0, smoothed: 0 }),
            kneeVoltage: dischargeVoltage({ ...model, drawn: kneeCharge, smoothed: current }),
            nominalVoltage: dischargeVoltage({ ...model, drawn: nominalCharge, smoothed: current }),
            kneeCharge,
            nominalCharge,
            capacity,
            current,
          };
          fc.pre(points.nominalVoltage > 0);
          const exponential = shepherdExponential(points);
          expect(exponential).toBeCloseTo(a, 8);
          expect(shepherdPolarisation(points)).toBeCloseTo(k, 8);
          const { fullVoltage } = points;
          expect(shepherdConstantVoltage({ fullVoltage, resistance, current, exponential })).toBeCloseTo(e0, 8);
          expect(chooseShepherd(points).use).toBe('three points');
        },
      ),
    );
  });

  it('says that the published points of a lead block contradict the model', () => {
    const leadBlock = {
      fullVoltage: 12.8,
      kneeVoltage: 12.5,
      kneeCharge: 2 * H,
      nominalVoltage: 11.5,
      nominalCharge: 4.5 * H,
      capacity: 7.2 * H,
      current: 0.36,
    };
    expect(shepherdExponential(leadBlock)).toBeLessThan(0);
    expect(chooseShepherd(leadBlock).use).toBe('short cut');
  });
});
