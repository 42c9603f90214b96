import { circuit } from './circuit.ts';

/** A rested pack with one slow branch: the bus goes on sinking for a minute after the stall. */
export const packSlowSag = circuit({
  id: 'pack-slow-sag',
  title: 'Pack of 7.4 V, 60 mohm, 40 mohm with 500 F, leads 20 mohm, converter of 5 W, stall of 0.9 ohm after 1 s',
  netlist: `
VB e 0 7.4
R0 e x 0.06
R1 x y 0.04
C1 x y 500 IC=0
RL y bus 0.02
CB bus 0 10u IC=7.4
BP bus 0 I=5/max(V(bus),3)
.model BR SW(Ron=1m Roff=1Meg Vt=2.5 Vh=0.1)
VG g 0 PULSE(0 5 1 1u 1u 500 1000)
S1 bus m g 0 BR
RM m n 0.899
LM n 0 0.5m IC=0
.options reltol=1e-6
.tran 50m 200 0 50m UIC
`,
  measures: {
    before: { of: 'v(bus)', take: 'value', at: 0.99 },
    early: { of: 'v(bus)', take: 'value', at: 1.01 },
    earlyCurrent: { of: 'i(vb)', take: 'value', at: 1.01 },
    at5: { of: 'v(bus)', take: 'value', at: 5 },
    at20: { of: 'v(bus)', take: 'value', at: 20 },
    at21: { of: 'v(bus)', take: 'value', at: 21 },
    at60: { of: 'v(bus)', take: 'value', at: 60 },
    branch20: { of: 'v(x)', minus: 'v(y)', take: 'value', at: 20 },
    late: { of: 'v(bus)', take: 'value', at: 199 },
    lateCurrent: { of: 'i(vb)', take: 'value', at: 199 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 4085,
    results: {
      before: 7.34421975,
      early: 6.74005253,
      earlyCurrent: -8.23079043,
      at5: 6.68536348,
      at20: 6.55670712,
      at21: 6.55118067,
      at60: 6.46105736,
      branch20: 0.199467966,
      late: 6.44730825,
      lateCurrent: -7.93919321,
    },
  },
});
