/**
 * Goal: every arrow of the house is held, and each rule that holds one is known to bite.
 * Method: plants one violation of each rule in a small house of its own, cruises it with the real rules and compares
 * file by file; imports that the rules allow stand beside them and must pass.
 */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Cruise, cruise } from '../../scripts/cruise.ts';
import { HOUSE } from '../../scripts/tree.ts';

const PACKAGES = ['laws', 'wire', 'formats', 'dynamics', 'guard', 'engineering', 'onboard', 'station', 'cli'];

/** A planted file, what it imports, and the rules that must catch it. */
interface Plant {
  readonly file: string;
  readonly imports: string;
  readonly caught: readonly string[];
}

const ours = (name: string): string => `import '@longrein/${name}';`;

const BROKEN: readonly Plant[] = [
  { file: 'laws/src/a.ts', imports: ours('wire'), caught: ['laws-imports-nothing-of-ours'] },
  { file: 'wire/src/a.ts', imports: ours('laws'), caught: ['wire-imports-nothing-of-ours'] },
  { file: 'formats/src/a.ts', imports: ours('laws'), caught: ['formats-imports-nothing-of-ours'] },
  { file: 'dynamics/src/a.ts', imports: ours('wire'), caught: ['dynamics-imports-only-laws'] },
  { file: 'guard/src/a.ts', imports: ours('dynamics'), caught: ['guard-imports-only-laws-wire'] },
  {
    file: 'engineering/src/a.ts',
    imports: ours('formats'),
    caught: ['engineering-imports-only-laws-wire-dynamics-guard'],
  },
  {
    file: 'onboard/src/a.ts',
    imports: ours('engineering'),
    caught: ['onboard-imports-only-laws-wire-dynamics-guard'],
  },
  { file: 'station/src/a.ts', imports: ours('onboard'), caught: ['station-imports-only-engineering-wire'] },
  {
    file: 'engineering/src/quantity/a.ts',
    imports: ours('wire'),
    caught: ['engineering-quantity-keeps-to-its-place'],
  },
  {
    file: 'engineering/src/quantity/b.ts',
    imports: `import '../dossier/fine.ts';`,
    caught: ['engineering-quantity-keeps-to-its-place'],
  },
  {
    file: 'engineering/src/dossier/a.ts',
    imports: `import '../reckoning/fine.ts';`,
    caught: ['engineering-dossier-keeps-to-its-place'],
  },
  {
    file: 'engineering/src/dossier/b.ts',
    imports: `import type { wire } from '@longrein/wire';`,
    caught: ['engineering-dossier-keeps-to-its-place'],
  },
  {
    file: 'engineering/src/reckoning/a.ts',
    imports: `import '../sheets/fine.ts';`,
    caught: ['engineering-reckoning-keeps-to-its-place'],
  },
  { file: 'cli/src/a.ts', imports: `import './b.ts';`, caught: ['no-cycle'] },
  { file: 'laws/src/b.ts', imports: `import 'node:fs';`, caught: ['pure-uses-no-node-built-in'] },
  { file: 'station/src/core/a.ts', imports: `import 'fs/promises';`, caught: ['pure-uses-no-node-built-in'] },
  { file: 'guard/src/b.ts', imports: `import 'zod';`, caught: ['laws-and-guard-use-no-library'] },
  { file: 'laws/src/heat/a.ts', imports: `import './index.ts';`, caught: ['no-own-barrel-inside'] },
  { file: 'cli/src/c.ts', imports: `import { own } from './index.ts';`, caught: ['no-own-barrel-inside'] },
  { file: 'cli/src/d.ts', imports: `import '../../laws/src/fine.ts';`, caught: ['packages-by-name'] },
  { file: 'cli/src/e.ts', imports: `import './fine.test.ts';`, caught: ['shipped-imports-no-tests'] },
  { file: 'cli/src/f.ts', imports: `import '../../../scripts/fine.ts';`, caught: ['shipped-imports-no-tests'] },
  { file: 'laws/src/c.ts', imports: `import './fine.checks.ts';`, caught: ['shipped-imports-no-checks'] },
  { file: 'cli/src/g.ts', imports: `import 'vitest';`, caught: ['shipped-uses-only-its-dependencies'] },
  { file: 'cli/src/h.ts', imports: `import './nowhere.ts';`, caught: ['everything-resolves'] },
];

const FINE: readonly Plant[] = [
  // The other half of the planted cycle: a cycle is told once, at its first file.
  { file: 'cli/src/b.ts', imports: `import './a.ts';`, caught: [] },
  { file: 'laws/src/fine.ts', imports: '', caught: [] },
  { file: 'laws/src/fine.checks.ts', imports: `import './fine.ts';\nimport 'vitest';`, caught: [] },
  { file: 'laws/src/book.ts', imports: `import './fine.checks.ts';`, caught: [] },
  { file: 'laws/src/heat/index.ts', imports: `export * from './fine.ts';`, caught: [] },
  { file: 'laws/src/heat/fine.ts', imports: `import '../fine.ts';`, caught: [] },
  { file: 'laws/src/fine.test.ts', imports: `import 'node:fs';\nimport './index.ts';\nimport 'vitest';`, caught: [] },
  { file: 'engineering/src/fine.ts', imports: `import 'zod';\n${ours('laws')}\n${ours('guard')}`, caught: [] },
  { file: 'engineering/src/quantity/fine.ts', imports: ours('laws/check'), caught: [] },
  { file: 'engineering/src/dossier/fine.ts', imports: `import '../quantity/fine.ts';\n${ours('laws')}`, caught: [] },
  { file: 'engineering/src/reckoning/fine.ts', imports: `import '../dossier/fine.ts';\n${ours('wire')}`, caught: [] },
  { file: 'engineering/src/sheets/fine.ts', imports: `import '../reckoning/fine.ts';`, caught: [] },
  { file: 'station/src/rim/fine.ts', imports: `import 'node:fs';`, caught: [] },
  { file: 'cli/src/main.ts', imports: `import 'node:fs';\nimport './index.ts';\n${ours('engineering')}`, caught: [] },
  { file: 'cli/src/fine.test.ts', imports: `import './index.ts';`, caught: [] },
];

let root: string;
let seen: Cruise;

function write(path: string, text: string): void {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'arrows-'));
  write(
    'package.json',
    JSON.stringify({ name: 'house', workspaces: ['packages/*'], devDependencies: { vitest: '1.0.0' } }),
  );
  write('scripts/fine.ts', 'export {};\n');
  for (const name of ['zod', 'vitest']) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'index.js' }));
    write(`node_modules/${name}/index.js`, '');
  }
  mkdirSync(join(root, 'node_modules/@longrein'));
  for (const name of PACKAGES) {
    const dependencies = Object.fromEntries([
      ...PACKAGES.map((other) => [`@longrein/${other}`, '1.0.0']),
      ['zod', '1.0.0'],
    ]);
    const exports = { '.': { 'longrein-src': './src/index.ts' }, './check': { 'longrein-src': './src/check.ts' } };
    write(`packages/${name}/package.json`, JSON.stringify({ name: `@longrein/${name}`, exports, dependencies }));
    write(`packages/${name}/src/index.ts`, `export const own = 1;\nexport type ${name} = number;\n`);
    write(`packages/${name}/src/check.ts`, 'export {};\n');
    symlinkSync(join(root, 'packages', name), join(root, 'node_modules/@longrein', name));
  }
  for (const { file, imports } of [...BROKEN, ...FINE]) write(`packages/${file}`, `${imports}\nexport {};\n`);
  seen = cruise(root);
});

afterAll(() => rmSync(root, { recursive: true, force: true }));

const caughtIn = (file: string): string[] => [
  ...new Set(seen.violations.filter((v) => v.from === `packages/${file}`).map((v) => v.rule)),
];

describe('the arrows', () => {
  it.each(BROKEN)('catch $file by $caught', ({ file, caught }) => {
    expect(caughtIn(file).sort()).toEqual([...caught].sort());
  });

  it.each(FINE)('let $file pass', ({ file }) => {
    expect(seen.modules).toContain(`packages/${file}`);
    expect(caughtIn(file)).toEqual([]);
  });

  it('are each proved to bite, and say why they stand', () => {
    const config = createRequire(import.meta.url)(join(HOUSE, '.dependency-cruiser.cjs')) as {
      readonly forbidden: readonly { readonly name: string; readonly comment: string; readonly severity: string }[];
    };
    const proved = new Set(BROKEN.flatMap((plant) => plant.caught));
    expect(config.forbidden.map((rule) => rule.name).filter((name) => !proved.has(name))).toEqual([]);
    for (const rule of config.forbidden) {
      expect(rule.severity).toBe('error');
      expect(rule.comment).toMatch(/^\p{Lu}.{20,}\.$/u);
    }
  });

  it('hold in this house', () => {
    expect(cruise(HOUSE).violations).toEqual([]);
  });
});
