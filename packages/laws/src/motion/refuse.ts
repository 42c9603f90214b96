/** Refusals that depend on two arguments at once, which the range of a single argument cannot express. */
import { OutOfRange } from '../law.ts';

/**
 * Refuses a value that another argument makes impossible.
 * @param fits     whether the arguments go together
 * @param law      id of the law
 * @param symbol   symbol of the argument refused
 * @param found    its value
 * @param accepted what would be accepted, in words
 * @param why      what would go wrong
 * @throws {@link OutOfRange}
 */
export function insist(fits: boolean, law: string, symbol: string, found: number, accepted: string, why: string): void {
  if (!fits) throw new OutOfRange(law, symbol, found, accepted, why);
}
