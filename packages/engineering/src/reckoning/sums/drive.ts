/** All sums of the drive. */
import type { SumsOf } from '../sum.ts';
import { driveLimitSums } from './drive-limits.ts';
import { driveLoadSums } from './drive-load.ts';
import { driveMotorSums } from './drive-motor.ts';
import { driveSkidSums } from './drive-skid.ts';
import { driveStallSums } from './drive-stall.ts';
import type { SumIdOf } from './ids.ts';

export const driveSums: SumsOf<SumIdOf<'drive'>> = {
  ...driveMotorSums,
  ...driveStallSums,
  ...driveLoadSums,
  ...driveLimitSums,
  ...driveSkidSums,
};
