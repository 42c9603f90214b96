/** Mean, standard deviation and correlation of what was observed or drawn. */

/** Mean in two passes: the second takes out what the first lost to rounding. NaN of nothing. */
export function mean(values: ArrayLike<number>): number {
  const n = values.length;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] ?? 0;
  const rough = sum / n;
  if (!Number.isFinite(rough)) return rough;
  let rest = 0;
  for (let i = 0; i < n; i++) rest += (values[i] ?? 0) - rough;
  return rough + rest / n;
}

/**
 * Standard deviation with n − 1, in two passes with the correction of Chan, Golub & LeVeque (Am. Stat. 37 (1983),
 * 242–247). The one-pass formula loses all digits where the deviation is small against the mean. NaN of fewer than two.
 */
export function standardDeviation(values: ArrayLike<number>): number {
  const n = values.length;
  const middle = mean(values);
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const apart = (values[i] ?? 0) - middle;
    squares += apart * apart;
    rest += apart;
  }
  return n < 2 ? Number.NaN : Math.sqrt(Math.max(0, squares - (rest * rest) / n) / (n - 1));
}

/** Correlation coefficient of two columns of the same length. NaN where one does not vary. */
export function correlation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  if (a.length !== b.length) throw new RangeError(`Columns of ${a.length} and ${b.length} values cannot be compared.`);
  const meanA = mean(a);
  const meanB = mean(b);
  let [aa, bb, ab] = [0, 0, 0];
  for (let i = 0; i < a.length; i++) {
    const x = (a[i] ?? 0) - meanA;
    const y = (b[i] ?? 0) - meanB;
    aa += x * x;
    bb += y * y;
    ab += x * y;
  }
  return ab / Math.sqrt(aa * bb);
}

/** Is it the same number throughout? */
export function isSteady(values: ArrayLike<number>): boolean {
  for (let i = 1; i < values.length; i++) if (values[i] !== values[0]) return false;
  return !Number.isNaN(values[0]);
}
