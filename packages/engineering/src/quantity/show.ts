/** Numbers for people to read. Rounding is done on the decimal digits, as a person would do it, halves away from zero. */
import { differenceInUnit, inUnit, ONE, unitOf } from './units.ts';

/** Plain digits from here to there; outside, powers of ten. */
const PLAIN_FROM = 1e-4;
const PLAIN_BELOW = 1e7;
/** A doubt is rounded up where rounding to nearest would hide more than this share of it (JCGM 100:2008, 7.2.6). */
const HIDDEN_MAX = 0.04;

/** A number in SI shown in a unit, with so many significant digits. It picks no unit by itself. */
export function formatValue(si: number, unit: string, digits = 3): string {
  const amount = inUnit(si, unit);
  return withUnit(toDigits(amount, digits), unit);
}

/** A number in SI in a unit with the digits it needs and no more, for limits that somebody has set. */
export function formatPlain(si: number, unit: string): string {
  return withUnit(String(Number(inUnit(si, unit).toPrecision(12))), unit);
}

/** The unit a difference of two values is shown in: of temperatures on the scale kelvin, of levels of power decibels. */
export function differenceUnit(unit: string): string {
  const { text } = unitOf(unit);
  if (text === '°C') return 'K';
  return text === 'dBm' ? 'dB' : unit;
}

/** A difference of two values, in the unit of their difference. */
export function formatDifference(si: number, unit: string, digits = 3): string {
  const shownIn = differenceUnit(unit);
  return withUnit(toDigits(differenceInUnit(si, shownIn), digits), shownIn);
}

/** A value with its standard doubt: the doubt to two digits and the value to the same place (JCGM 100:2008, 7.2.6). */
export function formatDoubted(si: number, doubt: number, unit: string): string {
  const amount = inUnit(si, unit);
  const size = differenceInUnit(doubt, unit);
  if (!(size > 0) || !Number.isFinite(size) || !Number.isFinite(amount)) return formatValue(si, unit, 6);
  const shown = roundedDoubt(size);
  const place = leadingPlace(shown) - 1;
  return withUnit(`${toPlace(amount, place)} ± ${toPlace(shown, place)}`, unit);
}

/** Two digits of a doubt, up where nearest would hide too much of it. */
function roundedDoubt(size: number): number {
  const place = leadingPlace(size) - 1;
  const nearest = Number(toPlace(size, place));
  return nearest < size * (1 - HIDDEN_MAX) ? Number(toPlace(nearest + 10 ** place, place)) : nearest;
}

function withUnit(text: string, unit: string): string {
  const { text: symbol } = unitOf(unit);
  if (symbol === ONE.text) return text;
  return symbol === '°' ? `${text}°` : `${text} ${symbol}`;
}

/** Exponent of the first digit: 2 for 345, −1 for 0.12. */
function leadingPlace(x: number): number {
  return x === 0 ? 0 : Number(Math.abs(x).toExponential().split('e')[1]);
}

function toDigits(x: number, digits: number): string {
  if (!Number.isFinite(x)) return Number.isNaN(x) ? 'unknown' : x > 0 ? '∞' : '−∞';
  if (x === 0) return '0';
  const size = Math.abs(x);
  if (size < PLAIN_FROM || size >= PLAIN_BELOW) {
    const place = leadingPlace(x);
    const head = Number(toPlace(size, place - digits + 1).replace('−', ''));
    return `${x < 0 ? '−' : ''}${head.toExponential(digits - 1)}`.replace('e+', 'e');
  }
  const rough = toPlace(x, leadingPlace(x) - digits + 1);
  // 9.996 to three digits is 10.0, one digit more than its own first place promises.
  const carried = leadingPlace(Number(rough.replace('−', '')));
  return carried > leadingPlace(x) ? toPlace(x, carried - digits + 1) : rough;
}

/** Rounds to a power of ten on the shortest decimal text of the number, so that 1.005 becomes 1.01. */
function toPlace(x: number, place: number): string {
  const [mantissa = '0', exponent = '0'] = Math.abs(x).toExponential().split('e');
  const digits = mantissa.replace('.', '');
  // The number is digits · 10^last.
  const last = Number(exponent) - digits.length + 1;
  const cut = place - last;
  let whole = BigInt(digits);
  if (cut > 0) {
    const unit = 10n ** BigInt(cut);
    whole = (whole + unit / 2n) / unit;
  } else {
    whole *= 10n ** BigInt(-cut);
  }
  const sign = x < 0 && whole !== 0n ? '−' : '';
  if (place >= 0) return sign + (whole * 10n ** BigInt(place)).toString();
  const padded = whole.toString().padStart(1 - place, '0');
  return `${sign}${padded.slice(0, place)}.${padded.slice(place)}`;
}
