/** Heat radiation between a surface and large surroundings, and what the sun brings. */
import { STEFAN_BOLTZMANN } from '../constants.ts';
import { law } from '../law.ts';
import { radiated } from './still-air.kernel.ts';

const SOURCE = 'Stefan–Boltzmann law, grey surface in large surroundings, any heat-transfer text';
const emissivity = { symbol: 'ε', is: 'emissivity', unit: '1', above: 0, to: 1 } as const;
const surface = { symbol: 'T', is: 'surface temperature', unit: 'K', above: 0 } as const;
const surroundings = { symbol: 'Ts', is: 'temperature of the surroundings', unit: 'K', above: 0 } as const;

/** Emissivity in the infrared and absorptivity for sunlight. */
export const SURFACE_FINISHES = {
  'black plastic': { emissivity: 0.9, absorptivity: 0.95, source: 'heat-transfer tables, from memory' },
  'white plastic': { emissivity: 0.9, absorptivity: 0.3, source: 'heat-transfer tables, from memory' },
  'painted metal': { emissivity: 0.9, absorptivity: 0.6, source: 'heat-transfer tables, medium colour, from memory' },
  'bare aluminium': { emissivity: 0.1, absorptivity: 0.2, source: 'heat-transfer tables, from memory' },
} as const;

/** Net heat radiated by a surface. */
export const radiatedHeat = law(
  {
    id: 'radiated-heat',
    title: 'Net heat radiated by a surface',
    equation: 'P = ε · 5.670e−8 W/(m²·K⁴) · A · (T⁴ − Ts⁴)',
    args: { emissivity, area: { symbol: 'A', is: 'area', unit: 'm²', above: 0 }, surface, surroundings },
    gives: { symbol: 'P', is: 'net power', unit: 'W' },
    validFor: 'a convex surface in surroundings much larger than itself',
    leavesOut: 'a clear night sky, which is far colder than the air; sunshine',
    source: SOURCE,
  },
  ({ emissivity, area, surface, surroundings }) => radiated(emissivity, area, surface, surroundings),
);

/** Radiation written as a heat-transfer coefficient, exact for the pair of temperatures. */
export const radiationCoefficient = law(
  {
    id: 'radiation-coefficient',
    title: 'Radiation as a heat-transfer coefficient',
    equation: 'h = ε · 5.670e−8 W/(m²·K⁴) · (T² + Ts²) · (T + Ts)',
    args: { emissivity, surface, surroundings },
    gives: { symbol: 'h', is: 'radiation coefficient', unit: 'W/(m²·K)' },
    validFor: 'a convex surface in surroundings much larger than itself',
    leavesOut: 'a clear night sky, sunshine',
    source: SOURCE,
  },
  ({ emissivity, surface, surroundings }) =>
    emissivity * STEFAN_BOLTZMANN * (surface ** 2 + surroundings ** 2) * (surface + surroundings),
);

/** Heat that sunshine brings to a box. */
export const solarGain = law(
  {
    id: 'solar-gain',
    title: 'Heat from sunshine on a surface',
    equation: 'P = α · G · A',
    args: {
      absorptivity: {
        symbol: 'α',
        is: 'absorptivity for sunlight: 0.3 white to 0.95 black',
        unit: '1',
        above: 0,
        to: 1,
      },
      irradiance: {
        symbol: 'G',
        is: 'irradiance on the surface, about 1000 W/m² at most',
        unit: 'W/m²',
        from: 0,
        to: 1400,
      },
      area: { symbol: 'A', is: 'area as the sun sees it', unit: 'm²', above: 0 },
    },
    gives: { symbol: 'P', is: 'heat taken up', unit: 'W' },
    validFor: 'opaque surfaces',
    leavesOut: 'light thrown back by the ground, haze, shade',
    source: 'definition of absorptivity, any heat-transfer text; 1000 W/m² as in IEC 60904-3 reference sunlight',
  },
  ({ absorptivity, irradiance, area }) => absorptivity * irradiance * area,
);
