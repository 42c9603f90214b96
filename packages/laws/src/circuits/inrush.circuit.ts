import { circuit } from './circuit.ts';

/** An empty capacitor is plugged in. */
export const inrush = circuit({
  id: 'inrush',
  title: 'Inrush: 12 V through 0.1 ohm into an empty 1000 uF, plugged in after 100 us',
  netlist: `
VS pos 0 PULSE(0 12 100u 1n 1n 1 2)
RS pos c 0.1
VA c d 0
CB d 0 1000u IC=0
.options reltol=1e-6
.tran 1u 2.01m 0 0.5u UIC
`,
  measures: {
    peak: { of: 'i(va)', take: 'max', from: 100e-6, to: 2e-3 },
    rms: { of: 'i(va)', take: 'rms', from: 100e-6, to: 2e-3 },
    after100: { of: 'v(d)', take: 'value', at: 200e-6 },
    after300: { of: 'v(d)', take: 'value', at: 400e-6 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 4082,
    results: {
      peak: 119.9994,
      rms: 19.4665582,
      after100: 7.58542246,
      after300: 11.4025544,
    },
  },
});
