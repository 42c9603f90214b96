/** The published schema of the limits record, for programs that do not share this code. */
import * as z from 'zod/mini';
import { LIMIT_FACTS } from './limit-facts.ts';
import { MODEL_FACTS } from './model-facts.ts';
import { limitsRecordSchema } from './schema.ts';

/**
 * JSON Schema, draft 2020-12. It is wider than the codec: it cannot say what must hold between entries nor whether
 * the checksum is true, and it measures texts in characters where the codec counts UTF-16 code units.
 */
export function limitsJsonSchema(): object {
  return z.toJSONSchema(limitsRecordSchema, {
    target: 'draft-2020-12',
    override: ({ jsonSchema, path }) => {
      const meaning = meaningAt(path);
      if (meaning !== undefined) jsonSchema.description = meaning;
    },
  });
}

/** The meaning of the row that makes the schema at this place, where a row does. */
function meaningAt(path: readonly PropertyKey[]): string | undefined {
  const [, group, , name] = path;
  if (path.length !== 4 || typeof name !== 'string') return undefined;
  const facts: Readonly<Record<string, { readonly meaning: string }>> =
    group === 'limits' ? LIMIT_FACTS : group === 'model' ? MODEL_FACTS : {};
  return facts[name]?.meaning;
}
