/** Voltage lost in a pair of wires, and the area that keeps it in bounds. */
import { law } from '../law.ts';
import { CIRCULAR_MIL } from './wire.ts';

/** Resistivity of the marine wiring rule, 10.75 Ω·cmil/ft [Ω·m]: copper at about 30 °C (ABYC E-11). */
export const DROP_RESISTIVITY = (10.75 * CIRCULAR_MIL) / 0.3048;

const ONE_WAY = { symbol: 'l', is: 'one-way length', unit: 'm', from: 0 } as const;
const PER_METRE = {
  symbol: "r'",
  is: 'resistance of one wire per metre, at its temperature',
  unit: 'Ω/m',
  from: 0,
} as const;
const CURRENT = { symbol: 'I', is: 'current', unit: 'A', from: 0 } as const;

/** Voltage lost on the way out and back. */
export const twoWireDrop = law(
  {
    id: 'two-wire-drop',
    title: 'Voltage lost in a pair of wires',
    equation: "ΔV = 2 · l · r' · I",
    args: { length: ONE_WAY, resistancePerMetre: PER_METRE, current: CURRENT },
    gives: { symbol: 'ΔV', is: 'voltage lost, both wires', unit: 'V' },
    validFor: 'both wires alike; direct current',
    leavesOut: 'contacts and connectors, shared return wires',
    source: "Ohm's law; the factor two counts the return wire",
  },
  ({ length, resistancePerMetre, current }) => 2 * length * resistancePerMetre * current,
);

/** Heat made in a pair of wires. For a pulsed current use its root mean square. */
export const twoWireLoss = law(
  {
    id: 'two-wire-loss',
    title: 'Heat made in a pair of wires',
    equation: "P = 2 · l · r' · I²",
    args: { length: ONE_WAY, resistancePerMetre: PER_METRE, current: CURRENT },
    gives: { symbol: 'P', is: 'heat of both wires', unit: 'W' },
    validFor: 'both wires alike; root mean square current',
    leavesOut: 'contacts and connectors',
    source: "Joule's law; the factor two counts the return wire",
  },
  ({ length, resistancePerMetre, current }) => 2 * length * resistancePerMetre * current ** 2,
);

/** Copper area that keeps the loss of a pair of wires within a permitted drop. */
export const wireAreaForDrop = law(
  {
    id: 'wire-area-for-drop',
    title: 'Copper area for a permitted voltage drop',
    equation: 'A = ρ · 2 · l · I / ΔV, ρ = 10.75 Ω·cmil/ft = 1.787e-8 Ω·m',
    args: {
      length: ONE_WAY,
      current: CURRENT,
      drop: { symbol: 'ΔV', is: 'permitted drop, both wires', unit: 'V', above: 0 },
    },
    gives: { symbol: 'A', is: 'copper area of each wire', unit: 'm²' },
    validFor: 'warm copper; 3 % of the supply for what must not brown out, 10 % for the rest',
    leavesOut: 'ampacity: a short wire sized by drop alone can be too thin for its heat',
    source: 'ABYC E-11, conductor sizing by voltage drop, A[cmil] = 10.75·I·L/E',
  },
  ({ length, current, drop }) => (DROP_RESISTIVITY * 2 * length * current) / drop,
);
