/** Sums of the heat of the bridge: what a channel makes, and how hot the board of one or more channels gets. */
import { holdCurrent, mosfetResistance, partTemperature, quiescentLoss, ROOM, switchingLoss } from '@longrein/laws';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { besideOf } from './counts.ts';

type BridgeHeatId =
  | 'bridge.lossClimb'
  | 'bridge.lossStall'
  | 'bridge.lossSteer'
  | 'bridge.junctionClimb'
  | 'bridge.junctionStall';

/** Junction for which the loss of a MOSFET bridge is taken, the careful end of ordinary use [K]; common practice, no source. */
const WARM_JUNCTION = ROOM + 75;
/** Edges a pulse period has: one leg switches, up and down. */
const EDGES = 2;

const loss = (
  title: string,
  current: 'bridge.channelClimb' | 'bridge.channelStall',
  lost: 'bridge.dropClimb' | 'bridge.dropStall',
) =>
  sumByRoutes(
    {
      title,
      unit: 'W',
      caveat: 'One channel with its share of the quiescent current; conduction at a warm junction, and edges.',
    },
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
      takes: (layout) => ({
        beside: besideOf(layout),
        junction: { value: WARM_JUNCTION, unit: '°C', is: 'junction taken', source: 'common practice, no source' },
      }),
      formula:
        '{on} at {junction} · {current}² + 2 edges · ½ · {voltage} · {current} · {edge} · {frequency} + {voltage} · {quiescent} / {beside}',
      laws: [mosfetResistance, switchingLoss, quiescentLoss],
      value: ({ current, on, voltage, edge, frequency, quiescent, junction, beside }) =>
        mosfetResistance({ resistance25: on, junction }) * current ** 2 +
        switchingLoss({ voltage, current, edgeTime: edge, frequency, edges: EDGES }) +
        quiescentLoss({ voltage, quiescent }) / beside,
    }),
    route({
      name: 'bipolar bridge',
      uses: { current, drop: lost, voltage: 'pack.full', quiescent: 'bridge.quiescent' },
      takes: (layout) => ({ beside: besideOf(layout) }),
      formula: '{drop} · {current} + {voltage} · {quiescent} / {beside}',
      laws: [quiescentLoss],
      value: ({ current, drop, voltage, quiescent, beside }) =>
        drop * current + quiescentLoss({ voltage, quiescent }) / beside,
    }),
  );

export const bridgeHeatSums: SumsOf<BridgeHeatId> = {
  'bridge.lossClimb': loss(
    'heat in a bridge channel, on the steepest climb',
    'bridge.channelClimb',
    'bridge.dropClimb',
  ),
  'bridge.lossStall': loss('heat in a bridge channel, in a stall', 'bridge.channelStall', 'bridge.dropStall'),
  'bridge.lossSteer': sumByRoutes(
    {
      title: 'heat in the bridge channel of an on/off steering motor, held at its stop',
      unit: 'W',
      caveat:
        'At the holding duty and a full pack, as in a bend of the climb. Zero where no steering motor hangs on a bridge.',
    },
    route({
      name: 'on/off steering',
      when: ({ steering }) => steering === 'on-off',
      uses: {
        full: 'pack.full',
        duty: 'set.holdDuty',
        threshold: 'bridge.threshold',
        slope: 'bridge.slope',
        resistance: 'steer.resistance',
      },
      formula:
        '({threshold} + {slope} · max(0, {duty} · {full} − {threshold}) / ({resistance} + {slope})) · max(0, {duty} · {full} − {threshold}) / ({resistance} + {slope})',
      laws: [holdCurrent],
      value: ({ full, duty, threshold, slope, resistance }) => {
        const voltage = Math.max(0, duty * full - threshold);
        const current = holdCurrent({ voltage, duty: 1, resistance: resistance + slope });
        return (threshold + slope * current) * current;
      },
    }),
    route({ name: 'no steering motor on a bridge', uses: {}, formula: '0', laws: [], value: () => 0 }),
  ),
  'bridge.junctionClimb': sum(
    {
      title: 'junction temperature on the steepest climb, on the hottest day',
      unit: '°C',
      caveat:
        'Channels on one board heat one another: its thermal resistance is taken to be that of the whole board, an on/off steering motor held meanwhile.',
    },
    {
      uses: { air: 'heat.localAir', power: 'bridge.lossClimb', steering: 'bridge.lossSteer', toAir: 'bridge.toAir' },
      takes: (layout) => ({ beside: besideOf(layout) }),
      formula: '{air} + {toAir} · ({beside} · {power} + {steering})',
      laws: [partTemperature],
      value: ({ air, power, steering, toAir, beside }) =>
        partTemperature({ surroundings: air, power: beside * power + steering, resistance: toAir }),
    },
  ),
  'bridge.junctionStall': sum(
    {
      title: 'junction temperature after a stall, on the hottest day',
      unit: '°C',
      caveat:
        'From the climb’s temperature, for as long as the drive lets a stall last; one time constant for the board, on which all channels are stalled.',
    },
    {
      uses: {
        start: 'bridge.junctionClimb',
        air: 'heat.localAir',
        power: 'bridge.lossStall',
        steering: 'bridge.lossSteer',
        toAir: 'bridge.toAir',
        time: 'set.stallTime',
        constant: 'bridge.timeConstant',
      },
      takes: (layout) => ({ beside: besideOf(layout) }),
      formula:
        '{start} + ({air} + {toAir} · ({beside} · {power} + {steering}) − {start}) · (1 − exp(−{time}/{constant}))',
      laws: [partTemperature],
      value: ({ start, air, power, steering, toAir, time, constant, beside }) =>
        start +
        (partTemperature({ surroundings: air, power: beside * power + steering, resistance: toAir }) - start) *
          (1 - Math.exp(-time / constant)),
    },
  ),
};
