/** Runs the circuits of the book of checks in a circuit simulator compiled for JavaScript engines. */
import { Simulation } from 'eecircuit-engine';
import { type Circuit, deck, type Kept } from '../packages/laws/src/circuits/circuit.ts';
import { measure, type Waves } from './measure.ts';
import { read } from './tree.ts';

/** Significant digits that are kept of a result. */
const DIGITS = 9;

const UNITS: Readonly<Record<string, number>> = { s: 1, m: 1e-3, u: 1e-6, n: 1e-9 };

/** A simulator that has been started. */
export interface Simulator {
  /** Its name and version, and the package it came in. */
  readonly name: string;
  /** Runs a netlist. Rejects when the simulator complained of any line or stopped early. */
  readonly run: (netlist: string) => Promise<Waves>;
}

/** Starts the simulator, which takes about a second. */
export async function startSimulator(): Promise<Simulator> {
  const simulation = new Simulation();
  await simulation.start();
  const engine = /ngspice-[\d.]+/.exec(simulation.getInitInfo())?.[0];
  if (!engine) throw new Error('The simulator does not say its version');
  const { name, version } = JSON.parse(read('node_modules/eecircuit-engine/package.json')) as Readonly<
    Record<string, string>
  >;
  return {
    name: `${engine.replace('-', ' ')} (${name} ${version})`,
    run: async (netlist) => {
      simulation.setNetList(netlist);
      const result = await simulation.runSim();
      // A line that it cannot read is only warned about, and the rest may still run.
      const complaints = simulation.getError().filter((line) => line.trim() !== '');
      if (complaints.length > 0) throw new Error(`The simulator complained: ${complaints.join(' / ')}`);
      if (result.dataType !== 'real') throw new Error('The netlist asks for no transient analysis');
      const waves: Waves = new Map(result.data.map((signal) => [signal.name, signal.values]));
      refuseShortRun(netlist, waves.get('time') ?? []);
      return waves;
    },
  };
}

/** Length and largest step of the transient analysis a netlist asks for [s]. */
function asked(netlist: string): { readonly length: number; readonly step: number } {
  const line = /^\.tran (.+)$/m.exec(netlist)?.[1] ?? '';
  const [, length, , step] = line.split(' ').map((word) => {
    const [, digits, unit = 's'] = /^([\d.]+)([mun]?)$/.exec(word) ?? [];
    return Number(digits) * (UNITS[unit || 's'] ?? Number.NaN);
  });
  if (!length || !step) throw new Error('A netlist has one line ".tran step length start largest-step uic"');
  return { length, step };
}

/** No step is longer than the largest, so a whole run has at least as many points as such steps fit into it. */
function refuseShortRun(netlist: string, time: readonly number[]): void {
  const { length, step } = asked(netlist);
  const end = time.at(-1) ?? 0;
  const floor = Math.floor((0.999 * length) / step);
  if (end < 0.999999 * length || time.length < floor) {
    throw new Error(`Ran to ${end} of ${length} s in ${time.length} points; at least ${floor} were asked for`);
  }
}

/** Runs a circuit and gives what would be kept of it. */
export async function simulate(simulator: Simulator, circuit: Circuit): Promise<Kept> {
  const waves = await simulator.run(deck(circuit));
  const results = Object.entries(circuit.measures).map(([name, what]) => [
    name,
    Number(measure(waves, what).toPrecision(DIGITS)),
  ]);
  return {
    simulator: simulator.name,
    points: waves.get('time')?.length ?? 0,
    results: Object.fromEntries(results) as Readonly<Record<string, number>>,
  };
}
