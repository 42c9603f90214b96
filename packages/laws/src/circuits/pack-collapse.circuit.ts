import { circuit } from './circuit.ts';

/** The power asked of two packs rises by 100 W a second until their buses collapse; one of them also feeds a stalled motor. */
export const packCollapse = circuit({
  id: 'pack-collapse',
  title: 'Packs of 7.4 V behind 0.15 ohm under a power that rises by 100 W a second, alone and beside 1 ohm',
  netlist: `
VB e 0 7.4
VP p 0 PWL(0 0 1 100)
RA e alone 0.15
CA alone 0 10u IC=7.4
BA alone 0 I=V(p)/max(V(alone),2.5)
RS e shared 0.15
RM shared 0 1
CS shared 0 10u IC=6.43
BS shared 0 I=V(p)/max(V(shared),2.5)
.options reltol=1e-6
.tran 1m 1 0 0.2m UIC
`,
  measures: {
    alone: { of: 'v(alone)', take: 'crossing', level: 3.5, from: 0 },
    shared: { of: 'v(shared)', take: 'crossing', level: 3, from: 0 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 5157,
    results: {
      alone: 0.912934149,
      shared: 0.793860031,
    },
  },
});
