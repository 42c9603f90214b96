/** Internal resistance of cells: against temperature, against state of charge, against capacity. */
import { GAS_CONSTANT, ROOM, ZERO_CELSIUS } from '../constants.ts';
import { law } from '../law.ts';
import { CHEMISTRIES, CHEMISTRY_FACTS } from './chemistries.ts';
import { chenFastResistance, chenSeriesResistance, chenSlowResistance } from './chen.ts';
import { straightLines } from './interpolate.ts';

const ARRHENIUS =
  'Arrhenius law of a thermally activated process, any physical chemistry text; applied to cells as in makers’ notes';

/** Resistance at a temperature for a known activation energy. */
export const resistanceAtTemperature = law(
  {
    id: 'cell-resistance-at-temperature',
    title: 'Cell resistance against temperature, Arrhenius form',
    equation: 'R = R25 · exp((Ea / Rgas) · (1/T − 1/298.15 K))',
    args: {
      r25: { symbol: 'R25', is: 'resistance at 25 °C', unit: 'Ω', above: 0 },
      activationEnergy: { symbol: 'Ea', is: 'activation energy', unit: 'J/mol', from: 0, to: 60e3 },
      temperature: { symbol: 'T', is: 'cell temperature', unit: 'K', from: 243, to: 333 },
    },
    gives: { symbol: 'R', is: 'resistance at T', unit: 'Ω' },
    validFor: 'about −30 to 60 °C, a cell that is not frozen',
    leavesOut: 'state of charge, age, self-heating under load',
    source: ARRHENIUS,
  },
  ({ r25, activationEnergy, temperature }) =>
    r25 * Math.exp((activationEnergy / GAS_CONSTANT) * (1 / temperature - 1 / ROOM)),
);

/** How much larger the resistance of a chemistry is than at 25 °C. */
export const resistanceTemperatureFactor = law(
  {
    id: 'cell-resistance-temperature-factor',
    title: 'Factor on cell resistance for temperature, by chemistry',
    equation: 'k = exp((Ea[chemistry] / Rgas) · (1/T − 1/298.15 K))',
    args: {
      chemistry: { symbol: 'chemistry', is: 'cell chemistry', unit: 'name', oneOf: CHEMISTRIES },
      temperature: { symbol: 'T', is: 'cell temperature', unit: 'K', from: 243, to: 333 },
    },
    gives: { symbol: 'k', is: 'resistance at T over resistance at 25 °C', unit: '1' },
    validFor: 'about −30 to 60 °C; total direct-current resistance over seconds',
    leavesOut: 'differences between makers (15 to 25 kJ/mol among lithium cells), state of charge, age',
    source: `${ARRHENIUS}; activation energies in CHEMISTRY_FACTS`,
  },
  ({ chemistry, temperature }) =>
    resistanceAtTemperature({
      r25: 1,
      activationEnergy: CHEMISTRY_FACTS[chemistry].activationEnergy.value,
      temperature,
    }),
);

/** Activation energy from two measured resistances: turns a cold-day reading into a law for the pack. */
export const activationEnergyFromReadings = law(
  {
    id: 'activation-energy-from-readings',
    title: 'Activation energy from resistance at two temperatures',
    equation: 'Ea = Rgas · ln(Rc / Rw) / (1/Tc − 1/Tw)',
    args: {
      coldResistance: { symbol: 'Rc', is: 'resistance when cold', unit: 'Ω', above: 0 },
      coldTemperature: { symbol: 'Tc', is: 'lower temperature', unit: 'K', above: 0 },
      warmResistance: { symbol: 'Rw', is: 'resistance when warm', unit: 'Ω', above: 0 },
      warmTemperature: { symbol: 'Tw', is: 'higher temperature', unit: 'K', above: 0 },
    },
    gives: { symbol: 'Ea', is: 'activation energy', unit: 'J/mol' },
    validFor: 'temperatures at least 10 K apart, same state of charge',
    leavesOut: 'contact and lead resistance in the readings, which hardly changes with temperature',
    source: ARRHENIUS,
  },
  ({ coldResistance, coldTemperature, warmResistance, warmTemperature }) =>
    (GAS_CONSTANT * Math.log(coldResistance / warmResistance)) / (1 / coldTemperature - 1 / warmTemperature),
);

/** Factor on total resistance for state of charge, from the fits of Chen and Rincón-Mora. */
export const resistanceChargeFactor = law(
  {
    id: 'cell-resistance-charge-factor',
    title: 'Factor on cell resistance for state of charge',
    equation: 'k = (Rs + R1 + R2)(s) / (Rs + R1 + R2)(0.5)',
    args: { charge: { symbol: 's', is: 'state of charge', unit: '1', from: 0.05, to: 1 } },
    gives: { symbol: 'k', is: 'resistance at s over resistance at half charge', unit: '1' },
    validFor: 'lithium pouch cells; total of the series and both polarisation resistances',
    leavesOut: 'other chemistries: lead and alkaline cells rise more towards empty',
    source: 'Chen & Rincón-Mora, IEEE Trans. Energy Conversion 21(2), 2006, equations 3, 4 and 6',
  },
  ({ charge }) => chenTotal(charge) / chenTotal(0.5),
);

function chenTotal(charge: number): number {
  return chenSeriesResistance({ charge }) + chenFastResistance({ charge }) + chenSlowResistance({ charge });
}

const GRID_CHARGE = [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1] as const;
const GRID_TEMPERATURE = [ZERO_CELSIUS + 5, ZERO_CELSIUS + 20, ZERO_CELSIUS + 40] as const;
const GRID_OHM = [
  [0.0117, 0.011, 0.0114, 0.0107, 0.0107, 0.0113, 0.0116],
  [0.0085, 0.0085, 0.0087, 0.0082, 0.0083, 0.0085, 0.0085],
  [0.009, 0.009, 0.0092, 0.0088, 0.0091, 0.0089, 0.0089],
] as const;

/** Rival of the two factors: the measured grid of one large lithium cell, relative to half charge at 20 °C. */
export const measuredResistanceFactor = law(
  {
    id: 'measured-cell-resistance-factor',
    title: 'Factor on ohmic cell resistance for charge and temperature, measured grid',
    equation: 'k = R(s, T) / R(0.5, 293.15 K), straight lines between the measured points',
    args: {
      charge: { symbol: 's', is: 'state of charge', unit: '1', from: 0, to: 1 },
      temperature: { symbol: 'T', is: 'cell temperature', unit: 'K', from: ZERO_CELSIUS + 5, to: ZERO_CELSIUS + 40 },
    },
    gives: { symbol: 'k', is: 'resistance over that at half charge and 20 °C', unit: '1' },
    validFor: 'one lithium cell of 27 Ah, 5 to 40 °C, instant (ohmic) part only',
    leavesOut: 'polarisation, which grows faster in the cold; other cells',
    source: 'Simulink example data "battery state of charge estimation", 27 Ah lithium cell, R0 table',
  },
  ({ charge, temperature }) => {
    const rows = GRID_OHM.map((row) => straightLines(GRID_CHARGE, row, charge));
    return straightLines(GRID_TEMPERATURE, rows, temperature) / GRID_OHM[1][3];
  },
);

/**
 * Says which factor on resistance for temperature to use, and why.
 * @param part  'instant' for the first milliseconds of a load, 'total' for sag over seconds
 */
export function chooseResistanceFactor(
  part: 'instant' | 'total',
  temperature: number,
): { readonly use: 'cell-resistance-temperature-factor' | 'measured-cell-resistance-factor'; readonly why: string } {
  const use = 'cell-resistance-temperature-factor';
  if (part === 'total') {
    return { use, why: 'The grid holds only the instant part; polarisation grows faster in the cold.' };
  }
  const [low, , high] = GRID_TEMPERATURE;
  return temperature < low || temperature > high
    ? { use, why: 'The measured grid ends at 5 and 40 °C.' }
    : { use: 'measured-cell-resistance-factor', why: 'It was measured, at this temperature and charge.' };
}

/** Makes of cell whose resistance is told by their capacity. */
export const CELL_MAKES = ['racing', 'toy', 'energy-18650', 'power-18650', 'aa-nimh', 'aa-alkaline'] as const;
export type CellMake = (typeof CELL_MAKES)[number];

/** Usual resistance times capacity [Ω·C], middle of a practice range at 25 °C. */
export const RESISTANCE_TIMES_CAPACITY: Readonly<
  Record<CellMake, { readonly value: number; readonly source: string }>
> = {
  racing: { value: 0.02 * 3600, source: 'common practice, no source: 0.01 to 0.03 Ω·Ah' },
  toy: { value: 0.08 * 3600, source: 'common practice, no source: 0.06 to 0.1 Ω·Ah' },
  'energy-18650': { value: 0.045 * 2.6 * 3600, source: 'common practice, no source: 30 to 60 mΩ at about 2.6 Ah' },
  'power-18650': { value: 0.018 * 2.5 * 3600, source: 'common practice, no source: 12 to 25 mΩ at about 2.5 Ah' },
  'aa-nimh': { value: 0.04 * 2 * 3600, source: 'common practice, no source: 25 to 50 mΩ new at about 2 Ah' },
  'aa-alkaline': { value: 0.2 * 2.5 * 3600, source: 'common practice, no source: 150 to 300 mΩ at about 2.5 Ah' },
};

/** A first guess of cell resistance when nothing was measured. */
export const usualCellResistance = law(
  {
    id: 'usual-cell-resistance',
    title: 'Usual resistance of a cell from its make and capacity',
    equation: 'R = κ[make] / Q',
    args: {
      make: { symbol: 'make', is: 'make of cell', unit: 'name', oneOf: CELL_MAKES },
      capacity: { symbol: 'Q', is: 'capacity of the cell', unit: 'C', above: 0 },
    },
    gives: { symbol: 'R', is: 'resistance of a new cell at 25 °C', unit: 'Ω' },
    validFor: 'new cells, half charged, 25 °C; a guess within a factor of two',
    leavesOut: 'age, cold, tabs and leads: measure when it matters',
    source: 'common practice, no source',
  },
  ({ make, capacity }) => RESISTANCE_TIMES_CAPACITY[make].value / capacity,
);
