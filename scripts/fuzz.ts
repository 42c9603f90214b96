/**
 * `npm run fuzz [-- RUNS [SEED]]` tries to break the reader of dossiers with many more random texts than the tests do:
 * 100,000 unless said otherwise. It prints the seed, and saves the text that breaks it under .reports/.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { damaged } from '../tests/fuzz/damage.ts';
import { shaped } from '../tests/fuzz/shaped.ts';
import { newTally, tryText } from '../tests/fuzz/trial.ts';
import { HOUSE } from './tree.ts';

const RUNS = 100_000;
/** Every so many runs a line tells how far it is. */
const TOLD_EVERY = 2000;
const RECKON_EVERY = 4;

const [runs = RUNS, seed = Date.now() % 2 ** 31] = process.argv.slice(2).map(Number);
if (!Number.isInteger(runs) || runs < 1 || !Number.isInteger(seed)) {
  console.error('Write: npm run fuzz -- RUNS SEED, two whole numbers.');
  process.exit(2);
}
console.log(`${runs} texts, seed ${seed}`);

const tally = newTally();
const text = fc.oneof({ weight: 4, arbitrary: damaged }, { weight: 1, arbitrary: shaped });
const started = performance.now();
let done = 0;
const result = fc.check(
  fc.property(text, (each) => {
    tryText(each, tally, RECKON_EVERY);
    done++;
    if (done % TOLD_EVERY === 0) {
      const left = ((performance.now() - started) / done) * (runs - done);
      console.log(
        `${done}: ${tally.accepted} accepted, ${tally.refused} refused; ${(left / 60_000).toFixed(1)} min left`,
      );
    }
  }),
  // Shrinking a whole dossier can take longer than the search itself; the text as found is enough to mend by.
  { seed, numRuns: runs, skipEqualValues: false, endOnFailure: true },
);

for (const [code, times] of [...tally.codes].sort(([a], [b]) => (a < b ? -1 : 1))) console.log(`${code}: ${times}`);
console.log(`${tally.accepted} accepted, ${tally.refused} refused, ${tally.reckoned} reckoned`);
for (const [state, times] of tally.states) console.log(`${state}: ${times}`);
if (result.failed) {
  const folder = join(HOUSE, '.reports');
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `fuzz-${seed}.json`);
  writeFileSync(path, result.counterexample?.[0] ?? '');
  console.error(`Broken after ${result.numRuns} texts by ${path}: ${String(result.errorInstance)}`);
  console.error(`Again with: npm run fuzz -- ${runs} ${seed}`);
  process.exitCode = 1;
}
