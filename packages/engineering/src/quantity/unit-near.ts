/** What somebody may have meant by a unit that is not known, and what would have been accepted instead. */
import { CUSTOMARY, RUN_TOGETHER, UNIT_ROWS } from './unit-table.ts';
import { ONE, parseUnit, SINGLE_UNITS, sameDimension, type Unit } from './units.ts';

/** How many units a message names at most. */
const NAMED_MAX = 12;
const NEAR_MAX = 3;
/** A text longer than this resembles no unit. */
const LENGTH_MAX = 24;

const COMPOUNDS: readonly Unit[] = CUSTOMARY.flatMap((text) => {
  const reading = parseUnit(text);
  return reading.ok ? [reading.unit] : [];
});

/**
 * The units that a quantity of this dimension may be written in. Where the dimension is given by a single unit, the
 * single ones; where by a compound, the customary ones, because a torque is not asked for in watt-hours.
 */
export function acceptedUnits(wanted: Unit): string[] {
  const fitting = (units: readonly Unit[]) =>
    units
      .filter((unit) => admits(wanted, unit) && (unit !== ONE || wanted === ONE))
      .map((unit) => (unit === ONE ? 'a plain number' : unit.text));
  const single = fitting(SINGLE_UNITS);
  const customary = fitting(COMPOUNDS);
  const first = SINGLE_UNITS.includes(wanted) ? single : customary;
  const own = wanted === ONE ? [] : [wanted.text];
  const named = new Set([...own, ...first]);
  if (named.size < 2) for (const text of [...customary, ...single]) named.add(text);
  return [...named].slice(0, NAMED_MAX);
}

/** May a quantity of the dimension `wanted` be written in this unit? °C only where a temperature on the scale is meant. */
export function admits(wanted: Unit, unit: Unit): boolean {
  return sameDimension(wanted, unit) && (unit.offset === 0 || wanted.offset !== 0);
}

/** Known units that look or sound like this text, nearest first; those of the wanted dimension only, if any is near. */
export function nearestUnits(text: string, wanted: Unit): string[] {
  if (text.length > LENGTH_MAX) return [];
  const found = new Map<Unit, number>();
  const propose = (spelling: string, unit: Unit): void => {
    const reach = Math.max(1, Math.floor(text.length / 2));
    const steps = editSteps(text.toLowerCase(), spelling.toLowerCase());
    if (steps > reach) return;
    found.set(unit, Math.min(steps, found.get(unit) ?? Number.POSITIVE_INFINITY));
  };
  for (const unit of [...SINGLE_UNITS, ...COMPOUNDS]) if (unit !== ONE) propose(unit.text, unit);
  for (const [spelling, meaning] of Object.entries(RUN_TOGETHER)) {
    const unit = parseUnit(meaning);
    if (unit.ok) propose(spelling, unit.unit);
  }
  for (const row of UNIT_ROWS) {
    const unit = parseUnit(row.symbol);
    if (!unit.ok) continue;
    propose(row.name, unit.unit);
    for (const alias of row.aliases ?? []) propose(alias, unit.unit);
  }
  const fitting = [...found].filter(([unit]) => admits(wanted, unit));
  const byDistance = (fitting.length > 0 ? fitting : [...found]).sort(([, a], [, b]) => a - b);
  const best = byDistance[0]?.[1] ?? 0;
  const near = byDistance.filter(([, steps]) => steps < best + 1).slice(0, NEAR_MAX);
  return near.map(([unit]) => unit.text);
}

/** Letters to insert, delete or replace to make one text into the other (Levenshtein 1966). */
export function editSteps(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const here = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = (above[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      here.push(Math.min(replaced, (above[j] ?? 0) + 1, (here[j - 1] ?? 0) + 1));
    }
    above = here;
  }
  return above[b.length] ?? 0;
}
