/** What to measure next: the inputs whose doubt leaves verdicts open, and how much each would settle. */
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Input } from '../dossier/resolve.ts';
import { influences } from '../quantity/sensitivity.ts';
import { only, type Reckoning } from './reckon.ts';
import { ancestors } from './study.ts';

/** One thing to measure. */
export interface NextMeasurement {
  readonly input: Input;
  /** Share of all that is open in the verdicts that knowing it would settle. */
  readonly settles: number;
  /** The findings it bears on, most first. */
  readonly findings: readonly { readonly id: string; readonly title: string; readonly share: number }[];
}

export interface MeasureNext {
  readonly ranked: readonly NextMeasurement[];
  /** Sum of p (1 − p) over the findings: 0 where every verdict is plain. */
  readonly open: number;
  /** What idle inputs would seem to settle; nothing at or below it is ranked. */
  readonly floor: number;
}

/**
 * Ranks the inputs that can be measured. A finding that holds in a share p of the cases leaves p (1 − p) open; knowing
 * an input would remove its first-order share of that. Settings and what differs from day to day cannot be measured
 * away and are left out.
 */
export function measureNext(reckoning: Reckoning): MeasureNext {
  const { study, classes, findings, vehicle } = reckoning;
  const gains = new Map<InputId, { total: number; findings: { id: string; title: string; share: number }[] }>();
  let open = 0;
  let floor = 0;
  for (const result of findings) {
    if (result.state === 'unsettled' || result.finding.informs) continue;
    const p = result.holds / 100;
    const unsure = p * (1 - p);
    if (unsure === 0) continue;
    open += unsure;
    const ids = ancestors(study.graph, [result.finding.need, result.finding.has]);
    const { ranked, floor: noise } = influences(only(classes, ids), result.verdicts);
    floor += unsure * noise.deviation;
    for (const { id, index, clear } of ranked) {
      const input = vehicle.inputs.get(id as InputId);
      if (!clear || !input || !canBeMeasured(input)) continue;
      const gain = gains.get(input.id) ?? { total: 0, findings: [] };
      gain.total += index * unsure;
      gain.findings.push({ id: result.id, title: result.finding.title, share: index });
      gains.set(input.id, gain);
    }
  }
  if (open === 0) return { ranked: [], open, floor: 0 };
  const ranked = [...gains].flatMap(([id, gain]): NextMeasurement[] => {
    const input = vehicle.inputs.get(id);
    if (!input || gain.total <= floor) return [];
    return [{ input, settles: gain.total / open, findings: gain.findings.sort((a, b) => b.share - a.share) }];
  });
  ranked.sort((a, b) => b.settles - a.settles);
  return { ranked, open, floor: floor / open };
}

function canBeMeasured(input: Input): boolean {
  return (input.behaviour === 'doubt' || input.behaviour === 'worst') && input.quantity.spread !== 'exact';
}
