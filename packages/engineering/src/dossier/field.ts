/** A quantity as a field of the schema: parsed, bounded and documented from its facts. */
import * as z from 'zod';
import { parseQuantity } from '../quantity/quantity.ts';
import type { Quantity } from '../quantity/shapes.ts';
import { factsOf, type QuantityId } from './facts/quantities.ts';

/** Where a value comes from. */
export const BASES = ['measured', 'label', 'estimate'] as const;
export type Basis = (typeof BASES)[number];

/** A quantity as stated in a dossier or on the shelf. */
export interface Stated {
  readonly quantity: Quantity;
  /** Absent where the writer left it out; the reader then takes what is usual at that place. */
  readonly basis?: Basis;
  readonly remark?: string;
}

const statement = z.union([
  z.string(),
  z.strictObject({
    value: z.string(),
    basis: z.enum(BASES).optional(),
    remark: z.string().max(2000).optional(),
  }),
]);

/** The schema of one quantity: a text, or an object with a text, a basis and a remark. */
export function field(id: QuantityId) {
  const facts = factsOf(id);
  return statement
    .transform((stated, context): Stated => {
      const text = typeof stated === 'string' ? stated : stated.value;
      const reading = parseQuantity(text, facts.unit, facts);
      if (!reading.ok) {
        context.addIssue({
          code: 'custom',
          message: reading.fault.hint,
          path: typeof stated === 'string' ? [] : ['value'],
          params: { quantityFault: reading.fault, text },
          input: text,
        });
        return z.NEVER;
      }
      const { basis, remark } = typeof stated === 'string' ? {} : stated;
      return {
        quantity: reading.quantity,
        ...(basis === undefined ? {} : { basis }),
        ...(remark === undefined ? {} : { remark }),
      };
    })
    .meta({ title: `${facts.title} [${facts.unit}]`, description: facts.how });
}

export type Field = ReturnType<typeof field>;

type Tail<S extends string> = S extends `${string}.${infer T}` ? T : never;
type Tails<I extends readonly QuantityId[]> = Tail<I[number]>;

const tail = (id: QuantityId) => id.slice(id.indexOf('.') + 1);

/** Fields that must be there, keyed by the part of the id after the first dot. */
export function need<const I extends readonly QuantityId[]>(...ids: I): { [K in Tails<I>]: Field } {
  return Object.fromEntries(ids.map((id) => [tail(id), field(id)])) as { [K in Tails<I>]: Field };
}

/** Fields that may be left out. */
export function may<const I extends readonly QuantityId[]>(...ids: I): { [K in Tails<I>]: z.ZodOptional<Field> } {
  return Object.fromEntries(ids.map((id) => [tail(id), field(id).optional()])) as {
    [K in Tails<I>]: z.ZodOptional<Field>;
  };
}
