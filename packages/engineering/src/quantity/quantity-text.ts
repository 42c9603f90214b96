/** The letters of a quantity: signs and spaces made plain, and one number with its unit taken off. */
import type { QuantityFault } from './shapes.ts';
import { acceptedUnits } from './unit-near.ts';
import { ONE, plainSigns, type Unit } from './units.ts';

/** A text longer than this is no quantity; it also bounds the work on hostile input. */
const LENGTH_MAX = 200;

/** A number and the unit text after it, which may be empty. */
export interface Term {
  readonly text: string;
  readonly number: number;
  readonly unit: string;
}

/** One spelling for spaces (thin, no-break …), minus, ± and …. */
export function normalised(text: string): string {
  return plainSigns(text.slice(0, LENGTH_MAX + 1))
    .replaceAll(/\s+/gu, ' ')
    .replaceAll(/[\u2212\u2012\u2013\uFE63\uFF0D]/g, '-')
    .replaceAll(/\+\/?-/g, '±')
    .replaceAll('...', '…')
    .trim();
}

/** Faults of the text as a whole. */
export function textFault(plain: string, text: string, wanted: Unit): QuantityFault | undefined {
  const example = wanted === ONE ? '3.2' : `3.2 ${wanted.text}`;
  if (text.length > LENGTH_MAX) {
    const hint = `Write a number and its unit only: ${example}.`;
    return { code: 'QUANTITY_TOO_LONG', found: `${text.slice(0, 20)}…`, accepted: [`${LENGTH_MAX} letters`], hint };
  }
  if (plain === '') {
    return {
      code: 'QUANTITY_EMPTY',
      found: text,
      accepted: [example],
      hint: `Write a number and its unit: ${example}.`,
    };
  }
  if (/\d,\d|\d,$|,\d/.test(plain)) return commaFault(plain);
  if ((plain.match(/[±…]/g) ?? []).length > 1) {
    const accepted = [example, `${example} ± 5 %`, wanted === ONE ? '3 … 4' : `3 … 4 ${wanted.text}`];
    return { code: 'QUANTITY_FORM', found: plain, accepted, hint: 'Write one doubt or one range, not several.' };
  }
  return undefined;
}

function commaFault(plain: string): QuantityFault {
  const fault = { code: 'QUANTITY_COMMA', found: plain, accepted: ['a decimal point'] } as const;
  const pointed = plain.replaceAll(/,(?=\d)/g, '.');
  const joined = plain.replaceAll(/,(?=\d)/g, '');
  // '1,000 m' may be a kilometre or a metre: only the writer knows.
  if (/\d,\d{3}(?!\d)/.test(plain)) {
    return { ...fault, hint: `Write ${joined}, or with a decimal point ${pointed}, whichever is meant.` };
  }
  return { ...fault, hint: `Write a decimal point: ${pointed}.` };
}

/** An optional sign, digits (in groups of three, if spaced), an optional fraction (likewise), an optional exponent. */
const NUMBER =
  /^[+-]?(?:\d{1,3}(?: \d{3})+(?!\d)|\d+|(?=\.\d))(?:\.(?:\d{3}(?: \d{3})* \d{1,3}(?![\d/])|\d+))?(?:e[+-]?\d+)?/i;
const NOT_A_NUMBER = /^[+-]?(?:0[xob][\da-f]|nan(?![a-z])|infinity|inf(?![a-z])|∞)/i;

type TermReading = { readonly ok: true; readonly term: Term } | { readonly ok: false; readonly fault: QuantityFault };

const bad = (code: QuantityFault['code'], found: string, accepted: readonly string[], hint: string) =>
  ({ ok: false, fault: { code, found, accepted, hint } }) as const;

/** Takes the number off the front of a term; what follows is its unit. */
export function firstTerm(part: string, wanted: Unit): TermReading {
  const text = part.trim().replace(/^([+-]) (?=[\d.])/, '$1');
  if (NOT_A_NUMBER.test(text)) {
    return bad('QUANTITY_NUMBER', text, ['a finite decimal number'], 'Write the number in decimal digits, such as 31.');
  }
  const digits = NUMBER.exec(text)?.[0] ?? '';
  if (digits === '') {
    const example = `3.2 ${text || wanted.text}`;
    return bad(
      'QUANTITY_NUMBER_MISSING',
      text,
      ['a number, then the unit'],
      `Write the number first, such as ${example}.`,
    );
  }
  // Adding zero turns −0 into 0, which is printed without its sign.
  const number = Number(digits.replaceAll(' ', '')) + 0;
  const unit = text.slice(digits.length).trim();
  if (!Number.isFinite(number)) {
    return bad('QUANTITY_NUMBER', digits, ['a finite decimal number'], 'Write a smaller number.');
  }
  if (/^- ?[.\d]/.test(unit)) {
    const hint = `Write a range with '…' or '...', such as ${digits} … ${unit.slice(1).trim()}.`;
    return bad('QUANTITY_FORM', text, ['low … high'], hint);
  }
  // '5 1/K' has a unit that begins with a digit.
  if (/^[.\d]/.test(unit) && !unit.startsWith('1/')) {
    const hint = 'Write one number in decimal digits, then its unit.';
    return bad('QUANTITY_NUMBER', text, [`one number in ${acceptedUnits(wanted)[0] ?? wanted.text}`], hint);
  }
  return { ok: true, term: { text, number, unit } };
}
