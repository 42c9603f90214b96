/** A small sealed box: how warm its wall, its air and its board get. */
import { law, OutOfRange } from '../law.ts';
import { zeroOfRising } from '../root.ts';
import { bottomCoefficient, filmBetween, radiated, sideCoefficient, topCoefficient } from './still-air.kernel.ts';

/** A wall this much above ambient [K] is beyond any use: the search ends there. */
const HOTTEST_RISE = 200;
/** Air rise over wall rise, fitted to one published cabinet: 16.7 K of air against 8.77 K of wall. */
const AIR_OVER_WALL = 1.9;

const SOURCE =
  'steady heat balance with the natural-convection laws of Churchill & Chu 1975 and Incropera, and the Stefan–Boltzmann law';
const LEAVES = 'wind, sun (add solar-gain to the power), uneven walls, ventilation slots, heat through brackets';
const ambient = { symbol: 'Ta', is: 'temperature of air and surroundings', unit: 'K', from: 233, to: 340 } as const;
const box = {
  length: { symbol: 'l', is: 'outer length', unit: 'm', above: 0, to: 2 },
  width: { symbol: 'w', is: 'outer width', unit: 'm', above: 0, to: 2 },
  height: { symbol: 'h', is: 'outer height', unit: 'm', above: 0, to: 2 },
  emissivity: { symbol: 'ε', is: 'emissivity of the outside', unit: '1', above: 0, to: 1 },
  freeBottom: { symbol: 'b', is: 'share of the bottom that air can reach', unit: '1', from: 0, to: 1 },
} as const;

interface Box {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly emissivity: number;
  readonly freeBottom: number;
}

/** Heat the outside of a box gives to air and surroundings at a wall temperature. */
function shed({ length, width, height, emissivity, freeBottom }: Box, wall: number, ambient: number): number {
  const [base, sides] = [length * width, 2 * height * (length + width)];
  const flat = base / (2 * (length + width));
  const film = filmBetween(wall, ambient);
  const conductance =
    sideCoefficient(film, height) * sides +
    (topCoefficient(film, flat) + bottomCoefficient(film, flat) * freeBottom) * base;
  const area = sides + base * (1 + freeBottom);
  return conductance * (wall - ambient) + radiated(emissivity, area, wall, ambient);
}

/** Heat that the outside of a box sheds at a wall temperature. */
export const enclosureHeat = law(
  {
    id: 'enclosure-heat',
    title: 'Heat shed by the outside of a box',
    equation: 'P = Σ hi Ai (T − Ta) + ε σ A (T⁴ − Ta⁴); sides 2 h (l + w), top l w, bottom b l w',
    args: { ...box, wall: { symbol: 'T', is: 'wall temperature, uniform', unit: 'K', from: 233, to: 540 }, ambient },
    gives: { symbol: 'P', is: 'heat shed', unit: 'W' },
    validFor: 'boxes in still air, wall not below ambient',
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ length, width, height, emissivity, freeBottom, wall, ambient }) =>
    shed({ length, width, height, emissivity, freeBottom }, wall, ambient),
);

/** Wall temperature of a sealed box that makes heat inside. */
export const enclosureWallTemperature = law(
  {
    id: 'enclosure-wall-temperature',
    title: 'Wall temperature of a sealed box',
    equation: 'T such that P = Σ hi Ai (T − Ta) + ε σ A (T⁴ − Ta⁴); sides 2 h (l + w), top l w, bottom b l w',
    args: {
      ...box,
      power: { symbol: 'P', is: 'heat made inside, and taken from the sun', unit: 'W', from: 0 },
      ambient,
    },
    gives: { symbol: 'T', is: 'mean wall temperature', unit: 'K' },
    validFor: 'boxes in still air, up to 200 K above ambient (the law throws beyond)',
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ length, width, height, emissivity, freeBottom, power, ambient }) => {
    const size = { length, width, height, emissivity, freeBottom };
    const most = shed(size, ambient + HOTTEST_RISE, ambient);
    if (most < power) {
      const accepted = `up to ${most} W, which this box sheds at ${HOTTEST_RISE} K above ambient`;
      throw new OutOfRange('enclosure-wall-temperature', 'P', power, accepted, SOURCE);
    }
    return (
      ambient +
      zeroOfRising((rise) => shed(size, ambient + rise, ambient) - power, 0, HOTTEST_RISE, -power, most - power)
    );
  },
);

/** Temperature of the air inside, from the wall's. */
export const enclosureAirTemperature = law(
  {
    id: 'enclosure-air-temperature',
    title: 'Air temperature inside a sealed box',
    equation: 'Ti = Ta + 1.9 · (T − Ta)',
    args: { wall: { symbol: 'T', is: 'wall temperature', unit: 'K', above: 0 }, ambient: { ...ambient, from: 233 } },
    gives: { symbol: 'Ti', is: 'mean air temperature inside', unit: 'K' },
    validFor: 'sealed boxes without a fan, heat spread inside',
    leavesOut: 'hot spots above the board, a stirring fan (which brings the air near the wall)',
    source:
      'ratio fitted to a cabinet maker’s curve (48 × 36 × 16 in, 300 W, air 16.7 K) and the outer laws of enclosure-wall-temperature',
  },
  ({ wall, ambient }) => ambient + AIR_OVER_WALL * (wall - ambient),
);

/** Air rise of a cabinet by its surface: the rival for large boxes. */
export const cabinetAirRise = law(
  {
    id: 'cabinet-air-rise',
    title: 'Air rise inside a cabinet from its surface',
    equation: 'ΔT = P / (U A)',
    args: {
      power: { symbol: 'P', is: 'heat made inside', unit: 'W', from: 0 },
      transmittance: {
        symbol: 'U',
        is: 'air-to-air transmittance: 5.5 painted steel, 3.5 plastic, about 5 for a small box',
        unit: 'W/(m²·K)',
        above: 0,
      },
      area: { symbol: 'A', is: 'surface that sheds heat', unit: 'm²', above: 0 },
    },
    gives: { symbol: 'ΔT', is: 'inside air above outside air', unit: 'K' },
    validFor: 'closed cabinets in still air',
    leavesOut: 'that U grows with the rise',
    source: 'enclosure maker’s natural-cooling page',
  },
  ({ power, transmittance, area }) => power / (transmittance * area),
);

/** Effective cooling area of a free-standing cabinet. */
export const cabinetCoolingArea = law(
  {
    id: 'cabinet-cooling-area',
    title: 'Effective cooling area of a free-standing cabinet',
    equation: 'A = 1.8 h (w + d) + 1.4 w d',
    args: {
      height: { symbol: 'h', is: 'height', unit: 'm', above: 0 },
      width: { symbol: 'w', is: 'width', unit: 'm', above: 0 },
      depth: { symbol: 'd', is: 'depth', unit: 'm', above: 0 },
    },
    gives: { symbol: 'A', is: 'effective area', unit: 'm²' },
    validFor: 'all sides but the bottom free',
    leavesOut: 'walls that touch others',
    source: 'IEC TR 60890 (also VDE 0660 part 507), from memory',
  },
  ({ height, width, depth }) => 1.8 * height * (width + depth) + 1.4 * width * depth,
);

/** Says which enclosure law to use for a largest side, and why. */
export function chooseEnclosure(largestSide: number): {
  readonly use: 'enclosure-wall-temperature' | 'cabinet-air-rise';
  readonly why: string;
} {
  return largestSide < 0.5
    ? {
        use: 'enclosure-wall-temperature',
        why: 'Small faces shed about twice as much per area as a cabinet’s; the flat U would look too warm.',
      }
    : { use: 'cabinet-air-rise', why: 'The published cabinet figures are for this size.' };
}
