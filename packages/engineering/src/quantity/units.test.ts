/**
 * Goal: every unit text is read as one thing or refused.
 * Method: spellings with one meaning, texts with none, and the closure of the plain form.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CUSTOMARY } from './unit-table.ts';
import { inUnit, parseUnit, SINGLE_UNITS, sameDimension, toSi, unitOf } from './units.ts';

const some = fc.constantFrom(...SINGLE_UNITS.map(({ text }) => text).filter((text) => text !== '1'));

describe('unit texts', () => {
  it.each([
    ['ohm', 'Ω'],
    ['mohm', 'mΩ'],
    ['\u2126', 'Ω'],
    ['um', 'µm'],
    ['\u03BCm', 'µm'],
    ['uF', 'µF'],
    ['deg', '°'],
    ['degC', '°C'],
    ['\u2103', '°C'],
    ['Nm', 'N·m'],
    ['N*m', 'N·m'],
    ['m / s^2', 'm/s²'],
    ['m s'.replace(' ', '·'), 'm·s'],
    ['m/s/s', 'm/(s·s)'],
    ['s^-1', '1/s'],
    ['s⁻¹', '1/s'],
    ['mm2', 'mm²'],
    ['J/(kg*K)', 'J/(kg·K)'],
    ['1/K', '1/K'],
    ['%/K', '%/K'],
  ])('reads %s as %s', (written, plain) => {
    const reading = parseUnit(written);
    expect(reading.ok && reading.unit.text).toBe(plain);
  });

  it.each([
    '',
    ' ',
    '/',
    'm/',
    '/s',
    'm//s',
    '(m)',
    'm(s)',
    'm·',
    'N m',
    'm^0',
    'm^7',
    'kkg',
    'mHz',
    'dBdB',
    '5',
    'm^^2',
    'm)',
  ])("refuses '%s'", (text) => {
    expect(parseUnit(text).ok).toBe(false);
  });

  it('refuses a product after a stroke, which two people read in two ways', () => {
    expect(parseUnit('W/m·K')).toMatchObject({ ok: false, why: 'ambiguous' });
  });

  it('keeps apart what is easily confused', () => {
    for (const [a, b] of [
      ['Hz', 'rad/s'],
      ['%', 'rad'],
      ['V/cell', 'V'],
      ['px/m', '1/m'],
      ['kB', '1'],
      ['dBm', 'dB'],
      ['dBm', 'mW'],
      ['Ah', 'Wh'],
      ['V·s/rad', 'N·m/A'],
    ] as const) {
      expect(sameDimension(unitOf(a), unitOf(b)), `${a} and ${b}`).toBe(false);
    }
  });

  it('knows the same thing by different names', () => {
    for (const [a, b] of [
      ['V·A', 'W'],
      ['V/A', 'Ω'],
      ['A·s', 'C'],
      ['V·Ah', 'Wh'],
      ['kg·m/s²', 'N'],
      ['Ω·F', 's'],
      ['H/Ω', 's'],
      ['bit', 'B'],
      ['dBi', 'dB'],
      ['rpm', '°/s'],
    ] as const) {
      expect(sameDimension(unitOf(a), unitOf(b)), `${a} and ${b}`).toBe(true);
    }
  });

  it('reads its own plain form back as the same unit', () => {
    const compound = fc
      .tuple(
        fc.array(fc.tuple(some, fc.integer({ min: 1, max: 3 })), { minLength: 1, maxLength: 3 }),
        fc.array(some, { maxLength: 2 }),
      )
      .map(([over, under]) => {
        const top = over.map(([unit, power]) => (power === 1 ? unit : `${unit}^${power}`)).join('*');
        return under.length === 0 ? top : `${top}/(${under.join('*')})`;
      });
    fc.assert(
      fc.property(compound, (text) => {
        const first = parseUnit(text);
        const second = first.ok ? parseUnit(first.unit.text) : first;
        expect(second).toEqual(first);
      }),
    );
  });

  it('proposes only units that it reads', () => {
    for (const text of CUSTOMARY) expect(unitOf(text).text, text).toBe(text);
  });

  it('turns a unit into SI and back to within the last bits', () => {
    fc.assert(
      fc.property(some, fc.double({ min: -1e6, max: 1e6, noNaN: true }), (text, amount) => {
        const unit = unitOf(text);
        const back = inUnit(toSi(unit, amount), text);
        const size = Math.abs(amount) + Math.abs((unit.offset * unit.den) / unit.num);
        expect(Math.abs(back - amount)).toBeLessThanOrEqual(8 * Number.EPSILON * size + Number.MIN_VALUE * 1e15);
      }),
    );
  });
});
