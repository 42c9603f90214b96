/** Steering at walking pace, when the tyres roll where they point. */
import { law } from '../law.ts';
import { TRACK, WHEELBASE } from './arguments.ts';
import { insist } from './refuse.ts';

const RADIUS = { symbol: 'R', is: 'radius of the turn at the middle of the rear axle', unit: 'm', above: 0 } as const;
const PIVOTS = { symbol: 'T', is: 'distance between the steering pivots', unit: 'm', above: 0 } as const;
const ACKERMANN = 'Wong, Theory of Ground Vehicles, chapter 5; Gillespie, chapter 6, low-speed turning';

/** Radius of the turn for a mean steering angle. */
export const turningRadius = law(
  {
    id: 'turning-radius',
    title: 'Turning radius',
    equation: 'R = L / tan δ',
    args: {
      wheelbase: WHEELBASE,
      steer: { symbol: 'δ', is: 'mean steering angle of the front wheels', unit: 'rad', above: 0, to: 1.5 },
    },
    gives: { symbol: 'R', is: 'radius at the middle of the rear axle', unit: 'm' },
    validFor: 'walking pace, rear axle not steered',
    leavesOut: 'side slip, play of the steering',
    source: ACKERMANN,
  },
  ({ wheelbase, steer }) => wheelbase / Math.tan(steer),
);

/** Steering angle of the inner front wheel. */
export const innerSteer = law(
  {
    id: 'inner-steer',
    title: 'Steering angle of the inner wheel',
    equation: 'δ_i = atan(L / (R − T / 2))',
    args: { wheelbase: WHEELBASE, radius: RADIUS, track: PIVOTS },
    gives: { symbol: 'δ_i', is: 'steering angle', unit: 'rad' },
    validFor: 'wheels that roll without slip; a right angle and more when R is less than T / 2',
    leavesOut: 'what the linkage really does',
    source: ACKERMANN,
  },
  ({ wheelbase, radius, track }) => Math.atan2(wheelbase, radius - track / 2),
);

/** Steering angle of the outer front wheel. */
export const outerSteer = law(
  {
    id: 'outer-steer',
    title: 'Steering angle of the outer wheel',
    equation: 'δ_o = atan(L / (R + T / 2))',
    args: { wheelbase: WHEELBASE, radius: RADIUS, track: PIVOTS },
    gives: { symbol: 'δ_o', is: 'steering angle', unit: 'rad' },
    validFor: 'wheels that roll without slip',
    leavesOut: 'what the linkage really does',
    source: ACKERMANN,
  },
  ({ wheelbase, radius, track }) => Math.atan2(wheelbase, radius + track / 2),
);

/** Radius of the circle the outer front wheel runs on: the room a turn needs. */
export const outerWheelRadius = law(
  {
    id: 'outer-wheel-radius',
    title: 'Circle of the outer front wheel',
    equation: 'R_o = √((R + T / 2)² + L²)',
    args: { radius: RADIUS, track: TRACK, wheelbase: WHEELBASE },
    gives: { symbol: 'R_o', is: 'radius of the circle', unit: 'm' },
    validFor: 'walking pace; put the body width for T to get the circle of the front corner above the axle',
    leavesOut: 'overhang in front of the axle',
    source: 'AASHTO, A Policy on Geometric Design of Highways and Streets, minimum turning paths',
  },
  ({ radius, track, wheelbase }) => Math.hypot(radius + track / 2, wheelbase),
);

/** How far the rear axle cuts the corner inside the path of the front axle. */
export const offTracking = law(
  {
    id: 'off-tracking',
    title: 'Cutting in of the rear axle',
    equation: 'u = R_f − √(R_f² − L²)',
    args: {
      frontRadius: { symbol: 'R_f', is: 'radius of the path of the front axle middle', unit: 'm', above: 0 },
      wheelbase: WHEELBASE,
    },
    gives: { symbol: 'u', is: 'distance between the two paths', unit: 'm' },
    validFor: 'a steady turn at walking pace, wheelbase below R_f',
    leavesOut: 'the shorter cut of a short turn',
    source: 'SAE J695, turning ability and off tracking',
  },
  ({ frontRadius, wheelbase }) => {
    insist(wheelbase <= frontRadius, 'off-tracking', 'L', wheelbase, 'up to R_f', 'the rear axle has no circle');
    return frontRadius - Math.sqrt(frontRadius ** 2 - wheelbase ** 2);
  },
);

/** Radius of the turn of a vehicle steered by the speeds of its two sides. */
export const differentialRadius = law(
  {
    id: 'differential-radius',
    title: 'Turning radius from the speeds of the sides',
    equation: 'R = B / 2 · (v_o + v_i) / (v_o − v_i)',
    args: {
      track: { symbol: 'B', is: 'track, or the wider effective track found by a turning test', unit: 'm', above: 0 },
      outer: { symbol: 'v_o', is: 'speed of the outer side', unit: 'm/s', above: 0 },
      inner: { symbol: 'v_i', is: 'speed of the inner side, below the outer', unit: 'm/s' },
    },
    gives: { symbol: 'R', is: 'radius at the middle; zero on the spot', unit: 'm' },
    validFor: 'outer side faster than the inner',
    leavesOut: 'slip: skidding wheels turn on an effective track one and a half to two times as wide',
    source: 'Wong, Theory of Ground Vehicles, chapter 6, kinematics of skid-steering',
  },
  ({ track, outer, inner }) => {
    insist(inner < outer, 'differential-radius', 'v_i', inner, `below v_o = ${outer} m/s`, 'it drives straight');
    return ((track / 2) * (outer + inner)) / (outer - inner);
  },
);
