/**
 * A walk over a JSON Schema (draft 2020-12) that knows the few keywords ours uses and throws on any other: written apart
 * from the library that makes the schema, so that the two can disagree.
 */

type Schema = Readonly<Record<string, unknown>>;

/** Keywords that say nothing about validity. `format` only annotates; a pattern stands beside it. */
const SILENT = new Set(['$schema', 'title', 'description', 'format']);

const KINDS: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  array: Array.isArray,
  string: (value) => typeof value === 'string',
  number: (value) => typeof value === 'number',
  integer: Number.isInteger,
  boolean: (value) => typeof value === 'boolean',
};

const KEYWORDS: Readonly<Record<string, (limit: never, value: unknown, schema: Schema) => boolean>> = {
  type: (kind: string, value) => {
    const is = KINDS[kind];
    if (is === undefined) throw new Error(`the type "${kind}" is not known`);
    return is(value);
  },
  const: (only: unknown, value) => value === only,
  enum: (all: readonly unknown[], value) => all.includes(value),
  anyOf: (all: readonly Schema[], value) => all.some((schema) => fits(schema, value)),
  oneOf: (all: readonly Schema[], value) => all.filter((schema) => fits(schema, value)).length === 1,
  properties: (all: Readonly<Record<string, Schema>>, value) =>
    !KINDS.object?.(value) ||
    Object.entries(value as object).every(
      ([key, inner]) => !Object.hasOwn(all, key) || fits(all[key] as Schema, inner),
    ),
  required: (keys: readonly string[], value) =>
    !KINDS.object?.(value) || keys.every((key) => Object.hasOwn(value as object, key)),
  additionalProperties: (more: boolean, value, { properties = {} }) => {
    if (more !== false) throw new Error('an object admits keys that are not known');
    return (
      !KINDS.object?.(value) || Object.keys(value as object).every((key) => Object.hasOwn(properties as object, key))
    );
  },
  items: (item: Schema, value) => !Array.isArray(value) || value.every((inner) => fits(item, inner)),
  minItems: (least: number, value) => !Array.isArray(value) || value.length >= least,
  maxItems: (most: number, value) => !Array.isArray(value) || value.length <= most,
  minLength: (least: number, value) => typeof value !== 'string' || [...value].length >= least,
  maxLength: (most: number, value) => typeof value !== 'string' || [...value].length <= most,
  pattern: (pattern: string, value) => typeof value !== 'string' || new RegExp(pattern, 'u').test(value),
  minimum: (least: number, value) => typeof value !== 'number' || value >= least,
  maximum: (most: number, value) => typeof value !== 'number' || value <= most,
  exclusiveMinimum: (low: number, value) => typeof value !== 'number' || value > low,
  exclusiveMaximum: (high: number, value) => typeof value !== 'number' || value < high,
};

/**
 * Is a value what a schema describes?
 * @throws Error where the schema uses a keyword that this walk does not know
 */
export function fits(schema: Schema, value: unknown): boolean {
  return Object.entries(schema).every(([keyword, limit]) => {
    if (SILENT.has(keyword)) return true;
    const holds = KEYWORDS[keyword];
    if (holds === undefined) throw new Error(`the keyword "${keyword}" is not known`);
    return holds(limit as never, value, schema);
  });
}

/** Every schema within a schema, itself included. */
export function* schemasIn(schema: Schema): Generator<Schema> {
  yield schema;
  const { properties = {}, items, anyOf = [], oneOf = [] } = schema;
  const inner = [...Object.values(properties as object), ...(items ? [items] : []), ...(anyOf as []), ...(oneOf as [])];
  for (const each of inner) yield* schemasIn(each as Schema);
}
