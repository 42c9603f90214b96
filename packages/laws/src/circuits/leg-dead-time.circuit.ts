import { circuit } from './circuit.ts';

/** Two legs on one supply, both late by 2 µs: one with a low switch in the pause, one with its diode alone. */
export const legDeadTime = circuit({
  id: 'leg-dead-time',
  title: 'Two legs with 2 us of dead time: 6 V, 20 kHz, half duty, each into 1 ohm, 1 mH and 1.2 V',
  netlist: `
VS pos 0 6
* On from 2 to 25 us, low switch on from 27 to 50 us; the gates cross their thresholds half an edge late.
VH gh 0 PULSE(0 5 1.9995u 1n 1n 22.999u 50u)
VL gl 0 PULSE(0 5 26.9995u 1n 1n 22.999u 50u)
.model BR SW(Ron=0.1m Roff=1Meg Vt=2.5 Vh=0)
.model FW D(IS=1n N=1 RS=0.01)
SAH pos a gh 0 BR
SAL a 0 gl 0 BR
DAL 0 a FW
RA a am 1
LA am ae 1m IC=1.477
VA ae 0 1.2
SBH pos b gh 0 BR
DBL 0 b FW
RB b bm 1
LB bm be 1m IC=1.222
VB be 0 1.2
.options reltol=1e-6
.tran 100n 3.01m 0 400n UIC
`,
  measures: {
    synchronous: { of: 'v(a)', take: 'mean', from: 2e-3, to: 3e-3 },
    deadEarly: { of: 'v(a)', take: 'value', at: 2.801e-3 },
    deadLate: { of: 'v(a)', take: 'value', at: 2.826e-3 },
    diode: { of: 'v(b)', take: 'mean', from: 2e-3, to: 3e-3 },
    pause: { of: 'v(b)', take: 'value', at: 2.8385e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 13518,
    results: {
      synchronous: 2.71491066,
      deadEarly: -0.560945558,
      deadLate: -0.562814318,
      diode: 2.46046949,
      pause: -0.554583245,
    },
  },
});
