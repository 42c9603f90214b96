/** What a command may do to the world: read, write, print, ask. One implementation here, one for tests. */
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline/promises';

export interface Io {
  readonly out: (text: string) => void;
  /** Writes a text exactly as it is, without a line end, for what is compared byte by byte. */
  readonly exactly: (text: string) => void;
  readonly err: (text: string) => void;
  /** Is the output a terminal that may be coloured? */
  readonly colour: boolean;
  /** Columns of the output. */
  readonly width: number;
  /** Version of the program. */
  readonly version: string;
  readonly read: (path: string) => string;
  readonly list: (folder: string) => string[];
  readonly exists: (path: string) => boolean;
  /** Writes whole or not at all: to a temporary file beside it, synced, then renamed. */
  readonly write: (path: string, text: string, mode?: number) => void;
  /** The next line of the answer; nothing where the input has ended. */
  readonly ask: (question: string) => Promise<string | undefined>;
  /** Shows how far something long has come, where somebody can watch; gives what is to be told the share done. */
  readonly progress?: (label: string) => (share: number) => void;
  readonly close: () => void;
}

/** Narrowest and widest line printed; wider lines are hard to read. */
const WIDTH = { least: 60, most: 110, elsewhere: 100 } as const;

/** The real world. */
export function realIo(): Io {
  const tty = process.stdout.isTTY === true;
  // Whoever reads only the beginning, such as a pager that is left, ends the program without a fuss.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(process.exitCode ?? 0);
  });
  const ask = asker();
  return {
    out: (text) => void process.stdout.write(`${text}\n`),
    exactly: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(`${text}\n`),
    colour: mayColour(process.env, tty),
    width: Math.min(WIDTH.most, Math.max(WIDTH.least, process.stdout.columns ?? WIDTH.elsewhere)),
    version: JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')).version,
    read: (path) => readFileSync(path, 'utf8'),
    list: (folder) => readdirSync(folder).sort(),
    exists: existsSync,
    write: writeWhole,
    ...(process.stderr.isTTY === true
      ? {
          progress: (label) =>
            progressLine(
              (text) => void process.stderr.write(text),
              () => Date.now(),
              label,
            ),
        }
      : {}),
    ...ask,
  };
}

/** Colour only on a terminal that has some, and not where NO_COLOR says no. */
export function mayColour(env: Readonly<Record<string, string | undefined>>, tty: boolean): boolean {
  return tty && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb';
}

/** Milliseconds before a progress line is worth its place, and between two of them. */
const PATIENCE = { first: 1000, next: 200 } as const;
const ERASED = '\r\u001b[K';

/** A line that says how far something has come and how long it will still take; nothing for what is soon done. */
export function progressLine(write: (text: string) => void, now: () => number, label: string): (share: number) => void {
  const start = now();
  let shown = start + PATIENCE.first - PATIENCE.next;
  let visible = false;
  return (share) => {
    if (share >= 1) {
      if (visible) write(ERASED);
      visible = false;
      return;
    }
    const at = now();
    if (share <= 0 || at - shown < PATIENCE.next) return;
    shown = at;
    visible = true;
    const left = Math.ceil((((at - start) / share) * (1 - share)) / 1000);
    write(`${ERASED}${label}: ${Math.floor(share * 100)} %, about ${left} s left`);
  };
}

/** Asks on the terminal; the reader is made at the first question, so that no other command waits for input. */
function asker(): Pick<Io, 'ask' | 'close'> {
  const reader = () =>
    createInterface({ input: process.stdin, output: process.stdout, terminal: process.stdin.isTTY === true });
  let open: ReturnType<typeof reader> | undefined;
  let lines: AsyncIterator<string> | undefined;
  return {
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
  const mode = existsSync(path) ? statSync(path).mode & 0o777 : rights;
  try {
    const file = openSync(temporary, 'wx', mode);
    try {
      writeSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(temporary, path);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
}
