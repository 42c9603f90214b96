/**
 * Goal: what is shown has the digits that are known, rounded as a person rounds.
 * Method: examples of the guide on uncertainty (JCGM 100:2008, 7.2), traps of binary rounding, and a property.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from './quantity.ts';
import { formatDoubted, formatValue } from './show.ts';

describe('showing a value', () => {
  it.each([
    [7.4156, 'V', 3, '7.42 V'],
    [9.996, 'V', 3, '10.0 V'],
    [1.005, 'V', 3, '1.01 V'],
    [10.235, 'V', 4, '10.24 V'],
    [0, 'V', 3, '0 V'],
    [123_456, 'V', 3, '123000 V'],
    [296.15, '°C', 3, '23.0 °C'],
    [Math.PI, '°', 4, '180.0°'],
    [0.85, '1', 2, '0.85'],
    [-2.5, 'm', 2, '−2.5 m'],
    [Number.POSITIVE_INFINITY, 's', 3, '∞ s'],
    [Number.NaN, 's', 3, 'unknown s'],
  ])('shows %d in %s with %i digits as %s', (si, unit, digits, text) => {
    expect(formatValue(si, unit, digits)).toBe(text);
  });

  it('stays within half a unit of its last digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
        fc.boolean(),
        fc.integer({ min: 1, max: 9 }),
        (size, down, digits) => {
          const x = down ? -size : size;
          const reading = parseQuantity(formatValue(x, 'V', digits), 'V');
          const half = 0.5 * 10 ** (Math.floor(Math.log10(size)) - digits + 1);
          expect(reading.ok && Math.abs(reading.quantity.value - x)).toBeLessThanOrEqual(half * (1 + 1e-9));
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('showing a value with its doubt', () => {
  it.each([
    [10.05762, 0.027, 'Ω', '10.058 ± 0.027 Ω'],
    [1, 0.01047, 'Ω', '1.000 ± 0.011 Ω'],
    [7e6, 28_050, 'kHz', '7000 ± 28 kHz'],
    [0.10002147, 0.00000035, 'g', '100.02147 ± 0.00035 g'],
    [296.15, 2, '°C', '23.0 ± 2.0 °C'],
    [12_345, 1230, 'm', '12300 ± 1200 m'],
    [1, 0.0996, '1', '1.00 ± 0.10'],
    [5, 0, 'V', '5.00000 V'],
  ])('shows %d ± %d in %s as %s', (si, doubt, unit, text) => {
    expect(formatDoubted(si, doubt, unit)).toBe(text);
  });

  it('is a text that is read as a quantity again', () => {
    const reading = parseQuantity(formatDoubted(7.4156, 0.123, 'V'), 'V');
    expect(reading.ok && [reading.quantity.value, reading.quantity.doubt]).toEqual([7.42, 0.12]);
  });
});
