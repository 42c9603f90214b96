/** Slopes, and how steep a vehicle can climb: by grip, by power, by torque. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { ADHESION, CG_BEHIND_FRONT, CG_HEIGHT, MASS, ROLLING, SLOPE, WHEEL_RADIUS, WHEELBASE } from './arguments.ts';

const SLOPE_GIVEN = { symbol: 'θ', is: 'steepest slope', unit: 'rad' } as const;
const VERTICAL = Math.PI / 2;

/** Slope angle of a grade printed in percent (0.1 for 10 %). */
export const gradeAngle = law(
  {
    id: 'grade-angle',
    title: 'Angle of a grade',
    equation: 'θ = atan p',
    args: { grade: { symbol: 'p', is: 'rise over horizontal run', unit: '1' } },
    gives: { symbol: 'θ', is: 'slope', unit: 'rad' },
    validFor: 'any grade',
    leavesOut: 'nothing; 100 % is 45 degrees, and percent is never degrees',
    source: 'definition of grade, ISO 8855 usage',
  },
  ({ grade }) => Math.atan(grade),
);

/** Grade of a slope angle, rise over run. */
export const gradeOfAngle = law(
  {
    id: 'grade-of-angle',
    title: 'Grade of an angle',
    equation: 'p = tan θ',
    args: { slope: SLOPE },
    gives: { symbol: 'p', is: 'rise over horizontal run', unit: '1' },
    validFor: 'slopes short of the vertical',
    leavesOut: 'nothing',
    source: 'definition of grade, ISO 8855 usage',
  },
  ({ slope }) => Math.tan(slope),
);

/** Slope at which a free-rolling vehicle keeps its speed. */
export const rollOffAngle = law(
  {
    id: 'roll-off-angle',
    title: 'Roll-off angle',
    equation: 'θ = atan f',
    args: { rolling: ROLLING },
    gives: { symbol: 'θ', is: 'slope that just keeps it rolling', unit: 'rad' },
    validFor: 'a vehicle already rolling, gears free',
    leavesOut: 'breaking away from rest, which needs a steeper board',
    source: 'equality of rolling resistance and slope, Wong, Theory of Ground Vehicles, chapter 1',
  },
  ({ rolling }) => Math.atan(rolling),
);

/** Steepest slope that grip allows when every wheel is driven. */
export const tractionSlopeAll = law(
  {
    id: 'traction-slope-all',
    title: 'Slope limited by grip, all wheels driven',
    equation: 'tan θ = μ − f',
    args: { adhesion: ADHESION, rolling: ROLLING },
    gives: SLOPE_GIVEN,
    validFor: 'every wheel driven and free to use its own load',
    leavesOut: 'wheels locked to each other by the gears that spin before others pull',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, traction-limited grade',
  },
  ({ adhesion, rolling }) => Math.atan(adhesion - rolling),
);

/** Steepest slope that grip allows when only the rear axle drives, heading uphill. */
export const tractionSlopeRear = law(
  {
    id: 'traction-slope-rear',
    title: 'Slope limited by grip, rear axle driven',
    equation: 'tan θ = (μ · a / L − f) / (1 − μ · h / L)',
    args: {
      adhesion: ADHESION,
      rolling: ROLLING,
      wheelbase: WHEELBASE,
      cgBehindFront: CG_BEHIND_FRONT,
      cgHeight: CG_HEIGHT,
    },
    gives: { ...SLOPE_GIVEN, is: 'steepest slope; a right angle when grip is never the limit' },
    validFor: 'two axles, centre of gravity between them, heading uphill',
    leavesOut: 'tipping over backwards, which may come first',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2; Wong, chapter 3',
  },
  ({ adhesion, rolling, wheelbase, cgBehindFront, cgHeight }) =>
    Math.atan2((adhesion * cgBehindFront) / wheelbase - rolling, Math.max(0, 1 - (adhesion * cgHeight) / wheelbase)),
);

/** Steepest slope that grip allows when only the front axle drives, heading uphill. */
export const tractionSlopeFront = law(
  {
    id: 'traction-slope-front',
    title: 'Slope limited by grip, front axle driven',
    equation: 'tan θ = (μ · (L − a) / L − f) / (1 + μ · h / L)',
    args: {
      adhesion: ADHESION,
      rolling: ROLLING,
      wheelbase: WHEELBASE,
      cgBehindFront: CG_BEHIND_FRONT,
      cgHeight: CG_HEIGHT,
    },
    gives: SLOPE_GIVEN,
    validFor: 'two axles, centre of gravity between them, heading uphill',
    leavesOut: 'climbing in reverse, where the front axle is the lower one',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2; Wong, chapter 3',
  },
  ({ adhesion, rolling, wheelbase, cgBehindFront, cgHeight }) =>
    Math.atan(
      ((adhesion * (wheelbase - cgBehindFront)) / wheelbase - rolling) / (1 + (adhesion * cgHeight) / wheelbase),
    ),
);

/** Slope that a pull of so many weights holds; a right angle when it lifts more than the vehicle weighs. */
function slopeOfPull(pullOverWeight: number, rolling: number): number {
  const k = pullOverWeight / Math.hypot(1, rolling);
  return k >= 1 ? VERTICAL : Math.asin(k) - Math.atan(rolling);
}

/** Steepest slope that the power at the wheels can hold at a speed. */
export const powerSlope = law(
  {
    id: 'power-slope',
    title: 'Slope limited by power',
    equation: 'θ = asin(P / (m · g · v · √(1 + f²))) − atan f',
    args: {
      power: { symbol: 'P', is: 'power at the wheels', unit: 'W', from: 0 },
      mass: MASS,
      speed: { symbol: 'v', is: 'speed to be held', unit: 'm/s', above: 0 },
      rolling: ROLLING,
    },
    gives: { symbol: 'θ', is: 'steepest slope; a right angle when power is not the limit', unit: 'rad' },
    validFor: 'steady speed; negative when not even the level can be held',
    leavesOut: 'air, gear losses (give the power that reaches the wheels)',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, power-limited acceleration',
  },
  ({ power, mass, speed, rolling }) => slopeOfPull(power / (mass * GRAVITY * speed), rolling),
);

/** Steepest slope that the torque at the wheels can hold. */
export const torqueSlope = law(
  {
    id: 'torque-slope',
    title: 'Slope limited by torque',
    equation: 'θ = asin(M / (r · m · g · √(1 + f²))) − atan f',
    args: {
      torque: { symbol: 'M', is: 'torque of all driven wheels together', unit: 'N·m', from: 0 },
      radius: WHEEL_RADIUS,
      mass: MASS,
      rolling: ROLLING,
    },
    gives: { symbol: 'θ', is: 'steepest slope; a right angle when torque is not the limit', unit: 'rad' },
    validFor: 'steady pull; negative when it cannot move on the level',
    leavesOut: 'breaking away from rest, heat',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, tractive force of the engine',
  },
  ({ torque, radius, mass, rolling }) => slopeOfPull(torque / (radius * mass * GRAVITY), rolling),
);

/** Which axles are driven. */
export const DRIVES = ['all', 'rear', 'front'] as const;
export type Drive = (typeof DRIVES)[number];

/** What the traction-limited slope needs to know of a vehicle. */
export interface GripOnSlope {
  readonly drive: Drive;
  readonly adhesion: number;
  readonly rolling: number;
  readonly wheelbase: number;
  readonly cgBehindFront: number;
  readonly cgHeight: number;
}

/** Chooses the traction law of the driven axles. */
export function tractionSlope({ drive, ...rest }: GripOnSlope): number {
  const { adhesion, rolling } = rest;
  if (drive === 'all') return tractionSlopeAll({ adhesion, rolling });
  return drive === 'rear' ? tractionSlopeRear(rest) : tractionSlopeFront(rest);
}

/** One reason why a climb may end. */
export interface ClimbLimit {
  readonly by: string;
  readonly slope: number;
}

/** Chooses the limit that comes first on a climb and says by how much it comes before the next. */
export function firstClimbLimit(
  limits: readonly [ClimbLimit, ...ClimbLimit[]],
): ClimbLimit & { readonly why: string; readonly ahead: number } {
  const [first, next] = limits.toSorted((p, q) => p.slope - q.slope) as [ClimbLimit, ClimbLimit | undefined];
  const ahead = next ? next.slope - first.slope : Number.POSITIVE_INFINITY;
  const why = next ? `${first.by} gives out before ${next.by}` : `${first.by} is the only limit given`;
  return { ...first, ahead, why };
}
