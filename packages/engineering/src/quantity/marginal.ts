/**
 * One input's spread as a function of probability. Physical bounds truncate it: the probabilities are restricted to the
 * range that the bounds admit and then inverted, so nothing is drawn twice and equally likely cases stay equally likely.
 */

import { within } from './limits.ts';
import { normalBelow, normalQuantile } from './normal.ts';
import type { CaseInput, Limits } from './shapes.ts';

/** Turns probabilities, each between 0 and 1, into values of the input, in place. Throws RangeError where none is admitted. */
export function spreadOut(input: CaseInput, probabilities: Float64Array): void {
  const { value, doubt, spread } = input.quantity;
  const limits = input.limits ?? {};
  if (!Number.isFinite(value) || !(doubt >= 0) || !Number.isFinite(doubt)) {
    throw new RangeError(`'${input.id}' has no finite value and doubt.`);
  }
  if (spread === 'exact' || doubt === 0) {
    if (!within(value, limits)) throw nothingAdmitted(input);
    probabilities.fill(value);
    return;
  }
  if (spread === 'rectangular') rectangular(input, probabilities);
  else if (spread === 'normal') normal(input, value, doubt, boundsOf(limits), probabilities);
  else logNormal(input, probabilities);
  keepWithin(probabilities, limits);
}

type Bounds = readonly [number, number];

function boundsOf({ above, from, to, below }: Limits): Bounds {
  return [
    Math.max(above ?? Number.NEGATIVE_INFINITY, from ?? Number.NEGATIVE_INFINITY),
    Math.min(below ?? Number.POSITIVE_INFINITY, to ?? Number.POSITIVE_INFINITY),
  ];
}

function nothingAdmitted({ id }: CaseInput): RangeError {
  return new RangeError(`The limits of '${id}' admit nothing of its spread.`);
}

function rectangular(input: CaseInput, p: Float64Array): void {
  const { value, doubt } = input.quantity;
  const [low, high] = boundsOf(input.limits ?? {});
  const from = Math.max(value - doubt, low);
  const to = Math.min(value + doubt, high);
  if (from > to) throw nothingAdmitted(input);
  for (let i = 0; i < p.length; i++) p[i] = from + (p[i] ?? 0) * (to - from);
}

function normal(input: CaseInput, mean: number, deviation: number, [low, high]: Bounds, p: Float64Array): void {
  const from = (low - mean) / deviation;
  const to = (high - mean) / deviation;
  // Far up the curve, chances below are all 1 − tiny and lose their digits: there the chances above are used.
  const mirrored = from > 0;
  const start = mirrored ? normalBelow(-from) : normalBelow(from);
  const width = (mirrored ? normalBelow(-to) : normalBelow(to)) - start;
  if (width === 0 || Number.isNaN(width) || width < 0 !== mirrored) throw nothingAdmitted(input);
  const scale = mirrored ? -deviation : deviation;
  for (let i = 0; i < p.length; i++) p[i] = mean + scale * normalQuantile(start + (p[i] ?? 0) * width);
}

/** The log-normal spread whose mean is the value and whose standard deviation is the doubt. */
function logNormal(input: CaseInput, p: Float64Array): void {
  const { value, doubt } = input.quantity;
  if (!(value > 0)) throw new RangeError(`'${input.id}' is log-normal but not above zero.`);
  const variance = Math.log1p((doubt / value) ** 2);
  const [low, high] = boundsOf(input.limits ?? {});
  if (!(high > 0)) throw nothingAdmitted(input);
  const bounds: Bounds = [low > 0 ? Math.log(low) : Number.NEGATIVE_INFINITY, Math.log(high)];
  normal(input, Math.log(value) - variance / 2, Math.sqrt(variance), bounds, p);
  for (let i = 0; i < p.length; i++) p[i] = Math.exp(p[i] ?? 0);
}

/** Takes back what rounding carried over a limit; at most the last bit. */
function keepWithin(values: Float64Array, limits: Limits): void {
  const { above, from, to, below } = limits;
  if (above === undefined && from === undefined && to === undefined && below === undefined) return;
  for (let i = 0; i < values.length; i++) {
    let x = values[i] ?? 0;
    if (from !== undefined && x < from) x = from;
    if (to !== undefined && x > to) x = to;
    if (above !== undefined && x <= above) x = above + lastBit(above);
    if (below !== undefined && x >= below) x = below - lastBit(below);
    values[i] = x;
  }
}

function lastBit(x: number): number {
  return Math.max(Number.MIN_VALUE, Math.abs(x) * Number.EPSILON);
}
