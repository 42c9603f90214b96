/** Sums of the wiring runs: resistance, current, temperature rise, contacts, drop. */
import { copperResistance, OutOfRange, pwmRms, twoWireDrop, wireRise, ZERO_CELSIUS } from '@longrein/laws';
import { RUNS, type Run } from '../../dossier/facts/build.ts';
import type { InputId } from '../../dossier/facts/quantities.ts';
import { type Constant, type Ref, type Sum, type SumsOf, sum } from '../sum.ts';
import { fuseSums } from './fuse.ts';
import type { SumId, SumIdOf } from './ids.ts';
import { named } from './practice.ts';

/** Copper in service: a wire among others in an enclosure. Common practice, no source. */
const SERVICE: Constant = {
  value: ZERO_CELSIUS + 40,
  unit: '°C',
  is: 'temperature of copper in service',
  source: 'common practice, no source',
};

const CARRIES: Readonly<Record<Run, string>> = {
  pack: 'from pack to the branching point, fuse included',
  bridge: 'from the branching point to the bridge',
  motor: 'from the bridge to one drive motor',
  converter: 'from the branching point to the converter',
  board: 'from converter to board',
};

function resistance(run: Run): Sum {
  const base = {
    length: `run.${run}.length`,
    perMetre: `run.${run}.resistancePerMetre`,
    contacts: `run.${run}.contactResistance`,
  } as const satisfies Record<string, Ref>;
  const about = { title: `resistance of the ${run} run, out and back, ${CARRIES[run]}`, unit: 'mΩ' };
  const loop = (x: { length: number; perMetre: number; contacts: number; service: number }) =>
    twoWireDrop({
      length: x.length,
      resistancePerMetre: copperResistance({ r20: x.perMetre, temperature: x.service }),
      current: 1,
    }) + x.contacts;
  const wire = '2 · {length} · {perMetre} at {service} + {contacts}';
  const takes = () => ({ service: SERVICE });
  return run === 'pack'
    ? sum(about, {
        uses: { ...base, fuse: 'fuse.resistance' },
        takes,
        formula: `${wire} + {fuse}`,
        laws: [twoWireDrop, copperResistance],
        value: (x) => loop(x) + x.fuse,
      })
    : sum(about, { uses: base, takes, formula: wire, laws: [twoWireDrop, copperResistance], value: loop });
}

/** Stands for a wire whose copper passes 200 °C, where its law ends [K]: above what any insulation bears. */
const BURNT_RISE = 400;
/** Symbol of the argument that the law refuses for a wire too hot. */
const CURRENT = wireRise.facts.args.current.symbol;
/** Hottest air the law of the wire takes [K]; a box hotter than that fails elsewhere. */
const AIR_MOST = 373;

/** Runs that lie in the enclosure with the electronics; pack and motors have theirs outside. */
const airOf = (run: Run) => (run === 'pack' || run === 'motor' ? 'day.hottest' : 'heat.localAir');

function riseOf(wire: Parameters<typeof wireRise>[0]): number {
  try {
    return wireRise(wire);
  } catch (error) {
    if (error instanceof OutOfRange && error.argument === CURRENT) return BURNT_RISE;
    throw error;
  }
}

function rise(run: Run): Sum {
  return sum(
    {
      title: `temperature rise of the wire of the ${run} run on the steepest climb`,
      unit: 'K',
      caveat: `A single wire in still air; in a bundle or a sleeve it is hotter. ${BURNT_RISE} K stands for copper above 200 °C.`,
    },
    {
      uses: {
        current: `wiring.${run}.current`,
        air: airOf(run),
        perMetre: `run.${run}.resistancePerMetre`,
        area: `run.${run}.area`,
        outer: `run.${run}.diameter`,
      } as const,
      formula: 'rise of a wire of {perMetre}, copper {area}, outside {outer}, at {current} in air of {air}',
      laws: [wireRise],
      value: ({ current, air, perMetre, area, outer }) =>
        riseOf({
          current,
          ambient: Math.min(air, AIR_MOST),
          resistancePerMetre: perMetre,
          conductorDiameter: Math.min(Math.sqrt((4 * area) / Math.PI), outer),
          outerDiameter: outer,
        }),
    },
  );
}

const currents: SumsOf<`wiring.${Run}.current`> = {
  'wiring.pack.current': sum(
    { title: 'current of the pack run on the steepest climb', unit: 'A' },
    { uses: { current: 'pack.currentClimb' }, formula: '{current}', laws: [], value: ({ current }) => current },
  ),
  'wiring.bridge.current': sum(
    { title: 'current of the bridge run on the steepest climb', unit: 'A' },
    {
      uses: { pack: 'pack.currentClimb', stand: 'pack.currentStand' },
      formula: '{pack} − {stand}',
      laws: [],
      value: ({ pack, stand }) => Math.max(0, pack - stand),
    },
  ),
  'wiring.motor.current': sum(
    { title: 'current of a motor run on the steepest climb, root mean square', unit: 'A' },
    {
      uses: { current: 'drive.currentClimb', ripple: 'bridge.ripple' },
      formula: '√({current}² + {ripple}²/12)',
      laws: [pwmRms],
      value: ({ current, ripple }) => pwmRms({ mean: current, ripple }),
    },
  ),
  'wiring.converter.current': sum(
    { title: 'current of the converter run at the peak, pack at the reserve', unit: 'A' },
    {
      uses: { power: 'supply.inputPeakPower', voltage: 'pack.restReserve' },
      formula: '{power} / {voltage}',
      laws: [],
      value: ({ power, voltage }) => power / voltage,
    },
  ),
  'wiring.board.current': sum(
    { title: 'current of the board run at the peak', unit: 'A' },
    { uses: { current: 'supply.currentPeak' }, formula: '{current}', laws: [], value: ({ current }) => current },
  ),
};

/** One reference for each run, under the name of the run, so that one formula can read them all. */
function eachRun<T extends string>(ref: (run: Run) => T): Record<Run, T> {
  return Object.fromEntries(RUNS.map((run) => [run, ref(run)])) as Record<Run, T>;
}

const BEHIND_CONVERTER =
  'The board run is not among them: its current comes from the converter, which changes and limits it.';

/** What the runs that hang on the fuse without a converter between bear. */
const behindFuse = <const K extends 'currentMax' | 'contactCurrentMax'>(key: K) =>
  ({
    pack: `run.pack.${key}`,
    bridge: `run.bridge.${key}`,
    motor: `run.motor.${key}`,
    converter: `run.converter.${key}`,
  }) as const;

const summary: SumsOf<
  | 'wiring.hottest'
  | 'wiring.spareWanted'
  | 'wiring.wholeUse'
  | 'wiring.dropMax'
  | 'wiring.insulationSpare'
  | 'wiring.contactUse'
  | 'wiring.ampacityUse'
  | 'wiring.weakest'
  | 'wiring.weakestContact'
  | 'wiring.dropClimb'
  | 'wiring.dropShare'
> = {
  'wiring.hottest': sum(
    { title: 'temperature of the hottest wire on the hottest day', unit: '°C' },
    {
      uses: { ...eachRun((run) => `wiring.${run}.rise` as const), outside: 'day.hottest', inside: 'heat.localAir' },
      formula: 'max({outside} + max({pack}, {motor}), {inside} + max({bridge}, {converter}, {board}))',
      laws: [],
      value: (x) =>
        Math.max(x.outside + Math.max(x.pack, x.motor), x.inside + Math.max(x.bridge, x.converter, x.board)),
    },
  ),
  'wiring.insulationSpare': sum(
    {
      title: 'what the insulation has left, at the run that has least',
      unit: 'K',
      caveat:
        'Pack and motor runs in the open, the others in the air of the enclosure. Below zero the insulation of one of the wires softens.',
    },
    {
      uses: {
        ...eachRun((run) => `wiring.${run}.rise` as const),
        outside: 'day.hottest',
        inside: 'heat.localAir',
        packLimit: 'run.pack.temperatureMax',
        bridgeLimit: 'run.bridge.temperatureMax',
        motorLimit: 'run.motor.temperatureMax',
        converterLimit: 'run.converter.temperatureMax',
        boardLimit: 'run.board.temperatureMax',
      },
      formula:
        'min({packLimit} − {pack} − {outside}, {motorLimit} − {motor} − {outside}, {bridgeLimit} − {bridge} − {inside}, {converterLimit} − {converter} − {inside}, {boardLimit} − {board} − {inside})',
      laws: [],
      value: (x) =>
        Math.min(
          x.packLimit - x.pack - x.outside,
          x.motorLimit - x.motor - x.outside,
          x.bridgeLimit - x.bridge - x.inside,
          x.converterLimit - x.converter - x.inside,
          x.boardLimit - x.board - x.inside,
        ),
    },
  ),
  'wiring.spareWanted': named('what the insulation should have left', 'K', 10, 'room for bundling and age'),
  'wiring.wholeUse': named('use of a rating, at most', '%', 1, 'the whole rating'),
  'wiring.dropMax': named('share of the pack voltage the wiring may lose', '%', 0.08, '5 to 10 % for motor leads'),
  'wiring.contactUse': useOf('greatest use of a connector on the steepest climb', 'contactCurrentMax'),
  'wiring.ampacityUse': useOf('greatest use of a wire’s handbook current on the steepest climb', 'currentMax'),
  'wiring.weakest': sum(
    { title: 'handbook current of the weakest wire behind the fuse', unit: 'A', caveat: BEHIND_CONVERTER },
    {
      uses: behindFuse('currentMax'),
      formula: 'min({pack}, {bridge}, {motor}, {converter})',
      laws: [],
      value: (x) => Math.min(...Object.values(x)),
    },
  ),
  'wiring.weakestContact': sum(
    { title: 'rating of the weakest connector behind the fuse', unit: 'A', caveat: BEHIND_CONVERTER },
    {
      uses: behindFuse('contactCurrentMax'),
      formula: 'min({pack}, {bridge}, {motor}, {converter})',
      laws: [],
      value: (x) => Math.min(...Object.values(x)),
    },
  ),
  'wiring.dropClimb': sum(
    { title: 'voltage lost between pack and motor on the steepest climb', unit: 'V' },
    {
      uses: {
        packCurrent: 'wiring.pack.current',
        pack: 'wiring.pack.resistance',
        bridgeCurrent: 'wiring.bridge.current',
        bridge: 'wiring.bridge.resistance',
        motorCurrent: 'wiring.motor.current',
        motor: 'wiring.motor.resistance',
      },
      formula: '{packCurrent} · {pack} + {bridgeCurrent} · {bridge} + {motorCurrent} · {motor}',
      laws: [],
      value: (x) => x.packCurrent * x.pack + x.bridgeCurrent * x.bridge + x.motorCurrent * x.motor,
    },
  ),
  'wiring.dropShare': sum(
    { title: 'share of the pack voltage lost in the wiring on the steepest climb', unit: '%' },
    {
      uses: { drop: 'wiring.dropClimb', voltage: 'pack.nominal' },
      formula: '{drop} / {voltage}',
      laws: [],
      value: ({ drop, voltage }) => drop / voltage,
    },
  ),
};

/** Greatest current over rating among the runs. */
function useOf(title: string, rating: 'contactCurrentMax' | 'currentMax'): Sum {
  const uses: Record<string, SumId | InputId> = {};
  for (const run of RUNS) {
    uses[run] = `wiring.${run}.current`;
    uses[`${run}Max`] = `run.${run}.${rating}`;
  }
  return sum(
    { title, unit: '%' },
    {
      uses,
      formula: `max(${RUNS.map((run) => `{${run}}/{${run}Max}`).join(', ')})`,
      laws: [],
      value: (x) => Math.max(...RUNS.map((run) => (x[run] as number) / (x[`${run}Max`] as number))),
    },
  );
}

export const wiringSums: SumsOf<SumIdOf<'wiring and fuse'>> = {
  ...(Object.fromEntries(
    RUNS.map((run) => [`wiring.${run}.resistance`, resistance(run)]),
  ) as SumsOf<`wiring.${Run}.resistance`>),
  ...currents,
  ...(Object.fromEntries(RUNS.map((run) => [`wiring.${run}.rise`, rise(run)])) as SumsOf<`wiring.${Run}.rise`>),
  ...summary,
  ...fuseSums,
};
