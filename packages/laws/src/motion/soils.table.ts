/** Soils by their pressure–sinkage and shear values. k_c and k_φ carry the exponent in their unit: never mix rows. */
import { OutOfRange } from '../law.ts';

/** Values of one soil, SI. */
export interface Soil {
  /** Sinkage exponent. */
  readonly exponent: number;
  /** k_c [N/m^(n+1)]. */
  readonly cohesive: number;
  /** k_φ [N/m^(n+2)]. */
  readonly frictional: number;
  /** Cohesion [Pa]. */
  readonly cohesion: number;
  /** Angle of internal friction [rad]. */
  readonly friction: number;
}

/** Where every row of {@link SOILS} was printed. */
export const SOILS_SOURCE = 'Wong, Theory of Ground Vehicles, 4th ed. 2008, table of terrain values';

/** The book prints kN, kPa and degrees. */
function soil(exponent: number, kc: number, kphi: number, c: number, phi: number): Soil {
  return {
    exponent,
    cohesive: kc * 1000,
    frictional: kphi * 1000,
    cohesion: c * 1000,
    friction: (phi * Math.PI) / 180,
  };
}

/** Soils by name; the number after the name is the moisture in percent. */
export const SOILS = {
  'dry sand': soil(1.1, 0.99, 1528.43, 1.04, 28),
  'sandy loam 15': soil(0.7, 5.27, 1515.04, 1.72, 29),
  'sandy loam 22': soil(0.2, 2.56, 43.12, 1.38, 38),
  'sandy loam 11': soil(0.9, 52.53, 1127.97, 4.83, 20),
  'sandy loam 23': soil(0.4, 11.42, 808.96, 9.65, 35),
  'sandy loam 26': soil(0.3, 2.79, 141.11, 13.79, 22),
  'sandy loam 32': soil(0.5, 0.77, 51.91, 5.17, 11),
  'clayey soil 38': soil(0.5, 13.19, 692.15, 4.14, 13),
  'clayey soil 55': soil(0.7, 16.03, 1262.53, 2.07, 10),
  'heavy clay 25': soil(0.13, 12.7, 1555.95, 68.95, 34),
  'heavy clay 40': soil(0.11, 1.84, 103.27, 20.69, 6),
  'lean clay 22': soil(0.2, 16.43, 1724.69, 68.95, 20),
  'lean clay 32': soil(0.15, 1.52, 119.61, 13.79, 11),
  'test-ground sand': soil(0.79, 102, 5301, 1.3, 31.1),
  'upland sandy loam 51': soil(1.1, 74.6, 2080, 3.3, 33.7),
  'sandy loam 43': soil(0.66, 6.9, 752, 3.7, 29.8),
  'clayey loam 46': soil(0.73, 41.6, 2471, 6.1, 26.6),
  'loam 24': soil(1.01, 0.06, 5880, 3.1, 29.8),
} as const satisfies Readonly<Record<string, Soil>>;

/** A soil of the table. */
export type SoilName = keyof typeof SOILS;

/** Shear deformation modulus K [m], bands; Wong, Theory of Ground Vehicles, chapter 2 (from memory). */
export const SHEAR_DEFORMATION = {
  'firm sand': { low: 0.01, high: 0.025 },
  'loose sand': { low: 0.025, high: 0.025 },
  'stiff clay': { low: 0.006, high: 0.006 },
} as const;

function isSoilName(name: string): name is SoilName {
  return Object.hasOwn(SOILS, name);
}

/**
 * The soil of that name. Snow is not in the table although the book prints it: a small wheel sinks to its axle.
 * @throws {@link OutOfRange} for snow and for names the table does not hold
 */
export function soilNamed(name: string): Soil {
  if (isSoilName(name)) return SOILS[name];
  const why = name === 'snow' ? 'a small wheel sinks to its axle in snow' : 'not in the table';
  throw new OutOfRange('soil-table', 'soil', name, Object.keys(SOILS).join('; '), why);
}
