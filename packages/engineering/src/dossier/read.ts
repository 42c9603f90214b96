/** From text to a dossier, or to every fault with its place. Never throws on bad input, never fills in silently. */
import type * as z from 'zod';
import { contradictions } from './contradictions.ts';
import { type Fault, fault, inOrder, show } from './faults.ts';
import { fits } from './fits.ts';
import { faultsOf } from './issues.ts';
import { readJson } from './locate.ts';
import { migrate } from './migrate.ts';
import { partAgrees } from './part-contradictions.ts';
import { resolve } from './resolve.ts';
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
  const refuse = (faults: readonly Fault[]) => ({ ok: false, faults: inOrder(faults.map(locate)) }) as const;
  const migrated = migrate(value);
  if (!migrated.ok) return refuse([migrated.fault]);
  const read = readAs(dossierSchema, migrated.value, `an object with "format": ${DOSSIER_FORMAT}`);
  if (!read.ok) return refuse(read.faults);
  const clashes = contradictions(read.value, shelf);
  if (clashes.length > 0) return refuse(clashes);
  // Only a vehicle without contradictions can be resolved, and only then is known which inputs a fit may name.
  const unfit = read.value.fits === undefined ? [] : fits(read.value, resolve(read.value, shelf).inputs);
  return unfit.length > 0 ? refuse(unfit) : read;
}

/** Reads a file of parts: `{ "format": 1, "parts": [ … ] }`. Every part needs an id, as it is named by it. */
export function readShelfFile(text: string): Reading<Part[]> {
  const json = readJson(text);
  if (!json.ok) return json;
  const { value, locate } = json.located;
  const schema = shelfFileSchema as unknown as z.ZodType<{ parts: Part[] }>;
  const read = readAs(schema, value, 'an object with "format": 1 and "parts"');
  const faults = read.ok ? read.value.parts.flatMap(partFaults) : read.faults;
  if (faults.length > 0 || !read.ok) return { ok: false, faults: inOrder(faults.map(locate)) };
  return { ok: true, value: read.value.parts };
}

function partFaults(part: Part, i: number, parts: readonly Part[]): Fault[] {
  const faults = partAgrees(part, ['parts', i]);
  const at = `/parts/${i}/id`;
  if (part.id === undefined) {
    const todo = 'Add it: dossiers name the part by it.';
    faults.push(fault('DOSSIER_KEY_MISSING', at, 'nothing', 'lower-case words joined by hyphens', todo));
  } else if (parts.findIndex(({ id }) => id === part.id) < i) {
    const todo = 'Give one of the two parts another id.';
    faults.push(fault('DOSSIER_VALUE', at, `"${part.id}" a second time`, 'each id once', todo));
  }
  return faults;
}

function readAs<T>(schema: z.ZodType<T>, value: unknown, accepted: string): Reading<T> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return { ok: false, faults: [fault('DOSSIER_TYPE', '', show(value), accepted)] };
  }
  const parsed = schema.safeParse(value);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : { ok: false, faults: faultsOf(parsed.error.issues, value, schema) };
}
