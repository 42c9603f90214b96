/** Timing against a baseline, in one run: the only part of the house, with the rims, that looks at a clock. */

/** One comparison, as results.json holds it. */
export interface Result {
  readonly id: string;
  /** What is compared with what. */
  readonly what: string;
  /** Median time of ours and of the baseline, in `unit`. */
  readonly ours: number;
  readonly baseline: number;
  /** Median of ours over baseline, each taken within one round. */
  readonly ratio: number;
  /** Least and greatest ratio of a round. */
  readonly range: readonly [number, number];
  readonly unit: string;
  /** How many rounds. */
  readonly runs: number;
}

/** Seconds that one call takes, as the mean of so many. */
export function secondsOf(calls: number, call: () => void): number {
  const start = performance.now();
  for (let i = 0; i < calls; i++) call();
  return (performance.now() - start) / calls / 1000;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[sorted.length >> 1] ?? Number.NaN;
  const lower = sorted[(sorted.length - 1) >> 1] ?? Number.NaN;
  return (lower + upper) / 2;
}

const UNITS = { s: 1, ms: 1e3, µs: 1e6, ns: 1e9 } as const;

/** A round gives the seconds of ours and of the baseline, taken one right after the other. */
export type Round = () => { readonly ours: number; readonly baseline: number };

/** Repeats the rounds; load on the machine that comes and goes moves both sides of a round alike. */
export function compare(
  about: { readonly id: string; readonly what: string; readonly unit: keyof typeof UNITS; readonly runs: number },
  round: Round,
): Result {
  const rounds = Array.from({ length: about.runs }, round);
  const ratios = rounds.map(({ ours, baseline }) => ours / baseline);
  return {
    ...about,
    ours: median(rounds.map(({ ours }) => ours)) * UNITS[about.unit],
    baseline: median(rounds.map(({ baseline }) => baseline)) * UNITS[about.unit],
    ratio: median(ratios),
    range: [Math.min(...ratios), Math.max(...ratios)],
  };
}
