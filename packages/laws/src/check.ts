/**
 * The check harness. A check compares one of our results with a value from outside this project and must be
 * shown able to fail: our result scaled by 1.2 and by 0.8 must both miss it.
 */
import type { AnyLaw, Arguments, Law, Values } from './law.ts';

/** How good the outside value is. */
export type CheckKind = 'published' | 'reference library' | 'common practice' | 'memory';

interface RowFacts {
  /** What is computed, in words and with its inputs. */
  readonly case: string;
  /** Title, edition, table or example. */
  readonly source: string;
  readonly kind: CheckKind;
  /** The outside value, SI. Never zero: a zero cannot be missed by scaling. */
  readonly expected: number;
  /** Allowed relative difference (0.01 = 1 %). */
  readonly allowed: number;
  /** Why so wide: required above 0.1. */
  readonly because?: string;
}

/** A row that calls one law with the given arguments. */
export interface LawRow<A> extends RowFacts {
  readonly args: A;
}

/** A row that computes something out of several laws, or with something that is not a law. */
export interface FreeRow extends RowFacts {
  readonly ours: () => number;
}

/** All checks of one law, or of one subject that is not a single law. */
export interface Checks {
  readonly law: string;
  readonly of: AnyLaw | undefined;
  readonly rows: readonly CheckedRow[];
}

/** A row ready to be evaluated. `args` is absent for free rows. */
export interface CheckedRow extends RowFacts {
  readonly args?: Readonly<Record<string, number | string>>;
  readonly ours: () => number;
}

/** A printed row of the book of checks; the shape `longrein checks --json` promises. */
export interface CheckResult {
  readonly law: string;
  readonly source: string;
  readonly kind: CheckKind;
  readonly case: string;
  readonly expected: number;
  readonly ours: number;
  /** Relative. */
  readonly allowed: number;
  readonly ok: boolean;
  /** Smallest relative error of ours, up or down, that this row would be sure to notice. */
  readonly notices: number;
}

/** Checks of one law, each row a call of it. */
export function checkLaw<S extends Arguments>(of: Law<S>, rows: readonly LawRow<Values<S>>[]): Checks {
  return { law: of.facts.id, of, rows: rows.map((row) => ({ ...row, ours: () => of(row.args) })) };
}

/** Checks of a composition of laws or of a method; `subject` is printed in the column 'law'. */
export function checkSubject(subject: string, rows: readonly FreeRow[]): Checks {
  return { law: subject, of: undefined, rows };
}

/** Does `value` agree with the outside value of this row? */
export function agrees(row: Pick<RowFacts, 'expected' | 'allowed'>, value: number): boolean {
  return Math.abs(value - row.expected) <= row.allowed * Math.abs(row.expected);
}

/** Evaluates one row. */
export function runRow(law: string, row: CheckedRow): CheckResult {
  const ours = row.ours();
  const offset = Math.abs(ours / row.expected - 1);
  return {
    law,
    source: row.source,
    kind: row.kind,
    case: row.case,
    expected: row.expected,
    ours,
    allowed: row.allowed,
    ok: agrees(row, ours),
    notices: (row.allowed + offset) / (1 - offset),
  };
}

/** Evaluates every row of every group, in order. */
export function runChecks(book: readonly Checks[]): CheckResult[] {
  return book.flatMap((checks) => checks.rows.map((row) => runRow(checks.law, row)));
}

/**
 * Faults of a group of checks itself: a row that could not fail, a wide allowance without a reason, an argument of
 * the law that no row would miss when moved by 20 %. Empty when the group is honest.
 */
export function dishonesties(checks: Checks): string[] {
  const faults: string[] = [];
  for (const row of checks.rows) {
    const at = `${checks.law}: ${row.case}`;
    const ours = row.ours();
    if (!Number.isFinite(row.expected) || row.expected === 0) faults.push(`${at}: expected must be finite, not zero`);
    if (row.allowed <= 0) faults.push(`${at}: allowed must be above zero`);
    if (row.allowed > 0.1 && !row.because) faults.push(`${at}: allows more than 10 % without saying why`);
    for (const scale of [1.2, 0.8]) {
      if (agrees(row, ours * scale)) faults.push(`${at}: still passes when our result is scaled by ${scale}`);
    }
  }
  return checks.of ? [...faults, ...untestedArguments(checks, checks.of)] : faults;
}

/** Arguments that no row would miss: moving them by 20 % (or to another name) breaks nothing. */
function untestedArguments(checks: Checks, of: AnyLaw): string[] {
  const names = Object.keys(of.facts.args);
  return names
    .filter((name) => !checks.rows.some((row) => breaksWhenMoved(row, of, name)))
    .map((name) => `${checks.law}: no row notices when '${name}' is moved by 20 %`);
}

function breaksWhenMoved(row: CheckedRow, of: AnyLaw, name: string): boolean {
  if (!row.args) return false;
  const value = row.args[name];
  const others: (number | string)[] =
    typeof value === 'number'
      ? [value * 1.2, value * 0.8]
      : (of.facts.args[name]?.oneOf ?? []).filter((other) => other !== value);
  return others.some((moved) => {
    try {
      return !agrees(row, of.bare({ ...row.args, [name]: moved }));
    } catch {
      return true;
    }
  });
}
