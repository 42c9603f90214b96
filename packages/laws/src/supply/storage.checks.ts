import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { calendarAgeingFactor, capacityAfterYear, chargeAfterRest } from './storage.ts';

const DAY = 86400;
const SHEET = 'cell-maker storage table and battery handling sheet, recoverable capacity after one year';

const stored = (celsius: number, charge: number, expected: number) =>
  ({
    case: `${celsius} °C at ${charge * 100} % charge`,
    source: SHEET,
    kind: 'published',
    args: { temperature: ZERO_CELSIUS + celsius, charge },
    expected,
    allowed: 1e-3,
  }) as const;

export const storageChecks = [
  checkLaw(chargeAfterRest, [
    {
      case: 'low-self-discharge NiMH, 1.35 % a month, after a year',
      source: 'makers’ claim of 85 % after one year, from memory',
      kind: 'memory',
      args: { start: 1, monthly: 0.0135, time: 365.25 * DAY },
      expected: 0.85,
      allowed: 0.005,
    },
    {
      case: 'a fifth a month over three months of 365.25/12 days: 0.8³, from 90 %',
      source: 'compound loss worked by hand',
      kind: 'published',
      args: { start: 0.9, monthly: 0.2, time: (3 * 365.25 * DAY) / 12 },
      expected: 0.4608,
      allowed: 1e-6,
    },
  ]),
  checkLaw(capacityAfterYear, [
    stored(25, 0.4, 0.96),
    stored(40, 0.4, 0.85),
    stored(25, 1, 0.8),
    stored(40, 1, 0.65),
    {
      case: 'half way between 40 and 100 % at 40 °C, by hand (0.85 + 0.65)/2',
      source: SHEET,
      kind: 'published',
      args: { temperature: ZERO_CELSIUS + 40, charge: 0.7 },
      expected: 0.75,
      allowed: 1e-3,
    },
  ]),
  checkLaw(calendarAgeingFactor, [
    {
      case: '308 against 298 K at the activation energy printed for doubling per 10 K',
      source: 'NCERT Chemistry XII, chapter on chemical kinetics (52.897 kJ/mol), from memory',
      kind: 'memory',
      args: { temperature: ZERO_CELSIUS + 35 },
      expected: Math.exp((52897 / 8.314) * (1 / 298 - 1 / 308)),
      allowed: 0.002,
    },
    {
      case: '45 °C against 25 °C: twice doubled',
      source: 'distributor’s note on storage of lithium packs: doubling per 10 K',
      kind: 'common practice',
      args: { temperature: ZERO_CELSIUS + 45 },
      expected: 4,
      allowed: 1e-6,
    },
  ]),
];
