/** Sums of the two duties that load a drive hardest: turning on the spot by skidding, and reversing at speed. */
import {
  copperResistance,
  GRAVITY,
  magnetConstantAt,
  motorCurrentAtTorque,
  motorStallCurrent,
  motorTorqueAtCurrent,
  pluggingCurrent,
  settledSkidThrust,
  skidMomentWheels,
  skidThrust,
  wheelForce,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { motorsOf, sharingOf } from './counts.ts';
import { circuitOf, climbing, OWN_WORDS, PATH, SHARED_WORDS, stalled } from './drive-circuit.ts';

type SkidId =
  | 'drive.skidForce'
  | 'drive.skidForceStall'
  | 'drive.skidCurrent'
  | 'drive.skidChannel'
  | 'drive.reversingCurrent'
  | 'drive.reversingChannel';

const skids = ({ steering }: Layout): boolean => steering === 'skid';
const axlesAre = (fits: (axles: number) => boolean) => (layout: Layout) => fits(layout.axles.length);
const SIDES = 2;

const GROUND = { rolling: 'ground.rolling', mass: 'mass.total' } as const;
const SPAN = { adhesion: 'ground.adhesion', length: 'balance.wheelbase', track: 'balance.track' } as const;

/** Rolling resistance of the wheels of one side. */
const rollingOfSide = (rolling: number, mass: number) => (rolling * mass * GRAVITY) / SIDES;

const channelOf = (title: string, current: 'drive.skidCurrent' | 'drive.reversingCurrent', when?: typeof skids) =>
  sum(
    { title, unit: 'A', ...(when ? { when } : {}) },
    {
      uses: { current },
      takes: (layout) => ({ sharing: sharingOf(layout) }),
      formula: '{sharing} · {current}',
      laws: [],
      value: ({ sharing, current }) => sharing * current,
    },
  );

export const driveSkidSums: SumsOf<SkidId> = {
  'drive.skidForce': sumByRoutes(
    {
      title: 'push of each side needed to turn on the spot',
      unit: 'N',
      when: skids,
      caveat:
        'Grip resists here: the grippiest usual ground is the hardest. One side forwards, the other back; a turn with one side at rest needs less.',
    },
    route({
      name: 'two axles',
      when: axlesAre((axles) => axles === 2),
      uses: { ...GROUND, ...SPAN },
      formula: '{mass} · g / 2 · ({adhesion} · {length} / √({length}² + {track}²) + {rolling})',
      laws: [settledSkidThrust],
      value: ({ rolling, mass, ...span }) =>
        settledSkidThrust({ ...span, weight: mass * GRAVITY }) + rollingOfSide(rolling, mass),
    }),
    route({
      name: 'three or more axles, evenly spaced and loaded',
      when: axlesAre((axles) => axles > 2),
      uses: { ...GROUND, ...SPAN },
      takes: (layout) => ({
        axles: { value: layout.axles.length, unit: '1', is: 'axles', source: 'the toy as it came' },
      }),
      formula:
        '{mass} · g · (min({adhesion} · x / {track}, {adhesion} / 2) + {rolling} / 2), x = mean distance of {axles} axles over {length} from the middle',
      laws: [skidMomentWheels, skidThrust],
      value: ({ rolling, mass, adhesion, length, track, axles }) => {
        const weight = mass * GRAVITY;
        const push = skidThrust({ moment: skidMomentWheels({ adhesion, weight, length, axles }), track });
        // No side can be asked for more than its wheels grip: past that they slip lengthwise, and the turn eases.
        return Math.min(push, (adhesion * weight) / SIDES) + rollingOfSide(rolling, mass);
      },
    }),
    route({
      name: 'one axle, which turns about its own middle',
      uses: GROUND,
      formula: '{rolling} · {mass} · g / 2',
      laws: [],
      value: ({ rolling, mass }) => rollingOfSide(rolling, mass),
    }),
  ),
  'drive.skidForceStall': sum(
    {
      title: 'push of each side at stall, at the reserve',
      unit: 'N',
      when: skids,
      caveat:
        'Cold pack, hot winding, duty ceiling, both sides pulling at once: it must turn on the last of the charge too.',
    },
    {
      uses: {
        rest: 'pack.restReserve',
        pack: 'pack.resistanceCold',
        resistance: 'drive.resistance',
        constant: 'drive.constant',
        idle: 'drive.noLoadCurrent',
        efficiency: 'gear.efficiency',
        ratio: 'drive.ratio',
        wheel: 'toy.wheelDiameter',
        ...PATH,
      },
      takes: (layout) => ({ ...climbing(), motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula: `{motors} / 2 · {efficiency} · {ratio} · ({constant} at {magnets}) · (i − {idle}) / ({wheel}/2), not below 0, i = ({duty} · {rest} − {threshold}) / ({resistance} at {winding} + ${OWN_WORDS} + {motors} · {duty}² · (${SHARED_WORDS}))`,
      laws: [copperResistance, motorStallCurrent, magnetConstantAt, motorTorqueAtCurrent, wheelForce],
      value: ({ rest, resistance, winding, magnets, constant, idle, efficiency, ratio, wheel, ...x }, { magnet }) => {
        const hot = copperResistance({ r20: resistance, temperature: winding });
        const torque = motorTorqueAtCurrent({
          current: stalled(circuitOf(x, rest, hot)),
          motorConstant: magnetConstantAt({ constant20: constant, temperature: magnets, magnet }),
          noLoadCurrent: idle,
        });
        const one = wheelForce({ torque: Math.max(0, torque), ratio, efficiency, wheelRadius: wheel / 2 });
        return (x.motors * one) / SIDES;
      },
    },
  ),
  'drive.skidCurrent': sum(
    { title: 'current of one motor, turning on the spot', unit: 'A', when: skids },
    {
      uses: {
        force: 'drive.skidForce',
        wheel: 'toy.wheelDiameter',
        ratio: 'drive.ratio',
        efficiency: 'gear.efficiency',
        constant: 'drive.constant',
        idle: 'drive.noLoadCurrent',
      },
      takes: (layout) => ({ magnets: climbing().magnets, motors: motorsOf(layout) }),
      formula: '{idle} + 2 · {force} · {wheel}/2 / ({ratio} · {efficiency} · {motors}) / ({constant} at {magnets})',
      laws: [wheelForce, motorCurrentAtTorque, magnetConstantAt],
      value: ({ force, wheel, ratio, efficiency, constant, idle, magnets, motors }, { magnet }) =>
        motorCurrentAtTorque({
          torque: (force * wheel * SIDES) / (2 * ratio * efficiency * motors),
          motorConstant: magnetConstantAt({ constant20: constant, temperature: magnets, magnet }),
          noLoadCurrent: idle,
        }),
    },
  ),
  'drive.skidChannel': channelOf('current of a bridge channel, turning on the spot', 'drive.skidCurrent', skids),
  'drive.reversingCurrent': sum(
    {
      title: 'current of one motor reversed at top speed',
      unit: 'A',
      caveat:
        'The back-EMF then adds to the supply: near twice the stall current. The guard brakes before it reverses; this is what happens without it. Such a current can weaken magnets for good.',
    },
    {
      uses: {
        full: 'pack.full',
        pack: 'pack.resistance',
        resistance: 'drive.resistance',
        speed: 'drive.topSpeed',
        constant: 'drive.constant',
        ratio: 'drive.ratio',
        wheel: 'toy.wheelDiameter',
        ...PATH,
      },
      takes: (layout) => ({ motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula: `({duty} · {full} − {threshold} + {constant} · 2 · {speed} · {ratio} / {wheel}) / ({resistance} + ${OWN_WORDS} + {motors} · {duty}² · (${SHARED_WORDS}))`,
      laws: [pluggingCurrent],
      value: ({ full, resistance, speed, constant, ratio, wheel, ...x }) => {
        const { rest, own, shared, duty, threshold, motors } = circuitOf(x, full, resistance);
        return pluggingCurrent({
          voltage: Math.max(0, duty * rest - threshold),
          motorConstant: constant,
          speed: (2 * speed * ratio) / wheel,
          resistance,
          pathResistance: own - resistance + motors * duty ** 2 * shared,
        });
      },
    },
  ),
  'drive.reversingChannel': channelOf('current of a bridge channel, reversed at top speed', 'drive.reversingCurrent'),
};
