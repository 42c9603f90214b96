/** What a house rule is: a claim about every file it covers, which names each place that breaks it. */
import type { Page } from '../../scripts/tree.ts';

/** A place that breaks a rule, and what to do about it. */
export interface Fault {
  readonly line: number;
  readonly says: string;
}

/** A rule, with one text that breaks it at the given lines and one that comes near and does not. */
export interface Rule {
  /** The claim, as the name of its test. */
  readonly claim: string;
  /** Which files it covers, by path from the root. */
  readonly covers: (path: string) => boolean;
  readonly faults: (page: Page) => readonly Fault[];
  readonly broken: { readonly path: string; readonly text: string; readonly at: readonly number[] };
  readonly kept: { readonly path: string; readonly text: string };
}

/** Packages whose code is pure, and every core/: no clock, no chance, no waiting, no surroundings. Tests are free. */
export const isPure = (path: string): boolean =>
  !path.endsWith('.test.ts') &&
  /^packages\/(?:(?:laws|wire|formats|dynamics|guard|engineering)\/src|[^/]+\/src\/core)\/.*\.ts$/.test(path);

/** Everything a person or a machine runs. */
export const isCode = (path: string): boolean => /\.(?:ts|tsx|mjs|cjs|js)$/.test(path);

/** Every text kept by hand. */
export const isText = (path: string): boolean =>
  path !== 'package-lock.json' && (isCode(path) || /\.(?:md|json|css|html|csv|svg)$|^\.ci\/|^[^/]*$/.test(path));

/** Every match of a pattern, as faults. */
export function matches({ text }: Page, pattern: RegExp, says: (found: string) => string): Fault[] {
  return text
    .split('\n')
    .flatMap((line, i) => [...line.matchAll(pattern)].map((found) => ({ line: i + 1, says: says(found[0]) })));
}
