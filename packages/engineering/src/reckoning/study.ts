/** A study: all sums of a vehicle over all cases, and over the vehicle exactly as stated. */
import { OutOfRange } from '@longrein/laws';
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Input, Vehicle } from '../dossier/resolve.ts';
import { band } from '../quantity/bands.ts';
import { drawCases } from '../quantity/cases.ts';
import type { Band, CaseInput, Cases } from '../quantity/shapes.ts';
import { type Graph, graphOf, type Sums } from './graph.ts';
import type { Constant, Ref, Route } from './sum.ts';
import { isSumId, type SumId } from './sums/ids.ts';

export interface StudyOptions {
  /** How many possible vehicles; 1,000 unless said otherwise. */
  readonly cases?: number;
  readonly seed?: number;
}

export const CASES_DEFAULT = 1000;
export const SEED_DEFAULT = 1;

/** A sum over all cases. */
export interface SumResult {
  readonly id: SumId;
  readonly route: Route;
  readonly constants: Readonly<Record<string, Constant>>;
  /** Value in case i; the last one, at index `count`, is the vehicle exactly as stated. */
  readonly values: Float64Array;
  readonly band: Band;
  /** Where some cases have no finite value: how many, and what the first of them said. */
  readonly cause?: { readonly cases: number; readonly says: string };
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
  for (const id of graph.order) {
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
  const names = Object.keys(route.uses);
  const columns = names.map(
    (name) => columnOf({ inputs, sums }, route.uses[name] as Ref) ?? new Float64Array(count + 1),
  );
  const constants = route.takes?.(vehicle.layout) ?? {};
  const row: Record<string, number> = {};
  for (const [name, constant] of Object.entries(constants)) row[name] = constant.value;
  const values = new Float64Array(count + 1);
  let faulty = 0;
  let says = '';
  for (let i = 0; i <= count; i++) {
    for (let k = 0; k < names.length; k++) row[names[k] as string] = (columns[k] as Float64Array)[i] as number;
    let value: number;
    try {
      value = route.value(row, vehicle.layout);
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
      if (faulty === 0) says = error.message;
      value = Number.NaN;
    }
    if (!Number.isFinite(value)) {
      if (faulty === 0 && says === '') says = `${id} comes out as ${value}`;
      faulty++;
      value = Number.NaN;
    }
    values[i] = value;
  }
  const cause = faulty === 0 ? undefined : { cases: faulty, says: rootCause(route, sums) ?? says };
  return { id, route, constants, values, band: band(values.subarray(0, count)), ...(cause ? { cause } : {}) };
}

/** A sum that rests on one without a finite value has that one's cause. */
function rootCause(route: Route, sums: ReadonlyMap<SumId, SumResult>): string | undefined {
  for (const ref of Object.values(route.uses)) {
    const cause = isSumId(ref) ? sums.get(ref)?.cause : undefined;
    if (cause) return cause.says;
  }
  return undefined;
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
