import type { Checks } from '../check.ts';
import { brakingChecks } from './braking.checks.ts';
import { bridgeChecks } from './bridge.checks.ts';
import { gearChecks } from './gear.checks.ts';
import { motorChecks } from './motor.checks.ts';
import { motorBestChecks } from './motor-best.checks.ts';
import { motorHeatChecks } from './motor-heat.checks.ts';
import { pwmChecks } from './pwm.checks.ts';
import { rippleChecks } from './ripple.checks.ts';
import { steeringChecks } from './steering.checks.ts';
import { toothChecks } from './tooth.checks.ts';

export const driveBook: readonly Checks[] = [
  ...motorChecks,
  ...motorBestChecks,
  ...motorHeatChecks,
  ...gearChecks,
  ...toothChecks,
  ...pwmChecks,
  ...rippleChecks,
  ...bridgeChecks,
  ...brakingChecks,
  ...steeringChecks,
];
