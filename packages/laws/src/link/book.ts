import type { Checks } from '../check.ts';
import { budgetChecks } from './budget.checks.ts';
import { decibelChecks } from './decibel.checks.ts';
import { fadingChecks } from './fading.checks.ts';
import { indoorChecks } from './indoor.checks.ts';
import { obstaclesChecks } from './obstacles.checks.ts';
import { pathChecks } from './path.checks.ts';
import { ratesChecks } from './rates.checks.ts';
import { transportChecks } from './transport.checks.ts';

export const linkBook: readonly Checks[] = [
  ...decibelChecks,
  ...pathChecks,
  ...indoorChecks,
  ...obstaclesChecks,
  ...fadingChecks,
  ...budgetChecks,
  ...ratesChecks,
  ...transportChecks,
];
