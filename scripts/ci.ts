/**
 * Runs every check of the house, one after the other, and ends on one line that counts them: each test counts once,
 * each other step counts once. It exits with zero only if nothing failed and, on a build machine, nothing was skipped.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type Count, countSteps, countTests, summary } from './count.ts';
import { HOUSE, read, tracked } from './tree.ts';

const REPORT = '.reports/vitest.json';

/** Says what runs, runs it with its output shown, and gives whether it went well. */
function runs(title: string, command: string, ...args: string[]): boolean {
  console.log(`\n── ${title}`);
  const start = performance.now();
  const { status } = spawnSync(command, args, { cwd: HOUSE, stdio: ['ignore', 'inherit', 'inherit'] });
  console.log(
    `${title}: ${status === 0 ? 'passed' : 'FAILED'} in ${((performance.now() - start) / 1000).toFixed(1)} s`,
  );
  return status === 0;
}

const script = (title: string, name: string, ...args: string[]): boolean =>
  runs(title, 'npm', 'run', '--silent', name, ...args);

/** Runs every test, and counts from the runner's own report that every test file was among them. */
function tests(): Count {
  rmSync(join(HOUSE, REPORT), { force: true });
  mkdirSync(dirname(join(HOUSE, REPORT)), { recursive: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${REPORT}`];
  const passed = runs('tests', 'npx', 'vitest', 'run', ...reporters);
  const report = existsSync(join(HOUSE, REPORT)) ? read(REPORT) : undefined;
  const written = tracked.filter((path) => path.endsWith('.test.ts')).map((path) => join(HOUSE, path));
  return countTests(report, passed, written);
}

/** Until there is a command that prints the book of checks, its rows are run as tests alone. */
const printsBook = tracked.some((path) => /^packages\/cli\/src\/.*\bchecks\.ts$/.test(path));

const steps = countSteps([
  script('lint', 'lint'),
  script('types', 'typecheck'),
  script('arrows', 'arrows'),
  script('unused code', 'unused'),
  script('documents up to date', 'docs', '--', '--check'),
  ...(printsBook ? [script('book of checks', 'checks')] : []),
]);
const { line, good, reasons } = summary([steps, tests()], Boolean(process.env.CI));
for (const reason of reasons) console.error(reason);
process.exitCode = good ? 0 : 1;
console.log(line);
