/** The brushed permanent-magnet motor at rest and in steady running: V = R·i + k·ω, T = k·(i − I0). */
import { law } from '../law.ts';
import { CONSTANT, FREE_CURRENT, RESISTANCE, VOLTAGE } from './arguments.ts';

const STALL_CURRENT = { symbol: 'Is', is: 'stall current', unit: 'A', above: 0 } as const;

const STEADY = {
  validFor: 'steady running at constant flux; R and k at the temperature of the moment',
  leavesOut: 'armature reaction, brush drop, friction that grows with speed',
  source: 'motor makers’ catalogues, e.g. maxon, Key information, catalogue May 2009; any machines text',
} as const;

/** Resistance from a locked-rotor test, less that of the leads the voltage was measured across. */
export const lockedRotorResistance = law(
  {
    id: 'locked-rotor-resistance',
    title: 'Winding resistance from a locked-rotor test',
    equation: 'R = V/I − Rl',
    args: {
      voltage: VOLTAGE,
      current: { symbol: 'I', is: 'locked current', unit: 'A', above: 0 },
      leadResistance: { symbol: 'Rl', is: 'leads and meter inside the measured voltage', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'R', is: 'winding resistance', unit: 'Ω' },
    validFor: 'a second or so at low voltage, cold, averaged over eight or more rotor angles',
    leavesOut: 'brush drop, which makes R look larger at small current; warming during the test',
    source: "Ohm's law at standstill; definition of stall current in makers’ catalogues",
  },
  ({ voltage, current, leadResistance }) => voltage / current - leadResistance,
);

/** Motor constant from a no-load test: the one that predicts speed. */
export const motorConstantFromNoLoad = law(
  {
    id: 'motor-constant-from-no-load',
    title: 'Back-EMF constant from a no-load test',
    equation: 'k = (V − R·I0)/ω0',
    args: {
      voltage: VOLTAGE,
      resistance: RESISTANCE,
      noLoadCurrent: FREE_CURRENT,
      noLoadSpeed: { symbol: 'ω0', is: 'no-load speed of the rotor', unit: 'rad/s', above: 0 },
    },
    gives: { symbol: 'k', is: 'back-EMF constant kE', unit: 'V·s/rad' },
    ...STEADY,
    validFor: 'the motor off its gears; wheels in the air still turn the gear train',
  },
  ({ voltage, resistance, noLoadCurrent, noLoadSpeed }) => (voltage - resistance * noLoadCurrent) / noLoadSpeed,
);

/** Motor constant from a stall test: the one that predicts torque. */
export const motorConstantFromStall = law(
  {
    id: 'motor-constant-from-stall',
    title: 'Torque constant from a stall test',
    equation: 'k = Ts/(Is − I0)',
    args: {
      stallTorque: { symbol: 'Ts', is: 'stall torque at the shaft', unit: 'N·m', above: 0 },
      stallCurrent: STALL_CURRENT,
      noLoadCurrent: FREE_CURRENT,
    },
    gives: { symbol: 'k', is: 'torque constant kT', unit: 'N·m/A' },
    ...STEADY,
  },
  ({ stallTorque, stallCurrent, noLoadCurrent }) => stallTorque / (stallCurrent - noLoadCurrent),
);

/** How far torque and speed tests disagree: 1 in theory, 0.85 to 1.05 in toy cans. */
export const motorConstantGap = law(
  {
    id: 'motor-constant-gap',
    title: 'Gap between torque and back-EMF constant',
    equation: 'g = kT/kE',
    args: {
      fromStall: { symbol: 'kT', is: 'torque constant from the stall test', unit: 'N·m/A', above: 0 },
      fromNoLoad: { symbol: 'kE', is: 'back-EMF constant from the no-load test', unit: 'V·s/rad', above: 0 },
    },
    gives: { symbol: 'g', is: 'share of the electromagnetic torque that the stall test shows', unit: '1' },
    validFor: 'one motor, both tests at the same temperature; report it, do not average it away',
    leavesOut: 'which of heat, brush drop, magnet and catalogue straight line made the gap',
    source: 'kT = kE by energy balance in SI units, any machines text',
  },
  ({ fromStall, fromNoLoad }) => fromStall / fromNoLoad,
);

/** Speed without load; zero when the voltage cannot overcome the motor's own friction. */
export const motorNoLoadSpeed = law(
  {
    id: 'motor-no-load-speed',
    title: 'No-load speed',
    equation: 'ω0 = max(0, (V − R·I0)/k)',
    args: { voltage: VOLTAGE, resistance: RESISTANCE, motorConstant: CONSTANT, noLoadCurrent: FREE_CURRENT },
    gives: { symbol: 'ω0', is: 'no-load speed', unit: 'rad/s' },
    ...STEADY,
  },
  ({ voltage, resistance, motorConstant, noLoadCurrent }) =>
    Math.max(0, (voltage - resistance * noLoadCurrent) / motorConstant),
);

/** Current at standstill. */
export const motorStallCurrent = law(
  {
    id: 'motor-stall-current',
    title: 'Stall current',
    equation: 'Is = V/R',
    args: { voltage: VOLTAGE, resistance: RESISTANCE },
    gives: { symbol: 'Is', is: 'stall current', unit: 'A' },
    ...STEADY,
  },
  ({ voltage, resistance }) => voltage / resistance,
);

/** Shaft torque at standstill. */
export const motorStallTorque = law(
  {
    id: 'motor-stall-torque',
    title: 'Stall torque',
    equation: 'Ts = k·(V/R − I0)',
    args: { voltage: VOLTAGE, resistance: RESISTANCE, motorConstant: CONSTANT, noLoadCurrent: FREE_CURRENT },
    gives: { symbol: 'Ts', is: 'stall torque at the shaft', unit: 'N·m' },
    ...STEADY,
  },
  ({ voltage, resistance, motorConstant, noLoadCurrent }) => motorConstant * (voltage / resistance - noLoadCurrent),
);

/** Current at a speed; negative when the shaft is driven faster than the voltage would. */
export const motorCurrentAtSpeed = law(
  {
    id: 'motor-current-at-speed',
    title: 'Motor current at a speed',
    equation: 'i = (V − k·ω)/R',
    args: {
      voltage: VOLTAGE,
      resistance: RESISTANCE,
      motorConstant: CONSTANT,
      speed: { symbol: 'ω', is: 'rotor speed', unit: 'rad/s' },
    },
    gives: { symbol: 'i', is: 'motor current', unit: 'A' },
    ...STEADY,
  },
  ({ voltage, resistance, motorConstant, speed }) => (voltage - motorConstant * speed) / resistance,
);

/** Current that a shaft torque asks for. */
export const motorCurrentAtTorque = law(
  {
    id: 'motor-current-at-torque',
    title: 'Motor current at a shaft torque',
    equation: 'i = I0 + T/k',
    args: {
      torque: { symbol: 'T', is: 'shaft torque', unit: 'N·m', from: 0 },
      motorConstant: CONSTANT,
      noLoadCurrent: FREE_CURRENT,
    },
    gives: { symbol: 'i', is: 'motor current', unit: 'A' },
    ...STEADY,
  },
  ({ torque, motorConstant, noLoadCurrent }) => noLoadCurrent + torque / motorConstant,
);

/** Shaft torque at a current. */
export const motorTorqueAtCurrent = law(
  {
    id: 'motor-torque-at-current',
    title: 'Shaft torque at a motor current',
    equation: 'T = k·(i − I0)',
    args: {
      current: { symbol: 'i', is: 'motor current', unit: 'A' },
      motorConstant: CONSTANT,
      noLoadCurrent: FREE_CURRENT,
    },
    gives: { symbol: 'T', is: 'shaft torque', unit: 'N·m' },
    ...STEADY,
    validFor: 'a turning rotor driven by its current; at rest friction only opposes, up to k·I0',
  },
  ({ current, motorConstant, noLoadCurrent }) => motorConstant * (current - noLoadCurrent),
);

/** Speed under a shaft torque; negative when the load would drive the motor backwards. */
export const motorSpeedAtTorque = law(
  {
    id: 'motor-speed-at-torque',
    title: 'Motor speed under a shaft torque',
    equation: 'ω = (V − R·(I0 + T/k))/k',
    args: {
      voltage: VOLTAGE,
      resistance: RESISTANCE,
      motorConstant: CONSTANT,
      noLoadCurrent: FREE_CURRENT,
      torque: { symbol: 'T', is: 'shaft torque', unit: 'N·m', from: 0 },
    },
    gives: { symbol: 'ω', is: 'rotor speed', unit: 'rad/s' },
    ...STEADY,
  },
  ({ voltage, resistance, motorConstant, noLoadCurrent, torque }) =>
    (voltage - resistance * (noLoadCurrent + torque / motorConstant)) / motorConstant,
);
