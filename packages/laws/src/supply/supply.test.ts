/**
 * Goal: limits and inverses of the laws on charge, charging, ageing, protection and conversion.
 * Method: round trips and closed forms on random inputs.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ZERO_CELSIUS } from '../constants.ts';
import { OutOfRange } from '../law.ts';
import { cyclingLoss, throughputToLoss } from './ageing.ts';
import { holdUpCapacitance, holdUpTime } from './capacitor.ts';
import { coldCapacityShare, peukertExponent, peukertTime } from './capacity.ts';
import {
  activationEnergyFromReadings,
  chooseResistanceFactor,
  resistanceAtTemperature,
  resistanceTemperatureFactor,
} from './cell-resistance.ts';
import { chooseTail, constantVoltageTime, tailTime } from './charging.ts';
import { CHEMISTRIES } from './chemistries.ts';
import { converterEfficiency, deratedCurrent, mostEfficientCurrent } from './converter.ts';
import { equalisingCurrent, parallelShare } from './pack.ts';
import { protectionTripDelay } from './protection.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('charge and wear', () => {
  it('finds the Peukert exponent that two run times were made with', () => {
    fc.assert(
      fc.property(double(1, 1.6), double(1, 20), double(1.5, 10), (exponent, slowCurrent, ratio) => {
        const rated = { capacity: 3.6e5, ratedTime: 72000, exponent };
        const fastCurrent = slowCurrent * ratio;
        const slowTime = peukertTime({ ...rated, current: slowCurrent });
        const fastTime = peukertTime({ ...rated, current: fastCurrent });
        expect(peukertExponent({ slowTime, slowCurrent, fastTime, fastCurrent })).toBeCloseTo(exponent, 9);
      }),
    );
  });

  it('loses just the share that the throughput was asked for', () => {
    fc.assert(
      fc.property(double(0.5, 10), double(290, 330), double(0.01, 0.4), (rate, temperature, loss) => {
        const throughput = throughputToLoss({ rate, temperature, loss });
        expect(cyclingLoss({ rate, temperature, throughput })).toBeCloseTo(loss, 9);
      }),
    );
  });

  it('finds the activation energy that two resistances were made with', () => {
    fc.assert(
      fc.property(double(5e3, 50e3), double(250, 280), double(290, 330), (activationEnergy, cold, warm) => {
        const at = (temperature: number) => resistanceAtTemperature({ r25: 0.03, activationEnergy, temperature });
        const found = activationEnergyFromReadings({
          coldResistance: at(cold),
          coldTemperature: cold,
          warmResistance: at(warm),
          warmTemperature: warm,
        });
        expect(found / activationEnergy).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each(CHEMISTRIES)('%s gives less charge and more resistance the colder it is', (chemistry) => {
    for (let celsius = -20; celsius < 25; celsius += 5) {
      const [here, warmer] = [ZERO_CELSIUS + celsius, ZERO_CELSIUS + celsius + 5];
      expect(coldCapacityShare({ chemistry, temperature: here })).toBeLessThan(
        coldCapacityShare({ chemistry, temperature: warmer }),
      );
      expect(resistanceTemperatureFactor({ chemistry, temperature: here })).toBeGreaterThan(
        resistanceTemperatureFactor({ chemistry, temperature: warmer }),
      );
    }
    expect(resistanceTemperatureFactor({ chemistry, temperature: ZERO_CELSIUS + 25 })).toBeCloseTo(1, 12);
    expect(coldCapacityShare({ chemistry, temperature: ZERO_CELSIUS + 25 })).toBe(1);
    expect(() => coldCapacityShare({ chemistry, temperature: ZERO_CELSIUS - 30 })).toThrow(OutOfRange);
  });

  it('both laws of the tail agree when the charge to go is that of a straight rest voltage', () => {
    fc.assert(
      fc.property(double(0.02, 0.3), double(0.6, 1.5), double(0.5, 3), (resistance, rise, current) => {
        const [capacity, taper] = [7920, current / 10];
        const remaining = ((current - taper) * resistance * capacity) / rise;
        const slope = constantVoltageTime({ resistance, capacity, rise, current, taper });
        expect(tailTime({ remaining, current, taper }) / slope).toBeCloseTo(1, 9);
      }),
    );
    expect(chooseTail(true).use).toBe('tail-time');
    expect(chooseTail(false).use).toBe('constant-voltage-time');
  });

  it('takes the measured resistance grid only for the instant part and only where it was measured', () => {
    expect(chooseResistanceFactor('instant', ZERO_CELSIUS + 20).use).toBe('measured-cell-resistance-factor');
    expect(chooseResistanceFactor('instant', ZERO_CELSIUS).use).toBe('cell-resistance-temperature-factor');
    expect(chooseResistanceFactor('total', ZERO_CELSIUS + 20).use).toBe('cell-resistance-temperature-factor');
  });
});

describe('circuit and protection', () => {
  it('a capacitor sized for a dip carries just that dip', () => {
    fc.assert(
      fc.property(double(0.1, 50), double(1e-4, 1), double(5, 20), double(0.1, 0.95), (power, time, from, share) => {
        const to = share * from;
        const capacitance = holdUpCapacitance({ power, time, from, to });
        expect(holdUpTime({ capacitance, from, to, power }) / time).toBeCloseTo(1, 9);
      }),
    );
  });

  it('two parallel packs share the load between them and equalise without one', () => {
    fc.assert(
      fc.property(
        double(6, 13),
        double(6, 13),
        double(0.01, 1),
        double(0.01, 1),
        double(0, 20),
        (u1, u2, r1, r2, load) => {
          const first = parallelShare({ first: u1, second: u2, firstResistance: r1, secondResistance: r2, load });
          const second = parallelShare({ first: u2, second: u1, firstResistance: r2, secondResistance: r1, load });
          expect(first + second).toBeCloseTo(load, 8);
          const idle = parallelShare({ first: u1, second: u2, firstResistance: r1, secondResistance: r2, load: 0 });
          expect(equalisingCurrent({ first: u1, second: u2, firstResistance: r1, secondResistance: r2 })).toBeCloseTo(
            idle,
            9,
          );
        },
      ),
    );
  });

  it('a protection board holds for ever below its trip current', () => {
    const board = { overCurrent: 5, shortCurrent: 40, overDelay: 0.01, shortDelay: 5e-5 };
    expect(protectionTripDelay({ current: 4.999, ...board })).toBe(Number.POSITIVE_INFINITY);
    expect(protectionTripDelay({ current: 5, ...board })).toBe(0.01);
    expect(protectionTripDelay({ current: 40, ...board })).toBe(5e-5);
  });

  it('no load is converted better than the most efficient one', () => {
    fc.assert(
      fc.property(
        double(0.01, 1),
        double(0, 1),
        double(0.01, 0.5),
        double(0.05, 20),
        (fixed, proportional, quadratic, current) => {
          const at = (amperes: number) =>
            converterEfficiency({ output: 5, current: amperes, fixed, proportional, quadratic });
          expect(at(mostEfficientCurrent({ fixed, quadratic }))).toBeGreaterThanOrEqual(at(current) - 1e-12);
        },
      ),
    );
  });

  it('derating keeps the rating to the knee and leaves nothing at the end', () => {
    const module = { rated: 3, knee: 323, zero: 373 };
    expect(deratedCurrent({ ...module, ambient: 300 })).toBe(3);
    expect(deratedCurrent({ ...module, ambient: 348 })).toBeCloseTo(1.5, 12);
    expect(deratedCurrent({ ...module, ambient: 380 })).toBe(0);
  });
});
