import { circuit } from './circuit.ts';

/** A motor at its no-load speed is switched to full reverse; the winding is short of inductance, so that the peak is clear. */
export const motorReversal = circuit({
  id: 'motor-reversal',
  title: 'Running motor reversed after 1 ms: 7.2 V behind 50 mohm, switches of 20 mohm, 0.33 ohm, 5 uH, 90.70295 mF',
  netlist: `
VB e 0 7.2
RI e pos 0.05
VG g 0 PULSE(5 0 1m 100n 100n 1 2)
V5 five 0 5
.model BR SW(Ron=20m Roff=1Meg Vt=2.5 Vh=0)
SAH pos a g 0 BR
SAL a 0 five g BR
SBH pos b five g BR
SBL b 0 g 0 BR
RM a m 0.33
LM m w 5u IC=0.5
CJ w b 90.70295m IC=6.99
BF w b I=0.5*tanh(V(w,b)/1m)
.options reltol=1e-6
.tran 100n 3.01m 0 500n UIC
`,
  measures: {
    before: { of: 'v(w)', minus: 'v(b)', take: 'value', at: 0.99e-3 },
    peak: { of: 'i(lm)', take: 'min', from: 1e-3, to: 3e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 6065,
    results: {
      before: 6.98999997,
      peak: -33.7099783,
    },
  },
});
