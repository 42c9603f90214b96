/** Reading units: single ones from the table and compounds by ·, *, /, parentheses and powers. */
import { BASES, PREFIXES, RUN_TOGETHER, UNIT_ROWS } from './unit-table.ts';

/** A unit, single or compound. */
export interface Unit {
  /** Its plain form: 'Ω' for 'ohm', 'm/s²' for 'm / s^2'; '1' for a plain number. */
  readonly text: string;
  /** One of the unit is num/den in SI. */
  readonly num: number;
  readonly den: number;
  /** Zero of the scale in SI; other than zero only for °C standing alone. */
  readonly offset: number;
  /** Powers of the bases, in the order of BASES. */
  readonly powers: readonly number[];
}

export type UnitReading =
  | { readonly ok: true; readonly unit: Unit }
  | { readonly ok: false; readonly why: 'unknown' | 'form' | 'ambiguous'; readonly found: string };

/** A plain number. */
export const ONE: Unit = { text: '1', num: 1, den: 1, offset: 0, powers: BASES.map(() => 0) };

/** Every single unit with every prefix in use, by every spelling. */
const SINGLE: ReadonlyMap<string, Unit> = singleUnits();

/** All single units in their plain form, in the order of the table. */
export const SINGLE_UNITS: readonly Unit[] = [...new Set(SINGLE.values())];

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** Higher powers than this do not occur and would only hide a slip of the pen. */
const POWER_MAX = 6;

function singleUnits(): Map<string, Unit> {
  const units = new Map<string, Unit>([['1', ONE]]);
  for (const row of UNIT_ROWS) {
    const powers = BASES.map((base) => row.powers[base] ?? 0);
    for (const prefix of ['', ...row.prefixes.split(' ').filter(Boolean)]) {
      const [up, down] = PREFIXES[prefix] ?? [1, 1];
      const [num, den] = reduced(row.num * up, row.den * down);
      const unit = { text: prefix + row.symbol, num, den, offset: row.offset ?? 0, powers };
      for (const symbol of [row.symbol, ...(row.aliases ?? [])]) {
        units.set(prefix + symbol, unit);
        if (prefix === 'µ') units.set(`u${symbol}`, unit);
      }
    }
  }
  return units;
}

/** Cancels common factors of whole numbers, so that kilograms are multiplied by 1 and not by 1000/1000. */
function reduced(num: number, den: number): [number, number] {
  if (!Number.isSafeInteger(num) || !Number.isSafeInteger(den)) return [num, den];
  let [a, b] = [num, den];
  while (b !== 0) [a, b] = [b, a % b];
  return [num / a, den / a];
}

/** The look-alikes of typewriters and fonts in one spelling each: µ, Ω, °C, ·. */
export function plainSigns(text: string): string {
  return text
    .replaceAll('\u03BC', 'µ')
    .replaceAll('\u2126', 'Ω')
    .replaceAll('\u2103', '°C')
    .replaceAll('\u00BA', '°')
    .replaceAll(/[*\u22C5\u2219]/g, '·');
}

interface Factor {
  readonly unit: Unit;
  readonly power: number;
}

/** Reads a unit text. The empty text is no unit. */
export function parseUnit(text: string): UnitReading {
  // Most texts are a single unit in its plain form already.
  const known = SINGLE.get(text);
  if (known) return { ok: true, unit: known };
  const plain = plainSigns(text).trim();
  const whole = SINGLE.get(plain);
  if (whole) return { ok: true, unit: whole };
  const tokens = tokensOf(RUN_TOGETHER[plain] ?? plain);
  if (!tokens) return { ok: false, why: 'form', found: text };
  const factors: Factor[] = [];
  let sign = 1;
  let open = false;
  let closed = false;
  let expectFactor = true;
  for (const token of tokens) {
    if (token === '(') {
      if (sign > 0 || open || !expectFactor) return { ok: false, why: 'form', found: text };
      open = true;
    } else if (token === ')') {
      if (!open || expectFactor) return { ok: false, why: 'form', found: text };
      open = false;
      closed = true;
    } else if (token === '/' || token === '·') {
      if (expectFactor || (open && token === '/')) return { ok: false, why: 'form', found: text };
      // A product after a bare quotient is read in two ways by two people.
      if (token === '·' && sign < 0 && !open) return { ok: false, why: 'ambiguous', found: text };
      if (token === '/') sign = -1;
      expectFactor = true;
    } else {
      if (!expectFactor || (closed && !open && sign > 0)) return { ok: false, why: 'form', found: text };
      const factor = factorOf(token);
      if (!factor) return { ok: false, why: 'unknown', found: token };
      factors.push({ unit: factor.unit, power: factor.power * sign });
      expectFactor = false;
    }
  }
  if (expectFactor || open) return { ok: false, why: 'form', found: text };
  return { ok: true, unit: compound(factors) };
}

/** A unit text from the code itself, such as a schema's; an unknown one is a mistake of the programmer. */
export function unitOf(text: string): Unit {
  const reading = parseUnit(text);
  if (!reading.ok) throw new RangeError(`'${text}' is not a unit.`);
  return reading.unit;
}

function tokensOf(text: string): string[] | undefined {
  const tokens = text.match(/[()/·]|[^()/·\s]+/g);
  if (!tokens || tokens.length > 40) return undefined;
  return tokens;
}

/** A single unit with its power: 's²', 's^-2', 'mm2'. */
function factorOf(token: string): Factor | undefined {
  const bare = SINGLE.get(token);
  if (bare) return { unit: bare, power: 1 };
  const parts = /^(.+?)(?:\^?([+-]?[1-9])|(⁻?)([¹²³⁴⁵⁶]))$/u.exec(token);
  const unit = SINGLE.get(parts?.[1] ?? '');
  if (!parts || !unit || unit === ONE) return undefined;
  const power = parts[2] ? Number(parts[2]) : SUPERSCRIPTS.indexOf(parts[4] ?? '') * (parts[3] ? -1 : 1);
  return Math.abs(power) <= POWER_MAX ? { unit, power } : undefined;
}

function compound(factors: readonly Factor[]): Unit {
  const [only] = factors;
  if (factors.length === 1 && only?.power === 1) return only.unit;
  let num = 1;
  let den = 1;
  const powers = BASES.map(() => 0);
  for (const { unit, power } of factors) {
    const times = Math.abs(power);
    num *= (power > 0 ? unit.num : unit.den) ** times;
    den *= (power > 0 ? unit.den : unit.num) ** times;
    for (const [i, p] of unit.powers.entries()) powers[i] = (powers[i] ?? 0) + p * power;
  }
  const [up, down] = reduced(num, den);
  return { text: textOf(factors), num: up, den: down, offset: 0, powers };
}

function textOf(factors: readonly Factor[]): string {
  const named = factors.filter(({ unit }) => unit !== ONE);
  const over = named.filter(({ power }) => power > 0).map(symbolOf);
  const under = named.filter(({ power }) => power < 0).map(symbolOf);
  if (under.length === 0) return over.join('·') || '1';
  return `${over.join('·') || '1'}/${under.length > 1 ? `(${under.join('·')})` : under[0]}`;
}

function symbolOf({ unit, power }: Factor): string {
  const size = Math.abs(power);
  return size === 1 ? unit.text : unit.text + (SUPERSCRIPTS[size] ?? '');
}

/** Do both units measure the same thing? */
export function sameDimension(a: Unit, b: Unit): boolean {
  return a.powers.every((power, i) => power === b.powers[i]);
}

/** Is this a level or a difference of levels, of which a percentage makes no sense? */
export function isLevel(unit: Unit): boolean {
  return unit.text === 'dBm' || unit.text === 'dB' || unit.text === 'dBi';
}

/** An amount of the unit in SI. */
export function toSi(unit: Unit, amount: number): number {
  return (amount * unit.num) / unit.den + unit.offset;
}

/** A difference of amounts of the unit in SI: the zero of the scale falls out. */
export function differenceToSi(unit: Unit, amount: number): number {
  return (amount * unit.num) / unit.den;
}

/** A number in SI as an amount of the unit. */
export function inUnit(si: number, unit: string): number {
  const { num, den, offset } = unitOf(unit);
  return ((si - offset) * den) / num;
}

/** A difference or doubt in SI as an amount of the unit. */
export function differenceInUnit(si: number, unit: string): number {
  const { num, den } = unitOf(unit);
  return (si * den) / num;
}

/** An amount of the unit in SI; throws where the text is no unit. */
export function fromUnit(amount: number, unit: string): number {
  return toSi(unitOf(unit), amount);
}
