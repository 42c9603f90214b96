/** A quantity as a field of the schema: parsed, bounded and documented from its facts. */
import * as z from 'zod';
import { parseQuantity } from '../quantity/quantity.ts';
import type { Quantity, QuantityFault } from '../quantity/shapes.ts';
import { formatPlain } from '../quantity/show.ts';
import { ACCEPTS } from './accepts.ts';
import type { QuantityFacts } from './facts/facts.ts';
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

/** Reads a quantity text by its facts; a doubt wider than all that is possible is refused with the value. */
export function readQuantity(text: string, facts: QuantityFacts) {
  const reading = parseQuantity(text, facts.unit, facts);
  if (!reading.ok) return reading;
  const fault = doubtFault(reading.quantity, facts);
  return fault ? ({ ok: false, fault } as const) : reading;
}

/** Of a quantity that is above zero, a doubt of more than so many times the value says nothing. */
const DOUBT_MOST = 10;

/** Such a doubt says nothing, and a spread so wide is nowhere near the bell curve that it is drawn from. */
function doubtFault({ value, doubt, spread, text }: Quantity, facts: QuantityFacts): QuantityFault | undefined {
  const [low, high] = [facts.above ?? facts.from, facts.below ?? facts.to];
  if (spread === 'rectangular') return undefined;
  if (low !== undefined && high !== undefined && doubt > high - low) {
    const range = `${formatPlain(low, facts.unit)} … ${formatPlain(high, facts.unit)}`;
    return tooWide(text, `no wider than all that is possible, ${range}`);
  }
  return spread === 'lognormal' && doubt > DOUBT_MOST * value
    ? tooWide(text, `of at most ${DOUBT_MOST} times the value`)
    : undefined;
}

const tooWide = (text: string, most: string): QuantityFault => ({
  code: 'QUANTITY_LIMITS',
  found: text.trim(),
  accepted: [`a doubt ${most}`],
  hint: 'Write a smaller doubt, or leave the quantity out where nothing is known of it.',
});

/** The schema of one quantity: a text, or an object with a text, a basis and a remark. */
export function field(id: QuantityId) {
  const facts = factsOf(id);
  return statement
    .transform((stated, context): Stated => {
      const text = typeof stated === 'string' ? stated : stated.value;
      const reading = readQuantity(text, facts);
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
    .meta({ title: `${facts.title} [${facts.unit}]`, description: facts.how })
    .register(ACCEPTS, {
      accepted: `a quantity such as "${exampleIn(facts.unit)}", or an object with "value", "basis" and "remark"`,
      unit: facts.unit,
      how: facts.how,
    });
}

/** A percentage of a temperature or of a level means nothing. */
function exampleIn(unit: string): string {
  const doubt = unit === '°C' ? '1 K' : unit.startsWith('dB') ? '1 dB' : '5 %';
  return unit === '1' ? `3.2 ± ${doubt}` : `3.2 ${unit} ± ${doubt}`;
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
