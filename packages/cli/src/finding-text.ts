/** A finding in words: its state, its figures, how days were taken, what decides it. */
import { type FindingResult, formatDifference, formatValue } from '@longrein/engineering';
import type { Io } from './io.ts';
import { paint, STATES } from './paint.ts';

/** '93 of 100'; nothing where the finding is unsettled. */
function countOf({ state, holds }: FindingResult): string {
  return state === 'unsettled' ? '' : `${Math.floor(holds)} of 100`;
}

/** Mark, word and count, at most this wide: '– informs 100 of 100'. */
export const STATE_WIDTH = 20;

/** The state with its mark. A finding that only informs says so instead, as it cannot make the vehicle fail. */
export function stateText(io: Pick<Io, 'colour'>, result: FindingResult): string {
  const { mark, word, tone } = STATES[result.state];
  const count = countOf(result);
  if (result.finding.informs) return paint(io, 'faint', `– informs ${count === '' ? word : count}`);
  return paint(io, tone, `${mark} ${word} ${count}`.trimEnd());
}

/** 'Has 7.10 V (6.92 V to 7.31 V), needs at most 7.20 V; margin 0.10 V (−0.11 V to 0.28 V).' */
export function figuresText(result: FindingResult): string {
  const { finding, need, has, margin } = result;
  const show = (si: number) => formatValue(si, finding.unit);
  const apart = (si: number) => formatDifference(si, finding.unit);
  const band = (b: FindingResult['has'], text: (si: number) => string) => {
    const [low, middle, high] = [b.p5, b.p50, b.p95].map(text) as [string, string, string];
    return low === high ? middle : `${middle} (${low} to ${high})`;
  };
  return `Has ${band(has, show)}, needs ${finding.sense} ${band(need, show)}; margin ${band(margin, apart)}.`;
}

const DAYS: Readonly<Record<FindingResult['variation'], string>> = {
  none: '',
  worst: 'Days are taken at their declared worst.',
  drawn: 'Days are drawn as they come.',
  'worst and drawn': 'Days are taken at their declared worst where one is declared, and drawn as they come elsewhere.',
};

/** How what differs from day to day was taken; nothing where nothing does. */
export function daysText({ variation }: FindingResult): string {
  return DAYS[variation];
}

/** The inputs that decide it, strongest first; nothing where none stands out. */
export function decidersText({ decidedBy }: FindingResult): string {
  if (decidedBy.length === 0) return '';
  const each = decidedBy.map(({ title, share }) => `${title} (${Math.round(share * 100)} %)`);
  return `Decided by ${each.join('; ')}.`;
}
