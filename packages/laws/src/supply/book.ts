import type { Checks } from '../check.ts';
import { ageingChecks } from './ageing.checks.ts';
import { brownOutChecks } from './brown-out.checks.ts';
import { capacitorChecks } from './capacitor.checks.ts';
import { capacityChecks } from './capacity.checks.ts';
import { cellResistanceChecks } from './cell-resistance.checks.ts';
import { chargingChecks } from './charging.checks.ts';
import { chenChecks } from './chen.checks.ts';
import { converterChecks } from './converter.checks.ts';
import { dischargeCurveChecks } from './discharge-curve.checks.ts';
import { packChecks } from './pack.checks.ts';
import { protectionChecks } from './protection.checks.ts';
import { restVoltageChecks } from './rest-voltage.checks.ts';
import { storageChecks } from './storage.checks.ts';
import { usbChecks } from './usb.checks.ts';

export const supplyBook: readonly Checks[] = [
  ...restVoltageChecks,
  ...chenChecks,
  ...cellResistanceChecks,
  ...dischargeCurveChecks,
  ...capacityChecks,
  ...storageChecks,
  ...ageingChecks,
  ...packChecks,
  ...protectionChecks,
  ...brownOutChecks,
  ...capacitorChecks,
  ...converterChecks,
  ...usbChecks,
  ...chargingChecks,
];
