/**
 * Goal: boxes and lumps obey the balance of heat, and warm up the way they must.
 * Method: round trips, monotony and limits on random boxes.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import {
  choosePlateDown,
  chooseVerticalPlate,
  nusseltPlateUp,
  nusseltVerticalLaminar,
  nusseltVerticalPlate,
} from './convection.ts';
import { chooseEnclosure, enclosureHeat, enclosureWallTemperature } from './enclosure.ts';
import { partTemperature, powerAtTemperatureLimit, wallTransmittance } from './network.ts';
import { radiatedHeat, radiationCoefficient } from './radiation.ts';
import { lumpTemperature, timeToTemperature } from './transient.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const box = fc.record({
  length: double(0.06, 0.4),
  width: double(0.04, 0.3),
  height: double(0.02, 0.2),
  emissivity: double(0.05, 1),
  freeBottom: double(0, 1),
  ambient: double(263, 313),
});

describe('a sealed box', () => {
  it('sheds at its wall temperature just the heat that is made inside', () => {
    fc.assert(
      fc.property(box, double(1e-5, 1), (size, share) => {
        const power = share * enclosureHeat({ ...size, wall: size.ambient + 199 });
        const wall = enclosureWallTemperature({ ...size, power });
        expect(enclosureHeat({ ...size, wall }) / power).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is at ambient without heat, warmer with more heat, cooler with a darker skin or a free bottom', () => {
    fc.assert(
      fc.property(box, double(0.1, 5), (size, power) => {
        const wall = (change: Partial<typeof size>, watts = power) =>
          enclosureWallTemperature({ ...size, ...change, power: watts });
        expect(wall({}, 0)).toBeCloseTo(size.ambient, 6);
        expect(wall({}, power * 1.1)).toBeGreaterThan(wall({}));
        expect(wall({ emissivity: 1 })).toBeLessThanOrEqual(wall({ emissivity: 0.05 }));
        expect(wall({ freeBottom: 1 })).toBeLessThanOrEqual(wall({ freeBottom: 0 }));
      }),
    );
  });

  it('says so when it cannot shed the heat', () => {
    const matchbox = { length: 0.05, width: 0.03, height: 0.015, emissivity: 0.9, freeBottom: 1, ambient: 298 };
    expect(() => enclosureWallTemperature({ ...matchbox, power: 500 })).toThrow(OutOfRange);
    expect(chooseEnclosure(0.16).use).toBe('enclosure-wall-temperature');
    expect(chooseEnclosure(1.2).use).toBe('cabinet-air-rise');
  });
});

describe('convection and radiation', () => {
  it('a horizontal plate is refused outside its printed range', () => {
    expect(() => nusseltPlateUp({ rayleigh: 9e3 })).toThrow(OutOfRange);
    expect(() => nusseltVerticalLaminar({ rayleigh: 1.1e9, prandtl: 0.7 })).toThrow(OutOfRange);
  });

  it('both laws of a vertical plate agree within a tenth over the range of small boxes', () => {
    for (let exponent = 4; exponent <= 7.5; exponent += 0.25) {
      const at = { rayleigh: 10 ** exponent * 0.999, prandtl: 0.71 };
      expect(Math.abs(nusseltVerticalLaminar(at) / nusseltVerticalPlate(at) - 1)).toBeLessThan(0.1);
    }
  });

  it('the choosers follow the printed ranges', () => {
    expect(chooseVerticalPlate(1e8).use).toBe('nusselt-vertical-plate-laminar');
    expect(chooseVerticalPlate(2e9).use).toBe('nusselt-vertical-plate');
    expect(choosePlateDown(5e4).use).toBe('nusselt-hot-plate-down-newer');
    expect(choosePlateDown(5e5).use).toBe('nusselt-hot-plate-down');
  });

  it('radiation by coefficient equals radiation by fourth powers', () => {
    fc.assert(
      fc.property(double(0.05, 1), double(250, 450), double(250, 450), (emissivity, surface, surroundings) => {
        const coefficient = radiationCoefficient({ emissivity, surface, surroundings });
        const direct = radiatedHeat({ emissivity, area: 1, surface, surroundings });
        expect(coefficient * (surface - surroundings)).toBeCloseTo(direct, 6);
      }),
    );
  });
});

describe('paths and lumps', () => {
  it('the heat that a limit allows brings the part just to the limit', () => {
    fc.assert(
      fc.property(double(300, 400), double(260, 299), double(1, 100), (limit, surroundings, resistance) => {
        const power = powerAtTemperatureLimit({ limit, surroundings, resistance });
        expect(partTemperature({ surroundings, power, resistance })).toBeCloseTo(limit, 9);
      }),
    );
  });

  it('a wall never lets through more than its worse film', () => {
    fc.assert(
      fc.property(
        double(1, 50),
        double(0.0005, 0.02),
        double(0.05, 5),
        double(1, 50),
        (inside, thickness, conductivity, outside) => {
          expect(wallTransmittance({ inside, thickness, conductivity, outside })).toBeLessThan(
            Math.min(inside, outside),
          );
        },
      ),
    );
  });

  it('a lump is at the asked temperature at the time that was told', () => {
    fc.assert(
      fc.property(
        double(0, 20),
        double(0.05, 2),
        double(5, 500),
        double(0.02, 0.98),
        (power, conductance, heatCapacity, share) => {
          const base = { ambient: 293, power, conductance, initial: 280, heatCapacity };
          const target = 280 + share * (293 + power / conductance - 280);
          const time = timeToTemperature({ ...base, target });
          expect(lumpTemperature({ ...base, time })).toBeCloseTo(target, 6);
        },
      ),
    );
  });

  it('a lump never reaches a temperature beyond its end', () => {
    const base = { ambient: 293, power: 1, conductance: 0.1, initial: 293, heatCapacity: 50 };
    expect(timeToTemperature({ ...base, target: 304 })).toBe(Number.POSITIVE_INFINITY);
    expect(timeToTemperature({ ...base, target: 290 })).toBe(Number.POSITIVE_INFINITY);
  });
});
