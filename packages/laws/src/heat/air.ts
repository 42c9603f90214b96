/** Properties of still air at the film temperature, 1 atm. */
import { law } from '../law.ts';
import { conductivity, kinematicViscosity, prandtl, viscosity } from './still-air.kernel.ts';

export { ATMOSPHERE } from './still-air.kernel.ts';

const SUTHERLAND = 'Sutherland’s law with the constants of White, Viscous Fluid Flow, table 1-2, from memory';
const VALID = 'dry air near 1 atm';
const temperature = { symbol: 'T', is: 'film temperature', unit: 'K', from: 220, to: 600 } as const;

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
  ({ temperature }) => viscosity(temperature),
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
  ({ temperature }) => conductivity(temperature),
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
  ({ temperature, pressure }) => kinematicViscosity(temperature, pressure),
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
  ({ temperature }) => prandtl(temperature),
);
