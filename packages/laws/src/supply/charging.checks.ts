import { checkLaw, checkSubject } from '../check.ts';
import {
  chargeAtSwitch,
  constantCurrentTime,
  constantVoltageTime,
  nickelChargeTime,
  sourceLimitedChargeCurrent,
  tailTime,
} from './charging.ts';

const H = 3600;
const SPICE =
  'ngspice transient analysis: 6600 F from 3.0 V behind 80 mΩ, source limited to 1.1 A and 4.2 V, until 0.11 A';
const CHART = 'reader’s figures from a Panasonic charge chart, 2.6 Ah at 0.7 C, flashlight forum';
const cell = { emptyVoltage: 3, rise: 1.2, resistance: 0.08 };

export const chargingChecks = [
  checkLaw(chargeAtSwitch, [
    {
      case: '1.1 A into 80 mΩ, 3.0 + 1.2 s volts, limit 4.2 V: (4.112 − 3.0)/1.2',
      source: SPICE,
      kind: 'reference library',
      args: { limit: 4.2, current: 1.1, ...cell },
      expected: (6672 * 1.1) / (2.2 * H),
      allowed: 1e-4,
    },
    {
      case: '11 A into 80 mΩ goes over at a fifth of the charge: 4.2 − 0.88 − 3.08 V over 1.2 V',
      source: 'Kirchhoff’s voltage law worked by hand',
      kind: 'published',
      args: { limit: 4.2, current: 11, emptyVoltage: 3.08, rise: 1.2, resistance: 0.08 },
      expected: 0.2,
      allowed: 1e-6,
    },
  ]),
  checkLaw(constantCurrentTime, [
    {
      case: '2.2 Ah at 1.1 A to the change-over',
      source: SPICE,
      kind: 'reference library',
      args: { start: 0, end: 0.926667, capacity: 2.2 * H, current: 1.1 },
      expected: 6672,
      allowed: 1e-5,
    },
    {
      case: '2.6 Ah at 1.82 A from 30 % to 80 %: 1.3 Ah',
      source: 'charge balance worked by hand',
      kind: 'published',
      args: { start: 0.3, end: 0.8, capacity: 2.6 * H, current: 1.82 },
      expected: (1.3 / 1.82) * H,
      allowed: 1e-6,
    },
  ]),
  checkLaw(constantVoltageTime, [
    {
      case: 'tail from 1.1 to 0.11 A',
      source: SPICE,
      kind: 'reference library',
      args: { resistance: 0.08, capacity: 2.2 * H, rise: 1.2, current: 1.1, taper: 0.11 },
      expected: 7887.763 - 6672,
      allowed: 1e-4,
    },
  ]),
  checkLaw(tailTime, [
    {
      case: 'tail from 1.1 to 0.11 A that brings 0.1452 Ah',
      source: SPICE,
      kind: 'reference library',
      args: { remaining: 0.1452 * H, current: 1.1, taper: 0.11 },
      expected: 7887.763 - 6672,
      allowed: 3e-4,
    },
  ]),
  checkLaw(nickelChargeTime, [
    {
      case: '0.1 C at efficiency 2/3: middle of 14 to 16 h',
      source: 'Varta Microbattery NiMH data sheet V250H, p. 49',
      kind: 'published',
      args: { capacity: 0.25 * H, efficiency: 2 / 3, current: 0.025 },
      expected: 15 * H,
      allowed: 0.01,
    },
  ]),
  checkLaw(sourceLimitedChargeCurrent, [
    {
      case: '5 V 0.5 A at 90 % into 7.4 V: 2.25 W over 7.4 V',
      source: 'power balance worked by hand',
      kind: 'published',
      args: { sourceVoltage: 5, sourceCurrent: 0.5, efficiency: 0.9, packVoltage: 7.4 },
      expected: 0.30405,
      allowed: 1e-4,
    },
  ]),
  checkSubject('charge time', [
    {
      case: '2.6 Ah at 0.7 C, change-over at 2.08 Ah, tail to 0.05 C, against guides that say 2 to 2.5 h at 1 C or less',
      source: `${CHART}; web guides on charge time`,
      kind: 'common practice',
      expected: 2,
      allowed: 0.05,
      ours: () => {
        const first = constantCurrentTime({ start: 0, end: 0.8, capacity: 2.6 * H, current: 1.82 });
        return (first + tailTime({ remaining: 0.52 * H, current: 1.82, taper: 0.13 })) / H;
      },
    },
    {
      case: '2.2 Ah at 0.5 C from empty to a tenth of the current, both parts',
      source: SPICE,
      kind: 'reference library',
      expected: 7887.763,
      allowed: 1e-4,
      ours: () => {
        const end = chargeAtSwitch({ limit: 4.2, current: 1.1, ...cell });
        const tail = { resistance: cell.resistance, rise: cell.rise, capacity: 2.2 * H, current: 1.1, taper: 0.11 };
        return constantCurrentTime({ start: 0, end, capacity: 2.2 * H, current: 1.1 }) + constantVoltageTime(tail);
      },
    },
  ]),
];
