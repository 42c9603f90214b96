import { checkLaw, checkSubject } from '../check.ts';
import { GRAVITY } from '../constants.ts';
import { settledSkidThrust, skidMomentTrack, skidMomentWheels, skidThrust, skidThrustNeeded } from './skid.ts';

const STRIPS = 'friction of 200 001 strips summed, model of Wong, Theory of Ground Vehicles, chapter 6';
const LEVERS = 'friction times lever, wheel by wheel, after Wong, Theory of Ground Vehicles, chapter 6';
const BALANCE = 'Coulomb friction against the slip of each wheel; direction found by scanning until both moments agree';
const rover = { adhesion: 0.6, weight: 5 * GRAVITY, length: 0.25 };
const longer = { adhesion: 0.7, weight: 4 * GRAVITY, length: 0.2 };

export const skidChecks = [
  checkLaw(skidMomentTrack, [
    {
      case: '4 kg, μ 0.7, 200 mm',
      source: STRIPS,
      kind: 'published',
      args: longer,
      expected: 1.37294,
      allowed: 1e-4,
    },
    {
      case: '5 kg, μ 0.6, 250 mm',
      source: 'Wong, Theory of Ground Vehicles, chapter 6 (figure worked apart)',
      kind: 'published',
      args: rover,
      expected: 1.839,
      allowed: 5e-4,
    },
  ]),
  checkLaw(skidMomentWheels, [
    {
      case: 'two axles: every wheel at half the length',
      source: LEVERS,
      kind: 'published',
      args: { ...rover, axles: 2 },
      expected: 0.6 * 5 * GRAVITY * 0.125,
      allowed: 1e-9,
    },
    {
      case: 'three axles: two thirds of the weight at half the length, the rest on the pivot',
      source: LEVERS,
      kind: 'published',
      args: { ...longer, axles: 3 },
      expected: 1.8306,
      allowed: 1e-4,
    },
    {
      case: 'four axles: halves at a half and at a sixth of the length',
      source: LEVERS,
      kind: 'published',
      args: { ...longer, axles: 4 },
      expected: 0.7 * 4 * GRAVITY * (0.1 / 2 + 0.1 / 6),
      allowed: 1e-9,
    },
  ]),
  checkLaw(skidThrust, [
    {
      case: 'a couple of 16.72 N on arms of 110 mm makes 3.678 N·m',
      source: 'moment of a couple, worked by hand',
      kind: 'published',
      args: { moment: 2 * 16.72 * 0.11, track: 0.22 },
      expected: 16.72,
      allowed: 1e-9,
    },
  ]),
  checkLaw(settledSkidThrust, [
    {
      case: '5 kg, μ 0.6, 250 × 220 mm: 11.04 N, with 2.429 N·m driving and resisting',
      source: BALANCE,
      kind: 'published',
      args: { ...rover, track: 0.22 },
      expected: 11.043,
      allowed: 1e-4,
    },
    {
      case: 'a square vehicle settles at 45°',
      source: 'symmetry, exact',
      kind: 'published',
      args: { adhesion: 0.5, weight: 40, length: 0.2, track: 0.2 },
      expected: 10 * Math.SQRT1_2,
      allowed: 1e-9,
    },
  ]),
  checkSubject('skid-thrust-needed', [
    {
      case: 'the plain 16.72 N exceed the grip of a side, so the settled thrust counts',
      source: BALANCE,
      kind: 'published',
      ours: () => skidThrustNeeded({ ...rover, track: 0.22 }).thrust,
      expected: 11.043,
      allowed: 1e-4,
    },
  ]),
];
