/** Brings dossiers of older formats up to date on read. */
import { type Fault, fault, show } from './faults.ts';
import { DOSSIER_FORMAT } from './schema/dossier.ts';

type Step = (dossier: Record<string, unknown>) => Record<string, unknown>;

/** One step a format: `STEPS[n]` makes format n + 1 out of format n. Old files stay as fixtures of the tests. */
const STEPS: Readonly<Record<number, Step>> = {};

export type Migration = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly fault: Fault };

/** The dossier in today's format, or the fault that its format is not one of ours. Values that are no object pass. */
export function migrate(value: unknown): Migration {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return { ok: true, value };
  let dossier = value as Record<string, unknown>;
  const format = dossier.format;
  if (format === undefined) return { ok: true, value };
  if (typeof format !== 'number' || !Number.isInteger(format) || format < 1 || format > DOSSIER_FORMAT) {
    const accepted = Array.from({ length: DOSSIER_FORMAT }, (_, i) => i + 1).join(', ');
    const newer = typeof format === 'number' && format > DOSSIER_FORMAT;
    const todo = newer ? undefined : `Write ${DOSSIER_FORMAT}.`;
    return { ok: false, fault: fault('DOSSIER_FORMAT', '/format', show(format), accepted, todo) };
  }
  for (let from = format; from < DOSSIER_FORMAT; from++) {
    const step = STEPS[from];
    if (step) dossier = { ...step(dossier), format: from + 1 };
  }
  return { ok: true, value: dossier };
}
