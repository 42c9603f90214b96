/** How the weight sits on the axles, on the level, on a slope, while braking; and what scales tell about the centre of gravity. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { CG_BEHIND_FRONT, CG_HEIGHT, MASS, SLOPE, TRACK, WHEEL_RADIUS, WHEELBASE } from './arguments.ts';

const ACCELERATION = { symbol: 'a_x', is: 'acceleration forward, negative when braking', unit: 'm/s²' } as const;
const TRANSFER = 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 1, dynamic axle loads';

/** Load on the front axle of a two-axled vehicle. */
export const frontAxleLoad = law(
  {
    id: 'front-axle-load',
    title: 'Load on the front axle',
    equation: 'N_f = m · ((L − a) · g · cos θ − h · (g · sin θ + a_x)) / L',
    args: {
      mass: MASS,
      wheelbase: WHEELBASE,
      cgBehindFront: CG_BEHIND_FRONT,
      cgHeight: CG_HEIGHT,
      slope: SLOPE,
      acceleration: ACCELERATION,
    },
    gives: { symbol: 'N_f', is: 'load square to the ground; negative means that the axle has lifted', unit: 'N' },
    validFor: 'two axles, forces of the ground at ground level',
    leavesOut: 'pitch of the body on its springs, air',
    source: TRANSFER,
  },
  ({ mass, wheelbase, cgBehindFront, cgHeight, slope, acceleration }) =>
    (mass *
      ((wheelbase - cgBehindFront) * GRAVITY * Math.cos(slope) -
        cgHeight * (GRAVITY * Math.sin(slope) + acceleration))) /
    wheelbase,
);

/** Load on the rear axle of a two-axled vehicle. */
export const rearAxleLoad = law(
  {
    id: 'rear-axle-load',
    title: 'Load on the rear axle',
    equation: 'N_r = m · (a · g · cos θ + h · (g · sin θ + a_x)) / L',
    args: {
      mass: MASS,
      wheelbase: WHEELBASE,
      cgBehindFront: CG_BEHIND_FRONT,
      cgHeight: CG_HEIGHT,
      slope: SLOPE,
      acceleration: ACCELERATION,
    },
    gives: { symbol: 'N_r', is: 'load square to the ground; negative means that the axle has lifted', unit: 'N' },
    validFor: 'two axles, forces of the ground at ground level',
    leavesOut: 'pitch of the body on its springs, air',
    source: TRANSFER,
  },
  ({ mass, wheelbase, cgBehindFront, cgHeight, slope, acceleration }) =>
    (mass * (cgBehindFront * GRAVITY * Math.cos(slope) + cgHeight * (GRAVITY * Math.sin(slope) + acceleration))) /
    wheelbase,
);

/** Load on the wheels of the lower side when the vehicle stands across a slope. */
export const lowerSideLoad = law(
  {
    id: 'lower-side-load',
    title: 'Load on the lower side across a slope',
    equation: 'N = m · g · ((T / 2 + y) · cos β + h · sin β) / T',
    args: {
      mass: MASS,
      track: TRACK,
      cgHeight: CG_HEIGHT,
      offset: { symbol: 'y', is: 'centre of gravity off the middle, positive downhill', unit: 'm' },
      sideSlope: { symbol: 'β', is: 'side slope', unit: 'rad', from: 0, to: 1.57 },
    },
    gives: { symbol: 'N', is: 'load of the lower side, square to the ground', unit: 'N' },
    validFor: 'until the upper side lifts',
    leavesOut: 'roll of the body on its springs',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 9, static rollover',
  },
  ({ mass, track, cgHeight, offset, sideSlope }) =>
    (mass * GRAVITY * ((track / 2 + offset) * Math.cos(sideSlope) + cgHeight * Math.sin(sideSlope))) / track,
);

/** Load on one of several equally sprung axles: the loads lie on a straight line along the body. */
export const equalSpringLoad = law(
  {
    id: 'equal-spring-load',
    title: 'Load on one of several equally sprung axles',
    equation: 'N = P / n + M · x / S',
    args: {
      load: { symbol: 'P', is: 'load of all axles, square to the ground', unit: 'N', above: 0 },
      axles: { symbol: 'n', is: 'number of axles', unit: '1', from: 2, to: 12 },
      moment: { symbol: 'M', is: 'moment of the load about the mean axle position', unit: 'N·m' },
      position: { symbol: 'x', is: 'this axle from the mean axle position', unit: 'm' },
      spread: { symbol: 'S', is: 'sum of the squares of all such positions', unit: 'm²', above: 0 },
    },
    gives: { symbol: 'N', is: 'load of this axle; negative means that it has lifted', unit: 'N' },
    validFor: 'equal springs, a stiff body, even ground',
    leavesOut: 'friction in the springs, crests and dips: see the loads of sprung axles',
    source: 'Bowles, Foundation Analysis and Design, loads in a pile group with a stiff cap',
  },
  ({ load, axles, moment, position, spread }) => load / axles + (moment * position) / spread,
);

/** Where the centre of gravity lies between two axles, from two weighings. */
export const cgFromAxleWeights = law(
  {
    id: 'cg-from-axle-weights',
    title: 'Centre of gravity from the axle weights',
    equation: 'a = L · N_r / (N_f + N_r)',
    args: {
      wheelbase: WHEELBASE,
      front: { symbol: 'N_f', is: 'weight or scale reading of the front axle', unit: 'N', from: 0 },
      rear: { symbol: 'N_r', is: 'weight or scale reading of the rear axle, same unit', unit: 'N', above: 0 },
    },
    gives: { symbol: 'a', is: 'centre of gravity behind the front axle', unit: 'm' },
    validFor: 'level floor, both axles at one height while weighing',
    leavesOut: 'friction of the tyres on the scale: roll it on, do not lift it on',
    source: 'ISO 10392, Road vehicles, determination of centre of gravity',
  },
  ({ wheelbase, front, rear }) => (wheelbase * rear) / (front + rear),
);

/** Height of the centre of gravity from a board tilted nose up, with the rear load measured square to the board. */
export const cgHeightFromTilt = law(
  {
    id: 'cg-height-from-tilt',
    title: 'Height of the centre of gravity from a tilted board',
    equation: 'h = (N_r · L / (m · g) − a · cos θ) / sin θ',
    args: {
      rear: { symbol: 'N_r', is: 'load of the rear axle square to the board', unit: 'N', above: 0 },
      wheelbase: WHEELBASE,
      mass: MASS,
      cgBehindFront: CG_BEHIND_FRONT,
      slope: { symbol: 'θ', is: 'tilt of the board, nose up', unit: 'rad', from: 0.05, to: 1.2 },
    },
    gives: { symbol: 'h', is: 'centre of gravity above the ground', unit: 'm' },
    validFor: 'springs blocked, wheels held against rolling at ground level',
    leavesOut: 'squat of the springs',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 1, moments about the front contact',
  },
  ({ rear, wheelbase, mass, cgBehindFront, slope }) =>
    ((rear * wheelbase) / (mass * GRAVITY) - cgBehindFront * Math.cos(slope)) / Math.sin(slope),
);

/** Height of the centre of gravity from the weight that moves onto a scale when the other axle is raised. */
export const cgHeightFromRaisedAxle = law(
  {
    id: 'cg-height-from-raised-axle',
    title: 'Height of the centre of gravity from a raised axle',
    equation: 'h = r + ΔN · L / (m · g · tan θ)',
    args: {
      gained: { symbol: 'ΔN', is: 'weight gained by the axle left on the scale', unit: 'N', above: 0 },
      wheelbase: WHEELBASE,
      mass: MASS,
      tilt: { symbol: 'θ', is: 'tilt of the wheelbase, sine of lift over wheelbase', unit: 'rad', from: 0.05, to: 1.2 },
      radius: WHEEL_RADIUS,
    },
    gives: { symbol: 'h', is: 'centre of gravity above the ground', unit: 'm' },
    validFor: 'springs blocked, wheels free to roll, equal wheels, scale reading the vertical',
    leavesOut: 'tyre give',
    source: 'ISO 10392, Road vehicles, determination of centre of gravity, axle lift method',
  },
  ({ gained, wheelbase, mass, tilt, radius }) => radius + (gained * wheelbase) / (mass * GRAVITY * Math.tan(tilt)),
);

/** A mass at a place along one coordinate. */
export interface PlacedMass {
  readonly mass: number;
  readonly at: number;
}

/** Centre of gravity of several masses along one coordinate; masses taken out of the vehicle count negative. */
export function combinedCentre(parts: readonly PlacedMass[]): number {
  const total = parts.reduce((sum, part) => sum + part.mass, 0);
  if (!(total > 0)) throw new RangeError(`combinedCentre: the masses sum to ${total} kg; the sum must be above 0`);
  return parts.reduce((sum, part) => sum + part.mass * part.at, 0) / total;
}
