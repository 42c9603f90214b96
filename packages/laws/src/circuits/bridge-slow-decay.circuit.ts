import { circuit } from './circuit.ts';

/** Four switches of 0.1 Ω; one leg is pulsed, the other holds its low switch on. */
export const bridgeSlowDecay = circuit({
  id: 'bridge-slow-decay',
  title: 'H-bridge in slow decay: 12 V, 20 kHz, half duty, into 1 ohm, 1 mH and 4 V of back-EMF',
  netlist: `
VS pos 0 12
* What the bridge itself draws.
IQ pos 0 50m
VG g 0 PULSE(0 5 0 1n 1n 24.999u 50u)
V5 five 0 5
.model BR SW(Ron=0.1 Roff=1Meg Vt=2.5 Vh=0)
SAH pos a g 0 BR
SAL a 0 five g BR
SBH pos b 0 five BR
SBL b 0 five 0 BR
* The current starts near its periodic trough, so that it settles within a few time constants.
RM a m 1
LM m e 1m IC=1.5916
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
    points: 10596,
    results: {
      voltage: 5.66666453,
      mean: 1.66667153,
      max: 1.74166972,
      min: 1.5916746,
      rms: 1.66723388,
      supply: -0.883547079,
    },
  },
});
