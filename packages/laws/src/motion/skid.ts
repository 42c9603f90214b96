/** Turning by skidding: what the ground resists with and what each side must push. */
import { law } from '../law.ts';
import { ADHESION, TRACK } from './arguments.ts';

const WEIGHT = { symbol: 'W', is: 'weight on the ground', unit: 'N', above: 0 } as const;
const SKID = 'Wong, Theory of Ground Vehicles, chapter 6, steering of tracked vehicles';

/** Moment that an evenly loaded track resists a turn on the spot with. */
export const skidMomentTrack = law(
  {
    id: 'skid-moment-track',
    title: 'Turning resistance of tracks',
    equation: 'M = μ · W · l / 4',
    args: {
      adhesion: ADHESION,
      weight: WEIGHT,
      length: { symbol: 'l', is: 'contact length of the track', unit: 'm', above: 0 },
    },
    gives: { symbol: 'M', is: 'moment against the turn', unit: 'N·m' },
    validFor: 'even pressure along the track, friction all sideways',
    leavesOut: 'lengthwise slip, which makes it smaller; sinking, which makes it larger',
    source: SKID,
  },
  ({ adhesion, weight, length }) => (adhesion * weight * length) / 4,
);

/** Moment that equally spaced, equally loaded wheels resist a turn on the spot with. */
export const skidMomentWheels = law(
  {
    id: 'skid-moment-wheels',
    title: 'Turning resistance of wheels',
    equation: 'M = μ · W · mean |x|, x = n axles spread evenly over l: l/2, l/3, l/3 … for n = 2, 3, 4 …',
    args: {
      adhesion: ADHESION,
      weight: WEIGHT,
      length: { symbol: 'l', is: 'first axle to last axle', unit: 'm', above: 0 },
      axles: { symbol: 'n', is: 'number of axles, whole', unit: '1', from: 2, to: 12 },
    },
    gives: { symbol: 'M', is: 'moment against the turn', unit: 'N·m' },
    validFor: 'axles equally loaded and spaced, wheels touching at points, friction all sideways',
    leavesOut: 'lengthwise slip, which makes it smaller',
    source: SKID,
  },
  ({ adhesion, weight, length, axles }) => {
    const n = Math.round(axles);
    const mean = n % 2 === 0 ? n / (4 * (n - 1)) : (n + 1) / (4 * n);
    return adhesion * weight * length * mean;
  },
);

/** Push that each side needs to overcome a turning resistance, one side forwards, the other back. */
export const skidThrust = law(
  {
    id: 'skid-thrust',
    title: 'Push of each side in a turn on the spot',
    equation: 'F = M / B',
    args: {
      moment: { symbol: 'M', is: 'moment against the turn', unit: 'N·m', from: 0 },
      track: { ...TRACK, symbol: 'B' },
    },
    gives: { symbol: 'F', is: 'push of one side', unit: 'N' },
    validFor: 'as long as F stays below the grip of one side, μ · W / 2',
    leavesOut: 'rolling resistance, which comes on top',
    source: SKID,
  },
  ({ moment, track }) => moment / track,
);

/** Push that each side settles at once its wheels slip lengthwise as well as sideways. */
export const settledSkidThrust = law(
  {
    id: 'settled-skid-thrust',
    title: 'Settled push of each side in a turn on the spot',
    equation: 'F = μ · W / 2 · l / √(l² + B²)',
    args: {
      adhesion: ADHESION,
      weight: WEIGHT,
      length: { symbol: 'l', is: 'first axle to last axle', unit: 'm', above: 0 },
      track: { ...TRACK, symbol: 'B' },
    },
    gives: { symbol: 'F', is: 'push of one side', unit: 'N' },
    validFor: 'two axles equally loaded, dry friction alike in all directions',
    leavesOut: 'rolling resistance, which comes on top; the first jerk from rest',
    source: 'Coulomb friction directed against each wheel’s slip; balance of moments about the middle',
  },
  ({ adhesion, weight, length, track }) => ((adhesion * weight) / 2) * (length / Math.hypot(length, track)),
);

/** The push one side must be able to give, which law said so, and why. */
export interface SkidNeed {
  readonly by: 'sideways friction' | 'settled slip';
  readonly thrust: number;
  readonly why: string;
}

/** Chooses the push a two-axled skid-steered vehicle needs per side. */
export function skidThrustNeeded(vehicle: {
  readonly adhesion: number;
  readonly weight: number;
  readonly length: number;
  readonly track: number;
}): SkidNeed {
  const { adhesion, weight, length, track } = vehicle;
  const plain = skidThrust({ moment: skidMomentWheels({ adhesion, weight, length, axles: 2 }), track });
  const settled = settledSkidThrust(vehicle);
  return plain <= settled
    ? { by: 'sideways friction', thrust: plain, why: 'the wheels roll lengthwise and scrub sideways only' }
    : {
        by: 'settled slip',
        thrust: settled,
        why: 'the wheels slip lengthwise too, so friction no longer acts all sideways',
      };
}
