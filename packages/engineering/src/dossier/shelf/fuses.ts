/**
 * Fuses. Mini blades: melting I²t is about 2.1 s times the rating squared, as makers' sheets give for 3 A (20 A²·s) and
 * 40 A (3300 A²·s); cold resistance from the drop makers give at the rating. Masses are with an in-line holder.
 */
import type { WrittenPart } from '../schema/parts.ts';

const BEWARE =
  'Rated 32 V direct current. Sits within 10 cm of the pack; never larger than the thinnest wire behind it.';

const blade = (id: string, rating: string, meltingEnergy: string, resistance: string, mass: string) =>
  ({
    kind: 'fuse',
    id: `fuse-mini-${id}`,
    title: `mini blade fuse, ${rating}`,
    cost: 1,
    rating,
    breaking: '1000 A',
    meltingEnergy: `${meltingEnergy} ± 20 %`,
    resistance: `${resistance} ± 10 %`,
    mass,
    remark: BEWARE,
  }) satisfies WrittenPart;

export const FUSES = [
  blade('2a', '2 A', '8.5 A²·s', '54 mΩ', '7 g ± 1 g'),
  blade('3a', '3 A', '20 A²·s', '32 mΩ', '7 g ± 1 g'),
  blade('4a', '4 A', '34 A²·s', '23 mΩ', '7 g ± 1 g'),
  blade('5a', '5 A', '53 A²·s', '17.5 mΩ', '7 g ± 1 g'),
  blade('7a5', '7.5 A', '120 A²·s', '11 mΩ', '7 g ± 1 g'),
  blade('10a', '10 A', '210 A²·s', '7.6 mΩ', '8 g ± 1 g'),
  blade('15a', '15 A', '470 A²·s', '4.7 mΩ', '8 g ± 1 g'),
  blade('20a', '20 A', '830 A²·s', '3.4 mΩ', '11 g ± 1 g'),
  blade('25a', '25 A', '1300 A²·s', '2.6 mΩ', '11 g ± 1 g'),
  blade('30a', '30 A', '1900 A²·s', '2.0 mΩ', '14 g ± 2 g'),
  {
    kind: 'fuse',
    id: 'fuse-glass-5a',
    title: 'glass tube fuse 5 × 20 mm, quick, 5 A',
    cost: 1,
    rating: '5 A',
    breaking: '50 A',
    meltingEnergy: { value: '35 A²·s ± 40 %', basis: 'estimate' },
    resistance: { value: '17 mΩ ± 20 %', basis: 'estimate' },
    mass: '6 g ± 1 g',
    remark: 'Breaks ten times its rating at most: behind a hobby pack its arc may go on burning.',
  },
] satisfies readonly WrittenPart[];
