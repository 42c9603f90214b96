import { checkLaw } from '../check.ts';
import {
  coastDeceleration,
  coastDistance,
  coastRolling,
  coastTime,
  pullRolling,
  rampRolling,
  rollingRadius,
} from './coasting.ts';

const DEG = Math.PI / 180;
const STEPS = 'SAE J1263 force in two terms, integrated step by step';
const CHART = 'printed rollout chart of cycle computers; radius from rim 622 mm and tyre width';
const two = { constant: 0.2, quadratic: 0.03 };

export const coastingChecks = [
  checkLaw(coastDeceleration, [
    {
      case: 'a stone thrown up comes to rest 4.903 m up after one second',
      source: 'Halliday & Resnick, Fundamentals of Physics, chapter 2, free fall',
      kind: 'published',
      args: { distance: 4.903, time: 1 },
      expected: 9.80665,
      allowed: 1e-3,
    },
    {
      case: 'from 2 m/s at f 0.03: 6.798 m in 6.798 s',
      source: 'mean speed of 1 m/s makes way and time equal numbers',
      kind: 'published',
      args: { distance: 6.798, time: 6.798 },
      expected: 0.03 * 9.80665,
      allowed: 1e-4,
    },
  ]),
  checkLaw(coastRolling, [
    {
      case: '0.35 m/s² with a mass factor of 1.1: 0.0393, not 0.0357',
      source: 'SAE J1263, effective mass (figure worked apart)',
      kind: 'published',
      args: { deceleration: 0.35, massFactor: 1.1 },
      expected: 0.0393,
      allowed: 0.002,
    },
  ]),
  checkLaw(coastTime, [
    {
      case: '3 to 0 m/s, A 0.2, C 0.03',
      source: STEPS,
      kind: 'published',
      args: { from: 3, to: 0, ...two },
      expected: 11.1045,
      allowed: 1e-4,
    },
    {
      case: '3 to 1 m/s, A 0.2, C 0.03',
      source: 'SAE J1263 force in two terms (figure worked apart)',
      kind: 'published',
      args: { from: 3, to: 1, ...two },
      expected: 6.334,
      allowed: 1e-4,
    },
  ]),
  checkLaw(coastDistance, [
    {
      case: '3 to 0 m/s, A 0.2, C 0.03',
      source: STEPS,
      kind: 'published',
      args: { from: 3, to: 0, ...two },
      expected: 14.2403,
      allowed: 1e-4,
    },
    {
      case: '3 to 1 m/s, A 0.2, C 0.03',
      source: 'SAE J1263 force in two terms (figure worked apart)',
      kind: 'published',
      args: { from: 3, to: 1, ...two },
      expected: 11.911,
      allowed: 1e-4,
    },
  ]),
  checkLaw(rampRolling, [
    {
      case: 'ramp of 1.00 m dropping 0.10, 3.20 m of run: 0.02384',
      source: 'energy of the drop (figure worked apart)',
      kind: 'published',
      args: { drop: 0.1, ramp: 1, run: 3.2 },
      expected: 0.02384,
      allowed: 2e-4,
    },
    {
      case: 'a 3-4-5 ramp with no run: it stops at the foot when f is three quarters',
      source: 'right triangle 3-4-5, exact',
      kind: 'published',
      args: { drop: 0.3, ramp: 0.5, run: 0 },
      expected: 0.75,
      allowed: 1e-9,
    },
  ]),
  checkLaw(pullRolling, [
    {
      case: '3 kg on 4°: 3.226 N up, −0.878 N down',
      source: 'half sum of the pulls, Wong, chapter 1 (pulls worked apart for f 0.04)',
      kind: 'published',
      args: { up: 3.226, down: -0.878, mass: 3, slope: 4 * DEG },
      expected: 0.04,
      allowed: 0.001,
    },
    {
      case: 'on a 3-4-5 slope with f ¼: 0.8 of the weight up, −0.4 down',
      source: 'right triangle 3-4-5, worked by hand',
      kind: 'published',
      args: { up: 0.8 * 9.80665, down: -0.4 * 9.80665, mass: 1, slope: Math.atan2(3, 4) },
      expected: 0.25,
      allowed: 1e-9,
    },
  ]),
  checkLaw(
    rollingRadius,
    (
      [
        [20, 2.086],
        [23, 2.096],
        [25, 2.105],
        [28, 2.136],
      ] as const
    ).map(
      ([width, rollout]) =>
        ({
          case: `${width}-622 tyre, ${1000 * rollout} mm a turn, over ten turns`,
          source: CHART,
          kind: 'published',
          args: { distance: 10 * rollout, turns: 10 },
          expected: (0.622 + 0.002 * width) / 2,
          allowed: 0.0035,
        }) as const,
    ),
  ),
];
