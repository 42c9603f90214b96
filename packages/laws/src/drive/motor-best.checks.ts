import { checkLaw } from '../check.ts';
import {
  electricalTimeConstant,
  mechanicalTimeConstant,
  motorBestCurrent,
  motorPeakEfficiency,
  motorPeakPower,
  motorSpeedGradient,
} from './motor-best.ts';

const RPM = Math.PI / 30;
const F0816 = 'FAULHABER 0816 … SR data sheet';
const F1331 = 'FAULHABER 1331 T … SR data sheet';
const CANS = 'Mabuchi catalogue, FA-130RA and RS-540SH rows, from memory';
const RE40 = 'maxon RE 40, part 148867, catalogue page, from memory';
const KIT = 'kit sheet of a 12 V RS-540 class motor, posted 2007';
const TUTORIAL =
  'University of Michigan, Control Tutorials for MATLAB and Simulink, DC motor speed: R = 1 Ω, L = 0.5 H, K = 0.01';

export const motorBestChecks = [
  checkLaw(motorPeakPower, [
    {
      case: '6 V type: 3.11 W',
      source: F1331,
      kind: 'published',
      args: { voltage: 6, resistance: 2.83, noLoadCurrent: 0.022 },
      expected: 3.11,
      allowed: 0.002,
    },
    {
      case: '12 V type: 2.57 W',
      source: F1331,
      kind: 'published',
      args: { voltage: 12, resistance: 13.7, noLoadCurrent: 0.0105 },
      expected: 2.57,
      allowed: 0.0025,
    },
    {
      case: '24 V type: 2.66 W',
      source: F1331,
      kind: 'published',
      args: { voltage: 24, resistance: 52.9, noLoadCurrent: 0.0055 },
      expected: 2.66,
      allowed: 0.002,
    },
  ]),
  checkLaw(motorPeakEfficiency, [
    {
      case: '6 V type: 81 %',
      source: F1331,
      kind: 'published',
      args: { noLoadCurrent: 0.022, stallCurrent: 6 / 2.83, gap: 1 },
      expected: 0.81,
      allowed: 0.01,
    },
    {
      case: '9 V type: 69 %',
      source: F0816,
      kind: 'published',
      args: { noLoadCurrent: 0.0057, stallCurrent: 9 / 47, gap: 1 },
      expected: 0.69,
      allowed: 0.01,
    },
    {
      case: '12 V kit motor: 71 %',
      source: KIT,
      kind: 'published',
      args: { noLoadCurrent: 1, stallCurrent: 42, gap: 1 },
      expected: 0.71,
      allowed: 0.01,
    },
    {
      case: '1.5 V toy can, whose torque constant is 0.891 of its back-EMF constant: 0.43 W of 1.5 V · 0.66 A',
      source: CANS,
      kind: 'memory',
      args: { noLoadCurrent: 0.2, stallCurrent: 2.2, gap: 1.275 / 1.431 },
      expected: 0.43 / (1.5 * 0.66),
      allowed: 0.01,
    },
  ]),
  checkLaw(motorBestCurrent, [
    {
      case: '12 V kit motor: 6.6 A',
      source: KIT,
      kind: 'published',
      args: { noLoadCurrent: 1, stallCurrent: 42 },
      expected: 6.6,
      allowed: 0.02,
    },
    {
      case: '3 V toy can: 0.56 A',
      source: CANS,
      kind: 'memory',
      args: { noLoadCurrent: 0.15, stallCurrent: 2.1 },
      expected: 0.56,
      allowed: 0.005,
    },
    {
      case: '7.2 V can: 13.0 A',
      source: CANS,
      kind: 'memory',
      args: { noLoadCurrent: 2.4, stallCurrent: 70 },
      expected: 13,
      allowed: 0.005,
    },
  ]),
  checkLaw(motorSpeedGradient, [
    {
      case: '6 V type: 946 rpm per mN·m',
      source: F1331,
      kind: 'published',
      args: { resistance: 2.83, motorConstant: 5.35e-3 },
      expected: 946 * RPM * 1000,
      allowed: 0.003,
    },
    {
      case: '12 V type: 12 553 rpm per mN·m',
      source: F0816,
      kind: 'published',
      args: { resistance: 101.8, motorConstant: 8.8e-3 },
      expected: 12_553 * RPM * 1000,
      allowed: 0.001,
    },
  ]),
  checkLaw(mechanicalTimeConstant, [
    {
      case: '6 V type with its rotor of 0.71 g·cm²: 7 ms',
      source: F1331,
      kind: 'published',
      args: { resistance: 2.83, inertia: 0.71e-7, motorConstant: 5.35e-3 },
      expected: 7e-3,
      allowed: 0.01,
    },
    {
      case: '24 V, 150 W with its rotor of 142 g·cm²: 4.67 ms',
      source: RE40,
      kind: 'memory',
      args: { resistance: 0.299, inertia: 142e-7, motorConstant: 30.2e-3 },
      expected: 4.67e-3,
      allowed: 0.005,
    },
  ]),
  checkLaw(electricalTimeConstant, [
    {
      case: 'the slow pole −2.0025 /s of the tutorial motor, which hardly turns, is R/L',
      source: TUTORIAL,
      kind: 'published',
      args: { inductance: 0.5, resistance: 1 },
      expected: 1 / 2.0025,
      allowed: 0.002,
    },
  ]),
];
