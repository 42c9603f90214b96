/** All sums of heat. */
import type { SumsOf } from '../sum.ts';
import { boxHeatSums } from './heat-box.ts';
import { motorHeatSums } from './heat-motor.ts';
import type { SumIdOf } from './ids.ts';

export const heatSums: SumsOf<SumIdOf<'heat'>> = { ...motorHeatSums, ...boxHeatSums };
