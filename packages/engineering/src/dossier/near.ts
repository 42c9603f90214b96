/** What somebody may have meant by a word that is not one of those accepted. */
import { editSteps } from '../quantity/unit-near.ts';

/** Longer words are not compared: that bounds the work on hostile input. */
const LENGTH_MAX = 60;

/** The accepted word nearest to this one, if no more than two of five letters differ. */
function nearest(word: unknown, accepted: readonly string[]): string | undefined {
  if (typeof word !== 'string' || word.length > LENGTH_MAX) return undefined;
  let best: string | undefined;
  let least = Math.max(1, Math.floor(word.length * 0.4));
  for (const candidate of accepted) {
    if (Math.abs(candidate.length - word.length) > least) continue;
    const steps = editSteps(word.toLowerCase(), candidate.toLowerCase());
    if (steps > least || (steps === least && best !== undefined)) continue;
    best = candidate;
    least = steps;
  }
  return best;
}

/** That word as a sentence that proposes it. */
export function perhaps(word: unknown, accepted: readonly string[]): string | undefined {
  const near = nearest(word, accepted);
  return near === undefined ? undefined : `Perhaps "${near}" is meant.`;
}
