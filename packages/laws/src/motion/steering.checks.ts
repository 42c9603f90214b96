import { checkLaw, checkSubject } from '../check.ts';
import {
  differentialRadius,
  innerSteer,
  offTracking,
  outerSteer,
  outerWheelRadius,
  turningRadius,
} from './steering.ts';

const DEG = Math.PI / 180;
const PATHS = 'AASHTO, A Policy on Geometric Design, minimum turning paths of design vehicles (from memory)';
const ACKERMANN = 'Ackermann geometry, Gillespie, Fundamentals of Vehicle Dynamics, chapter 6 (figures worked apart)';
const SHAPE = { wheelbase: 0.25, track: 0.2 };

/** Printed design vehicles, metres: wheelbase, body width, front-centre path, inside path, outer front path, steer. */
const CAR = { wheelbase: 3.35, width: 2.13, front: 6.4, inside: 4.39, outside: 7.26, steer: 31.6 };
const TRUCK = { wheelbase: 6.1, width: 2.44, front: 11.58, inside: 8.64, outside: 12.73, steer: 31.7 };
const rearPath = (of: typeof CAR): number => of.inside + of.width / 2;

export const steeringChecks = [
  checkLaw(turningRadius, [
    {
      case: 'passenger car design vehicle, 31.6°: inside path 4.39 m and half the body',
      source: PATHS,
      kind: 'memory',
      args: { wheelbase: CAR.wheelbase, steer: CAR.steer * DEG },
      expected: rearPath(CAR),
      allowed: 0.005,
    },
    {
      case: 'single-unit truck design vehicle, 31.7°: inside path 8.64 m and half the body',
      source: PATHS,
      kind: 'memory',
      args: { wheelbase: TRUCK.wheelbase, steer: TRUCK.steer * DEG },
      expected: rearPath(TRUCK),
      allowed: 0.005,
    },
    {
      case: 'at 45° the radius is the wheelbase',
      source: 'isosceles right triangle, exact',
      kind: 'published',
      args: { wheelbase: 0.25, steer: 45 * DEG },
      expected: 0.25,
      allowed: 1e-9,
    },
  ]),
  checkLaw(
    innerSteer,
    [
      [0.6869, 23.07],
      [0.5361, 29.82],
      [0.433, 36.9],
    ].map(
      ([radius = 0, degrees = 0]) =>
        ({
          case: `L 250, T 200, R ${radius} m`,
          source: ACKERMANN,
          kind: 'published',
          args: { ...SHAPE, radius },
          expected: degrees * DEG,
          allowed: 5e-4,
        }) as const,
    ),
  ),
  checkLaw(
    outerSteer,
    [
      [0.6869, 17.63],
      [0.5361, 21.46],
      [0.433, 25.13],
    ].map(
      ([radius = 0, degrees = 0]) =>
        ({
          case: `L 250, T 200, R ${radius} m`,
          source: ACKERMANN,
          kind: 'published',
          args: { ...SHAPE, radius },
          expected: degrees * DEG,
          allowed: 5e-4,
        }) as const,
    ),
  ),
  checkSubject('ackermann', [
    {
      case: 'cotangents of outer and inner angle differ by track over wheelbase',
      source: 'Ackermann condition, Gillespie, Fundamentals of Vehicle Dynamics, chapter 6',
      kind: 'published',
      ours: () =>
        1 / Math.tan(outerSteer({ ...SHAPE, radius: 0.5 })) - 1 / Math.tan(innerSteer({ ...SHAPE, radius: 0.5 })),
      expected: 0.8,
      allowed: 1e-9,
    },
  ]),
  checkLaw(outerWheelRadius, [
    {
      case: 'passenger car design vehicle: outer front path 7.26 m',
      source: PATHS,
      kind: 'memory',
      args: { radius: rearPath(CAR), track: CAR.width, wheelbase: CAR.wheelbase },
      expected: CAR.outside,
      allowed: 0.012,
    },
    {
      case: 'single-unit truck design vehicle: outer front path 12.73 m',
      source: PATHS,
      kind: 'memory',
      args: { radius: rearPath(TRUCK), track: TRUCK.width, wheelbase: TRUCK.wheelbase },
      expected: TRUCK.outside,
      allowed: 0.012,
    },
    {
      case: 'L 250, T 200, mean steer 25°',
      source: ACKERMANN,
      kind: 'published',
      args: { radius: 0.5361, track: 0.2, wheelbase: 0.25 },
      expected: 0.6835,
      allowed: 5e-4,
    },
  ]),
  checkLaw(offTracking, [
    {
      case: 'passenger car design vehicle: front path 6.40 m, inside path 4.39 m',
      source: PATHS,
      kind: 'memory',
      args: { frontRadius: CAR.front, wheelbase: CAR.wheelbase },
      expected: CAR.front - rearPath(CAR),
      allowed: 0.01,
    },
    {
      case: 'single-unit truck design vehicle: front path 11.58 m, inside path 8.64 m',
      source: PATHS,
      kind: 'memory',
      args: { frontRadius: TRUCK.front, wheelbase: TRUCK.wheelbase },
      expected: TRUCK.front - rearPath(TRUCK),
      allowed: 0.015,
    },
    {
      case: 'front path 5, wheelbase 3, rear path 4',
      source: 'right triangle 3-4-5, exact',
      kind: 'published',
      args: { frontRadius: 5, wheelbase: 3 },
      expected: 1,
      allowed: 1e-9,
    },
  ]),
  checkLaw(differentialRadius, [
    {
      case: 'outer side twice as fast: circles of 2 B and B, middle at 1.5 B',
      source: 'circles run in equal time, worked by hand after Wong, chapter 6',
      kind: 'published',
      args: { track: 0.22, outer: 1, inner: 0.5 },
      expected: 0.33,
      allowed: 1e-9,
    },
  ]),
];
