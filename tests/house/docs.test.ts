/**
 * Goal: the documents can be trusted: links lead somewhere, lists are complete, generated pages are current.
 * Method: compares each document with what it speaks of, both ways.
 */
import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import * as laws from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import { surface } from '../../scripts/surface.ts';
import { files, HOUSE, read, tracked } from '../../scripts/tree.ts';
import { anchors, localLinks } from './links.ts';

/** The rows of a Markdown table whose first cell fits, as trimmed cells. */
function rows(text: string, first: RegExp): string[][] {
  return text
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .map((line) =>
      line
        .split(/(?<!\\)\|/)
        .slice(1, -1)
        .map((cell) => cell.trim()),
    )
    .filter(([cell]) => cell !== undefined && first.test(cell));
}

const known = new Map<string, ReadonlySet<string>>();

/** The anchors of a page, found once: the book of checks has thousands of links into few pages. */
function anchorsOf(path: string): ReadonlySet<string> {
  const found = known.get(path) ?? new Set(anchors(read(path)));
  known.set(path, found);
  return found;
}

describe('links', () => {
  it('are found in prose and not in code, with the anchors that headings make', () => {
    const page =
      '# A b, `c` & d!\n[x](y.md#z) `[no](no)`\n```\n[no](no)\n# no\n```\n# A\n# A\n[out](https://a.example)\n[r]: r.md';
    expect(localLinks(page)).toEqual([
      { line: 2, target: 'y.md#z' },
      { line: 10, target: 'r.md' },
    ]);
    expect(anchors(page)).toEqual(['a-b-c--d', 'a', 'a-1']);
  });

  it('lead to a file that is there, and to a heading of it', () => {
    const broken = files(/\.md$/).flatMap(({ path, text }) =>
      localLinks(text)
        .filter(({ target }) => !leads(path, target))
        .map(({ line, target }) => `${path}:${line} ${target}`),
    );
    expect(broken).toEqual([]);
  });

  function leads(from: string, target: string): boolean {
    const [file = '', anchor] = target.split('#');
    const path = file === '' ? from : posix.normalize(posix.join(posix.dirname(from), file)).replace(/\/$/, '');
    if (!tracked.some((known) => known === path || known.startsWith(`${path}/`))) return false;
    return anchor === undefined || !path.endsWith('.md') || anchorsOf(path).has(anchor);
  }
});

describe('the public surface', () => {
  const pages = surface();

  it.each(pages)('$path is current; if not, run: npm run docs', ({ path, text }) => {
    expect(existsSync(join(HOUSE, path)) && read(path)).toBe(text);
  });

  it('names everything that @longrein/laws gives at run time', () => {
    const listed =
      pages.find((page) => page.path === 'docs/surface/laws.md')?.text.split('## @longrein/laws/')[0] ?? '';
    const names = [...listed.matchAll(/^- `(\w+)` · (?:law|constant|function|class|namespace) /gm)].map(
      (found) => found[1],
    );
    expect(names.sort()).toEqual(Object.keys(laws).sort());
  });
});

describe('docs/errors.md', () => {
  it('lists the error codes of the catalogue with their meaning and what to do, no more and no fewer', async () => {
    const engineering = (await import('@longrein/engineering')) as {
      readonly ERROR_CODES?: readonly { readonly code: string; readonly meaning: string; readonly todo: string }[];
    };
    const catalogue = engineering.ERROR_CODES ?? [];
    expect(catalogue.length, 'ERROR_CODES of @longrein/engineering').toBeGreaterThan(0);
    const listed = rows(read('docs/errors.md'), /^`[A-Z][A-Z\d_]*`$/);
    const unmarked = (text = ''): string => text.replaceAll('`', '').replaceAll('\\|', '|');
    expect(listed.map((row) => row.slice(0, 3).map(unmarked)).sort()).toEqual(
      catalogue.map(({ code, meaning, todo }) => [code, meaning, todo].map(unmarked)).sort(),
    );
  });
});

describe('docs/traps.md', () => {
  const TRAPS = 37;
  const page = tracked.includes('docs/traps.md') ? read('docs/traps.md') : '';
  const listed = rows(page, /^\d+$/);
  const code = files(/^(?:packages|tests)\/.*\.ts$/).map(({ text }) => text);

  it(`has one row for each of the ${TRAPS} traps, in order`, () => {
    expect(listed.map(([number]) => Number(number))).toEqual(Array.from({ length: TRAPS }, (_, i) => i + 1));
  });

  it('says of each trap where it is met, and what it names is there', () => {
    const faults = listed.flatMap(([number, ...cells]) => {
      const met = cells.at(-1) ?? '';
      const named = [...met.matchAll(/`([^`]+)`|\]\(([^)#]+)/g)].map((found) => found[1] ?? `docs/${found[2]}`);
      if (named.length === 0 && !/^Not yet: .+\.$/.test(met)) return [`${number}: names nothing that meets it`];
      return named.filter((name) => !isThere(name)).map((name) => `${number}: ${name} is not there`);
    });
    expect(listed.length).toBeGreaterThan(0);
    expect(faults).toEqual([]);
  });

  /** A path of a tracked file or folder, or an id that stands quoted in the code. */
  function isThere(name: string): boolean {
    if (!name.includes('/')) return code.some((text) => text.includes(`'${name}'`));
    const path = posix.normalize(name).replace(/\/$/, '');
    return tracked.some((known) => known === path || known.startsWith(`${path}/`));
  }
});
