import { checkLaw } from '../check.ts';
import { barthFactor, lewisBendingStress, lewisFormFactor, toothForce } from './tooth.ts';

const SHIGLEY = "Budynas and Nisbett, Shigley's Mechanical Engineering Design, example 14-1, from memory";
const LEWIS = "Lewis's equation for 20° full depth, y = 0.154 − 0.912/z, Khurmi and Gupta, Machine Design, from memory";
const INCH = 0.0254;
const POUND = 4.4482216;
const PSI = POUND / INCH ** 2;
const FEET_A_MINUTE = 0.3048 / 60;

export const toothChecks = [
  checkLaw(toothForce, [
    {
      case: '16 teeth of pitch 8/in carrying 12.7 hp at 1200 rpm: 33 000 · 12.7/628 lbf',
      source: SHIGLEY,
      kind: 'memory',
      args: { torque: (12.7 * 745.7) / (40 * Math.PI), module: INCH / 8, teeth: 16 },
      expected: ((33_000 * 12.7) / 628) * POUND,
      allowed: 0.002,
    },
  ]),
  checkLaw(lewisFormFactor, [
    {
      case: '12 teeth',
      source: LEWIS,
      kind: 'memory',
      args: { teeth: 12 },
      expected: Math.PI * (0.154 - 0.912 / 12),
      allowed: 0.005,
    },
    {
      case: '17 teeth',
      source: LEWIS,
      kind: 'memory',
      args: { teeth: 17 },
      expected: Math.PI * (0.154 - 0.912 / 17),
      allowed: 0.05,
    },
    {
      case: '150 teeth',
      source: LEWIS,
      kind: 'memory',
      args: { teeth: 150 },
      expected: Math.PI * (0.154 - 0.912 / 150),
      allowed: 0.02,
    },
  ]),
  checkLaw(barthFactor, [
    {
      case: '628 ft/min: (1200 + 628)/1200 = 1.52',
      source: SHIGLEY,
      kind: 'memory',
      args: { pitchSpeed: 628 * FEET_A_MINUTE },
      expected: 1.52,
      allowed: 0.003,
    },
  ]),
  checkLaw(lewisBendingStress, [
    {
      case: '669 lbf on teeth of pitch 8/in, face 1.5 in, Y 0.296, Kv 1.52: 18.33 kpsi',
      source: SHIGLEY,
      kind: 'memory',
      args: { force: 669 * POUND, module: INCH / 8, faceWidth: 1.5 * INCH, formFactor: 0.296, velocityFactor: 1.52 },
      expected: 18_330 * PSI,
      allowed: 0.002,
    },
  ]),
];
