/**
 * Goal: the linter keeps clocks, waiting, surroundings and I/O out of pure code, and says what to use instead.
 * Method: plants each of them in a small house of its own, in pure code and beside it, and lints with the real rules.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HOUSE, read } from '../../scripts/tree.ts';

const GLOBALS = [
  ...['Date', 'performance', 'crypto', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask'],
  ...['Promise', 'fetch', 'process', 'console', 'Buffer', 'globalThis'],
];
const IMPORTS = ['node:fs', 'node:fs/promises', 'vitest', 'fast-check'];
const PURE = ['packages/laws/src/heat/a.ts', 'packages/engineering/src/a.ts', 'packages/station/src/core/a.ts'];
const FREE = ['packages/laws/src/a.test.ts', 'packages/station/src/rim/a.ts', 'packages/cli/src/a.ts'];

/** One line for each forbidden thing, so that a line number names it. */
const text = [
  ...IMPORTS.map((from, i) => `import { x as i${i} } from '${from}';`),
  ...GLOBALS.map((name, i) => `export const g${i} = ${name};`),
  `export const i = [${IMPORTS.map((_, i) => `i${i}`).join(', ')}];`,
].join('\n');

let root: string;
let found: readonly { readonly file: string; readonly line: number }[];

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'lint-'));
  const { vcs: _vcs, $schema: _schema, ...rules } = JSON.parse(read('biome.json')) as Record<string, unknown>;
  writeFileSync(join(root, 'biome.json'), JSON.stringify(rules));
  for (const file of [...PURE, ...FREE]) {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), text);
  }
  const args = ['lint', '--reporter=github', '--max-diagnostics=none', '--only=style/noRestrictedGlobals'];
  const biome = join(HOUSE, 'node_modules/.bin/biome');
  const run = spawnSync(biome, [...args, '--only=style/noRestrictedImports', 'packages'], {
    cwd: root,
    encoding: 'utf8',
  });
  found = [...run.stdout.matchAll(/file=([^,]+),line=(\d+)/g)].map(([, file = '', line]) => ({
    file,
    line: Number(line),
  }));
});

afterAll(() => rmSync(root, { recursive: true, force: true }));

const linesOf = (path: string): number[] => found.filter(({ file }) => file.endsWith(path)).map(({ line }) => line);

describe('the linter', () => {
  it.each(PURE)('refuses clocks, waiting, surroundings and I/O in %s', (path) => {
    const all = Array.from({ length: IMPORTS.length + GLOBALS.length }, (_, i) => i + 1);
    expect([...new Set(linesOf(path))].sort((a, b) => a - b)).toEqual(all);
  });

  it.each(FREE)('leaves %s free', (path) => {
    expect(linesOf(path)).toEqual([]);
  });
});
