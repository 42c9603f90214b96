/**
 * Goal: the quick arithmetic of still air is the published one, and what is solved with it solves the balance of heat.
 * Method: twins: the equations as they are printed, and bisection of the balance written with checked laws only.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ATMOSPHERE, airConductivity, airKinematicViscosity, airPrandtl } from './air.ts';
import { type AirSurface, rayleighNumber, stillAirCoefficient } from './convection.ts';
import { enclosureHeat, enclosureWallTemperature } from './enclosure.ts';
import { radiatedHeat } from './radiation.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Churchill & Chu 1975 and the horizontal plates of Incropera, as printed. */
const PRINTED: Readonly<Record<AirSurface, (ra: number, pr: number) => number>> = {
  side: (ra, pr) =>
    ra <= 1e9
      ? 0.68 + (0.67 * ra ** (1 / 4)) / (1 + (0.492 / pr) ** (9 / 16)) ** (4 / 9)
      : (0.825 + (0.387 * ra ** (1 / 6)) / (1 + (0.492 / pr) ** (9 / 16)) ** (8 / 27)) ** 2,
  top: (ra) => (ra <= 1e7 ? 0.54 * ra ** (1 / 4) : 0.15 * ra ** (1 / 3)),
  bottom: (ra) => 0.27 * ra ** (1 / 4),
  cylinder: (ra, pr) => (0.6 + (0.387 * ra ** (1 / 6)) / (1 + (0.559 / pr) ** (9 / 16)) ** (8 / 27)) ** 2,
};

describe('the quick arithmetic of still air', () => {
  it('gives the coefficient of the printed equations for every surface', () => {
    const surface = fc.constantFrom<AirSurface>('side', 'top', 'bottom', 'cylinder');
    fc.assert(
      fc.property(
        surface,
        double(1e-3, 2),
        double(280, 590),
        double(225, 279),
        (kind, length, temperature, ambient) => {
          const film = (temperature + ambient) / 2;
          const viscosity = airKinematicViscosity({ temperature: film, pressure: ATMOSPHERE });
          const prandtl = airPrandtl({ temperature: film });
          const difference = temperature - ambient;
          const ra = rayleighNumber({ expansion: 1 / film, difference, length, viscosity, prandtl });
          const expected = (PRINTED[kind](ra, prandtl) * airConductivity({ temperature: film })) / length;
          const found = stillAirCoefficient({ surface: kind, length, temperature, ambient });
          expect(Math.abs(found / expected - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });
});

describe('the wall of a sealed box', () => {
  const box = fc.record({
    length: double(0.05, 0.4),
    width: double(0.03, 0.3),
    height: double(0.02, 0.2),
    emissivity: double(0.05, 1),
    freeBottom: double(0, 1),
    ambient: double(240, 335),
  });

  it('is where bisection of the balance of heat finds it', () => {
    fc.assert(
      fc.property(box, double(1e-4, 1), (size, share) => {
        const { length, width, height, emissivity, freeBottom, ambient } = size;
        const base = length * width;
        const sides = 2 * height * (length + width);
        const flat = base / (2 * (length + width));
        const sheds = (rise: number) => {
          const temperature = ambient + rise;
          const film = (surface: AirSurface, along: number) =>
            stillAirCoefficient({ surface, length: along, temperature, ambient });
          const bottom = freeBottom * base;
          const air = film('side', height) * sides + film('top', flat) * base + film('bottom', flat) * bottom;
          const area = sides + base + bottom;
          return air * rise + radiatedHeat({ emissivity, area, surface: temperature, surroundings: ambient });
        };
        const power = share * enclosureHeat({ ...size, wall: ambient + 199 });
        let [low, high] = [0, 200];
        for (let i = 0; i < 60; i++) {
          const middle = (low + high) / 2;
          if (sheds(middle) < power) low = middle;
          else high = middle;
        }
        const rise = enclosureWallTemperature({ ...size, power }) - ambient;
        expect(Math.abs(rise / low - 1)).toBeLessThan(1e-9);
      }),
    );
  });
});
