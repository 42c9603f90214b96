/** What a sum or an input is called, with its id: for messages about what is not there. */
import { factsOf, QUANTITIES, type QuantityId } from '../dossier/facts/quantities.ts';
import type { Ref } from './sum.ts';
import { SUMS } from './sums/all.ts';
import { isSumId } from './sums/ids.ts';

/** The facts an input goes by: those of an axle or a wire run are stated once for all of them. */
function factsIdOf(id: string): QuantityId | undefined {
  const shared = id
    .replace(/^axle\.\d\./, 'axle.')
    .replace(/^run\.\w+\.contact(\w)/, (_, first: string) => `connector.${first.toLowerCase()}`)
    .replace(/^run\.\w+\./, 'wire.');
  return [id, shared].find((candidate): candidate is QuantityId => candidate in QUANTITIES);
}

/** 'stall current of one drive motor (motor.stallCurrent)'. */
export function refTitle(ref: Ref): string {
  if (isSumId(ref)) return `${SUMS[ref].title} (${ref})`;
  const facts = factsIdOf(ref);
  return facts === undefined ? ref : `${factsOf(facts).title} (${ref})`;
}
