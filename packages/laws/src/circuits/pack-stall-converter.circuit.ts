import { circuit } from './circuit.ts';

/** The coincidence that resets a board: a soft pack, a converter that draws constant power, a motor that stalls. */
export const packStallConverter = circuit({
  id: 'pack-stall-converter',
  title: 'Pack of 7.4 V behind 0.15 ohm, converter of 5.5556 W, motor of 1 ohm and 0.5 mH that stalls after 2 ms',
  netlist: `
VB e 0 7.4
RI e bus 0.15
CB bus 0 470u IC=7.4
BP bus 0 I=5.5556/max(V(bus),3)
.model BR SW(Ron=1m Roff=1Meg Vt=2.5 Vh=0.1)
VG g 0 PULSE(0 5 2m 1u 1u 50m 100m)
S1 bus m g 0 BR
RM m n 0.999
LM n 0 0.5m IC=0
.options reltol=1e-6
.tran 1u 20m 0 5u UIC
`,
  measures: {
    before: { of: 'v(bus)', take: 'value', at: 1.99e-3 },
    beforeCurrent: { of: 'i(vb)', take: 'value', at: 1.99e-3 },
    after: { of: 'v(bus)', take: 'value', at: 19.9e-3 },
    afterCurrent: { of: 'i(vb)', take: 'value', at: 19.9e-3 },
    motor: { of: 'i(lm)', take: 'value', at: 19.9e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 4084,
    results: {
      before: 7.28561739,
      beforeCurrent: -0.762550761,
      after: 6.32012612,
      afterCurrent: -7.19915921,
      motor: 6.32012612,
    },
  },
});
