/**
 * Rolling resistance and adhesion of the grounds a toy-sized vehicle meets. No published table covers wheels of
 * 50 to 200 mm, so the bands are wide, and rows without a source say so; a slope test on the spot beats them all.
 */
import { OutOfRange } from '../law.ts';

/** The band a coefficient is found in, and who says so. */
export interface CoefficientBand {
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/** One ground: how hard it is to roll on and how much it grips. */
export interface Surface {
  readonly rolling: CoefficientBand;
  readonly adhesion: CoefficientBand;
}

const PRACTICE = 'common practice, no source';
const WONG = 'Wong, Theory of Ground Vehicles, table of road adhesion after Taborek (from memory)';
const NOON = 'Noon, Engineering Analysis of Vehicular Accidents, 1994';
const BOSCH = 'Bosch Automotive Handbook, table of rolling resistance (from memory)';
const CARVILL = "Carvill, Mechanical Engineer's Data Handbook, coefficients of rolling friction";
const SOFT = 'table of adhesion of wheeled vehicles on soft ground, author not shown';

/** The grounds by name. */
export const SURFACES = {
  'hall floor': {
    rolling: { low: 0.02, high: 0.05, source: PRACTICE },
    adhesion: { low: 0.35, high: 0.8, source: `${PRACTICE}: between the best hard plastic and the best rubber tyre` },
  },
  'hall floor, hard plastic tyre': {
    rolling: { low: 0.02, high: 0.05, source: PRACTICE },
    adhesion: { low: 0.2, high: 0.35, source: PRACTICE },
  },
  carpet: {
    rolling: {
      low: 0.032,
      high: 0.1,
      source:
        'the hall floor here and what Hoffman, Millet, Hoch & Candau, Am. J. Phys. Med. Rehabil. 82(11), 2003, found that carpet adds (0.0118 to more than double)',
    },
    adhesion: { low: 0.4, high: 0.8, source: PRACTICE },
  },
  'boardwalk timber, dry': {
    rolling: { low: 0.02, high: 0.06, source: `${PRACTICE}: hard floor with gaps between the boards` },
    adhesion: { low: 0.5, high: 0.8, source: PRACTICE },
  },
  'boardwalk timber, wet': {
    rolling: { low: 0.02, high: 0.06, source: `${PRACTICE}: hard floor with gaps between the boards` },
    adhesion: { low: 0.2, high: 0.4, source: PRACTICE },
  },
  'paving, dry': {
    rolling: { low: 0.015, high: 0.05, source: `${BOSCH}, sett paving; upper end ${PRACTICE}` },
    adhesion: { low: 0.6, high: 0.8, source: `${NOON}, dry concrete 0.75; upper end ${WONG}` },
  },
  'tarmac, dry': {
    rolling: { low: 0.013, high: 0.05, source: `${BOSCH}, asphalt; upper end ${PRACTICE}` },
    adhesion: { low: 0.6, high: 0.8, source: `${PRACTICE}; ${NOON} has 0.65` },
  },
  'tarmac, wet': {
    rolling: { low: 0.013, high: 0.05, source: `${BOSCH}, asphalt; upper end ${PRACTICE}` },
    adhesion: { low: 0.45, high: 0.6, source: `${WONG}, wet asphalt sliding; ${NOON} has 0.50` },
  },
  'gravel, packed': {
    rolling: { low: 0.02, high: 0.08, source: `${BOSCH}, rolled gravel; upper end ${PRACTICE}` },
    adhesion: { low: 0.35, high: 0.6, source: `${NOON}; upper end ${WONG}` },
  },
  'gravel, loose': {
    rolling: { low: 0.05, high: 0.15, source: PRACTICE },
    adhesion: { low: 0.35, high: 0.5, source: `${NOON}; upper end ${PRACTICE}` },
  },
  'grass, short': {
    rolling: { low: 0.08, high: 0.15, source: PRACTICE },
    adhesion: { low: 0.35, high: 0.5, source: PRACTICE },
  },
  'grass, short and wet': {
    rolling: { low: 0.08, high: 0.15, source: PRACTICE },
    adhesion: { low: 0.1, high: 0.3, source: `${SOFT}, wet mown meadow; ${NOON} has 0.20` },
  },
  'grass, long': {
    rolling: { low: 0.15, high: 0.3, source: PRACTICE },
    adhesion: { low: 0.2, high: 0.4, source: `${SOFT}, dry mown meadow` },
  },
  'earth, dry': {
    rolling: { low: 0.05, high: 0.08, source: `${BOSCH}, unpaved road; upper end ${CARVILL}, medium hard soil` },
    adhesion: { low: 0.5, high: 0.68, source: `${SOFT}, dry earth road; upper end ${WONG}` },
  },
  'earth, wet': {
    rolling: { low: 0.1, high: 0.35, source: `${BOSCH}, field` },
    adhesion: { low: 0.3, high: 0.55, source: `${SOFT}, broken wet earth; upper end ${WONG}` },
  },
  'sand, dry': {
    rolling: { low: 0.2, high: 0.4, source: 'Engineering ToolBox, Rolling Resistance, loose sand' },
    adhesion: { low: 0.2, high: 0.3, source: SOFT },
  },
  'sand, damp': {
    rolling: { low: 0.1, high: 0.2, source: `${CARVILL}, sand` },
    adhesion: { low: 0.4, high: 0.5, source: SOFT },
  },
} as const satisfies Readonly<Record<string, Surface>>;

/** A ground of the table. */
export type SurfaceName = keyof typeof SURFACES;

/** The names of the table, in its order: bound to free, indoors first. */
export const SURFACE_NAMES = Object.keys(SURFACES) as readonly SurfaceName[];

/** Grounds the table refuses to put a number on, and why. */
export const REFUSED_SURFACES = {
  snow: 'a small wheel sinks to its axle in snow, so neither rolling resistance nor adhesion means anything',
  ice: 'grip falls below 0.1 and varies from metre to metre; no stopping distance could be promised',
} as const;

function isSurfaceName(name: string): name is SurfaceName {
  return Object.hasOwn(SURFACES, name);
}

/**
 * The ground of that name.
 * @throws {@link OutOfRange} for snow, for ice and for names the table does not hold
 */
export function surfaceNamed(name: string): Surface {
  if (isSurfaceName(name)) return SURFACES[name];
  const why = Object.hasOwn(REFUSED_SURFACES, name) ? REFUSED_SURFACES[name as keyof typeof REFUSED_SURFACES] : '';
  throw new OutOfRange('surface-table', 'surface', name, SURFACE_NAMES.join('; '), why || 'not in the table');
}
