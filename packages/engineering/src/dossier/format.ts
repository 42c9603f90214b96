/** Writes a dossier as a person would keep it: keys in the order they were given, short objects on one line. */
import type { WrittenDossier } from './schema/dossier.ts';

/** Longest line that holds a whole object or list. */
const LINE_MAX = 110;

/**
 * A dossier as the text of its file, which reads back as the same dossier.
 * @throws TypeError where the value holds what JSON cannot
 */
export function formatDossier(value: WrittenDossier): string {
  return `${lines(value, '')}\n`;
}

function lines(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return leaf(value);
  const list = Array.isArray(value);
  const inner = `${indent}  `;
  const members = list
    ? value.map((item) => lines(item, inner))
    : Object.entries(value)
        .filter(([, item]) => item !== undefined)
        .map(([key, item]) => `${JSON.stringify(key)}: ${lines(item, inner)}`);
  const [open, close] = list ? ['[', ']'] : ['{', '}'];
  if (members.length === 0) return open + close;
  const line = list ? `[${members.join(', ')}]` : `{ ${members.join(', ')} }`;
  const flat = indent !== '' && !line.includes('\n') && indent.length + line.length <= LINE_MAX && depth(value) <= 2;
  return flat ? line : `${open}\n${inner}${members.join(`,\n${inner}`)}\n${indent}${close}`;
}

/** Levels of objects and lists within. More than two on a line cannot be taken in at a glance. */
function depth(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  return 1 + Math.max(0, ...Object.values(value).map(depth));
}

function leaf(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError(`${value} cannot stand in a dossier`);
  const text = JSON.stringify(value);
  if (text === undefined) throw new TypeError(`a ${typeof value} cannot stand in a dossier`);
  return text;
}
