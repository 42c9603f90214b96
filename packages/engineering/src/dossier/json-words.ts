/** Words for what is wrong with a JSON text, by what was wanted where it went wrong. */
import type { ErrorCode } from './faults.ts';

/** The first fault of a text that is not JSON. */
export interface SyntaxFault {
  readonly code: Extract<ErrorCode, 'DOSSIER_NOT_JSON' | 'DOSSIER_TOO_DEEP'>;
  readonly offset: number;
  readonly found: string;
  readonly accepted: string;
  readonly todo: string;
}

/** What is accepted at each place of the grammar, and what to do where it is not there. */
const WANTED = {
  document: ['an object: { … }', 'Check that the right file was saved.'],
  end: ['nothing after the end of the object', 'Take away what stands after the last closing bracket.'],
  value: ['a value: a text in double quotes, a number, true, false, { … } or [ … ]', 'Write one of these.'],
  key: ['a key in double quotes, or "}"', 'Put the key in double quotes.'],
  colon: ['a colon between key and value', 'Write a colon after the key.'],
  number: ['a decimal number such as 12 or 0.5', 'Write it that way.'],
  'comma in object': ['a comma, or "}"', 'Write a comma between the two, or close the object before.'],
  'comma in list': ['a comma, or "]"', 'Write a comma between the two, or close the list before.'],
  'key after comma': ['another key after the comma', 'Take away the comma before it.'],
  'value after comma': ['another value after the comma', 'Take away the comma before it.'],
  'string end': ['a double quote that ends the text', 'Close the text with a double quote.'],
  control: ['a text on one line', 'Close the text with a double quote; a line break inside it is written \\n.'],
  escape: ['\\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four hexadecimal digits', 'Write \\\\ for a backslash.'],
  depth: ['fewer levels of brackets', 'Check that it is a dossier; none is nested so deep.'],
} as const;

export type Wanted = keyof typeof WANTED;

/** Habits of other notations, recognised by how they begin. */
const HABITS: readonly (readonly [RegExp, string])[] = [
  [/^\/[/*]/, 'JSON has no comments: write it under the key "remark".'],
  [/^#/, 'JSON has no comments: write it under the key "remark".'],
  [/^['`]/, 'Use double quotes.'],
  [/^[\u2018-\u201F\u00AB\u00BB]/, 'Use straight double quotes.'],
  [/^(?:NaN|[+-]?Infinity|undefined|None|nil)\b/, 'Leave the key out where nothing is known.'],
  [/^(?:True|TRUE)\b/, 'Write true.'],
  [/^(?:False|FALSE)\b/, 'Write false.'],
  [/^[\u00A0\u2000-\u200F\u202F\u205F\u2060\u3000\uFEFF]/, 'Take away this invisible character.'],
];
/** A quantity without its quotes; there may be blanks between number and unit. */
const BARE_QUANTITY = /^[+-]?[\d.]+(?:,\d+)?(?:e[+-]?\d+)?[ \t]*[\p{L}%°±µ][^",\n\]}]{0,60}/u;

/** Words the fault at an offset, where something else was wanted. */
export function unexpected(text: string, offset: number, wanted: Wanted): SyntaxFault {
  const rest = text.slice(offset, offset + 80);
  const [accepted, usual] = WANTED[wanted];
  const fault = { offset, found: foundAt(rest, text), accepted };
  if (wanted === 'depth') return { code: 'DOSSIER_TOO_DEEP', ...fault, todo: usual };
  if (rest === '' && wanted !== 'document') {
    return { code: 'DOSSIER_NOT_JSON', ...fault, todo: 'The file seems to be cut off: complete it.' };
  }
  const quantity = bareQuantity(text, offset, wanted);
  if (quantity !== undefined) {
    const todo = `Put a quantity in double quotes: "${quantity.text.replace(/,(?=\d)/, '.').replace('\t', ' ')}".`;
    return { code: 'DOSSIER_NOT_JSON', ...fault, offset: quantity.offset, found: quantity.text, todo };
  }
  const habit = HABITS.find(([pattern]) => pattern.test(rest));
  return { code: 'DOSSIER_NOT_JSON', ...fault, todo: habit?.[1] ?? usual };
}

/** What stands there, cut at the end of its line. */
function foundAt(rest: string, text: string): string {
  if (text.trim() === '') return 'an empty file';
  if (rest === '') return 'the end of the text';
  if (/^[\r\n]/.test(rest)) return 'the end of the line';
  return /^[^\r\n]{1,24}/.exec(rest)?.[0].trimEnd() || 'a blank';
}

/** What of a quantity without quotes lies before the place where the reader stumbles, by what it wanted there. */
const BEFORE: { readonly [W in Wanted]?: RegExp } = {
  value: /^/,
  number: /^/,
  'comma in object': /[+-]?[\d.]+[ \t]*$/,
  'comma in list': /[+-]?[\d.]+[ \t]*$/,
  // '3,2 A': the comma ended the number, and a key should follow.
  key: /[+-]?\d+,$/,
};

/** `1.62 kg` where a value stands: the quotes were forgotten. */
function bareQuantity(text: string, offset: number, wanted: Wanted): { text: string; offset: number } | undefined {
  const before = BEFORE[wanted]?.exec(text.slice(Math.max(0, offset - 40), offset));
  if (!before || (before[0] === '' && wanted !== 'value' && wanted !== 'number')) return undefined;
  const start = offset - before[0].length;
  const bare = BARE_QUANTITY.exec(text.slice(start, start + 100))?.[0].trim();
  return bare === undefined || /^[+-]?0x/i.test(bare) ? undefined : { text: bare, offset: start };
}
