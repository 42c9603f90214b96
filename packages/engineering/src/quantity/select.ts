/** Single places of a sorted order, found without sorting everything: the cost grows with the count, and no faster. */

/**
 * Arranges `values[from..to]` (both ends included, no NaN among them) so that what belongs at `place` in sorted order
 * stands there, with nothing greater before it and nothing smaller behind it.
 * Source: Hoare, Algorithm 65: FIND, Commun. ACM 4 (1961), 321–322, with the middle element as the divider.
 */
export function select(values: Float64Array, place: number, from: number, to: number): number {
  let low = from;
  let high = to;
  while (low < high) {
    const divider = values[(low + high) >> 1] as number;
    let i = low;
    let j = high;
    while (i <= j) {
      while ((values[i] as number) < divider) i++;
      while ((values[j] as number) > divider) j--;
      if (i > j) break;
      const held = values[i] as number;
      values[i] = values[j] as number;
      values[j] = held;
      i++;
      j--;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return values[place] as number;
}

/** The least of `values[from..to]`, both ends included. */
export function least(values: Float64Array, from: number, to: number): number {
  let found = values[from] as number;
  for (let i = from + 1; i <= to; i++) if ((values[i] as number) < found) found = values[i] as number;
  return found;
}
