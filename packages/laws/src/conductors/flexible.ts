/** Flexible metric wire: its resistance is looked up, because it is 13 to 22 % above what the nominal area says. */
import { law } from '../law.ts';

/** Nominal copper areas of flexible wire, as printed on the reel [mm²]. */
export const FLEXIBLE_SIZES = [
  '0.14',
  '0.22',
  '0.25',
  '0.34',
  '0.5',
  '0.75',
  '1',
  '1.5',
  '2.5',
  '4',
  '6',
  '10',
] as const;
export type FlexibleSize = (typeof FLEXIBLE_SIZES)[number];

/** Whether the strands are plain copper or tinned. */
export const STRAND_COATINGS = ['plain', 'tinned'] as const;
export type StrandCoating = (typeof STRAND_COATINGS)[number];

/** Largest resistance at 20 °C of one nominal size. */
export interface FlexibleRow {
  /** Nominal area [m²]. */
  readonly area: number;
  /** Largest resistance per metre at 20 °C [Ω/m]. */
  readonly plain: number;
  readonly tinned: number;
  readonly source: string;
}

const SMALL = 'conductor list after DIN VDE 0295 for sizes below 0.5 mm²';
const CLASS_5 = 'IEC 60228, class 5, largest resistance at 20 °C';
const CLASS_5_MEMORY = 'IEC 60228, class 5, largest resistance at 20 °C, from memory';

/** Resistance of flexible wire by nominal size. */
export const FLEXIBLE_WIRE: Readonly<Record<FlexibleSize, FlexibleRow>> = {
  '0.14': { area: 0.14e-6, plain: 0.134, tinned: 0.138, source: SMALL },
  '0.22': { area: 0.22e-6, plain: 0.096, tinned: 0.099, source: SMALL },
  '0.25': { area: 0.25e-6, plain: 0.076, tinned: 0.079, source: SMALL },
  '0.34': { area: 0.34e-6, plain: 0.053, tinned: 0.056, source: SMALL },
  '0.5': { area: 0.5e-6, plain: 0.039, tinned: 0.0401, source: CLASS_5 },
  '0.75': { area: 0.75e-6, plain: 0.026, tinned: 0.0267, source: CLASS_5 },
  '1': { area: 1e-6, plain: 0.0195, tinned: 0.02, source: CLASS_5 },
  '1.5': { area: 1.5e-6, plain: 0.0133, tinned: 0.0137, source: CLASS_5 },
  '2.5': { area: 2.5e-6, plain: 0.00798, tinned: 0.00821, source: CLASS_5 },
  '4': { area: 4e-6, plain: 0.00495, tinned: 0.00509, source: CLASS_5 },
  '6': { area: 6e-6, plain: 0.0033, tinned: 0.00339, source: CLASS_5_MEMORY },
  '10': { area: 10e-6, plain: 0.00191, tinned: 0.00195, source: CLASS_5_MEMORY },
};

/** Largest resistance of a length of flexible wire at 20 °C. */
export const flexibleWireResistance = law(
  {
    id: 'flexible-wire-resistance',
    title: 'Resistance of flexible metric wire',
    equation: 'R20 = r(S, coating) · l, r from the table of the standard',
    args: {
      size: {
        symbol: 'S',
        is: 'nominal area printed on the reel, in square millimetres',
        unit: 'name',
        oneOf: FLEXIBLE_SIZES,
      },
      coating: { symbol: 'coating', is: 'surface of the strands', unit: 'name', oneOf: STRAND_COATINGS },
      length: { symbol: 'l', is: 'length of conductor', unit: 'm', from: 0 },
    },
    gives: { symbol: 'R20', is: 'largest resistance at 20 °C', unit: 'Ω' },
    validFor: 'wire made to the standard, with fine strands; the typical wire lies a few per cent lower',
    leavesOut: 'copper-clad aluminium and undersized strands, which cheap reels contain',
    source: 'IEC 60228, class 5 conductors; below 0.5 mm² a list after DIN VDE 0295',
  },
  ({ size, coating, length }) => FLEXIBLE_WIRE[size][coating] * length,
);
