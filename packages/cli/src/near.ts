/** Which of the known words somebody may have meant. */

/** Words named at most. */
const SHOWN = 12;

/** Known words that hold the word or one of its parts, or that differ from it in few letters; the nearest first. */
export function nearTo(word: string, known: readonly string[]): string[] {
  const wanted = letters(word);
  const score = (candidate: string): number => {
    const letter = letters(candidate);
    if (letter.includes(wanted) || wanted.includes(letter)) return 0;
    const away = distance(wanted, letter);
    if (away <= Math.max(1, Math.floor(wanted.length / 4))) return away;
    const parts = new Set(candidate.toLowerCase().split(/[^a-z0-9]+/));
    return word
      .toLowerCase()
      .split(/[^a-z0-9]+/)
      .some((part) => part.length > 2 && parts.has(part))
      ? 10
      : Number.POSITIVE_INFINITY;
  };
  return known
    .map((candidate) => ({ candidate, away: score(candidate) }))
    .filter(({ away }) => Number.isFinite(away))
    .sort((a, b) => a.away - b.away)
    .slice(0, SHOWN)
    .map(({ candidate }) => candidate);
}

const letters = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]/g, '');

/** Least number of letters to put in, take out or exchange (Levenshtein 1966). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const exchanged = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(exchanged, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
