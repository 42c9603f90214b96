/**
 * The reckoning's loop against the same arithmetic written by hand in C (c/sums.c). Both get the same columns; that they
 * compute the same numbers is checked, to a billionth, before anything is timed.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CHEMISTRY_FACTS, MAGNET_COEFFICIENT, type Reckoning, type Ref, type SumResult, workOut } from './built.ts';
import { compare, median, type Result, secondsOf } from './clock.ts';

const BUILD = join(import.meta.dirname, '.build');
const SOURCE = join(import.meta.dirname, 'c/sums.c');
const PROGRAM = join(BUILD, 'sums');
const FLAGS = ['-O3', '-fno-math-errno'];
/** Relative difference that two orders of the same additions may make. */
const SAME = 1e-9;
/** Calls after which the engine has translated what it will. */
const WARMING = 40;

const RUNS = ['pack', 'bridge', 'motor', 'converter', 'board'] as const;
const ofRuns = (what: string): string[] => RUNS.map((run) => `wiring.${run}.${what}`);

/** What the C program works out without solving anything: mass, pack, supply, drive, duty and wiring. */
const PLAIN = [
  ...['wiring', 'added', 'total', 'ratio'].map((id) => `mass.${id}`),
  ...['resistance', 'resistanceCold', 'realCapacity', 'currentClimb', 'currentStall', 'currentMean'].map(
    (id) => `pack.${id}`,
  ),
  ...['rateClimb', 'rateStall', 'voltageClimb', 'power'].map((id) => `pack.${id}`),
  ...['ceiling', 'motorVoltage'].map((id) => `duty.${id}`),
  ...['constant', 'stallCurrent', 'stallTorque', 'wheelForceStall', 'forceLevel', 'forceClimb'].map(
    (id) => `drive.${id}`,
  ),
  ...['torqueCruise', 'torqueClimb', 'currentCruise', 'currentClimb', 'voltageCruise'].map((id) => `drive.${id}`),
  ...['dutyCruise', 'dutyClimb', 'powerCruise', 'powerClimb', 'speedClimb', 'topSpeed'].map((id) => `drive.${id}`),
  ...['channelCruise', 'channelClimb', 'dropCruise', 'dropClimb', 'ripple', 'ripplePeak'].map((id) => `bridge.${id}`),
  ...['loadPeak', 'inputPeakPower', 'currentPeak', 'inputNeeded', 'boardVoltage', 'holdUp'].map((id) => `supply.${id}`),
  ...ofRuns('resistance'),
  ...ofRuns('current'),
  ...['contactUse', 'dropClimb', 'dropShare'].map((id) => `wiring.${id}`),
];
/** What rests on a law that solves for a temperature in every case. */
const SOLVED = [...ofRuns('rise'), 'wiring.hottest'];

/** The sums to work out, in the order of the reckoning, and the columns they are given. */
interface Work {
  readonly reckoning: Reckoning;
  readonly sums: readonly SumResult[];
  readonly given: readonly Ref[];
}

function workOf(reckoning: Reckoning, ids: readonly string[]): Work {
  const { study } = reckoning;
  const sums = [...study.sums.values()].filter(({ id }) => ids.includes(id));
  const absent = ids.filter((id) => !sums.some((sum) => sum.id === id));
  if (absent.length > 0) throw new Error(`sedge has no ${absent.join(', ')} any more: change c/sums.c and its list`);
  const used = new Set(sums.flatMap(({ route }) => Object.values(route.uses)));
  return { reckoning, sums, given: [...used].filter((ref) => !ids.includes(ref)) };
}

const columnOf = ({ reckoning }: Work, ref: Ref): Float64Array => {
  const { inputs, sums } = reckoning.study;
  const column =
    (inputs as ReadonlyMap<string, Float64Array>).get(ref) ?? (sums as ReadonlyMap<string, SumResult>).get(ref)?.values;
  if (column === undefined) throw new Error(`${ref} is not known`);
  return column;
};

/** The engine's own loop over the sums, each with the columns that came before. */
function ours(work: Work): Map<Ref, Float64Array> {
  const columns = new Map(work.given.map((ref) => [ref, columnOf(work, ref)]));
  const rows = work.reckoning.study.count + 1;
  for (const { id, route, constants } of work.sums) {
    const used = Object.entries(route.uses).map(
      ([name, ref]) => [name, columns.get(ref) ?? columnOf(work, ref)] as const,
    );
    columns.set(id, workOut(id, route, work.reckoning.vehicle.layout, constants, new Map(used), rows).values);
  }
  return columns;
}

const nameInC = (ref: string): string => ref.toUpperCase().replaceAll(/\W/g, '_');

/** columns.h: names the columns and holds the tabulated figures the sums take. */
function header(work: Work): string {
  const { layout } = work.reckoning.vehicle;
  const constant = (id: string, name: string): number => {
    const found = work.sums.find((sum) => sum.id === id)?.constants[name];
    if (found === undefined) throw new Error(`${id} takes no ${name} any more: change c/sums.c`);
    return found.value;
  };
  const figures = {
    MOTORS: constant('drive.dutyClimb', 'motors'),
    SHARING: constant('drive.stallCurrent', 'sharing'),
    BRIDGES: constant('mass.added', 'bridges'),
    CELLS: constant('pack.resistance', 'cells'),
    SERVICE: constant('wiring.pack.resistance', 'service'),
    MAGNETS_LEVEL: constant('drive.voltageCruise', 'magnets'),
    MAGNETS_CLIMB: constant('drive.dutyClimb', 'magnets'),
    WINDING_LEVEL: constant('drive.voltageCruise', 'winding'),
    WINDING_CLIMB: constant('drive.dutyClimb', 'winding'),
    MAGNET_PER_KELVIN: MAGNET_COEFFICIENT[layout.magnet].perKelvin,
    ACTIVATION_ENERGY: CHEMISTRY_FACTS[layout.chemistry].activationEnergy.value,
  };
  const names = (prefix: string, refs: readonly string[]) =>
    `enum { ${[...refs.map(nameInC), 'COUNT'].map((name) => `${prefix}_${name}`).join(', ')} };`;
  return [
    `#define SOLVES ${work.sums.some(({ id }) => SOLVED.includes(id)) ? 1 : 0}`,
    ...Object.entries(figures).map(([name, value]) => `#define ${name} (${value.toExponential()})`),
    names('IN', work.given),
    names(
      'OUT',
      work.sums.map(({ id }) => id),
    ),
  ].join('\n');
}

/** Compiles the C program; why not, where there is no compiler. */
function compile(work: Work): string | undefined {
  mkdirSync(BUILD, { recursive: true });
  writeFileSync(join(BUILD, 'columns.h'), `${header(work)}\n`);
  const { status, error, stderr } = spawnSync('cc', [...FLAGS, `-I${BUILD}`, '-o', PROGRAM, SOURCE, '-lm'], {
    encoding: 'utf8',
  });
  if (error) return `no C compiler: ${error.message}`;
  if (status !== 0) throw new Error(`c/sums.c does not compile:\n${stderr}`);
  return undefined;
}

/** Runs the C program so often; gives the seconds of one pass and what it worked out. */
function handWritten(work: Work, runs: number): { readonly seconds: number; readonly results: Float64Array } {
  const rows = work.reckoning.study.count + 1;
  const [from, to] = [join(BUILD, 'columns.bin'), join(BUILD, 'results.bin')];
  const all = new Float64Array(rows * work.given.length);
  for (const [c, ref] of work.given.entries()) all.set(columnOf(work, ref), c * rows);
  writeFileSync(from, all);
  const { status, stdout } = spawnSync(PROGRAM, [from, to, `${rows}`, `${runs}`], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the C program failed with ${status}`);
  const bytes = readFileSync(to);
  const results = new Float64Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
  return { seconds: median(stdout.trim().split('\n').map(Number)) / 1e9, results };
}

function insistOnSame(work: Work, columns: ReadonlyMap<Ref, Float64Array>, results: Float64Array): void {
  const rows = work.reckoning.study.count + 1;
  for (const [k, { id }] of work.sums.entries()) {
    const mine = columns.get(id) ?? new Float64Array(rows).fill(Number.NaN);
    for (let i = 0; i < rows; i++) {
      const [a, b] = [mine[i] as number, results[k * rows + i] as number];
      if (!(Math.abs(a - b) <= SAME * Math.abs(b))) throw new Error(`${id} in case ${i}: ours ${a}, C ${b}`);
    }
  }
}

/** One comparison, after checking that both sides compute the same. */
function against(id: string, of: string, reckoning: Reckoning, ids: readonly string[]): Result | string {
  const work = workOf(reckoning, ids);
  const why = compile(work);
  if (why !== undefined) return why;
  insistOnSame(work, ours(work), handWritten(work, 1).results);
  for (let i = 0; i < WARMING; i++) ours(work);
  const what = `${ids.length} sums over ${reckoning.study.count} cases, ${of}: ours against the same arithmetic hand-written in C (cc ${FLAGS.join(' ')}), evaluation loops only`;
  return compare({ id, what, unit: 'ms', runs: 11 }, () => ({
    ours: secondsOf(20, () => ours(work)),
    baseline: handWritten(work, 200).seconds,
  }));
}

/**
 * Ratios of the engine's loop to the hand-written one: with the wires, where most of the time is spent in solving, and
 * without them, where it is spent in handing over names. Says why not, where there is no compiler.
 */
export const againstHandWritten = (reckoning: Reckoning): readonly (Result | string)[] => [
  against('sums-against-c', 'five of which solve for the temperature of a wire', reckoning, [...PLAIN, ...SOLVED]),
  against('plain-sums-against-c', 'none of which solves anything', reckoning, PLAIN),
];
