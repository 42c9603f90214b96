import { circuit } from './circuit.ts';

/** A small can pulsed so slowly that its current curves: the period is twice L/R. */
export const legCoarsePulses = circuit({
  id: 'leg-coarse-pulses',
  title: 'Leg with two switches: 3 V, 1 kHz, half duty, into 0.682 ohm, 0.34 mH and 0.3 V',
  netlist: `
VS pos 0 3
VG g 0 PULSE(0 5 0 1n 1n 499.999u 1m)
V5 five 0 5
.model BR SW(Ron=1m Roff=1Meg Vt=2.5 Vh=0)
SAH pos a g 0 BR
SAL a 0 five g BR
* The switch that conducts is part of the 0.682 ohm.
RM a m 0.681
LM m n 0.34m IC=0.7
VE n 0 0.3
.options reltol=1e-6
.tran 1u 8.01m 0 2u UIC
`,
  measures: {
    mean: { of: 'i(lm)', take: 'mean', from: 6e-3, to: 8e-3 },
    max: { of: 'i(lm)', take: 'max', from: 6e-3, to: 8e-3 },
    min: { of: 'i(lm)', take: 'min', from: 6e-3, to: 8e-3 },
    rms: { of: 'i(lm)', take: 'rms', from: 6e-3, to: 8e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 4487,
    results: {
      mean: 1.75953073,
      max: 2.7784606,
      min: 0.740600731,
      rms: 1.86129576,
    },
  },
});
