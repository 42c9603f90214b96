/** What a person can tell from so many pixels: the standard's densities and Johnson's cycles. */
import { law } from '../law.ts';
import { FOCAL_PIXELS } from './argument.ts';

/** A class of picture by pixels on a metre. */
export interface DensityClass {
  readonly task: string;
  /** Pixels across one metre [px/m]. */
  readonly density: number;
  readonly edition: '2014' | '2025';
  readonly source: string;
}

const IEC_2014 = 'IEC 62676-4:2014, table of picture densities';
const IEC_2025 = 'IEC 62676-4:2025, picture densities';

/** Both editions side by side; their names and values differ, so say which one is meant. */
export const DENSITY_CLASSES: readonly DensityClass[] = [
  { task: 'monitor', density: 12.5, edition: '2014', source: IEC_2014 },
  { task: 'detect', density: 25, edition: '2014', source: IEC_2014 },
  { task: 'observe', density: 62.5, edition: '2014', source: IEC_2014 },
  { task: 'recognise', density: 125, edition: '2014', source: IEC_2014 },
  { task: 'identify', density: 250, edition: '2014', source: IEC_2014 },
  { task: 'inspect', density: 1000, edition: '2014', source: IEC_2014 },
  { task: 'overview', density: 20, edition: '2025', source: IEC_2025 },
  { task: 'outline', density: 40, edition: '2025', source: IEC_2025 },
  { task: 'discern', density: 80, edition: '2025', source: IEC_2025 },
  { task: 'perceive', density: 125, edition: '2025', source: IEC_2025 },
  { task: 'characterise', density: 250, edition: '2025', source: IEC_2025 },
  { task: 'validate', density: 500, edition: '2025', source: IEC_2025 },
  { task: 'scrutinise', density: 1500, edition: '2025', source: IEC_2025 },
];

const JOHNSON = 'Johnson, Analysis of image forming systems, Image Intensifier Symposium, 1958';

/** Line pairs over the critical dimension for an even chance, with their spread. */
export const JOHNSON_CYCLES = [
  { task: 'detection', cycles: 1.0, spread: 0.25, source: JOHNSON },
  { task: 'orientation', cycles: 1.4, spread: 0.35, source: JOHNSON },
  { task: 'recognition', cycles: 4.0, spread: 0.8, source: JOHNSON },
  { task: 'identification', cycles: 6.4, spread: 1.5, source: JOHNSON },
] as const;

/** Distance at which a task succeeds half of the time. */
export const johnsonDistance = law(
  {
    id: 'johnson-distance',
    title: 'Distance of an even chance by line pairs',
    equation: 'Z = F · Dc / (2 · N50)',
    args: {
      focalPixels: FOCAL_PIXELS,
      dimension: { symbol: 'Dc', is: 'critical dimension, root of width times height', unit: 'm', above: 0 },
      cycles: { symbol: 'N50', is: 'line pairs for an even chance', unit: '1', above: 0 },
    },
    gives: { symbol: 'Z', is: 'distance of an even chance', unit: 'm' },
    validFor: 'clean, contrasting picture, one line pair to two pixels; optimistic for sampled cameras',
    leavesOut: 'blur, noise, compression, haze',
    source: JOHNSON,
  },
  ({ focalPixels, dimension, cycles }) => (focalPixels * dimension) / (2 * cycles),
);

/** Chance of success from line pairs against those for an even chance. */
export const johnsonChance = law(
  {
    id: 'johnson-chance',
    title: 'Chance of success by line pairs',
    equation: 'P = x^E / (1 + x^E), E = 2.7 + 0.7 · x',
    args: { ratio: { symbol: 'x', is: 'line pairs resolved over those for an even chance', unit: '1', above: 0 } },
    gives: { symbol: 'P', is: 'chance of success', unit: '1' },
    validFor: 'unhurried observers',
    leavesOut: 'search time, motion, training',
    source: 'US Army target transfer probability function, from memory',
  },
  ({ ratio }) => {
    const power = ratio ** (2.7 + 0.7 * ratio);
    return power / (1 + power);
  },
);
