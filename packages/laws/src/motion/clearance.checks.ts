import { checkLaw } from '../check.ts';
import {
  bounceFrequency,
  breakoverAngle,
  crestClearance,
  helicalSpringRate,
  overhangAngle,
  springTravel,
  wheelRate,
} from './clearance.ts';

const DEG = Math.PI / 180;
const INCH = 0.0254;
/** Newtons in a pound-force. */
const POUND = 0.45359237 * 9.80665;
const SWEEP = 'tangent planes of ISO 612:1978, found by sweeping a line until it meets the tyre circle';
const SHIGLEY = 'Shigley, Mechanical Engineering Design, example 10-1, music wire spring (from memory)';
const HARRIS = "Harris' Shock and Vibration Handbook, static deflection chart (from memory)";

export const clearanceChecks = [
  checkLaw(overhangAngle, [
    {
      case: 'a point at axle height two radii ahead of the wheel centre: 30°',
      source: 'sine of 30°, exact',
      kind: 'published',
      args: { radius: 0.05, ahead: 0.1, height: 0.05 },
      expected: 30 * DEG,
      allowed: 1e-9,
    },
    {
      case: 'r 60, 80 ahead, 40 high',
      source: SWEEP,
      kind: 'published',
      args: { radius: 0.06, ahead: 0.08, height: 0.04 },
      expected: 32.649 * DEG,
      allowed: 1e-4,
    },
    {
      case: 'r 60, 100 ahead, 50 high',
      source: SWEEP,
      kind: 'published',
      args: { radius: 0.06, ahead: 0.1, height: 0.05 },
      expected: 30.946 * DEG,
      allowed: 1e-4,
    },
  ]),
  checkLaw(breakoverAngle, [
    {
      case: 'wheelbase 250, clearance 30 mid-way, r 60',
      source: SWEEP,
      kind: 'published',
      args: { radius: 0.06, wheelbase: 0.25, behindFront: 0.125, clearance: 0.03 },
      expected: 28.654 * DEG,
      allowed: 1e-4,
    },
    {
      case: 'belly at axle height: twice the arc sine of 60/125',
      source: 'symmetric triangle, exact',
      kind: 'published',
      args: { radius: 0.06, wheelbase: 0.25, behindFront: 0.125, clearance: 0.06 },
      expected: 2 * Math.asin(0.48),
      allowed: 1e-9,
    },
    {
      case: 'belly point 90 behind the front axle',
      source: SWEEP,
      kind: 'published',
      args: { radius: 0.06, wheelbase: 0.25, behindFront: 0.09, clearance: 0.03 },
      expected: 31.8048 * DEG,
      allowed: 1e-4,
    },
    {
      case: 'wheels shrunk to points, clearance 15 on 120: a calculator prints 28.07°',
      source: 'printed result of a breakover calculator that takes the wheels as points',
      kind: 'published',
      args: { radius: 1e-9, wheelbase: 120, behindFront: 60, clearance: 15 },
      expected: 28.07 * DEG,
      allowed: 2e-4,
    },
  ]),
  checkLaw(crestClearance, [
    {
      case: 'R 590, r 60, half the wheelbase 250: the axle line is 600 from the middle; 5-12-13',
      source: 'right triangle 5-12-13, exact',
      kind: 'published',
      args: { crest: 0.59, radius: 0.06, wheelbase: 0.5, clearance: 0.08 },
      expected: 0.6 + 0.02 - 0.59,
      allowed: 1e-9,
    },
    {
      case: 'a 20 m chord on 1000 m has a versine of 50 mm',
      source: 'railway curve tables: versine in mm = 125 · chord² / radius',
      kind: 'published',
      args: { crest: 1000, radius: 1e-6, wheelbase: 20, clearance: 0.1 },
      expected: 0.1 - 0.05,
      allowed: 1e-4,
    },
  ]),
  checkLaw(springTravel, [
    {
      case: '6.46 lb on a spring of 4.13 lb/in: 1.56 in',
      source: SHIGLEY,
      kind: 'memory',
      args: { added: 6.46 * 0.45359237, springs: 1, rate: (4.13 * POUND) / INCH },
      expected: 1.56 * INCH,
      allowed: 0.004,
    },
    {
      case: '1 kg on four springs of 490.3325 N/m: 5 mm',
      source: "Hooke's law, worked by hand with the standard weight of a kilogram",
      kind: 'published',
      args: { added: 1, springs: 4, rate: 490.3325 },
      expected: 0.005,
      allowed: 1e-9,
    },
  ]),
  checkLaw(wheelRate, [
    {
      case: 'a spring half way along its arm counts a quarter',
      source: 'virtual work: half the travel and half the force',
      kind: 'published',
      args: { rate: 800, motionRatio: 0.5 },
      expected: 200,
      allowed: 1e-9,
    },
  ]),
  checkLaw(helicalSpringRate, [
    {
      case: '0.037 in wire, 7/16 in outside, 10.5 active turns, 11.85 Mpsi: 4.13 lb/in',
      source: SHIGLEY,
      kind: 'memory',
      args: {
        wire: 0.037 * INCH,
        shear: (11.85e6 * POUND) / INCH ** 2,
        coil: 0.4005 * INCH,
        turns: 10.5,
      },
      expected: (4.13 * POUND) / INCH,
      allowed: 0.005,
    },
  ]),
  checkLaw(bounceFrequency, [
    {
      case: 'one inch of sag: 3.13 Hz',
      source: HARRIS,
      kind: 'memory',
      args: { sag: INCH },
      expected: 3.13,
      allowed: 0.002,
    },
    {
      case: 'one millimetre of sag: 15.76 Hz',
      source: HARRIS,
      kind: 'memory',
      args: { sag: 0.001 },
      expected: 15.76,
      allowed: 0.001,
    },
  ]),
];
