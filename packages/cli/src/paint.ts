/** Words and marks first, colour second: nothing is told by colour alone. */
import type { Io } from './io.ts';

export type Tone = 'good' | 'warn' | 'bad' | 'faint' | 'strong';

const CODES: Readonly<Record<Tone, readonly [number, number]>> = {
  good: [32, 39],
  warn: [33, 39],
  bad: [31, 39],
  faint: [2, 22],
  strong: [1, 22],
};

/** Colours a text where the output allows it. */
export function paint(io: Pick<Io, 'colour'>, tone: Tone, text: string): string {
  const [on, off] = CODES[tone];
  return io.colour ? `\u001b[${on}m${text}\u001b[${off}m` : text;
}

/** Mark, word and tone of a state. */
export const STATES = {
  holds: { mark: '✓', word: 'holds', tone: 'good' },
  tight: { mark: '~', word: 'tight', tone: 'warn' },
  fails: { mark: '✗', word: 'fails', tone: 'bad' },
  unsettled: { mark: '?', word: 'unsettled', tone: 'warn' },
} as const satisfies Record<string, { mark: string; word: string; tone: Tone }>;

/** Breaks a text into lines of a width, each behind an indent. */
export function wrap(text: string, width: number, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/ +/)) {
    if (line !== '' && indent.length + line.length + 1 + word.length > width) {
      lines.push(indent + line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(indent + line);
  return lines.join('\n');
}

/** A table of left-aligned columns, as wide as they need to be. */
export function columns(rows: readonly (readonly string[])[], gap = 2): string {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) => Math.max(0, ...rows.map((row) => [...(row[i] ?? '')].length)));
  return rows
    .map((row) =>
      row
        .map((cell, i) => (i === row.length - 1 ? cell : cell + ' '.repeat((widths[i] ?? 0) - [...cell].length + gap)))
        .join('')
        .trimEnd(),
    )
    .join('\n');
}
