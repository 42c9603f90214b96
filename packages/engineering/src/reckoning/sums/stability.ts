/** Sums of stability and obstacles, in reading order. */
import type { SumsOf } from '../sum.ts';
import type { SumIdOf } from './ids.ts';
import { obstacleSums } from './obstacles.ts';
import { softGroundSums } from './soft-ground.ts';
import { tipSums } from './tip.ts';

export const stabilitySums: SumsOf<SumIdOf<'stability and obstacles'>> = {
  ...tipSums,
  ...obstacleSums,
  ...softGroundSums,
};
