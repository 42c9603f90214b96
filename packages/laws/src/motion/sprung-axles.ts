/**
 * Loads of two to four (or more) sprung axles under one stiff body. With more than two axles statics alone cannot
 * share the load out; the springs do, and a spring cannot pull: an axle over a dip may hang.
 */
import { GRAVITY } from '../constants.ts';
import { OutOfRange } from '../law.ts';

/** One axle as the body feels it. */
export interface SprungAxle {
  /** Distance behind the foremost axle [m]. */
  readonly position: number;
  /** Spring rate of the whole axle [N/m]. */
  readonly rate: number;
  /** Height of the ground under it above the mean ground line [m]; a crest is positive. */
  readonly ground: number;
}

/** A body on sprung axles. */
export interface SprungBody {
  readonly axles: readonly SprungAxle[];
  readonly mass: number;
  /** Centre of gravity behind the foremost axle [m]. */
  readonly cgBehindFront: number;
  readonly cgHeight: number;
  /** Slope, positive when heading uphill [rad]. */
  readonly slope: number;
}

/**
 * Loads of the axles square to the ground, in order; zero for an axle that hangs.
 * Equal springs give a straight line of loads; the general case weighs each axle by its rate.
 * @throws {@link OutOfRange} when no set of axles can carry the body: it tips over
 */
export function sprungAxleLoads({ axles, mass, cgBehindFront, cgHeight, slope }: SprungBody): readonly number[] {
  const load = mass * GRAVITY * Math.cos(slope);
  const moment = load * cgBehindFront + mass * GRAVITY * Math.sin(slope) * cgHeight;
  // Few axles: trying every set of standing axles is certain to find the one that fits, and there is only one.
  for (let set = (1 << axles.length) - 1; set > 0; set--) {
    const standing = (i: number): boolean => ((set >> i) & 1) === 1;
    const squeeze = squeezeOf(axles, standing, load, moment);
    if (squeeze && axles.every((axle, i) => standing(i) === squeeze(axle) >= 0)) {
      return axles.map((axle, i) => (standing(i) ? axle.rate * squeeze(axle) : 0));
    }
  }
  throw new OutOfRange('sprung-axle-loads', 'a', cgBehindFront, 'weight between the outer axles', 'tips over');
}

/** Squeeze of a spring at each axle when only the standing axles carry; undefined when fewer than two stand. */
function squeezeOf(
  axles: readonly SprungAxle[],
  standing: (i: number) => boolean,
  load: number,
  moment: number,
): ((axle: SprungAxle) => number) | undefined {
  const carrying = axles.filter((_, i) => standing(i));
  if (carrying.length < 2) return undefined;
  const sum = (of: (axle: SprungAxle) => number): number => carrying.reduce((total, axle) => total + of(axle), 0);
  const k = sum((axle) => axle.rate);
  const kx = sum((axle) => axle.rate * axle.position);
  const kxx = sum((axle) => axle.rate * axle.position ** 2);
  const p = load - sum((axle) => axle.rate * axle.ground);
  const q = moment - sum((axle) => axle.rate * axle.ground * axle.position);
  const determinant = k * kxx - kx ** 2;
  if (determinant <= 1e-12 * k * kxx) return undefined;
  const heave = (p * kxx - q * kx) / determinant;
  const pitch = (q * k - p * kx) / determinant;
  return (axle) => heave + pitch * axle.position + axle.ground;
}
