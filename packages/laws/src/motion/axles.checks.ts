import { checkLaw, checkSubject } from '../check.ts';
import { GRAVITY } from '../constants.ts';
import {
  cgFromAxleWeights,
  cgHeightFromRaisedAxle,
  cgHeightFromTilt,
  combinedCentre,
  equalSpringLoad,
  frontAxleLoad,
  lowerSideLoad,
  rearAxleLoad,
} from './axles.ts';
import { sprungAxleLoads } from './sprung-axles.ts';

const DEG = Math.PI / 180;
const POUND = 0.45359237 * GRAVITY;
const FOOT = 0.3048;
const TEXTBOOK = 'Meriam & Kraige, Engineering Mechanics: Dynamics, sample problem 6/1 (from memory)';
const BAR = 'stiff bar on equal elastic supports, Gere & Timoshenko, Mechanics of Materials, worked by hand';

/** The pickup truck of the textbook: weight in the middle of a 10 ft wheelbase, 2 ft high. */
const truck = {
  mass: (100 * POUND) / FOOT,
  wheelbase: 10 * FOOT,
  cgBehindFront: 5 * FOOT,
  cgHeight: 2 * FOOT,
  slope: Math.atan(0.1),
  acceleration: 4.84 * FOOT,
};
/** A vehicle at the slope that tips it backwards: all its load is on the rear axle. */
const tipping = {
  mass: 3,
  wheelbase: 0.25,
  cgBehindFront: 0.14,
  cgHeight: 0.08,
  slope: Math.atan2(0.11, 0.08),
  acceleration: 0,
};

const spring = (position: number, ground = 0) => ({ position, rate: 400, ground });
const three = [spring(0), spring(0.1), spring(0.2)];
const four = [spring(0), spring(0.1), spring(0.2), spring(0.3)];
/** Share of the load on one axle of a level body whose centre of gravity lies so far behind the front. */
const share = (axles: readonly ReturnType<typeof spring>[], cgBehindFront: number, axle: number): number =>
  (sprungAxleLoads({ axles, mass: 4, cgBehindFront, cgHeight: 0.1, slope: 0 })[axle] ?? 0) / (4 * GRAVITY);

export const axlesChecks = [
  checkLaw(frontAxleLoad, [
    {
      case: 'pickup truck of 3220 lb pulling away at 4.84 ft/s² up a 10 % incline: 1441 lb under the front pair',
      source: TEXTBOOK,
      kind: 'memory',
      args: truck,
      expected: 1441 * POUND,
      allowed: 0.001,
    },
    {
      case: 'braking at half of g with the weight mid-way and as high as a quarter of the wheelbase: 5/8 in front',
      source: 'moments about the rear contact, worked by hand',
      kind: 'published',
      args: {
        mass: 2,
        wheelbase: 0.2,
        cgBehindFront: 0.1,
        cgHeight: 0.05,
        slope: 0,
        acceleration: -GRAVITY / 2,
      },
      expected: 0.625 * 2 * GRAVITY,
      allowed: 1e-9,
    },
  ]),
  checkLaw(rearAxleLoad, [
    {
      case: 'pickup truck of 3220 lb pulling away at 4.84 ft/s² up a 10 % incline: 1763 lb under the rear pair',
      source: TEXTBOOK,
      kind: 'memory',
      args: truck,
      expected: 1763 * POUND,
      allowed: 0.001,
    },
    {
      case: 'at the slope that tips it backwards the rear axle carries all',
      source: 'weight above the rear contact, worked by hand',
      kind: 'published',
      args: tipping,
      expected: (3 * GRAVITY * 0.08) / Math.hypot(0.11, 0.08),
      allowed: 1e-9,
    },
  ]),
  checkLaw(lowerSideLoad, [
    {
      case: 'at the tilt-table angle of a stability factor 1.25 the lower side carries all',
      source: 'NHTSA, 66 FR 3388, 2001: the factor is the tangent of the tilt angle',
      kind: 'published',
      args: { mass: 3, track: 0.2, cgHeight: 0.08, offset: 0, sideSlope: Math.atan(1.25) },
      expected: (3 * GRAVITY) / Math.hypot(1, 1.25),
      allowed: 1e-9,
    },
    {
      case: 'on the level a weight a tenth of the track off the middle leaves 60 % on its side',
      source: 'law of the lever',
      kind: 'published',
      args: { mass: 3, track: 0.2, cgHeight: 0.08, offset: 0.02, sideSlope: 0 },
      expected: 0.6 * 3 * GRAVITY,
      allowed: 1e-9,
    },
  ]),
  checkLaw(equalSpringLoad, [
    {
      case: 'bar on three equal supports loaded at its end: 5/6 there',
      source: BAR,
      kind: 'published',
      args: { load: 60, axles: 3, moment: 60, position: 1, spread: 2 },
      expected: 50,
      allowed: 1e-9,
    },
    {
      case: 'bar on four equal supports loaded at its end: 7/10 there',
      source: BAR,
      kind: 'published',
      args: { load: 60, axles: 4, moment: 90, position: 1.5, spread: 5 },
      expected: 42,
      allowed: 1e-9,
    },
    {
      case: 'bar on four equal supports loaded at its end: −2/10 at the other',
      source: BAR,
      kind: 'published',
      args: { load: 60, axles: 4, moment: 90, position: -1.5, spread: 5 },
      expected: -12,
      allowed: 1e-9,
    },
  ]),
  checkSubject('sprung-axle-loads', [
    {
      case: 'three axles, weight half way between the middle and the rear axle: 7/12 behind',
      source: BAR,
      kind: 'published',
      ours: () => share(three, 0.15, 2),
      expected: 7 / 12,
      allowed: 1e-9,
    },
    {
      case: 'three axles, weight half way between the middle and the rear axle: 1/12 in front',
      source: BAR,
      kind: 'published',
      ours: () => share(three, 0.15, 0),
      expected: 1 / 12,
      allowed: 1e-9,
    },
    {
      case: 'four axles, weight over the third: 1/4 + 0.5 · 1.5/5 = 4/10 on the last',
      source: BAR,
      kind: 'published',
      ours: () => share(four, 0.2, 3),
      expected: 0.4,
      allowed: 1e-9,
    },
    {
      case: 'three axles, weight near the rear: the front hangs and the lever gives four fifths to the rear',
      source: 'law of the lever on the two axles that still carry',
      kind: 'published',
      ours: () => share(three, 0.18, 2),
      expected: 0.8,
      allowed: 1e-9,
    },
    {
      case: 'a crest of 10 mm under the middle of three springs of 400 N/m adds two thirds of 4 N to its third',
      source: 'two springs in parallel in series with the third, worked by hand',
      kind: 'published',
      ours: () => share([spring(0), spring(0.1, 0.01), spring(0.2)], 0.1, 1) * 4 * GRAVITY,
      expected: (4 * GRAVITY) / 3 + (2 / 3) * 4,
      allowed: 1e-9,
    },
    {
      case: 'two sprung axles at the slope that tips it backwards: all on the rear axle',
      source: 'weight above the rear contact, worked by hand',
      kind: 'published',
      ours: () =>
        sprungAxleLoads({ ...tipping, axles: [spring(0), spring(0.25)], slope: tipping.slope - 1e-9 })[1] ?? 0,
      expected: (3 * GRAVITY * 0.08) / Math.hypot(0.11, 0.08),
      allowed: 1e-6,
    },
  ]),
  checkLaw(cgFromAxleWeights, [
    {
      case: '60 % of the weight on the front wheels: centre of gravity at four tenths of the wheelbase',
      source: 'law of the lever',
      kind: 'published',
      args: { wheelbase: 2.5, front: 6000, rear: 4000 },
      expected: 1,
      allowed: 1e-9,
    },
  ]),
  checkLaw(cgHeightFromTilt, [
    {
      case: '3 kg, board at 15° nose up, 16.077 N square to the board at the rear',
      source: 'moments about the front contact, Gillespie, chapter 1 (load worked apart)',
      kind: 'published',
      args: { rear: 16.077, wheelbase: 0.25, mass: 3, cgBehindFront: 0.12, slope: 15 * DEG },
      expected: 0.08,
      allowed: 1e-3,
    },
  ]),
  checkLaw(cgHeightFromRaisedAxle, [
    {
      case: '100 N, 0.5 m wheelbase tilted as 3-4-5, centre of gravity 0.1 m above the axle line: 15 N move',
      source: 'coordinates of the tilted triangle, worked by hand after ISO 10392',
      kind: 'published',
      args: { gained: 15, wheelbase: 0.5, mass: 100 / GRAVITY, tilt: Math.atan2(3, 4), radius: 0.05 },
      expected: 0.15,
      allowed: 1e-9,
    },
  ]),
  checkSubject('combined-centre', [
    {
      case: 'Earth 5.9722e24 kg and Moon 7.346e22 kg, 384 400 km apart: 4671 km from the middle of the Earth',
      source: 'NASA, Earth and Moon fact sheets; barycentre as printed there and in almanacs',
      kind: 'published',
      ours: () =>
        combinedCentre([
          { mass: 5.9722e24, at: 0 },
          { mass: 7.346e22, at: 384_400e3 },
        ]),
      expected: 4671e3,
      allowed: 1e-3,
    },
    {
      case: 'a disc of radius 2 with a hole of radius 1 touching its rim: centre a third away from the hole',
      source: 'Halliday & Resnick, Fundamentals of Physics, centre of mass, plate with a hole',
      kind: 'published',
      ours: () =>
        combinedCentre([
          { mass: 4, at: 0 },
          { mass: -1, at: -1 },
        ]),
      expected: 1 / 3,
      allowed: 1e-9,
    },
  ]),
];
