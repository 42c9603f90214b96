/** Turns what the schema library finds into a fault of ours. The wording of the accepted stands in the schemas. */
import type * as z from 'zod/mini';
import { pointer, show, type WireErrorCode, type WireFault } from './errors.ts';

/** The fault of one issue found in `value`; an issue's message is the text of what is accepted there. */
export function shapeFault(issue: z.core.$ZodIssue, value: unknown): WireFault {
  if (issue.code === 'unrecognized_keys') {
    const key = issue.keys[0] ?? '';
    return {
      code: 'WIRE_KEY_UNKNOWN',
      at: pointer([...issue.path, key]),
      found: show(key),
      accepted: issue.message,
    };
  }
  const at = pointer(issue.path);
  const found = valueAt(value, issue.path);
  return { code: codeOf(issue, found), at, found: show(found), accepted: issue.message };
}

function codeOf(issue: z.core.$ZodIssue, found: unknown): WireErrorCode {
  if (issue.code === 'custom') return 'WIRE_CONTRADICTION';
  if (found === undefined) return 'WIRE_KEY_MISSING';
  if (typeof found === 'number' && !Number.isFinite(found)) return 'WIRE_NON_FINITE';
  if (issue.code === 'invalid_value') return issue.path.at(-1) === 'unit' ? 'WIRE_UNIT' : 'WIRE_TEXT';
  if (issue.code === 'invalid_format') return 'WIRE_TEXT';
  if (issue.code === 'too_big' || issue.code === 'too_small') {
    if (Array.isArray(found)) return 'WIRE_LENGTH';
    return typeof found === 'number' ? 'WIRE_BOUNDS' : 'WIRE_TEXT';
  }
  return 'WIRE_TYPE';
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let here: unknown = value;
  for (const key of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined;
    here = (here as Record<PropertyKey, unknown>)[key];
  }
  return here;
}
