/**
 * Goal: the warming of a wire behaves as heat must.
 * Method: properties over wires from AWG 30 to 10; the two laws undo each other; a twin bisects two nested balances.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ZERO_CELSIUS } from '../constants.ts';
import { stillAirCoefficient } from '../heat/convection.ts';
import { radiatedHeat } from '../heat/radiation.ts';
import { OutOfRange } from '../law.ts';
import { INSULATION_CONDUCTIVITY, INSULATION_EMISSIVITY, wireCurrentForRise, wireRise } from './heating.ts';
import { COPPER_RESISTIVITY, copperResistance, wireGaugeArea, wireGaugeDiameter } from './wire.ts';

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

/** The middle of the interval in which a rising function passes zero, halved sixty times. */
function bisected(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Heat that leaves a metre of wire whose copper is this warm, from checked laws and a bisection of the surface. */
function heatLeaving(copper: number, wire: ReturnType<typeof args>): number {
  const { ambient, conductorDiameter, outerDiameter: length } = wire;
  const area = Math.PI * length;
  const leaves = (temperature: number) =>
    stillAirCoefficient({ surface: 'cylinder', length, temperature, ambient }) * area * (temperature - ambient) +
    radiatedHeat({ emissivity: INSULATION_EMISSIVITY, area, surface: temperature, surroundings: ambient });
  const wall = Math.log(length / conductorDiameter) / (2 * Math.PI * INSULATION_CONDUCTIVITY);
  return leaves(bisected((surface) => surface + wall * leaves(surface) - copper, ambient, copper));
}

describe('the warming of a single wire', () => {
  it('is where bisection of the copper’s and the surface’s balance, one inside the other, finds it', () => {
    fc.assert(
      fc.property(wire, fc.double({ min: 0.01, max: 130, noNaN: true }), (w, about) => {
        const run = args(w);
        const current = wireCurrentForRise({ rise: about, ...run });
        const makes = (copper: number) =>
          current ** 2 * copperResistance({ r20: run.resistancePerMetre, temperature: copper });
        const copper = bisected((t) => heatLeaving(t, run) - makes(t), run.ambient, ZERO_CELSIUS + 200);
        expect(Math.abs(wireRise({ current, ...run }) / (copper - run.ambient) - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 50 },
    );
  });

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
