import { checkLaw, checkSubject } from '../check.ts';
import { manyAxleStepLimit, twoAxleStepLimit, twoAxleSteps } from './step-limit.ts';
import {
  stepAllDriven,
  stepByOwnTorque,
  stepByPush,
  stepFrontAxle,
  stepFrontBogie,
  stepPushForce,
  stepRearAxle,
  verticalFaceAdhesion,
} from './steps.ts';

const KERB = 'solved kerb problem, 280 mm wheels, μ 0.85, 60 % of the weight in front, after Beer & Johnston, Statics';
const PROGRAM =
  'linear programme over all admissible contact forces, quasi-static method of Bekker, 1969 (second program, written apart)';
const TRIANGLE = 'right triangle 3-4-5, exact';
const toy = { radius: 0.06, wheelbase: 0.25, cgBehindFront: 0.125 };
const square = { radius: 0.05, wheelbase: 0.2, cgBehindFront: 0.1 };
const kerbCar = { radius: 0.28, wheelbase: 2.5, cgBehindFront: 1, cgHeight: 0.5, adhesion: 0.85 };

export const stepsChecks = [
  checkLaw(stepPushForce, [
    {
      case: 'r 60 mm, step 20 mm: √5/2 of the load',
      source: 'wheel and kerb problem of any statics textbook, exact root',
      kind: 'published',
      args: { load: 10, radius: 0.06, step: 0.02 },
      expected: 5 * Math.sqrt(5),
      allowed: 1e-9,
    },
    {
      case: 'r 50 mm, step 20 mm: four thirds of the load',
      source: TRIANGLE,
      kind: 'published',
      args: { load: 12, radius: 0.05, step: 0.02 },
      expected: 16,
      allowed: 1e-9,
    },
  ]),
  checkLaw(stepByPush, [
    {
      case: 'rear drive pushes with 0.85 · 0.4 against 0.6 of the weight: 36.4 mm',
      source: KERB,
      kind: 'published',
      args: { radius: 0.28, push: 0.34, load: 0.6 },
      expected: 0.0364,
      allowed: 0.002,
    },
  ]),
  checkLaw(stepByOwnTorque, [
    {
      case: 'front drive climbs 66.7 mm',
      source: KERB,
      kind: 'published',
      args: { radius: 0.28, adhesion: 0.85 },
      expected: 0.0667,
      allowed: 0.001,
    },
    {
      case: 'μ 1 climbs 1 − 1/√2 of the radius',
      source: 'angle of friction 45°, exact',
      kind: 'published',
      args: { radius: 0.06, adhesion: 1 },
      expected: 0.06 * (1 - Math.SQRT1_2),
      allowed: 1e-9,
    },
  ]),
  checkLaw(stepAllDriven, [
    {
      case: 'half the weight, μ 0.5: the normal leans by the 3-4-5 angle, 0.4 of the radius',
      source: TRIANGLE,
      kind: 'published',
      args: { radius: 0.06, share: 0.5, adhesion: 0.5 },
      expected: 0.024,
      allowed: 1e-9,
    },
    ...[
      [1 / 2, 0.6, 0.529],
      [1 / 2, 0.7, 0.658],
      [1 / 2, 0.8, 0.78],
      [1 / 2, 1, 1],
      [1 / 3, 0.6, 0.846],
      [1 / 3, 0.7, 0.991],
    ].map(
      ([share = 0, adhesion = 0, part = 0]) =>
        ({
          case: `share ${share.toFixed(2)}, μ ${adhesion}: ${part} of the radius`,
          source: 'force balance after Bekker, 1969 (figures worked apart)',
          kind: 'published',
          args: { radius: 0.06, share, adhesion },
          expected: part * 0.06,
          allowed: 0.002,
        }) as const,
    ),
  ]),
  checkLaw(verticalFaceAdhesion, [
    {
      case: 'a third of the weight on the climbing axle: μ 1/√2',
      source: 'force balance on a vertical face, exact',
      kind: 'published',
      args: { share: 1 / 3 },
      expected: Math.SQRT1_2,
      allowed: 1e-9,
    },
  ]),
  checkLaw(stepFrontAxle, [
    {
      case: 'r 60, L 250, weight mid-way, μ 0.6: 49.83 mm',
      source: PROGRAM,
      kind: 'published',
      args: { ...toy, adhesion: 0.6 },
      expected: 0.04983,
      allowed: 0.002,
    },
    {
      case: 'the same at μ 0.4: 23.62 mm',
      source: PROGRAM,
      kind: 'published',
      args: { ...toy, adhesion: 0.4 },
      expected: 0.02362,
      allowed: 0.004,
    },
    ...[
      [0.4, 0.4],
      [0.5, 0.615],
      [0.6, 0.847],
      [0.7, 1],
    ].map(
      ([adhesion = 0, part = 0]) =>
        ({
          case: `wheelbase of four radii, weight mid-way, μ ${adhesion}: ${part} of the radius`,
          source: PROGRAM,
          kind: 'published',
          args: { ...square, adhesion },
          expected: part * 0.05,
          allowed: 0.004,
        }) as const,
    ),
  ]),
  checkLaw(stepRearAxle, [
    ...[
      [0.4, 12.22],
      [0.6, 21.9],
      [0.8, 31.43],
      [1, 40.24],
    ].map(
      ([adhesion = 0, millimetres = 0]) =>
        ({
          case: `r 60, L 250, weight mid-way and 30 mm above the axles, μ ${adhesion}: ${millimetres} mm`,
          source: PROGRAM,
          kind: 'published',
          args: { ...toy, cgHeight: 0.09, adhesion },
          expected: millimetres / 1000,
          allowed: 0.005,
        }) as const,
    ),
    {
      case: 'weight farther back, μ 0.6: 16.52 mm',
      source: PROGRAM,
      kind: 'published',
      args: { ...toy, cgBehindFront: 0.15, cgHeight: 0.09, adhesion: 0.6 },
      expected: 0.01652,
      allowed: 0.006,
    },
    ...[
      [0.5, 0.287],
      [0.6, 0.371],
      [0.7, 0.456],
      [0.8, 0.538],
      [1, 0.696],
    ].map(
      ([adhesion = 0, part = 0]) =>
        ({
          case: `wheelbase of four radii, weight mid-way at axle height, μ ${adhesion}: ${part} of the radius`,
          source: PROGRAM,
          kind: 'published',
          args: { ...square, cgHeight: 0.05, adhesion },
          expected: part * 0.05,
          allowed: 0.006,
        }) as const,
    ),
  ]),
  checkLaw(stepFrontBogie, [
    ...[
      [0.4, 28.5],
      [0.5, 40.7],
      [0.6, 52.6],
    ].map(
      ([adhesion = 0, millimetres = 0]) =>
        ({
          case: `r 60, pivot 250 behind the front axle and 50 high, μ ${adhesion}: ${millimetres} mm`,
          source: 'equilibrium of bogie and body solved together, after Bekker, 1969 (figures worked apart)',
          kind: 'published',
          args: { ...toy, cgBehindFront: 0.15, pivotHeight: 0.05, adhesion },
          expected: millimetres / 1000,
          allowed: 0.002,
        }) as const,
    ),
    {
      case: 'a pivot at ground level makes the bogie a plain rear axle, μ 0.4: 35.0 mm',
      source: 'equilibrium of the two-axled vehicle, after Bekker, 1969 (figure worked apart)',
      kind: 'published',
      args: { ...toy, cgBehindFront: 0.15, pivotHeight: 0, adhesion: 0.4 },
      expected: 0.035,
      allowed: 0.002,
    },
  ]),
  checkSubject('step-limit', [
    {
      case: 'front axle of the car with front drive: 66.7 mm',
      source: KERB,
      kind: 'published',
      ours: () => twoAxleSteps({ ...kerbCar, drive: 'front' })[0],
      expected: 0.0667,
      allowed: 0.001,
    },
    {
      case: 'front axle of the car with rear drive: 36.4 mm, and it decides',
      source: KERB,
      kind: 'published',
      ours: () => {
        const limit = twoAxleStepLimit({ ...kerbCar, drive: 'rear' });
        return limit.axle === 0 ? limit.step : Number.NaN;
      },
      expected: 0.0364,
      allowed: 0.002,
    },
    {
      case: 'with all wheels driven the rear axle decides: 21.90 mm',
      source: PROGRAM,
      kind: 'published',
      ours: () => {
        const limit = twoAxleStepLimit({ ...toy, cgHeight: 0.09, adhesion: 0.6, drive: 'all' });
        return limit.axle === 1 ? limit.step : Number.NaN;
      },
      expected: 0.0219,
      allowed: 0.005,
    },
    {
      case: 'three axles that share 1 : 1 : 2: the last decides, 3-4-5 at μ 0.5',
      source: TRIANGLE,
      kind: 'published',
      ours: () => {
        const limit = manyAxleStepLimit({ radius: 0.06, adhesion: 0.5, loads: [5, 5, 10] });
        return limit.axle === 2 ? limit.step : Number.NaN;
      },
      expected: 0.024,
      allowed: 1e-9,
    },
  ]),
];
