/** Sums of the duty and the bridge. A bridge is a fixed threshold and a slope: both read off its data sheet. */
import {
  bipolarBridgeDrop,
  dutyCeiling,
  mosfetResistance,
  partTemperature,
  pwmMeanSlowDecay,
  pwmRippleExact,
  quiescentLoss,
  ROOM,
  switchingLoss,
} from '@longrein/laws';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { sharingOf } from './counts.ts';
import type { SumIdOf } from './ids.ts';

/** Junction for which the loss of a MOSFET bridge is taken, the careful end of ordinary use [K]; common practice, no source. */
const WARM_JUNCTION = ROOM + 75;
/** Edges a pulse period has: one leg switches, up and down. */
const EDGES = 2;
/** Duty at which the ripple is greatest. */
const WORST_DUTY = 0.5;

const channel = (title: string, current: 'drive.currentCruise' | 'drive.currentClimb' | 'drive.stallCurrent') =>
  sum(
    { title, unit: 'A', caveat: 'Motors in parallel on one channel add their currents.' },
    {
      uses: { current },
      takes: (layout) => ({ sharing: sharingOf(layout) }),
      formula: '{sharing} · {current}',
      laws: [],
      value: ({ sharing, current }) => sharing * current,
    },
  );

const drop = (
  title: string,
  current: 'bridge.channelCruise' | 'bridge.channelClimb' | 'bridge.channelStall',
  caveat?: string,
) =>
  sum(
    { title, unit: 'V', ...(caveat === undefined ? {} : { caveat }) },
    {
      uses: { threshold: 'bridge.threshold', slope: 'bridge.slope', current },
      formula: '{threshold} + {slope} · {current}',
      laws: [],
      value: ({ threshold, slope, current }) => threshold + slope * current,
    },
  );

const loss = (
  title: string,
  current: 'bridge.channelClimb' | 'bridge.channelStall',
  lost: 'bridge.dropClimb' | 'bridge.dropStall',
) =>
  sumByRoutes(
    { title, unit: 'W', caveat: 'One channel; conduction at a warm junction, edges and quiescent current.' },
    route({
      name: 'MOSFET bridge',
      when: ({ bridge }) => bridge === 'mosfet',
      uses: {
        current,
        on: 'bridge.onResistance',
        voltage: 'pack.full',
        edge: 'bridge.edgeTime',
        frequency: 'set.frequency',
        quiescent: 'bridge.quiescent',
      },
      takes: () => ({
        junction: { value: WARM_JUNCTION, unit: '°C', is: 'junction taken', source: 'common practice, no source' },
      }),
      formula:
        '{on} at {junction} · {current}² + 2 edges · ½ · {voltage} · {current} · {edge} · {frequency} + {voltage} · {quiescent}',
      laws: [mosfetResistance, switchingLoss, quiescentLoss],
      value: ({ current, on, voltage, edge, frequency, quiescent, junction }) =>
        mosfetResistance({ resistance25: on, junction }) * current ** 2 +
        switchingLoss({ voltage, current, edgeTime: edge, frequency, edges: EDGES }) +
        quiescentLoss({ voltage, quiescent }),
    }),
    route({
      name: 'bipolar bridge',
      uses: { current, drop: lost, voltage: 'pack.full', quiescent: 'bridge.quiescent' },
      formula: '{drop} · {current} + {voltage} · {quiescent}',
      laws: [quiescentLoss],
      value: ({ current, drop, voltage, quiescent }) => drop * current + quiescentLoss({ voltage, quiescent }),
    }),
  );

export const dutySums: SumsOf<SumIdOf<'duty and bridge'>> = {
  'bridge.threshold': sumByRoutes(
    { title: 'voltage a bridge drops before any current', unit: 'V' },
    route({
      name: 'MOSFET bridge',
      when: ({ bridge }) => bridge === 'mosfet',
      uses: {},
      formula: '0',
      laws: [],
      value: () => 0,
    }),
    route({
      name: 'bipolar bridge',
      uses: { one: 'bridge.dropOneAmpere', two: 'bridge.dropTwoAmpere' },
      formula: 'the straight line through {one} at 1 A and {two} at 2 A, at 0 A',
      laws: [bipolarBridgeDrop],
      value: ({ one, two }) =>
        Math.max(0, bipolarBridgeDrop({ current: 0, currentLow: 1, dropLow: one, currentHigh: 2, dropHigh: two })),
    }),
  ),
  'bridge.slope': sumByRoutes(
    {
      title: 'rise of the bridge drop with current',
      unit: 'mΩ',
      caveat: 'Used beyond the data-sheet currents as well; a bridge there is overloaded anyway, and findings say so.',
    },
    route({
      name: 'MOSFET bridge',
      when: ({ bridge }) => bridge === 'mosfet',
      uses: { on: 'bridge.onResistance' },
      formula: '{on}',
      laws: [],
      value: ({ on }) => on,
    }),
    route({
      name: 'bipolar bridge',
      uses: { one: 'bridge.dropOneAmpere', two: 'bridge.dropTwoAmpere' },
      formula: '({two} − {one}) / 1 A',
      laws: [bipolarBridgeDrop],
      value: ({ one, two }) => Math.max(0, two - one),
    }),
  ),
  'duty.ceiling': sum(
    {
      title: 'greatest duty that keeps the motor within its rating',
      unit: '%',
      caveat:
        'At a full pack. Stall is another matter: a stiff pack gives more than the old one at the same mean voltage.',
    },
    {
      uses: {
        rated: 'motor.ratedVoltage',
        threshold: 'bridge.threshold',
        slope: 'bridge.slope',
        idle: 'drive.noLoadCurrent',
        full: 'pack.full',
      },
      takes: (layout) => ({ sharing: sharingOf(layout) }),
      formula: 'min(1, ({rated} + {threshold} + {slope} · {sharing} · {idle}) / {full})',
      laws: [dutyCeiling],
      value: ({ rated, threshold, slope, sharing, idle, full }) =>
        dutyCeiling({ ratedVoltage: rated, bridgeDrop: threshold + slope * sharing * idle, packVoltage: full }),
    },
  ),
  'duty.applied': sumByRoutes(
    { title: 'duty ceiling in force', unit: '%' },
    route({
      name: 'as set',
      uses: { set: 'set.dutyCeiling' },
      formula: '{set}',
      laws: [],
      value: ({ set }) => set,
    }),
    route({
      name: 'as computed; the limits record takes its careful end',
      uses: { ceiling: 'duty.ceiling' },
      formula: '{ceiling}',
      laws: [],
      value: ({ ceiling }) => ceiling,
    }),
  ),
  'duty.limit': sum(
    {
      title: 'duty the limits record allows, case by case',
      unit: '%',
      caveat:
        'The lesser of what is set and what is safe: a setting above the safe ceiling does not reach the vehicle.',
    },
    {
      uses: { applied: 'duty.applied', ceiling: 'duty.ceiling' },
      formula: 'min({applied}, {ceiling})',
      laws: [],
      value: ({ applied, ceiling }) => Math.min(applied, ceiling),
    },
  ),
  'duty.motorVoltage': sum(
    { title: 'mean motor voltage at a full pack, running light', unit: 'V' },
    {
      uses: {
        full: 'pack.full',
        duty: 'duty.applied',
        threshold: 'bridge.threshold',
        slope: 'bridge.slope',
        idle: 'drive.noLoadCurrent',
      },
      takes: (layout) => ({ sharing: sharingOf(layout) }),
      formula: '{duty} · {full} − ({threshold} + {slope} · {sharing} · {idle})',
      laws: [pwmMeanSlowDecay],
      value: ({ full, duty, threshold, slope, sharing, idle }) =>
        Math.max(0, pwmMeanSlowDecay({ voltage: full, duty, bridgeDrop: threshold + slope * sharing * idle })),
    },
  ),
  'bridge.dropCruise': drop('bridge drop, driving on the level', 'bridge.channelCruise'),
  'bridge.dropClimb': drop('bridge drop, on the steepest climb', 'bridge.channelClimb'),
  'bridge.dropStall': drop('bridge drop, in a stall', 'bridge.channelStall'),
  'bridge.channelCruise': channel('current of a bridge channel, driving on the level', 'drive.currentCruise'),
  'bridge.channelClimb': channel('current of a bridge channel, on the steepest climb', 'drive.currentClimb'),
  'bridge.channelStall': channel('current of a bridge channel, in a stall', 'drive.stallCurrent'),
  'bridge.ripple': sum(
    {
      title: 'ripple of the motor current, peak to peak, at its worst',
      unit: 'A',
      caveat: 'At half duty. Where it exceeds twice the mean current the current stops between pulses.',
    },
    {
      uses: {
        full: 'pack.full',
        resistance: 'drive.resistance',
        inductance: 'motor.inductance',
        frequency: 'set.frequency',
      },
      formula: 'exact ripple of {full} on {resistance} and {inductance} at {frequency}, duty 50 %',
      laws: [pwmRippleExact],
      value: ({ full, resistance, inductance, frequency }) =>
        pwmRippleExact({ swing: full, duty: WORST_DUTY, resistance, inductance, frequency }),
    },
  ),
  'bridge.ripplePeak': sum(
    { title: 'peak of the channel current on the steepest climb, ripple included', unit: 'A' },
    {
      uses: { current: 'bridge.channelClimb', ripple: 'bridge.ripple' },
      takes: (layout) => ({ sharing: sharingOf(layout) }),
      formula: '{current} + {sharing} · {ripple} / 2',
      laws: [],
      value: ({ current, ripple, sharing }) => current + (sharing * ripple) / 2,
    },
  ),
  'bridge.lossClimb': loss(
    'heat in a bridge channel, on the steepest climb',
    'bridge.channelClimb',
    'bridge.dropClimb',
  ),
  'bridge.lossStall': loss('heat in a bridge channel, in a stall', 'bridge.channelStall', 'bridge.dropStall'),
  'bridge.junctionClimb': sum(
    { title: 'junction temperature on the steepest climb, on the hottest day', unit: '°C' },
    {
      uses: { air: 'heat.localAir', power: 'bridge.lossClimb', toAir: 'bridge.toAir' },
      formula: '{air} + {toAir} · {power}',
      laws: [partTemperature],
      value: ({ air, power, toAir }) => partTemperature({ surroundings: air, power, resistance: toAir }),
    },
  ),
  'bridge.junctionStall': sum(
    {
      title: 'junction temperature after a stall, on the hottest day',
      unit: '°C',
      caveat:
        'From the climb’s temperature, for as long as the drive lets a stall last; one time constant for the board.',
    },
    {
      uses: {
        start: 'bridge.junctionClimb',
        air: 'heat.localAir',
        power: 'bridge.lossStall',
        toAir: 'bridge.toAir',
        time: 'set.stallTime',
        constant: 'bridge.timeConstant',
      },
      formula: '{start} + ({air} + {toAir} · {power} − {start}) · (1 − exp(−{time}/{constant}))',
      laws: [partTemperature],
      value: ({ start, air, power, toAir, time, constant }) =>
        start +
        (partTemperature({ surroundings: air, power, resistance: toAir }) - start) * (1 - Math.exp(-time / constant)),
    },
  ),
  'bridge.supplyLow': sum(
    { title: 'supply of the bridge while the drive stalls', unit: 'V' },
    {
      uses: { voltage: 'supply.inputStall' },
      formula: '{voltage}',
      laws: [],
      value: ({ voltage }) => voltage,
    },
  ),
};
