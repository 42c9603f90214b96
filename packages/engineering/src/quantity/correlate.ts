/**
 * Correlation without touching the spreads: the cases of each column are put into another order.
 * Source: Iman & Conover, A distribution-free approach to inducing rank correlation among input variables, Commun.
 * Statist. Simul. Comput. 11 (1982), 311–334.
 *
 * The wanted matrix is that of the normal scores. For normal inputs it is their correlation; for log-normal or
 * rectangular ones the correlation of the values comes out a little smaller.
 */
import { normalQuantile } from './normal.ts';
import type { Correlation } from './shapes.ts';
import { correlation, mean, standardDeviation } from './summary.ts';

/** How far a matrix out of a fit may miss a property by rounding. */
const ROUNDING = 1e-9;

/**
 * New orders of strata. `orders[k][i]` is the stratum, from 0 to N − 1, of column k in case i; the same strata come back,
 * arranged so that their normal scores have the wanted correlations. The first column keeps its order.
 */
export function correlated(orders: readonly Int32Array[], wanted: Correlation): Int32Array[] {
  const target = choleskyOf(wanted.matrix);
  if (!target) throw new RangeError(`The correlation matrix of ${wanted.ids.join(', ')} contradicts itself.`);
  const scores = orders.map(standardScores);
  const found = scores.map((a) => scores.map((b) => (a === b ? 1 : correlation(a, b))));
  const present = choleskyOf(found);
  const count = orders[0]?.length ?? 0;
  // With fewer cases than columns the correlation that chance has made cannot be taken out first.
  const clean = present && count > orders.length ? solved(present, scores) : scores;
  return orders.map((_, k) => ranksOf(mixed(target[k] ?? [], clean, count)));
}

/** Faults of a matrix as a matrix of correlations of so many inputs. */
export function matrixFault({ ids, matrix }: Correlation): string | undefined {
  if (matrix.length !== ids.length || matrix.some((row) => row.length !== ids.length)) return 'is not square';
  for (const [i, row] of matrix.entries()) {
    for (const [j, r] of row.entries()) {
      if (!(Math.abs(r) <= 1 + ROUNDING)) return `has ${r}, which is no correlation`;
      if (i === j && Math.abs(r - 1) > ROUNDING) return 'has a diagonal that is not 1';
      if (Math.abs(r - (matrix[j]?.[i] ?? Number.NaN)) > ROUNDING) return 'is not symmetrical';
    }
  }
  return choleskyOf(matrix) ? undefined : 'contradicts itself';
}

/** Lower triangle L with L·Lᵀ = the matrix; none where the matrix has a negative direction. */
function choleskyOf(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const mine: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j < i ? (lower[j] ?? []) : mine;
      let rest = row[j] ?? 0;
      for (let k = 0; k < j; k++) rest -= (mine[k] ?? 0) * (other[k] ?? 0);
      const pivot = j < i ? (other[j] ?? 0) : 0;
      if (j === i) {
        if (rest < -ROUNDING) return undefined;
        mine.push(Math.sqrt(Math.max(0, rest)));
      } else if (pivot * pivot > ROUNDING) {
        mine.push(rest / pivot);
      } else {
        // Fully tied to earlier inputs: what is left over must be nothing.
        if (Math.abs(rest) > Math.sqrt(ROUNDING)) return undefined;
        mine.push(0);
      }
    }
    lower.push(mine);
  }
  return lower;
}

function standardScores(order: Int32Array): Float64Array {
  const scores = Float64Array.from(order, (stratum) => normalQuantile((stratum + 0.5) / order.length));
  const middle = mean(scores);
  const deviation = standardDeviation(scores) || 1;
  return scores.map((z) => (z - middle) / deviation);
}

/** Columns without correlation: forward substitution of L·x = scores, case by case. */
function solved(lower: readonly (readonly number[])[], scores: readonly Float64Array[]): Float64Array[] {
  const clean: Float64Array[] = [];
  for (const [k, column] of scores.entries()) {
    const row = lower[k] ?? [];
    const pivot = row[k] ?? 0;
    const x = Float64Array.from(column);
    for (let i = 0; i < x.length; i++) {
      let rest = x[i] ?? 0;
      for (let j = 0; j < k; j++) rest -= (row[j] ?? 0) * (clean[j]?.[i] ?? 0);
      x[i] = pivot > 0 ? rest / pivot : rest;
    }
    clean.push(x);
  }
  return clean;
}

function mixed(weights: readonly number[], columns: readonly Float64Array[], count: number): Float64Array {
  const sum = new Float64Array(count);
  for (const [j, weight] of weights.entries()) {
    for (let i = 0; i < count; i++) sum[i] = (sum[i] ?? 0) + weight * (columns[j]?.[i] ?? 0);
  }
  return sum;
}

/** Rank, from 0, of each value among all. */
export function ranksOf(values: Float64Array): Int32Array {
  const bySize = Int32Array.from(values, (_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  const ranks = new Int32Array(values.length);
  for (let rank = 0; rank < bySize.length; rank++) ranks[bySize[rank] ?? 0] = rank;
  return ranks;
}
