/** The cell model of Chen and Rincón-Mora: closed forms against state of charge, and the step response of its branches. */
import { law } from '../law.ts';

const SOURCE =
  'Chen & Rincón-Mora, Accurate Electrical Battery Model Capable of Predicting Runtime and I–V Performance, IEEE Trans. Energy Conversion 21(2), 2006, equations 2 to 7';
const CELL =
  'lithium-ion pouch cell of 850 mAh near 25 °C; scale resistance by 850 mAh over the capacity, capacitance the other way';
const LEAVES = 'temperature, age, rate, hysteresis; other capacities must be scaled';
const charge = { symbol: 's', is: 'state of charge', unit: '1', from: 0.05, to: 1 } as const;

/** Capacity of the cell the fits were made on [C]. */
export const CHEN_CAPACITY = 0.85 * 3600;

/** Rested voltage of the cell, closed form: the rival of the table. */
export const chenRestVoltage = law(
  {
    id: 'chen-rest-voltage',
    title: 'Rested voltage of a lithium pouch cell, closed form',
    equation: 'U0 = −1.031 e^(−35 s) + 3.685 + 0.2156 s − 0.1178 s² + 0.3201 s³',
    args: { charge },
    gives: { symbol: 'U0', is: 'open-circuit voltage of one cell', unit: 'V' },
    validFor: CELL,
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ charge: s }) => -1.031 * Math.exp(-35 * s) + 3.685 + 0.2156 * s - 0.1178 * s ** 2 + 0.3201 * s ** 3,
);

/** Series (instant) resistance of the cell. */
export const chenSeriesResistance = law(
  {
    id: 'chen-series-resistance',
    title: 'Series resistance of a lithium pouch cell',
    equation: 'Rs = 0.1562 e^(−24.37 s) + 0.07446',
    args: { charge },
    gives: { symbol: 'Rs', is: 'series resistance', unit: 'Ω' },
    validFor: CELL,
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ charge: s }) => 0.1562 * Math.exp(-24.37 * s) + 0.07446,
);

/** Resistance of the fast branch (seconds). */
export const chenFastResistance = law(
  {
    id: 'chen-fast-resistance',
    title: 'Resistance of the fast polarisation branch of a lithium pouch cell',
    equation: 'R1 = 0.3208 e^(−29.14 s) + 0.04669',
    args: { charge },
    gives: { symbol: 'R1', is: 'resistance of the fast branch', unit: 'Ω' },
    validFor: CELL,
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ charge: s }) => 0.3208 * Math.exp(-29.14 * s) + 0.04669,
);

/** Capacitance of the fast branch. */
export const chenFastCapacitance = law(
  {
    id: 'chen-fast-capacitance',
    title: 'Capacitance of the fast polarisation branch of a lithium pouch cell',
    equation: 'C1 = −752.9 e^(−13.51 s) + 703.6',
    args: { charge },
    gives: { symbol: 'C1', is: 'capacitance of the fast branch', unit: 'F' },
    validFor: CELL,
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ charge: s }) => -752.9 * Math.exp(-13.51 * s) + 703.6,
);

/** Resistance of the slow branch (minutes). */
export const chenSlowResistance = law(
  {
    id: 'chen-slow-resistance',
    title: 'Resistance of the slow polarisation branch of a lithium pouch cell',
    equation: 'R2 = 6.603 e^(−155.2 s) + 0.04984',
    args: { charge },
    gives: { symbol: 'R2', is: 'resistance of the slow branch', unit: 'Ω' },
    validFor: CELL,
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ charge: s }) => 6.603 * Math.exp(-155.2 * s) + 0.04984,
);

/** Capacitance of the slow branch. */
export const chenSlowCapacitance = law(
  {
    id: 'chen-slow-capacitance',
    title: 'Capacitance of the slow polarisation branch of a lithium pouch cell',
    equation: 'C2 = −6056 e^(−27.12 s) + 4475',
    args: { charge },
    gives: { symbol: 'C2', is: 'capacitance of the slow branch', unit: 'F' },
    validFor: CELL,
    leavesOut: LEAVES,
    source: SOURCE,
  },
  ({ charge: s }) => -6056 * Math.exp(-27.12 * s) + 4475,
);

/** Voltage across one resistor–capacitor branch at a time after the current stepped. */
export const polarisationVoltage = law(
  {
    id: 'polarisation-voltage',
    title: 'Voltage of a polarisation branch after a step of current',
    equation: 'u = I R + (u0 − I R) e^(−t / (R C))',
    args: {
      current: { symbol: 'I', is: 'current from time zero on', unit: 'A' },
      resistance: { symbol: 'R', is: 'resistance of the branch', unit: 'Ω', above: 0 },
      capacitance: { symbol: 'C', is: 'capacitance of the branch', unit: 'F', above: 0 },
      initial: { symbol: 'u0', is: 'voltage of the branch at time zero', unit: 'V' },
      time: { symbol: 't', is: 'time since the step', unit: 's', from: 0 },
    },
    gives: { symbol: 'u', is: 'voltage of the branch', unit: 'V' },
    validFor: 'constant current, resistance and capacitance',
    leavesOut: 'diffusion slower than the branch, change of charge meanwhile',
    source: 'first-order response of a resistor and a capacitor in parallel, any circuit text',
  },
  ({ current, resistance, capacitance, initial, time }) =>
    current * resistance + (initial - current * resistance) * Math.exp(-time / (resistance * capacitance)),
);
