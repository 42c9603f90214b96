/**
 * Goal: the published schema accepts and refuses what the schema in the code does.
 * Method: a reader of the few words of JSON Schema 2020-12 that occur in it (written from the specification: any other
 * word makes it fail) judges the sample record and hundreds of damaged ones beside the schema in the code.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sealOf } from '../seal.ts';
import { limitsJsonSchema } from './json-schema.ts';
import { LIMIT_FACTS, LIMIT_NAMES } from './limit-facts.ts';
import { MODEL_NAMES } from './model-facts.ts';
import { sampleDraft } from './sample.fixture.ts';
import { limitsRecordSchema } from './schema.ts';

type Schema = Readonly<Record<string, unknown>>;
type Word = (value: unknown, word: never, schema: Schema) => boolean;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const TYPES: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: isObject,
  array: Array.isArray,
  string: (value) => typeof value === 'string',
  number: (value) => typeof value === 'number',
  integer: Number.isInteger,
};

/** Each word constrains only values of its own type, as the specification has it. */
const WORDS: Readonly<Record<string, Word>> = {
  $schema: () => true,
  description: () => true,
  type: (value, type: string) => TYPES[type]?.(value) ?? false,
  const: (value, only) => value === only,
  minimum: (value, least: number) => typeof value !== 'number' || value >= least,
  maximum: (value, most: number) => typeof value !== 'number' || value <= most,
  maxLength: (value, most: number) => typeof value !== 'string' || [...value].length <= most,
  pattern: (value, pattern: string) => typeof value !== 'string' || new RegExp(pattern, 'u').test(value),
  minItems: (value, least: number) => !Array.isArray(value) || value.length >= least,
  maxItems: (value, most: number) => !Array.isArray(value) || value.length <= most,
  prefixItems: (value, each: readonly Schema[]) =>
    !Array.isArray(value) || each.every((item, i) => i >= value.length || valid(value[i], item)),
  items: (value, item: Schema | false, { prefixItems }) => {
    if (!Array.isArray(value)) return true;
    const rest = value.slice(Array.isArray(prefixItems) ? prefixItems.length : 0);
    return item === false ? rest.length === 0 : rest.every((entry) => valid(entry, item));
  },
  required: (value, keys: readonly string[]) => !isObject(value) || keys.every((key) => Object.hasOwn(value, key)),
  properties: (value, each: Readonly<Record<string, Schema>>) =>
    !isObject(value) ||
    Object.entries(each).every(([key, part]) => !Object.hasOwn(value, key) || valid(value[key], part)),
  additionalProperties: (value, allowed: boolean, { properties }) =>
    !isObject(value) || allowed || Object.keys(value).every((key) => Object.hasOwn(properties as object, key)),
};

function valid(value: unknown, schema: Schema): boolean {
  return Object.entries(schema).every(([name, word]) => {
    const holds = WORDS[name];
    if (holds === undefined) throw new Error(`the reader does not know the word ${name}`);
    return holds(value, word as never, schema);
  });
}

const sample = (): Record<string, unknown> => ({
  ...sampleDraft(),
  ...sealOf(sampleDraft(), '07'.repeat(32)),
});

/** Every place in a value, outermost first. */
function places(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, item]) => places(item, [...path, key]))];
}

/** Puts a value, or takes an entry out where it is undefined. */
function put(record: Record<string, unknown>, path: readonly string[], value: unknown): Record<string, unknown> {
  let here: Record<string, unknown> = record;
  for (const key of path.slice(0, -1)) here = here[key] as Record<string, unknown>;
  const last = path.at(-1) ?? 'extra';
  if (value === undefined && !Array.isArray(here)) delete here[last];
  else here[last] = value === undefined ? null : value;
  return record;
}

describe('the published schema', () => {
  const schema = limitsJsonSchema() as Schema;

  it('states its dialect and describes every limit with its meaning', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const { limits, model } = schema.properties as Record<string, { properties: Record<string, Schema> }>;
    expect(Object.keys(limits?.properties ?? {})).toEqual(LIMIT_NAMES);
    expect(Object.keys(model?.properties ?? {})).toEqual(MODEL_NAMES);
    for (const name of LIMIT_NAMES) {
      expect(limits?.properties[name]?.description).toBe(LIMIT_FACTS[name].meaning);
    }
  });

  it('accepts the sample, and refuses it with any required entry gone, as the codec does', () => {
    expect(valid(sample(), schema)).toBe(true);
    let refused = 0;
    for (const path of places(sample()).slice(1)) {
      const record = put(sample(), path, undefined);
      // A contradiction is the one thing the published schema cannot see: half a band, holding without a time.
      const issues = limitsRecordSchema.safeParse(record).error?.issues ?? [];
      const shapely = issues.every((issue) => issue.code === 'custom');
      expect(valid(record, schema), path.join('/')).toBe(shapely);
      if (!shapely) refused += 1;
    }
    expect(refused).toBeGreaterThan(200);
  });

  it('judges a record with any entry replaced as the codec does', () => {
    const path = fc.constantFrom(...places(sample()).slice(1));
    const value = fc.oneof(
      fc.jsonValue(),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.constantFrom('V', 'm/s', 1, 0.5),
    );
    fc.assert(
      fc.property(path, value, (place, given) => {
        const record = put(sample(), place, given);
        const issues = limitsRecordSchema.safeParse(record).error?.issues ?? [];
        expect(valid(record, schema)).toBe(issues.every((issue) => issue.code === 'custom'));
      }),
      { numRuns: 1000 },
    );
  });
});
