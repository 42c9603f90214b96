/** The schemas as JSON Schema (draft 2020-12), for editors that complete and check while a dossier is written. */
import * as z from 'zod';
import { dossierSchema } from './dossier.ts';
import { shelfFileSchema } from './parts.ts';

export type JsonSchema = Readonly<Record<string, unknown>>;

const OPTIONS = { io: 'input', target: 'draft-2020-12' } as const;

/**
 * The schema of a dossier as written. It knows keys and kinds of values; numbers, units and contradictions are read by
 * the program alone, so what it admits may still be refused, and what it refuses is refused.
 */
export function dossierJsonSchema(): JsonSchema {
  return titled('Dossier of a vehicle', 'One vehicle: toy, conversion, service, link, picture.', dossierSchema);
}

/** The schema of a file of parts as written. */
export function shelfJsonSchema(): JsonSchema {
  return titled(
    'Parts for the shelf',
    'Parts by their data-sheet values; a dossier names them by id.',
    shelfFileSchema,
  );
}

/** The words come first, where a reader of the file looks for them. */
function titled(title: string, description: string, schema: z.ZodType): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(schema, OPTIONS);
  return { $schema, title, description, ...rest };
}
