/**
 * Which input moves an output, from the same cases and without evaluating anything again.
 *
 * First-order index S = Var(E[y | x]) / Var(y) (Sobol' 2001). The cases are put into K classes of equal count by the
 * input's value; the variance between the class means, less what the scatter inside the classes alone would make of
 * it, is the estimate (one-way analysis of variance; the correction is Kelley's, Proc. Natl Acad. Sci. 21 (1935),
 * 554–559). It serves outputs that are 0 or 1, such as a finding that holds or not, in the same way.
 *
 * The index of an input includes what moves along with it through a correlation. The classes hide detail finer than
 * a class: for a straight relation 1/K² of the index.
 */
import { normalQuantile } from './normal.ts';
import type { Cases, Column, Influence, Influences } from './shapes.ts';

/** Number of classes: enough to follow a curve, few enough to leave scatter inside each. */
const CLASSES_MAX = 64;
const CLASSES_MIN = 2;
const CLASS_SHARE = 1.5;
/** An output that differs in fewer cases than about this is too rare to rank. */
const RARE_BELOW = 10;

/** The classes of every input that varies, made once for all outputs. */
export interface Classes {
  readonly cases: Cases;
  readonly count: number;
  readonly columns: readonly { readonly column: Column; readonly classOf: Uint8Array | undefined }[];
}

/** Puts the cases into classes by each input. */
export function classify(cases: Cases): Classes {
  const wanted = Math.round(Math.sqrt(cases.count) / CLASS_SHARE);
  const count = Math.min(CLASSES_MAX, Math.max(CLASSES_MIN, wanted));
  const columns = [...cases.columns.values()].map((column) => ({ column, classOf: classesOf(column.values, count) }));
  return { cases, count, columns };
}

/** None for an input that is the same in all cases. Equal values come into the same class. */
function classesOf(values: Float64Array, count: number): Uint8Array | undefined {
  const sorted = new Float64Array(values).sort();
  const n = sorted.length;
  if (sorted[0] === sorted[n - 1]) return undefined;
  const starts = Float64Array.from({ length: count }, (_, c) => sorted[Math.ceil((c * n) / count)] ?? 0);
  const classOf = new Uint8Array(n);
  for (let i = 0; i < n; i++) classOf[i] = lastNotAbove(starts, values[i] ?? 0);
  return classOf;
}

/** Index of the last of the ascending starts that does not exceed the value. */
function lastNotAbove(starts: Float64Array, value: number): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Ranks the inputs by their influence upon an output, and says how high chance alone would rank one of them.
 * Cases where the output is NaN are left out and counted. One that is infinite in some cases has no variance: rank whether
 * it is finite, as 0 or 1, instead.
 *
 * @param level the chance that no idle input at all comes out above the floor
 */
export function influences({ cases, count, columns }: Classes, output: ArrayLike<number>, level = 0.95): Influences {
  if (output.length !== cases.count) {
    throw new RangeError(`The output has ${output.length} values for ${cases.count} cases.`);
  }
  const facts = factsOf(output);
  const varying = columns.filter(({ classOf }) => classOf !== undefined).length;
  const floor = floorOf(count, facts.counted, varying, level);
  const settled = facts.squares > 0 && facts.counted > 2 * count && facts.peak * RARE_BELOW <= facts.counted;
  const ranked: Influence[] = columns.map(({ column, classOf }) => {
    const index = classOf && facts.squares > 0 ? indexOf(output, facts, classOf, count) : 0;
    return { id: column.id, kind: column.kind, index, clear: settled && index > floor.high };
  });
  ranked.sort((a, b) => b.index - a.index);
  return { ranked, floor, counted: facts.counted, missing: output.length - facts.counted, settled };
}

interface OutputFacts {
  readonly counted: number;
  readonly mean: number;
  /** Sum of squared deviations from the mean. */
  readonly squares: number;
  /** Fourth moment over the squared second: about 1/p where the output is 1 in a small share p of the cases. */
  readonly peak: number;
}

function factsOf(output: ArrayLike<number>): OutputFacts {
  let [counted, sum] = [0, 0];
  for (let i = 0; i < output.length; i++) {
    const y = output[i] ?? Number.NaN;
    if (Number.isNaN(y)) continue;
    counted++;
    sum += y;
  }
  const mean = sum / counted;
  let [squares, fourths] = [0, 0];
  for (let i = 0; i < output.length; i++) {
    const apart = (output[i] ?? Number.NaN) - mean;
    if (Number.isNaN(apart)) continue;
    squares += apart ** 2;
    fourths += apart ** 4;
  }
  return { counted, mean, squares, peak: (counted * fourths) / squares ** 2 };
}

function indexOf(output: ArrayLike<number>, facts: OutputFacts, classOf: Uint8Array, count: number): number {
  const sums = new Float64Array(count);
  const members = new Float64Array(count);
  for (let i = 0; i < output.length; i++) {
    const y = output[i] ?? Number.NaN;
    if (Number.isNaN(y)) continue;
    const c = classOf[i] ?? 0;
    sums[c] = (sums[c] ?? 0) + (y - facts.mean);
    members[c] = (members[c] ?? 0) + 1;
  }
  let between = 0;
  let used = 0;
  for (let c = 0; c < count; c++) {
    const n = members[c] ?? 0;
    if (n === 0) continue;
    used++;
    between += (sums[c] ?? 0) ** 2 / n;
  }
  const share = between / facts.squares;
  return corrected(share, used - 1, facts.counted - used);
}

/** Share of the variance between classes, less what an idle input would show on average. */
function corrected(share: number, between: number, inside: number): number {
  return inside > 0 ? share - ((1 - share) * between) / inside : 0;
}

/**
 * What idle inputs show. Their shares follow the beta distribution with (K − 1)/2 and (N − K)/2, exactly for a normal
 * output and closely for others, because classes of equal count cancel the effect of the fourth moment. The quantile is
 * Paulson's (Ann. Math. Stat. 13 (1942), 233–235), taken so far out that the best of all idle inputs stays below it.
 */
function floorOf(count: number, cases: number, inputs: number, level: number): Influences['floor'] {
  const between = count - 1;
  const inside = cases - count;
  if (inside < 1 || inputs === 0) return { expected: 0, deviation: Number.NaN, high: Number.POSITIVE_INFINITY, level };
  const z = normalQuantile(level ** (1 / inputs));
  const a = 2 / (9 * between);
  const b = 2 / (9 * inside);
  const under = (1 - b) ** 2 - b * z * z;
  const root = Math.sqrt(Math.max(0, (1 - a) ** 2 * b + (1 - b) ** 2 * a - a * b * z * z));
  const ratio = under > 0 ? (((1 - a) * (1 - b) + z * root) / under) ** 3 : Number.POSITIVE_INFINITY;
  const share = ratio === Number.POSITIVE_INFINITY ? 1 : (between * ratio) / (between * ratio + inside);
  const total = between + inside;
  const deviation = (Math.sqrt((2 * between * inside) / (total + 2)) / total) * (1 + between / inside);
  return { expected: 0, deviation, high: corrected(share, between, inside), level };
}
