/** All outside checks of the quantities: units, numbers, cases, quantiles and influences. */
import type { Checks } from '@longrein/laws/check';
import { generatorChecks } from './generators.checks.ts';
import { gumH1Checks, gumH1ShareChecks } from './gum-h1.checks.ts';
import { gumH2Checks } from './gum-h2.checks.ts';
import { quantileChecks } from './hyndman-fan.checks.ts';
import { ishigamiChecks } from './ishigami.checks.ts';
import { jcgm101Checks } from './jcgm-101.checks.ts';
import { unitChecks } from './nist-sp811.checks.ts';
import { strdChecks } from './nist-strd.checks.ts';
import { normalChecks } from './normal.checks.ts';

export const quantityBook: readonly Checks[] = [
  unitChecks,
  gumH1Checks,
  gumH1ShareChecks,
  gumH2Checks,
  jcgm101Checks,
  ishigamiChecks,
  quantileChecks,
  ...generatorChecks,
  normalChecks,
  strdChecks,
];
