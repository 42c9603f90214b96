import { checkLaw } from '../check.ts';
import { brakeCurrent, brakeTorque, creepSpeed, pluggingCurrent } from './braking.ts';

const RPM = Math.PI / 30;
const RE40 = 'maxon RE 40, part 148867, catalogue page, from memory: 24 V, 7580 rpm, 137 mA, stall 80.2 A';
const F1331 = 'FAULHABER 1331 T … SR data sheet, 006 type: 946 rpm per mN·m, friction torque 0.12 mN·m';
const BIG = { motorConstant: 30.2e-3, resistance: 0.299, pathResistance: 0 };
const SMALL = { motorConstant: 5.35e-3, resistance: 2.83, noLoadCurrent: 0.022 };
const SLOPE = { wheelRadius: 0.03, ratio: 50, backEfficiency: 0.6 };

export const brakingChecks = [
  checkLaw(pluggingCurrent, [
    {
      case: 'reversed at no-load speed: twice the stall current less the no-load current',
      source: RE40,
      kind: 'memory',
      args: { voltage: 24, speed: 7580 * RPM, ...BIG },
      expected: 2 * 80.2 - 0.137,
      allowed: 0.003,
    },
    {
      case: 'the same through as much resistance again: half of it',
      source: RE40,
      kind: 'memory',
      args: { voltage: 24, speed: 7580 * RPM, ...BIG, pathResistance: 0.299 },
      expected: 80.2 - 0.137 / 2,
      allowed: 0.003,
    },
  ]),
  checkLaw(brakeCurrent, [
    {
      case: 'shorted at no-load speed: the stall current less the no-load current',
      source: RE40,
      kind: 'memory',
      args: { speed: 7580 * RPM, ...BIG },
      expected: 80.2 - 0.137,
      allowed: 0.003,
    },
    {
      case: 'the same through as much resistance again: half of it',
      source: RE40,
      kind: 'memory',
      args: { speed: 7580 * RPM, ...BIG, pathResistance: 0.299 },
      expected: (80.2 - 0.137) / 2,
      allowed: 0.003,
    },
  ]),
  checkLaw(brakeTorque, [
    {
      case: 'at 100 rpm: 100/946 mN·m of braking and 0.12 mN·m of friction',
      source: F1331,
      kind: 'published',
      args: { speed: 100 * RPM, ...SMALL, pathResistance: 0 },
      expected: (100 / 946 + 0.12) * 1e-3,
      allowed: 0.012,
    },
    {
      case: 'at 100 rpm through as much resistance again: half of the braking, all of the friction',
      source: F1331,
      kind: 'published',
      args: { speed: 100 * RPM, ...SMALL, pathResistance: 2.83 },
      expected: (50 / 946 + 0.12) * 1e-3,
      allowed: 0.015,
    },
  ]),
  checkLaw(creepSpeed, [
    {
      case: 'a slope that turns the motor with 1 mN·m more than its friction: 946 rpm at the motor',
      source: F1331,
      kind: 'published',
      args: { force: (1.12e-3 * 50) / (0.03 * 0.6), ...SLOPE, ...SMALL, pathResistance: 0 },
      expected: (946 * RPM * 0.03) / 50,
      allowed: 0.005,
    },
    {
      case: 'the same through as much resistance again: twice that speed',
      source: F1331,
      kind: 'published',
      args: { force: (1.12e-3 * 50) / (0.03 * 0.6), ...SLOPE, ...SMALL, pathResistance: 2.83 },
      expected: (2 * 946 * RPM * 0.03) / 50,
      allowed: 0.005,
    },
  ]),
];
