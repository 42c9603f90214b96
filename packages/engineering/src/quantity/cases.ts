/**
 * N equally likely vehicles by Latin hypercube: the spread of each input is cut into N strata of equal chance, each
 * stratum is used exactly once, and which case gets which stratum is shuffled for each input by itself.
 * Source: McKay, Beckman & Conover, Technometrics 21 (1979), 239–245.
 *
 * Order and place within the stratum come from two streams named after the input, so adding, removing or rearranging
 * inputs changes no other column.
 */
import { correlated, matrixFault } from './correlate.ts';
import { spreadOut } from './marginal.ts';
import { stream } from './random.ts';
import type { CaseInput, CaseOptions, Cases, Column, Correlation } from './shapes.ts';

/** More would need more than 32 random bits for a place within a stratum. */
export const CASES_MAX = 500_000;

/** Draws the cases. Throws RangeError for a wrong number of cases, a repeated id or correlations that cannot be. */
export function drawCases(inputs: readonly CaseInput[], options: CaseOptions): Cases {
  const { cases: count, seed, correlations = [] } = options;
  if (!Number.isInteger(count) || count < 1 || count > CASES_MAX) {
    throw new RangeError(`The number of cases must be a whole number from 1 to ${CASES_MAX}, not ${count}.`);
  }
  const orders = ordersOf(inputs, count, seed, correlations);
  const columns = new Map<string, Column>();
  for (const input of inputs) {
    const values = probabilities(orders.get(input.id) ?? new Int32Array(count), seed, input.id);
    spreadOut(input, values);
    columns.set(input.id, { id: input.id, kind: input.kind, values });
  }
  return { count, seed, columns };
}

/** Which case has which stratum of which input. */
function ordersOf(
  inputs: readonly CaseInput[],
  count: number,
  seed: number,
  correlations: readonly Correlation[],
): Map<string, Int32Array> {
  const orders = new Map<string, Int32Array>();
  for (const { id } of inputs) {
    if (orders.has(id)) throw new RangeError(`The input '${id}' is given twice.`);
    orders.set(id, shuffled(count, seed, id));
  }
  const tied = new Set<string>();
  for (const group of correlations) {
    const fault = matrixFault(group);
    if (fault) throw new RangeError(`The correlation matrix of ${group.ids.join(', ')} ${fault}.`);
    const before = group.ids.map((id) => {
      const order = orders.get(id);
      if (!order) throw new RangeError(`A correlation names '${id}', which is no input.`);
      if (tied.has(id)) throw new RangeError(`'${id}' stands in two correlations; give one matrix for all of them.`);
      tied.add(id);
      return order;
    });
    for (const [k, order] of correlated(before, group).entries()) orders.set(group.ids[k] ?? '', order);
  }
  return orders;
}

/** The numbers from 0 to count − 1 in random order (Durstenfeld 1964). */
function shuffled(count: number, seed: number, id: string): Int32Array {
  const random = stream(seed, `case order of ${id}`);
  const order = new Int32Array(count);
  for (let i = 1; i < count; i++) {
    const other = random.below(i + 1);
    order[i] = order[other] ?? 0;
    order[other] = i;
  }
  return order;
}

/** A chance for each case, somewhere inside its stratum. */
function probabilities(order: Int32Array, seed: number, id: string): Float64Array {
  const random = stream(seed, `place in stratum of ${id}`);
  const count = order.length;
  const byStratum = new Float64Array(count);
  for (let s = 0; s < count; s++) byStratum[s] = (s + random.inside()) / count;
  const chances = new Float64Array(count);
  for (let i = 0; i < count; i++) chances[i] = byStratum[order[i] ?? 0] ?? 0;
  return chances;
}
