import { checkLaw, checkSubject } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { stillAirCoefficient } from './convection.ts';
import {
  cabinetAirRise,
  cabinetCoolingArea,
  enclosureAirTemperature,
  enclosureHeat,
  enclosureWallTemperature,
} from './enclosure.ts';
import { radiatedHeat } from './radiation.ts';

const BOX = 'Cengel, Heat Transfer, chapter 9 solution, sealed electronic box 50 × 50 × 15 cm at 32 °C in 25 °C';
const CABINET = 'enclosure maker’s curve, 48 × 36 × 16 in, 300 W, 42 ft², air 30 °F warmer';
const BOARD =
  'Cengel, Heat Transfer, problem 9-26 (later 9-33), 15 × 20 cm circuit board of 8 W, emissivity 0.8, room 20 °C';
const SCRIPT = 'natural-convection laws and Stefan–Boltzmann solved in a separate script';
const ROOM_AIR = ZERO_CELSIUS + 25;
const cengel = { length: 0.5, width: 0.5, height: 0.15, emissivity: 0.85, freeBottom: 0, ambient: ROOM_AIR };
const small = { length: 0.16, width: 0.1, height: 0.06, emissivity: 0.9, freeBottom: 1, ambient: ROOM_AIR };

const rise = (power: number, kelvin: number) =>
  ({
    case: `160 × 100 × 60 mm free on all sides, ${power} W`,
    source: SCRIPT,
    kind: 'published',
    expected: kelvin,
    allowed: 0.01,
    ours: () => enclosureWallTemperature({ ...small, power }) - ROOM_AIR,
  }) as const;

/** Temperature rise of the circuit board, from still-air coefficient and radiation, by bisection. */
function boardRise(surface: 'side' | 'top' | 'bottom', length: number): number {
  const [ambient, area, power] = [ZERO_CELSIUS + 20, 0.03, 8];
  let [low, high] = [ambient, ambient + 100];
  for (let i = 0; i < 50; i++) {
    const temperature = (low + high) / 2;
    const convected = stillAirCoefficient({ surface, length, temperature, ambient }) * area * (temperature - ambient);
    const radiated = radiatedHeat({ emissivity: 0.8, area, surface: temperature, surroundings: ambient });
    if (convected + radiated < power) low = temperature;
    else high = temperature;
  }
  return low - ambient;
}

export const enclosureChecks = [
  checkLaw(enclosureHeat, [
    {
      case: 'top 6.55 W, sides 7.41 W, radiation 20.34 W',
      source: BOX,
      kind: 'published',
      args: { ...cengel, wall: ZERO_CELSIUS + 32 },
      expected: 6.55 + 7.41 + 20.34,
      allowed: 0.01,
    },
    {
      case: 'small box, 9.20 K warmer than 25 °C: 2.70 W and 3.30 W',
      source: SCRIPT,
      kind: 'published',
      args: { ...small, wall: ROOM_AIR + 9.2 },
      expected: 6,
      allowed: 0.01,
    },
  ]),
  checkLaw(enclosureWallTemperature, [
    {
      case: '34.30 W leaves the wall at 32 °C (0.1 K)',
      source: BOX,
      kind: 'published',
      args: { ...cengel, power: 34.3 },
      expected: ZERO_CELSIUS + 32,
      allowed: 3e-4,
    },
    {
      case: 'small box with 6 W: 9.20 K (0.1 K)',
      source: SCRIPT,
      kind: 'published',
      args: { ...small, power: 6 },
      expected: ROOM_AIR + 9.2,
      allowed: 3e-4,
    },
  ]),
  checkSubject('wall of a small sealed box', [rise(3, 4.97), rise(6, 9.2), rise(10, 14.4)]),
  checkSubject('board in still air', [
    {
      case: 'hot side up, 42.6 °C',
      source: BOARD,
      kind: 'published',
      expected: 22.6,
      allowed: 0.015,
      ours: () => boardRise('top', 0.03 / 0.7),
    },
    {
      case: 'vertical, 46.6 °C; the book uses the law for all flows',
      source: `${BOARD}, from memory`,
      kind: 'memory',
      expected: 26.6,
      allowed: 0.025,
      ours: () => boardRise('side', 0.2),
    },
    {
      case: 'hot side down, 50.7 °C; the book takes 25 K for the Rayleigh number where it finds 30.7 K',
      source: `${BOARD}, from memory`,
      kind: 'memory',
      expected: 30.7,
      allowed: 0.03,
      ours: () => boardRise('bottom', 0.03 / 0.7),
    },
  ]),
  checkLaw(enclosureAirTemperature, [
    {
      case: 'wall 8.77 K above 25 °C, air 16.7 K (the point the ratio was taken from)',
      source: CABINET,
      kind: 'published',
      args: { wall: ROOM_AIR + 8.77, ambient: ROOM_AIR },
      expected: ROOM_AIR + 16.7,
      allowed: 3e-4,
    },
  ]),
  checkSubject('air in a sealed box', [
    {
      case: '300 W in the cabinet, wall by the outer laws, air by the ratio',
      source: CABINET,
      kind: 'published',
      expected: 16.7,
      allowed: 0.02,
      ours: () => {
        const inch = 0.0254;
        const size = { length: 36 * inch, width: 16 * inch, height: 48 * inch, emissivity: 0.9, freeBottom: 1 };
        const wall = enclosureWallTemperature({ ...size, power: 300, ambient: ROOM_AIR });
        return enclosureAirTemperature({ wall, ambient: ROOM_AIR }) - ROOM_AIR;
      },
    },
    {
      case: 'board of 3 W in a box of 120 × 80 × 40 mm: inside air about 15 K above outside in the shade',
      source: 'common practice, no source',
      kind: 'common practice',
      expected: 15,
      allowed: 0.08,
      ours: () => {
        const size = { length: 0.12, width: 0.08, height: 0.04, emissivity: 0.9, freeBottom: 1 };
        const wall = enclosureWallTemperature({ ...size, power: 3, ambient: ROOM_AIR });
        return enclosureAirTemperature({ wall, ambient: ROOM_AIR }) - ROOM_AIR;
      },
    },
  ]),
  checkLaw(cabinetAirRise, [
    {
      case: '500 W, painted steel 5.5 W/(m²·K), 6.06 m²: 15 K',
      source: 'enclosure maker’s natural-cooling page',
      kind: 'published',
      args: { power: 500, transmittance: 5.5, area: 6.06 },
      expected: 15,
      allowed: 0.001,
    },
  ]),
  checkLaw(cabinetCoolingArea, [
    {
      case: '0.6 × 2.0 × 0.6 m: four sides of 1.2 m² at 0.9, top of 0.36 m² at 1.4',
      source: 'IEC TR 60890, surface factors of exposed faces, from memory',
      kind: 'memory',
      args: { height: 2, width: 0.6, depth: 0.6 },
      expected: 4.824,
      allowed: 1e-6,
    },
  ]),
];
