/** A world for commands under test: files in a table, answers in a list, and all that was printed. */
import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { run } from '../../packages/cli/src/run.ts';
import { HOUSE } from '../../scripts/tree.ts';

export interface World {
  readonly files?: Readonly<Record<string, string>>;
  readonly answers?: readonly string[];
  readonly colour?: boolean;
  readonly width?: number;
}

export interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
  /** Files written, with the rights asked for. */
  readonly written: ReadonlyMap<string, { readonly text: string; readonly mode: number | undefined }>;
  readonly closed: boolean;
}

const absent = (path: string, code = 'ENOENT') => Object.assign(new Error(`${code}: ${path}`), { code });

export const example = (name: string): string =>
  readFileSync(posix.join(HOUSE, 'examples/reedmere', `${name}.json`), 'utf8');

/** The dossiers of the house under short names. */
const HOUSE_FILES = Object.fromEntries(['sedge', 'teasel', 'burdock'].map((name) => [`${name}.json`, example(name)]));

/** Runs `longrein` with these words in a world of its own. */
export async function longrein(words: readonly string[], world: World = {}): Promise<Ran> {
  const files = new Map(Object.entries({ ...HOUSE_FILES, ...world.files }));
  const folders = new Set(['.', ...[...files.keys()].map((path) => posix.dirname(path))]);
  const written = new Map<string, { text: string; mode: number | undefined }>();
  const answers = [...(world.answers ?? [])];
  const [out, err]: [string[], string[]] = [[], []];
  let closed = false;
  const exit = await run(
    {
      out: (text) => out.push(`${text}\n`),
      exactly: (text) => out.push(text),
      err: (text) => err.push(`${text}\n`),
      colour: world.colour ?? false,
      width: world.width ?? 100,
      version: '1.2.3',
      read: (path) => {
        const text = files.get(path);
        if (text === undefined) throw absent(path, folders.has(path) ? 'EISDIR' : 'ENOENT');
        return text;
      },
      list: (folder) => {
        if (!folders.has(folder)) throw absent(folder);
        return [...files.keys()].filter((path) => posix.dirname(path) === folder).map((path) => posix.basename(path));
      },
      exists: (path) => files.has(path) || folders.has(path),
      write: (path, text, mode) => {
        if (!folders.has(posix.dirname(path))) throw absent(path);
        files.set(path, text);
        written.set(path, { text, mode });
      },
      ask: async (question) => {
        out.push(question);
        return answers.shift();
      },
      close: () => {
        closed = true;
      },
    },
    words,
  );
  return { exit, out: out.join(''), err: err.join(''), written, closed };
}
