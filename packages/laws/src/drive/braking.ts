/** A motor made to stop: reversed, shorted, or creeping down a slope with its terminals joined. */
import { law } from '../law.ts';
import { CONSTANT, FREE_CURRENT, RESISTANCE, VOLTAGE } from './arguments.ts';

const SPEED = { symbol: 'ω', is: 'rotor speed', unit: 'rad/s', from: 0 } as const;
const PATH = { symbol: 'Rb', is: 'bridge, leads and pack in the loop', unit: 'Ω', from: 0 } as const;
const TEXT = 'V = R·i + k·ω with the voltage reversed or zero, any machines text';

/** Current at the moment a spinning motor is reversed: near twice the stall current. */
export const pluggingCurrent = law(
  {
    id: 'plugging-current',
    title: 'Current on reversing a spinning motor',
    equation: 'i = (V + k·ω)/(R + Rb)',
    args: { voltage: VOLTAGE, motorConstant: CONSTANT, speed: SPEED, resistance: RESISTANCE, pathResistance: PATH },
    gives: { symbol: 'i', is: 'current', unit: 'A' },
    validFor: 'the first instant after the current has built up, full duty backwards',
    leavesOut: 'current limit of the bridge, sag beyond Rb, lasting weakening of magnets by such a current',
    source: TEXT,
  },
  ({ voltage, motorConstant, speed, resistance, pathResistance }) =>
    (voltage + motorConstant * speed) / (resistance + pathResistance),
);

/** Current of a spinning motor whose terminals are joined. */
export const brakeCurrent = law(
  {
    id: 'brake-current',
    title: 'Current of a shorted motor',
    equation: 'i = k·ω/(R + Rb)',
    args: { motorConstant: CONSTANT, speed: SPEED, resistance: RESISTANCE, pathResistance: PATH },
    gives: { symbol: 'i', is: 'braking current', unit: 'A' },
    validFor: 'terminals joined through switches that conduct both ways',
    leavesOut: 'a diode in the loop, whose drop leaves no braking near standstill',
    source: TEXT,
  },
  ({ motorConstant, speed, resistance, pathResistance }) => (motorConstant * speed) / (resistance + pathResistance),
);

/** Torque with which a shorted motor resists turning. */
export const brakeTorque = law(
  {
    id: 'brake-torque',
    title: 'Braking torque of a shorted motor',
    equation: 'T = k²·ω/(R + Rb) + k·I0',
    args: {
      motorConstant: CONSTANT,
      speed: SPEED,
      resistance: RESISTANCE,
      pathResistance: PATH,
      noLoadCurrent: FREE_CURRENT,
    },
    gives: { symbol: 'T', is: 'torque against the rotation, at the motor shaft', unit: 'N·m' },
    validFor: 'turning rotor, terminals joined',
    leavesOut: 'losses of the gear train, which help',
    source: TEXT,
  },
  ({ motorConstant, speed, resistance, pathResistance, noLoadCurrent }) =>
    (motorConstant ** 2 * speed) / (resistance + pathResistance) + motorConstant * noLoadCurrent,
);

/** Road speed at which a shorted motor lets a vehicle creep down a slope: a brake made of copper never quite holds. */
export const creepSpeed = law(
  {
    id: 'creep-speed',
    title: 'Creep of a shorted motor on a slope',
    equation: 'v = max(0, F·r·ηb/N − k·I0)·((R + Rb)/k²)·(r/N)',
    args: {
      force: { symbol: 'F', is: 'gravity along the slope less rolling resistance, for one motor', unit: 'N', from: 0 },
      wheelRadius: { symbol: 'r', is: 'rolling radius', unit: 'm', above: 0 },
      ratio: { symbol: 'N', is: 'motor speed over wheel speed', unit: '1', above: 0 },
      backEfficiency: { symbol: 'ηb', is: 'efficiency of the train from wheel to motor', unit: '1', from: 0, to: 1 },
      motorConstant: CONSTANT,
      noLoadCurrent: FREE_CURRENT,
      resistance: RESISTANCE,
      pathResistance: PATH,
    },
    gives: { symbol: 'v', is: 'creep speed; zero when the motor’s own friction holds', unit: 'm/s' },
    validFor: 'terminals joined through switches that conduct both ways, wheels that do not slip',
    leavesOut: 'friction of the train at rest, which often holds it; diodes in the loop',
    source: 'k²·ω/R = torque of the slope at the motor, any machines text',
  },
  ({ force, wheelRadius, ratio, backEfficiency, motorConstant, noLoadCurrent, resistance, pathResistance }) => {
    const torque = (force * wheelRadius * backEfficiency) / ratio - motorConstant * noLoadCurrent;
    const speed = (Math.max(0, torque) * (resistance + pathResistance)) / motorConstant ** 2;
    return (speed * wheelRadius) / ratio;
  },
);
