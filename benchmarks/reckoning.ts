/** The whole reckoning: warm against the first call of a program, and how its cost grows with the number of cases. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { reckon, type Vehicle } from './built.ts';
import { compare, type Result, secondsOf } from './clock.ts';

const CASES = 1000;
/** Calls after which the engine has translated what it will. */
const WARMING = 40;

/** Seconds of the first reckoning in a program of its own. */
function firstCall(): number {
  const script = join(import.meta.dirname, 'first-call.ts');
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', script], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`first-call.ts failed: ${stderr}`);
  return Number(stdout);
}

export function warmAgainstFirst(vehicle: Vehicle): Result {
  for (let i = 0; i < WARMING; i++) reckon(vehicle, { cases: CASES });
  return compare(
    {
      id: 'reckon-warm',
      what: `a whole reckoning of ${CASES} cases (all sums, findings and what decides them), warm, against the first one of a fresh program`,
      unit: 'ms',
      runs: 7,
    },
    () => ({ ours: secondsOf(20, () => reckon(vehicle, { cases: CASES })), baseline: firstCall() }),
  );
}

/** Cost of a case among many against the cost of a case among a thousand. */
export function costPerCase(vehicle: Vehicle, cases: number): Result {
  const calls = Math.max(1, Math.round(20_000 / cases));
  return compare(
    {
      id: `reckon-${cases}`,
      what: `cost of one case in a whole reckoning of ${cases} cases against one of ${CASES} cases`,
      unit: 'µs',
      runs: cases > 50_000 ? 3 : 5,
    },
    () => ({
      ours: secondsOf(calls, () => reckon(vehicle, { cases })) / cases,
      baseline: secondsOf(10, () => reckon(vehicle, { cases: CASES })) / CASES,
    }),
  );
}
