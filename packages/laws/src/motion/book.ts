import type { Checks } from '../check.ts';
import { axlesChecks } from './axles.checks.ts';
import { bulldozingChecks } from './bulldozing.checks.ts';
import { clearanceChecks } from './clearance.checks.ts';
import { coastingChecks } from './coasting.checks.ts';
import { gradeChecks } from './grade.checks.ts';
import { skidChecks } from './skid.checks.ts';
import { soilChecks } from './soil.checks.ts';
import { steeringChecks } from './steering.checks.ts';
import { stepsChecks } from './steps.checks.ts';
import { stoppingChecks } from './stopping.checks.ts';
import { surfaceChecks } from './surface.checks.ts';
import { tippingChecks } from './tipping.checks.ts';

export const motionBook: readonly Checks[] = [
  ...surfaceChecks,
  ...gradeChecks,
  ...soilChecks,
  ...bulldozingChecks,
  ...axlesChecks,
  ...tippingChecks,
  ...stepsChecks,
  ...clearanceChecks,
  ...steeringChecks,
  ...skidChecks,
  ...stoppingChecks,
  ...coastingChecks,
];
