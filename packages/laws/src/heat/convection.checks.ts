import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  convectionCoefficient,
  nusseltHorizontalCylinder,
  nusseltPlateDown,
  nusseltPlateDownNewer,
  nusseltPlateUp,
  nusseltVerticalLaminar,
  nusseltVerticalPlate,
  rayleighNumber,
  stillAirCoefficient,
} from './convection.ts';

const BOX = 'Cengel, Heat Transfer, chapter 9 solution, sealed electronic box 50 × 50 × 15 cm at 32 °C in 25 °C';
const BOARD = 'Cengel, Heat Transfer, chapter 9 solution, 15 × 20 cm circuit board of 8 W, hot side down';
const BERGMAN =
  'Bergman et al., Introduction to Heat Transfer 6e, Example 9.2 inputs, as documented by the open library ht';
const DUCT =
  'Incropera et al., Fundamentals of Heat and Mass Transfer, Example 9.3 (duct at 45 °C in 15 °C), from memory';
const PIPE =
  'Incropera et al., Fundamentals of Heat and Mass Transfer, Example 9.4 (pipe at 165 °C in 23 °C), from memory';
const cengel = { expansion: 0.003317, difference: 7, viscosity: 1.594e-5, prandtl: 0.7286 };

/** Air properties are our own here, 2 % from the book’s. */
const still = (
  surface: 'side' | 'top' | 'bottom' | 'cylinder',
  length: number,
  [warm, air]: readonly [number, number],
  expected: number,
  source: string,
  kind: 'published' | 'memory',
  allowed = 0.02,
) =>
  ({
    case: `${surface}, L = ${length} m, ${warm} °C in ${air} °C`,
    source,
    kind,
    args: { surface, length, temperature: ZERO_CELSIUS + warm, ambient: ZERO_CELSIUS + air },
    expected,
    allowed,
  }) as const;

export const convectionChecks = [
  checkLaw(rayleighNumber, [
    {
      case: 'top, L = 0.125 m',
      source: BOX,
      kind: 'published',
      args: { ...cengel, length: 0.125 },
      expected: 1.275e6,
      allowed: 0.001,
    },
    {
      case: 'sides, L = 0.15 m',
      source: BOX,
      kind: 'published',
      args: { ...cengel, length: 0.15 },
      expected: 2.204e6,
      allowed: 0.001,
    },
    {
      case: 'L = 0.0429 m, 25 K, air at 35 °C',
      source: BOARD,
      kind: 'published',
      args: { expansion: 1 / 308, difference: 25, length: 0.0429, viscosity: 1.655e-5, prandtl: 0.7268 },
      expected: 166379,
      allowed: 0.003,
    },
  ]),
  checkLaw(nusseltVerticalPlate, [
    {
      case: 'Ra 5.503e8, Pr 0.7256',
      source: 'Cengel, Heat Transfer, problem 9-19E solution',
      kind: 'published',
      args: { rayleigh: 5.503e8, prandtl: 0.7256 },
      expected: 102.6,
      allowed: 5e-4,
    },
    {
      case: 'Gr 2.63e9, Pr 0.69',
      source: BERGMAN,
      kind: 'published',
      args: { rayleigh: 0.69 * 2.63e9, prandtl: 0.69 },
      expected: 147.162,
      allowed: 1e-5,
    },
  ]),
  checkLaw(nusseltVerticalLaminar, [
    {
      case: 'sides, Ra 2.204e6; the book uses the law for all flows',
      source: BOX,
      kind: 'published',
      args: { rayleigh: 2.204e6, prandtl: 0.7286 },
      expected: 20.55,
      allowed: 0.002,
    },
  ]),
  checkLaw(nusseltHorizontalCylinder, [
    {
      case: 'Gr 2.63e9, Pr 0.69',
      source: BERGMAN,
      kind: 'published',
      args: { rayleigh: 0.69 * 2.63e9, prandtl: 0.69 },
      expected: 139.135,
      allowed: 1e-5,
    },
    {
      case: 'Ra 5.07e6, Pr 0.697',
      source: PIPE,
      kind: 'memory',
      args: { rayleigh: 5.07e6, prandtl: 0.697 },
      expected: 23.3,
      allowed: 0.012,
    },
  ]),
  checkLaw(nusseltPlateUp, [
    {
      case: 'top, Ra 1.275e6',
      source: BOX,
      kind: 'published',
      args: { rayleigh: 1.275e6 },
      expected: 18.15,
      allowed: 5e-4,
    },
    {
      case: 'Gr 3.21e8, Pr 5.54',
      source: BERGMAN,
      kind: 'published',
      args: { rayleigh: 3.21e8 * 5.54 },
      expected: 181.731,
      allowed: 1e-5,
    },
  ]),
  checkLaw(nusseltPlateDown, [
    {
      case: 'Gr 3.21e8, Pr 5.54',
      source: BERGMAN,
      kind: 'published',
      args: { rayleigh: 3.21e8 * 5.54 },
      expected: 55.4456,
      allowed: 1e-5,
    },
  ]),
  checkLaw(nusseltPlateDownNewer, [
    {
      case: 'Ra 1e5, where the fifth root is ten',
      source: 'Incropera et al., Fundamentals of Heat and Mass Transfer, seventh edition, from memory',
      kind: 'memory',
      args: { rayleigh: 1e5 },
      expected: 5.2,
      allowed: 1e-6,
    },
    {
      case: 'Ra 166 379 against the older law, 0.27 · 20.197; rivals lie within 6 %',
      source: BOARD,
      kind: 'published',
      args: { rayleigh: 166379 },
      expected: 5.453,
      allowed: 0.06,
    },
  ]),
  checkLaw(convectionCoefficient, [
    {
      case: 'top, Nu 18.15',
      source: BOX,
      kind: 'published',
      args: { nusselt: 18.15, conductivity: 0.02577, length: 0.125 },
      expected: 3.741,
      allowed: 5e-4,
    },
    {
      case: 'sides, Nu 20.55',
      source: BOX,
      kind: 'published',
      args: { nusselt: 20.55, conductivity: 0.02577, length: 0.15 },
      expected: 3.53,
      allowed: 5e-4,
    },
  ]),
  checkLaw(stillAirCoefficient, [
    still('top', 0.125, [32, 25], 3.741, BOX, 'published'),
    still('side', 0.15, [32, 25], 3.53, BOX, 'published'),
    still('side', 0.3, [45, 15], 4.23, DUCT, 'memory'),
    still('top', 0.375, [45, 15], 5.47, DUCT, 'memory', 0.02),
    still('bottom', 0.375, [45, 15], 2.07, DUCT, 'memory'),
    still('cylinder', 0.1, [165, 23], 7.29, PIPE, 'memory', 0.02),
  ]),
];
