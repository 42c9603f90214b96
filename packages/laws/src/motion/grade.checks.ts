import { checkLaw } from '../check.ts';
import { GRAVITY } from '../constants.ts';
import {
  gradeAngle,
  gradeOfAngle,
  powerSlope,
  rollOffAngle,
  torqueSlope,
  tractionSlopeAll,
  tractionSlopeFront,
  tractionSlopeRear,
} from './grade.ts';

const DEG = Math.PI / 180;
const LOAD_TRANSFER =
  'static load transfer, Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (figures worked apart)';
const STREET = 'printed figures of Baldwin Street, Dunedin: 1 in 2.86, 35 %, 19°';

const shape = { wheelbase: 0.25, cgBehindFront: 0.14, cgHeight: 0.08 };
const dragged = { adhesion: 0.6, rolling: 0.05, wheelbase: 0.25, cgBehindFront: 0.12, cgHeight: 0.08 };

export const gradeChecks = [
  checkLaw(gradeAngle, [
    {
      case: '100 % is 45°',
      source: 'isosceles right triangle, exact',
      kind: 'published',
      args: { grade: 1 },
      expected: 45 * DEG,
      allowed: 1e-9,
    },
    {
      case: '57.735 % is 30°',
      source: 'half an equilateral triangle, exact',
      kind: 'published',
      args: { grade: 0.57735 },
      expected: 30 * DEG,
      allowed: 1e-5,
    },
    {
      case: '1 in 2.86',
      source: STREET,
      kind: 'published',
      args: { grade: 1 / 2.86 },
      expected: 19 * DEG,
      allowed: 0.02,
    },
    {
      case: '10 % is 5.71°',
      source: 'Meriam & Kraige, Engineering Mechanics: Dynamics, sample problem 6/1 (from memory)',
      kind: 'memory',
      args: { grade: 0.1 },
      expected: 5.71 * DEG,
      allowed: 5e-4,
    },
  ]),
  checkLaw(gradeOfAngle, [
    {
      case: '19.27° is 35 %',
      source: STREET,
      kind: 'published',
      args: { slope: 19.27 * DEG },
      expected: 0.35,
      allowed: 0.002,
    },
    {
      case: 'a tank vehicle held to 23° is held to about 4 m/s²',
      source: 'UN R111, tank vehicles, rollover stability (from memory)',
      kind: 'memory',
      args: { slope: 23 * DEG },
      expected: 4 / GRAVITY,
      allowed: 0.05,
    },
  ]),
  checkLaw(rollOffAngle, [
    {
      case: 'f 0.03 rolls off at 1.718°',
      source: 'equality of pull and resistance, Wong, Theory of Ground Vehicles, chapter 1',
      kind: 'published',
      args: { rolling: 0.03 },
      expected: 1.718 * DEG,
      allowed: 1e-3,
    },
  ]),
  checkLaw(tractionSlopeAll, [
    {
      case: 'μ 1, no drag',
      source: 'angle of friction, exact',
      kind: 'published',
      args: { adhesion: 1, rolling: 0 },
      expected: 45 * DEG,
      allowed: 1e-9,
    },
    {
      case: 'μ 0.6, f 0.05',
      source: LOAD_TRANSFER,
      kind: 'published',
      args: { adhesion: 0.6, rolling: 0.05 },
      expected: 28.81 * DEG,
      allowed: 5e-4,
    },
  ]),
  checkLaw(tractionSlopeRear, [
    {
      case: 'on a 3-4-5 slope the rear carries 0.5 · 0.8 + 0.25 · 0.6 of the weight and must pull 0.6 of it',
      source: 'moments about the front contact, worked by hand',
      kind: 'published',
      args: { adhesion: 0.6 / 0.55, rolling: 0, wheelbase: 1, cgBehindFront: 0.5, cgHeight: 0.25 },
      expected: Math.atan2(3, 4),
      allowed: 1e-9,
    },
    ...[
      [0.4, 14.41],
      [0.6, 22.58],
      [0.8, 31.05],
      [1.0, 39.47],
    ].map(
      ([adhesion = 0, degrees = 0]) =>
        ({
          case: `μ ${adhesion}, weight a little to the rear`,
          source: LOAD_TRANSFER,
          kind: 'published',
          args: { adhesion, rolling: 0, ...shape },
          expected: degrees * DEG,
          allowed: 5e-4,
        }) as const,
    ),
    {
      case: 'with drag, μ 0.6, f 0.05',
      source: LOAD_TRANSFER,
      kind: 'published',
      args: dragged,
      expected: 16.41 * DEG,
      allowed: 5e-4,
    },
  ]),
  checkLaw(tractionSlopeFront, [
    {
      case: 'on a 3-4-5 slope the front carries 0.8 · 0.8 − 0.25 · 0.6 of the weight and must pull 0.6 of it',
      source: 'moments about the rear contact, worked by hand',
      kind: 'published',
      args: { adhesion: 0.6 / 0.49, rolling: 0, wheelbase: 1, cgBehindFront: 0.2, cgHeight: 0.25 },
      expected: Math.atan2(3, 4),
      allowed: 1e-9,
    },
    {
      case: 'μ 1: 0.11 over 0.33 is one third',
      source: 'static load transfer, exact fraction by hand',
      kind: 'published',
      args: { adhesion: 1, rolling: 0, ...shape },
      expected: Math.atan(1 / 3),
      allowed: 1e-9,
    },
    {
      case: 'μ 0.6',
      source: LOAD_TRANSFER,
      kind: 'published',
      args: { adhesion: 0.6, rolling: 0, ...shape },
      expected: 12.49 * DEG,
      allowed: 5e-4,
    },
    {
      case: 'with drag, μ 0.6, f 0.05',
      source: LOAD_TRANSFER,
      kind: 'published',
      args: dragged,
      expected: 12.4 * DEG,
      allowed: 5e-4,
    },
  ]),
  checkLaw(powerSlope, [
    {
      case: '5.6 W, 3 kg, 0.4 m/s, f 0.05; put back into the road load it takes 5.600 W',
      source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, by back-substitution',
      kind: 'published',
      args: { power: 5.6, mass: 3, speed: 0.4, rolling: 0.05 },
      expected: 25.51 * DEG,
      allowed: 5e-4,
    },
    {
      case: '14 W, 3 kg, 0.8 m/s, f 0.05',
      source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (figure worked apart)',
      kind: 'published',
      args: { power: 14, mass: 3, speed: 0.8, rolling: 0.05 },
      expected: 33.59 * DEG,
      allowed: 5e-4,
    },
    {
      case: '14 W at 0.4 m/s lift 3 kg straight up, so power is not the limit',
      source: '14 W / 0.4 m/s = 35 N, more than the weight of 29.4 N',
      kind: 'published',
      args: { power: 14, mass: 3, speed: 0.4, rolling: 0.05 },
      expected: 90 * DEG,
      allowed: 1e-9,
    },
  ]),
  checkLaw(torqueSlope, [
    {
      case: 'a pull of 0.8 of the weight with f ¼ holds the 3-4-5 slope: 0.6 + 0.25 · 0.8',
      source: 'balance on an inclined plane, worked by hand',
      kind: 'published',
      args: { torque: 0.8 * 2 * 9.80665 * 0.05, radius: 0.05, mass: 2, rolling: 0.25 },
      expected: Math.atan2(3, 4),
      allowed: 1e-9,
    },
  ]),
];
