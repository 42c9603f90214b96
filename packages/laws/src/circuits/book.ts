import type { Checks } from '../check.ts';
import { bridgeCircuitChecks } from './bridges.checks.ts';
import { motorCircuitChecks } from './motors.checks.ts';
import { packCircuitChecks } from './packs.checks.ts';

export const circuitsBook: readonly Checks[] = [...bridgeCircuitChecks, ...packCircuitChecks, ...motorCircuitChecks];
