import { circuit } from './circuit.ts';

/** The filter of a step-down converter under ideal pulses; it starts on its periodic orbit, for it would ring long. */
export const stepDown = circuit({
  id: 'step-down',
  title: 'Step-down converter: 50 V pulses of duty 0.4 at 20 kHz into 400 uH, 100 uF and 20 ohm',
  netlist: `
VP p 0 PULSE(0 50 0 1n 1n 19.999u 50u)
L1 p o 400u IC=0.25
C1 o 0 100u IC=19.9875
RL o 0 20
.options reltol=1e-6
.tran 100n 3.01m 0 400n UIC
`,
  measures: {
    mean: { of: 'v(o)', take: 'mean', from: 2e-3, to: 3e-3 },
    max: { of: 'v(o)', take: 'max', from: 2.9e-3, to: 3e-3 },
    min: { of: 'v(o)', take: 'min', from: 2.9e-3, to: 3e-3 },
    currentMax: { of: 'i(l1)', take: 'max', from: 2.9e-3, to: 3e-3 },
    currentMin: { of: 'i(l1)', take: 'min', from: 2.9e-3, to: 3e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 9462,
    results: {
      mean: 19.9999559,
      max: 20.0445316,
      min: 19.9505643,
      currentMax: 1.75070997,
      currentMin: 0.248746762,
    },
  },
});
