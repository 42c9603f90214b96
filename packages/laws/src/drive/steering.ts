/** Steering actuators: the on/off motor held against its stop, and the hobby servo. */
import { COPPER_COEFFICIENT } from '../conductors/wire.ts';
import { COPPER_REFERENCE } from '../constants.ts';
import { law } from '../law.ts';

const HOLD_VOLTAGE = { symbol: 'V', is: 'supply voltage less bridge drop', unit: 'V', from: 0 } as const;
const HOLD_DUTY = { symbol: 'D', is: 'duty while holding', unit: '1', from: 0, to: 1 } as const;
const RESISTANCE = {
  symbol: 'R',
  is: 'winding resistance at its temperature, with leads',
  unit: 'Ω',
  above: 0,
} as const;

/** Current of a steering motor held at its stop. */
export const holdCurrent = law(
  {
    id: 'hold-current',
    title: 'Current of a steering motor held at its stop',
    equation: 'I = D·V/R',
    args: { voltage: HOLD_VOLTAGE, duty: HOLD_DUTY, resistance: RESISTANCE },
    gives: { symbol: 'I', is: 'motor current', unit: 'A' },
    validFor: 'a stalled rotor, slow decay, ripple small against the mean',
    leavesOut: 'a slipping clutch, which lets the motor turn',
    source: "Ohm's law at standstill",
  },
  ({ voltage, duty, resistance }) => (duty * voltage) / resistance,
);

/** Heat of a steering motor held at its stop, averaged over the share of time it is held. */
export const holdHeat = law(
  {
    id: 'hold-heat',
    title: 'Heat of a steering motor held at its stop',
    equation: 'P = s·(D·V)²/R',
    args: {
      voltage: HOLD_VOLTAGE,
      duty: HOLD_DUTY,
      resistance: RESISTANCE,
      share: { symbol: 's', is: 'share of the time spent holding', unit: '1', from: 0, to: 1 },
    },
    gives: { symbol: 'P', is: 'mean heat', unit: 'W' },
    validFor: 'all of the power is heat, since nothing moves; ripple small against the mean',
    leavesOut: 'the dash to the stop at full duty',
    source: "Joule's law at standstill",
  },
  ({ voltage, duty, resistance, share }) => (share * (duty * voltage) ** 2) / resistance,
);

/** Temperature of a winding or coil held for long at constant voltage: it cools itself as its resistance rises. */
export const heldCoilTemperature = law(
  {
    id: 'held-coil-temperature',
    title: 'Steady temperature of a coil at constant voltage',
    equation: 'T = Ta + x, α·x² + (1 + α(Ta − 293.15 K))·x = Rth·V²/R20, the positive root',
    args: {
      voltage: { symbol: 'V', is: 'mean voltage at the coil (duty times supply)', unit: 'V', from: 0 },
      resistance20: { symbol: 'R20', is: 'resistance at 20 °C', unit: 'Ω', above: 0 },
      thermalResistance: { symbol: 'Rth', is: 'thermal resistance winding to air', unit: 'K/W', above: 0 },
      ambient: { symbol: 'Ta', is: 'air temperature', unit: 'K', from: 233, to: 373 },
    },
    gives: { symbol: 'T', is: 'winding temperature', unit: 'K' },
    validFor: 'constant voltage, held for several thermal time constants',
    leavesOut: 'series resistance outside the coil, a current limit (which makes it a constant-current coil)',
    source: 'heat balance with the resistance of copper at its own temperature (IEC 60028)',
  },
  ({ voltage, resistance20, thermalResistance, ambient }) => {
    const half = (1 + COPPER_COEFFICIENT * (ambient - COPPER_REFERENCE)) / 2;
    const cold = (thermalResistance * voltage ** 2) / resistance20;
    // This form of the root keeps its digits when the rise is small.
    return ambient + cold / (half + Math.sqrt(half ** 2 + COPPER_COEFFICIENT * cold));
  },
);

/** Stall current or stall torque of a servo at another voltage. */
export const servoStallAt = law(
  {
    id: 'servo-stall-at',
    title: 'Servo stall figure at another voltage',
    equation: 'X = X0·V/V0',
    args: {
      known: { symbol: 'X0', is: 'stall current or torque printed for V0', unit: 'A or N·m', above: 0 },
      knownVoltage: { symbol: 'V0', is: 'voltage of the printed figure', unit: 'V', above: 0 },
      voltage: { symbol: 'V', is: 'voltage of use', unit: 'V', above: 0 },
    },
    gives: { symbol: 'X', is: 'stall current or torque at V', unit: 'A or N·m' },
    validFor: 'analogue servos within their rated range',
    leavesOut: 'digital current limits, drop of the internal bridge',
    source: 'stall of a brushed motor is proportional to voltage, any machines text',
  },
  ({ known, knownVoltage, voltage }) => (known * voltage) / knownVoltage,
);

/** Power that a set of servos can draw when all of them stall. */
export const servoStallPower = law(
  {
    id: 'servo-stall-power',
    title: 'Power of stalled servos',
    equation: 'P = n·V·Is',
    args: {
      count: { symbol: 'n', is: 'servos that may stall at once', unit: '1', from: 0 },
      voltage: { symbol: 'V', is: 'servo supply', unit: 'V', from: 0 },
      stallCurrent: { symbol: 'Is', is: 'stall current of one', unit: 'A', from: 0 },
    },
    gives: { symbol: 'P', is: 'power', unit: 'W' },
    validFor: 'sizing a regulator for its peak',
    leavesOut: 'the servo’s own pulsing, which keeps the mean lower',
    source: 'common practice, no source',
  },
  ({ count, voltage, stallCurrent }) => count * voltage * stallCurrent,
);

/** Counts of a pulse generator for a servo pulse. */
export const servoCounts = law(
  {
    id: 'servo-counts',
    title: 'Counts for a servo pulse',
    equation: 'c = tp·f·2^b',
    args: {
      pulse: { symbol: 'tp', is: 'pulse length', unit: 's', from: 0.0005, to: 0.0025 },
      frequency: { symbol: 'f', is: 'frame rate', unit: 'Hz', from: 40, to: 330 },
      bits: { symbol: 'b', is: 'resolution of the generator', unit: '1', from: 8, to: 32 },
    },
    gives: { symbol: 'c', is: 'counts, before rounding', unit: '1' },
    validFor: 'counters that run from 0 to 2^b − 1 in one frame',
    leavesOut: 'error of the oscillator, several per cent in cheap parts',
    source: 'definition of a pulse-width counter',
  },
  ({ pulse, frequency, bits }) => pulse * frequency * 2 ** bits,
);
