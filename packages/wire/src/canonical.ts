/**
 * Canonical JSON after RFC 8785 (JSON Canonicalization Scheme): one value has one text, so that a checksum or a
 * signature over the text is one over the value. Keys go by their UTF-16 code units, numbers and texts are written
 * as ECMAScript writes them, and nothing stands between the tokens.
 */
import { pointer, show, WireError, type WireErrorCode } from './errors.ts';

/** No record or dossier is nested this deep; the bound also ends values that contain themselves. */
export const CANONICAL_DEPTH_MAX = 64;

type Path = readonly PropertyKey[];

/**
 * The canonical text of a value made of plain objects, lists, texts, finite numbers, truth values and null.
 * @throws WireError at the place of anything that has no such text.
 */
export function canonicalJson(value: unknown): string {
  return write(value, []);
}

function write(value: unknown, path: Path): string {
  switch (typeof value) {
    case 'string':
      return text(value, path);
    case 'number':
      if (!Number.isFinite(value)) refuse('WIRE_NON_FINITE', path, value, 'a finite number');
      return JSON.stringify(value);
    case 'boolean':
      return String(value);
    case 'object':
      if (value === null) return 'null';
      if (path.length >= CANONICAL_DEPTH_MAX) {
        refuse('WIRE_TOO_DEEP', path, value, `at most ${CANONICAL_DEPTH_MAX} levels`);
      }
      return Array.isArray(value) ? list(value, path) : record(value, path);
    default:
      return refuse('WIRE_NOT_DATA', path, value, 'text, number, truth value, null, list or plain object');
  }
}

function text(value: string, path: Path): string {
  // JSON.stringify would escape half a surrogate pair, where RFC 8785 demands an error: in UTF-8 all such halves
  // become the same three bytes, and two different values would have one checksum.
  if (/\p{Surrogate}/u.test(value)) refuse('WIRE_LONE_SURROGATE', path, value, 'text of whole characters');
  return JSON.stringify(value);
}

function list(value: readonly unknown[], path: Path): string {
  // Array.from visits holes too, which are then refused as undefined.
  return `[${Array.from(value, (item, index) => write(item, [...path, index])).join(',')}]`;
}

function record(value: object, path: Path): string {
  // Dates, maps and the like would be written as an empty object and lose what they hold.
  if (Object.prototype.toString.call(value) !== '[object Object]') {
    refuse('WIRE_NOT_DATA', path, value, 'text, number, truth value, null, list or plain object');
  }
  // The operator < compares UTF-16 code units, which is the order the RFC demands; no locale takes part.
  const entries = Object.entries(value).map(([key, item]) => ({ key, item }));
  entries.sort((a, b) => (a.key < b.key ? -1 : 1));
  return `{${entries.map(({ key, item }) => `${text(key, [...path, key])}:${write(item, [...path, key])}`).join(',')}}`;
}

function refuse(code: WireErrorCode, path: Path, found: unknown, accepted: string): never {
  throw new WireError({ code, at: pointer(path), found: show(found), accepted });
}
