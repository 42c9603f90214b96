/** Sums of the main fuse: it must bear a start, open on a lasting stall or short, and protect the thinnest wire. */
import {
  COPPER_REFERENCE,
  copperResistance,
  fuseRatingByDerating,
  fuseSlowestOpening,
  motorStallCurrent,
  onderdonkFusingTime,
  prospectiveShortCircuit,
  rampEnergy,
} from '@longrein/laws';
import { RUNS } from '../../dossier/facts/build.ts';
import { type SumsOf, sum } from '../sum.ts';
import { cellsOf, cellVoltageOf, motorsOf, sharingOf } from './counts.ts';
import { circuitOf, climbing, OWN_WORDS, PATH, SHARED_WORDS, stalled } from './drive-circuit.ts';

type FuseId =
  | 'fuse.needed'
  | 'fuse.stallCurrent'
  | 'fuse.stallShare'
  | 'fuse.stallTime'
  | 'fuse.stallTimeMax'
  | 'fuse.shortTime'
  | 'fuse.wireTime'
  | 'fuse.shortCurrent'
  | 'fuse.shortLow'
  | 'fuse.shortShare'
  | 'fuse.shortShareWanted'
  | 'fuse.startEnergy'
  | 'fuse.startShare'
  | 'fuse.startShareMax';

/** Stands for 'never opens' [s]: the 100 hours for which a fuse must carry its rating. */
const NEVER = 360_000;
/** Wires and bridge bear a lasting stall about this long, windings do not; common practice, no source [s]. */
const STALL_TIME_MAX = 60;
/** A start is over in about this time [s]: the toy is at half speed by then; common practice, no source. */
const START_TIME = 0.3;
/** Share of the melting I²t a fuse bears ten thousand times; maker's fuseology guide, chart 2. */
const START_SHARE = 0.29;
/** A source must give at least this many times the rating for the fuse to open surely; ECSS-Q-ST-30-11C, 6.17.3. */
const SHORT_SHARE = 3;

/** Specific heat and resistivity of copper over its density, for the adiabatic heating of a wire. */
const COPPER = {
  /** [J/(kg·K)], handbook value at 25 °C. */
  heat: 385,
  /** [kg/m³], IEC 60028. */
  density: 8890,
  /** [Ω·m] at 20 °C, IEC 60028. */
  resistivity: 1 / 58e6,
  /** [1/K], IEC 60028. */
  coefficient: 0.00393,
} as const;

/**
 * Time an insulated wire bears a current before its copper reaches a limit, no heat escaping: careful.
 * ∫ c ρm / (ρ20 (1 + α ΔT)) dT = J² t, so t = (c ρm A² / (ρ20 α I²)) ln((1 + α (T − 20)) / (1 + α (T0 − 20))).
 * Onderdonk's form is the same integral up to the melting point.
 */
export function wireBears(area: number, current: number, start: number, limit: number): number {
  if (current <= 0) return NEVER;
  const grown = (t: number) => 1 + COPPER.coefficient * (t - COPPER_REFERENCE);
  const constant = (COPPER.heat * COPPER.density) / (COPPER.resistivity * COPPER.coefficient);
  return Math.min(NEVER, constant * (area / current) ** 2 * Math.log(grown(limit) / grown(start)));
}

const areas = {
  packArea: 'run.pack.area',
  bridgeArea: 'run.bridge.area',
  motorArea: 'run.motor.area',
  converterArea: 'run.converter.area',
} as const;

const limits = {
  packLimit: 'run.pack.temperatureMax',
  bridgeLimit: 'run.bridge.temperatureMax',
  motorLimit: 'run.motor.temperatureMax',
  converterLimit: 'run.converter.temperatureMax',
} as const;

/** The runs that hang behind the fuse without a converter between. */
const BEHIND = RUNS.filter((run) => run !== 'board');

export const fuseSums: SumsOf<FuseId> = {
  'fuse.needed': sum(
    {
      title: 'least rating of the fuse for the steepest climb',
      unit: 'A',
      caveat: 'By the 25 % derating rule; the next made size up is the one to buy.',
    },
    {
      uses: { current: 'pack.currentClimb' },
      formula: '{current} / 0.75',
      laws: [fuseRatingByDerating],
      value: ({ current }) => fuseRatingByDerating({ current }),
    },
  ),
  'fuse.stallCurrent': sum(
    {
      title: 'pack current of a lasting stall, at its weakest',
      unit: 'A',
      caveat:
        'All drive motors stalled, hot after the first seconds, cold pack at the reserve: what is left to open the fuse. One wheel blocked among several draws less still.',
    },
    {
      uses: {
        rest: 'pack.restReserve',
        pack: 'pack.resistanceCold',
        resistance: 'drive.resistance',
        stand: 'pack.currentStand',
        ...PATH,
      },
      takes: (layout) => ({
        winding: climbing().winding,
        motors: motorsOf(layout),
        sharing: sharingOf(layout),
      }),
      formula: `{stand} + {motors} · {duty} · i, i = ({duty} · {rest} − {threshold}) / ({resistance} at {winding} + ${OWN_WORDS} + {motors} · {duty}² · (${SHARED_WORDS})), not below 0`,
      laws: [copperResistance, motorStallCurrent],
      value: ({ rest, resistance, winding, stand, ...x }) => {
        const hot = copperResistance({ r20: resistance, temperature: winding });
        return stand + x.motors * x.duty * stalled(circuitOf(x, rest, hot));
      },
    },
  ),
  'fuse.stallShare': sum(
    { title: 'current of a lasting stall over the rating of the fuse', unit: '1' },
    {
      uses: { current: 'fuse.stallCurrent', rating: 'fuse.rating' },
      formula: '{current} / {rating}',
      laws: [],
      value: ({ current, rating }) => current / rating,
    },
  ),
  'fuse.stallTime': sum(
    {
      title: 'longest time the fuse takes to open on a lasting stall',
      unit: 's',
      caveat:
        'From the time gates of blade fuses. 360 000 s stands for never: the stall is below what opens it, and only the drive’s own cut-out ends it.',
    },
    {
      uses: { share: 'fuse.stallShare' },
      formula: 'slowest opening at {share} times the rating',
      laws: [fuseSlowestOpening],
      value: ({ share }) => Math.min(NEVER, fuseSlowestOpening({ family: 'blade', share })),
    },
  ),
  'fuse.stallTimeMax': sum(
    { title: 'longest time a stall may last before the fuse opens', unit: 's' },
    {
      uses: {},
      takes: () => ({
        time: {
          value: STALL_TIME_MAX,
          unit: 's',
          is: 'stall that wires and bridge bear; the winding may burn sooner',
          source: 'common practice, no source',
        },
      }),
      formula: '{time}',
      laws: [],
      value: ({ time }) => time,
    },
  ),
  'fuse.shortCurrent': sum(
    {
      title: 'short-circuit current through the fuse',
      unit: 'A',
      caveat: 'A short behind the pack run, full pack: the most the fuse must be able to break.',
    },
    {
      uses: { cell: 'pack.cellResistance', leads: 'wiring.pack.resistance' },
      takes: (layout) => ({
        full: cellVoltageOf(layout.chemistry, 'full'),
        cells: cellsOf(layout),
      }),
      formula: '{cells} · {full} / ({cells} · {cell} + {leads})',
      laws: [prospectiveShortCircuit],
      value: ({ cell, leads, full, cells }) =>
        prospectiveShortCircuit({
          openVoltage: cells * full,
          series: cells,
          parallel: 1,
          cellResistance: cell,
          leadResistance: leads,
        }),
    },
  ),
  'fuse.shortLow': sum(
    {
      title: 'weakest short-circuit current through the fuse',
      unit: 'A',
      caveat:
        'At the far end of the longest run, cold pack at the reserve: what is left to open the fuse. A loose strand has a resistance of its own on top.',
    },
    {
      uses: {
        rest: 'pack.restReserve',
        pack: 'pack.resistanceCold',
        lead: 'wiring.pack.resistance',
        bridge: 'wiring.bridge.resistance',
        motor: 'wiring.motor.resistance',
        converter: 'wiring.converter.resistance',
      },
      formula: '{rest} / ({pack} + {lead} + max({bridge} + {motor}, {converter}))',
      laws: [],
      value: ({ rest, pack, lead, bridge, motor, converter }) =>
        rest / (pack + lead + Math.max(bridge + motor, converter)),
    },
  ),
  'fuse.shortShare': sum(
    { title: 'weakest short-circuit current over the rating of the fuse', unit: '1' },
    {
      uses: { current: 'fuse.shortLow', rating: 'fuse.rating' },
      formula: '{current} / {rating}',
      laws: [],
      value: ({ current, rating }) => current / rating,
    },
  ),
  'fuse.shortShareWanted': sum(
    { title: 'short-circuit current over rating that opens a fuse surely', unit: '1' },
    {
      uses: {},
      takes: () => ({
        times: { value: SHORT_SHARE, unit: '1', is: 'times the rating', source: 'ECSS-Q-ST-30-11C Rev. 2, 6.17.3' },
      }),
      formula: '{times}',
      laws: [],
      value: ({ times }) => times,
    },
  ),
  'fuse.shortTime': sum(
    { title: 'longest time the fuse takes to open on the weakest short', unit: 's' },
    {
      uses: { share: 'fuse.shortShare' },
      formula: 'slowest opening at {share} times the rating',
      laws: [fuseSlowestOpening],
      value: ({ share }) => Math.min(NEVER, fuseSlowestOpening({ family: 'blade', share })),
    },
  ),
  'fuse.wireTime': sum(
    {
      title: 'time the weakest wire behind the fuse bears the weakest short',
      unit: 's',
      caveat:
        'From the hottest air to the limit of the insulation, no heat escaping: the careful reading. The weakest short is the worst one for the wire, as a fuse lets the more I²t through the longer it takes.',
    },
    {
      uses: { ...areas, ...limits, current: 'fuse.shortLow', air: 'day.hottest' },
      formula:
        'least over the runs of (c ρm A² / (ρ20 α {current}²)) · ln((1 + α (limit − 20 °C)) / (1 + α ({air} − 20 °C))): {packArea} {packLimit}; {bridgeArea} {bridgeLimit}; {motorArea} {motorLimit}; {converterArea} {converterLimit}',
      laws: [onderdonkFusingTime],
      value: (x) => Math.min(...BEHIND.map((run) => wireBears(x[`${run}Area`], x.current, x.air, x[`${run}Limit`]))),
    },
  ),
  'fuse.startEnergy': sum(
    {
      title: 'I²t of one start',
      unit: 'A²·s',
      caveat: 'The current falls from the stall to the climb’s in a straight line while the vehicle gets going.',
    },
    {
      uses: { peak: 'pack.currentStall', end: 'pack.currentClimb' },
      takes: () => ({
        time: { value: START_TIME, unit: 's', is: 'duration of a start', source: 'common practice, no source' },
      }),
      formula: '({peak}² + {peak} · {end} + {end}²) · {time} / 3',
      laws: [rampEnergy],
      value: ({ peak, end, time }) => rampEnergy({ peak, end: Math.min(end, peak), time }),
    },
  ),
  'fuse.startShare': sum(
    { title: 'I²t of one start over what melts the fuse', unit: '%' },
    {
      uses: { start: 'fuse.startEnergy', melting: 'fuse.meltingEnergy' },
      formula: '{start} / {melting}',
      laws: [],
      value: ({ start, melting }) => start / melting,
    },
  ),
  'fuse.startShareMax': sum(
    { title: 'share of the melting I²t a fuse bears ten thousand times', unit: '%' },
    {
      uses: {},
      takes: () => ({
        share: {
          value: START_SHARE,
          unit: '1',
          is: 'share borne 10 000 times',
          source: 'maker’s fuseology guide, chart 2 (2017)',
        },
      }),
      formula: '{share}',
      laws: [],
      value: ({ share }) => share,
    },
  ),
};
