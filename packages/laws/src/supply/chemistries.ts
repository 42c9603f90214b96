/** Cell chemistries and what is safe for one cell of each, with a source at every figure. */
import { ZERO_CELSIUS } from '../constants.ts';

/** lipo = lithium cobalt oxide hobby pouch, nmc = nickel manganese cobalt cylindrical, lfp = lithium iron phosphate. */
export const CHEMISTRIES = ['lipo', 'nmc', 'lfp', 'nimh', 'alkaline', 'lead'] as const;
export type Chemistry = (typeof CHEMISTRIES)[number];

/** A figure and where it is from. Voltages in V per cell, temperatures in K, shares 0 to 1. */
export interface Sourced {
  readonly value: number;
  readonly source: string;
}

/** How a cell may be charged. */
export interface ChargeFacts {
  /** Lowest and highest cell temperature for charging [K]. */
  readonly coldest: Sourced;
  readonly hottest: Sourced;
  /** Usual charge rate [1/h of the capacity, 'C-rate']. */
  readonly rate: Sourced;
}

export interface ChemistryFacts {
  readonly is: string;
  readonly nominal: Sourced;
  /** Voltage at which charging ends; sets what bridge and converter must stand. */
  readonly full: Sourced;
  /** Full, rested for an hour or more. */
  readonly restedFull: Sourced;
  /** Empty, at rest, as the rest-voltage table defines empty. */
  readonly restedEmpty: Sourced;
  /** Where to stop under load. */
  readonly cutOff: Sourced;
  /** Below this the cell is harmed or unsafe to recharge. */
  readonly absoluteMinimum: Sourced;
  /** Absent for cells that must not be charged. */
  readonly charge?: ChargeFacts;
  /** Share of the capacity to plan on. */
  readonly usableShare: Sourced;
  /** Activation energy of the direct-current resistance [J/mol]. */
  readonly activationEnergy: Sourced;
}

const PRACTICE = 'common practice, no source';
const from = (value: number, source: string): Sourced => ({ value, source });
const celsius = (value: number, source: string): Sourced => ({ value: value + ZERO_CELSIUS, source });

const LITHIUM_CHARGE_COLD = celsius(0, 'cell makers’ handling sheets, no charge below 0 °C, from memory');
const LITHIUM_CHARGE_HOT = celsius(45, 'cell makers’ handling sheets, charge to 45 °C, from memory');
const LITHIUM_ENERGY = from(20e3, 'middle of 15 to 25 kJ/mol for total direct-current resistance, from memory');

export const CHEMISTRY_FACTS: Readonly<Record<Chemistry, ChemistryFacts>> = {
  lipo: {
    is: 'lithium cobalt oxide pouch cell',
    nominal: from(3.7, `${PRACTICE}; labels of hobby packs`),
    full: from(4.2, 'PyBaMM parameter set Ai2020, upper voltage limit'),
    restedFull: from(4.184, 'PyBaMM parameter set Ai2020, fits over the published window'),
    restedEmpty: from(3.0, 'PyBaMM parameter set Ai2020, lower voltage limit'),
    cutOff: from(3.0, `${PRACTICE}; cut 3.0 V under load, stop driving at 3.3 V`),
    absoluteMinimum: from(
      2.8,
      'data sheet of a pouch-cell protector, 2.80 V under-voltage, as quoted in a design note',
    ),
    charge: { coldest: LITHIUM_CHARGE_COLD, hottest: LITHIUM_CHARGE_HOT, rate: from(1, `${PRACTICE}; from memory`) },
    usableShare: from(0.8, `${PRACTICE}; the 80 % rule`),
    activationEnergy: LITHIUM_ENERGY,
  },
  nmc: {
    is: 'nickel manganese cobalt cylindrical cell',
    nominal: from(3.6, `${PRACTICE}; labels of 18650 cells`),
    full: from(4.2, 'PyBaMM parameter set Chen2020, upper voltage limit'),
    restedFull: from(4.181, 'PyBaMM parameter set Chen2020, fits at the start concentrations'),
    restedEmpty: from(2.5, 'PyBaMM parameter set Chen2020, lower voltage limit'),
    cutOff: from(3.0, 'upper end of 2.5 to 3.0 V, cell data sheets, from memory'),
    absoluteMinimum: from(2.5, 'PyBaMM parameter set Chen2020, lower voltage limit'),
    charge: { coldest: LITHIUM_CHARGE_COLD, hottest: LITHIUM_CHARGE_HOT, rate: from(0.5, `${PRACTICE}; from memory`) },
    usableShare: from(0.8, `${PRACTICE}; the 80 % rule`),
    activationEnergy: LITHIUM_ENERGY,
  },
  lfp: {
    is: 'lithium iron phosphate cell',
    nominal: from(3.2, 'cell makers’ pages on lithium iron phosphate voltage'),
    full: from(3.65, 'cell makers’ pages on lithium iron phosphate voltage'),
    restedFull: from(3.4, 'rest-voltage tables, from memory; the fit of Prada2013 ends at 3.6 V, before rest'),
    restedEmpty: from(2.0, 'PyBaMM parameter set Prada2013, lower voltage limit'),
    cutOff: from(2.5, 'upper end of 2.0 to 2.5 V, cell makers’ pages on lithium iron phosphate voltage'),
    absoluteMinimum: from(2.0, 'PyBaMM parameter set Prada2013, lower voltage limit'),
    charge: { coldest: LITHIUM_CHARGE_COLD, hottest: LITHIUM_CHARGE_HOT, rate: from(0.5, `${PRACTICE}; from memory`) },
    usableShare: from(0.9, PRACTICE),
    activationEnergy: LITHIUM_ENERGY,
  },
  nimh: {
    is: 'nickel-metal hydride cell',
    nominal: from(1.2, 'Varta Microbattery NiMH data sheet V250H, p. 49'),
    full: from(1.45, 'Varta Microbattery NiMH data sheet V250H, p. 49, end of charge at 0.1 C'),
    restedFull: from(1.4, 'Varta Microbattery NiMH data sheet V250H, p. 49, upper rest voltage'),
    restedEmpty: from(1.0, 'rest-voltage tables, from memory'),
    cutOff: from(1.0, 'Varta Microbattery NiMH data sheet V250H, p. 49, capacity at 0.2 C to 1.0 V'),
    absoluteMinimum: from(0.9, 'Varta Microbattery NiMH data sheet V250H, p. 49, lowest end of discharge'),
    charge: {
      coldest: celsius(0, 'NiMH makers’ handbooks, slow charge, from memory'),
      hottest: celsius(45, 'NiMH makers’ handbooks, slow charge, from memory'),
      rate: from(0.1, 'Varta Microbattery NiMH data sheet V250H, p. 49, 0.1 C for 14 to 16 h'),
    },
    usableShare: from(0.8, `${PRACTICE}; taken as for lithium`),
    activationEnergy: from(13e3, 'resistance about doubled at −10 °C, NiMH makers’ handbooks, from memory'),
  },
  alkaline: {
    is: 'alkaline manganese primary cell',
    nominal: from(1.5, 'IEC 60086-2, nominal voltage of the alkaline system, from memory'),
    full: from(1.6, 'alkaline makers’ handbooks, fresh cell 1.58 to 1.60 V, from memory'),
    restedFull: from(1.59, 'encyclopedia table of alkaline voltage against capacity, from memory'),
    restedEmpty: from(1.1, 'encyclopedia table of alkaline voltage against capacity, from memory'),
    cutOff: from(0.9, 'alkaline makers’ handbooks, end point 0.9 V, from memory'),
    absoluteMinimum: from(0.8, 'alkaline makers’ handbooks, end point 0.8 V, from memory'),
    usableShare: from(0.8, `${PRACTICE}; taken as for lithium`),
    activationEnergy: from(17e3, 'AA cell about 0.15 Ω at 20 °C and 0.9 Ω at −40 °C, makers’ bulletins, from memory'),
  },
  lead: {
    is: 'lead-acid cell',
    nominal: from(2.0, 'IEC 60050-482, nominal voltage of a lead-acid cell, from memory'),
    full: from(2.45, 'upper end of 2.40 to 2.45 V for cyclic charge, makers’ handbooks, from memory'),
    restedFull: from(12.73 / 6, 'note on flooded cells, 12.73 V full for one maker'),
    restedEmpty: from(11.4 / 6, 'rest-voltage tables, from memory'),
    cutOff: from(1.75, 'makers’ handbooks, 1.75 V at the 20-hour rate, from memory'),
    absoluteMinimum: from(1.6, 'makers’ handbooks, 1.60 V at the 1-hour rate, from memory'),
    charge: {
      coldest: celsius(-15, 'makers’ handbooks, with compensated voltage, from memory'),
      hottest: celsius(40, 'makers’ handbooks, from memory'),
      rate: from(0.1, `${PRACTICE}; from memory`),
    },
    usableShare: from(0.5, PRACTICE),
    activationEnergy: from(7e3, 'electrolyte conductance changes about 1 % per kelvin at 25 °C, from memory'),
  },
};
