/** Random values in the shape of a dossier, made from the published JSON Schema: right keys, values of any worth. */
import {
  builtInShelf,
  dossierJsonSchema,
  fromUnit,
  inUnit,
  type JsonSchema,
  QUANTITIES,
  type QuantityFacts,
  SURFACE_NAMES,
} from '@longrein/engineering';
import fc from 'fast-check';
import { PLAIN_TEXT } from '../../packages/engineering/src/dossier/testing.ts';
import { QUANTITY_TEXTS } from './damage.ts';

/** Facts by the title their schema carries. */
const FACTS = new Map(
  (Object.values(QUANTITIES) as QuantityFacts[]).map((facts) => [`${facts.title} [${facts.unit}]`, facts]),
);

/** A quantity within its limits for the most part, so that the sums behind the shape are reached as well. */
function quantityText(facts: QuantityFacts): fc.Arbitrary<string> {
  const { above, from, below, to, unit } = facts;
  const [low, high] = [above ?? from ?? 0, below ?? to ?? 1];
  const usual = fc.double({ min: 0, max: 1, noNaN: true }).map((share) => {
    // Limits that span orders of magnitude are drawn evenly over the orders.
    const value = low > 0 && high / low > 20 ? low * (high / low) ** share : low + (high - low) * share;
    return Number(inUnit(value, unit).toPrecision(3));
  });
  const share = unit === '°C' ? ' ± 2 K' : unit.startsWith('dB') ? ' ± 2 dB' : ' ± 40 %';
  const tail = unit === '1' ? '' : ` ${unit}`;
  const doubt = fc.constantFrom('', '', ` ± 0.1${tail}`, share);
  return fc.oneof(
    {
      weight: 400,
      arbitrary: fc.tuple(usual, doubt).map(([value, doubted]) => within(value, unit, facts) + tail + doubted),
    },
    { weight: 1, arbitrary: fc.constantFrom(...QUANTITY_TEXTS) },
  );
}

/** Rounding may have carried a value over its limit. */
function within(value: number, unit: string, { above, from, below, to }: QuantityFacts): number {
  const si = fromUnit(value, unit);
  const good = si > (above ?? -1e99) && si >= (from ?? -1e99) && si < (below ?? 1e99) && si <= (to ?? 1e99);
  return good ? value : inUnit(((above ?? from ?? 0) + (below ?? to ?? 1)) / 2, unit);
}

/** The ids of parts, by the kind that is asked for. */
const idsOf = (kind: string) =>
  builtInShelf()
    .parts.filter((part) => part.kind === kind)
    .map(({ id }) => id);

/** A value of a schema; `key` is the one it stands under. */
function shapeOf(schema: JsonSchema, key: string): fc.Arbitrary<unknown> {
  const facts = FACTS.get(String(schema.title));
  const union = (schema.anyOf ?? schema.oneOf) as readonly JsonSchema[] | undefined;
  if (facts && union) {
    const text = quantityText(facts);
    return fc.oneof(
      { weight: 5, arbitrary: text },
      { weight: 1, arbitrary: text.map((value) => ({ value, basis: 'label' })) },
    );
  }
  if (union) return fc.oneof(...union.map((option) => shapeOf(option, partKindOf(union) ?? key)));
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...(schema.enum as unknown[]));
  switch (schema.type) {
    case 'object':
      return objectOf(schema);
    case 'array': {
      const {
        minItems = 0,
        maxItems = 3,
        items,
      } = schema as { minItems?: number; maxItems?: number; items: JsonSchema };
      return fc.array(shapeOf(items, key), {
        minLength: minItems,
        maxLength: key === 'surfaces' ? 1 : Math.min(maxItems, minItems + 2),
      });
    }
    case 'integer':
      return fc.integer({ min: schema.minimum as number, max: Math.min(schema.maximum as number, 6) });
    case 'number':
      return fc.oneof(
        { weight: 50, arbitrary: fc.constant(1) },
        { weight: 1, arbitrary: fc.constantFrom(0.5, 0, -1, 1e300) },
      );
    case 'boolean':
      return fc.boolean();
    default:
      return textOf(schema, key);
  }
}

const partKindOf = (union: readonly JsonSchema[]) => {
  const kinds = union.flatMap(({ properties }) => {
    const kind = (properties as Record<string, JsonSchema> | undefined)?.kind?.const;
    return kind === undefined ? [] : [String(kind)];
  });
  return kinds.length === 1 ? kinds[0] : undefined;
};

function textOf(schema: JsonSchema, key: string): fc.Arbitrary<unknown> {
  const ids = idsOf(key);
  if (ids.length > 0) return fc.constantFrom(...ids);
  if (key === 'surface') return fc.constantFrom(...SURFACE_NAMES);
  if (schema.format === 'date') return fc.constantFrom('2024-02-29', '2023-12-31');
  if (key === 'id') return fc.constantFrom('a-part-of-mine', 'x1');
  if (key === 'of' || key === 'quantities') return fc.constantFrom(...Object.keys(QUANTITIES));
  return fc.constantFrom('plain words', 'x', '1 V');
}

function objectOf(schema: JsonSchema): fc.Arbitrary<unknown> {
  const { properties, required = [] } = schema as { properties: Record<string, JsonSchema>; required?: string[] };
  const shapes = Object.fromEntries(Object.entries(properties).map(([key, inner]) => [key, shapeOf(inner, key)]));
  return fc.record(shapes, { requiredKeys: required });
}

const whole = shapeOf(dossierJsonSchema(), '') as fc.Arbitrary<Record<string, unknown>>;
const plain = JSON.parse(PLAIN_TEXT) as Record<string, unknown>;

/**
 * Random JSON in the shape of a dossier. As hardly any toy of random sizes is one toy, most are given the toy of the
 * plain dossier, so that what stands behind it is met with figures that nobody would think of.
 */
export const shaped: fc.Arbitrary<string> = fc
  .tuple(whole, fc.boolean(), fc.boolean())
  .map(([value, sameToy, sameParts]) => {
    const { fits: _, readings: __, ...rest } = value;
    const mended = sameToy ? { ...rest, donor: plain.donor } : value;
    return JSON.stringify(sameParts ? { ...mended, conversion: plain.conversion } : mended, null, 1);
  });
