/** Copper wire: size, resistance, temperature, voltage drop. */
import { COPPER_REFERENCE } from '../constants.ts';
import { law } from '../law.ts';

/** Temperature coefficient of resistance of annealed copper at 20 °C [1/K], IEC 60028. */
export const COPPER_COEFFICIENT = 0.00393;

/** Copper resistance at a temperature: linear about 20 °C. */
export const copperResistance = law(
  {
    id: 'copper-resistance',
    title: 'Copper resistance at a temperature',
    equation: 'R = R20 · (1 + α · (T − 293.15 K))',
    args: {
      r20: { symbol: 'R20', is: 'resistance at 20 °C', unit: 'Ω', above: 0 },
      temperature: { symbol: 'T', is: 'copper temperature', unit: 'K', from: 223, to: 473 },
    },
    gives: { symbol: 'R', is: 'resistance at T', unit: 'Ω' },
    validFor: 'annealed copper, α = 0.00393 /K',
    leavesOut: 'thermal expansion, other metals',
    source: 'IEC 60028, temperature coefficient of annealed copper at 20 °C',
  },
  ({ r20, temperature }) => r20 * (1 + COPPER_COEFFICIENT * (temperature - COPPER_REFERENCE)),
);
