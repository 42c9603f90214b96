/** Reads JSON text so that every later fault can be located: line and column of any JSON pointer. */
import { findNodeAtLocation, type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser';
import { type Fault, fault } from './faults.ts';

/** Longest dossier or shelf file read [characters]. */
const LENGTH_MAX = 2_000_000;
/** Deepest nesting read. */
const DEPTH_MAX = 40;

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
function pathOf(at: string): string[] {
  return at
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/**
 * Reads a JSON text (RFC 8259; no comments, no trailing commas, no key twice in one object).
 * @returns the value and a locator, or every fault of the text
 */
export function readJson(text: string): LocatedReading {
  if (text.length > LENGTH_MAX) {
    return { ok: false, faults: [fault('DOSSIER_TOO_LARGE', '', `${text.length} characters`, `up to ${LENGTH_MAX}`)] };
  }
  if (depthOf(text) > DEPTH_MAX) {
    return { ok: false, faults: [fault('DOSSIER_TOO_DEEP', '', 'deep nesting', `up to ${DEPTH_MAX} levels`)] };
  }
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const position = positions(text);
  const first = errors[0];
  if (tree === undefined || first !== undefined) {
    const offset = first?.offset ?? 0;
    const found = text.slice(offset, offset + 20).trim() || 'the end of the text';
    const reason = first === undefined ? 'a JSON value' : `JSON (${printParseErrorCode(first.error)})`;
    return { ok: false, faults: [{ ...fault('DOSSIER_NOT_JSON', '', found, reason), ...position(offset) }] };
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return { ok: false, faults: [fault('DOSSIER_NOT_JSON', '', (error as Error).message, 'JSON')] };
  }
  const duplicates = duplicateKeys(tree, []).map(({ path, node }) => ({
    ...fault('DOSSIER_DUPLICATE_KEY', pointer(path), 'this key a second time', 'each key once'),
    ...position(node.offset),
  }));
  if (duplicates.length > 0) return { ok: false, faults: duplicates };
  return { ok: true, located: { value, locate: (f) => ({ ...f, ...position(offsetOf(tree, f.at)) }) } };
}

/** Nesting depth by counting brackets outside strings: cheap, and safe before a recursive parse. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') deepest = Math.max(deepest, ++depth);
    else if (c === '}' || c === ']') depth--;
  }
  return deepest;
}

/** Line and column of an offset, from 1. */
function positions(text: string): (offset: number) => { line: number; column: number } {
  return (offset) => {
    const before = text.slice(0, offset);
    const line = before.split('\n').length;
    return { line, column: offset - before.lastIndexOf('\n') };
  };
}

function duplicateKeys(node: Node, path: string[]): { path: string[]; node: Node }[] {
  if (node.type === 'array') {
    return (node.children ?? []).flatMap((child, i) => duplicateKeys(child, [...path, String(i)]));
  }
  if (node.type !== 'object') return [];
  const seen = new Set<string>();
  return (node.children ?? []).flatMap((property) => {
    const [key, child] = property.children ?? [];
    if (key === undefined || child === undefined) return [];
    const here = [...path, String(key.value)];
    const twice = seen.has(String(key.value)) ? [{ path: here, node: key }] : [];
    seen.add(String(key.value));
    return [...twice, ...duplicateKeys(child, here)];
  });
}

/** Offset of the place a pointer names, or of the nearest place above it that exists. */
function offsetOf(tree: Node, at: string): number {
  const path = pathOf(at);
  for (let length = path.length; length >= 0; length--) {
    const steps = path.slice(0, length).map((step) => (/^\d+$/.test(step) ? Number(step) : step));
    const node = findNodeAtLocation(tree, steps) ?? findNodeAtLocation(tree, path.slice(0, length));
    if (node) return (node.parent?.type === 'property' ? node.parent : node).offset;
  }
  return 0;
}
