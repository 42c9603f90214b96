/** The laws of the motor in time against a motor made of circuit elements: back-EMF in volts, inertia as a capacitor. */
import { checkLaw, checkSubject } from '../check.ts';
import { brakeCurrent, brakeTorque, pluggingCurrent } from '../drive/braking.ts';
import { motorCurrentAtSpeed, motorNoLoadSpeed } from '../drive/motor.ts';
import { mechanicalTimeConstant } from '../drive/motor-best.ts';
import { sourceOf } from './circuit.ts';
import { motorBraking } from './motor-braking.circuit.ts';
import { motorReversal } from './motor-reversal.circuit.ts';
import { motorSpinUp } from './motor-spin-up.circuit.ts';

const kind = 'reference library';
const rise = motorSpinUp.kept.results;
const reversal = motorReversal.kept.results;
const braking = motorBraking.kept.results;
const RISE = { source: sourceOf(motorSpinUp), kind } as const;
const REVERSAL = { source: sourceOf(motorReversal), kind } as const;
const BRAKING = { source: sourceOf(motorBraking), kind } as const;

const MOTOR = { motorConstant: 4.2e-3, resistance: 0.33 };
const INERTIA = 1.6e-6;
const FRICTION = 0.5;
/** Two switches of 50 mΩ close the loop of the shorted motor. */
const SHORT = 0.1;
/** Speed whose back-EMF is the given voltage. */
const turning = (emf: number): number => emf / MOTOR.motorConstant;

export const motorCircuitChecks = [
  checkLaw(mechanicalTimeConstant, [
    {
      case: 'time from rest to 63.2 % of the no-load speed, which the inductance moves in second order only',
      ...RISE,
      args: { ...MOTOR, inertia: INERTIA },
      expected: rise.rise,
      allowed: 5e-4,
    },
  ]),
  checkLaw(motorNoLoadSpeed, [
    {
      case: 'after 0.5 s on 7.2 V',
      ...RISE,
      args: { voltage: 7.2, ...MOTOR, noLoadCurrent: FRICTION },
      expected: turning(rise.end),
      allowed: 1e-5,
    },
  ]),
  checkLaw(motorCurrentAtSpeed, [
    {
      case: 'on its way up after 40 ms; the inductance holds the current L·k²/(R²·J) = 1 % behind',
      ...RISE,
      args: { voltage: 7.2, ...MOTOR, speed: turning(rise.running) },
      expected: rise.runningCurrent,
      allowed: 0.012,
    },
    {
      case: 'after 0.5 s the no-load current is left',
      ...RISE,
      args: { voltage: 7.2, ...MOTOR, speed: turning(rise.end) },
      expected: rise.endCurrent,
      allowed: 1e-4,
    },
  ]),
  checkLaw(pluggingCurrent, [
    {
      case: 'reversed at no-load speed behind 50 mΩ of pack and two switches of 20 mΩ; the inductance rounds the peak',
      ...REVERSAL,
      args: { voltage: 7.2, ...MOTOR, speed: turning(reversal.before), pathResistance: 0.09 },
      expected: -reversal.peak,
      allowed: 0.003,
    },
  ]),
  checkLaw(brakeCurrent, [
    {
      case: 'shorted at no-load speed; the inductance rounds the peak',
      ...BRAKING,
      args: { ...MOTOR, speed: turning(braking.before), pathResistance: SHORT },
      expected: -braking.peak,
      allowed: 0.003,
    },
    {
      case: '19 ms later; the inductance holds the current behind',
      ...BRAKING,
      args: { ...MOTOR, speed: turning(braking.at20), pathResistance: SHORT },
      expected: -braking.current20,
      allowed: 0.001,
    },
  ]),
  checkLaw(brakeTorque, [
    {
      case: '19 ms after the short: inertia times the slowing over the two milliseconds about it',
      ...BRAKING,
      args: { ...MOTOR, speed: turning(braking.at20), pathResistance: SHORT, noLoadCurrent: FRICTION },
      expected: (INERTIA * turning(braking.at19 - braking.at21)) / 2e-3,
      allowed: 0.001,
    },
  ]),
  checkSubject('shorted motor slowing to half its speed', [
    {
      case: 'from no-load speed, against friction too: an exponential towards the speed that friction would give backwards',
      ...BRAKING,
      expected: braking.half - 1e-3,
      allowed: 5e-4,
      ours: () => {
        const resistance = MOTOR.resistance + SHORT;
        const beyond = turning(FRICTION * resistance);
        const start = motorNoLoadSpeed({ voltage: 7.2, ...MOTOR, resistance, noLoadCurrent: FRICTION });
        const fall = Math.log((start + beyond) / (start / 2 + beyond));
        return mechanicalTimeConstant({ ...MOTOR, resistance, inertia: INERTIA }) * fall;
      },
    },
  ]),
];
