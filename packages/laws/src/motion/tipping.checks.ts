import { checkLaw, checkSubject } from '../check.ts';
import { GRAVITY } from '../constants.ts';
import {
  brakingTip,
  corneringLimit,
  corneringSlideSpeed,
  corneringTipSpeed,
  pullAwayTip,
  staticStabilityFactor,
  tipAcceleration,
  tipNoseDown,
  tipNoseUp,
  tipSide,
} from './tipping.ts';

const DEG = Math.PI / 180;
const KMH = 1 / 3.6;
const STATIC = 'Gillespie, Fundamentals of Vehicle Dynamics, chapters 1 and 9 (figures worked apart)';
const BY_HAND = 'Gillespie, Fundamentals of Vehicle Dynamics, chapters 1 and 9, worked by hand on a 3-4-5 slope';
const CURVES = 'AASHTO, A Policy on Geometric Design, 6th ed. 2011, table 3-7, minimum radius (from memory)';
const TANKS = 'Billing & Patten, NRC Canada: authorities ask 0.40 g, 21.80° on the tilt table';
const THREE_FOUR_FIVE = Math.atan2(3, 4);

/** One row of the road designers' table: speed in km/h, superelevation, side friction, printed radius. */
const curve = (speed: number, bank: number, friction: number, radius: number) =>
  ({
    case: `${speed} km/h, superelevation ${100 * bank} %, friction ${friction}, radius ${radius} m`,
    source: CURVES,
    kind: 'memory',
    args: { adhesion: friction, radius, sideSlope: -Math.atan(bank) },
    expected: speed * KMH,
    allowed: 0.01,
  }) as const;

export const tippingChecks = [
  checkLaw(tipNoseUp, [
    {
      case: 'L 0.25, a 0.14, h 0.08',
      source: STATIC,
      kind: 'published',
      args: { wheelbase: 0.25, cgBehindFront: 0.14, cgHeight: 0.08 },
      expected: 53.97 * DEG,
      allowed: 2e-4,
    },
  ]),
  checkLaw(tipNoseDown, [
    {
      case: 'a 0.14, h 0.08',
      source: STATIC,
      kind: 'published',
      args: { cgBehindFront: 0.14, cgHeight: 0.08 },
      expected: 60.26 * DEG,
      allowed: 2e-4,
    },
  ]),
  checkLaw(tipSide, [
    {
      case: 'a tank vehicle of 0.40 g: track 2.0 m, centre of gravity at 2.5 m',
      source: TANKS,
      kind: 'published',
      args: { track: 2, offset: 0, cgHeight: 2.5 },
      expected: 21.8 * DEG,
      allowed: 1e-3,
    },
    {
      case: 'weight 30 mm off the middle of a 300 mm track, 160 mm high: 3-4-5',
      source: BY_HAND,
      kind: 'published',
      args: { track: 0.3, offset: 0.03, cgHeight: 0.16 },
      expected: THREE_FOUR_FIVE,
      allowed: 1e-9,
    },
  ]),
  checkLaw(staticStabilityFactor, [
    {
      case: 'a car of 1.55 m track and 0.55 m height against the mean of cars of 2003, 1.41',
      source: 'NHTSA, DOT HS 809 868, sales-weighted mean',
      kind: 'published',
      args: { track: 1.55, cgHeight: 0.55 },
      expected: 1.41,
      allowed: 0.005,
    },
    {
      case: 'half the track as high as wide: tilts at 45°',
      source: 'NHTSA, 66 FR 3388, 2001: the factor is the tangent of the tilt angle',
      kind: 'published',
      args: { track: 0.24, cgHeight: 0.12 },
      expected: Math.tan(45 * DEG),
      allowed: 1e-9,
    },
  ]),
  checkLaw(tipAcceleration, [
    {
      case: 'a tank vehicle that tilts to 23° takes about 4 m/s²',
      source: 'UN R111, tank vehicles, rollover stability (from memory)',
      kind: 'memory',
      args: { stability: Math.tan(23 * DEG), sideSlope: 0 },
      expected: 4,
      allowed: 0.05,
    },
    {
      case: 'a factor of 1.25 is 1.25 g on the level',
      source: 'NHTSA, 66 FR 3388, 2001: the factor is the lateral acceleration in g',
      kind: 'published',
      args: { stability: 1.25, sideSlope: 0 },
      expected: 12.258,
      allowed: 1e-4,
    },
    {
      case: 'the same on a side slope of 15°',
      source: STATIC,
      kind: 'published',
      args: { stability: 1.25, sideSlope: 15 * DEG },
      expected: 7.214,
      allowed: 1e-3,
    },
  ]),
  checkLaw(corneringTipSpeed, [
    ...[
      [1.25, 2, 4.951],
      [1.25, 0.8, 3.132],
      [1, 1.5, 3.835],
    ].map(
      ([stability = 0, radius = 0, speed = 0]) =>
        ({
          case: `factor ${stability}, radius ${radius} m`,
          source: STATIC,
          kind: 'published',
          args: { stability, radius, sideSlope: 0 },
          expected: speed,
          allowed: 5e-4,
        }) as const,
    ),
    {
      case: 'factor 4/3 on a slope whose complement it is: tan of the difference is 7/24',
      source: 'tangent of a difference, exact: atan 4/3 − atan 3/4 = atan 7/24',
      kind: 'published',
      args: { stability: 4 / 3, radius: 24 / GRAVITY, sideSlope: THREE_FOUR_FIVE },
      expected: Math.sqrt(7),
      allowed: 1e-9,
    },
  ]),
  checkLaw(corneringSlideSpeed, [
    curve(50, 0.06, 0.19, 79),
    curve(60, 0.06, 0.17, 123),
    curve(80, 0.06, 0.14, 252),
    curve(100, 0.06, 0.12, 437),
    curve(80, 0.04, 0.14, 280),
    {
      case: 'across a 3-4-5 slope with μ 4/3: tan of the difference is 7/24',
      source: 'tangent of a difference, exact: atan 4/3 − atan 3/4 = atan 7/24',
      kind: 'published',
      args: { adhesion: 4 / 3, radius: 24 / GRAVITY, sideSlope: THREE_FOUR_FIVE },
      expected: Math.sqrt(7),
      allowed: 1e-9,
    },
  ]),
  checkLaw(brakingTip, [
    {
      case: 'a 0.10, h 0.12: nose over at 0.833 g',
      source: STATIC,
      kind: 'published',
      args: { cgBehindFront: 0.1, cgHeight: 0.12, slope: 0 },
      expected: 0.833 * GRAVITY,
      allowed: 1e-3,
    },
    {
      case: 'down a 3-4-5 slope, a 0.14, h 0.08: 1.4 − 0.6 of g',
      source: BY_HAND,
      kind: 'published',
      args: { cgBehindFront: 0.14, cgHeight: 0.08, slope: -THREE_FOUR_FIVE },
      expected: 0.8 * GRAVITY,
      allowed: 1e-9,
    },
  ]),
  checkLaw(pullAwayTip, [
    {
      case: 'up a 3-4-5 slope, 0.11 ahead of the rear axle, h 0.08: 1.1 − 0.6 of g',
      source: BY_HAND,
      kind: 'published',
      args: { wheelbase: 0.25, cgBehindFront: 0.14, cgHeight: 0.08, slope: THREE_FOUR_FIVE },
      expected: 0.5 * GRAVITY,
      allowed: 1e-9,
    },
  ]),
  checkSubject('cornering-limit', [
    {
      case: 'factor 1 on ground of μ 1.2 tips at the factor’s speed',
      source: STATIC,
      kind: 'published',
      ours: () => corneringLimit({ stability: 1, adhesion: 1.2, radius: 1.5, sideSlope: 0 }).speed,
      expected: 3.835,
      allowed: 5e-4,
    },
    {
      case: 'a car of the mean factor 1.41 on a curve of 252 m with friction 0.14 slides first, 80 km/h',
      source: CURVES,
      kind: 'memory',
      ours: () => corneringLimit({ stability: 1.41, adhesion: 0.14, radius: 252, sideSlope: -Math.atan(0.06) }).speed,
      expected: 80 * KMH,
      allowed: 0.01,
    },
  ]),
];
