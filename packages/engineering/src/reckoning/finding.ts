/** What a finding is: a claim about the vehicle, what it needs, what it has, and what to do where it fails. */
import type { Layout } from '../dossier/resolve.ts';
import type { Ref } from './sum.ts';
import type { Subject } from './sums/ids.ts';

export interface Finding {
  readonly title: string;
  readonly subject: Subject;
  /** Unit `need`, `has` and the margin are shown in. */
  readonly unit: string;
  /** 'at least': holds where has ≥ need. 'at most': holds where has ≤ need. */
  readonly sense: 'at least' | 'at most';
  readonly need: Ref;
  readonly has: Ref;
  /** Does it mean anything for this vehicle? Absent: always. */
  readonly when?: (layout: Layout) => boolean;
  /** What to do where it does not hold, in plain words. */
  readonly remedy: string;
  /** A caution to show with it, where work on it can hurt someone. */
  readonly caution?: string;
  /** True where it informs and never decides: it is shown, but cannot make the reckoning fail. */
  readonly informs?: boolean;
}

/** Checks the shape of a table of findings and keeps its ids. */
export function findings<const T extends Readonly<Record<string, Finding>>>(table: T): T {
  return table;
}

/** Share of the cases from which a finding holds, and down to which it is tight. */
export const HOLDS_FROM = 0.95;
export const TIGHT_FROM = 0.5;

export type State = 'holds' | 'tight' | 'fails' | 'unsettled';

/** The state of a finding that holds in this share of the cases. */
export function stateOf(share: number): State {
  if (share >= HOLDS_FROM) return 'holds';
  return share >= TIGHT_FROM ? 'tight' : 'fails';
}
