import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { biotNumber, lumpTemperature, thermalTimeConstant, timeToTemperature } from './transient.ts';

const BEAD =
  'Incropera et al., Fundamentals of Heat and Mass Transfer, Example 5.1 (thermocouple bead, h 400, ρ 8500, c 400, k 20), from memory';
const LUMP =
  'ngspice transient analysis of the analogue circuit: 3 W, 0.25 W/K, 60 J/K, 20 K above ambient at the start';
const DIAMETER = 0.706e-3;
const mass = (8500 * Math.PI * DIAMETER ** 3) / 6;
const conductance = 400 * Math.PI * DIAMETER ** 2;
const lump = { ambient: 300, power: 3, conductance: 0.25, initial: 320, heatCapacity: 60 };

export const transientChecks = [
  checkLaw(thermalTimeConstant, [
    {
      case: 'bead of 0.706 mm: 1 s',
      source: BEAD,
      kind: 'memory',
      args: { mass, specificHeat: 400, conductance },
      expected: 1,
      allowed: 0.002,
    },
  ]),
  checkLaw(biotNumber, [
    {
      case: 'bead: 2.35e-3',
      source: BEAD,
      kind: 'memory',
      args: { coefficient: 400, length: DIAMETER / 6, conductivity: 20 },
      expected: 2.35e-3,
      allowed: 0.003,
    },
  ]),
  checkLaw(lumpTemperature, [
    {
      case: 'after 120 s',
      source: LUMP,
      kind: 'reference library',
      args: { ...lump, time: 120 },
      expected: 316.85225,
      allowed: 1e-6,
    },
    {
      case: 'bead from 25 °C in gas at 200 °C after 5.2 s: 199 °C',
      source: BEAD,
      kind: 'memory',
      args: {
        ambient: ZERO_CELSIUS + 200,
        power: 0,
        conductance,
        initial: ZERO_CELSIUS + 25,
        heatCapacity: mass * 400,
        time: 5.2,
      },
      expected: ZERO_CELSIUS + 199,
      allowed: 2e-4,
    },
  ]),
  checkLaw(timeToTemperature, [
    {
      case: 'down to 14 K above ambient',
      source: LUMP,
      kind: 'reference library',
      args: { ...lump, target: 314 },
      expected: 332.7106,
      allowed: 1e-5,
    },
    {
      case: 'bead from 25 °C in gas at 200 °C to 199 °C: 5.2 s',
      source: BEAD,
      kind: 'memory',
      args: {
        ambient: ZERO_CELSIUS + 200,
        power: 0,
        conductance,
        initial: ZERO_CELSIUS + 25,
        heatCapacity: mass * 400,
        target: ZERO_CELSIUS + 199,
      },
      expected: 5.2,
      allowed: 0.01,
    },
  ]),
];
