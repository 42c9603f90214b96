/**
 * Goal: the published JSON Schema admits every sound dossier and refuses every one of the wrong shape.
 * Method: a walk written apart from the library that makes the schema, over sound dossiers and over damaged ones.
 */
import {
  BUILT_IN_PARTS,
  dossierJsonSchema,
  PART_KINDS,
  QUANTITIES,
  type QuantityId,
  shelfJsonSchema,
} from '@longrein/engineering';
import { describe, expect, it } from 'vitest';
import { fits, schemasIn } from './json-schema-walk.ts';
import { SEEDS } from './seeds.ts';

const dossier = dossierJsonSchema();
const shelf = shelfJsonSchema();

describe.each([
  ['a dossier', dossier],
  ['a file of parts', shelf],
])('the JSON Schema of %s', (_, schema) => {
  it('says what it is and needs no address', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.title).toMatch(/^[A-Z]/);
    const text = JSON.stringify(schema);
    expect(text).not.toMatch(/"\$(?:id|ref|defs)"/);
  });

  it('admits no key that is not known, in any object', () => {
    const objects = [...schemasIn(schema)].filter(({ type }) => type === 'object');
    expect(objects.length).toBeGreaterThan(10);
    for (const { additionalProperties } of objects) expect(additionalProperties).toBe(false);
  });

  it('bounds every number, text that is no quantity, and list', () => {
    for (const { type, maximum, minimum, exclusiveMinimum, const: only } of schemasIn(schema)) {
      if (type === 'integer' || (type === 'number' && only === undefined)) {
        expect(maximum).toBeLessThan(Number.MAX_SAFE_INTEGER);
        expect(minimum ?? exclusiveMinimum).toBeGreaterThan(Number.MIN_SAFE_INTEGER);
      }
    }
  });
});

describe('the JSON Schema of a dossier', () => {
  it.each(SEEDS)('admits $name', ({ text }) => {
    expect(fits(dossier, JSON.parse(text))).toBe(true);
  });

  it('refuses a dossier with any one key left out that must be there, or with any one key put in', () => {
    const damaged = SEEDS.flatMap(({ text }) => [...everyUnknownKey(JSON.parse(text))]);
    expect(damaged.length).toBeGreaterThan(300);
    for (const value of damaged) expect(fits(dossier, value)).toBe(false);
    for (const key of ['format', 'name', 'donor', 'conversion', 'service']) {
      const { [key]: _, ...rest } = JSON.parse(SEEDS[0]?.text ?? '{}') as Record<string, unknown>;
      expect(fits(dossier, rest), key).toBe(false);
    }
  });

  it('carries title, unit and way to measure of the quantities it asks for', () => {
    const titles = new Map([...schemasIn(dossier)].map(({ title, description }) => [title, description]));
    const asked = (Object.keys(QUANTITIES) as QuantityId[]).filter((id) => !/^(?:at|run)\./.test(id));
    for (const id of asked) {
      const { title, unit, how } = QUANTITIES[id];
      expect(titles.get(`${title} [${unit}]`), id).toBe(how);
    }
  });
});

describe('the JSON Schema of a file of parts', () => {
  it('admits the whole built-in shelf and every kind of part', () => {
    expect(fits(shelf, { format: 1, parts: JSON.parse(JSON.stringify(BUILT_IN_PARTS)) })).toBe(true);
    expect(new Set(BUILT_IN_PARTS.map(({ kind }) => kind))).toEqual(new Set(PART_KINDS));
  });

  it('refuses a part with a key of another kind, and a part of no kind', () => {
    const [part] = JSON.parse(JSON.stringify(BUILT_IN_PARTS)) as Record<string, unknown>[];
    expect(fits(shelf, { format: 1, parts: [{ ...part, gain: '2 dBi' }] })).toBe(false);
    expect(fits(shelf, { format: 1, parts: [{ ...part, kind: 'flywheel' }] })).toBe(false);
    expect(fits(shelf, { format: 1, parts: [] })).toBe(false);
  });
});

/** Copies of a value, each with an unknown key in another of its objects. */
function* everyUnknownKey(value: unknown): Generator<unknown> {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) yield { ...value, unheardOf: 1 };
  for (const [key, inner] of Object.entries(value)) {
    for (const damaged of everyUnknownKey(inner)) {
      yield Array.isArray(value) ? value.with(Number(key), damaged) : { ...value, [key]: damaged };
    }
  }
}
