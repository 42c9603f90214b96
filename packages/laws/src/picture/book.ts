import type { Checks } from '../check.ts';
import { ageChecks } from './age.checks.ts';
import { blurChecks } from './blur.checks.ts';
import { bytesChecks } from './bytes.checks.ts';
import { groundChecks } from './ground.checks.ts';
import { lensChecks } from './lens.checks.ts';
import { sightLimitChecks } from './sight-limit.checks.ts';

export const pictureBook: readonly Checks[] = [
  ...lensChecks,
  ...groundChecks,
  ...sightLimitChecks,
  ...ageChecks,
  ...blurChecks,
  ...bytesChecks,
];
