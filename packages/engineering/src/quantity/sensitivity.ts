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
import { ranksOf } from './correlate.ts';
import { normalQuantile } from './normal.ts';
import type { Cases, Column, Influence, Influences } from './shapes.ts';
import { isSteady } from './summary.ts';

/** Number of classes: enough to follow a curve, few enough to leave scatter inside each. */
const CLASSES_MAX = 64;
const CLASSES_MIN = 2;
const CLASS_SHARE = 1.5;
/** An output that differs in fewer cases than about this is too rare to rank. */
const RARE_BELOW = 10;

/** Relative spread that is the arithmetic's own. */
const ROUNDING = 1e-13;

/** One input's classes. */
interface Classed {
  readonly column: Column;
  /** The class of each case; none for an input that is the same in all cases. */
  readonly classOf: Uint8Array | undefined;
  /** How many cases each class has. */
  readonly sizes: Float64Array;
}

/** The classes of every input that varies, made once for all outputs. */
export interface Classes {
  readonly cases: Cases;
  readonly count: number;
  readonly columns: readonly Classed[];
}

/** Puts the cases into classes by each input. */
export function classify(cases: Cases): Classes {
  const wanted = Math.round(Math.sqrt(cases.count) / CLASS_SHARE);
  const count = Math.min(CLASSES_MAX, Math.max(CLASSES_MIN, wanted));
  const columns = [...cases.columns.values()].map((column) => {
    const classOf = classesOf(column, count);
    const sizes = new Float64Array(count);
    classOf?.forEach((c) => {
      sizes[c] = (sizes[c] as number) + 1;
    });
    return { column, classOf, sizes };
  });
  return { cases, count, columns };
}

/** Equal values come into the same class. */
function classesOf(column: Column, count: number): Uint8Array | undefined {
  const { values } = column;
  if (isSteady(values)) return undefined;
  const order = column.order ?? ranksOf(values);
  const n = values.length;
  const sorted = new Float64Array(n);
  for (let i = 0; i < n; i++) sorted[order[i] as number] = values[i] as number;
  const byPlace = new Uint8Array(n);
  let reached = 0;
  for (let place = 0; place < n; place++) {
    const value = sorted[place] as number;
    while (reached + 1 < count && value >= (sorted[Math.ceil(((reached + 1) * n) / count)] as number)) reached++;
    byPlace[place] = reached;
  }
  const classOf = new Uint8Array(n);
  for (let i = 0; i < n; i++) classOf[i] = byPlace[order[i] as number] as number;
  return classOf;
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
  const ranked: Influence[] = columns.map(({ column, classOf, sizes }) => {
    const index = classOf && facts.squares > 0 ? indexOf(facts, classOf, sizes) : 0;
    return { id: column.id, kind: column.kind, index, clear: settled && index > floor.high };
  });
  ranked.sort((a, b) => b.index - a.index);
  return { ranked, floor, counted: facts.counted, missing: output.length - facts.counted, settled };
}

interface OutputFacts {
  readonly counted: number;
  /** Deviation of each case from the mean; 0 where the case is missing. */
  readonly apart: Float64Array;
  /** The cases that are missing. */
  readonly missing: readonly number[];
  /** Sum of squared deviations from the mean. */
  readonly squares: number;
  /** Fourth moment over the squared second: about 1/p where the output is 1 in a small share p of the cases. */
  readonly peak: number;
}

function factsOf(output: ArrayLike<number>): OutputFacts {
  const missing: number[] = [];
  let sum = 0;
  for (let i = 0; i < output.length; i++) {
    const y = output[i] as number;
    if (Number.isNaN(y)) missing.push(i);
    else sum += y;
  }
  const counted = output.length - missing.length;
  const mean = sum / counted;
  const apart = new Float64Array(output.length);
  let squares = 0;
  let fourths = 0;
  for (let i = 0; i < output.length; i++) {
    const d = (output[i] as number) - mean;
    if (Number.isNaN(d)) continue;
    apart[i] = d;
    squares += d * d;
    fourths += d * d * d * d;
  }
  // A mean of equal numbers may miss them by a last digit: that is no spread, and nothing decides it.
  const rounding = counted * (ROUNDING * mean) ** 2;
  if (squares <= rounding) squares = 0;
  return { counted, apart, missing, squares, peak: (counted * fourths) / squares ** 2 };
}

/** The innermost loop of a reckoning: every finding goes through it once for every input that it rests on. */
function indexOf({ apart, missing, counted, squares }: OutputFacts, classOf: Uint8Array, sizes: Float64Array): number {
  const count = sizes.length;
  const sums = new Float64Array(count);
  for (let i = 0; i < classOf.length; i++) {
    const c = classOf[i] as number;
    sums[c] = (sums[c] as number) + (apart[i] as number);
  }
  const members = missing.length === 0 ? sizes : withoutMissing(sizes, classOf, missing);
  let between = 0;
  let used = 0;
  for (let c = 0; c < count; c++) {
    const n = members[c] as number;
    if (n === 0) continue;
    used++;
    between += (sums[c] as number) ** 2 / n;
  }
  return corrected(between / squares, used - 1, counted - used);
}

function withoutMissing(sizes: Float64Array, classOf: Uint8Array, missing: readonly number[]): Float64Array {
  const members = Float64Array.from(sizes);
  for (const i of missing) {
    const c = classOf[i] as number;
    members[c] = (members[c] as number) - 1;
  }
  return members;
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
