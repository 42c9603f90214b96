import { circuit } from './circuit.ts';

/** A capacitor carries a constant-power load alone. */
export const holdUp = circuit({
  id: 'hold-up',
  title: 'Hold-up: 2200 uF at 12 V feeding a constant 5 W',
  netlist: `
CB bus 0 2200u IC=12
BP bus 0 I=5/max(V(bus),1)
.options reltol=1e-6
.tran 10u 20m 0 10u UIC
`,
  measures: {
    to9: { of: 'v(bus)', take: 'crossing', level: 9, from: 0 },
    to8: { of: 'v(bus)', take: 'crossing', level: 8, from: 0 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 2011,
    results: {
      to9: 0.0138600004,
      to8: 0.0176000007,
    },
  },
});
