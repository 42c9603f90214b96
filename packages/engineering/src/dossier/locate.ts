/** Reads JSON text so that every later fault can be located: line and column of any JSON pointer. */
import { FAULTS_MAX, type Fault, fault, inOrder } from './faults.ts';
import { type JsonNode, type Oddity, parseJson } from './json-text.ts';

/** Longest dossier or shelf file read [characters]. */
const LENGTH_MAX = 2_000_000;

/** A text that is JSON, with the means to find places in it. */
export interface Located {
  readonly value: unknown;
  /** Adds line and column to a fault, from its pointer. */
  readonly locate: (fault: Fault) => Fault;
}

export type LocatedReading =
  | { readonly ok: true; readonly located: Located }
  | { readonly ok: false; readonly faults: Fault[] };

/** JSON pointer (RFC 6901) of a path. */
export function pointer(path: readonly PropertyKey[]): string {
  return path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** The path a JSON pointer names. List indices stay texts. */
export function pathOf(at: string): string[] {
  return at
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/**
 * Reads a JSON text: no comments, no trailing commas, no key twice in one object, no number beyond what a computer
 * holds, no broken characters. A byte order mark before it is passed over.
 * @returns the value and a locator, or every fault of the text
 */
export function readJson(text: string): LocatedReading {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (plain.length > LENGTH_MAX) {
    const large = fault('DOSSIER_TOO_LARGE', '', `${plain.length} characters`, `up to ${LENGTH_MAX}`);
    return { ok: false, faults: [{ ...large, line: 1, column: 1 }] };
  }
  const position = positions(plain);
  const reading = parseJson(plain, FAULTS_MAX);
  if (!reading.ok) {
    const { code, offset, found, accepted, todo } = reading.fault;
    return {
      ok: false,
      faults: [{ ...fault(code, pointer(reading.path), found, accepted, todo), ...position(offset) }],
    };
  }
  const { root, oddities, more } = reading;
  if (oddities.length > 0) {
    const faults = oddities.map((oddity) => ({ ...faultOfOddity(oddity), ...position(oddity.offset) }));
    return { ok: false, faults: inOrder(faults, more) };
  }
  return { ok: true, located: { value: root.value, locate: (f) => ({ ...f, ...position(offsetOf(root, f.at)) }) } };
}

function faultOfOddity({ kind, path, found }: Oddity): Fault {
  const at = pointer(path);
  switch (kind) {
    case 'key twice':
      return fault('DOSSIER_DUPLICATE_KEY', at, found, 'each key once');
    case 'not finite':
      return fault('DOSSIER_VALUE', at, found, 'a finite number', 'Write a smaller number.');
    case 'not text': {
      const code = `U+${(found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
      const accepted = 'whole characters that can be printed';
      return fault('DOSSIER_VALUE', at, `the character ${code}`, accepted, 'Take this character out of the text.');
    }
  }
}

/** Line and column of an offset, from 1. Lines end as on any system; columns count UTF-16 units, as editors do. */
function positions(text: string): (offset: number) => { line: number; column: number } {
  let starts: number[] | undefined;
  return (offset) => {
    starts ??= [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map((end) => end.index + end[0].length)];
    let [low, high] = [0, starts.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 };
  };
}

/** Offset of the place a pointer names, or of the nearest place above it that exists. */
function offsetOf(root: JsonNode, at: string): number {
  let node = root;
  for (const step of pathOf(at)) {
    const inner = node.members?.get(step) ?? (/^\d+$/.test(step) ? node.items?.[Number(step)] : undefined);
    if (inner === undefined) break;
    node = inner;
  }
  return node.offset;
}
