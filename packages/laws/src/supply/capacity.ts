/** Charge: rate, run time, counting, what cold, rate and storage take away. */
import { ZERO_CELSIUS } from '../constants.ts';
import { law } from '../law.ts';
import { CHEMISTRIES, type Chemistry, type Sourced } from './chemistries.ts';
import { straightLines } from './interpolate.ts';

const HOUR = 3600;
const capacity = { symbol: 'Q', is: 'capacity', unit: 'C', above: 0 } as const;
const current = { symbol: 'I', is: 'current', unit: 'A', above: 0 } as const;
const PEUKERT = 'Peukert’s law with rated hours, as in battery texts; t = H (C / (I H))^n';

/** C-rate of a current: how many capacities per hour. */
export const chargeRate = law(
  {
    id: 'c-rate',
    title: 'C-rate of a current',
    equation: 'c = I · 3600 s / Q',
    args: { current, capacity },
    gives: { symbol: 'c', is: 'C-rate, capacities per hour', unit: '1' },
    validFor: 'any cell or pack',
    leavesOut: 'that printed C-rates of hobby packs flatter; halve them for continuous use',
    source: 'IEC 61434, designation of current of alkaline cells; used for all chemistries',
  },
  ({ current, capacity }) => (current * HOUR) / capacity,
);

/** Current at a C-rate. */
export const currentAtRate = law(
  {
    id: 'current-at-rate',
    title: 'Current at a C-rate',
    equation: 'I = c · Q / 3600 s',
    args: { rate: { symbol: 'c', is: 'C-rate, capacities per hour', unit: '1', above: 0 }, capacity },
    gives: { symbol: 'I', is: 'current', unit: 'A' },
    validFor: 'any cell or pack',
    leavesOut: 'that printed C-rates of hobby packs flatter; halve them for continuous use',
    source: 'IEC 61434, designation of current of alkaline cells; used for all chemistries',
  },
  ({ rate, capacity }) => (rate * capacity) / HOUR,
);

/** Mean current told by how long a pack lasted. */
export const averageCurrentFromRunTime = law(
  {
    id: 'average-current-from-run-time',
    title: 'Average current from capacity and observed run time',
    equation: 'I = u · Q / t',
    args: {
      capacity,
      share: { symbol: 'u', is: 'share of the printed capacity that came out', unit: '1', above: 0, to: 1 },
      time: { symbol: 't', is: 'run time', unit: 's', above: 0 },
    },
    gives: { symbol: 'I', is: 'average pack current', unit: 'A' },
    validFor: 'a run from full to the toy’s cut-off',
    leavesOut: 'labels that flatter: toy packs often hold 70 to 95 % of what is printed',
    source: 'charge balance; definition of electric current, IEC 60050-121',
  },
  ({ capacity, share, time }) => (share * capacity) / time,
);

/** Run time at a constant current. */
export const runTime = law(
  {
    id: 'run-time',
    title: 'Run time at a constant current',
    equation: 't = u · Q / I',
    args: {
      capacity,
      share: { symbol: 'u', is: 'usable share of the capacity', unit: '1', above: 0, to: 1 },
      current,
    },
    gives: { symbol: 't', is: 'run time', unit: 's' },
    validFor: 'lithium and nickel cells; for lead see Peukert',
    leavesOut: 'cold, age, and sag that ends the run at the cut-off under load',
    source: 'charge balance; definition of electric current, IEC 60050-121',
  },
  ({ capacity, share, current }) => (share * capacity) / current,
);

/** Run time of a lead battery at a current other than its rated one. */
export const peukertTime = law(
  {
    id: 'peukert-time',
    title: 'Run time of a lead battery at a current, Peukert',
    equation: 't = H · (Q / (I · H))^n',
    args: {
      capacity,
      ratedTime: { symbol: 'H', is: 'time the capacity is rated at', unit: 's', above: 0 },
      current,
      exponent: { symbol: 'n', is: 'Peukert exponent', unit: '1', from: 1, to: 1.7 },
    },
    gives: { symbol: 't', is: 'run time', unit: 's' },
    validFor: 'lead-acid, constant current, constant temperature, currents at or above the rated one',
    leavesOut: 'temperature, age, recovery at rest; not for lithium',
    source: PEUKERT,
  },
  ({ capacity, ratedTime, current, exponent }) => ratedTime * (capacity / (current * ratedTime)) ** exponent,
);

/** Peukert exponent from two run times. */
export const peukertExponent = law(
  {
    id: 'peukert-exponent',
    title: 'Peukert exponent from two discharges',
    equation: 'n = ln(t1 / t2) / ln(I2 / I1)',
    args: {
      slowTime: { symbol: 't1', is: 'run time at the lower current', unit: 's', above: 0 },
      slowCurrent: { symbol: 'I1', is: 'lower current', unit: 'A', above: 0 },
      fastTime: { symbol: 't2', is: 'run time at the higher current', unit: 's', above: 0 },
      fastCurrent: { symbol: 'I2', is: 'higher current', unit: 'A', above: 0 },
    },
    gives: { symbol: 'n', is: 'Peukert exponent', unit: '1' },
    validFor: 'lead-acid, same end voltage and temperature',
    leavesOut: 'temperature, age',
    source: PEUKERT,
  },
  ({ slowTime, slowCurrent, fastTime, fastCurrent }) =>
    Math.log(slowTime / fastTime) / Math.log(fastCurrent / slowCurrent),
);

/** State of charge by counting. */
export const countedCharge = law(
  {
    id: 'counted-charge',
    title: 'State of charge after a current, by counting',
    equation: 's = s0 − η · I · t / Q',
    args: {
      start: { symbol: 's0', is: 'state of charge at the start', unit: '1', from: 0, to: 1 },
      efficiency: { symbol: 'η', is: 'coulombic efficiency (1 while discharging)', unit: '1', above: 0, to: 1 },
      current: { symbol: 'I', is: 'mean current, positive when drawn', unit: 'A' },
      time: { symbol: 't', is: 'duration', unit: 's', from: 0 },
      capacity,
    },
    gives: { symbol: 's', is: 'state of charge at the end', unit: '1' },
    validFor: 'short of empty and full; counts drift, so correct at a rested full charge',
    leavesOut: 'self-discharge, sensor offset',
    source: 'charge balance; definition of electric current, IEC 60050-121',
  },
  ({ start, efficiency, current, time, capacity }) => start - (efficiency * current * time) / capacity,
);

/** Usable share of the capacity in the cold, points of a rule. */
export interface ColdTable extends Pick<Sourced, 'source'> {
  readonly temperature: readonly number[];
  readonly share: readonly number[];
}

const COLD_POINTS = [-20, -10, 0, 10, 25, 40].map((t) => t + ZERO_CELSIUS);

export const COLD_TABLES: Readonly<Record<Chemistry, ColdTable>> = {
  lipo: {
    temperature: COLD_POINTS,
    share: [0.6, 0.75, 0.87, 0.94, 1, 1],
    source: 'pouch-cell data sheets at 0.2 to 0.5 C, from memory',
  },
  nmc: {
    temperature: COLD_POINTS,
    share: [0.65, 0.8, 0.9, 0.95, 1, 1.01],
    source: '18650 data sheets, discharge by temperature, from memory',
  },
  lfp: {
    temperature: COLD_POINTS,
    share: [0.55, 0.7, 0.82, 0.92, 1, 1.01],
    source: 'lithium iron phosphate data sheets, from memory',
  },
  nimh: {
    temperature: COLD_POINTS,
    share: [0.6, 0.8, 0.9, 0.96, 1, 0.98],
    source: 'NiMH makers’ handbooks at 0.2 C, from memory',
  },
  alkaline: {
    temperature: COLD_POINTS,
    share: [0.2, 0.35, 0.55, 0.75, 1, 1.05],
    source: 'alkaline makers’ handbooks, moderate load, from memory',
  },
  lead: {
    temperature: COLD_POINTS,
    share: [0.55, 0.67, 0.76, 0.86, 1, 1.05],
    source: 'lead-acid makers’ handbooks at the 5 to 20 hour rate, from memory',
  },
};

/** Share of the 25 °C capacity that a cell gives at a temperature, at a slow rate. */
export const coldCapacityShare = law(
  {
    id: 'cold-capacity-share',
    title: 'Share of the capacity left in the cold, by chemistry',
    equation: 'u = table[chemistry](T), straight lines between the points',
    args: {
      chemistry: { symbol: 'chemistry', is: 'cell chemistry', unit: 'name', oneOf: CHEMISTRIES },
      temperature: { symbol: 'T', is: 'cell temperature', unit: 'K', from: ZERO_CELSIUS - 20, to: ZERO_CELSIUS + 40 },
    },
    gives: { symbol: 'u', is: 'capacity at T over capacity at 25 °C', unit: '1' },
    validFor: 'slow discharge (0.2 to 0.5 C) to the usual cut-off; ±0.1 between makers',
    leavesOut: 'fast discharge, where sag ends the run sooner; self-heating, which helps',
    source: 'data sheets and handbooks by chemistry, from memory, see COLD_TABLES',
  },
  ({ chemistry, temperature }) =>
    straightLines(COLD_TABLES[chemistry].temperature, COLD_TABLES[chemistry].share, temperature),
);

/** Capacity of a lead battery at a temperature, the standard's linear rule: rival of the table for lead. */
export const leadCapacityFactor = law(
  {
    id: 'lead-capacity-factor',
    title: 'Factor on lead-acid capacity for temperature',
    equation: 'u = 1 + λ (T − 293.15 K)',
    args: {
      temperature: { symbol: 'T', is: 'cell temperature', unit: 'K', from: 258, to: 318 },
      coefficient: {
        symbol: 'λ',
        is: '0.006 /K slower than the 1-hour rate, 0.01 /K faster',
        unit: '1/K',
        from: 0.004,
        to: 0.012,
      },
    },
    gives: { symbol: 'u', is: 'capacity at T over capacity at 20 °C', unit: '1' },
    validFor: 'lead-acid, about −15 to 45 °C',
    leavesOut: 'freezing of a discharged cell below about −10 °C',
    source: 'IEC 60896-11, temperature correction of capacity, from memory',
  },
  ({ temperature, coefficient }) => 1 + coefficient * (temperature - (ZERO_CELSIUS + 20)),
);
