/** What is known about every quantity a dossier may hold: stated once, read by the schema, the docs and the desk. */

import type { Chemistry } from '@longrein/laws';

/** How a quantity behaves from case to case. */
export type Behaviour =
  /** One truth, not exactly known: a resistance, a mass. */
  | 'doubt'
  /** Differs from day to day: temperature, surface, driver. */
  | 'variation'
  /** The declared worst of something that varies: hottest day, steepest slope. */
  | 'worst'
  /** Chosen by the maker: a duty ceiling, a picture size. */
  | 'setting';

/** The discrete facts of a vehicle that a stated assumption may depend on. */
export interface Traits {
  readonly chemistry: Chemistry;
  readonly cells: number;
  readonly toyChemistry: Chemistry;
  readonly toyCells: number;
  readonly bridge: 'bipolar' | 'mosfet';
  readonly steering: 'on-off' | 'servo' | 'skid';
  readonly magnet: 'ferrite' | 'neodymium';
}

/** An assumption made when a quantity is not stated: the text as a maker would have written it, and why. */
export interface Assumption {
  readonly text: string;
  readonly because: string;
}

/** The facts of one quantity. Bounds are in SI. */
export interface QuantityFacts {
  readonly title: string;
  /** Unit it is asked for in; any unit of the same dimension is accepted. */
  readonly unit: string;
  readonly is: Behaviour;
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
  /** How to measure it with ordinary tools. */
  readonly how: string;
  /** What is assumed when it is absent; without this an absent quantity stays missing. */
  readonly otherwise?: Assumption | ((traits: Traits) => Assumption | undefined);
}

/** Helps writing a table of facts: checks the shape and keeps the literal ids. */
export function facts<const T extends Record<string, QuantityFacts>>(table: T): T {
  return table;
}

/** Shorthand for an assumption. */
export function assume(text: string, because: string): Assumption {
  return { text, because };
}
