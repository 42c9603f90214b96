/**
 * The normal distribution and its inverse, both to about the precision of a double. The coefficients of the sources
 * are written with the digits that a double holds.
 */

/** a0 + x·(a1 + x·(a2 + …)). */
function polynomial(a: readonly number[], x: number): number {
  let sum = 0;
  for (let i = a.length - 1; i >= 0; i--) sum = sum * x + (a[i] ?? 0);
  return sum;
}

/**
 * Chance that a standard normal number is below z.   Φ(z) = erfc(−z/√2) / 2
 * Source: Cody, Rational Chebyshev approximations for the error function, Math. Comp. 23 (1969), 631–637.
 */
export function normalBelow(z: number): number {
  return erfc(-z * Math.SQRT1_2) / 2;
}

const NEAR_OVER = [3209.3775891384694, 377.485237685302, 113.86415415105016, 3.1611237438705655, 0.18577770618460315];
const NEAR_UNDER = [2844.236833439171, 1282.6165260773723, 244.02463793444417, 23.601290952344122, 1];
const MIDDLE_OVER = [
  1230.3393547979972, 2051.0783778260716, 1712.0476126340707, 881.952221241769, 298.6351381974001, 66.11919063714163,
  8.883149794388377, 0.5641884969886701, 2.1531153547440383e-8,
];
const MIDDLE_UNDER = [
  1230.3393548037495, 3439.3676741437216, 4362.619090143247, 3290.7992357334597, 1621.3895745666903, 537.1811018620099,
  117.6939508913125, 15.744926110709835, 1,
];
const FAR_OVER = [
  0.0006587491615298378, 0.016083785148742275, 0.12578172611122926, 0.36034489994980445, 0.30532663496123236,
  0.016315387137302097,
];
const FAR_UNDER = [
  0.0023352049762686918, 0.06051834131244132, 0.5279051029514285, 1.8729528499234604, 2.568520192289822, 1,
];

function erfc(x: number): number {
  const size = Math.abs(x);
  if (size <= 0.46875) return 1 - (x * polynomial(NEAR_OVER, x * x)) / polynomial(NEAR_UNDER, x * x);
  // Beyond 28 the tail is smaller than the smallest double; infinity must not meet itself in a difference.
  const tail = size > 28 ? 0 : squareFall(size) * (size <= 4 ? middle(size) : far(size));
  return x < 0 ? 2 - tail : tail;
}

const middle = (x: number): number => polynomial(MIDDLE_OVER, x) / polynomial(MIDDLE_UNDER, x);

function far(x: number): number {
  const w = 1 / (x * x);
  return (1 / Math.sqrt(Math.PI) - (w * polynomial(FAR_OVER, w)) / polynomial(FAR_UNDER, w)) / x;
}

/** exp(−x²) with x split at a sixteenth, because the rounding of x² alone would cost digits in the tail. */
function squareFall(x: number): number {
  const coarse = Math.trunc(x * 16) / 16;
  return Math.exp(-coarse * coarse) * Math.exp(-(x - coarse) * (x + coarse));
}

/**
 * The z below which a standard normal number lies with chance p; −∞ at 0, ∞ at 1, NaN outside.
 * Written out without loops because it is evaluated for every input of every case.
 * Source: Wichura, Algorithm AS 241, the percentage points of the normal distribution, Appl. Statist. 37 (1988),
 * 477–484, routine PPND16.
 */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * central(0.180625 - q * q);
  const tail = q < 0 ? p : 1 - p;
  const size = tailQuantile(tail);
  return q < 0 ? -size : size;
}

function central(r: number): number {
  const over =
    ((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) * r +
      13731.69376550946) *
      r +
      1971.5909503065513) *
      r +
      133.14166789178438) *
      r +
    3.3871328727963665;
  const under =
    ((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) * r +
      5394.196021424751) *
      r +
      687.1870074920579) *
      r +
      42.31333070160091) *
      r +
    1;
  return over / under;
}

/** The z above which lies a chance of `tail` (below 0.075). */
function tailQuantile(tail: number): number {
  if (!(tail > 0)) return tail === 0 ? Number.POSITIVE_INFINITY : Number.NaN;
  const root = Math.sqrt(-Math.log(tail));
  return root <= 5 ? nearTail(root - 1.6) : farTail(root - 5);
}

function nearTail(r: number): number {
  const over =
    ((((((0.0007745450142783414 * r + 0.022723844989269184) * r + 0.2417807251774506) * r + 1.2704582524523684) * r +
      3.6478483247632045) *
      r +
      5.769497221460691) *
      r +
      4.630337846156546) *
      r +
    1.4234371107496835;
  const under =
    ((((((1.0507500716444169e-9 * r + 0.0005475938084995345) * r + 0.015198666563616457) * r + 0.14810397642748008) *
      r +
      0.6897673349851) *
      r +
      1.6763848301838038) *
      r +
      2.053191626637759) *
      r +
    1;
  return over / under;
}

function farTail(r: number): number {
  const over =
    ((((((2.0103343992922881e-7 * r + 2.7115555687434876e-5) * r + 0.0012426609473880784) * r + 0.026532189526576124) *
      r +
      0.29656057182850487) *
      r +
      1.7848265399172913) *
      r +
      5.463784911164114) *
      r +
    6.657904643501103;
  const under =
    ((((((2.0442631033899397e-15 * r + 1.421511758316446e-7) * r + 1.8463183175100548e-5) * r + 0.0007868691311456133) *
      r +
      0.014875361290850615) *
      r +
      0.1369298809227358) *
      r +
      0.599832206555888) *
      r +
    1;
  return over / under;
}
