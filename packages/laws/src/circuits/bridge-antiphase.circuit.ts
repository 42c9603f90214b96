import { circuit } from './circuit.ts';

/** Four switches of 0.1 Ω; the diagonals take turns. */
export const bridgeAntiphase = circuit({
  id: 'bridge-antiphase',
  title: 'H-bridge in locked antiphase: 12 V, 20 kHz, duty 0.75, into 1 ohm, 1 mH and 4 V of back-EMF',
  netlist: `
VS pos 0 12
* What the bridge itself draws.
IQ pos 0 50m
VG g 0 PULSE(0 5 0 1n 1n 37.499u 50u)
V5 five 0 5
.model BR SW(Ron=0.1 Roff=1Meg Vt=2.5 Vh=0)
SAH pos a g 0 BR
SAL a 0 five g BR
SBH pos b five g BR
SBL b 0 g 0 BR
RM a m 1
LM m e 1m IC=1.5536
VE e b 4
.options reltol=1e-6
.tran 100n 3.01m 0 400n UIC
`,
  measures: {
    voltage: { of: 'v(a)', minus: 'v(b)', take: 'mean', from: 2e-3, to: 3e-3 },
    mean: { of: 'i(lm)', take: 'mean', from: 2e-3, to: 3e-3 },
    max: { of: 'i(lm)', take: 'max', from: 2e-3, to: 3e-3 },
    min: { of: 'i(lm)', take: 'min', from: 2e-3, to: 3e-3 },
    rms: { of: 'i(lm)', take: 'rms', from: 2e-3, to: 3e-3 },
    supply: { of: 'i(vs)', take: 'mean', from: 2e-3, to: 3e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 10530,
    results: {
      voltage: 5.66666199,
      mean: 1.66668424,
      max: 1.77862728,
      min: 1.55361985,
      rms: 1.66794926,
      supply: -0.883787862,
    },
  },
});
