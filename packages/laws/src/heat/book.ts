import type { Checks } from '../check.ts';
import { airChecks } from './air.checks.ts';
import { convectionChecks } from './convection.checks.ts';
import { enclosureChecks } from './enclosure.checks.ts';
import { materialsChecks } from './materials.checks.ts';
import { networkChecks } from './network.checks.ts';
import { radiationChecks } from './radiation.checks.ts';
import { transientChecks } from './transient.checks.ts';

export const heatBook: readonly Checks[] = [
  ...airChecks,
  ...convectionChecks,
  ...radiationChecks,
  ...networkChecks,
  ...materialsChecks,
  ...enclosureChecks,
  ...transientChecks,
];
