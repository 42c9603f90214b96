/** Collects the quantities of a vehicle under their input ids, each with its facts and where it came from. */
import type { Quantity, Written } from '../quantity/shapes.ts';
import { assumed } from './assumed.ts';
import type { Assumption, QuantityFacts } from './facts/facts.ts';
import { factsOf, type InputId, type QuantityId } from './facts/quantities.ts';
import type { Basis, Stated } from './field.ts';
import type { Input } from './vehicle.ts';

/** Where a quantity of an object is kept, and what is known of quantities there. */
export interface Shelved {
  /** Key `k` becomes the input `prefix.k`. */
  readonly prefix: string;
  /** Pointer of the object, or the shelf part it is. */
  readonly where: string;
  /** Where values come from unless they say so. */
  readonly usual: Basis;
  /** Key `k` has the facts `factsPrefix.k`; absent: as the prefix. */
  readonly factsPrefix?: string;
  /** Said behind the title, where several inputs have the same facts: 'axle 2'. */
  readonly of?: string;
}

export class Collector {
  readonly inputs = new Map<InputId, Input>();

  /** Takes every stated quantity of an object. */
  take(object: object | undefined, { prefix, where, usual, factsPrefix = prefix, of }: Shelved): void {
    for (const [key, value] of Object.entries(object ?? {})) {
      if (!isStated(value)) continue;
      const facts = factsOf(`${factsPrefix}.${key}` as QuantityId);
      const titled = of === undefined ? facts : { ...facts, title: `${facts.title} (${of})` };
      this.put(`${prefix}.${key}` as InputId, titled, value, `${where}/${key}`, usual);
    }
  }

  put(id: InputId, facts: QuantityFacts, stated: Stated, where: string, usual: Basis): void {
    const { quantity, basis, remark } = stated;
    const known = { id, quantity, facts, behaviour: facts.is, origin: basis ?? usual, where };
    this.inputs.set(id, remark === undefined ? known : { ...known, remark });
  }

  /** Assumes a quantity that nobody stated; one that is there stays. */
  assume(id: QuantityId & InputId, { text, because }: Assumption): void {
    if (this.inputs.has(id)) return;
    const facts = factsOf(id);
    const quantity = assumed(text, facts);
    this.inputs.set(id, { id, quantity, facts, behaviour: facts.is, origin: 'assumed', where: '', remark: because });
  }
}

function isStated(value: unknown): value is Stated {
  return typeof value === 'object' && value !== null && 'quantity' in value;
}

/**
 * A stated quantity a whole number of times, as the same piece is there so often: value, doubt and limits scale alike,
 * since the pieces are of one make and err together.
 */
export function times(stated: Stated, facts: QuantityFacts, count: number): { stated: Stated; facts: QuantityFacts } {
  const { above, from, to, below, ...rest } = facts;
  const scaled = (limit: number | undefined) => (limit ?? 0) * count;
  // None of them is exactly nothing, which 'above zero' would not admit.
  const limits =
    count === 0
      ? { from: 0, to: 0 }
      : {
          ...(above === undefined ? {} : { above: scaled(above) }),
          ...(from === undefined ? {} : { from: scaled(from) }),
          ...(to === undefined ? {} : { to: scaled(to) }),
          ...(below === undefined ? {} : { below: scaled(below) }),
        };
  return { stated: { ...stated, quantity: multiple(stated.quantity, count) }, facts: { ...rest, ...limits } };
}

function multiple(quantity: Quantity, count: number): Quantity {
  if (count === 1) return quantity;
  const { value, doubt, spread, text, written } = quantity;
  return {
    ...quantity,
    value: value * count,
    doubt: doubt * count,
    spread: count === 0 ? 'exact' : spread,
    text: `${count} × ${text}`,
    written: multipleWritten(written, count),
  };
}

function multipleWritten(written: Written, count: number): Written {
  switch (written.form) {
    case 'exact':
      return { ...written, number: written.number * count };
    case 'doubt': {
      const share = written.doubtUnit === '%' && written.unit !== '%';
      return { ...written, number: written.number * count, doubt: written.doubt * (share ? 1 : count) };
    }
    case 'range':
      return { ...written, from: written.from * count, to: written.to * count };
  }
}
