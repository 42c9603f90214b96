import { circuit } from './circuit.ts';

/** The pause is carried by a silicon diode above a low switch that stays on. */
export const legWithDiode = circuit({
  id: 'leg-with-diode',
  title: 'Pulsed leg with freewheel diode: 12 V, 20 kHz, half duty, switches of 0.1 ohm, into 1 ohm, 1 mH and 4 V',
  netlist: `
VS pos 0 12
VG g 0 PULSE(0 5 0 1n 1n 24.999u 50u)
V5 five 0 5
.model BR SW(Ron=0.1 Roff=1Meg Vt=2.5 Vh=0)
.model FW D(IS=1n N=1 RS=0.01)
SAH pos a g 0 BR
DAL 0 a FW
SBL b 0 five 0 BR
RM a m 1
LM m e 1m IC=1.4175
VE e b 4
.options reltol=1e-6
.tran 100n 3.01m 0 400n UIC
`,
  measures: {
    mean: { of: 'i(lm)', take: 'mean', from: 2e-3, to: 3e-3 },
    max: { of: 'i(lm)', take: 'max', from: 2e-3, to: 3e-3 },
    min: { of: 'i(lm)', take: 'min', from: 2e-3, to: 3e-3 },
    leg: { of: 'v(a)', take: 'value', at: 2.8875e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 10596,
    results: {
      mean: 1.49506684,
      max: 1.57263115,
      min: 1.41748145,
      leg: -0.561342704,
    },
  },
});
