/** Whether a quantity is what it may be. */

import type { Dimension, Limits, QuantityFault } from './shapes.ts';
import { formatPlain } from './show.ts';

/** Is this number, SI, within the limits? */
export function within(value: number, { above, from, to, below }: Limits): boolean {
  return (
    (above === undefined || value > above) &&
    (from === undefined || value >= from) &&
    (to === undefined || value <= to) &&
    (below === undefined || value < below)
  );
}

/** The fault of a text of which one of these numbers, SI, is outside the limits. */
export function limitFault(
  text: string,
  ends: readonly number[],
  limits: Limits,
  dimension: Dimension,
): QuantityFault | undefined {
  if (ends.every((end) => within(end, limits))) return undefined;
  const accepted = limitTexts(limits, dimension);
  return { code: 'QUANTITY_LIMITS', found: text.trim(), accepted, hint: `Write a value ${accepted.join(' and ')}.` };
}

function limitTexts({ above, from, to, below }: Limits, dimension: Dimension): string[] {
  const named = [
    ['above', above],
    ['from', from],
    ['up to', to],
    ['below', below],
  ] as const;
  return named.flatMap(([word, limit]) => (limit === undefined ? [] : [`${word} ${formatPlain(limit, dimension)}`]));
}
