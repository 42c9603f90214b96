/** Sums of the load: what the ground asks for, and what that is in current, voltage, duty and power. */
import {
  copperResistance,
  magnetConstantAt,
  motorCurrentAtTorque,
  pwmMeanSlowDecay,
  roadLoad,
  roadSpeed,
  wheelForce,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type SumsOf, sum } from '../sum.ts';
import { motorsOf } from './counts.ts';
import { climbing, cruising, dutyFor, PATH, SHARED_WORDS } from './drive-circuit.ts';

type LoadId =
  | 'drive.forceLevel'
  | 'drive.forceClimb'
  | 'drive.torqueCruise'
  | 'drive.torqueClimb'
  | 'drive.currentCruise'
  | 'drive.currentClimb'
  | 'drive.rippleBorne'
  | 'drive.voltageCruise'
  | 'drive.dutyCruise'
  | 'drive.dutyClimb'
  | 'drive.powerCruise'
  | 'drive.powerClimb';

const torque = (title: string, force: 'drive.forceLevel' | 'drive.forceClimb') =>
  sum(
    {
      title,
      unit: 'mN·m',
      caveat: 'Shared alike by the motors. Toy gears lose more of a light load than of a heavy one.',
    },
    {
      uses: { force, wheel: 'toy.wheelDiameter', ratio: 'drive.ratio', efficiency: 'gear.efficiency' },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{force} · {wheel}/2 / ({ratio} · {efficiency} · {motors})',
      laws: [wheelForce],
      value: ({ force, wheel, ratio, efficiency, motors }) => (force * wheel) / (2 * ratio * efficiency * motors),
    },
  );

const current = (
  title: string,
  load: 'drive.torqueCruise' | 'drive.torqueClimb',
  warmth: typeof cruising,
  caveat: string,
) =>
  sum(
    { title, unit: 'A', caveat },
    {
      uses: { torque: load, constant: 'drive.constant', idle: 'drive.noLoadCurrent' },
      takes: () => ({ magnets: warmth().magnets }),
      formula: '{idle} + {torque} / ({constant} at {magnets})',
      laws: [motorCurrentAtTorque, magnetConstantAt],
      value: ({ torque, constant, idle, magnets }, { magnet }) =>
        motorCurrentAtTorque({
          torque,
          motorConstant: magnetConstantAt({ constant20: constant, temperature: magnets, magnet }),
          noLoadCurrent: idle,
        }),
    },
  );

/** What a warm motor needs to turn its wheel at a speed against a current. */
const RUNNING = {
  resistance: 'drive.resistance',
  constant: 'drive.constant',
  ratio: 'drive.ratio',
  wheel: 'toy.wheelDiameter',
} as const;
const RUNNING_WORDS = '({resistance} at {winding}) + ({constant} at {magnets})';

interface Running {
  readonly resistance: number;
  readonly constant: number;
  readonly winding: number;
  readonly magnets: number;
  readonly ratio: number;
  readonly wheel: number;
}

function motorVoltage(x: Running, { magnet }: Layout, current: number, speed: number): number {
  const winding = copperResistance({ r20: x.resistance, temperature: x.winding });
  const constant = magnetConstantAt({ constant20: x.constant, temperature: x.magnets, magnet });
  return current * winding + (constant * speed * 2 * x.ratio) / x.wheel;
}

export const driveLoadSums: SumsOf<LoadId> = {
  'drive.forceLevel': sum(
    { title: 'pull needed on the level', unit: 'N', caveat: 'On the usual ground of the service.' },
    {
      uses: { rolling: 'ground.rolling', mass: 'mass.total' },
      formula: '{rolling} · {mass} · g',
      laws: [roadLoad],
      value: ({ rolling, mass }) => roadLoad({ rolling, mass, slope: 0 }),
    },
  ),
  'drive.forceClimb': sum(
    { title: 'pull needed on the steepest climb', unit: 'N', caveat: 'On the worst ground of the service.' },
    {
      uses: { rolling: 'ground.rollingWorst', mass: 'mass.total', slope: 'want.slope' },
      formula: '{mass} · g · ({rolling} · cos {slope} + sin {slope})',
      laws: [roadLoad],
      value: ({ rolling, mass, slope }) => roadLoad({ rolling, mass, slope }),
    },
  ),
  'drive.torqueCruise': torque('torque of one motor, driving on the level', 'drive.forceLevel'),
  'drive.torqueClimb': torque('torque of one motor, on the steepest climb', 'drive.forceClimb'),
  'drive.currentCruise': current(
    'current of one motor, driving on the level',
    'drive.torqueCruise',
    cruising,
    'Set by the pull, not by the voltage; it does not grow with speed on hard ground.',
  ),
  'drive.currentClimb': current(
    'current of one motor, on the steepest climb',
    'drive.torqueClimb',
    climbing,
    'What the climb asks for, whether the pack can give it or not. Warm magnets need more current for the same pull.',
  ),
  'drive.rippleBorne': sum(
    {
      title: 'ripple at which the current just stops between pulses, driving on the level',
      unit: 'A',
      caveat: 'Beyond it a bridge with diodes lets the current stop, and speed no longer follows the duty.',
    },
    {
      uses: { current: 'drive.currentCruise' },
      formula: '2 · {current}',
      laws: [],
      value: ({ current }) => 2 * current,
    },
  ),
  'drive.voltageCruise': sum(
    { title: 'mean motor voltage needed, driving on the level', unit: 'V' },
    {
      uses: { current: 'drive.currentCruise', speed: 'want.speed', ...RUNNING },
      takes: () => cruising(),
      formula: `{current} · ${RUNNING_WORDS} · 2 · {speed} · {ratio} / {wheel}`,
      laws: [copperResistance, magnetConstantAt, roadSpeed],
      value: ({ current, speed, ...x }, layout) => motorVoltage(x, layout, current, speed),
    },
  ),
  'drive.dutyCruise': sum(
    { title: 'duty needed, driving on the level', unit: '%', caveat: 'At the nominal pack voltage, leads counted.' },
    {
      uses: {
        voltage: 'drive.voltageCruise',
        drop: 'bridge.dropCruise',
        current: 'drive.currentCruise',
        run: 'wiring.motor.resistance',
        nominal: 'pack.nominal',
      },
      formula: '({voltage} + {drop} + {run} · {current}) / {nominal}',
      laws: [pwmMeanSlowDecay],
      value: ({ voltage, drop, current, run, nominal }) => (voltage + drop + run * current) / nominal,
    },
  ),
  'drive.dutyClimb': sum(
    {
      title: 'duty needed to hold the wanted speed on the steepest climb',
      unit: '%',
      caveat:
        'At the reserve, cold pack and hot winding: careful, as one day seldom has both. Above 100 % the speed cannot be held.',
    },
    {
      uses: {
        rest: 'pack.restReserve',
        pack: 'pack.resistanceCold',
        packRun: PATH.packRun,
        bridgeRun: PATH.bridgeRun,
        motorRun: PATH.motorRun,
        drop: 'bridge.dropClimb',
        current: 'drive.currentClimb',
        speed: 'want.speed',
        ...RUNNING,
      },
      takes: (layout) => ({ ...climbing(), motors: motorsOf(layout) }),
      formula: `D in D · ({rest} − (${SHARED_WORDS}) · {motors} · D · {current}) = {drop} + {current} · {motorRun} + {current} · ${RUNNING_WORDS} · 2 · {speed} · {ratio} / {wheel}`,
      laws: [copperResistance, magnetConstantAt, roadSpeed, pwmMeanSlowDecay],
      value: ({ rest, pack, packRun, bridgeRun, motorRun, drop, current, speed, motors, ...x }, layout) =>
        dutyFor(
          { rest, shared: pack + packRun + bridgeRun, motors },
          drop + current * motorRun + motorVoltage(x, layout, current, speed),
          current,
        ),
    },
  ),
  'drive.powerCruise': sum(
    { title: 'power of all drive motors, driving on the level', unit: 'W', caveat: 'Electrical, at the motors.' },
    {
      uses: { voltage: 'drive.voltageCruise', current: 'drive.currentCruise' },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{motors} · {voltage} · {current}',
      laws: [],
      value: ({ motors, voltage, current }) => motors * voltage * current,
    },
  ),
  'drive.powerClimb': sum(
    {
      title: 'power of all drive motors, on the steepest climb',
      unit: 'W',
      caveat: 'Electrical, at the motors, at the speed it climbs with, up to the wanted one.',
    },
    {
      uses: { current: 'drive.currentClimb', wanted: 'want.speed', reached: 'drive.speedClimb', ...RUNNING },
      takes: (layout) => ({ ...climbing(), motors: motorsOf(layout) }),
      formula: `{motors} · {current} · ({current} · ${RUNNING_WORDS} · 2 · min({wanted}, {reached}) · {ratio} / {wheel})`,
      laws: [copperResistance, magnetConstantAt, roadSpeed],
      value: ({ current, wanted, reached, motors, ...x }, layout) =>
        motors * current * motorVoltage(x, layout, current, Math.min(wanted, reached)),
    },
  ),
};
