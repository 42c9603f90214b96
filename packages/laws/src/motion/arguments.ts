/** Arguments that many laws of motion share, so that one word, one symbol and one range mean the same everywhere. */

/** Slopes stay short of the vertical: beyond it the vehicle hangs and no law of driving applies. */
const STEEPEST = 1.57;

export const MASS = { symbol: 'm', is: 'mass of the vehicle with all it carries', unit: 'kg', above: 0 } as const;
export const SLOPE = {
  symbol: 'θ',
  is: 'slope, positive when the vehicle heads uphill',
  unit: 'rad',
  from: -STEEPEST,
  to: STEEPEST,
} as const;
export const ROLLING = {
  symbol: 'f',
  is: 'rolling resistance coefficient',
  unit: '1',
  from: 0,
  to: 0.5,
} as const;
export const ADHESION = {
  symbol: 'μ',
  is: 'adhesion coefficient between tyre and ground',
  unit: '1',
  above: 0,
  to: 1.5,
} as const;
export const WHEELBASE = {
  symbol: 'L',
  is: 'wheelbase, front axle to rear axle',
  unit: 'm',
  above: 0,
} as const;
export const CG_BEHIND_FRONT = {
  symbol: 'a',
  is: 'centre of gravity behind the front axle',
  unit: 'm',
  above: 0,
} as const;
export const CG_HEIGHT = { symbol: 'h', is: 'centre of gravity above the ground', unit: 'm', above: 0 } as const;
export const TRACK = { symbol: 'T', is: 'track, tyre centre to tyre centre', unit: 'm', above: 0 } as const;
export const WHEEL_RADIUS = { symbol: 'r', is: 'wheel radius', unit: 'm', above: 0 } as const;
export const SPEED = { symbol: 'v', is: 'speed', unit: 'm/s', from: 0 } as const;
export const DECELERATION = { symbol: 'd', is: 'deceleration while braking', unit: 'm/s²', above: 0 } as const;
export const MASS_FACTOR = {
  symbol: 'λ',
  is: 'mass factor: inertia with turning parts over inertia without',
  unit: '1',
  from: 1,
} as const;
