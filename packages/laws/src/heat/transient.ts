/** Warming and cooling in time: one lump. */
import { law } from '../law.ts';

const SOURCE = 'lumped capacitance, Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 5';
const conductance = {
  symbol: 'G',
  is: 'conductance to the surroundings, h A or 1/Rth',
  unit: 'W/K',
  above: 0,
} as const;
const heatCapacity = { symbol: 'C', is: 'heat capacity, mass times specific heat', unit: 'J/K', above: 0 } as const;
const ambient = { symbol: 'Ta', is: 'temperature of the surroundings', unit: 'K', above: 0 } as const;
const initial = { symbol: 'T0', is: 'temperature at the start', unit: 'K', above: 0 } as const;
const power = { symbol: 'P', is: 'heat made', unit: 'W' } as const;
const VALID = 'Biot number below 0.1, constant conductance';

/** Time constant of a lump. */
export const thermalTimeConstant = law(
  {
    id: 'thermal-time-constant',
    title: 'Thermal time constant of a lump',
    equation: 'τ = m c / G',
    args: {
      mass: { symbol: 'm', is: 'mass', unit: 'kg', above: 0 },
      specificHeat: { symbol: 'c', is: 'specific heat', unit: 'J/(kg·K)', above: 0 },
      conductance,
    },
    gives: { symbol: 'τ', is: 'time constant', unit: 's' },
    validFor: VALID,
    leavesOut: 'uneven temperature inside',
    source: SOURCE,
  },
  ({ mass, specificHeat, conductance }) => (mass * specificHeat) / conductance,
);

/** Temperature of a lump at a time. */
export const lumpTemperature = law(
  {
    id: 'lump-temperature',
    title: 'Temperature of a heated lump in time',
    equation: 'T = Ta + (P / G)(1 − e^(−t G / C)) + (T0 − Ta) e^(−t G / C)',
    args: { ambient, power, conductance, initial, heatCapacity, time: { symbol: 't', is: 'time', unit: 's', from: 0 } },
    gives: { symbol: 'T', is: 'temperature', unit: 'K' },
    validFor: VALID,
    leavesOut: 'uneven temperature inside, coefficients that change with temperature',
    source: SOURCE,
  },
  ({ ambient, power, conductance, initial, heatCapacity, time }) => {
    const kept = Math.exp((-time * conductance) / heatCapacity);
    return ambient + (power / conductance) * (1 - kept) + (initial - ambient) * kept;
  },
);

/** Time until a lump reaches a temperature; infinite when it never does. */
export const timeToTemperature = law(
  {
    id: 'time-to-temperature',
    title: 'Time until a heated lump reaches a temperature',
    equation: 't = (C / G) · ln((Ta + P/G − T0) / (Ta + P/G − T))',
    args: {
      ambient,
      power,
      conductance,
      initial,
      heatCapacity,
      target: { symbol: 'T', is: 'temperature to reach', unit: 'K', above: 0 },
    },
    gives: { symbol: 't', is: 'time; infinite when the temperature is never reached', unit: 's' },
    validFor: VALID,
    leavesOut: 'uneven temperature inside, coefficients that change with temperature',
    source: SOURCE,
  },
  ({ ambient, power, conductance, initial, heatCapacity, target }) => {
    const end = ambient + power / conductance;
    const ratio = (end - initial) / (end - target);
    return ratio >= 1 ? (heatCapacity / conductance) * Math.log(ratio) : Number.POSITIVE_INFINITY;
  },
);

/** Biot number: below 0.1 one temperature describes the lump. */
export const biotNumber = law(
  {
    id: 'biot-number',
    title: 'Biot number of a lump',
    equation: 'Bi = h L / k',
    args: {
      coefficient: { symbol: 'h', is: 'heat-transfer coefficient', unit: 'W/(m²·K)', above: 0 },
      length: { symbol: 'L', is: 'volume over surface', unit: 'm', above: 0 },
      conductivity: { symbol: 'k', is: 'conductivity of the solid', unit: 'W/(m·K)', above: 0 },
    },
    gives: { symbol: 'Bi', is: 'Biot number', unit: '1' },
    validFor: 'any solid',
    leavesOut: 'nothing; it is a definition',
    source: SOURCE,
  },
  ({ coefficient, length, conductivity }) => (coefficient * length) / conductivity,
);
