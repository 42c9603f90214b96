/**
 * Goal: the wheel formula is used only where its series holds, and agrees there with the pressure model it is cut from.
 * Method: the pressure is summed round the true circle on random wheels; refusals are provoked.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { compactionResistance, platePressure, plateSinkage, slipTraction, wheelSinkage } from './soil.ts';

/** Vertical force on a rigid wheel sunk to z, by strips round its true circle. */
function carried(z: number, diameter: number, width: number, modulus: number, exponent: number): number {
  const strips = 4000;
  const length = Math.sqrt(diameter * z - z * z);
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const x = ((i + 0.5) * length) / strips;
    const below = z - (diameter / 2 - Math.sqrt((diameter / 2) ** 2 - x * x));
    sum += modulus * Math.max(0, below) ** exponent;
  }
  return (sum * width * length) / strips;
}

const snow = { load: 12.258, diameter: 0.12, width: 0.05, modulus: 4370 / 0.05 + 196_720, exponent: 1.6 };
const firm = fc.record({
  load: fc.double({ min: 1, max: 30, noNaN: true }),
  diameter: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
  width: fc.double({ min: 0.02, max: 0.08, noNaN: true }),
  modulus: fc.double({ min: 8e5, max: 5e6, noNaN: true }),
  exponent: fc.double({ min: 0.5, max: 1.1, noNaN: true }),
});

describe('a wheel on soft ground', () => {
  it('is refused on snow, whose exponent is out of range', () => {
    expect(() => wheelSinkage(snow)).toThrow(OutOfRange);
    expect(() => wheelSinkage.bare(snow)).toThrow(/sinks to the axle/);
  });

  it('is refused between a sixth of the diameter and the axle', () => {
    const deep = { load: 20, diameter: 0.1, width: 0.05, modulus: 1e6, exponent: 1 };
    const z = ((3 * 20) / (2 * 0.05 * 1e6 * Math.sqrt(0.1))) ** (2 / 3);
    expect(z).toBeGreaterThan(0.1 / 6 - 0.002);
    expect(() => compactionResistance({ ...deep, load: 40 })).toThrow(/too deep/);
  });

  it('carries its load at the sinkage given, within the error of the series', () => {
    fc.assert(
      fc.property(firm, (wheel) => {
        let z = 0;
        try {
          z = wheelSinkage(wheel);
        } catch {
          return;
        }
        const held = carried(z, wheel.diameter, wheel.width, wheel.modulus, wheel.exponent);
        expect(Math.abs(held / wheel.load - 1)).toBeLessThan(0.12);
      }),
    );
  });

  it('sinks deeper the heavier it is', () => {
    fc.assert(
      fc.property(firm, (wheel) => {
        const light = { ...wheel, load: wheel.load / 2 };
        try {
          expect(wheelSinkage(wheel)).toBeGreaterThan(wheelSinkage(light));
        } catch (refused) {
          expect(refused).toBeInstanceOf(OutOfRange);
        }
      }),
    );
  });

  it('presses back with the pressure that sank the plate', () => {
    fc.assert(
      fc.property(firm, ({ modulus, exponent }) => {
        const sinkage = plateSinkage({ pressure: 4000, modulus, exponent });
        expect(platePressure({ modulus, sinkage, exponent })).toBeCloseTo(4000, 6);
      }),
    );
  });
});

describe('slip', () => {
  it('starts from nothing with the slope l/(2K)', () => {
    const slip = 1e-6;
    const force = slipTraction({ limit: 10, slip, length: 0.04, deformation: 0.02 });
    expect(force / (10 * slip)).toBeCloseTo(1, 5);
  });

  it('always gives more thrust with more slip, never more than the soil has', () => {
    const part = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.double({ min: 0.005, max: 0.2, noNaN: true }), (p, q, length) => {
        const at = (slip: number) => slipTraction({ limit: 10, slip, length, deformation: 0.02 });
        if (Math.abs(p - q) < 1e-6) return;
        expect(at(Math.max(p, q))).toBeGreaterThan(at(Math.min(p, q)));
        expect(at(1)).toBeLessThan(10);
      }),
    );
  });
});
