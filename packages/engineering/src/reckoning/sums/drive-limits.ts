/** Sums of the limits of the drive: how fast, and how steep by torque, by grip and by the bridge. */
import {
  copperResistance,
  magnetConstantAt,
  motorTorqueAtCurrent,
  roadSpeed,
  torqueSlope,
  tractionSlopeAll,
  tractionSlopeFront,
  tractionSlopeRear,
  wheelForce,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { motorsOf, sharingOf } from './counts.ts';
import { circuitOf, climbing, cruising, emfLeft, OWN_WORDS, PATH, SHARED_WORDS, stalled } from './drive-circuit.ts';

type LimitId =
  | 'drive.topSpeed'
  | 'drive.speedClimb'
  | 'drive.speedClimbWanted'
  | 'drive.torqueSlope'
  | 'drive.gripSlope'
  | 'drive.bridgeSlope'
  | 'drive.slope';

/** Share of the wanted speed a climb should still be driven with; common practice, no source. */
const CLIMB_SHARE = 0.5;

const WARM_MOTOR = { resistance: 'drive.resistance', constant: 'drive.constant' } as const;
const WHEELS = { ratio: 'drive.ratio', wheel: 'toy.wheelDiameter' } as const;

interface Warm {
  readonly resistance: number;
  readonly constant: number;
  readonly winding: number;
  readonly magnets: number;
}

const windingOf = ({ resistance, winding }: Warm) => copperResistance({ r20: resistance, temperature: winding });
const constantOf = ({ constant, magnets }: Pick<Warm, 'constant' | 'magnets'>, { magnet }: Layout) =>
  magnetConstantAt({ constant20: constant, temperature: magnets, magnet });

const SPEED_WORDS = `({duty} · ({rest} − (${SHARED_WORDS}) · {motors} · {duty} · {current}) − {threshold} − {current} · ({resistance} at {winding} + ${OWN_WORDS})) / ({constant} at {magnets}) · {wheel}/2 / {ratio}, not below 0`;

const speed = (
  about: { readonly title: string; readonly caveat: string },
  refs: {
    readonly rest: 'pack.nominal' | 'pack.restReserve';
    readonly pack: 'pack.resistance' | 'pack.resistanceCold';
    readonly current: 'drive.currentCruise' | 'drive.currentClimb';
  },
  warmth: typeof cruising,
) =>
  sum(
    { ...about, unit: 'm/s' },
    {
      uses: { ...refs, ...WARM_MOTOR, ...WHEELS, ...PATH },
      takes: (layout) => ({ ...warmth(), motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula: SPEED_WORDS,
      laws: [copperResistance, magnetConstantAt, roadSpeed],
      value: ({ rest, current, ratio, wheel, ...x }, layout) => {
        const motorSpeed = Math.max(0, emfLeft(circuitOf(x, rest, windingOf(x)), current)) / constantOf(x, layout);
        return roadSpeed({ motorSpeed, ratio, wheelRadius: wheel / 2 });
      },
    },
  );

/** What turns a motor current into a slope. */
const CLIMB = {
  constant: 'drive.constant',
  idle: 'drive.noLoadCurrent',
  efficiency: 'gear.efficiency',
  mass: 'mass.total',
  rolling: 'ground.rollingWorst',
  ...WHEELS,
} as const;

const SLOPE_WORDS =
  'asin(F / ({mass} · g · √(1 + {rolling}²))) − atan {rolling}, F = {motors} · {efficiency} · {ratio} · ({constant} at {magnets}) · (i − {idle}) / ({wheel}/2)';

type ClimbValues = Readonly<Record<keyof typeof CLIMB | 'magnets' | 'motors', number>>;

function slopeOf(x: ClimbValues, layout: Layout, current: number): number {
  const torque = motorTorqueAtCurrent({ current, motorConstant: constantOf(x, layout), noLoadCurrent: x.idle });
  const radius = x.wheel / 2;
  const force = wheelForce({
    torque: Math.max(0, torque),
    ratio: x.ratio,
    efficiency: x.efficiency,
    wheelRadius: radius,
  });
  return torqueSlope({ torque: x.motors * force * radius, radius, mass: x.mass, rolling: x.rolling });
}

const GRIP = { adhesion: 'ground.adhesionWorst', rolling: 'ground.rollingWorst' } as const;
const BALANCE = {
  wheelbase: 'balance.wheelbase',
  behind: 'balance.centreBehind',
  height: 'balance.centreHeight',
} as const;

/** Is exactly this axle of two driven? */
const drivenOfTwo =
  (which: 0 | 1) =>
  ({ axles }: Layout): boolean =>
    axles.length === 2 && axles.every(({ driven }, i) => driven === (i === which));

export const driveLimitSums: SumsOf<LimitId> = {
  'drive.topSpeed': speed(
    {
      title: 'top speed on the level',
      caveat:
        'At the nominal pack voltage and the duty ceiling. A full pack is faster by as much as its voltage is higher.',
    },
    { rest: 'pack.nominal', pack: 'pack.resistance', current: 'drive.currentCruise' },
    cruising,
  ),
  'drive.speedClimb': speed(
    {
      title: 'speed on the steepest climb, at the reserve',
      caveat:
        'Cold pack, hot winding, worst ground, duty ceiling: careful. 0 m/s means that it stalls; grip and tipping are asked elsewhere.',
    },
    { rest: 'pack.restReserve', pack: 'pack.resistanceCold', current: 'drive.currentClimb' },
    climbing,
  ),
  'drive.speedClimbWanted': sum(
    { title: 'speed a climb should still be driven with', unit: 'm/s' },
    {
      uses: { wanted: 'want.speed' },
      takes: () => ({
        share: { value: CLIMB_SHARE, unit: '1', is: 'of the wanted speed', source: 'common practice, no source' },
      }),
      formula: '{share} · {wanted}',
      laws: [],
      value: ({ share, wanted }) => share * wanted,
    },
  ),
  'drive.torqueSlope': sum(
    {
      title: 'steepest slope by the torque of the motors',
      unit: '°',
      caveat:
        'Just held at stall, at the reserve, cold pack, hot winding, worst ground: no speed is left. 90° means that torque is not the limit; below 0 it cannot even move on the level.',
    },
    {
      uses: {
        rest: 'pack.restReserve',
        pack: 'pack.resistanceCold',
        resistance: 'drive.resistance',
        ...CLIMB,
        ...PATH,
      },
      takes: (layout) => ({ ...climbing(), motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula: `${SLOPE_WORDS}, i = ({duty} · {rest} − {threshold}) / ({resistance} at {winding} + ${OWN_WORDS} + {motors} · {duty}² · (${SHARED_WORDS}))`,
      laws: [copperResistance, magnetConstantAt, motorTorqueAtCurrent, wheelForce, torqueSlope],
      value: ({ rest, ...x }, layout) => slopeOf(x, layout, stalled(circuitOf(x, rest, windingOf(x)))),
    },
  ),
  'drive.gripSlope': sumByRoutes(
    {
      title: 'steepest slope by the grip of the driven wheels',
      unit: '°',
      caveat: 'On the most slippery ground, uphill, forwards. Below 0 it cannot even move on the level.',
    },
    route({
      name: 'all wheels driven',
      when: ({ axles }) => axles.every(({ driven }) => driven),
      uses: GRIP,
      formula: 'atan({adhesion} − {rolling})',
      laws: [tractionSlopeAll],
      value: (x) => tractionSlopeAll(x),
    }),
    route({
      name: 'rear axle of two driven',
      when: drivenOfTwo(1),
      uses: { ...GRIP, ...BALANCE },
      formula: 'atan(({adhesion} · {behind} / {wheelbase} − {rolling}) / (1 − {adhesion} · {height} / {wheelbase}))',
      laws: [tractionSlopeRear],
      value: ({ behind, height, ...x }) => tractionSlopeRear({ ...x, cgBehindFront: behind, cgHeight: height }),
    }),
    route({
      name: 'front axle of two driven',
      when: drivenOfTwo(0),
      uses: { ...GRIP, ...BALANCE },
      formula:
        'atan(({adhesion} · ({wheelbase} − {behind}) / {wheelbase} − {rolling}) / (1 + {adhesion} · {height} / {wheelbase}))',
      laws: [tractionSlopeFront],
      value: ({ behind, height, ...x }) => tractionSlopeFront({ ...x, cgBehindFront: behind, cgHeight: height }),
    }),
    route({
      name: 'share of the weight on the driven axles, as on the level',
      uses: { ...GRIP, share: 'balance.drivenShare' },
      formula: 'atan({adhesion} · {share} − {rolling})',
      laws: [tractionSlopeAll],
      value: ({ adhesion, rolling, share }) => Math.atan(adhesion * share - rolling),
    }),
  ),
  'drive.bridgeSlope': sum(
    {
      title: 'steepest slope by the continuous current of the bridge',
      unit: '°',
      caveat:
        'A short climb may pass it, as the bridge takes time to warm; 90° means that the bridge is not the limit.',
    },
    {
      uses: { continuous: 'bridge.currentContinuous', ...CLIMB },
      takes: (layout) => ({ magnets: climbing().magnets, motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula: `${SLOPE_WORDS}, i = {continuous} / {sharing}`,
      laws: [magnetConstantAt, motorTorqueAtCurrent, wheelForce, torqueSlope],
      value: ({ continuous, sharing, ...x }, layout) => slopeOf(x, layout, continuous / sharing),
    },
  ),
  'drive.slope': sum(
    {
      title: 'steepest slope it climbs',
      unit: '°',
      caveat: 'By torque, grip and bridge, whichever comes first. Tipping and heat are asked elsewhere.',
    },
    {
      uses: { torque: 'drive.torqueSlope', grip: 'drive.gripSlope', bridge: 'drive.bridgeSlope' },
      formula: 'min({torque}, {grip}, {bridge})',
      laws: [],
      value: ({ torque, grip, bridge }) => Math.min(torque, grip, bridge),
    },
  ),
};
