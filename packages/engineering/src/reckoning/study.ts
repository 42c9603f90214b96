/** A study: all sums of a vehicle over all cases, and over the vehicle exactly as stated. */
import { OutOfRange } from '@longrein/laws';
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Input, Layout, Vehicle } from '../dossier/resolve.ts';
import { band } from '../quantity/bands.ts';
import { drawCases } from '../quantity/cases.ts';
import type { Band, CaseInput, Cases } from '../quantity/shapes.ts';
import { isSteady } from '../quantity/summary.ts';
import { type Graph, graphOf, type Sums } from './graph.ts';
import type { Constant, Ref, Route } from './sum.ts';
import { isSumId, type SumId } from './sums/ids.ts';

export interface StudyOptions {
  /** How many possible vehicles; 1,000 unless said otherwise. */
  readonly cases?: number;
  readonly seed?: number;
  /** Told from time to time which share of the work is done, from 0 to 1, for whoever waits. */
  readonly watch?: (share: number) => void;
}

export const CASES_DEFAULT = 1000;
export const SEED_DEFAULT = 1;

/** Why a sum has no finite value somewhere. */
export interface Cause {
  /** In how many cases; the vehicle exactly as stated is not one of them. */
  readonly cases: number;
  /** The sum that failed first; the others rest on it. */
  readonly at: SumId;
  /** What the first failing case said: law, argument, value and what is accepted. */
  readonly says: string;
}

/** A sum over all cases. */
export interface SumResult {
  readonly id: SumId;
  readonly route: Route;
  readonly constants: Readonly<Record<string, Constant>>;
  /** Value in case i; the last one, at index `count`, is the vehicle exactly as stated. */
  readonly values: Float64Array;
  readonly band: Band;
  readonly cause?: Cause;
}

export interface Study {
  readonly vehicle: Vehicle;
  readonly cases: Cases;
  readonly count: number;
  readonly seed: number;
  readonly graph: Graph;
  /** Inputs over all cases, the value as stated last. */
  readonly inputs: ReadonlyMap<InputId, Float64Array>;
  readonly sums: ReadonlyMap<SumId, SumResult>;
}

/** Draws the cases of a vehicle and evaluates every sum that applies to it. */
export function study(sums: Sums, vehicle: Vehicle, options: StudyOptions = {}): Study {
  const count = options.cases ?? CASES_DEFAULT;
  const seed = options.seed ?? SEED_DEFAULT;
  const cases = drawCases([...vehicle.inputs.values()].map(caseInput), {
    cases: count,
    seed,
    correlations: vehicle.correlations,
  });
  const inputs = new Map<InputId, Float64Array>();
  for (const [id, input] of vehicle.inputs) {
    const column = new Float64Array(count + 1);
    const drawn = cases.columns.get(id);
    if (drawn) column.set(drawn.values);
    column[count] = input.quantity.value;
    inputs.set(id, column);
  }
  const graph = graphOf(sums, vehicle);
  const results = new Map<SumId, SumResult>();
  for (const [place, id] of graph.order.entries()) {
    options.watch?.(place / graph.order.length);
    const standing = graph.standing.get(id);
    if (standing?.kind === 'takes') results.set(id, evaluate(id, standing.route, vehicle, inputs, results, count));
  }
  return { vehicle, cases, count, seed, graph, inputs, sums: results };
}

/** Worst values and settings are not drawn over days: they are what they are, within their doubt. */
function caseInput(input: Input): CaseInput {
  return {
    id: input.id,
    quantity: input.quantity,
    kind: input.behaviour === 'variation' ? 'variation' : 'doubt',
    limits: input.facts,
  };
}

/** The column of a reference. */
export function columnOf(study: Pick<Study, 'inputs' | 'sums'>, ref: Ref): Float64Array | undefined {
  return isSumId(ref) ? study.sums.get(ref)?.values : study.inputs.get(ref);
}

function evaluate(
  id: SumId,
  route: Route,
  vehicle: Vehicle,
  inputs: ReadonlyMap<InputId, Float64Array>,
  sums: ReadonlyMap<SumId, SumResult>,
  count: number,
): SumResult {
  const constants = route.takes?.(vehicle.layout) ?? {};
  const columns = new Map(
    Object.entries(route.uses).map(([name, ref]) => [name, known({ inputs, sums }, ref)] as const),
  );
  const { values, says } = workOut(id, route, vehicle.layout, constants, columns, count + 1);
  const found = band(values.subarray(0, count));
  const cause = causeOf(id, route, sums, found.missing, says);
  return { id, route, constants, values, band: found, ...(cause ? { cause } : {}) };
}

/**
 * Works a route out row by row: the loop in which a study spends most of its time.
 * @param columns  what the route uses, by the names its formula shows
 * @returns        the values, NaN where there is none, and what the first failing row said
 */
export function workOut(
  id: SumId,
  route: Route,
  layout: Layout,
  constants: Readonly<Record<string, Constant>>,
  columns: ReadonlyMap<string, Float64Array>,
  rows: number,
): { readonly values: Float64Array; readonly says: string | undefined } {
  // Made at once and not name by name: a long row that grows would turn into a dictionary, which is slow to read.
  const row: Record<string, number> = Object.fromEntries([
    ...Object.entries(constants).map(([name, { value }]) => [name, value] as const),
    ...[...columns].map(([name, column]) => [name, column[0] as number] as const),
  ]);
  const varying = [...columns].filter(([, column]) => !isSteady(column));
  const names = varying.map(([name]) => name);
  const drawn = varying.map(([, column]) => column);
  const values = new Float64Array(rows);
  let says: string | undefined;
  for (let i = 0; i < rows; i++) {
    let whole = true;
    for (let k = 0; k < names.length; k++) {
      const x = (drawn[k] as Float64Array)[i] as number;
      row[names[k] as string] = x;
      if (Number.isNaN(x)) whole = false;
    }
    // What rests on an unknown is unknown, also where a comparison or a minimum would hide it.
    const value = whole ? attempt(id, route, row, layout) : Number.NaN;
    values[i] = typeof value === 'number' ? value : Number.NaN;
    if (typeof value === 'string') says ??= value;
    if (names.length === 0) {
      values.fill(values[0] as number);
      break;
    }
  }
  return { values, says };
}

function known(study: Pick<Study, 'inputs' | 'sums'>, ref: Ref): Float64Array {
  const column = columnOf(study, ref);
  if (column === undefined) throw new Error(`${ref} is used before it is known`);
  return column;
}

/** The value, or why there is none. */
function attempt(id: SumId, route: Route, row: Readonly<Record<string, number>>, layout: Layout) {
  try {
    const value = route.value(row, layout);
    return Number.isFinite(value) ? value : `${id} comes out as ${value}`;
  } catch (error) {
    if (error instanceof OutOfRange) return error.message;
    throw error;
  }
}

/** A sum that rests on one without a finite value has that one's cause. */
function causeOf(
  id: SumId,
  route: Route,
  sums: ReadonlyMap<SumId, SumResult>,
  cases: number,
  says: string | undefined,
): Cause | undefined {
  const causes = Object.values(route.uses).flatMap((ref) => (isSumId(ref) ? (sums.get(ref)?.cause ?? []) : []));
  const root = causes.reduce<Cause | undefined>(
    (most, next) => (most && most.cases >= next.cases ? most : next),
    undefined,
  );
  if (root) return { ...root, cases };
  return says === undefined ? undefined : { cases, at: id, says };
}

/** Every input a reference rests on, for this vehicle. */
export function ancestors(graph: Graph, refs: readonly Ref[]): Set<InputId> {
  const inputs = new Set<InputId>();
  const seen = new Set<Ref>();
  const visit = (ref: Ref): void => {
    if (seen.has(ref)) return;
    seen.add(ref);
    if (!isSumId(ref)) {
      inputs.add(ref);
      return;
    }
    const standing = graph.standing.get(ref);
    if (standing?.kind === 'takes') Object.values(standing.route.uses).forEach(visit);
  };
  refs.forEach(visit);
  return inputs;
}
