/** Pulse-width drive of a winding: the mean voltage of each way to switch, and what the supply sees. */
import { law } from '../law.ts';
import { DUTY, FREQUENCY, SUPPLY } from './arguments.ts';

const BRIDGE_DROP = { symbol: 'Vb', is: 'drop of the bridge at this current', unit: 'V', from: 0 } as const;
const DEAD_TIME = { symbol: 'td', is: 'dead time at each edge', unit: 's', from: 0 } as const;
const DIODE = { symbol: 'Vd', is: 'forward drop of the diode', unit: 'V', from: 0 } as const;
const TEXT = 'averages over one period, any power-electronics text';

/** Mean voltage when the current circulates through two low switches in the pause (slow decay, sign-magnitude). */
export const pwmMeanSlowDecay = law(
  {
    id: 'pwm-mean-slow-decay',
    title: 'Mean motor voltage, slow decay',
    equation: 'Vm = D·V − Vb',
    args: { voltage: SUPPLY, duty: DUTY, bridgeDrop: BRIDGE_DROP },
    gives: { symbol: 'Vm', is: 'mean voltage at the motor', unit: 'V' },
    validFor: 'current that never stops; a bridge whose drop is alike in both parts of the period',
    leavesOut: 'dead time (see the other forms), current that stops in the pause',
    source: TEXT,
  },
  ({ voltage, duty, bridgeDrop }) => duty * voltage - bridgeDrop,
);

/** Mean voltage when the bridge reverses in the pause (locked antiphase). */
export const pwmMeanAntiphase = law(
  {
    id: 'pwm-mean-antiphase',
    title: 'Mean motor voltage, locked antiphase',
    equation: 'Vm = (2·D − 1)·V − Vb',
    args: { voltage: SUPPLY, duty: DUTY, bridgeDrop: BRIDGE_DROP },
    gives: { symbol: 'Vm', is: 'mean voltage at the motor, negative backwards', unit: 'V' },
    validFor: 'current flowing forwards; half duty is standstill',
    leavesOut: 'dead time, current flowing backwards, where the drop adds',
    source: TEXT,
  },
  ({ voltage, duty, bridgeDrop }) => (2 * duty - 1) * voltage - bridgeDrop,
);

/** Mean voltage of a synchronous half bridge whose dead time is bridged by a diode. */
export const pwmMeanDeadTime = law(
  {
    id: 'pwm-mean-dead-time',
    title: 'Mean leg voltage with dead time',
    equation: 'Vm = (D − td·f)·V − 2·td·f·Vd',
    args: { voltage: SUPPLY, duty: DUTY, deadTime: DEAD_TIME, frequency: FREQUENCY, diodeDrop: DIODE },
    gives: { symbol: 'Vm', is: 'mean voltage of the leg', unit: 'V' },
    validFor: 'current out of the leg, td·f below D; for current into the leg the dead time adds instead',
    leavesOut: 'resistance of the switches',
    source: TEXT,
  },
  ({ voltage, duty, deadTime, frequency, diodeDrop }) =>
    (duty - deadTime * frequency) * voltage - 2 * deadTime * frequency * diodeDrop,
);

/** Mean voltage of a leg whose pause is carried by the diode alone. */
export const pwmMeanDiodeOff = law(
  {
    id: 'pwm-mean-diode-off',
    title: 'Mean leg voltage with a diode in the pause',
    equation: 'Vm = (D − td·f)·V − (1 − D + td·f)·Vd',
    args: { voltage: SUPPLY, duty: DUTY, deadTime: DEAD_TIME, frequency: FREQUENCY, diodeDrop: DIODE },
    gives: { symbol: 'Vm', is: 'mean voltage of the leg', unit: 'V' },
    validFor: 'current out of the leg that never stops; a late switch-on counts as dead time',
    leavesOut: 'resistance of the switches',
    source: TEXT,
  },
  ({ voltage, duty, deadTime, frequency, diodeDrop }) => {
    const on = duty - deadTime * frequency;
    return on * voltage - (1 - on) * diodeDrop;
  },
);

/** Mean motor current with a resistive switch above and, in the pause, a diode above the low switch. */
export const pwmCurrentDiode = law(
  {
    id: 'pwm-current-diode',
    title: 'Mean motor current, diode in the pause',
    equation: 'I = (D·V − (1 − D)·Vd − E)/(R + Rlow + D·Rhigh)',
    args: {
      voltage: SUPPLY,
      duty: DUTY,
      diodeDrop: DIODE,
      backEmf: { symbol: 'E', is: 'back-EMF of the motor', unit: 'V', from: 0 },
      resistance: { symbol: 'R', is: 'winding resistance', unit: 'Ω', above: 0 },
      lowSwitch: { symbol: 'Rlow', is: 'on-resistance of the low switch, always on', unit: 'Ω', from: 0 },
      highSwitch: { symbol: 'Rhigh', is: 'on-resistance of the pulsed switch', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'I', is: 'mean motor current', unit: 'A' },
    validFor: 'current that never stops: the result is well above half the ripple',
    leavesOut: 'dead time, discontinuous current',
    source: TEXT,
  },
  ({ voltage, duty, diodeDrop, backEmf, resistance, lowSwitch, highSwitch }) =>
    (duty * voltage - (1 - duty) * diodeDrop - backEmf) / (resistance + lowSwitch + duty * highSwitch),
);

/** Mean current a pack gives to a motor in slow decay: less than the motor's, since the motor also draws on its own circulating current. */
export const pwmSupplyCurrent = law(
  {
    id: 'pwm-supply-current',
    title: 'Mean supply current, slow decay',
    equation: 'Ib = D·Im + Iq',
    args: {
      duty: DUTY,
      motorCurrent: { symbol: 'Im', is: 'mean motor current', unit: 'A' },
      quiescent: { symbol: 'Iq', is: 'current of the bridge itself', unit: 'A', from: 0 },
    },
    gives: { symbol: 'Ib', is: 'mean supply current', unit: 'A' },
    validFor: 'continuous current; a capacitor at the bridge makes the leads see this mean',
    leavesOut: 'switching loss; without a capacitor the leads see pulses of the full motor current',
    source: TEXT,
  },
  ({ duty, motorCurrent, quiescent }) => duty * motorCurrent + quiescent,
);

/** Mean current a pack gives to a motor in locked antiphase. */
export const pwmSupplyCurrentAntiphase = law(
  {
    id: 'pwm-supply-current-antiphase',
    title: 'Mean supply current, locked antiphase',
    equation: 'Ib = (2·D − 1)·Im + Iq',
    args: {
      duty: DUTY,
      motorCurrent: { symbol: 'Im', is: 'mean motor current', unit: 'A' },
      quiescent: { symbol: 'Iq', is: 'current of the bridge itself', unit: 'A', from: 0 },
    },
    gives: { symbol: 'Ib', is: 'mean supply current, negative when it flows back', unit: 'A' },
    validFor: 'continuous current by nature',
    leavesOut: 'switching loss, loss from the ripple, which this way of switching makes large',
    source: TEXT,
  },
  ({ duty, motorCurrent, quiescent }) => (2 * duty - 1) * motorCurrent + quiescent,
);
