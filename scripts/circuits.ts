/**
 * `npm run circuits` runs every circuit of the book of checks afresh and writes what it measured into the circuit's
 * file; with `--check` it writes nothing, names every difference, and fails if there is one.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Kept } from '../packages/laws/src/circuits/circuit.ts';
import { CIRCUITS } from '../packages/laws/src/circuits/list.ts';
import { differences } from './differences.ts';
import { simulate, startSimulator } from './simulate.ts';
import { HOUSE, read } from './tree.ts';

/** The kept run as it stands in a circuit's file, indented as the formatter has it. */
function written({ simulator, points, results }: Kept): string {
  const lines = Object.entries(results).map(([name, value]) => `      ${name}: ${value},`);
  return [
    '  kept: {',
    `    simulator: '${simulator}',`,
    `    points: ${points},`,
    '    results: {',
    ...lines,
    '    },',
    '  },',
  ].join('\n');
}

/** Puts a run into the file of its circuit. */
function keep(id: string, kept: Kept): void {
  const path = `packages/laws/src/circuits/${id}.circuit.ts`;
  const text = read(path);
  const block = /^ {2}kept: \{\n[\s\S]*?^ {2}\},$/m;
  if (!block.test(text)) throw new Error(`${path} has no block of kept results`);
  writeFileSync(
    join(HOUSE, path),
    text.replace(block, () => written(kept)),
  );
}

const checking = process.argv.includes('--check');
const simulator = await startSimulator();
for (const circuit of CIRCUITS) {
  const start = performance.now();
  const fresh = await simulate(simulator, circuit);
  const faults = differences(circuit.kept, fresh);
  const took = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`${circuit.id}: ${fresh.points} points in ${took} s, ${faults.length} differences`);
  if (!checking) keep(circuit.id, fresh);
  else if (faults.length > 0) {
    for (const fault of faults) console.error(`  ${fault}`);
    process.exitCode = 1;
  }
}
