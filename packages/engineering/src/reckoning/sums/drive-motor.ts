/** Sums of the motor and its gears as they came: what was measured, and what can be told without. */
import {
  lockedRotorResistance,
  motorConstantFromNoLoad,
  motorConstantFromStall,
  motorConstantGap,
  motorStallCurrent,
  roadLoad,
  roadSpeed,
  surfaceNamed,
  wheelForce,
} from '@longrein/laws';
import type { InputId } from '../../dossier/facts/quantities.ts';
import { type Constant, type Known, route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { motorsOf } from './counts.ts';

type MotorId =
  | 'drive.constant'
  | 'drive.constantGap'
  | 'drive.constantGapMost'
  | 'drive.resistance'
  | 'drive.noLoadCurrent'
  | 'drive.ratio';

/** Toy cans show 0.85 to 1.05 of the back-EMF constant in a stall test; beyond that a reading is at fault. */
const GAP_MOST = 0.15;
/** Floor the toy's top speed is taken to be timed on. */
const FLOOR = 'hall floor';

/** Rolling resistance of the floor the top speed was timed on: the test's own ground, not that of the service. */
function floor(): Constant {
  const { low, high, source } = surfaceNamed(FLOOR).rolling;
  return { value: (low + high) / 2, unit: '1', is: `rolling resistance coefficient of a ${FLOOR}`, source };
}

const every = (known: Known, ...ids: readonly InputId[]) => ids.every(known);
const timedTwice = (stated: Known) => every(stated, 'motor.noLoadSpeed', 'toy.topSpeed', 'gear.ratio');
/** Were speed and torque, or speed in two ways, both measured? */
const measuredTwice = (stated: Known) => timedTwice(stated) || every(stated, 'motor.stallTorque', 'motor.stallCurrent');

/** The toy at its top speed, as one motor sees it. */
const TOY = {
  speed: 'toy.topSpeed',
  wheel: 'toy.wheelDiameter',
  mass: 'toy.mass',
  efficiency: 'gear.efficiency',
  full: 'pack.toyFull',
  pack: 'pack.toyResistance',
  resistance: 'drive.resistance',
  idle: 'drive.noLoadCurrent',
} as const;

type ToyValues = Readonly<Record<keyof typeof TOY | 'floor' | 'motors', number>>;

/** Voltage the toy's pack leaves a motor at its no-load current, winding and pack resistance per motor, wheel torque. */
function toyRunning(x: ToyValues) {
  const path = x.resistance + x.motors * x.pack;
  return {
    path,
    voltage: x.full - path * x.idle,
    wheelTorque: (roadLoad({ rolling: x.floor, mass: x.mass, slope: 0 }) * x.wheel) / (2 * x.motors * x.efficiency),
    wheelSpeed: (2 * x.speed) / x.wheel,
  };
}

/** The larger root of a·x² − b·x + c = 0; its vertex where there is none, the nearest the readings come to agreeing. */
const largerRoot = (a: number, b: number, c: number) => (b + Math.sqrt(Math.max(0, b ** 2 - 4 * a * c))) / (2 * a);

/** k from V = R·T/k + k·ω: the branch on which the motor runs lightly loaded, as a toy at top speed does. */
function constantFromTopSpeed({ ratio, ...x }: ToyValues & { readonly ratio: number }): number {
  const { path, voltage, wheelTorque, wheelSpeed } = toyRunning(x);
  return largerRoot(wheelSpeed * ratio, voltage, (path * wheelTorque) / ratio);
}

const TOP_SPEED_WORDS =
  'k in {full} − R · {idle} = k · ω + R · T / k, ω = 2 · {speed} · {ratio} / {wheel}, R = {resistance} + {motors} · {pack}, T = {floor} · {mass} · g · {wheel}/2 / ({ratio} · {efficiency} · {motors})';

export const driveMotorSums: SumsOf<MotorId> = {
  'drive.constant': sumByRoutes(
    {
      title: 'motor constant at 20 °C',
      unit: 'mV·s/rad',
      caveat:
        'The one that predicts speed; torque from it is up to 15 % high in toy cans. Wheels in the air still turn the gears: a no-load test belongs to the motor off them.',
    },
    route({
      name: 'from the no-load test',
      uses: {
        voltage: 'motor.noLoadVoltage',
        speed: 'motor.noLoadSpeed',
        resistance: 'drive.resistance',
        idle: 'drive.noLoadCurrent',
      },
      formula: '({voltage} − {resistance} · {idle}) / {speed}',
      laws: [motorConstantFromNoLoad],
      value: ({ voltage, speed, resistance, idle }) =>
        motorConstantFromNoLoad({ voltage, resistance, noLoadCurrent: idle, noLoadSpeed: speed }),
    }),
    route({
      name: 'from the toy’s top speed and gear ratio',
      uses: { ...TOY, ratio: 'drive.ratio' },
      takes: (layout) => ({ floor: floor(), motors: motorsOf(layout) }),
      formula: TOP_SPEED_WORDS,
      laws: [motorConstantFromNoLoad, roadLoad, roadSpeed, wheelForce],
      value: (x) => constantFromTopSpeed(x),
    }),
  ),
  'drive.constantGap': sumByRoutes(
    {
      title: 'disagreement of two measured motor constants',
      unit: '%',
      when: (_, stated) => measuredTwice(stated),
      caveat:
        'Not averaged away: heat, brush drop, weak magnets or a slipping reading may each make it. Where torque is the smaller, pull and climb are overstated by as much.',
    },
    route({
      name: 'torque of the stall test against speed',
      uses: {
        torque: 'motor.stallTorque',
        stall: 'motor.stallCurrent',
        idle: 'drive.noLoadCurrent',
        constant: 'drive.constant',
      },
      formula: '|{torque} / ({stall} − {idle}) / {constant} − 1|',
      laws: [motorConstantFromStall, motorConstantGap],
      value: ({ torque, stall, idle, constant }) => {
        const fromStall = motorConstantFromStall({ stallTorque: torque, stallCurrent: stall, noLoadCurrent: idle });
        return Math.abs(motorConstantGap({ fromStall, fromNoLoad: constant }) - 1);
      },
    }),
    route({
      name: 'top speed of the toy against the no-load test',
      when: (_, _has, stated) => timedTwice(stated),
      uses: { ...TOY, ratio: 'drive.ratio', constant: 'drive.constant' },
      takes: (layout) => ({ floor: floor(), motors: motorsOf(layout) }),
      formula: `|k / {constant} − 1|, ${TOP_SPEED_WORDS}`,
      laws: [motorConstantGap, roadLoad, roadSpeed, wheelForce],
      value: ({ constant, ...x }) =>
        Math.abs(motorConstantGap({ fromStall: constantFromTopSpeed(x), fromNoLoad: constant }) - 1),
    }),
  ),
  'drive.constantGapMost': sum(
    { title: 'disagreement that toy motors may show', unit: '%', when: (_, stated) => measuredTwice(stated) },
    {
      uses: {},
      takes: () => ({
        most: {
          value: GAP_MOST,
          unit: '%',
          is: 'greatest gap between torque and back-EMF constant',
          source: 'catalogue rows of toy cans, 0.85 to 1.05 (from memory)',
        },
      }),
      formula: '{most}',
      laws: [],
      value: ({ most }) => most,
    },
  ),
  'drive.resistance': sumByRoutes(
    {
      title: 'winding resistance of one drive motor at 20 °C',
      unit: 'Ω',
      caveat:
        'Inferred from currents where nothing was measured at the motor: then it is wide, and a minute with a multimeter settles much.',
    },
    route({
      name: 'measured',
      uses: { resistance: 'motor.resistance' },
      formula: '{resistance}',
      laws: [],
      value: ({ resistance }) => resistance,
    }),
    route({
      name: 'from the stall current',
      uses: { voltage: 'motor.stallVoltage', current: 'motor.stallCurrent' },
      formula: '{voltage} / {current}',
      laws: [lockedRotorResistance],
      value: ({ voltage, current }) => lockedRotorResistance({ voltage, current, leadResistance: 0 }),
    }),
    route({
      name: 'from the no-load current, which is a usual share of the stall current',
      uses: { rated: 'motor.ratedVoltage', share: 'motor.noLoadShare', idle: 'motor.noLoadCurrent' },
      formula: '{rated} / ({idle} / {share})',
      laws: [motorStallCurrent],
      value: ({ rated, share, idle }) => (rated * share) / idle,
    }),
    route({
      name: 'from the toy’s average current, which is a usual share of the stall current',
      uses: { rated: 'motor.ratedVoltage', share: 'motor.averageShare', current: 'drive.toyCurrent' },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{rated} / ({current} / ({share} · {motors}))',
      laws: [motorStallCurrent],
      value: ({ rated, share, current, motors }) => (rated * share * motors) / current,
    }),
  ),
  'drive.noLoadCurrent': sumByRoutes(
    {
      title: 'no-load current of one drive motor',
      unit: 'A',
      caveat: 'Taken as the same at all voltages and speeds: friction of brushes and bearings.',
    },
    route({
      name: 'measured',
      uses: { idle: 'motor.noLoadCurrent' },
      formula: '{idle}',
      laws: [],
      value: ({ idle }) => idle,
    }),
    route({
      name: 'a usual share of the stall current',
      uses: { rated: 'motor.ratedVoltage', share: 'motor.noLoadShare', resistance: 'drive.resistance' },
      formula: '{share} · {rated} / {resistance}',
      laws: [motorStallCurrent],
      value: ({ rated, share, resistance }) => share * motorStallCurrent({ voltage: rated, resistance }),
    }),
  ),
  'drive.ratio': sumByRoutes(
    {
      title: 'gear ratio, motor turns for one wheel turn',
      unit: '1',
      caveat:
        'Where it is assumed, speed and pull of the vehicle hardly depend on it, as the motor constant then follows from it; tooth forces do.',
    },
    route({
      name: 'counted',
      when: (_, _has, stated) => stated('gear.ratio'),
      uses: { ratio: 'gear.ratio' },
      formula: '{ratio}',
      laws: [],
      value: ({ ratio }) => ratio,
    }),
    route({
      name: 'from the no-load test and the toy’s top speed',
      when: (_, _has, stated) => stated('motor.noLoadSpeed'),
      uses: { ...TOY, testVoltage: 'motor.noLoadVoltage', testSpeed: 'motor.noLoadSpeed' },
      takes: (layout) => ({ floor: floor(), motors: motorsOf(layout) }),
      formula:
        'N in {full} − R · {idle} = k · ω · N + R · T / (k · N), k = ({testVoltage} − {resistance} · {idle}) / {testSpeed}, ω = 2 · {speed} / {wheel}, R = {resistance} + {motors} · {pack}, T = {floor} · {mass} · g · {wheel}/2 / ({efficiency} · {motors})',
      laws: [motorConstantFromNoLoad, roadLoad, roadSpeed, wheelForce],
      value: ({ testVoltage, testSpeed, ...x }) => {
        const { path, voltage, wheelTorque, wheelSpeed } = toyRunning(x);
        const k = motorConstantFromNoLoad({
          voltage: testVoltage,
          resistance: x.resistance,
          noLoadCurrent: x.idle,
          noLoadSpeed: testSpeed,
        });
        return largerRoot(k * wheelSpeed, voltage, (path * wheelTorque) / k);
      },
    }),
    route({
      name: 'usual in toys',
      uses: { ratio: 'gear.ratio' },
      formula: '{ratio}',
      laws: [],
      value: ({ ratio }) => ratio,
    }),
  ),
};
