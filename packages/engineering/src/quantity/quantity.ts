/**
 * Reading and printing quantities as people write them.
 *
 *   7.4 V          7.4 V ± 0.1 V      7.4 ± 0.1 V      0.9 Ω ± 15 %      20 … 30 °C      800 mA … 1.2 A
 *
 * The doubt is the standard doubt (k = 1); in a range, every value between both ends is as likely as any other. '...'
 * stands for '…' and '+-' or '+/-' for '±'. A bad text is answered with a fault, never with an exception.
 */
import { limitFault } from './limits.ts';
import { firstTerm, normalised, type Term, textFault } from './quantity-text.ts';
import type { Dimension, Limits, Quantity, QuantityFault, QuantityReading, Spread, Written } from './shapes.ts';
import { differenceUnit } from './show.ts';
import { acceptedUnits, admits, nearestUnits } from './unit-near.ts';
import { differenceToSi, isLevel, ONE, parseUnit, sameDimension, toSi, type Unit, unitOf } from './units.ts';

/** Above this share of the value, the bell curve of a quantity that cannot be negative would reach below zero. */
const LOGNORMAL_ABOVE = 0.3;

type Outcome<T> = { readonly ok: true; readonly is: T } | { readonly ok: false; readonly fault: QuantityFault };

const good = <T>(is: T): Outcome<T> => ({ ok: true, is });
const bad = (code: QuantityFault['code'], found: string, accepted: readonly string[], hint: string) =>
  ({ ok: false, fault: { code, found, accepted, hint } }) as const;

/**
 * Reads a quantity of a dimension.
 *
 * @param dimension a unit text that stands for all units of its dimension; throws RangeError if it is no unit
 * @param limits what the quantity may be, SI; a quantity that must be above zero and has a normal doubt of more than
 *   30 % is taken as log-normal
 */
export function parseQuantity(text: string, dimension: Dimension, limits: Limits = {}): QuantityReading {
  const wanted = unitOf(dimension);
  const read = readWritten(text, wanted);
  if (!read.ok) return read;
  const quantity = assemble(read.is, text, limits);
  const fault = finiteFault(quantity, text) ?? limitFault(text, endsOf(quantity), limits, dimension);
  return fault ? { ok: false, fault } : { ok: true, quantity };
}

/** A quantity from numbers instead of a text. Throws RangeError where the text made of them could not be read. */
export function makeQuantity(written: Written, limits: Limits = {}): Quantity {
  const text = formatWritten(written);
  const other =
    written.form === 'range' ? written.fromUnit : written.form === 'doubt' ? written.doubtUnit : written.unit;
  const relative = written.form === 'doubt' && other === '%';
  if ((other === ONE.text) !== (written.unit === ONE.text) && !relative) {
    throw new RangeError(`'${text}' cannot say that one of its numbers is in per cent and the other is not.`);
  }
  const reading = parseQuantity(text, written.unit, limits);
  if (!reading.ok) throw new RangeError(`'${text}' is not a quantity: ${reading.fault.hint}`);
  return reading.quantity;
}

/** Prints a quantity so that reading it gives the same value, doubt, spread and unit to the last bit. */
export function formatQuantity(quantity: Quantity): string {
  return formatWritten(quantity.written);
}

function formatWritten(written: Written): string {
  switch (written.form) {
    case 'exact':
      return amountText(written.number, written.unit);
    case 'doubt':
      return `${amountText(written.number, written.unit)} ± ${amountText(written.doubt, written.doubtUnit)}`;
    case 'range': {
      const from =
        written.fromUnit === written.unit ? String(written.from) : amountText(written.from, written.fromUnit);
      return `${from} … ${amountText(written.to, written.unit)}`;
    }
  }
}

function amountText(amount: number, unit: string): string {
  if (unit === ONE.text) return String(amount);
  return unit === '°' ? `${amount}°` : `${amount} ${unit}`;
}

function readWritten(text: string, wanted: Unit): Outcome<Written> {
  const plain = normalised(text);
  const fault = textFault(plain, text, wanted);
  if (fault) return { ok: false, fault };
  const [left = '', joint, right = ''] = plain.split(/([±…])/);
  const first = firstTerm(left, wanted);
  if (!first.ok) return first;
  if (joint === undefined) return exact(first.term, wanted);
  const second = firstTerm(right, wanted);
  if (!second.ok) return second;
  return joint === '±' ? doubted(first.term, second.term, wanted) : range(first.term, second.term, wanted);
}

function exact(term: Term, wanted: Unit): Outcome<Written> {
  const unit = valueUnit(term, wanted);
  return unit.ok ? good({ form: 'exact', number: term.number, unit: unit.is.text }) : unit;
}

function doubted(first: Term, second: Term, wanted: Unit): Outcome<Written> {
  if (second.number < 0) {
    return bad('QUANTITY_DOUBT_NEGATIVE', second.text, ['a doubt of zero or more'], 'Write the doubt without a sign.');
  }
  // '7.4 ± 0.1 V' lends the unit of the doubt to the value; a difference in K or dB cannot say on which scale it is.
  const lends = first.unit === '' && wanted !== ONE && (second.unit !== '%' || wanted.text === '%');
  const unit = valueUnit(lends ? { ...first, unit: second.unit } : first, wanted);
  if (!unit.ok) return unit;
  if (lends && wanted.offset !== 0 && unit.is.offset === 0) return missingUnit(first, wanted);
  const doubtUnit = doubtUnitOf(second, unit.is, wanted);
  if (!doubtUnit.ok) return doubtUnit;
  return good({
    form: 'doubt',
    number: first.number,
    unit: unit.is.text,
    doubt: second.number,
    doubtUnit: doubtUnit.is.text,
  });
}

function range(first: Term, second: Term, wanted: Unit): Outcome<Written> {
  // '5 … 10 %' is in per cent at both ends; '5 % … 10' could be in either way.
  const unit = first.unit !== '' && second.unit === '' ? missingUnit(second, wanted) : valueUnit(second, wanted);
  if (!unit.ok) return unit;
  const fromUnit = first.unit === '' ? unit : valueUnit(first, wanted);
  if (!fromUnit.ok) return fromUnit;
  if (toSi(fromUnit.is, first.number) > toSi(unit.is, second.number)) {
    const [low, high] = [second.number, first.number];
    const same = fromUnit.is.text === unit.is.text;
    const ends = same ? `${low} … ${amountText(high, unit.is.text)}` : `${second.text} … ${first.text}`;
    const hint = `Write the lower end first: ${ends}.`;
    return bad('QUANTITY_RANGE_REVERSED', `${first.text} … ${second.text}`, ['low … high'], hint);
  }
  return good({
    form: 'range',
    from: first.number,
    fromUnit: fromUnit.is.text,
    to: second.number,
    unit: unit.is.text,
  });
}

/** The unit a value is written in, if it is one of the wanted dimension. */
function valueUnit(term: Term, wanted: Unit): Outcome<Unit> {
  if (term.unit === '') return wanted === ONE ? good(ONE) : missingUnit(term, wanted);
  const unit = knownUnit(term, wanted);
  if (!unit.ok || admits(wanted, unit.is)) return unit;
  return bad('QUANTITY_DIMENSION', unit.is.text, acceptedUnits(wanted), dimensionHint(term, unit.is, wanted));
}

function missingUnit(term: Term, wanted: Unit) {
  const accepted = acceptedUnits(wanted);
  return bad(
    'QUANTITY_UNIT_MISSING',
    term.text,
    accepted,
    `Write the unit: ${term.text} ${wanted === ONE ? '%' : wanted.text}.`,
  );
}

function knownUnit(term: Term, wanted: Unit): Outcome<Unit> {
  const reading = parseUnit(term.unit);
  if (reading.ok) return good(reading.unit);
  if (reading.why === 'ambiguous') {
    const hint = 'Put what stands below the stroke in parentheses, as in W/(m·K).';
    return bad('QUANTITY_UNIT_UNKNOWN', term.unit, acceptedUnits(wanted), hint);
  }
  const whole = nearestUnits(term.unit, wanted);
  const near = whole.length > 0 ? whole : nearestUnits(reading.found, wanted);
  const hint = near.length > 0 ? `Perhaps ${near.join(' or ')} is meant.` : `Write ${listed(acceptedUnits(wanted))}.`;
  return bad('QUANTITY_UNIT_UNKNOWN', reading.found, acceptedUnits(wanted), hint);
}

function dimensionHint(term: Term, found: Unit, wanted: Unit): string {
  if (found.offset !== 0 && sameDimension(found, wanted))
    return `This is a difference of temperatures: write ${term.number} K.`;
  if (found.text === 'C' && wanted.text === '°C') return `C is the coulomb: write ${term.number} °C.`;
  const asForce = parseUnit(term.unit.replace(/^(k?)g(?=·|$)/, '$1gf'));
  if (asForce.ok && admits(wanted, asForce.unit)) {
    return `A mass is no force: write ${term.number} ${asForce.unit.text}.`;
  }
  return `${term.unit} measures something else here: write ${listed(acceptedUnits(wanted))}.`;
}

/** A doubt without a unit, behind a value that has one. */
function bareDoubt({ text }: Term, of: Unit): Outcome<Unit> {
  const difference = differenceUnit(of.text);
  const accepted = of.offset === 0 && !isLevel(of) && of.text !== '%' ? ['%', difference] : [difference];
  const ways = accepted.map((unit) => `± ${text} ${unit}`).join(' or ');
  return bad('QUANTITY_UNIT_MISSING', text, accepted, `± ${text} what? Write ${ways}.`);
}

/** The unit of a doubt: a difference of what the value measures, or a percentage of it. */
function doubtUnitOf(term: Term, of: Unit, wanted: Unit): Outcome<Unit> {
  // '6.2 A ± 5' may mean 5 A or 5 %: a guess could be ten times wrong, so it is asked back.
  if (term.unit === '' && of === ONE) return good(of);
  if (term.unit === '') return bareDoubt(term, of);
  const unit = knownUnit(term, wanted);
  if (!unit.ok) return unit;
  const onScale = wanted.offset !== 0 || isLevel(of);
  if (unit.is.text === '%' && !onScale) return unit;
  const levels = of.text === 'dBm' && isLevel(unit.is);
  if (levels || (sameDimension(unit.is, of) && (unit.is.offset === 0 || onScale))) return unit;
  const accepted = onScale ? [] : ['%'];
  const units = of.text === 'dBm' ? ['dB'] : wanted.offset !== 0 ? ['K', '°C'] : acceptedUnits(wanted);
  accepted.push(...units);
  return bad('QUANTITY_DOUBT_UNIT', unit.is.text, accepted, `Write the doubt in ${listed(accepted)}.`);
}

function listed(texts: readonly string[]): string {
  return texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`;
}

function assemble(written: Written, text: string, limits: Limits): Quantity {
  const unit = unitOf(written.unit);
  const known = { unit: written.unit, text, written };
  if (written.form === 'exact') return { value: toSi(unit, written.number), doubt: 0, spread: 'exact', ...known };
  if (written.form === 'range') {
    const from = toSi(unitOf(written.fromUnit), written.from);
    const to = toSi(unit, written.to);
    const doubt = (to - from) / 2;
    return { value: (from + to) / 2, doubt, spread: doubt === 0 ? 'exact' : 'rectangular', ...known };
  }
  const value = toSi(unit, written.number);
  const relative = written.doubtUnit === '%' && written.unit !== '%';
  const doubt = relative
    ? (Math.abs(value) * written.doubt) / 100
    : differenceToSi(unitOf(written.doubtUnit), written.doubt);
  return { value, doubt, spread: spreadOf(value, doubt, limits), ...known };
}

function spreadOf(value: number, doubt: number, limits: Limits): Spread {
  if (doubt === 0) return 'exact';
  const positive = (limits.above ?? -1) >= 0 || (limits.from ?? -1) > 0;
  return positive && value > 0 && doubt > LOGNORMAL_ABOVE * value ? 'lognormal' : 'normal';
}

/** What must be within the limits: both ends of a range, otherwise the best estimate, as drawing cuts the tails off. */
function endsOf({ value, written }: Quantity): number[] {
  if (written.form !== 'range') return [value];
  return [toSi(unitOf(written.fromUnit), written.from), toSi(unitOf(written.unit), written.to)];
}

function finiteFault({ value, doubt }: Quantity, text: string): QuantityFault | undefined {
  if (Number.isFinite(value) && Number.isFinite(doubt)) return undefined;
  return {
    code: 'QUANTITY_NUMBER',
    found: text.trim(),
    accepted: ['a finite number'],
    hint: 'Write a smaller number.',
  };
}
