/** Monotone interpolation in published tables: between rising points the curve never turns back. */

/** Limits a slope to three times the secants beside it, which is enough to keep the curve monotone. */
function innerSlope(before: number, after: number, left: number, right: number): number {
  if (before * after <= 0) return 0;
  const a = 2 * right + left;
  const b = right + 2 * left;
  return (a + b) / (a / before + b / after);
}

/** One-sided slope at an end of the table, three-point form, kept monotone. */
function endSlope(near: number, next: number, hNear: number, hNext: number): number {
  const slope = ((2 * hNear + hNext) * near - hNear * next) / (hNear + hNext);
  if (slope * near <= 0) return 0;
  return near * next <= 0 && Math.abs(slope) > 3 * Math.abs(near) ? 3 * near : slope;
}

function slopes(xs: readonly number[], ys: readonly number[]): number[] {
  const h = xs.slice(1).map((x, i) => x - at(xs, i));
  const d = h.map((step, i) => (at(ys, i + 1) - at(ys, i)) / step);
  if (d.length === 1) return [at(d, 0), at(d, 0)];
  return xs.map((_, i) => {
    if (i === 0) return endSlope(at(d, 0), at(d, 1), at(h, 0), at(h, 1));
    const last = d.length - 1;
    if (i === xs.length - 1) return endSlope(at(d, last), at(d, last - 1), at(h, last), at(h, last - 1));
    return innerSlope(at(d, i - 1), at(d, i), at(h, i - 1), at(h, i));
  });
}

function at(list: readonly number[], i: number): number {
  const value = list[i];
  if (value === undefined) throw new RangeError(`table has no point ${i}`);
  return value;
}

/** The interval of `xs` that holds `x`. Throws RangeError outside the table, for nothing is known there. */
function interval(xs: readonly number[], x: number): number {
  if (!(x >= at(xs, 0) && x <= at(xs, xs.length - 1))) {
    throw new RangeError(`${x} lies outside the table ${xs[0]} to ${xs[xs.length - 1]}`);
  }
  let i = 0;
  while (i < xs.length - 2 && x > at(xs, i + 1)) i += 1;
  return i;
}

/**
 * Makes a monotone cubic through the points.
 * @param xs  rising abscissae, two or more
 * @param ys  ordinates, as many
 * @returns   the curve; it throws RangeError outside the table
 * Source: Fritsch & Butland, A Method for Constructing Local Monotone Piecewise Cubic Interpolants, 1984.
 */
export function monotoneCurve(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  const m = slopes(xs, ys);
  return (x) => {
    const i = interval(xs, x);
    const h = at(xs, i + 1) - at(xs, i);
    const t = (x - at(xs, i)) / h;
    const rise = t * t * (3 - 2 * t);
    const start = h * t * (1 - t) ** 2 * at(m, i);
    const end = h * t * t * (t - 1) * at(m, i + 1);
    return at(ys, i) * (1 - rise) + at(ys, i + 1) * rise + start + end;
  };
}

/** Straight lines between the points; throws RangeError outside the table. */
export function straightLines(xs: readonly number[], ys: readonly number[], x: number): number {
  const i = interval(xs, x);
  const t = (x - at(xs, i)) / (at(xs, i + 1) - at(xs, i));
  return at(ys, i) + t * (at(ys, i + 1) - at(ys, i));
}

/** Where a rising curve reaches `y`, between `low` and `high`, by bisection to the last digit. */
export function whereRising(curve: (x: number) => number, y: number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60 && a < b; i++) {
    const middle = (a + b) / 2;
    if (curve(middle) < y) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Mean of a curve between two abscissae, Simpson's rule on 400 strips. */
export function meanOf(curve: (x: number) => number, from: number, to: number): number {
  const strips = 400;
  const h = (to - from) / strips;
  let sum = curve(from) + curve(to);
  for (let i = 1; i < strips; i++) sum += (i % 2 === 1 ? 4 : 2) * curve(from + i * h);
  return sum / (3 * strips);
}
