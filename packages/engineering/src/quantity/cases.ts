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
import { type Stream, stream } from './random.ts';
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
  const byStratum = new Float64Array(count);
  for (const input of inputs) {
    const { id, kind } = input;
    const order = orders.get(id);
    const values = new Float64Array(count);
    // An input without doubt has no strata: every chance gives its value.
    if (order) probabilities(order, stream(seed, `place in stratum of ${id}`), byStratum, values);
    spreadOut(input, values);
    columns.set(id, { id, kind, values, ...(order ? { order } : {}) });
  }
  return { count, seed, columns };
}

/** Does the input have strata at all? */
const varies = ({ quantity }: CaseInput): boolean => quantity.spread !== 'exact' && quantity.doubt !== 0;

/** Which case has which stratum of which input that has strata. */
function ordersOf(
  inputs: readonly CaseInput[],
  count: number,
  seed: number,
  correlations: readonly Correlation[],
): Map<string, Int32Array> {
  const orders = new Map<string, Int32Array>();
  const known = new Set<string>();
  for (const input of inputs) {
    if (known.has(input.id)) throw new RangeError(`The input '${input.id}' is given twice.`);
    known.add(input.id);
    if (varies(input)) orders.set(input.id, shuffled(count, seed, input.id));
  }
  const tied = new Set<string>();
  for (const group of correlations) {
    const fault = matrixFault(group);
    if (fault) throw new RangeError(`The correlation matrix of ${group.ids.join(', ')} ${fault}.`);
    const before = group.ids.map((id) => {
      if (!known.has(id)) throw new RangeError(`A correlation names '${id}', which is no input.`);
      if (tied.has(id)) throw new RangeError(`'${id}' stands in two correlations; give one matrix for all of them.`);
      tied.add(id);
      return orders.get(id) ?? shuffled(count, seed, id);
    });
    for (const [k, order] of correlated(before, group).entries()) {
      const id = group.ids[k] ?? '';
      if (orders.has(id)) orders.set(id, order);
    }
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

/** Writes a chance for each case, somewhere inside its stratum. `byStratum` is room to work in. */
function probabilities(order: Int32Array, random: Stream, byStratum: Float64Array, chances: Float64Array): void {
  const count = order.length;
  for (let s = 0; s < count; s++) byStratum[s] = (s + random.inside()) / count;
  for (let i = 0; i < count; i++) chances[i] = byStratum[order[i] as number] as number;
}
