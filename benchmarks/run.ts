/** `npm run bench`: times the house against named baselines, prints a table and writes benchmarks/results.json. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { reckon } from './built.ts';
import type { Result } from './clock.ts';
import { againstHandWritten } from './hand-written.ts';
import { drawing, readingDossier, readingQuantities } from './parts.ts';
import { costPerCase, warmAgainstFirst } from './reckoning.ts';
import { sedge } from './sedge.ts';

const vehicle = sedge();
const results: Result[] = [];

function show(result: Result): void {
  const { id, what, ours, baseline, ratio, range, unit, runs } = result;
  results.push(result);
  console.log(`${id}: ${what}`);
  console.log(
    `  ours ${ours.toPrecision(3)} ${unit}, baseline ${baseline.toPrecision(3)} ${unit}, ratio ${ratio.toPrecision(3)}` +
      ` (${range.map((x) => x.toPrecision(3)).join(' to ')}) in ${runs} rounds`,
  );
}

show(readingQuantities(vehicle));
show(readingDossier());
show(drawing(vehicle));
for (const result of againstHandWritten(reckon(vehicle))) {
  if (typeof result === 'string') console.log(`the comparison with C is left out: ${result}`);
  else show(result);
}
show(warmAgainstFirst(vehicle));
for (const cases of [10_000, 100_000]) show(costPerCase(vehicle, cases));

const file = join(import.meta.dirname, 'results.json');
writeFileSync(file, `${JSON.stringify(results, null, 2)}\n`);
console.log(`written: ${file}`);
