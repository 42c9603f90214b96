/** What tells a fresh run of a circuit from its kept one. */
import type { Kept } from '../packages/laws/src/circuits/circuit.ts';

/**
 * Largest relative difference of a fresh result from the kept one. The simulator steps as its own arithmetic bids, and
 * another engine may round another way; the checks themselves allow ten times as much or more.
 */
const TOLERANCE = 1e-6;

/** Names every result that differs, is missing or is left over, and a simulator that is another. */
export function differences(kept: Kept, fresh: Kept): string[] {
  const names = new Set([...Object.keys(kept.results), ...Object.keys(fresh.results)]);
  const faults = [...names].flatMap((name) => {
    const [was, is] = [kept.results[name], fresh.results[name]];
    if (was === undefined || is === undefined) return [`${name}: ${was ?? 'not'} kept, ${is ?? 'not'} measured`];
    return Math.abs(is - was) <= TOLERANCE * Math.abs(was) ? [] : [`${name}: ${was} kept, ${is} measured afresh`];
  });
  return kept.simulator === fresh.simulator ? faults : [`${kept.simulator} kept, ${fresh.simulator} runs`, ...faults];
}
