/** Sums of stopping: what the shorted motors and the grip of the ground can do, on the level and downhill. */
import {
  brakeTorque,
  copperResistance,
  forceDeceleration,
  GRAVITY,
  gripDeceleration,
  magnetConstantAt,
  stoppingDistance,
} from '@longrein/laws';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { everyAxleDriven, LEVER, onlyRearOfTwo } from './braked-axles.ts';
import { named, practice } from './practice.ts';
import { forceAt, ofCircuit, SHORTED, SHORTED_CAVEAT, shortedForce, warmed } from './shorted-motors.ts';

type BrakingId =
  | 'safe.shortedForce'
  | 'safe.gripBraking'
  | 'safe.shortedDeceleration'
  | 'safe.deceleration'
  | 'safe.descentDeceleration'
  | 'safe.decelerationLeast'
  | 'safe.stopping';

/** Inertia with the turning parts over inertia without: geared rotors count with the square of the ratio. */
const MASS_FACTOR = 1.3;
/** Below this a descent is not under control [m/s²]. */
const DECELERATION_LEAST = 0.5;
/** Stands for 'never stops' [m]. */
const NEVER = 1000;

/** Slices of speed a stop is worked out in. */
const SLICES = 20;

/** Distance from a speed to rest, taking in each slice the braking at its lower end: what is left out is on the safe side. */
function stopInSlices(from: number, brakingAt: (speed: number) => number): number {
  let way = 0;
  for (let slice = 0; slice < SLICES; slice++) {
    const [low, high] = [(from * slice) / SLICES, (from * (slice + 1)) / SLICES];
    way += (high ** 2 - low ** 2) / (2 * brakingAt(low));
  }
  return way;
}

export const brakingSums: SumsOf<BrakingId> = {
  'safe.shortedForce': sum(
    { title: 'braking force of the shorted motors at the speed cap', unit: 'N', caveat: SHORTED_CAVEAT },
    {
      uses: { ...SHORTED, cap: 'safe.speedCap' },
      takes: ofCircuit,
      formula: forceAt('{cap}'),
      laws: [brakeTorque, copperResistance, magnetConstantAt],
      value: (x, layout) => shortedForce(warmed(x, layout), x.cap),
    },
  ),
  'safe.gripBraking': sumByRoutes(
    {
      title: 'braking that the grip of the driven wheels allows on the most slippery ground, level',
      unit: 'm/s²',
      caveat: 'Only driven wheels brake.',
    },
    route({
      name: 'every axle driven',
      when: everyAxleDriven,
      uses: { adhesion: 'ground.adhesionWorst' },
      formula: 'g · {adhesion}',
      laws: [gripDeceleration],
      value: ({ adhesion }) => gripDeceleration({ adhesion, slope: 0 }),
    }),
    route({
      name: 'rear axle of two, from which braking takes weight',
      when: onlyRearOfTwo,
      uses: LEVER,
      formula: 'g · {adhesion} · {centre} / ({wheelbase} + {adhesion} · {height})',
      laws: [],
      value: ({ adhesion, centre, wheelbase, height }) =>
        (GRAVITY * adhesion * centre) / (wheelbase + adhesion * height),
    }),
    route({
      name: 'by the share of the weight on driven axles',
      uses: { adhesion: 'ground.adhesionWorst', share: 'balance.drivenShare' },
      formula: 'g · {adhesion} · {share}',
      laws: [gripDeceleration],
      value: ({ adhesion, share }) => share * gripDeceleration({ adhesion, slope: 0 }),
    }),
  ),
  'safe.shortedDeceleration': sum(
    {
      title: 'even deceleration that stops as soon as shorted motors do, from the speed cap on the worst ground',
      unit: 'm/s²',
      caveat: SHORTED_CAVEAT,
    },
    {
      uses: {
        ...SHORTED,
        cap: 'safe.speedCap',
        mass: 'mass.total',
        rolling: 'ground.rolling',
        grip: 'safe.gripBraking',
      },
      takes: (layout) => ({
        ...ofCircuit(layout),
        factor: practice(MASS_FACTOR, '1', 'inertia with turning parts over inertia without'),
      }),
      formula: `{cap}² / (2 · s), s = (v2² − v1²) / (2 · a) summed over ${SLICES} equal slices of speed from v1 to v2, a = min((F / {mass} + g · {rolling}) / {factor}, {grip}), F = ${forceAt('v1')}`,
      laws: [brakeTorque, copperResistance, magnetConstantAt, forceDeceleration],
      // Shorted motors brake less the slower it rolls, so no single speed stands for the whole stop.
      value: (x, layout) => {
        const circuit = warmed(x, layout);
        const brakingAt = (speed: number) =>
          Math.min(
            forceDeceleration({
              force: shortedForce(circuit, speed),
              mass: x.mass,
              rolling: x.rolling,
              slope: 0,
              massFactor: x.factor,
            }),
            x.grip,
          );
        return x.cap ** 2 / (2 * stopInSlices(x.cap, brakingAt));
      },
    },
  ),
  'safe.deceleration': sumByRoutes(
    {
      title: 'deceleration on the level, worst ground',
      unit: 'm/s²',
      caveat:
        'Even deceleration that stops from the speed cap no later than the vehicle does; over the last few centimetres shorted motors brake more gently.',
    },
    route({
      name: 'measured, within the grip of the worst ground',
      uses: { measured: 'driving.braking', grip: 'safe.gripBraking' },
      formula: 'min({measured}, {grip})',
      laws: [],
      value: ({ measured, grip }) => Math.min(measured, grip),
    }),
    route({
      name: 'shorted motors and rolling resistance, within the grip of the worst ground',
      uses: { shorted: 'safe.shortedDeceleration' },
      formula: '{shorted}',
      laws: [],
      value: ({ shorted }) => shorted,
    }),
  ),
  'safe.descentDeceleration': sum(
    {
      title: 'deceleration on the steepest descent, worst ground',
      unit: 'm/s²',
      caveat: 'Zero or less means that it runs away.',
    },
    {
      uses: { level: 'safe.deceleration', slope: 'want.slope' },
      formula: '{level} · cos {slope} − g · sin {slope}',
      laws: [],
      value: ({ level, slope }) => level * Math.cos(slope) - GRAVITY * Math.sin(slope),
    },
  ),
  'safe.decelerationLeast': named(
    'least deceleration wanted on the steepest descent',
    'm/s²',
    DECELERATION_LEAST,
    'below this a descent is not under control',
  ),
  'safe.stopping': sum(
    {
      title: 'distance in which the guard stops it from the speed cap on the steepest descent',
      unit: 'm',
      caveat: 'From the guard’s own command, without a driver’s reaction. A kilometre stands for never.',
    },
    {
      uses: { cap: 'safe.speedCap', actuation: 'driving.actuation', deceleration: 'safe.descentDeceleration' },
      formula: '{cap} · {actuation} + {cap}² / (2 · {deceleration})',
      laws: [stoppingDistance],
      value: ({ cap, actuation, deceleration }) =>
        deceleration > 0 ? Math.min(NEVER, stoppingDistance({ speed: cap, reaction: actuation, deceleration })) : NEVER,
    },
  ),
};
