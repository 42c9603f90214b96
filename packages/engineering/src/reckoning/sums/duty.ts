/** Sums of the duty and the bridge. A bridge is a fixed threshold and a slope: both read off its data sheet. */
import {
  bipolarBridgeDrop,
  copperResistance,
  dutyCeiling,
  motorStallCurrent,
  pwmMeanSlowDecay,
  pwmRippleExact,
} from '@longrein/laws';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { bridgeHeatSums } from './bridge-heat.ts';
import { motorsOf, sharingOf } from './counts.ts';
import { circuitOf, OWN_WORDS, PATH, SHARED_WORDS, stalled } from './drive-circuit.ts';
import type { SumIdOf } from './ids.ts';

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
  'bridge.channelBlocked': sum(
    {
      title: 'current of a bridge channel whose motors alone are blocked',
      unit: 'A',
      caveat:
        'Full pack, cold winding. One blocked wheel is not all wheels blocked: the pack sags less for the others, so this channel carries more than with everything stalled.',
    },
    {
      uses: { full: 'pack.full', pack: 'pack.resistance', resistance: 'drive.resistance', ...PATH },
      takes: (layout) => ({ sharing: sharingOf(layout) }),
      formula: `{sharing} · ({duty} · {full} − {threshold}) / ({resistance} + ${OWN_WORDS} + {sharing} · {duty}² · (${SHARED_WORDS})), not below 0`,
      laws: [motorStallCurrent],
      value: ({ full, resistance, ...x }) =>
        x.sharing * stalled(circuitOf({ ...x, motors: x.sharing }, full, resistance)),
    },
  ),
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
  ...bridgeHeatSums,
  'bridge.supplyLow': sum(
    {
      title: 'supply of the bridge while the drive stalls',
      unit: 'V',
      caveat: 'As at the branching point, less the drop of the bridge’s own run with all motors stalled.',
    },
    {
      uses: {
        voltage: 'supply.inputStall',
        winding: 'drive.resistance',
        coldest: 'day.coldest',
        bridgeRun: PATH.bridgeRun,
        motorRun: PATH.motorRun,
        threshold: PATH.threshold,
        slope: PATH.slope,
        duty: PATH.duty,
      },
      takes: (layout) => ({ motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula:
        '{voltage} − {bridgeRun} · {motors} · max(0, {duty} · {voltage} − {threshold}) / ({winding} at {coldest} + {motorRun} + {motors} · {bridgeRun} + {sharing} · {slope})',
      laws: [copperResistance],
      value: ({ voltage, winding, coldest, bridgeRun, motorRun, threshold, slope, duty, motors, sharing }) => {
        const cold = copperResistance({ r20: winding, temperature: coldest });
        const path = cold + motorRun + motors * bridgeRun + sharing * slope;
        return voltage - (bridgeRun * motors * Math.max(0, duty * voltage - threshold)) / path;
      },
    },
  ),
};
