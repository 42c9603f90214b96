/**
 * Goal: every example a reader may copy works as printed.
 * Method: command lines are collected from the help texts and from the documents, and those that only read are run
 * through the program with a captured output; blocks of code in the READMEs are run, and what they print is compared
 * with the remark behind the line that prints it.
 */
import * as fs from 'node:fs';
import { join } from 'node:path';
import * as engineering from '@longrein/engineering';
import * as laws from '@longrein/laws';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import type { Io } from '../packages/cli/src/io.ts';
import { COMMANDS, run } from '../packages/cli/src/run.ts';
import { files, HOUSE, read } from '../scripts/tree.ts';

/** Commands that read and change nothing, each with whether it draws cases, of which fewer are enough here. */
const READING: Readonly<Record<string, boolean>> = {
  reckon: true,
  explain: true,
  'measure-next': true,
  limits: true,
  validate: false,
  shelf: false,
  checks: false,
};
const CASES = '50';
/** A vehicle of the reader's own, as the texts call it, stands for this one. */
const OWN = { name: 'my-toy.json', file: 'examples/reedmere/burdock.json' } as const;

interface Example {
  readonly from: string;
  readonly words: readonly string[];
}

/** The words of a command line: quotes hold words together, a remark ends it. */
function wordsOf(line: string): string[] {
  const command = line.replace(/\s+#.*$/, '');
  return [...command.matchAll(/"([^"]*)"|(\S+)/g)].map((found) => found[1] ?? found[2] ?? '');
}

/** Command lines of a text: behind a prompt of ours at the start of a line, up to the explanation set apart from it. */
function commandLines(text: string): string[] {
  const start = /^(?:\s*[A-Z][a-z]+:)?\s*(?:npx longrein|npm run longrein --|longrein)\s+(\S.*?)(?:\s{2,}.*)?$/;
  return text.split('\n').flatMap((line) => start.exec(line)?.[1] ?? []);
}

/** What stands in fenced blocks and in code spans: the places a reader copies from. */
function codeOf(markdown: string): string {
  const blocks = [...markdown.matchAll(/^```(?:sh|text)?\n(.*?)^```/gms)].map((found) => found[1]);
  const spans = [...markdown.matchAll(/`(longrein [^`\n]+)`/g)].map((found) => found[1]);
  return [...blocks, ...spans].join('\n');
}

const pages = files(/^(?:[A-Z]+\.md|(?:docs|examples|packages\/[^/]+)\/[\w-]+\.md)$/);
const all: readonly Example[] = [
  ...COMMANDS.map(({ name, help }) => ({ from: `help of ${name}`, text: help })),
  ...pages.map(({ path, text }) => ({ from: path, text: codeOf(text) })),
].flatMap(({ from, text }) => commandLines(text).map((line) => ({ from, words: wordsOf(line) })));

const isPlaceholder = (word: string): boolean => /^\[|^[A-Z]{2,}$|^…$/.test(word);
const writes = (word: string): boolean => ['--out', '--new-key', '--key'].includes(word);

const runnable = all.filter(
  ({ words: [name = '', ...rest] }) =>
    name in READING &&
    !rest.some((word) => isPlaceholder(word) || writes(word)) &&
    (rest.length > 0 || name === 'shelf'),
);
const once = [...new Map(runnable.map((example) => [example.words.join(' '), example])).values()];

interface Captured extends Io {
  readonly printed: string[];
  readonly complaints: string[];
}

function capture(): Captured {
  const printed: string[] = [];
  const complaints: string[] = [];
  const refuse = (what: string) => () => {
    throw new Error(`an example that only reads may not ${what}`);
  };
  const path = (name: string) => join(HOUSE, name === OWN.name ? OWN.file : name);
  return {
    printed,
    complaints,
    out: (text) => printed.push(text),
    exactly: (text) => printed.push(text),
    version: 'as tested',
    err: (text) => complaints.push(text),
    colour: false,
    width: 100,
    read: (name) => fs.readFileSync(path(name), 'utf8'),
    list: (folder) => fs.readdirSync(path(folder)),
    exists: (name) => fs.existsSync(path(name)),
    write: refuse('write'),
    ask: refuse('ask'),
    close: () => undefined,
  };
}

describe('command lines', () => {
  it('are found in help texts and documents, without prompt, remark and explanation', () => {
    const text =
      'Example:  longrein a b.json "c d"   # remark\n          longrein e F  says what\nA longrein f\nnpm run longrein -- g   # h';
    expect(commandLines(text).map(wordsOf)).toEqual([['a', 'b.json', 'c d'], ['e', 'F'], ['g']]);
    expect(commandLines(codeOf('See `longrein a b` now.\n```sh\nlongrein c\n```\n'))).toEqual(['c', 'a b']);
  });

  it('name only commands that there are', () => {
    const known = ['help', '--help', ...COMMANDS.map(({ name }) => name)];
    expect(all.filter(({ words }) => !known.includes(words[0] ?? '') && !isPlaceholder(words[0] ?? ''))).toEqual([]);
  });

  it('give each command that only reads at least one example that is run below', () => {
    expect([...new Set(once.map(({ words }) => words[0]))].sort()).toEqual(Object.keys(READING).sort());
  });

  it.each(once.map(({ from, words }) => ({ from, words, line: words.join(' ') })))(
    'work: longrein $line ($from)',
    async ({ words }) => {
      const io = capture();
      const fewer = READING[words[0] ?? ''] ? ['--cases', CASES] : [];
      const exit = await run(io, [...words, ...fewer]);
      expect(io.complaints).toEqual([]);
      expect([0, 1]).toContain(exit);
      expect(io.printed.join('\n').length).toBeGreaterThan(0);
      if (words.includes('--json')) expect(() => JSON.parse(io.printed.join('\n')) as unknown).not.toThrow();
    },
  );
});

/** The names of all keys of a JSON value. */
function keysOf(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(keysOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [key, ...keysOf(inner)]);
}

/** The keys that a section of the page on shapes names: `sums[].id` and `.title` name id and title. */
function keysNamed(command: string): string[] {
  const section = read('docs/shapes.md').split(`## longrein ${command} --json`)[1]?.split(/^## /m)[0] ?? '';
  return [...section.matchAll(/`(?:\w+\[\])?(?:\w+\[\])?\.?(\w+)(?:\[\])?`/g)].map((found) => found[1] ?? '');
}

describe('docs/shapes.md', () => {
  it.each([
    ['reckon', ['reckon', 'examples/reedmere/teasel.json', '--cases', CASES, '--json']],
    ['checks', ['checks', '--law', 'duty-ceiling', '--json']],
    ['validate', ['validate', OWN.name, '--json']],
    ['measure-next', ['measure-next', OWN.name, '--cases', '200', '--json']],
  ])('names every key that longrein %s --json prints', async (command, words) => {
    const io = capture();
    await run(io, words);
    const printed = new Set(keysOf(JSON.parse(io.printed.join('\n'))));
    const named = keysNamed(command);
    expect(printed.size).toBeGreaterThan(4);
    expect([...printed].filter((key) => !named.includes(key))).toEqual([]);
  });
});

const MODULES: Readonly<Record<string, unknown>> = {
  '@longrein/laws': laws,
  '@longrein/engineering': engineering,
  'node:fs': fs,
};

/** Runs a block of TypeScript and gives what it printed. */
function execute(block: string): string[] {
  const { outputText } = ts.transpileModule(block, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  });
  const printed: string[] = [];
  const log = (...values: readonly unknown[]): void => void printed.push(values.join(' '));
  const load = (name: string): unknown => {
    if (!(name in MODULES)) throw new Error(`an example imports ${name}`);
    return MODULES[name];
  };
  new Function('require', 'exports', 'console', outputText)(load, {}, { log });
  return printed;
}

const blocks = ['laws', 'engineering'].flatMap((name) => {
  const path = `packages/${name}/README.md`;
  return [...read(path).matchAll(/^```ts\n(.*?)^```/gms)].map((found) => ({ path, block: found[1] ?? '' }));
});

describe('code in a README', () => {
  it('is there', () => {
    expect(blocks.map(({ path }) => path)).toEqual(['packages/laws/README.md', 'packages/engineering/README.md']);
  });

  it.each(blocks)('prints what it says it prints: $path', ({ block }) => {
    const promised = [...block.matchAll(/console\.log\(.*\); \/\/ (.*)$/gm)].map((found) => found[1] ?? '');
    expect(promised.length).toBeGreaterThan(0);
    const printed = execute(block);
    expect(promised.filter((line) => !printed.includes(line))).toEqual([]);
  });
});
