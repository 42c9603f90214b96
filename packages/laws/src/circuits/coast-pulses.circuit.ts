import { circuit } from './circuit.ts';

/** Currents that stop in every pause: one against a diode of 0.4 V, one back into its supply. */
export const coastPulses = circuit({
  id: 'coast-pulses',
  title: 'Discontinuous current: 3 V, 1 kHz against a 0.4 V diode; 7.4 V, 2 kHz in fast decay into the supply',
  netlist: `
.model BR SW(Ron=1m Roff=1Meg Vt=2.5 Vh=0)
* Switch and diode have 1 mohm each, taken off the winding; a diode of almost no drop has its drop from a source.
.model ID D(IS=1p N=0.005 RS=1m)
VS1 p1 0 3
VG1 g1 0 PULSE(0 5 0 1n 1n 299.999u 1m)
S1 p1 a g1 0 BR
VF 0 f 0.4
D1 f a ID
R1 a am 1.427571
L1 am ae 340u IC=0
V1 ae 0 1.5
VS2 p2 0 7.4
VG2 g2 0 PULSE(0 5 0 1n 1n 224.999u 500u)
S2H p2 b g2 0 BR
S2L c 0 g2 0 BR
D2L 0 b ID
D2H c p2 ID
R2 b bm 1.428
L2 bm be 340u IC=0
V2 be c 3
.options reltol=1e-6
.tran 1u 6.01m 0 1u UIC
`,
  measures: {
    diodePeak: { of: 'i(l1)', take: 'max', from: 4e-3, to: 6e-3 },
    diodeMean: { of: 'i(l1)', take: 'mean', from: 4e-3, to: 6e-3 },
    diodeOff: { of: 'v(a)', take: 'value', at: 5.34e-3 },
    fastPeak: { of: 'i(l2)', take: 'max', from: 4e-3, to: 6e-3 },
    fastMean: { of: 'i(l2)', take: 'mean', from: 4e-3, to: 6e-3 },
    fastOff: { of: 'v(b)', minus: 'v(c)', take: 'value', at: 5.25e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 8737,
    results: {
      diodePeak: 0.752314468,
      diodeMean: 0.17304621,
      diodeOff: -0.403893958,
      fastPeak: 1.88257018,
      fastMean: 0.588441008,
      fastOff: -7.40907502,
    },
  },
});
