/** All findings, by id, in reading order. */
import type { Finding } from '../finding.ts';
import { driveFindings } from './drive.ts';
import { dutyFindings } from './duty.ts';
import { heatFindings } from './heat.ts';
import { linkFindings } from './link.ts';
import { massFindings } from './mass.ts';
import { packFindings } from './pack.ts';
import { pictureFindings } from './picture.ts';
import { safetyFindings } from './safety.ts';
import { stabilityFindings } from './stability.ts';
import { supplyFindings } from './supply.ts';
import { wiringFindings } from './wiring.ts';

const ALL = {
  ...massFindings,
  ...driveFindings,
  ...dutyFindings,
  ...packFindings,
  ...supplyFindings,
  ...wiringFindings,
  ...heatFindings,
  ...stabilityFindings,
  ...linkFindings,
  ...pictureFindings,
  ...safetyFindings,
};

export type FindingId = keyof typeof ALL;
export const FINDINGS: Readonly<Record<FindingId, Finding>> = ALL;
