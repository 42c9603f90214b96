/** All sums of the drive. */
import { type SumsOf, sum } from '../sum.ts';
import { driveLimitSums } from './drive-limits.ts';
import { driveLoadSums } from './drive-load.ts';
import { driveMotorSums } from './drive-motor.ts';
import { driveSkidSums } from './drive-skid.ts';
import { driveStallSums } from './drive-stall.ts';
import type { SumIdOf } from './ids.ts';

const wheel: SumsOf<'drive.wheelRadius'> = {
  'drive.wheelRadius': sum(
    { title: 'rolling radius of a wheel', unit: 'mm' },
    {
      uses: { diameter: 'toy.wheelDiameter' },
      formula: '{diameter} / 2',
      laws: [],
      value: ({ diameter }) => diameter / 2,
    },
  ),
};

export const driveSums: SumsOf<SumIdOf<'drive'>> = {
  ...driveMotorSums,
  ...wheel,
  ...driveStallSums,
  ...driveLoadSums,
  ...driveLimitSums,
  ...driveSkidSums,
};
