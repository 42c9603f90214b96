/** A reckoning as plain data: the shape `longrein reckon --json` promises, in the units things are shown in. */

import type { Band } from '../quantity/shapes.ts';
import { differenceUnit } from '../quantity/show.ts';
import { differenceInUnit, inUnit } from '../quantity/units.ts';
import type { FindingResult, Reckoning } from './reckon.ts';
import { SUMS } from './sums/all.ts';
import type { SumId } from './sums/ids.ts';

/** A band in a unit it is shown in. Missing numbers are null, as JSON has no NaN. */
export interface ShownBand {
  readonly p5: number | null;
  readonly p50: number | null;
  readonly p95: number | null;
}

export interface ReportedSum extends ShownBand {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  /** With everything exactly as stated. */
  readonly stated: number | null;
}

export interface ReportedFinding {
  readonly id: string;
  readonly title: string;
  readonly subject: string;
  readonly state: string;
  /** Of 100 possible vehicles, in how many it holds; null where unsettled. */
  readonly holds: number | null;
  readonly sense: string;
  /** Middle values, in `unit` (the margin in `marginUnit`). Positive margins hold. */
  readonly need: number | null;
  readonly has: number | null;
  readonly margin: number | null;
  readonly unit: string;
  /** Unit of the margin: K for temperatures, dB for levels of power, else as `unit`. */
  readonly marginUnit: string;
  readonly bands: { readonly need: ShownBand; readonly has: ShownBand; readonly margin: ShownBand };
  readonly variation: string;
  readonly remedy: string;
  readonly caution?: string;
  /** True where it never decides the verdict. */
  readonly informs: boolean;
  readonly decidedBy: readonly { readonly id: string; readonly title: string; readonly share: number }[];
  readonly because?: string;
}

export interface Report {
  readonly name: string;
  /** True for demonstration data. */
  readonly invented: boolean;
  readonly cases: number;
  readonly seed: number;
  readonly assumptions: readonly {
    readonly id: string;
    readonly title: string;
    readonly value: string;
    readonly because: string;
  }[];
  readonly sums: readonly ReportedSum[];
  readonly findings: readonly ReportedFinding[];
}

/** Adding nothing turns −0, which JSON cannot tell from 0, into 0. */
const orNull = (x: number) => (Number.isFinite(x) ? x + 0 : null);

function shown(band: Band, show: (si: number) => number): ShownBand {
  return { p5: orNull(show(band.p5)), p50: orNull(show(band.p50)), p95: orNull(show(band.p95)) };
}

/** The report of a reckoning. */
export function report(reckoning: Reckoning): Report {
  const { vehicle, study } = reckoning;
  return {
    name: vehicle.name,
    invented: vehicle.invented,
    cases: study.count,
    seed: study.seed,
    assumptions: reckoning.assumptions.map((input) => ({
      id: input.id,
      title: input.facts.title,
      value: input.quantity.text,
      because: input.remark ?? '',
    })),
    sums: study.graph.order.map((id) => reportSum(reckoning, id)).filter((sum) => sum !== undefined),
    findings: reckoning.findings.map(reportFinding),
  };
}

function reportSum({ study }: Reckoning, id: SumId): ReportedSum | undefined {
  const result = study.sums.get(id);
  if (!result) return undefined;
  const { title, unit } = SUMS[id];
  const show = (si: number) => inUnit(si, unit);
  return { id, title, unit, ...shown(result.band, show), stated: orNull(show(result.values[study.count] as number)) };
}

function reportFinding(result: FindingResult): ReportedFinding {
  const { finding } = result;
  const show = (si: number) => inUnit(si, finding.unit);
  const bands = {
    need: shown(result.need, show),
    has: shown(result.has, show),
    margin: shown(result.margin, (si) => differenceInUnit(si, differenceUnit(finding.unit))),
  };
  return {
    id: result.id,
    title: finding.title,
    subject: finding.subject,
    state: result.state,
    holds: orNull(result.holds),
    sense: finding.sense,
    need: bands.need.p50,
    has: bands.has.p50,
    margin: bands.margin.p50,
    unit: finding.unit,
    marginUnit: differenceUnit(finding.unit),
    bands,
    variation: result.variation,
    remedy: finding.remedy,
    ...(finding.caution === undefined ? {} : { caution: finding.caution }),
    informs: finding.informs === true,
    decidedBy: result.decidedBy,
    ...(result.because === undefined ? {} : { because: result.because }),
  };
}

/** The verdict over all findings that decide. */
export type Verdict = 'holds' | 'tight' | 'fails' | 'unsettled';

/** Fails where one fails; else unsettled where one is; else tight where one is. */
export function verdictOf(findings: readonly FindingResult[]): Verdict {
  const states = findings.filter(({ finding }) => !finding.informs).map(({ state }) => state);
  for (const state of ['fails', 'unsettled', 'tight'] as const) if (states.includes(state)) return state;
  return 'holds';
}
