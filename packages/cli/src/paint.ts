/** Words and marks first, colour second: nothing is told by colour alone. */
import { parseUnit } from '@longrein/engineering';
import type { Io } from './io.ts';

export type Tone = 'good' | 'warn' | 'bad' | 'faint' | 'strong';

const CODES: Readonly<Record<Tone, readonly [number, number]>> = {
  good: [32, 39],
  warn: [33, 39],
  bad: [31, 39],
  faint: [2, 22],
  strong: [1, 22],
};

const ESCAPE = '\u001b[';
const CODE = new RegExp(`${ESCAPE.replace('[', '\\[')}\\d+m`, 'g');

/** Colours a text where the output allows it, each line for itself, so that a line taken out of it is whole. */
export function paint(io: Pick<Io, 'colour'>, tone: Tone, text: string): string {
  const [on, off] = CODES[tone];
  if (!io.colour) return text;
  return text
    .split('\n')
    .map((line) => (line.trim() === '' ? line : `${ESCAPE}${on}m${line}${ESCAPE}${off}m`))
    .join('\n');
}

/** Columns a text takes up on the screen. */
export function columnsOf(text: string): number {
  return [...text.replaceAll(CODE, '')].length;
}

/** Mark, word and tone of a state. */
export const STATES = {
  holds: { mark: '✓', word: 'holds', tone: 'good' },
  tight: { mark: '~', word: 'tight', tone: 'warn' },
  fails: { mark: '✗', word: 'fails', tone: 'bad' },
  unsettled: { mark: '?', word: 'unsettled', tone: 'warn' },
} as const satisfies Record<string, { mark: string; word: string; tone: Tone }>;

/** The words of a text; a number and its unit are one, as a line that begins with '%' reads badly. */
function wordsOf(text: string): string[] {
  const words: string[] = [];
  for (const word of text.split(/ +/)) {
    const before = words.at(-1);
    const unit = word.replaceAll(CODE, '').replace(/[.,;:)\]]+$/, '');
    if (before !== undefined && /\d$/.test(before) && !/^\d/.test(unit) && parseUnit(unit).ok)
      words[words.length - 1] = `${before} ${word}`;
    else words.push(word);
  }
  return words;
}

/** Breaks a text into lines of a width behind an indent; the first may have another one, or stand behind a head. */
export function wrap(text: string, width: number, indent = '', head = indent): string {
  const lines: string[] = [];
  let line = head;
  let empty = true;
  for (const word of wordsOf(text)) {
    if (!empty && columnsOf(line) + 1 + columnsOf(word) > width) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n');
}

/** A text written for one width on another: paragraphs flow, what stands indented or labelled keeps its lines. */
export function reflow(text: string, width: number): string {
  const isProse = (block: string) =>
    block.split('\n').every((line) => /^[\p{L}\d"'(]/u.test(line) && !/ {2}/.test(line));
  const fit = (line: string): string => {
    const [indent = ''] = /^ */.exec(line) ?? [];
    return columnsOf(line) <= width ? line : wrap(line.trim(), width, `${indent}  `, indent);
  };
  return text
    .replaceAll(/^\n+|\s+$/g, '')
    .split(/\n{2,}/)
    .map((block) => (isProse(block) ? wrap(block.replaceAll('\n', ' '), width) : block.split('\n').map(fit).join('\n')))
    .join('\n\n');
}

/** A table of left-aligned columns, as wide as they need to be. */
export function columns(rows: readonly (readonly string[])[], gap = 2): string {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) => Math.max(0, ...rows.map((row) => columnsOf(row[i] ?? ''))));
  return rows
    .map((row) =>
      row
        .map((cell, i) => (i === row.length - 1 ? cell : cell + ' '.repeat((widths[i] ?? 0) - columnsOf(cell) + gap)))
        .join('')
        .trimEnd(),
    )
    .join('\n');
}

/** A table whose last column flows within the width. */
export function columnsWithin(rows: readonly (readonly string[])[], width: number, gap = 2): string {
  const heads = rows.map((row) => row.slice(0, -1));
  const start = columns(heads, gap).split('\n');
  const indent = Math.max(0, ...start.map(columnsOf)) + gap;
  return rows
    .map((row, i) => {
      const head = start[i] ?? '';
      return wrap(row.at(-1) ?? '', width, ' '.repeat(indent), head + ' '.repeat(indent - columnsOf(head)));
    })
    .join('\n');
}
