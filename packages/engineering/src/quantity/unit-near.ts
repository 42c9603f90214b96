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

/** The units that a quantity of this dimension may be written in. */
export function acceptedUnits(wanted: Unit): string[] {
  const fitting = [...SINGLE_UNITS, ...COMPOUNDS].filter((unit) => admits(wanted, unit));
  const texts = fitting.map((unit) => (unit === ONE ? 'a plain number' : unit.text));
  const own = wanted === ONE ? [] : [wanted.text];
  return [...new Set([...own, ...texts])].slice(0, NAMED_MAX);
}

/** May a quantity of the dimension `wanted` be written in this unit? °C only where a temperature on the scale is meant. */
export function admits(wanted: Unit, unit: Unit): boolean {
  return sameDimension(wanted, unit) && (unit.offset === 0 || wanted.offset !== 0);
}

/** Known units that look or sound like this text, nearest first; those of the wanted dimension win a draw. */
export function nearestUnits(text: string, wanted: Unit): string[] {
  if (text.length > LENGTH_MAX) return [];
  const found = new Map<string, number>();
  const propose = (spelling: string, unit: Unit): void => {
    const reach = Math.max(1, Math.floor(text.length / 2));
    const steps = editSteps(text.toLowerCase(), spelling.toLowerCase());
    if (steps > reach) return;
    const apart = steps + (text === spelling ? 0 : 0.25) - (admits(wanted, unit) ? 0.5 : 0);
    found.set(unit.text, Math.min(apart, found.get(unit.text) ?? Number.POSITIVE_INFINITY));
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
  const byDistance = [...found].sort(([, a], [, b]) => a - b);
  return byDistance.slice(0, NEAR_MAX).map(([unit]) => unit);
}

/** Letters to insert, delete or replace to make one text into the other (Levenshtein 1966). */
function editSteps(a: string, b: string): number {
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
