/**
 * Goal: the warming of a wire behaves as heat must.
 * Method: properties over wires from AWG 30 to 10; the two laws undo each other.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ZERO_CELSIUS } from '../constants.ts';
import { OutOfRange } from '../law.ts';
import { wireCurrentForRise, wireRise } from './heating.ts';
import { COPPER_RESISTIVITY, wireGaugeArea, wireGaugeDiameter } from './wire.ts';

const wire = fc.record({
  gauge: fc.integer({ min: 10, max: 30 }),
  wall: fc.double({ min: 0, max: 1e-3, noNaN: true }),
  celsius: fc.integer({ min: -10, max: 60 }),
});

const args = (w: { gauge: number; wall: number; celsius: number }) => ({
  ambient: ZERO_CELSIUS + w.celsius,
  resistancePerMetre: COPPER_RESISTIVITY / wireGaugeArea({ gauge: w.gauge }),
  conductorDiameter: wireGaugeDiameter({ gauge: w.gauge }),
  outerDiameter: wireGaugeDiameter({ gauge: w.gauge }) + 2 * w.wall,
});

describe('the warming of a single wire', () => {
  it('gives back the rise whose current was asked for', () => {
    fc.assert(
      fc.property(wire, fc.double({ min: 0.5, max: 130, noNaN: true }), (w, rise) => {
        const current = wireCurrentForRise({ rise, ...args(w) });
        expect(wireRise({ current, ...args(w) })).toBeCloseTo(rise, 6);
      }),
    );
  });

  it('grows faster than the square of the current, because warm copper resists more', () => {
    fc.assert(
      fc.property(wire, fc.double({ min: 1, max: 20, noNaN: true }), (w, rise) => {
        const more = wireRise({ current: 1.4 * wireCurrentForRise({ rise, ...args(w) }), ...args(w) });
        expect(more).toBeGreaterThan(1.4 * rise);
      }),
    );
  });

  it('is nothing without current', () => {
    expect(wireRise({ current: 0, ...args({ gauge: 20, wall: 4e-4, celsius: 25 }) })).toBe(0);
  });

  it('refuses a current that would pass 200 °C', () => {
    expect(() => wireRise({ current: 60, ...args({ gauge: 24, wall: 4e-4, celsius: 25 }) })).toThrow(OutOfRange);
    expect(() => wireCurrentForRise({ rise: 190, ...args({ gauge: 24, wall: 4e-4, celsius: 25 }) })).toThrow(
      OutOfRange,
    );
  });

  it('refuses an insulation thinner than its copper', () => {
    const thin = { ...args({ gauge: 20, wall: 0, celsius: 25 }), outerDiameter: 5e-4 };
    expect(() => wireRise({ current: 1, ...thin })).toThrow(OutOfRange);
    expect(() => wireCurrentForRise({ rise: 10, ...thin })).toThrow(OutOfRange);
  });
});
