/** Loss inside buildings and through what they are made of. */
import { law } from '../law.ts';

/** Indoor loss by the power-loss coefficient of the kind of building. */
export const indoorLoss = law(
  {
    id: 'indoor-loss',
    title: 'Indoor loss by power-loss coefficient',
    equation: 'L = 20 · log10(f / 1 MHz) + N · log10(d) + Lf − 28',
    args: {
      frequency: { symbol: 'f', is: 'carrier frequency', unit: 'Hz', from: 9e8, to: 1e11 },
      coefficient: { symbol: 'N', is: 'power-loss coefficient of the building', unit: 'dB/decade', from: 15, to: 50 },
      distance: { symbol: 'd', is: 'distance', unit: 'm', above: 1, to: 1000 },
      floorLoss: { symbol: 'Lf', is: 'loss of all floors crossed, zero on one floor', unit: 'dB', from: 0 },
    },
    gives: { symbol: 'L', is: 'median loss', unit: 'dB' },
    validFor: 'inside one building, beyond 1 m',
    leavesOut: 'single walls (inside N), shadowing of 8 to 12 dB',
    source: 'Rec. ITU-R P.1238, site-general indoor model',
  },
  ({ frequency, coefficient, distance, floorLoss }) =>
    20 * Math.log10(frequency / 1e6) + coefficient * Math.log10(distance) + floorLoss - 28,
);

/** Loss by exponent with walls counted one by one and floors as a sum. */
export const partitionLoss = law(
  {
    id: 'partition-loss',
    title: 'Indoor loss with walls and floors counted',
    equation: 'L = L0 + 10 · n · log10(d / 1 m) + FAF + k · PAF',
    args: {
      referenceLoss: { symbol: 'L0', is: 'loss at 1 m', unit: 'dB', from: 0 },
      exponent: { symbol: 'n', is: 'loss exponent of one floor', unit: '1', from: 1, to: 7 },
      distance: { symbol: 'd', is: 'distance', unit: 'm', from: 1, to: 1000 },
      floorLoss: { symbol: 'FAF', is: 'loss of all floors crossed', unit: 'dB', from: 0 },
      walls: { symbol: 'k', is: 'walls crossed', unit: '1', from: 0 },
      wallLoss: { symbol: 'PAF', is: 'loss of one wall', unit: 'dB', from: 0 },
    },
    gives: { symbol: 'L', is: 'median loss', unit: 'dB' },
    validFor: 'inside one building; n is the same-floor exponent when FAF is given apart',
    leavesOut: 'shadowing, waves that go round through doors and corridors',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., attenuation factor model',
  },
  ({ referenceLoss, exponent, distance, floorLoss, walls, wallLoss }) =>
    referenceLoss + 10 * exponent * Math.log10(distance) + floorLoss + walls * wallLoss,
);

/** A power-loss coefficient with the loss of floors crossed. */
export interface Building {
  readonly kind: 'residential' | 'office' | 'commercial';
  /** Carrier frequency of the row [Hz]. */
  readonly frequency: number;
  /** Power-loss coefficient N [dB per decade of distance]. */
  readonly coefficient: number;
  /** Loss of the first floor crossed [dB]; absent where none is printed. */
  readonly firstFloor?: number;
  /** Loss of each further floor [dB]; absent where none is printed. */
  readonly furtherFloor?: number;
  readonly source: string;
}

const P1238 = 'Rec. ITU-R P.1238, tables 2 and 3';
const P1238_MEMORY = 'Rec. ITU-R P.1238-7 to -9, tables 2 and 3, from memory';

/** Coefficients of indoor loss by kind of building and band. */
export const BUILDINGS: readonly Building[] = [
  { kind: 'office', frequency: 0.9e9, coefficient: 33, firstFloor: 9, furtherFloor: 10, source: P1238 },
  { kind: 'commercial', frequency: 0.9e9, coefficient: 20, source: P1238 },
  { kind: 'residential', frequency: 1.9e9, coefficient: 28, firstFloor: 4, furtherFloor: 4, source: P1238 },
  { kind: 'office', frequency: 1.9e9, coefficient: 30, firstFloor: 15, furtherFloor: 4, source: P1238 },
  { kind: 'commercial', frequency: 1.9e9, coefficient: 22, firstFloor: 6, furtherFloor: 3, source: P1238 },
  { kind: 'residential', frequency: 2.4e9, coefficient: 28, firstFloor: 10, source: P1238_MEMORY },
  { kind: 'office', frequency: 2.4e9, coefficient: 30, firstFloor: 14, source: P1238_MEMORY },
  { kind: 'residential', frequency: 5.2e9, coefficient: 30, firstFloor: 13, source: P1238_MEMORY },
  { kind: 'office', frequency: 5.2e9, coefficient: 31, firstFloor: 16, source: P1238 },
  { kind: 'office', frequency: 5.8e9, coefficient: 24, firstFloor: 22, furtherFloor: 6, source: P1238 },
];

/** A slab of building material with its loss at normal incidence. */
export interface Slab {
  readonly material: string;
  /** Thickness [m]. */
  readonly thickness: number;
  /** Loss at 2.4 GHz and at 5.5 GHz [dB]. */
  readonly at2400: number;
  readonly at5500: number;
  readonly source: string;
}

const P2040 = 'Rec. ITU-R P.2040, table 3 material constants, single-layer slab at normal incidence';

/** Loss of common walls; interference inside thin slabs makes some fall with frequency. */
export const SLABS: readonly Slab[] = [
  { material: 'concrete', thickness: 0.15, at2400: 11.4, at5500: 20.2, source: P2040 },
  { material: 'brick', thickness: 0.11, at2400: 4.0, at5500: 3.3, source: P2040 },
  { material: 'wood', thickness: 0.04, at2400: 0.6, at5500: 1.5, source: P2040 },
  { material: 'plasterboard', thickness: 0.0125, at2400: 1.1, at5500: 1.0, source: P2040 },
  { material: 'glass', thickness: 0.006, at2400: 1.9, at5500: 3.3, source: P2040 },
  { material: 'chipboard', thickness: 0.018, at2400: 1.7, at5500: 1.7, source: P2040 },
];
