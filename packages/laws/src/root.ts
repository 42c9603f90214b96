/** Finding the zero of a rising function. */

/** How little the answer moves, relative to itself, when it is taken: what is left is then far smaller still. */
const CLOSE = 1e-10;
const STEPS = 100;

/**
 * The zero of a rising function between two ends, by false position. An end that has stayed twice gives way in the
 * measure of Anderson and Björck (BIT 13 (1973), 253–264), so that neither sticks.
 * It is meant for functions that are not far from straight, such as heat against a rise, and takes about six steps there.
 * @param fLow   the value at the low end: often known without working it out
 * @param fHigh  the value at the high end
 * @returns      the zero; the low end where the function is nowhere below zero, the high end where it is nowhere above
 */
export function zeroOfRising(f: (x: number) => number, low: number, high: number, fLow: number, fHigh: number): number {
  let a = low;
  let b = high;
  let fa = fLow;
  let fb = fHigh;
  let x = fa >= 0 ? a : b;
  let moved = 0;
  for (let i = 0; i < STEPS && fa < 0 && fb > 0; i++) {
    const next = a - (fa * (b - a)) / (fb - fa);
    if (Math.abs(next - x) <= CLOSE * Math.abs(next)) return next;
    x = next;
    const fx = f(x);
    if (fx < 0) {
      if (moved < 0) fb *= givingWay(fx / fa);
      a = x;
      fa = fx;
      moved = -1;
    } else {
      if (moved > 0) fa *= givingWay(fx / fb);
      b = x;
      fb = fx;
      moved = 1;
    }
  }
  return x;
}

function givingWay(ratio: number): number {
  return ratio < 1 ? 1 - ratio : 0.5;
}
