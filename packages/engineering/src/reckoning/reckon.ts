/** The reckoning: findings over the study of a vehicle. */
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Input, Vehicle } from '../dossier/resolve.ts';
import { band } from '../quantity/bands.ts';
import { type Classes, classify, influences } from '../quantity/sensitivity.ts';
import type { Band } from '../quantity/shapes.ts';
import { type Finding, type State, stateOf } from './finding.ts';
import { FINDINGS, type FindingId } from './findings/all.ts';
import { type Sums, waysToKnow } from './graph.ts';
import { refTitle } from './names.ts';
import { ancestors, columnOf, type Study, type StudyOptions, study } from './study.ts';
import type { Ref } from './sum.ts';
import { SUMS } from './sums/all.ts';
import { isSumId } from './sums/ids.ts';

/** How much of a finding's spread an input explains by itself. */
export interface Decider {
  readonly id: InputId;
  readonly title: string;
  /** First-order share of the variance of the margin. */
  readonly share: number;
}

/** A finding of a vehicle. */
export interface FindingResult {
  readonly id: FindingId;
  readonly finding: Finding;
  readonly state: State;
  /** Of 100 possible vehicles, in how many it holds. NaN where unsettled. */
  readonly holds: number;
  /** Bands in SI. The margin is positive where it holds. */
  readonly need: Band;
  readonly has: Band;
  readonly margin: Band;
  /** Was what differs from day to day taken at its declared worst, drawn, or is nothing of the kind in it? */
  readonly variation: 'worst' | 'drawn' | 'worst and drawn' | 'none';
  /** Inputs that decide it, strongest first, only those above the noise floor. */
  readonly decidedBy: readonly Decider[];
  /** For unsettled findings: why. */
  readonly because?: string;
  /** 1 where it holds, case by case; empty where unsettled. */
  readonly verdicts: Uint8Array;
}

export interface Reckoning {
  readonly vehicle: Vehicle;
  readonly study: Study;
  readonly classes: Classes;
  readonly findings: readonly FindingResult[];
  /** Quantities that were assumed, as nobody stated them. */
  readonly assumptions: readonly Input[];
}

/** Part of the time that the sums take; the findings take the rest. */
const STUDY_SHARE = 0.6;
/** Deciders named with a finding. */
const DECIDERS_SHOWN = 4;
/** A setting computed to just meet a need meets it in spite of the last digit of the arithmetic. */
const ROUNDING = 1e-9;
const NOTHING: Band = { p5: Number.NaN, p50: Number.NaN, p95: Number.NaN, counted: 0, missing: 0 };

/** Reckons a vehicle: draws the cases, evaluates sums and findings. */
export function reckon(vehicle: Vehicle, options: StudyOptions = {}): Reckoning {
  return reckonWith(SUMS, FINDINGS, vehicle, options);
}

/** Reckons a vehicle by other sums and findings than the house's own. */
export function reckonWith(
  sums: Sums,
  table: Readonly<Partial<Record<FindingId, Finding>>>,
  vehicle: Vehicle,
  options: StudyOptions = {},
): Reckoning {
  const { watch = () => {}, ...others } = options;
  const done = study(sums, vehicle, { ...others, watch: (share) => watch(share * STUDY_SHARE) });
  const classes = classify(done.cases);
  const applying = (Object.entries(table) as [FindingId, Finding][]).filter(([, finding]) => applies(finding, done));
  const findings = applying.map(([id, finding], place) => {
    watch(STUDY_SHARE + (1 - STUDY_SHARE) * (place / applying.length));
    return judge(id, finding, done, classes);
  });
  watch(1);
  const assumptions = [...vehicle.inputs.values()].filter((input) => input.origin === 'assumed');
  return { vehicle, study: done, classes, findings, assumptions };
}

/** A finding does not apply where it says so, or where one of its sums means nothing for this vehicle. */
function applies(finding: Finding, { vehicle, graph }: Study): boolean {
  if (finding.when && !finding.when(vehicle.layout)) return false;
  return ![finding.need, finding.has].some((ref) => isSumId(ref) && graph.standing.get(ref)?.kind === 'does not apply');
}

function judge(id: FindingId, finding: Finding, done: Study, classes: Classes): FindingResult {
  const need = columnOf(done, finding.need);
  const has = columnOf(done, finding.has);
  const ids = ancestors(done.graph, [finding.need, finding.has]);
  const variation = variationOf(done, ids);
  const because = unsettledBecause(done, [finding.need, finding.has]);
  if (because !== undefined || need === undefined || has === undefined) {
    return unsettled(id, finding, variation, because ?? 'a quantity is missing');
  }
  const { count } = done;
  const margin = new Float64Array(count);
  const verdicts = new Uint8Array(count);
  let holding = 0;
  for (let i = 0; i < count; i++) {
    const apart = (has[i] as number) - (need[i] as number);
    const m = finding.sense === 'at least' ? apart : -apart;
    margin[i] = m;
    if (m >= -ROUNDING * Math.abs(need[i] as number)) {
      verdicts[i] = 1;
      holding++;
    }
  }
  const share = holding / count;
  return {
    id,
    finding,
    state: stateOf(share),
    holds: share * 100,
    need: bandOf(done, finding.need, need),
    has: bandOf(done, finding.has, has),
    margin: band(margin),
    variation,
    decidedBy: deciders(done, classes, margin, ids),
    verdicts,
  };
}

/** The band of a column; that of a sum is known already. */
function bandOf(done: Study, ref: Ref, column: Float64Array): Band {
  const known = isSumId(ref) ? done.sums.get(ref)?.band : undefined;
  return known ?? band(column.subarray(0, done.count));
}

function unsettled(
  id: FindingId,
  finding: Finding,
  variation: FindingResult['variation'],
  because: string,
): FindingResult {
  return {
    id,
    finding,
    state: 'unsettled',
    holds: Number.NaN,
    need: NOTHING,
    has: NOTHING,
    margin: NOTHING,
    variation,
    decidedBy: [],
    because,
    verdicts: new Uint8Array(0),
  };
}

/** Why the finding cannot be settled: a missing input, or a sum without a finite value in some cases. */
function unsettledBecause(done: Study, refs: readonly Ref[]): string | undefined {
  for (const ref of refs) {
    const why = whyUnknown(done, ref);
    if (why !== undefined) return why;
  }
  return undefined;
}

/** Why a sum or input is not known in every case, as the tail of a sentence; nothing where it is. */
export function whyUnknown(done: Study, ref: Ref): string | undefined {
  if (columnOf(done, ref) === undefined) {
    const ways = waysToKnow(done.graph, ref).map((way) => way.map(refTitle).join(' and '));
    return `nothing is known of ${ways.join(', or of ')}`;
  }
  const cause = isSumId(ref) ? done.sums.get(ref)?.cause : undefined;
  if (cause === undefined || cause.cases === 0) return undefined;
  return `in ${cause.cases} of ${done.count} cases ${refTitle(cause.at)} cannot be worked out: ${cause.says}`;
}

function variationOf(done: Study, ids: ReadonlySet<InputId>): FindingResult['variation'] {
  let worst = false;
  let drawn = false;
  for (const id of ids) {
    const behaviour = done.vehicle.inputs.get(id)?.behaviour;
    if (behaviour === 'worst') worst = true;
    if (behaviour === 'variation') drawn = true;
  }
  if (worst && drawn) return 'worst and drawn';
  return worst ? 'worst' : drawn ? 'drawn' : 'none';
}

/** The classes of these inputs only: the others cannot matter, and would only raise the noise floor. */
export function only(classes: Classes, ids: ReadonlySet<string>): Classes {
  return { ...classes, columns: classes.columns.filter(({ column }) => ids.has(column.id)) };
}

function deciders(done: Study, classes: Classes, margin: Float64Array, ids: ReadonlySet<InputId>): Decider[] {
  return influences(only(classes, ids), margin)
    .ranked.filter((influence) => influence.clear)
    .slice(0, DECIDERS_SHOWN)
    .map(({ id, index }) => ({
      id: id as InputId,
      title: done.vehicle.inputs.get(id as InputId)?.facts.title ?? id,
      share: index,
    }));
}
