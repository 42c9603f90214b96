/** What happens to a pack while nobody drives: self-discharge and loss in storage. */
import { ROOM, ZERO_CELSIUS } from '../constants.ts';
import { law } from '../law.ts';
import type { Chemistry, Sourced } from './chemistries.ts';
import { straightLines } from './interpolate.ts';

/** A year and a month of 1/12 year [s]. */
const YEAR = 365.25 * 86400;
const MONTH = YEAR / 12;

/** Usual self-discharge per month at room temperature, share of the charge present. */
export const SELF_DISCHARGE: Readonly<Record<Chemistry, Sourced>> = {
  lipo: { value: 0.03, source: 'common practice, no source: 1 to 5 % a month with its protection board, from memory' },
  nmc: { value: 0.02, source: 'common practice, no source: 1 to 3 % a month, from memory' },
  lfp: { value: 0.03, source: 'common practice, no source: 1 to 5 % a month, from memory' },
  nimh: {
    value: 0.2,
    source: 'common practice, no source: 15 to 30 % a month, 1 to 2 % for low-self-discharge cells, from memory',
  },
  alkaline: { value: 0.002, source: 'common practice, no source: 2 to 3 % a year, from memory' },
  lead: { value: 0.04, source: 'common practice, no source: 3 to 5 % a month, from memory' },
};

/** Charge left after resting at a steady rate of self-discharge. */
export const chargeAfterRest = law(
  {
    id: 'charge-after-rest',
    title: 'State of charge after storage',
    equation: 's = s0 · (1 − d)^(t / 1 month)',
    args: {
      start: { symbol: 's0', is: 'state of charge at the start', unit: '1', above: 0, to: 1 },
      monthly: { symbol: 'd', is: 'share lost per month', unit: '1', from: 0, below: 1 },
      time: { symbol: 't', is: 'time stored', unit: 's', from: 0 },
    },
    gives: { symbol: 's', is: 'state of charge', unit: '1' },
    validFor: 'steady temperature; no load connected, not even a converter at idle',
    leavesOut: 'the first day after charging, which loses more; heat, which doubles the rate each 10 K',
    source: 'common practice, no source: self-discharge taken as proportional to the charge present',
  },
  ({ start, monthly, time }) => start * (1 - monthly) ** (time / MONTH),
);

const STORED_CELSIUS = [0, 25, 40, 60] as const;
const STORED_HALF = [0.98, 0.96, 0.85, 0.75] as const;
const STORED_FULL = [0.94, 0.8, 0.65, 0.6] as const;

/** Capacity a lithium cell recovers after a year on the shelf. */
export const capacityAfterYear = law(
  {
    id: 'capacity-after-year',
    title: 'Recoverable capacity of a lithium cell after one year of storage',
    equation: 'r = table(T, s), straight lines between 0, 25, 40, 60 °C and between 40 and 100 % charge',
    args: {
      temperature: { symbol: 'T', is: 'storage temperature', unit: 'K', from: ZERO_CELSIUS, to: ZERO_CELSIUS + 60 },
      charge: { symbol: 's', is: 'state of charge while stored', unit: '1', from: 0.4, to: 1 },
    },
    gives: { symbol: 'r', is: 'capacity recovered over capacity before', unit: '1' },
    validFor:
      'lithium cobalt oxide cells of the early data sheets; the 60 °C point at full charge was reached after 3 months',
    leavesOut: 'other chemistries, later years (losses slow down)',
    source:
      'cell-maker storage table and battery handling sheet (recoverable capacity after one year at 40 and 100 % charge)',
  },
  ({ temperature, charge }) => {
    const half = straightLines(STORED_CELSIUS, STORED_HALF, temperature - ZERO_CELSIUS);
    const full = straightLines(STORED_CELSIUS, STORED_FULL, temperature - ZERO_CELSIUS);
    return straightLines([0.4, 1], [half, full], charge);
  },
);

/** How much faster calendar ageing runs at a temperature than at 25 °C, rule of thumb. */
export const calendarAgeingFactor = law(
  {
    id: 'calendar-ageing-factor',
    title: 'Rate of calendar ageing against temperature',
    equation: 'k = 2^((T − 298.15 K) / 10 K)',
    args: { temperature: { symbol: 'T', is: 'storage temperature', unit: 'K', from: 263, to: 333 } },
    gives: { symbol: 'k', is: 'ageing rate over that at 25 °C', unit: '1' },
    validFor: 'lithium cells, rule of thumb; published storage tables rise more slowly (capacity-after-year)',
    leavesOut: 'state of charge, which matters as much',
    source: 'common practice, no source: doubling per 10 K',
  },
  ({ temperature }) => 2 ** ((temperature - ROOM) / 10),
);
