/** Properties of still air at the film temperature, 1 atm. */
import { GAS_CONSTANT } from '../constants.ts';
import { law } from '../law.ts';

/** Standard atmosphere [Pa], exact by definition. */
export const ATMOSPHERE = 101325;
/** Molar mass of dry air [kg/mol], U.S. Standard Atmosphere 1976. */
const MOLAR_MASS = 0.0289644;
/** Specific heat of air at constant pressure [J/(kg·K)], heat-transfer tables at 300 K. */
const SPECIFIC_HEAT = 1007;
/** Sutherland constants of air: viscosity [Pa·s], conductivity [W/(m·K)], their temperatures [K]; White, Viscous Fluid Flow, from memory. */
const REFERENCE = 273;
const VISCOSITY = 1.716e-5;
const VISCOSITY_S = 110.4;
const CONDUCTIVITY = 0.0241;
const CONDUCTIVITY_S = 194;

const SUTHERLAND = 'Sutherland’s law with the constants of White, Viscous Fluid Flow, table 1-2, from memory';
const VALID = 'dry air near 1 atm';
const temperature = { symbol: 'T', is: 'film temperature', unit: 'K', from: 220, to: 600 } as const;

function sutherland(reference: number, s: number, t: number): number {
  return (reference * (t / REFERENCE) ** 1.5 * (REFERENCE + s)) / (t + s);
}

/** Dynamic viscosity of air. */
export const airViscosity = law(
  {
    id: 'air-viscosity',
    title: 'Dynamic viscosity of air',
    equation: 'μ = 1.716e−5 Pa·s · (T / 273 K)^1.5 · (273 + 110.4) / (T / K + 110.4)',
    args: { temperature },
    gives: { symbol: 'μ', is: 'dynamic viscosity', unit: 'Pa·s' },
    validFor: VALID,
    leavesOut: 'humidity, pressure (viscosity hardly depends on either)',
    source: SUTHERLAND,
  },
  ({ temperature }) => sutherland(VISCOSITY, VISCOSITY_S, temperature),
);

/** Thermal conductivity of air. */
export const airConductivity = law(
  {
    id: 'air-conductivity',
    title: 'Thermal conductivity of air',
    equation: 'k = 0.0241 W/(m·K) · (T / 273 K)^1.5 · (273 + 194) / (T / K + 194)',
    args: { temperature },
    gives: { symbol: 'k', is: 'thermal conductivity', unit: 'W/(m·K)' },
    validFor: VALID,
    leavesOut: 'humidity, pressure',
    source: SUTHERLAND,
  },
  ({ temperature }) => sutherland(CONDUCTIVITY, CONDUCTIVITY_S, temperature),
);

/** Kinematic viscosity of air at a pressure. */
export const airKinematicViscosity = law(
  {
    id: 'air-kinematic-viscosity',
    title: 'Kinematic viscosity of air',
    equation: 'ν = μ(T) · Rgas · T / (p · 0.0289644 kg/mol)',
    args: { temperature, pressure: { symbol: 'p', is: 'air pressure', unit: 'Pa', from: 5e4, to: 1.1e5 } },
    gives: { symbol: 'ν', is: 'kinematic viscosity', unit: 'm²/s' },
    validFor: 'dry air as an ideal gas',
    leavesOut: 'humidity',
    source: `${SUTHERLAND}; ideal gas law`,
  },
  ({ temperature, pressure }) =>
    (airViscosity.bare({ temperature }) * GAS_CONSTANT * temperature) / (pressure * MOLAR_MASS),
);

/** Prandtl number of air. */
export const airPrandtl = law(
  {
    id: 'air-prandtl',
    title: 'Prandtl number of air',
    equation: 'Pr = μ(T) · 1007 J/(kg·K) / k(T)',
    args: { temperature },
    gives: { symbol: 'Pr', is: 'Prandtl number', unit: '1' },
    validFor: 'dry air, 220 to 400 K within 2 %',
    leavesOut: 'the slow rise of the specific heat above 400 K',
    source: `${SUTHERLAND}; definition of the Prandtl number`,
  },
  ({ temperature }) => (airViscosity.bare({ temperature }) * SPECIFIC_HEAT) / airConductivity.bare({ temperature }),
);
