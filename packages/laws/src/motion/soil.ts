/** Soft ground: how deep a wheel sinks, what the rut costs, how much pull the soil carries at a given slip. */
import { law } from '../law.ts';
import { insist } from './refuse.ts';

/** A wheel that sinks deeper than this part of its diameter has left the series the wheel formula is cut from. */
export const DEEPEST_SINKAGE = 1 / 6;

const EXPONENT = { symbol: 'n', is: 'sinkage exponent of the soil', unit: '1', above: 0, to: 1.3 } as const;
const MODULUS = { symbol: 'k', is: 'modulus of sinkage for this width', unit: 'N/m^(n+2)', above: 0 } as const;
const WIDTH = { symbol: 'b', is: 'width of the wheel or smaller side of the plate', unit: 'm', above: 0 } as const;
const DIAMETER = { symbol: 'D', is: 'wheel diameter', unit: 'm', above: 0 } as const;
const LOAD = { symbol: 'W', is: 'load on the wheel', unit: 'N', above: 0 } as const;
const SINKAGE = { symbol: 'z', is: 'sinkage', unit: 'm', above: 0 } as const;
const BEKKER = 'Bekker, Introduction to Terrain-Vehicle Systems, 1969; Wong, Theory of Ground Vehicles, chapter 2';

/** Stiffness of a soil under a plate or wheel of a given width. */
export const soilModulus = law(
  {
    id: 'soil-modulus',
    title: 'Modulus of sinkage for a width',
    equation: 'k = k_c / b + k_φ',
    args: {
      cohesive: { symbol: 'k_c', is: 'cohesive modulus', unit: 'N/m^(n+1)', from: 0 },
      frictional: { symbol: 'k_φ', is: 'frictional modulus', unit: 'N/m^(n+2)', from: 0 },
      width: WIDTH,
    },
    gives: { symbol: 'k', is: 'modulus of sinkage', unit: 'N/m^(n+2)' },
    validFor: 'the exponent n that k_c and k_φ were measured with, and no other',
    leavesOut: 'layers, moisture changing under the wheel',
    source: BEKKER,
  },
  ({ cohesive, frictional, width }) => cohesive / width + frictional,
);

/** Pressure under a plate pressed into soil. */
export const platePressure = law(
  {
    id: 'plate-pressure',
    title: 'Pressure under a sunk plate',
    equation: 'p = k · z^n',
    args: { modulus: MODULUS, sinkage: SINKAGE, exponent: EXPONENT },
    gives: { symbol: 'p', is: 'pressure', unit: 'Pa' },
    validFor: 'level homogeneous soil',
    leavesOut: 'rate of loading, repeated passes',
    source: BEKKER,
  },
  ({ modulus, sinkage, exponent }) => modulus * sinkage ** exponent,
);

/** How deep a plate sinks under a pressure. */
export const plateSinkage = law(
  {
    id: 'plate-sinkage',
    title: 'Sinkage of a plate',
    equation: 'z = (p / k)^(1/n)',
    args: {
      pressure: { symbol: 'p', is: 'pressure', unit: 'Pa', above: 0 },
      modulus: MODULUS,
      exponent: EXPONENT,
    },
    gives: { symbol: 'z', is: 'sinkage', unit: 'm' },
    validFor: 'level homogeneous soil',
    leavesOut: 'rate of loading, repeated passes',
    source: BEKKER,
  },
  ({ pressure, modulus, exponent }) => (pressure / modulus) ** (1 / exponent),
);

interface RigidWheel {
  readonly load: number;
  readonly diameter: number;
  readonly width: number;
  readonly modulus: number;
  readonly exponent: number;
}

/** Sinkage by the wheel formula, or a refusal when the wheel sinks out of its range. */
function sinkageOf({ load, diameter, width, modulus, exponent }: RigidWheel): number {
  const z = ((3 * load) / ((3 - exponent) * width * modulus * Math.sqrt(diameter))) ** (2 / (2 * exponent + 1));
  const deepest = diameter * DEEPEST_SINKAGE;
  const why = z >= diameter / 2 ? 'sinks to the axle' : 'sinks too deep for the formula';
  insist(z <= deepest, 'wheel-sinkage', 'z', z, `up to D/6 = ${deepest} m`, why);
  return z;
}

/** How deep a rigid wheel sinks; refused when it sinks more than a sixth of its diameter. */
export const wheelSinkage = law(
  {
    id: 'wheel-sinkage',
    title: 'Sinkage of a rigid wheel',
    equation: 'z = (3 · W / ((3 − n) · b · k · √D))^(2/(2n+1)), z ≤ D/6',
    args: { load: LOAD, diameter: DIAMETER, width: WIDTH, modulus: MODULUS, exponent: EXPONENT },
    gives: { symbol: 'z', is: 'sinkage', unit: 'm' },
    validFor: 'n up to 1.3 and sinkage up to D/6; for wheels under half a metre an order of size, say ±50 %',
    leavesOut: 'slip sinkage, tread, side flow of the soil',
    source: BEKKER,
  },
  ({ load, diameter, width, modulus, exponent }) => sinkageOf({ load, diameter, width, modulus, exponent }),
);

/** Force that pressing a rut of a given depth costs. */
export const rutResistance = law(
  {
    id: 'rut-resistance',
    title: 'Resistance of pressing a rut',
    equation: 'R = b · k · z^(n+1) / (n + 1)',
    args: { width: WIDTH, modulus: MODULUS, sinkage: SINKAGE, exponent: EXPONENT },
    gives: { symbol: 'R', is: 'compaction resistance', unit: 'N' },
    validFor: 'a rut pressed to depth z, measured or computed',
    leavesOut: 'bulldozing, sticking soil',
    source: BEKKER,
  },
  ({ width, modulus, sinkage, exponent }) => (width * modulus * sinkage ** (exponent + 1)) / (exponent + 1),
);

/** Force that a rigid wheel loses to compacting the soil; refused when it sinks more than a sixth of its diameter. */
export const compactionResistance = law(
  {
    id: 'compaction-resistance',
    title: 'Compaction resistance of a rigid wheel',
    equation: 'R = b · k · z^(n+1) / (n + 1), z = (3 · W / ((3 − n) · b · k · √D))^(2/(2n+1)), z ≤ D/6',
    args: { load: LOAD, diameter: DIAMETER, width: WIDTH, modulus: MODULUS, exponent: EXPONENT },
    gives: { symbol: 'R', is: 'compaction resistance', unit: 'N' },
    validFor: 'n up to 1.3 and sinkage up to D/6; for wheels under half a metre an order of size, say ±50 %',
    leavesOut: 'bulldozing, slip sinkage; wheels that follow in the same rut pay less',
    source: BEKKER,
  },
  ({ load, diameter, width, modulus, exponent }) => {
    const z = sinkageOf({ load, diameter, width, modulus, exponent });
    return (width * modulus * z ** (exponent + 1)) / (exponent + 1);
  },
);

/** Length of ground that a sunk rigid wheel presses on. */
export const contactLength = law(
  {
    id: 'contact-length',
    title: 'Contact length of a sunk wheel',
    equation: 'l = √(D · z − z²)',
    args: { diameter: DIAMETER, sinkage: SINKAGE },
    gives: { symbol: 'l', is: 'contact length, horizontal', unit: 'm' },
    validFor: 'sinkage up to the axle',
    leavesOut: 'rebound of the soil behind the wheel',
    source: 'chord geometry, Wong, Theory of Ground Vehicles, chapter 2',
  },
  ({ diameter, sinkage }) => {
    insist(sinkage <= diameter / 2, 'contact-length', 'z', sinkage, 'up to D/2', 'sinks to the axle');
    return Math.sqrt(diameter * sinkage - sinkage ** 2);
  },
);

/** Greatest pull the soil under a wheel can carry before it shears. */
export const soilThrustLimit = law(
  {
    id: 'soil-thrust-limit',
    title: 'Greatest thrust of the soil',
    equation: 'F = A · c + W · tan φ',
    args: {
      area: { symbol: 'A', is: 'contact area', unit: 'm²', above: 0 },
      cohesion: { symbol: 'c', is: 'cohesion of the soil', unit: 'Pa', from: 0 },
      load: LOAD,
      friction: { symbol: 'φ', is: 'angle of internal friction', unit: 'rad', from: 0, to: 0.8 },
    },
    gives: { symbol: 'F', is: 'greatest thrust', unit: 'N' },
    validFor: 'soil that fails by Mohr and Coulomb',
    leavesOut: 'grousers, slip: see the slip traction',
    source: 'Mohr–Coulomb; Wong, Theory of Ground Vehicles, chapter 2',
  },
  ({ area, cohesion, load, friction }) => area * cohesion + load * Math.tan(friction),
);

/** Pull at a given slip: loose ground gives its full thrust only after it has been sheared some way. */
export const slipTraction = law(
  {
    id: 'slip-traction',
    title: 'Traction with slip',
    equation: 'F = F_max · (1 − K / (i · l) · (1 − e^(−i · l / K)))',
    args: {
      limit: { symbol: 'F_max', is: 'greatest thrust of the soil', unit: 'N', above: 0 },
      slip: { symbol: 'i', is: 'slip: 1 spins on the spot', unit: '1', above: 0, to: 1 },
      length: { symbol: 'l', is: 'contact length', unit: 'm', above: 0 },
      deformation: { symbol: 'K', is: 'shear deformation modulus', unit: 'm', above: 0 },
    },
    gives: { symbol: 'F', is: 'thrust at that slip', unit: 'N' },
    validFor: 'an even pressure along the contact',
    leavesOut: 'soils with a hump in their shear curve, digging in at high slip',
    source: 'Janosi & Hanamoto, 1961; Wong, Theory of Ground Vehicles, chapter 2',
  },
  ({ limit, slip, length, deformation }) => {
    const x = (slip * length) / deformation;
    return limit * (1 + Math.expm1(-x) / x);
  },
);

/** Pull left over for a load or a slope after the ground has taken its share. */
export const drawbarPull = law(
  {
    id: 'drawbar-pull',
    title: 'Drawbar pull',
    equation: 'DP = F − R',
    args: {
      thrust: { symbol: 'F', is: 'thrust of the wheels', unit: 'N', from: 0 },
      resistance: { symbol: 'R', is: 'motion resistance', unit: 'N', from: 0 },
    },
    gives: { symbol: 'DP', is: 'drawbar pull, negative when it cannot move', unit: 'N' },
    validFor: 'level ground, all wheels summed',
    leavesOut: 'slope and air: subtract them as well',
    source: 'Bekker, Introduction to Terrain-Vehicle Systems, 1969',
  },
  ({ thrust, resistance }) => thrust - resistance,
);
