/** Explains a sum or finding down to what was measured, numbers put into the formula. */
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Band } from '../quantity/shapes.ts';
import { formatValue } from '../quantity/show.ts';
import { waysToKnow } from './graph.ts';
import { refTitle } from './names.ts';
import type { FindingResult, Reckoning } from './reckon.ts';
import type { Cause } from './study.ts';
import type { Constant, Ref } from './sum.ts';
import { SUMS } from './sums/all.ts';
import { isSumId, type SumId } from './sums/ids.ts';

/** A law as it is named in an explanation. */
export interface NamedLaw {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  readonly source: string;
  readonly validFor: string;
  readonly leavesOut: string;
}

/** A node of an explanation. */
export type Explanation = Node & {
  /** The names it goes by in the formula that uses it; none at the top. */
  readonly as?: readonly string[];
};

type Node =
  | {
      readonly kind: 'sum';
      readonly id: SumId;
      readonly title: string;
      /** With everything exactly as stated. */
      readonly value: string;
      readonly band: Band;
      readonly unit: string;
      readonly route?: string;
      readonly formula: string;
      /** The formula with the numbers of the vehicle exactly as stated. */
      readonly numbers: string;
      readonly laws: readonly NamedLaw[];
      readonly constants: readonly {
        readonly name: string;
        readonly value: string;
        readonly is: string;
        readonly source: string;
      }[];
      readonly caveat?: string;
      readonly problem?: string;
      readonly uses: readonly Explanation[];
    }
  | { readonly kind: 'shown above'; readonly id: SumId; readonly title: string; readonly value: string }
  | { readonly kind: 'missing'; readonly id: Ref; readonly title: string; readonly how: string }
  | {
      readonly kind: 'input';
      readonly id: InputId;
      readonly title: string;
      /** As it was written. */
      readonly written: string;
      readonly value: string;
      readonly origin: string;
      readonly where: string;
      readonly remark?: string;
      readonly how: string;
    };

export interface FindingExplanation {
  readonly finding: FindingResult;
  readonly need: Explanation;
  readonly has: Explanation;
}

/** Explains a sum. */
export function explainSum(reckoning: Reckoning, id: SumId): Explanation {
  return explainRef(reckoning, id, new Set());
}

/** Explains both sides of a finding; sums met twice are explained once. */
export function explainFinding(reckoning: Reckoning, result: FindingResult): FindingExplanation {
  const seen = new Set<Ref>();
  return {
    finding: result,
    has: explainRef(reckoning, result.finding.has, seen),
    need: explainRef(reckoning, result.finding.need, seen),
  };
}

function explainRef(reckoning: Reckoning, ref: Ref, seen: Set<Ref>): Explanation {
  if (!isSumId(ref)) return explainInput(reckoning, ref);
  const { study } = reckoning;
  const sum = SUMS[ref];
  const result = study.sums.get(ref);
  if (!result) return explainMissing(reckoning, ref);
  const value = formatValue(result.values[study.count] as number, sum.unit);
  if (seen.has(ref)) return { kind: 'shown above', id: ref, title: sum.title, value };
  seen.add(ref);
  const { route, constants } = result;
  return {
    kind: 'sum',
    id: ref,
    title: sum.title,
    value,
    band: result.band,
    unit: sum.unit,
    ...(route.name === undefined ? {} : { route: route.name }),
    formula: route.formula.replaceAll(/[{}]/g, ''),
    numbers: substitute(reckoning, ref),
    laws: route.laws.map(({ facts }) => ({
      id: facts.id,
      title: facts.title,
      equation: facts.equation,
      source: facts.source,
      validFor: facts.validFor,
      leavesOut: facts.leavesOut,
    })),
    constants: Object.entries(constants).map(([name, c]) => ({
      name,
      value: constantText(c),
      is: c.is,
      source: c.source,
    })),
    ...(sum.caveat === undefined ? {} : { caveat: sum.caveat }),
    ...(result.cause === undefined ? {} : { problem: problemOf(reckoning, result.cause) }),
    uses: [...new Set(Object.values(route.uses))].map((used) => ({
      ...explainRef(reckoning, used, seen),
      as: Object.keys(route.uses).filter((name) => route.uses[name] === used),
    })),
  };
}

function problemOf({ study }: Reckoning, { cases, at, says }: Cause): string {
  const where = cases === 0 ? 'the vehicle exactly as stated' : `${cases} of ${study.count} cases`;
  return `in ${where}, ${at} cannot be worked out: ${says}`;
}

/** A count is whole: '2 motors', not '2.00'. */
function constantText({ value, unit }: Constant): string {
  return unit === '1' && Number.isInteger(value) ? String(value) : formatValue(value, unit);
}

/** The formula with the value of each name in its place. */
function substitute(reckoning: Reckoning, id: SumId): string {
  const { study } = reckoning;
  const result = study.sums.get(id);
  if (!result) return '';
  const { route, constants } = result;
  const shown = (name: string): string => {
    const constant = constants[name];
    if (constant) return constantText(constant);
    const ref = route.uses[name];
    return ref === undefined ? 'unknown' : shownValue(reckoning, ref);
  };
  const alone = /^\{\w+\}$/.test(route.formula);
  // '1.2 A²' would be an area of amperes, and '3 − −2' a riddle: such values stand in brackets.
  return route.formula.replaceAll(/\{(\w+)\}([²³]?)/g, (_, name: string, power: string) => {
    const text = shown(name);
    const apart = text.startsWith('−') || (power !== '' && /[^\d.]/.test(text));
    return (apart && !alone ? `(${text})` : text) + power;
  });
}

/** The value of a reference with everything as stated, in the unit it is shown in. */
export function shownValue({ study, vehicle }: Reckoning, ref: Ref): string {
  const column = isSumId(ref) ? study.sums.get(ref)?.values : study.inputs.get(ref);
  const unit = isSumId(ref) ? SUMS[ref].unit : vehicle.inputs.get(ref)?.facts.unit;
  const value = column?.[study.count];
  return value === undefined || unit === undefined ? 'unknown' : formatValue(value, unit);
}

function explainInput(reckoning: Reckoning, id: InputId): Explanation {
  const input = reckoning.vehicle.inputs.get(id);
  if (!input) return { kind: 'missing', id, title: refTitle(id), how: 'Neither stated nor assumed.' };
  return {
    kind: 'input',
    id,
    title: input.facts.title,
    written: input.quantity.text,
    value: shownValue(reckoning, id),
    origin: input.origin,
    where: input.where,
    ...(input.remark === undefined ? {} : { remark: input.remark }),
    how: input.facts.how,
  };
}

function explainMissing(reckoning: Reckoning, id: SumId): Explanation {
  const standing = reckoning.study.graph.standing.get(id);
  const how =
    standing?.kind === 'lacks'
      ? `Would need ${waysToKnow(reckoning.study.graph, id)
          .map((way) => way.map(refTitle).join(' and '))
          .join(', or ')}.`
      : 'Does not apply to this vehicle.';
  return { kind: 'missing', id, title: SUMS[id].title, how };
}
