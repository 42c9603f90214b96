/**
 * Numbers on generated pages. They must come out the same on every machine, although engines differ in the last digit
 * of functions such as the exponential: the last digits are dropped before rounding to what is shown.
 */

/** Digits that every engine agrees upon. */
const AGREED = 12;
const SHOWN = 5;
/** Plain digits from here to there; outside, powers of ten. */
const PLAIN = { from: 1e-4, below: 1e7 } as const;
/** A relative error below this is rounding of the machine. */
const NOTHING = 1e-9;

/** A number to so many significant digits. */
export function shown(x: number, digits = SHOWN): string {
  if (!Number.isFinite(x)) throw new RangeError(`a page cannot show ${x}`);
  const rounded = Number(Number(x.toPrecision(AGREED)).toPrecision(digits));
  const size = Math.abs(rounded);
  const plain = size === 0 || (size >= PLAIN.from && size < PLAIN.below);
  const text = plain ? String(rounded) : rounded.toExponential().replace('e+', 'e');
  return text.replaceAll('-', '−');
}

/** A share in per cent, to three digits. */
export function percent(share: number): string {
  return `${shown(share * 100, 3)} %`;
}

/** Relative error of ours, rounding of the machine taken off. */
export function errorOf(ours: number, expected: number): number {
  const error = Math.abs(ours / expected - 1);
  return error < NOTHING ? 0 : error;
}
