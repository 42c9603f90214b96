import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  averageCurrentFromRunTime,
  chargeRate,
  coldCapacityShare,
  countedCharge,
  currentAtRate,
  leadCapacityFactor,
  peukertExponent,
  peukertTime,
  runTime,
} from './capacity.ts';

const H = 3600;
const BALANCE = 'charge balance worked by hand in ampere-hours';
const IEEE = 'IEEE 485 temperature correction of lead-acid cell size';

const ieee = (celsius: number, factor: number) =>
  ({
    case: `lead at ${celsius} °C, inverse of the sizing factor ${factor}`,
    source: `${IEEE}, from memory`,
    kind: 'memory',
    args: { chemistry: 'lead', temperature: ZERO_CELSIUS + celsius },
    expected: 1 / factor,
    allowed: 0.05,
  }) as const;

export const capacityChecks = [
  checkLaw(chargeRate, [
    {
      case: '2.6 Ah charged at 1.82 A is 0.7 C',
      source: 'reader’s figures from a Panasonic charge chart, flashlight forum',
      kind: 'published',
      args: { current: 1.82, capacity: 2.6 * H },
      expected: 0.7,
      allowed: 1e-3,
    },
  ]),
  checkLaw(currentAtRate, [
    {
      case: '2.2 Ah at 2 C is 4.4 A, half an hour',
      source: BALANCE,
      kind: 'published',
      args: { rate: 2, capacity: 2.2 * H },
      expected: 4.4,
      allowed: 1e-9,
    },
  ]),
  checkLaw(averageCurrentFromRunTime, [
    {
      case: '700 mAh pack, 85 % of the label, empty after 20 min: 0.595 Ah in a third of an hour',
      source: BALANCE,
      kind: 'published',
      args: { capacity: 0.7 * H, share: 0.85, time: 1200 },
      expected: 1.785,
      allowed: 1e-9,
    },
  ]),
  checkLaw(runTime, [
    {
      case: '2.2 Ah at 4.4 A, 80 % usable: 0.4 h',
      source: BALANCE,
      kind: 'published',
      args: { capacity: 2.2 * H, share: 0.8, current: 4.4 },
      expected: 0.4 * H,
      allowed: 1e-9,
    },
    {
      case: '2.33 Ah to empty at 2.33 A, all of it',
      source: 'one-hour rate by definition, IEC 61434',
      kind: 'published',
      args: { capacity: 2.33 * H, share: 1, current: 2.33 },
      expected: H,
      allowed: 1e-9,
    },
  ]),
  checkLaw(peukertTime, [
    {
      case: '120 Ah at 20 h, n = 1.4, 120 A',
      source: 'Oracle Tutoring, Peukert’s law: 0.30 h (18 min)',
      kind: 'published',
      args: { capacity: 120 * H, ratedTime: 20 * H, current: 120, exponent: 1.4 },
      expected: 0.3 * H,
      allowed: 0.01,
    },
    {
      case: '100 Ah at 20 h, n = 1.2, 10 A',
      source: 'encyclopedia example of Peukert’s law, 8.7 h, from memory',
      kind: 'memory',
      args: { capacity: 100 * H, ratedTime: 20 * H, current: 10, exponent: 1.2 },
      expected: 8.7 * H,
      allowed: 0.002,
    },
    {
      case: 'at the rated current the exponent drops out: 5 A gives 20 h (the form t = C/Iⁿ gives 14.5 h)',
      source: 'definition of the rated capacity',
      kind: 'published',
      args: { capacity: 100 * H, ratedTime: 20 * H, current: 5, exponent: 1.2 },
      expected: 20 * H,
      allowed: 1e-9,
    },
  ]),
  checkLaw(peukertExponent, [
    {
      case: '20 h at 5 A, about 7.5 h at 10 A: lies in the printed range of flooded cells, 1.2 to 1.6',
      source: 'BatteryGuy, Peukert’s law, times; exponent worked with common logarithms',
      kind: 'published',
      args: { slowTime: 20 * H, slowCurrent: 5, fastTime: 7.5 * H, fastCurrent: 10 },
      expected: 1.415,
      allowed: 5e-4,
    },
    {
      case: '100 Ah at 5 A, 60 Ah at 20 A: 20 h and 3 h',
      source: 'battery page with two discharges; exponent worked with common logarithms',
      kind: 'published',
      args: { slowTime: 20 * H, slowCurrent: 5, fastTime: 3 * H, fastCurrent: 20 },
      expected: 1.368,
      allowed: 5e-4,
    },
  ]),
  checkLaw(countedCharge, [
    {
      case: 'an offset of 10 mA for 24 h on 2 Ah costs 12 %',
      source: `${BALANCE}: 0.24 Ah of 2 Ah`,
      kind: 'published',
      args: { start: 1, efficiency: 1, current: 0.01, time: 24 * H, capacity: 2 * H },
      expected: 0.88,
      allowed: 1e-9,
    },
    {
      case: 'charging 2 Ah with 0.5 A for 2 h at efficiency 0.8 from a tenth',
      source: `${BALANCE}: 0.2 Ah + 0.8 Ah of 2 Ah`,
      kind: 'published',
      args: { start: 0.1, efficiency: 0.8, current: -0.5, time: 2 * H, capacity: 2 * H },
      expected: 0.5,
      allowed: 1e-9,
    },
  ]),
  checkLaw(coldCapacityShare, [
    ieee(4.4, 1.3),
    ieee(10, 1.19),
    {
      case: 'lead at 0 °C by the standard’s linear rule, 0.8 of 20 °C over 1.05 of it at 25 °C',
      source: 'IEC 60896-11, 0.01 /K, from memory',
      kind: 'memory',
      args: { chemistry: 'lead', temperature: ZERO_CELSIUS },
      expected: 0.8 / 1.05,
      allowed: 0.01,
    },
  ]),
  checkLaw(leadCapacityFactor, [
    {
      case: '0 °C at 0.01 /K: a fifth is gone',
      source: 'common practice, no source: a lead battery holds about 80 % at freezing',
      kind: 'common practice',
      args: { temperature: ZERO_CELSIUS, coefficient: 0.01 },
      expected: 0.8,
      allowed: 0.01,
    },
    {
      case: '30 °C, inverse of the sizing factor relative to 20 °C (1.05 over 0.957)',
      source: `${IEEE}, from memory: 1.05 near 20 °C, 0.957 near 30 °C`,
      kind: 'memory',
      args: { temperature: ZERO_CELSIUS + 30, coefficient: 0.01 },
      expected: 1.097,
      allowed: 0.01,
    },
  ]),
];
