/** Sums of the pack in use: currents, what ends a run, how long it runs. */
import {
  chargeRate,
  coldCapacityShare,
  packEnergy,
  peukertTime,
  pwmSupplyCurrent,
  restCharge,
  restVoltage,
  runTime,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { bridgesOf, cellsOf, motorsOf } from './counts.ts';

type UseId =
  | 'pack.currentStand'
  | 'pack.currentCruise'
  | 'pack.currentClimb'
  | 'pack.currentMean'
  | 'pack.currentStall'
  | 'pack.rateClimb'
  | 'pack.rateStall'
  | 'pack.voltageClimb'
  | 'pack.usableShare'
  | 'pack.usableWanted'
  | 'pack.energy'
  | 'pack.power'
  | 'pack.runTime'
  | 'pack.standTime'
  | 'pack.distance';

/**
 * State of charge at which a cell under load reaches the cut-off: the charge whose rest voltage is the cut-off plus
 * the drop. 1 where even a full cell sags below it.
 */
function chargeAtCutOff(chemistry: Layout['chemistry'], restNeeded: number): number {
  if (restNeeded <= restVoltage({ chemistry, charge: 0 })) return 0;
  if (restNeeded >= restVoltage({ chemistry, charge: 1 })) return 1;
  return restCharge({ chemistry, voltage: restNeeded });
}

const STALLED = { motor: 'drive.stallCurrent', duty: 'duty.applied', stand: 'pack.currentStand' } as const;

const USABLE = {
  reserve: 'set.reserve',
  cutOff: 'pack.cutOff',
  current: 'pack.currentClimb',
  resistance: 'pack.resistance',
  temperature: 'day.usual',
} as const;
const USABLE_WORDS =
  'share at {temperature} · (1 − max({reserve}, charge at a rest voltage of ({cutOff} + {current} · {resistance}) / {cells}))';

function usable(
  chemistry: Layout['chemistry'],
  { reserve, cutOff, current, resistance, temperature, cells }: Record<keyof typeof USABLE | 'cells', number>,
): number {
  const left = chargeAtCutOff(chemistry, (cutOff + current * resistance) / cells);
  return coldCapacityShare({ chemistry, temperature }) * (1 - Math.max(reserve, left));
}

/** Lead and alkaline cells print what they give in this time [s]. */
const RATED_TIME = 20 * 3600;
/**
 * Peukert exponents of cells that give less the faster they are emptied. Sealed lead: 1.05 to 1.25 by the trade, 1.2
 * for the small sizes, which give little more than half in an hour; alkaline: half at ten times the slow current.
 */
const SLOWLY_RATED: Readonly<Partial<Record<Layout['chemistry'], number>>> = { lead: 1.2, alkaline: 1.3 };
const SLOW_SOURCE = 'cell makers’ sheets, from memory';

export const packUseSums: SumsOf<UseId> = {
  'pack.currentStand': sum(
    { title: 'pack current, standing with the picture on', unit: 'A' },
    {
      uses: { power: 'supply.inputPower', voltage: 'pack.nominal', quiescent: 'bridge.quiescent' },
      takes: (layout) => ({ bridges: bridgesOf(layout) }),
      formula: '{power} / {voltage} + {bridges} · {quiescent}',
      laws: [],
      value: ({ power, voltage, quiescent, bridges }) => power / voltage + bridges * quiescent,
    },
  ),
  'pack.currentCruise': sum(
    {
      title: 'pack current, driving on the level',
      unit: 'A',
      caveat:
        'Mean of the pulses: duty times motor current, at the duty ceiling where the wanted speed asks for more. Steering is left out: it moves a small part of the time.',
    },
    {
      uses: {
        stand: 'pack.currentStand',
        duty: 'drive.dutyCruise',
        ceiling: 'duty.applied',
        current: 'drive.currentCruise',
      },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{stand} + min({duty}, {ceiling}) · {motors} · {current}',
      laws: [pwmSupplyCurrent],
      value: ({ stand, duty, ceiling, motors, current }) =>
        stand + pwmSupplyCurrent({ duty: Math.min(duty, ceiling), motorCurrent: motors * current, quiescent: 0 }),
    },
  ),
  'pack.currentClimb': sum(
    {
      title: 'pack current on the steepest climb',
      unit: 'A',
      caveat: 'With the pulses of the drive at the duty ceiling where the climb asks for more than it has.',
    },
    {
      uses: {
        stand: 'pack.currentStand',
        duty: 'drive.dutyClimb',
        ceiling: 'duty.applied',
        current: 'drive.currentClimb',
      },
      takes: (layout) => ({
        motors: motorsOf(layout),
      }),
      formula: '{stand} + min({duty}, {ceiling}) · {motors} · {current}',
      laws: [],
      value: ({ stand, duty, ceiling, motors, current }) => stand + Math.min(duty, ceiling) * motors * current,
    },
  ),
  'pack.currentMean': sum(
    { title: 'mean pack current over a day of driving and standing', unit: 'A' },
    {
      uses: { moving: 'want.moving', cruise: 'pack.currentCruise', stand: 'pack.currentStand' },
      formula: '{moving} · {cruise} + (1 − {moving}) · {stand}',
      laws: [],
      value: ({ moving, cruise, stand }) => moving * cruise + (1 - moving) * stand,
    },
  ),
  'pack.currentStall': sumByRoutes(
    {
      title: 'pack current while all drive motors are stalled',
      unit: 'A',
      caveat:
        'Full pack, first instant, winding cold, an on/off steering motor at its stop. One wheel blocked draws less; a start draws this for a moment.',
    },
    route({
      name: 'drive and on/off steering at its stop',
      when: ({ steering }) => steering === 'on-off',
      uses: { ...STALLED, steering: 'heat.steerCurrent' },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{motors} · {duty} · {motor} + {steering} + {stand}',
      laws: [],
      value: ({ motors, duty, motor, steering, stand }) => motors * duty * motor + steering + stand,
    }),
    route({
      name: 'drive',
      when: ({ steering }) => steering !== 'on-off',
      uses: STALLED,
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{motors} · {duty} · {motor} + {stand}',
      laws: [],
      value: ({ motors, duty, motor, stand }) => motors * duty * motor + stand,
    }),
  ),
  'pack.rateClimb': sum(
    { title: 'C-rate of the pack on the steepest climb', unit: '1' },
    {
      uses: { current: 'pack.currentClimb', capacity: 'pack.realCapacity' },
      formula: '{current} · 1 h / {capacity}',
      laws: [chargeRate],
      value: ({ current, capacity }) => chargeRate({ current, capacity }),
    },
  ),
  'pack.rateStall': sum(
    { title: 'C-rate of the pack in a stall', unit: '1' },
    {
      uses: { current: 'pack.currentStall', capacity: 'pack.realCapacity' },
      formula: '{current} · 1 h / {capacity}',
      laws: [chargeRate],
      value: ({ current, capacity }) => chargeRate({ current, capacity }),
    },
  ),
  'pack.voltageClimb': sum(
    {
      title: 'pack voltage on the steepest climb, at the reserve, on the coldest day',
      unit: 'V',
      caveat: 'Falls below zero in the sum where the pack cannot give the current at all.',
    },
    {
      uses: { rest: 'pack.restReserve', current: 'pack.currentClimb', resistance: 'pack.resistanceCold' },
      formula: '{rest} − {current} · {resistance}',
      laws: [],
      value: ({ rest, current, resistance }) => rest - current * resistance,
    },
  ),
  'pack.usableShare': sumByRoutes(
    {
      title: 'share of the charge that can be used',
      unit: '%',
      caveat:
        'Ends at the reserve, or sooner where the climb pulls the voltage to the cut-off. A run ends at the cut-off under load, not at zero charge.',
    },
    route({
      name: 'lead or alkaline cells, whose capacity is printed for a slow discharge',
      when: ({ chemistry }) => SLOWLY_RATED[chemistry] !== undefined,
      uses: { ...USABLE, mean: 'pack.currentMean', capacity: 'pack.realCapacity' },
      takes: (layout) => ({
        cells: cellsOf(layout),
        rated: { value: RATED_TIME, unit: 'h', is: 'time the capacity is printed for', source: SLOW_SOURCE },
        exponent: {
          value: SLOWLY_RATED[layout.chemistry] ?? 1,
          unit: '1',
          is: 'Peukert exponent',
          source: SLOW_SOURCE,
        },
      }),
      formula: `min(1, ({capacity} / ({mean} · {rated}))^({exponent} − 1)) · ${USABLE_WORDS}`,
      laws: [peukertTime, coldCapacityShare, restCharge, restVoltage],
      value: ({ mean, capacity, rated, exponent, ...x }, { chemistry }) => {
        const lasts = peukertTime({ capacity, ratedTime: rated, current: mean, exponent });
        return Math.min(1, (lasts * mean) / capacity) * usable(chemistry, x);
      },
    }),
    route({
      name: 'lithium or nickel cells',
      uses: USABLE,
      takes: (layout) => ({ cells: cellsOf(layout) }),
      formula: USABLE_WORDS,
      laws: [coldCapacityShare, restCharge, restVoltage],
      value: (x, { chemistry }) => usable(chemistry, x),
    }),
  ),
  'pack.usableWanted': sum(
    {
      title: 'share of the charge the reserve alone would leave usable, less a tenth',
      unit: '%',
      caveat: 'A tenth for the cold and for the climb is common practice, no source.',
    },
    {
      uses: { reserve: 'set.reserve' },
      takes: () => ({
        share: { value: 0.9, unit: '1', is: 'of what the reserve leaves', source: 'common practice, no source' },
      }),
      formula: '{share} · (1 − {reserve})',
      laws: [],
      value: ({ share, reserve }) => share * (1 - reserve),
    },
  ),
  'pack.energy': sum(
    { title: 'energy that can be used', unit: 'Wh' },
    {
      uses: { voltage: 'pack.nominal', capacity: 'pack.realCapacity', share: 'pack.usableShare' },
      formula: '{voltage} · {capacity} · {share}',
      laws: [packEnergy],
      value: ({ voltage, capacity, share }) => packEnergy({ voltage, capacity }) * share,
    },
  ),
  'pack.power': sum(
    { title: 'mean power drawn from the pack', unit: 'W' },
    {
      uses: { current: 'pack.currentMean', voltage: 'pack.nominal' },
      formula: '{current} · {voltage}',
      laws: [],
      value: ({ current, voltage }) => current * voltage,
    },
  ),
  'pack.runTime': sum(
    {
      title: 'run time to the reserve',
      unit: 'min',
      caveat: 'At the mean current of a day of driving and standing; heat and sag over time are left out.',
    },
    {
      uses: { capacity: 'pack.realCapacity', share: 'pack.usableShare', current: 'pack.currentMean' },
      formula: '{share} · {capacity} / {current}',
      laws: [runTime],
      value: ({ capacity, share, current }) => (share > 0 ? runTime({ capacity, share, current }) : 0),
    },
  ),
  'pack.standTime': sum(
    { title: 'time it can stand with the picture on', unit: 'min' },
    {
      uses: { capacity: 'pack.realCapacity', share: 'pack.usableShare', current: 'pack.currentStand' },
      formula: '{share} · {capacity} / {current}',
      laws: [runTime],
      value: ({ capacity, share, current }) => (share > 0 ? runTime({ capacity, share, current }) : 0),
    },
  ),
  'pack.distance': sum(
    { title: 'distance driven on one charge', unit: 'km', caveat: 'On usual ground; the way home counts as well.' },
    {
      uses: { time: 'pack.runTime', moving: 'want.moving', speed: 'want.speed' },
      formula: '{time} · {moving} · {speed}',
      laws: [],
      value: ({ time, moving, speed }) => time * moving * speed,
    },
  ),
};
