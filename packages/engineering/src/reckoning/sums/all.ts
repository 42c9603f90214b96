/** All sums, by id. */
import { refuseCycles, type Sums } from '../graph.ts';
import { driveSums } from './drive.ts';
import { dutySums } from './duty.ts';
import { heatSums } from './heat.ts';
import { linkSums } from './link.ts';
import { massSums } from './mass.ts';
import { packSums } from './pack.ts';
import { pictureSums } from './picture.ts';
import { safetySums } from './safety.ts';
import { stabilitySums } from './stability.ts';
import { supplySums } from './supply.ts';
import { wiringSums } from './wiring.ts';

export const SUMS: Sums = {
  ...massSums,
  ...driveSums,
  ...dutySums,
  ...packSums,
  ...supplySums,
  ...wiringSums,
  ...heatSums,
  ...stabilitySums,
  ...linkSums,
  ...pictureSums,
  ...safetySums,
};

refuseCycles(SUMS);
