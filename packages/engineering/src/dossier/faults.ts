/** What can be wrong with a dossier, a shelf file or a part: a closed catalogue. Faults are data first, worded in one place. */

export const ERROR_CODES = [
  {
    code: 'DOSSIER_TOO_LARGE',
    meaning: 'The file is larger than a dossier can be.',
    todo: 'Check that it is a dossier.',
  },
  {
    code: 'DOSSIER_NOT_JSON',
    meaning: 'The text is not JSON.',
    todo: 'Mend the place named; JSON has no comments and no trailing commas.',
  },
  {
    code: 'DOSSIER_TOO_DEEP',
    meaning: 'The text is nested deeper than a dossier is.',
    todo: 'Check that it is a dossier.',
  },
  { code: 'DOSSIER_DUPLICATE_KEY', meaning: 'A key stands twice in one object.', todo: 'Keep one of the two.' },
  { code: 'DOSSIER_KEY_UNKNOWN', meaning: 'A key is not one a dossier knows.', todo: 'Use one of the accepted keys.' },
  { code: 'DOSSIER_KEY_MISSING', meaning: 'A key that must be there is absent.', todo: 'Add it.' },
  { code: 'DOSSIER_TYPE', meaning: 'A value is of the wrong kind.', todo: 'Write what is accepted.' },
  {
    code: 'DOSSIER_VALUE',
    meaning: 'A value is not one of those accepted.',
    todo: 'Write one of the accepted values.',
  },
  {
    code: 'DOSSIER_FORMAT',
    meaning: 'The format number is not one this program reads.',
    todo: 'Use a program that reads it.',
  },
  {
    code: 'DOSSIER_MORE',
    meaning: 'There are more faults than are listed.',
    todo: 'Mend those listed first, then check again.',
  },
  {
    code: 'PART_UNKNOWN',
    meaning: 'A part is named that the shelf does not hold.',
    todo: 'Name a part of the shelf or describe it in place.',
  },
  {
    code: 'PART_KIND',
    meaning: 'A part of another kind stands in this place.',
    todo: 'Name a part of the right kind.',
  },
  {
    code: 'VEHICLE_CONTRADICTION',
    meaning: 'Two statements about the vehicle cannot both be true.',
    todo: 'Correct one of them.',
  },
  {
    code: 'FIT_INVALID',
    meaning: 'A fit names what is no input of this vehicle, or its correlations are not those of any fit.',
    todo: 'Give the matrix that the fit printed, or leave the fit out.',
  },
  { code: 'QUANTITY_EMPTY', meaning: 'A quantity is an empty text.', todo: 'Write a number and a unit.' },
  {
    code: 'QUANTITY_TOO_LONG',
    meaning: 'A quantity is longer than any quantity.',
    todo: 'Write a number and a unit; remarks go into "remark".',
  },
  { code: 'QUANTITY_COMMA', meaning: 'A decimal comma was used.', todo: 'Write a decimal point.' },
  { code: 'QUANTITY_NUMBER', meaning: 'The number cannot be read.', todo: 'Write a plain decimal number.' },
  {
    code: 'QUANTITY_NUMBER_MISSING',
    meaning: 'There is a unit but no number.',
    todo: 'Write the number before the unit.',
  },
  {
    code: 'QUANTITY_UNIT_MISSING',
    meaning: 'There is a number but no unit.',
    todo: 'Write the unit after the number.',
  },
  { code: 'QUANTITY_UNIT_UNKNOWN', meaning: 'The unit is not known.', todo: 'Use one of the accepted units.' },
  {
    code: 'QUANTITY_DIMENSION',
    meaning: 'The unit measures something else.',
    todo: 'Use a unit of the accepted kind.',
  },
  {
    code: 'QUANTITY_DOUBT_NEGATIVE',
    meaning: 'The doubt is below zero.',
    todo: 'Write the doubt as a positive number.',
  },
  {
    code: 'QUANTITY_DOUBT_UNIT',
    meaning: 'The unit of the doubt does not fit the quantity.',
    todo: 'Write the doubt in the same kind of unit or in %.',
  },
  { code: 'QUANTITY_RANGE_REVERSED', meaning: 'A range runs from high to low.', todo: 'Write the lower end first.' },
  {
    code: 'QUANTITY_LIMITS',
    meaning: 'The value lies outside what is physically or sensibly possible.',
    todo: 'Check the number and the unit.',
  },
  {
    code: 'QUANTITY_FORM',
    meaning: 'The text does not have the form of a quantity.',
    todo: 'Write for example 1.62 kg ± 5 g, 0.9 Ω ± 15 %, or 4 … 6 V.',
  },
] as const;

export type ErrorCode = (typeof ERROR_CODES)[number]['code'];

/** One thing wrong with a dossier or a shelf file. */
export interface Fault {
  readonly code: ErrorCode;
  /** JSON pointer (RFC 6901) of the place. */
  readonly at: string;
  /** Line and column of the place in the text, from 1. Absent where there is no text. */
  readonly line?: number;
  readonly column?: number;
  readonly found: string;
  readonly accepted: string;
  /** What to do, as a sentence. */
  readonly todo: string;
}

/** Makes a fault; without a `todo` of its own it takes the one of its code. */
export function fault(code: ErrorCode, at: string, found: string, accepted: string, todo?: string): Fault {
  const entry = ERROR_CODES.find((known) => known.code === code);
  return {
    code,
    at,
    found: printable(shorten(found)),
    accepted: printable(accepted),
    todo: printable(todo ?? entry?.todo ?? ''),
  };
}

/** Most faults listed of one file. */
export const FAULTS_MAX = 100;

/**
 * Faults in the order of their places, never more than {@link FAULTS_MAX} of them; the last then says how many are left.
 * @param more faults that were counted and not made
 */
export function inOrder(faults: readonly Fault[], more = 0): Fault[] {
  const place = (f: Fault) => [f.line ?? 0, f.column ?? 0] as const;
  const sorted = [...faults].sort((a, b) => place(a)[0] - place(b)[0] || place(a)[1] - place(b)[1]);
  const left = Math.max(0, sorted.length - FAULTS_MAX) + more;
  if (left === 0) return sorted;
  const last = sorted[FAULTS_MAX - 1];
  const rest = fault(
    'DOSSIER_MORE',
    '',
    left === 1 ? 'one more fault' : `${left} more faults`,
    'a file without faults',
  );
  const { line = 1, column = 1 } = last ?? {};
  return [...sorted.slice(0, FAULTS_MAX), { ...rest, at: last?.at ?? '', line, column }];
}

/** A fault as a sentence for people: where, what was found, what is accepted, what to do. */
export function wordFault(f: Fault): string {
  const at = printable(shorten(f.at)) || '/';
  const where = f.line === undefined ? at : `${at} (line ${f.line}, column ${f.column})`;
  return `At ${where}: found ${f.found}. Accepted: ${f.accepted}. ${f.todo} [${f.code}]`;
}

/** Long findings are cut so that a message stays a message. */
function shorten(text: string): string {
  return text.length > 120 ? `${text.slice(0, 117)}…` : text;
}

/** Characters that act on a terminal, are invisible or are broken, as their numbers: a message cannot be forged by what it quotes. */
function printable(text: string): string {
  return text.replaceAll(/(?! )[\p{C}\p{Z}]/gu, (c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`);
}

/** Shows a JSON value in a message. */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return `"${value}"`;
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}
