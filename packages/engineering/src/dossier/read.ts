/** From text to a dossier, or to every fault with its place. Never throws on bad input, never fills in silently. */
import type * as z from 'zod';
import { contradictions } from './contradictions.ts';
import { type Fault, fault, show } from './faults.ts';
import { faultsOf } from './issues.ts';
import { readJson } from './locate.ts';
import { migrate } from './migrate.ts';
import { DOSSIER_FORMAT, type Dossier, dossierSchema } from './schema/dossier.ts';
import { type Part, shelfFileSchema } from './schema/parts.ts';
import type { Shelf } from './shelf/shelf.ts';

export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads a dossier.
 * @param text   the file
 * @param shelf  the parts it may name
 * @returns      the dossier, or all faults found, each with pointer, line and column
 */
export function readDossier(text: string, shelf: Shelf): Reading<Dossier> {
  const json = readJson(text);
  if (!json.ok) return json;
  const { value, locate } = json.located;
  const migrated = migrate(value);
  if (!migrated.ok) return { ok: false, faults: [locate(migrated.fault)] };
  const read = readAs(dossierSchema, migrated.value);
  if (!read.ok) return { ok: false, faults: read.faults.map(locate) };
  const clashes = contradictions(read.value, shelf);
  if (clashes.length > 0) return { ok: false, faults: clashes.map(locate) };
  return read;
}

/** Reads a file of parts: `{ "format": 1, "parts": [ … ] }`. */
export function readShelfFile(text: string): Reading<Part[]> {
  const json = readJson(text);
  if (!json.ok) return json;
  const { value, locate } = json.located;
  const read = readAs(shelfFileSchema as unknown as z.ZodType<{ parts: Part[] }>, value);
  if (!read.ok) return { ok: false, faults: read.faults.map(locate) };
  const nameless = read.value.parts.flatMap((part, i) =>
    part.id === undefined ? [locate(fault('DOSSIER_KEY_MISSING', `/parts/${i}/id`, 'nothing', 'an id'))] : [],
  );
  return nameless.length > 0 ? { ok: false, faults: nameless } : { ok: true, value: read.value.parts };
}

function readAs<T>(schema: z.ZodType<T>, value: unknown): Reading<T> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return {
      ok: false,
      faults: [fault('DOSSIER_TYPE', '', show(value), `an object with "format": ${DOSSIER_FORMAT}`)],
    };
  }
  const parsed = schema.safeParse(value);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : { ok: false, faults: faultsOf(parsed.error.issues, value, schema) };
}
