/**
 * Quantiles of type 7, the default of the common statistics programs: h = (n − 1)·p, linear between neighbours.
 * Source: Hyndman & Fan, Sample quantiles in statistical packages, Am. Stat. 50 (1996), 361–365.
 *
 * NaN means that a sum does not exist in a case: such cases are left out and counted. Infinities are values like others.
 */
import { least, select } from './select.ts';
import type { Band } from './shapes.ts';

/** The type-7 quantile of the numbers among the values; NaN where there is none. */
export function quantile(values: ArrayLike<number>, p: number): number {
  return quantiles(values, [p])[0] ?? Number.NaN;
}

/** Several quantiles of the same values. */
export function quantiles(values: ArrayLike<number>, chances: readonly number[]): number[] {
  const numbers = numbersOf(values);
  return chances.map((p) => quantileOf(numbers, p, numbers.length - 1));
}

/** The middle and the band that holds 90 % of the cases. */
export function band(values: ArrayLike<number>): Band {
  const numbers = numbersOf(values);
  const last = numbers.length - 1;
  // From the top down, each search is left with what the one before has put below its place and beside it.
  const p95 = quantileOf(numbers, 0.95, last);
  const p50 = quantileOf(numbers, 0.5, Math.min(last, placeOf(last, 0.95) + 1));
  const p5 = quantileOf(numbers, 0.05, Math.min(last, placeOf(last, 0.5) + 1));
  return { p5, p50, p95, counted: numbers.length, missing: values.length - numbers.length };
}

/** A copy without the NaN. */
function numbersOf(values: ArrayLike<number>): Float64Array {
  const numbers = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const x = values[i] as number;
    if (!Number.isNaN(x)) numbers[count++] = x;
  }
  return numbers.subarray(0, count);
}

/** The place, from 0, at or below the quantile among values whose last place is `last`. */
const placeOf = (last: number, p: number): number => Math.floor(last * p);

/** The quantile, searched up to `to` only, beyond which nothing smaller may stand. Rearranges the values. */
function quantileOf(numbers: Float64Array, p: number, to: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`A quantile is asked for a chance from 0 to 1, not for ${p}.`);
  const last = numbers.length - 1;
  if (last < 0) return Number.NaN;
  const h = last * p;
  const below = placeOf(last, p);
  const low = select(numbers, below, 0, to);
  if (h === below) return low;
  const high = least(numbers, below + 1, to);
  // Equal neighbours must not become ∞ − ∞.
  return low === high ? low : low + (h - below) * (high - low);
}
