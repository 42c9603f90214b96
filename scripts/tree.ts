/** The files of the house as version control knows them: what is built, generated or not yet added is left out. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The root folder of the house. */
export const HOUSE = join(import.meta.dirname, '..');

/** A file as a rule sees it: its path from the root, with forward slashes, and its text. */
export interface Page {
  readonly path: string;
  readonly text: string;
}

/** Paths of all tracked files that are there. */
export const tracked: readonly string[] = execFileSync('git', ['ls-files', '-z'], { cwd: HOUSE, encoding: 'utf8' })
  .split('\0')
  .filter((path) => path !== '' && existsSync(join(HOUSE, path)));

/** Reads the tracked files whose path matches. */
export function files(pattern: RegExp): Page[] {
  return tracked.filter((path) => pattern.test(path)).map((path) => ({ path, text: read(path) }));
}

/** Reads one file of the house. */
export function read(path: string): string {
  return readFileSync(join(HOUSE, path), 'utf8');
}
