/**
 * `npm run docs` writes every generated page under docs/; with `--check` it writes nothing, names the pages that are
 * missing, stale or left over, and fails if there is one.
 */
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { bookOfChecks } from './docs/book.ts';
import { commands } from './docs/commands.ts';
import { dossier } from './docs/dossier.ts';
import { errors } from './docs/errors.ts';
import { findings, sums } from './docs/reckoning.ts';
import { schemas } from './docs/schemas.ts';
import { shelf } from './docs/shelf.ts';
import { surface } from './surface.ts';
import { HOUSE, type Page, read } from './tree.ts';

/** A source of pages. A folder named by `owns` holds nothing but its pages. */
interface Generator {
  readonly make: () => readonly Page[];
  readonly owns?: string;
}

/** Every generator of the house; a new one is a line here. */
const GENERATORS: readonly Generator[] = [
  { make: surface, owns: 'docs/surface' },
  { make: bookOfChecks, owns: 'docs/checks' },
  { make: dossier },
  { make: schemas },
  { make: errors },
  { make: sums },
  { make: findings },
  { make: shelf },
  { make: commands },
];

const pages = GENERATORS.flatMap((generator) => generator.make());
const wanted = new Set(pages.map((page) => page.path));
const stale = pages.filter((page) => !existsSync(join(HOUSE, page.path)) || read(page.path) !== page.text);
const leftOver = GENERATORS.flatMap(({ owns }) =>
  owns && existsSync(join(HOUSE, owns)) ? readdirSync(join(HOUSE, owns)).map((name) => `${owns}/${name}`) : [],
).filter((path) => !wanted.has(path));

if (process.argv.includes('--check')) {
  for (const { path } of stale) console.error(`${path} is not what the code says now; run: npm run docs`);
  for (const path of leftOver) console.error(`${path} is made by nothing any more; run: npm run docs`);
  if (stale.length + leftOver.length > 0) process.exitCode = 1;
} else {
  for (const { path, text } of stale) {
    mkdirSync(dirname(join(HOUSE, path)), { recursive: true });
    writeFileSync(join(HOUSE, path), text);
  }
  for (const path of leftOver) rmSync(join(HOUSE, path));
}
console.log(`${pages.length} generated pages, ${stale.length} stale, ${leftOver.length} left over`);
