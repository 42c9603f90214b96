import { checkLaw } from '../check.ts';
import {
  lockedRotorResistance,
  motorConstantFromNoLoad,
  motorConstantFromStall,
  motorConstantGap,
  motorCurrentAtSpeed,
  motorCurrentAtTorque,
  motorNoLoadSpeed,
  motorSpeedAtTorque,
  motorStallCurrent,
  motorStallTorque,
  motorTorqueAtCurrent,
} from './motor.ts';

/** One turn per minute [rad/s]. */
const RPM = Math.PI / 30;
const F0816 = 'FAULHABER 0816 … SR data sheet';
const F1331 = 'FAULHABER 1331 T … SR data sheet';
const CANS = 'Mabuchi catalogue, FA-130RA and RS-540SH rows, from memory';
const RE40 = 'maxon RE 40, part 148867, catalogue page, from memory';
const KIT = 'kit sheet of a 12 V RS-540 class motor, posted 2007';

export const motorChecks = [
  checkLaw(lockedRotorResistance, [
    {
      case: '5 V drives 10 A through the locked rotor',
      source: 'Physics Forums thread 796644, locked rotor and light run',
      kind: 'published',
      args: { voltage: 5, current: 10, leadResistance: 0 },
      expected: 0.5,
      allowed: 1e-6,
    },
    {
      case: '1.2 V and 1.1 A across 90 mΩ of leads: 1.0909 − 0.09 by hand',
      source: "Ohm's law, two resistances in series",
      kind: 'published',
      args: { voltage: 1.2, current: 1.1, leadResistance: 0.09 },
      expected: 1.0009,
      allowed: 1e-4,
    },
  ]),
  checkLaw(motorConstantFromNoLoad, [
    {
      case: '12 V type: printed 8.8 mN·m/A from 12 600 rpm at 3.9 mA through 101.8 Ω',
      source: F0816,
      kind: 'published',
      args: { voltage: 12, resistance: 101.8, noLoadCurrent: 0.0039, noLoadSpeed: 12_600 * RPM },
      expected: 8.8e-3,
      allowed: 0.003,
    },
    {
      case: '6 V type: printed 5.35 mN·m/A from 10 600 rpm',
      source: F1331,
      kind: 'published',
      args: { voltage: 6, resistance: 2.83, noLoadCurrent: 0.022, noLoadSpeed: 10_600 * RPM },
      expected: 5.35e-3,
      allowed: 0.001,
    },
  ]),
  checkLaw(motorConstantFromStall, [
    {
      case: '9 V type: printed 6.19 mN·m/A from 1.15 mN·m at 9 V/47 Ω',
      source: F0816,
      kind: 'published',
      args: { stallTorque: 1.15e-3, stallCurrent: 9 / 47, noLoadCurrent: 0.0057 },
      expected: 6.19e-3,
      allowed: 0.004,
    },
  ]),
  checkLaw(motorConstantGap, [
    {
      case: 'coreless motor: 5.35 mN·m/A against 0.56 mV/rpm, alike by energy balance',
      source: `${F1331}; kT = kE in SI units`,
      kind: 'published',
      args: { fromStall: 5.35e-3, fromNoLoad: 0.56e-3 / RPM },
      expected: 1,
      allowed: 0.005,
    },
    {
      case: '1.5 V toy can: its catalogue efficiency 0.43 W/(1.5 V · 0.66 A) falls short of (1 − √(0.2/2.2))² by the same share',
      source: CANS,
      kind: 'memory',
      args: { fromStall: 2.55e-3 / 2, fromNoLoad: 1.431e-3 },
      expected: 0.43 / (1.5 * 0.66) / (1 - Math.sqrt(0.2 / 2.2)) ** 2,
      allowed: 0.01,
    },
  ]),
  checkLaw(motorNoLoadSpeed, [
    {
      case: '6 V type: 13 500 rpm',
      source: F0816,
      kind: 'published',
      args: { voltage: 6, resistance: 21.2, motorConstant: 4.12e-3, noLoadCurrent: 0.0083 },
      expected: 13_500 * RPM,
      allowed: 0.003,
    },
    {
      case: '12 V type: 9900 rpm',
      source: F1331,
      kind: 'published',
      args: { voltage: 12, resistance: 13.7, motorConstant: 11.4e-3, noLoadCurrent: 0.0105 },
      expected: 9900 * RPM,
      allowed: 0.005,
    },
    {
      case: '24 V, 150 W: 7580 rpm',
      source: RE40,
      kind: 'memory',
      args: { voltage: 24, resistance: 0.299, motorConstant: 30.2e-3, noLoadCurrent: 0.137 },
      expected: 7580 * RPM,
      allowed: 0.001,
    },
  ]),
  checkLaw(motorStallCurrent, [
    {
      case: '6 V over 1.7 Ω: 3.5 A',
      source: 'MIT 2.007, motor information page, 2008: RC-260RA-2670',
      kind: 'published',
      args: { voltage: 6, resistance: 1.7 },
      expected: 3.5,
      allowed: 0.015,
    },
    {
      case: '24 V, 150 W: 80.2 A',
      source: RE40,
      kind: 'memory',
      args: { voltage: 24, resistance: 0.299 },
      expected: 80.2,
      allowed: 0.002,
    },
  ]),
  checkLaw(motorStallTorque, [
    {
      case: '9 V type: 1.15 mN·m',
      source: F0816,
      kind: 'published',
      args: { voltage: 9, resistance: 47, motorConstant: 6.19e-3, noLoadCurrent: 0.0057 },
      expected: 1.15e-3,
      allowed: 0.004,
    },
    {
      case: '24 V type: 9.76 mN·m',
      source: F1331,
      kind: 'published',
      args: { voltage: 24, resistance: 52.9, motorConstant: 21.8e-3, noLoadCurrent: 0.0055 },
      expected: 9.76e-3,
      allowed: 0.002,
    },
  ]),
  checkLaw(motorCurrentAtSpeed, [
    {
      case: '7.2 V can at 14 200 rpm: 2.9 A with 0.33 Ω and 0.44 mV/rpm',
      source: 'Numazu college MIRS project, DC motor page: RS-380 class',
      kind: 'published',
      args: { voltage: 7.2, resistance: 0.33, motorConstant: 0.44e-3 / RPM, speed: 14_200 * RPM },
      expected: 2.9,
      allowed: 0.01,
    },
  ]),
  checkLaw(motorCurrentAtTorque, [
    {
      case: '1.5 V toy can at its best efficiency, 0.59 mN·m: 0.66 A',
      source: CANS,
      kind: 'memory',
      args: { torque: 0.59e-3, motorConstant: 2.55e-3 / 2, noLoadCurrent: 0.2 },
      expected: 0.66,
      allowed: 0.01,
    },
    {
      case: '0.5 N·m from a servo motor of 120 V at 6000 rpm, no friction: 2.618 A',
      source: 'Scilab textbook companion 1892, example 4.5',
      kind: 'published',
      args: { torque: 0.5, motorConstant: 0.19099, noLoadCurrent: 0 },
      expected: 2.618,
      allowed: 0.001,
    },
  ]),
  checkLaw(motorTorqueAtCurrent, [
    {
      case: '7.2 V can at its best efficiency, 13.0 A: 30.6 mN·m',
      source: CANS,
      kind: 'memory',
      args: { current: 13, motorConstant: 196e-3 / 67.6, noLoadCurrent: 2.4 },
      expected: 30.6e-3,
      allowed: 0.006,
    },
  ]),
  checkLaw(motorSpeedAtTorque, [
    {
      case: '7.2 V can at its best efficiency, 30.6 mN·m: 19 740 rpm',
      source: CANS,
      kind: 'memory',
      args: { voltage: 7.2, resistance: 7.2 / 70, motorConstant: 2.838e-3, noLoadCurrent: 2.4, torque: 30.6e-3 },
      expected: 19_740 * RPM,
      allowed: 0.006,
    },
    {
      case: '12 V kit motor at its best efficiency: 14 525 rpm at k · (6.6 A − 1 A)',
      source: `${KIT}: no load 16 800 rpm and 1 A, stall 42 A`,
      kind: 'published',
      args: { voltage: 12, resistance: 12 / 42, motorConstant: 6.6e-3, noLoadCurrent: 1, torque: 6.6e-3 * 5.6 },
      expected: 14_525 * RPM,
      allowed: 0.015,
    },
  ]),
];
