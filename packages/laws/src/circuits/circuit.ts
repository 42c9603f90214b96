/**
 * What a circuit of the book of checks is: a netlist that any SPICE simulator reads, what is measured on it, and what
 * one named simulator measured. The laws are held against the kept numbers; a test runs the netlist afresh.
 */

/** A signal of the simulator, such as 'v(bus)' or 'i(lm)', or the difference of two. */
interface Signal {
  readonly of: string;
  readonly minus?: string;
}

/** A number taken from a window of time [s]. */
interface Over extends Signal {
  readonly take: 'mean' | 'rms' | 'min' | 'max';
  readonly from: number;
  readonly to: number;
}

/** The value at one time [s]. */
interface At extends Signal {
  readonly take: 'value';
  readonly at: number;
}

/** The first time [s], not before `from`, at which the signal crosses a level. */
interface Crossing extends Signal {
  readonly take: 'crossing';
  readonly level: number;
  readonly from: number;
}

/** One number read off a run. */
export type Measure = Over | At | Crossing;

/** What a run gave, and which simulator ran. */
export interface Kept<K extends string = string> {
  readonly simulator: string;
  /** Instants the simulator solved. */
  readonly points: number;
  readonly results: Readonly<Record<K, number>>;
}

/** A circuit with its kept run. */
export interface Circuit<K extends string = string> {
  /** Name of the file, without its ending. */
  readonly id: string;
  /** First line of the netlist, which simulators take for its title. */
  readonly title: string;
  /** The netlist between title and `.end`; one `.tran` line says how long and in what largest step. */
  readonly netlist: string;
  readonly measures: Readonly<Record<K, Measure>>;
  readonly kept: Kept<K>;
}

/** Writes a circuit down, holding the kept results to exactly the names that are measured. */
export function circuit<const K extends string>(facts: Circuit<K>): Circuit<K> {
  return facts;
}

/** The whole text a simulator is given. */
export function deck({ title, netlist }: Circuit): string {
  return `${title}\n${netlist.trim()}\n.end\n`;
}

/** Where the kept numbers of a circuit come from, for the book of checks. */
export function sourceOf({ id, kept }: Circuit): string {
  return `${kept.simulator}, transient analysis of circuits/${id}.circuit.ts`;
}
