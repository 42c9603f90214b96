/** Open-circuit (rested) voltage against state of charge. */
import { law, OutOfRange } from '../law.ts';
import { CHEMISTRIES, type Chemistry } from './chemistries.ts';
import { meanOf, monotoneCurve, whereRising } from './interpolate.ts';

/** A published rest-voltage table: state of charge rising, volts per cell. */
export interface RestTable {
  readonly charge: readonly number[];
  readonly volts: readonly number[];
  readonly source: string;
}

const FINE = [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1] as const;
const TENTHS = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1] as const;

export const REST_TABLES: Readonly<Record<Chemistry, RestTable>> = {
  lipo: {
    charge: FINE,
    volts: [3.0, 3.533, 3.639, 3.694, 3.732, 3.761, 3.791, 3.833, 3.903, 3.988, 4.079, 4.129, 4.184],
    source: 'PyBaMM parameter set Ai2020 (lithium cobalt oxide pouch, 2.28 Ah): difference of the two electrode fits',
  },
  nmc: {
    charge: FINE,
    volts: [2.5, 3.107, 3.292, 3.484, 3.578, 3.664, 3.746, 3.835, 3.941, 4.034, 4.095, 4.114, 4.181],
    source: 'PyBaMM parameter set Chen2020 (NMC811, 5 Ah), by its start concentrations',
  },
  lfp: {
    charge: FINE,
    volts: [2.0, 2.785, 2.978, 3.168, 3.206, 3.252, 3.266, 3.269, 3.274, 3.31, 3.314, 3.316, 3.4],
    source: 'PyBaMM parameter set Prada2013 (2.3 Ah) with the fit of Afshar 2017; the full point rested, from memory',
  },
  nimh: {
    charge: TENTHS,
    volts: [1.0, 1.22, 1.25, 1.27, 1.28, 1.29, 1.3, 1.31, 1.33, 1.36, 1.4],
    source: 'rest-voltage tables, from memory; the ends agree with Varta NiMH data sheet V250H, p. 49',
  },
  alkaline: {
    charge: TENTHS,
    volts: [1.1, 1.2, 1.23, 1.26, 1.28, 1.3, 1.32, 1.34, 1.38, 1.44, 1.59],
    source: 'encyclopedia table of alkaline voltage against capacity, zero load, from memory',
  },
  lead: {
    charge: TENTHS,
    volts: [11.4, 11.51, 11.66, 11.81, 11.96, 12.1, 12.24, 12.37, 12.5, 12.62, 12.73].map((v) => v / 6),
    source: 'tables for 12 V flooded batteries, from memory, divided by six cells',
  },
};

const curves: Readonly<Record<Chemistry, (charge: number) => number>> = {
  lipo: monotoneCurve(REST_TABLES.lipo.charge, REST_TABLES.lipo.volts),
  nmc: monotoneCurve(REST_TABLES.nmc.charge, REST_TABLES.nmc.volts),
  lfp: monotoneCurve(REST_TABLES.lfp.charge, REST_TABLES.lfp.volts),
  nimh: monotoneCurve(REST_TABLES.nimh.charge, REST_TABLES.nimh.volts),
  alkaline: monotoneCurve(REST_TABLES.alkaline.charge, REST_TABLES.alkaline.volts),
  lead: monotoneCurve(REST_TABLES.lead.charge, REST_TABLES.lead.volts),
};

const chemistry = { symbol: 'chemistry', is: 'cell chemistry', unit: 'name', oneOf: CHEMISTRIES } as const;
const TABLES = 'the table of each chemistry, see REST_TABLES';

/** Rested voltage of one cell, by monotone interpolation in the chemistry's table. */
export const restVoltage = law(
  {
    id: 'rest-voltage',
    title: 'Rested voltage of a cell against its state of charge',
    equation: 'U0 = table[chemistry](s), monotone cubic between the points',
    args: { chemistry, charge: { symbol: 's', is: 'state of charge', unit: '1', from: 0, to: 1 } },
    gives: { symbol: 'U0', is: 'open-circuit voltage of one cell', unit: 'V' },
    validFor: 'a healthy cell near 20 °C, rested for an hour or more',
    leavesOut: 'hysteresis (about 30 mV in NiMH), age, temperature; published tables differ by up to 40 mV',
    source: TABLES,
  },
  ({ chemistry, charge }) => curves[chemistry](charge),
);

/** State of charge read back from a rested voltage; poor on flat curves, so ask {@link restVoltageSlope} as well. */
export const restCharge = law(
  {
    id: 'rest-charge',
    title: 'State of charge from a rested cell voltage',
    equation: 's such that table[chemistry](s) = U0',
    args: { chemistry, voltage: { symbol: 'U0', is: 'rested voltage of one cell', unit: 'V', above: 0 } },
    gives: { symbol: 's', is: 'state of charge', unit: '1' },
    validFor: 'voltages inside the table of the chemistry; a healthy cell rested for an hour or more',
    leavesOut: 'as rest-voltage; between 30 and 90 % of a lithium iron phosphate cell the answer is worth little',
    source: TABLES,
  },
  ({ chemistry, voltage }) => {
    const curve = curves[chemistry];
    const [low, high] = [curve(0), curve(1)];
    if (voltage < low || voltage > high) {
      throw new OutOfRange('rest-charge', 'U0', voltage, `from ${low} to ${high} V for ${chemistry}`, TABLES);
    }
    return whereRising(curve, voltage, 0, 1);
  },
);

/** How many volts a cell's rest voltage moves per unit of charge: the worth of a voltmeter as a fuel gauge. */
export const restVoltageSlope = law(
  {
    id: 'rest-voltage-slope',
    title: 'Slope of the rested voltage over a span of charge',
    equation: 'm = (table[chemistry](s2) − table[chemistry](s1)) / (s2 − s1)',
    args: {
      chemistry,
      from: { symbol: 's1', is: 'lower state of charge', unit: '1', from: 0, below: 1 },
      to: { symbol: 's2', is: 'upper state of charge', unit: '1', above: 0, to: 1 },
    },
    gives: { symbol: 'm', is: 'mean slope', unit: 'V' },
    validFor: 's2 above s1',
    leavesOut: 'as rest-voltage',
    source: TABLES,
  },
  ({ chemistry, from, to }) => (curves[chemistry](to) - curves[chemistry](from)) / (to - from),
);

/** Mean rested voltage over a span of charge: energy per coulomb drawn slowly. */
export const meanRestVoltage = law(
  {
    id: 'mean-rest-voltage',
    title: 'Mean rested voltage over a span of charge',
    equation: 'Um = ∫ table[chemistry](s) ds / (s2 − s1), s from s1 to s2',
    args: {
      chemistry,
      from: { symbol: 's1', is: 'lower state of charge', unit: '1', from: 0, below: 1 },
      to: { symbol: 's2', is: 'upper state of charge', unit: '1', above: 0, to: 1 },
    },
    gives: { symbol: 'Um', is: 'mean open-circuit voltage of one cell', unit: 'V' },
    validFor: 's2 above s1; slow discharge',
    leavesOut: 'the loss in the internal resistance',
    source: TABLES,
  },
  ({ chemistry, from, to }) => meanOf(curves[chemistry], from, to),
);

/**
 * Says which rest-voltage law to use, and why.
 * @param withChenBranches  the sag is computed with the polarisation branches of Chen and Rincón-Mora
 */
export function chooseRestVoltage(
  chemistry: Chemistry,
  withChenBranches: boolean,
): { readonly use: 'rest-voltage' | 'chen-rest-voltage'; readonly why: string } {
  if (chemistry !== 'lipo') {
    return { use: 'rest-voltage', why: 'The closed form was fitted to a lithium cobalt oxide pouch cell only.' };
  }
  return withChenBranches
    ? { use: 'chen-rest-voltage', why: 'Rest voltage and branches were fitted together on one cell.' }
    : { use: 'rest-voltage', why: 'The table follows measured electrodes down to empty; the closed form ends at 5 %.' };
}
