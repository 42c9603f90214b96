import { checkLaw, checkSubject } from '../check.ts';
import {
  compactionResistance,
  contactLength,
  drawbarPull,
  platePressure,
  plateSinkage,
  rutResistance,
  slipTraction,
  soilModulus,
  soilThrustLimit,
  wheelSinkage,
} from './soil.ts';
import { SOILS, type SoilName } from './soils.table.ts';

const DEG = Math.PI / 180;
const LECTURE = 'University of Maryland, ENAE 788X lecture notes on terramechanics, lunar rover wheel';
const INTEGRAL =
  'radial pressure of the soil of Wong, Theory of Ground Vehicles, 2008, summed round the true circle in 20 000 strips';
const WONG_ROW = 'Wong, Theory of Ground Vehicles, 4th ed. 2008, table of terrain values';
const JANOSI = 'Janosi & Hanamoto, 1961, with the dry sand of Wong, 2008 (figures worked apart)';

const toyWheel = { load: 12.258, diameter: 0.12, width: 0.05 };
const smallWheel = { load: 4.903, diameter: 0.065, width: 0.03 };
const moonWheel = { load: 259, diameter: 0.813, width: 0.229, modulus: 1400 / 0.229 + 820_000, exponent: 1 };
const sandThrust = { limit: 8.312, length: 0.0345, deformation: 0.02 };
const moonThrust = { limit: 172.95, length: 0.1218, deformation: 0.0178 };

/** Modulus of a soil of the table for a wheel width, without the law that is checked here. */
function on(name: SoilName, wheel: { load: number; diameter: number; width: number }) {
  const { cohesive, frictional, exponent } = SOILS[name];
  return { ...wheel, modulus: cohesive / wheel.width + frictional, exponent };
}

export const soilChecks = [
  checkLaw(soilModulus, [
    {
      case: 'clayey soil 38 under 50 mm: 13.19/0.05 + 692.15 kN',
      source: WONG_ROW,
      kind: 'published',
      args: { cohesive: 13_190, frictional: 692_150, width: 0.05 },
      expected: 955_950,
      allowed: 1e-6,
    },
    {
      case: 'rover wheel on simulant, k_c 1370, k_φ 814 000, b 0.11',
      source: 'values of Ishigami, rover wheel on lunar simulant',
      kind: 'published',
      args: { cohesive: 1370, frictional: 814_000, width: 0.11 },
      expected: 8.265e5,
      allowed: 1e-3,
    },
  ]),
  checkLaw(platePressure, [
    {
      case: 'clayey soil 38, 50 mm plate at 10 mm: the root of 0.01 is a tenth',
      source: WONG_ROW,
      kind: 'published',
      args: { modulus: 955_950, sinkage: 0.01, exponent: 0.5 },
      expected: 95_595,
      allowed: 1e-6,
    },
    {
      case: 'dry sand, 50 mm plate at 10 mm',
      source: `${WONG_ROW} (figure worked apart)`,
      kind: 'published',
      args: { modulus: 990 / 0.05 + 1_528_430, sinkage: 0.01, exponent: 1.1 },
      expected: 9769,
      allowed: 1e-3,
    },
    {
      case: 'sandy loam 15, 50 mm plate at 10 mm',
      source: `${WONG_ROW} (figure worked apart)`,
      kind: 'published',
      args: { modulus: 5270 / 0.05 + 1_515_040, sinkage: 0.01, exponent: 0.7 },
      expected: 64_510,
      allowed: 1e-3,
    },
  ]),
  checkLaw(plateSinkage, [
    {
      case: 'dry sand under 2 kPa, 50 mm plate',
      source: `${WONG_ROW} (figure worked apart)`,
      kind: 'published',
      args: { pressure: 2000, modulus: 990 / 0.05 + 1_528_430, exponent: 1.1 },
      expected: 0.002365,
      allowed: 1e-3,
    },
    {
      case: 'dry sand under 5 kPa, 50 mm plate',
      source: `${WONG_ROW} (figure worked apart)`,
      kind: 'published',
      args: { pressure: 5000, modulus: 990 / 0.05 + 1_528_430, exponent: 1.1 },
      expected: 0.00544,
      allowed: 1e-3,
    },
  ]),
  checkLaw(wheelSinkage, [
    {
      case: 'quarter of 5 kg on 120 × 50 mm, dry sand',
      source: INTEGRAL,
      kind: 'published',
      args: on('dry sand', toyWheel),
      expected: 0.010897,
      allowed: 0.004,
    },
    {
      case: 'quarter of 2 kg on 65 × 30 mm, dry sand',
      source: INTEGRAL,
      kind: 'published',
      args: on('dry sand', smallWheel),
      expected: 0.010326,
      allowed: 0.02,
    },
    {
      case: 'quarter of 5 kg on 120 × 50 mm, sandy loam 15',
      source: INTEGRAL,
      kind: 'published',
      args: on('sandy loam 15', toyWheel),
      expected: 0.002069,
      allowed: 0.05,
    },
    {
      case: 'quarter of 5 kg on 120 × 50 mm, clayey soil 38',
      source: INTEGRAL,
      kind: 'published',
      args: on('clayey soil 38', toyWheel),
      expected: 0.000945,
      allowed: 0.07,
    },
    {
      case: 'rover wheel on simulant: 64.68 N, r 0.09, b 0.11, n 1',
      source: 'values of Ishigami, rover wheel on lunar simulant (figure worked apart)',
      kind: 'published',
      args: { load: 64.68, diameter: 0.18, width: 0.11, modulus: 8.265e5, exponent: 1 },
      expected: 0.0185,
      allowed: 1e-3,
    },
  ]),
  checkLaw(rutResistance, [
    {
      case: 'k 1e6, n 1, 10 mm deep, 50 mm wide: half of 0.05 · 1e6 · 1e-4',
      source: 'Bekker, Introduction to Terrain-Vehicle Systems, 1969, worked by hand',
      kind: 'published',
      args: { width: 0.05, modulus: 1e6, sinkage: 0.01, exponent: 1 },
      expected: 2.5,
      allowed: 1e-9,
    },
    {
      case: 'dry sand rut of 10.897 mm, 50 mm wide',
      source: INTEGRAL,
      kind: 'published',
      args: { width: 0.05, modulus: 990 / 0.05 + 1_528_430, sinkage: 0.010897, exponent: 1.1 },
      expected: 2.786,
      allowed: 1e-3,
    },
  ]),
  checkLaw(compactionResistance, [
    {
      case: 'one wheel at 259 N: 28.3 N',
      source: LECTURE,
      kind: 'published',
      args: moonWheel,
      expected: 28.3,
      allowed: 0.004,
    },
    {
      case: 'quarter of 5 kg on 120 × 50 mm, dry sand',
      source: INTEGRAL,
      kind: 'published',
      args: on('dry sand', toyWheel),
      expected: 2.786,
      allowed: 0.006,
    },
    {
      case: 'quarter of 2 kg on 65 × 30 mm, dry sand',
      source: INTEGRAL,
      kind: 'published',
      args: on('dry sand', smallWheel),
      expected: 1.506,
      allowed: 0.04,
    },
    {
      case: 'quarter of 5 kg on 120 × 50 mm, sandy loam 15',
      source: INTEGRAL,
      kind: 'published',
      args: on('sandy loam 15', toyWheel),
      expected: 1.303,
      allowed: 0.08,
    },
    {
      case: 'quarter of 5 kg on 120 × 50 mm, clayey soil 38',
      source: INTEGRAL,
      kind: 'published',
      args: on('clayey soil 38', toyWheel),
      expected: 0.926,
      allowed: 0.09,
    },
  ]),
  checkSubject('wheel-on-soil', [
    {
      case: 'four wheels at 259 N: 113 N',
      source: LECTURE,
      kind: 'published',
      ours: () => 4 * compactionResistance(moonWheel),
      expected: 113,
      allowed: 0.005,
    },
    {
      case: 'a wheel of twice the diameter loses 2^(−(n+1)/(2n+1)) as much, dry sand',
      source: 'dimensional analysis of the formula of Bekker, 1969',
      kind: 'published',
      ours: () =>
        compactionResistance(on('dry sand', { ...toyWheel, diameter: 0.24 })) /
        compactionResistance(on('dry sand', toyWheel)),
      expected: 0.63453,
      allowed: 1e-4,
    },
    {
      case: 'a wheel of twice the diameter loses 2^(−(n+1)/(2n+1)) as much, clayey soil 38',
      source: 'dimensional analysis of the formula of Bekker, 1969',
      kind: 'published',
      ours: () =>
        compactionResistance(on('clayey soil 38', { ...toyWheel, diameter: 0.24 })) /
        compactionResistance(on('clayey soil 38', toyWheel)),
      expected: 0.5946,
      allowed: 1e-4,
    },
  ]),
  checkLaw(contactLength, [
    {
      case: 'half chord 4 of a circle of radius 5 sunk to 3 below the axle',
      source: 'right triangle 3-4-5, exact',
      kind: 'published',
      args: { diameter: 0.1, sinkage: 0.02 },
      expected: 0.04,
      allowed: 1e-9,
    },
  ]),
  checkLaw(soilThrustLimit, [
    {
      case: 'lunar rover wheel, 229 × 121.8 mm, c 170 Pa, φ 33.0°, 259 N',
      source: `${LECTURE} (inputs; figure worked apart)`,
      kind: 'published',
      args: { area: 0.229 * 0.1218, cohesion: 170, load: 259, friction: 0.576 },
      expected: 172.95,
      allowed: 1e-3,
    },
    {
      case: 'toy wheel on dry sand: 1.794 N of cohesion and 6.518 N of friction',
      source: `${WONG_ROW} (figures worked apart)`,
      kind: 'published',
      args: { area: 0.0345 * 0.05, cohesion: 1040, load: 12.258, friction: 28 * DEG },
      expected: 1.794 + 6.518,
      allowed: 5e-4,
    },
  ]),
  checkLaw(slipTraction, [
    ...[
      [0.1, 0.677],
      [0.2, 1.282],
      [0.5, 2.743],
      [1, 4.352],
    ].map(
      ([slip = 0, force = 0]) =>
        ({
          case: `toy wheel on dry sand at slip ${slip}`,
          source: JANOSI,
          kind: 'published',
          args: { ...sandThrust, slip },
          expected: force,
          allowed: 1e-3,
        }) as const,
    ),
    ...[
      [0.05, 26.48],
      [0.2, 78.74],
      [0.5, 124.05],
      [1, 147.7],
    ].map(
      ([slip = 0, force = 0]) =>
        ({
          case: `lunar rover wheel at slip ${slip}`,
          source: `${LECTURE} (inputs; figures worked apart)`,
          kind: 'published',
          args: { ...moonThrust, slip },
          expected: force,
          allowed: 1e-3,
        }) as const,
    ),
    {
      case: 'a contact as long as K, spinning: one part in e of the thrust',
      source: 'Janosi & Hanamoto, 1961, exact for x = 1',
      kind: 'published',
      args: { limit: 10, slip: 1, length: 0.02, deformation: 0.02 },
      expected: 10 / Math.E,
      allowed: 1e-9,
    },
    {
      case: 'a contact a thousand times K long gives all but a thousandth of the thrust',
      source: 'limit of 1 − (1 − e^(−x))/x for large x',
      kind: 'published',
      args: { limit: 10, slip: 1, length: 10, deformation: 0.01 },
      expected: 9.99,
      allowed: 1e-9,
    },
  ]),
  checkLaw(drawbarPull, [
    {
      case: 'toy wheel spinning on dry sand has 1.57 N to spare',
      source: `${JANOSI}, resistance summed round the true circle`,
      kind: 'published',
      args: { thrust: 4.352, resistance: 2.786 },
      expected: 1.57,
      allowed: 0.004,
    },
    {
      case: 'at a tenth of slip it lacks 2.11 N',
      source: `${JANOSI}, resistance summed round the true circle`,
      kind: 'published',
      args: { thrust: 0.677, resistance: 2.786 },
      expected: -2.11,
      allowed: 0.002,
    },
  ]),
];
