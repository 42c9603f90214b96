import { bridgeAntiphase } from './bridge-antiphase.circuit.ts';
import { bridgeSlowDecay } from './bridge-slow-decay.circuit.ts';
import { cellTwoBranch } from './cell-two-branch.circuit.ts';
import type { Circuit } from './circuit.ts';
import { coastPulses } from './coast-pulses.circuit.ts';
import { holdUp } from './hold-up.circuit.ts';
import { inrush } from './inrush.circuit.ts';
import { legCoarsePulses } from './leg-coarse-pulses.circuit.ts';
import { legDeadTime } from './leg-dead-time.circuit.ts';
import { legWithDiode } from './leg-with-diode.circuit.ts';
import { motorBraking } from './motor-braking.circuit.ts';
import { motorReversal } from './motor-reversal.circuit.ts';
import { motorSpinUp } from './motor-spin-up.circuit.ts';
import { packBridgeCapacitor } from './pack-bridge-capacitor.circuit.ts';
import { packCollapse } from './pack-collapse.circuit.ts';
import { packSlowSag } from './pack-slow-sag.circuit.ts';
import { packStallConverter } from './pack-stall-converter.circuit.ts';
import { stepDown } from './step-down.circuit.ts';

/** Every circuit, for the script and the test that run them afresh. */
export const CIRCUITS: readonly Circuit[] = [
  bridgeSlowDecay,
  bridgeAntiphase,
  legCoarsePulses,
  legWithDiode,
  legDeadTime,
  coastPulses,
  packStallConverter,
  packCollapse,
  packSlowSag,
  packBridgeCapacitor,
  cellTwoBranch,
  motorSpinUp,
  motorReversal,
  motorBraking,
  inrush,
  holdUp,
  stepDown,
];
