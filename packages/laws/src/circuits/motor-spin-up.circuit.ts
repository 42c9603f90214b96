import { circuit } from './circuit.ts';

/** A motor as a circuit: inertia is a capacitor of J/k², its voltage the back-EMF, friction a current that opposes. */
export const motorSpinUp = circuit({
  id: 'motor-spin-up',
  title: 'Motor from rest on 7.2 V: 0.33 ohm, 0.1 mH, 4.2 mV s, 1.6e-6 kg m2 as 90.70295 mF, friction of 0.5 A',
  netlist: `
VS pos 0 7.2
RM pos m 0.33
LM m w 0.1m IC=0
CJ w 0 90.70295m IC=0
BF w 0 I=0.5*tanh(V(w)/1m)
.options reltol=1e-6
.tran 10u 501m 0 100u UIC
`,
  measures: {
    rise: { of: 'v(w)', take: 'crossing', level: 4.446997, from: 0 },
    end: { of: 'v(w)', take: 'value', at: 0.5 },
    endCurrent: { of: 'i(lm)', take: 'value', at: 0.5 },
    peak: { of: 'i(lm)', take: 'max', from: 1e-4, to: 0.1 },
    running: { of: 'v(w)', take: 'value', at: 0.04 },
    runningCurrent: { of: 'i(lm)', take: 'value', at: 0.04 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 5090,
    results: {
      rise: 0.0299400861,
      end: 7.03499967,
      endCurrent: 0.500001019,
      peak: 21.0349286,
      running: 5.19213808,
      runningCurrent: 6.14214122,
    },
  },
});
