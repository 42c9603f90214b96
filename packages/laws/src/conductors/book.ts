import type { Checks } from '../check.ts';
import { dropChecks } from './drop.checks.ts';
import { flexibleChecks } from './flexible.checks.ts';
import { fuseChecks } from './fuse.checks.ts';
import { fuseTimeChecks } from './fuse-time.checks.ts';
import { fusingChecks } from './fusing.checks.ts';
import { heatingChecks } from './heating.checks.ts';
import { pulseChecks } from './pulse.checks.ts';
import { traceChecks } from './trace.checks.ts';
import { wireChecks } from './wire.checks.ts';

export const conductorsBook: readonly Checks[] = [
  ...wireChecks,
  ...flexibleChecks,
  ...dropChecks,
  ...heatingChecks,
  ...fusingChecks,
  ...traceChecks,
  ...fuseChecks,
  ...fuseTimeChecks,
  ...pulseChecks,
];
