import { circuit } from './circuit.ts';

/** A capacitor at the bridge lets the pack see the mean of the pulses only. */
export const packBridgeCapacitor = circuit({
  id: 'pack-bridge-capacitor',
  title: 'Pack of 7.4 V behind 0.15 ohm, 4700 uF, leg at 20 kHz and duty 0.6 into 0.9 ohm, 0.5 mH and 1 V',
  netlist: `
VB e 0 7.4
RI e bus 0.15
CB bus 0 4700u IC=7.0755
VG g 0 PULSE(0 5 0 1n 1n 29.999u 50u)
V5 five 0 5
.model BR SW(Ron=0.1m Roff=1Meg Vt=2.5 Vh=0)
SAH bus a g 0 BR
SAL a 0 five g BR
RM a m 0.9
LM m n 0.5m IC=3.504
VE n 0 1
.options reltol=1e-6
.tran 100n 4.01m 0 500n UIC
`,
  measures: {
    bus: { of: 'v(bus)', take: 'mean', from: 3e-3, to: 4e-3 },
    pack: { of: 'i(vb)', take: 'mean', from: 3e-3, to: 4e-3 },
    motor: { of: 'i(lm)', take: 'mean', from: 3e-3, to: 4e-3 },
  },
  kept: {
    simulator: 'ngspice 45.2 (eecircuit-engine 1.8.0)',
    points: 12028,
    results: {
      bus: 7.07546443,
      pack: -2.16357047,
      motor: 3.60542054,
    },
  },
});
