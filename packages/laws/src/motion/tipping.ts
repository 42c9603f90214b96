/** When the vehicle tips over: on slopes, in turns, under brakes; and when it slides first. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { ADHESION, CG_BEHIND_FRONT, CG_HEIGHT, SLOPE, TRACK, WHEELBASE } from './arguments.ts';

const STATIC = 'Gillespie, Fundamentals of Vehicle Dynamics, chapters 1 and 9';
const SSF = { symbol: 'SSF', is: 'static stability factor', unit: '1', above: 0, to: 5 } as const;
const SIDE_SLOPE = {
  symbol: 'β',
  is: 'side slope, positive when the outside of the turn lies downhill',
  unit: 'rad',
  from: -1.2,
  to: 1.2,
} as const;
const TURN_RADIUS = { symbol: 'R', is: 'radius of the turn', unit: 'm', above: 0 } as const;

/** Slope at which the vehicle tips over backwards while it climbs. */
export const tipNoseUp = law(
  {
    id: 'tip-nose-up',
    title: 'Slope that tips it backwards',
    equation: 'tan θ = (L − a) / h',
    args: { wheelbase: WHEELBASE, cgBehindFront: CG_BEHIND_FRONT, cgHeight: CG_HEIGHT },
    gives: { symbol: 'θ', is: 'slope at which the front lifts', unit: 'rad' },
    validFor: 'standing or creeping, wheels not sliding',
    leavesOut: 'springs, bumps, acceleration; drive by a margin',
    source: STATIC,
  },
  ({ wheelbase, cgBehindFront, cgHeight }) => Math.atan2(wheelbase - cgBehindFront, cgHeight),
);

/** Slope at which the vehicle tips over forwards while it descends. */
export const tipNoseDown = law(
  {
    id: 'tip-nose-down',
    title: 'Slope that tips it forwards',
    equation: 'tan θ = a / h',
    args: { cgBehindFront: CG_BEHIND_FRONT, cgHeight: CG_HEIGHT },
    gives: { symbol: 'θ', is: 'slope at which the rear lifts', unit: 'rad' },
    validFor: 'standing or creeping, wheels not sliding',
    leavesOut: 'springs, bumps, braking; drive by a margin',
    source: STATIC,
  },
  ({ cgBehindFront, cgHeight }) => Math.atan2(cgBehindFront, cgHeight),
);

/** Side slope at which the vehicle tips over. */
export const tipSide = law(
  {
    id: 'tip-side',
    title: 'Side slope that tips it',
    equation: 'tan β = (T / 2 − y) / h',
    args: {
      track: TRACK,
      offset: { symbol: 'y', is: 'centre of gravity off the middle, positive downhill', unit: 'm' },
      cgHeight: CG_HEIGHT,
    },
    gives: { symbol: 'β', is: 'side slope at which the upper side lifts', unit: 'rad' },
    validFor: 'standing or creeping straight across, wheels not sliding',
    leavesOut: 'springs (the body leans out and tips sooner), holes, turning',
    source: STATIC,
  },
  ({ track, offset, cgHeight }) => Math.atan2(track / 2 - offset, cgHeight),
);

/** Static stability factor: lateral acceleration in g that lifts the inner wheels of a stiff vehicle. */
export const staticStabilityFactor = law(
  {
    id: 'static-stability-factor',
    title: 'Static stability factor',
    equation: 'SSF = T / (2 · h)',
    args: { track: TRACK, cgHeight: CG_HEIGHT },
    gives: { symbol: 'SSF', is: 'static stability factor', unit: '1' },
    validFor: 'a stiff vehicle with its weight in the middle',
    leavesOut: 'springs and tyres, which cost a tenth or more',
    source: 'NHTSA, consumer information on rollover resistance, 66 FR 3388, 2001',
  },
  ({ track, cgHeight }) => track / (2 * cgHeight),
);

/** Acceleration of a turn that tips the vehicle on a side slope. */
export const tipAcceleration = law(
  {
    id: 'tip-acceleration',
    title: 'Lateral acceleration that tips it on a side slope',
    equation: 'a_y = g · tan(atan SSF − β)',
    args: { stability: SSF, sideSlope: SIDE_SLOPE },
    gives: { symbol: 'a_y', is: 'horizontal acceleration; negative when it tips even at rest', unit: 'm/s²' },
    validFor: 'steady turn, a stiff vehicle',
    leavesOut: 'tripping on a kerb or in a rut, which needs far less',
    source: STATIC,
  },
  ({ stability, sideSlope }) => GRAVITY * Math.tan(Math.atan(stability) - sideSlope),
);

/** Speed of the turn that lifts the inner wheels. */
export const corneringTipSpeed = law(
  {
    id: 'cornering-tip-speed',
    title: 'Speed that tips it in a turn',
    equation: 'v = √(g · R · tan(max(atan SSF − β, 0)))',
    args: { stability: SSF, radius: TURN_RADIUS, sideSlope: SIDE_SLOPE },
    gives: { symbol: 'v', is: 'speed at which it tips; zero when the side slope alone tips it', unit: 'm/s' },
    validFor: 'steady turn, a stiff vehicle',
    leavesOut: 'tripping, springs, sudden steering',
    source: STATIC,
  },
  ({ stability, radius, sideSlope }) =>
    Math.sqrt(GRAVITY * radius * Math.tan(Math.max(Math.atan(stability) - sideSlope, 0))),
);

/** Speed of the turn at which the tyres let go. */
export const corneringSlideSpeed = law(
  {
    id: 'cornering-slide-speed',
    title: 'Speed that slides it in a turn',
    equation: 'v = √(g · R · tan(max(atan μ − β, 0)))',
    args: { adhesion: ADHESION, radius: TURN_RADIUS, sideSlope: SIDE_SLOPE },
    gives: { symbol: 'v', is: 'speed at which it slides; zero when the side slope alone lets it slide', unit: 'm/s' },
    validFor: 'steady turn without braking or pulling',
    leavesOut: 'grip used up by drive and brake',
    source: 'AASHTO, A Policy on Geometric Design of Highways and Streets, basic curve equation',
  },
  ({ adhesion, radius, sideSlope }) =>
    Math.sqrt(GRAVITY * radius * Math.tan(Math.max(Math.atan(adhesion) - sideSlope, 0))),
);

/** Deceleration that lifts the rear axle. */
export const brakingTip = law(
  {
    id: 'braking-tip',
    title: 'Deceleration that tips it forwards',
    equation: 'd = g · (a · cos θ / h + sin θ)',
    args: { cgBehindFront: CG_BEHIND_FRONT, cgHeight: CG_HEIGHT, slope: SLOPE },
    gives: { symbol: 'd', is: 'deceleration along the slope', unit: 'm/s²' },
    validFor: 'brake force at ground level',
    leavesOut: 'dive of the springs',
    source: STATIC,
  },
  ({ cgBehindFront, cgHeight, slope }) => GRAVITY * ((cgBehindFront * Math.cos(slope)) / cgHeight + Math.sin(slope)),
);

/** Acceleration that lifts the front axle when pulling away. */
export const pullAwayTip = law(
  {
    id: 'pull-away-tip',
    title: 'Acceleration that tips it backwards',
    equation: 'a_x = g · ((L − a) · cos θ / h − sin θ)',
    args: { wheelbase: WHEELBASE, cgBehindFront: CG_BEHIND_FRONT, cgHeight: CG_HEIGHT, slope: SLOPE },
    gives: { symbol: 'a_x', is: 'acceleration along the slope', unit: 'm/s²' },
    validFor: 'drive force at ground level',
    leavesOut: 'squat of the springs, jerk of the first moment',
    source: STATIC,
  },
  ({ wheelbase, cgBehindFront, cgHeight, slope }) =>
    GRAVITY * (((wheelbase - cgBehindFront) * Math.cos(slope)) / cgHeight - Math.sin(slope)),
);

/** What decides how fast a turn may be taken. */
export interface CorneringLimit {
  readonly by: 'tipping' | 'sliding';
  readonly speed: number;
  readonly why: string;
}

/** Chooses whether a turn ends in a slide or on the roof, and says why. */
export function corneringLimit(turn: {
  readonly stability: number;
  readonly adhesion: number;
  readonly radius: number;
  readonly sideSlope: number;
}): CorneringLimit {
  const { stability, adhesion, radius, sideSlope } = turn;
  return adhesion < stability
    ? {
        by: 'sliding',
        speed: corneringSlideSpeed({ adhesion, radius, sideSlope }),
        why: 'the tyres let go first, because adhesion is less than the static stability factor',
      }
    : {
        by: 'tipping',
        speed: corneringTipSpeed({ stability, radius, sideSlope }),
        why: 'it tips first, because adhesion is at least the static stability factor',
      };
}
