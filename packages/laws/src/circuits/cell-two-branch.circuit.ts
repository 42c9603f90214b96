import { circuit } from './circuit.ts';

/** A cell with a fast and a slow branch, loaded for 1000 s, then relieved. */
export const cellTwoBranch = circuit({
  id: 'cell-two-branch',
  title: 'Cell of 3.80342 V with two branches: 0.85 A for 1000 s, then 0.2 A',
  netlist: `
VC c 0 3.80342
RS c x 0.07446
R1 x y 0.04669
C1 x y 702.7 IC=0
R2 y t 0.04984
C2 y t 4475 IC=0
IL t 0 PWL(0 0.85 1000 0.85 1000.001 0.2 3000 0.2)
.options reltol=1e-6
.tran 1 1301 0 0.5 UIC
`,
  measures: {
    at1: { of: 'v(t)', take: 'value', at: 1 },
    at10: { of: 'v(t)', take: 'value', at: 10 },
    at100: { of: 'v(t)', take: 'value', at: 100 },
    at999: { of: 'v(t)', take: 'value', at: 999 },
    fastLoaded: { of: 'v(x)', minus: 'v(y)', take: 'value', at: 1000 },
    fastRelieved: { of: 'v(x)', minus: 'v(y)', take: 'value', at: 1030 },
    slowLoaded: { of: 'v(y)', minus: 'v(t)', take: 'value', at: 1000 },
    slowRelieved: { of: 'v(y)', minus: 'v(t)', take: 'value', at: 1300 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 2632,
    results: {
      at1: 3.7387481,
      at10: 3.72784553,
      at100: 3.6870186,
      at999: 3.65855904,
      fastLoaded: 0.0396865,
      fastRelieved: 0.021500875,
      slowLoaded: 0.0418856077,
      slowRelieved: 0.0182831043,
    },
  },
});
