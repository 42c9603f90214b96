/** What a command may do to the world: read, write, print, ask. One implementation here, one for tests. */
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline/promises';

export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Is the output a terminal that may be coloured? */
  readonly colour: boolean;
  /** Columns of the output. */
  readonly width: number;
  readonly read: (path: string) => string;
  readonly list: (folder: string) => string[];
  readonly exists: (path: string) => boolean;
  /** Writes whole or not at all: to a temporary file beside it, synced, then renamed. */
  readonly write: (path: string, text: string, mode?: number) => void;
  readonly ask: (question: string) => Promise<string | undefined>;
  readonly close: () => void;
}

/** Narrowest and widest line printed; wider lines are hard to read. */
const WIDTH = { least: 60, most: 110 } as const;

/** The real world. */
export function realIo(): Io {
  const tty = process.stdout.isTTY === true;
  let lines: AsyncIterator<string> | undefined;
  const reader = () =>
    createInterface({ input: process.stdin, output: process.stdout, terminal: process.stdin.isTTY === true });
  let open: ReturnType<typeof reader> | undefined;
  return {
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(`${text}\n`),
    colour: tty && process.env.NO_COLOR === undefined && process.env.TERM !== 'dumb',
    width: Math.min(WIDTH.most, Math.max(WIDTH.least, process.stdout.columns ?? 100)),
    read: (path) => readFileSync(path, 'utf8'),
    list: (folder) => readdirSync(folder).sort(),
    exists: existsSync,
    write: writeWhole,
    ask: async (question) => {
      open ??= reader();
      lines ??= open[Symbol.asyncIterator]();
      process.stdout.write(question);
      const next = await lines.next();
      return next.done ? undefined : next.value;
    },
    close: () => open?.close(),
  };
}

/** Writes a file whole or not at all. An old file's rights are kept. */
export function writeWhole(path: string, text: string, rights = 0o644): void {
  const temporary = join(dirname(path), `.${Date.now().toString(36)}-${process.pid}.tmp`);
  const mode = existsSync(path) ? statSync(path).mode : rights;
  const file = openSync(temporary, 'w', mode);
  try {
    writeSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(temporary, path);
}
