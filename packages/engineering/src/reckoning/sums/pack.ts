/** All sums of the pack and charging. */
import type { SumsOf } from '../sum.ts';
import type { SumIdOf } from './ids.ts';
import { packChargeSums } from './pack-charge.ts';
import { packUseSums } from './pack-use.ts';
import { packVoltageSums } from './pack-voltage.ts';

export const packSums: SumsOf<SumIdOf<'pack and charging'>> = {
  ...packVoltageSums,
  ...packUseSums,
  ...packChargeSums,
};
