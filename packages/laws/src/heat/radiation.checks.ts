import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { radiatedHeat, radiationCoefficient, solarGain } from './radiation.ts';

const BOX = 'Cengel, Heat Transfer, chapter 9 solution, sealed electronic box 50 × 50 × 15 cm at 32 °C in 25 °C';
const cengel = { emissivity: 0.85, surface: ZERO_CELSIUS + 32, surroundings: ZERO_CELSIUS + 25 };

export const radiationChecks = [
  checkLaw(radiatedHeat, [
    {
      case: 'top and sides, 0.55 m², emissivity 0.85',
      source: BOX,
      kind: 'published',
      args: { ...cengel, area: 0.55 },
      expected: 20.34,
      allowed: 0.002,
    },
    {
      case: 'pipe of 70 mm, 200 °C in 25 °C, emissivity 0.8, per metre',
      source: 'Incropera et al., Fundamentals of Heat and Mass Transfer, Example 1.2, 421 W/m, from memory',
      kind: 'memory',
      args: { emissivity: 0.8, area: Math.PI * 0.07, surface: ZERO_CELSIUS + 200, surroundings: ZERO_CELSIUS + 25 },
      expected: 421,
      allowed: 0.002,
    },
    {
      case: 'pipe of 0.1 m, 165 °C in 23 °C, emissivity 0.85, per metre',
      source: 'Incropera et al., Fundamentals of Heat and Mass Transfer, Example 9.4, 441 W/m, from memory',
      kind: 'memory',
      args: { emissivity: 0.85, area: Math.PI * 0.1, surface: ZERO_CELSIUS + 165, surroundings: ZERO_CELSIUS + 23 },
      expected: 441,
      allowed: 0.002,
    },
  ]),
  checkLaw(radiationCoefficient, [
    {
      case: '20.34 W over 0.55 m² and 7 K',
      source: BOX,
      kind: 'published',
      args: cengel,
      expected: 20.34 / (0.55 * 7),
      allowed: 0.002,
    },
    {
      case: 'emissivity 0.9 at 300 K, four times the cube by hand',
      source: 'derivative of the Stefan–Boltzmann law, 4 ε σ T³',
      kind: 'published',
      args: { emissivity: 0.9, surface: 300, surroundings: 300 },
      expected: 5.51,
      allowed: 0.001,
    },
  ]),
  checkLaw(solarGain, [
    {
      case: 'black top of 160 × 100 mm in full sun: about 15 W',
      source: 'heat-transfer tables (absorptivity 0.95) and 1000 W/m², from memory; 0.016 m² by hand',
      kind: 'memory',
      args: { absorptivity: 0.95, irradiance: 1000, area: 0.016 },
      expected: 15.2,
      allowed: 0.001,
    },
  ]),
];
