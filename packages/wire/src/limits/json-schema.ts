/** The published schema of the limits record, for programs that do not share this code. */
import * as z from 'zod/mini';
import { limitsRecordSchema } from './schema.ts';

/** JSON Schema, draft 2020-12. It cannot say what must hold between entries, nor whether the checksum is true. */
export function limitsJsonSchema(): object {
  return z.toJSONSchema(limitsRecordSchema, { target: 'draft-2020-12' });
}
