import { circuit } from './circuit.ts';

/** A motor at its no-load speed is shorted through both low switches of its bridge. */
export const motorBraking = circuit({
  id: 'motor-braking',
  title: 'Running motor shorted after 1 ms: 7.2 V, switches of 50 mohm, 0.33 ohm, 5 uH, 90.70295 mF, friction 0.5 A',
  netlist: `
VS pos 0 7.2
VG g 0 PULSE(5 0 1m 100n 100n 1 2)
V5 five 0 5
.model BR SW(Ron=50m Roff=1Meg Vt=2.5 Vh=0)
SAH pos a g 0 BR
SAL a 0 five g BR
SBL b 0 five 0 BR
RM a m 0.33
LM m w 5u IC=0.5
CJ w b 90.70295m IC=6.985
BF w b I=0.5*tanh(V(w,b)/1m)
.options reltol=1e-6
.tran 1u 41m 0 5u UIC
`,
  measures: {
    before: { of: 'v(w)', minus: 'v(b)', take: 'value', at: 0.99e-3 },
    peak: { of: 'i(lm)', take: 'min', from: 1e-3, to: 3e-3 },
    half: { of: 'v(w)', minus: 'v(b)', take: 'crossing', level: 3.4925, from: 1e-3 },
    at19: { of: 'v(w)', minus: 'v(b)', take: 'value', at: 19e-3 },
    at20: { of: 'v(w)', minus: 'v(b)', take: 'value', at: 20e-3 },
    at21: { of: 'v(w)', minus: 'v(b)', take: 'value', at: 21e-3 },
    current20: { of: 'i(lm)', take: 'value', at: 20e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 8270,
    results: {
      before: 6.98499999,
      peak: -16.2089052,
      half: 0.0268906764,
      at19: 4.32411201,
      at20: 4.20917677,
      at21: 4.09715181,
      current20: -9.79185167,
    },
  },
});
