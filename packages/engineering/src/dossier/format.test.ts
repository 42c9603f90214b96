/**
 * Goal: a dossier that is written reads back as the same dossier.
 * Method: a property over random values, and the plain dossier.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDossier } from './format.ts';
import { readDossier } from './read.ts';
import type { WrittenDossier } from './schema/dossier.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { PLAIN_TEXT } from './testing.ts';

describe('a written dossier', () => {
  const plain = JSON.parse(PLAIN_TEXT) as WrittenDossier;

  it('reads back as the same value with its keys in the same order, whatever it holds', () => {
    const value = fc.jsonValue({ maxDepth: 5 });
    fc.assert(
      fc.property(fc.dictionary(fc.string(), value), (any) => {
        const again: unknown = JSON.parse(formatDossier(any as unknown as WrittenDossier));
        expect(JSON.stringify(again)).toBe(JSON.stringify(any));
      }),
      { numRuns: 500, seed: 5 },
    );
  });

  it('reads as the same dossier as the value it was written from', () => {
    const read = (text: string) => readDossier(text, builtInShelf());
    expect(read(formatDossier(plain))).toEqual(read(JSON.stringify(plain)));
    expect(read(formatDossier(plain)).ok).toBe(true);
  });

  it('stays as it is when it is written again', () => {
    expect(formatDossier(JSON.parse(formatDossier(plain)) as WrittenDossier)).toBe(formatDossier(plain));
  });

  it('ends with a line break, has no long line without need and leaves out what is not there', () => {
    const text = formatDossier({ ...plain, remark: undefined } as unknown as WrittenDossier);
    expect(text.endsWith('}\n')).toBe(true);
    expect(text).not.toContain('remark": undefined');
    for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(130);
    expect(text).toContain('"settings": { "dutyCeiling": "80 %" }');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1n, () => 1])('refuses %s, which no file can hold', (odd) => {
    expect(() => formatDossier({ ...plain, remark: odd } as unknown as WrittenDossier)).toThrow(TypeError);
  });
});
