/**
 * Goal: rest voltage and state of charge are each other's inverse, and the table of chemistries agrees with the curves.
 * Method: properties over every chemistry.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { CHEMISTRIES, CHEMISTRY_FACTS } from './chemistries.ts';
import { chenFastCapacitance, chenRestVoltage, chenSlowCapacitance } from './chen.ts';
import { chooseRestVoltage, restCharge, restVoltage } from './rest-voltage.ts';

describe.each(CHEMISTRIES)('%s', (chemistry) => {
  const facts = CHEMISTRY_FACTS[chemistry];

  it('rises with the state of charge', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), (charge) => {
        expect(restVoltage({ chemistry, charge: charge + 0.001 })).toBeGreaterThan(restVoltage({ chemistry, charge }));
      }),
    );
  });

  it('gives back the charge a voltage came from', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (charge) => {
        const voltage = restVoltage({ chemistry, charge });
        expect(restCharge({ chemistry, voltage })).toBeCloseTo(charge, 9);
      }),
    );
  });

  it('refuses a voltage outside its table and a charge outside 0 to 1', () => {
    expect(() => restCharge({ chemistry, voltage: facts.restedFull.value + 0.01 })).toThrow(OutOfRange);
    expect(() => restCharge({ chemistry, voltage: facts.restedEmpty.value - 0.01 })).toThrow(OutOfRange);
    expect(() => restVoltage({ chemistry, charge: 1.01 })).toThrow(OutOfRange);
  });

  it('has a rested full and empty voltage at the ends of its curve', () => {
    expect(restVoltage({ chemistry, charge: 1 })).toBeCloseTo(facts.restedFull.value, 9);
    expect(restVoltage({ chemistry, charge: 0 })).toBeCloseTo(facts.restedEmpty.value, 9);
  });

  it('keeps its voltages in order: absolute minimum, cut-off, nominal, rested full, full', () => {
    expect(facts.absoluteMinimum.value).toBeLessThan(facts.cutOff.value);
    expect(facts.cutOff.value).toBeLessThan(facts.nominal.value);
    expect(facts.nominal.value).toBeLessThan(facts.restedFull.value);
    expect(facts.restedFull.value).toBeLessThan(facts.full.value);
  });

  it('names a source for every figure', () => {
    const { is, charge, ...figures } = facts;
    const charging = charge ? [charge.coldest, charge.hottest, charge.rate] : [];
    expect(is.trim()).not.toBe('');
    for (const figure of [...Object.values(figures), ...charging]) expect(figure.source.trim()).not.toBe('');
  });
});

describe('rival laws of a pouch cell', () => {
  it('agree within 4 % from 5 % charge up', () => {
    for (let charge = 0.05; charge <= 1; charge += 0.05) {
      const table = restVoltage({ chemistry: 'lipo', charge });
      expect(Math.abs(chenRestVoltage({ charge }) / table - 1)).toBeLessThan(0.04);
    }
  });

  it('the closed form refuses below 5 %, where its capacitances would turn negative', () => {
    expect(() => chenFastCapacitance({ charge: 0.004 })).toThrow(OutOfRange);
    expect(() => chenSlowCapacitance({ charge: 0.01 })).toThrow(OutOfRange);
    expect(chenSlowCapacitance.bare({ charge: 0.01 })).toBeLessThan(0);
  });

  it('the closed form is chosen only with its own branches', () => {
    expect(chooseRestVoltage('lipo', true).use).toBe('chen-rest-voltage');
    expect(chooseRestVoltage('lipo', false).use).toBe('rest-voltage');
    expect(chooseRestVoltage('lfp', true).use).toBe('rest-voltage');
  });
});
