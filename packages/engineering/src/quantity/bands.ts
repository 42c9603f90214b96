/**
 * Quantiles of type 7, the default of the common statistics programs: h = (n − 1)·p, linear between neighbours.
 * Source: Hyndman & Fan, Sample quantiles in statistical packages, Am. Stat. 50 (1996), 361–365.
 *
 * NaN means that a sum does not exist in a case: such cases are left out and counted. Infinities are values like others.
 */
import type { Band } from './shapes.ts';

/** The type-7 quantile of the numbers among the values; NaN where there is none. */
export function quantile(values: ArrayLike<number>, p: number): number {
  return quantiles(values, [p])[0] ?? Number.NaN;
}

/** Several quantiles for one sorting. */
export function quantiles(values: ArrayLike<number>, chances: readonly number[]): number[] {
  const sorted = sortedNumbers(values);
  return chances.map((p) => quantileOfSorted(sorted, p));
}

/** The middle and the band that holds 90 % of the cases. */
export function band(values: ArrayLike<number>): Band {
  const sorted = sortedNumbers(values);
  return {
    p5: quantileOfSorted(sorted, 0.05),
    p50: quantileOfSorted(sorted, 0.5),
    p95: quantileOfSorted(sorted, 0.95),
    counted: sorted.length,
    missing: values.length - sorted.length,
  };
}

/** A sorted copy without the NaN, which a typed array sorts to its end. */
function sortedNumbers(values: ArrayLike<number>): Float64Array {
  const sorted = new Float64Array(values).sort();
  let end = sorted.length;
  while (end > 0 && Number.isNaN(sorted[end - 1])) end--;
  return sorted.subarray(0, end);
}

function quantileOfSorted(sorted: Float64Array, p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`A quantile is asked for a chance from 0 to 1, not for ${p}.`);
  if (sorted.length === 0) return Number.NaN;
  const h = (sorted.length - 1) * p;
  const below = Math.floor(h);
  const low = sorted[below] ?? 0;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? 0;
  // Equal neighbours, and a share of nothing, must not become ∞ − ∞ or 0 · ∞.
  if (h === below || low === high) return low;
  return low + (h - below) * (high - low);
}
