/**
 * Goal: a text is read as JSON exactly where it is JSON, and every value remembers where it stood.
 * Method: the parser of the language as twin on random and on damaged texts; places are checked by cutting the text there.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEPTH_MAX, type JsonNode, parseJson } from './json-text.ts';
import { pathOf, pointer, readJson } from './locate.ts';

const RUNS = { numRuns: 400, seed: 7 };

/** What the language makes of a text: the value, or nothing where it is no JSON. */
function twin(text: string): { value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

/** Damages a text: one piece cut out, put in or replaced. */
const damage = fc
  .tuple(
    fc.json({ maxDepth: 4 }),
    fc.nat(),
    fc.nat(3),
    fc.constantFrom(
      '',
      '"',
      ',',
      '{',
      '}',
      '[',
      ']',
      ':',
      '\\',
      '1',
      '-',
      '.',
      'e5',
      '0',
      ' ',
      '\n',
      '\t',
      '\u00A0',
      '//',
      'true',
      "'",
      '\u0000',
      '\\u12',
      '\\ud800',
    ),
  )
  .map(([text, at, cut, put]) => {
    const start = at % (text.length + 1);
    return text.slice(0, start) + put + text.slice(start + cut);
  });

describe('a JSON text', () => {
  it('is read as the language reads it', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 5, noUnicodeString: false }), fc.constantFrom(0, 1, 3), (text, blanks) => {
        const spaced = blanks === 0 ? text : JSON.stringify(JSON.parse(text), null, blanks);
        const reading = parseJson(spaced, 10);
        expect(reading.ok && reading.root.value).toEqual(JSON.parse(spaced));
      }),
      RUNS,
    );
  });

  it('is refused where the language refuses it, and only there', () => {
    let [good, bad] = [0, 0];
    fc.assert(
      fc.property(damage, (text) => {
        const expected = twin(text);
        const reading = parseJson(text, 10);
        if (expected === undefined) bad++;
        else good++;
        expect(reading.ok).toBe(expected !== undefined);
        if (reading.ok && !reading.oddities.some(({ kind }) => kind === 'key twice')) {
          expect(reading.root.value).toEqual(expected?.value);
        }
      }),
      { ...RUNS, numRuns: 3000 },
    );
    expect(good).toBeGreaterThan(300);
    expect(bad).toBeGreaterThan(300);
  });

  it('gives each value and key the place where it stands', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), (json) => {
        const text = JSON.stringify(JSON.parse(json), null, 2);
        const reading = parseJson(text, 10);
        if (!reading.ok) throw new Error(text);
        const visit = (node: JsonNode, key?: string): void => {
          const begin = JSON.stringify(key ?? node.value).slice(0, 1);
          expect(text.slice(node.offset, node.offset + (key === undefined ? 1 : JSON.stringify(key).length))).toBe(
            key === undefined ? begin : JSON.stringify(key),
          );
          node.items?.forEach((item) => {
            visit(item);
          });
          node.members?.forEach((member, name) => {
            visit(member, name);
          });
        };
        visit(reading.root);
      }),
      RUNS,
    );
  });

  it('keeps keys that mean something to the language as plain keys', () => {
    const reading = parseJson('{ "__proto__": { "polluted": 1 }, "constructor": 2, "toString": 3 }', 10);
    const value = reading.ok ? (reading.root.value as object) : {};
    expect(Object.keys(value)).toEqual(['__proto__', 'constructor', 'toString']);
    expect('polluted' in {}).toBe(false);
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
  });

  it('is read down to the deepest level allowed and no further', () => {
    const nested = (levels: number) => '['.repeat(levels) + ']'.repeat(levels);
    expect(parseJson(nested(DEPTH_MAX), 10).ok).toBe(true);
    expect(parseJson(nested(DEPTH_MAX + 1), 10)).toMatchObject({ ok: false, fault: { code: 'DOSSIER_TOO_DEEP' } });
  });
});

describe('what stands wrong in a JSON text', () => {
  it.each([
    ['{"a": 1,}', 9, 'Take away the comma before it.'],
    ['[1, 2,]', 7, 'Take away the comma before it.'],
    ['{"a" 1}', 6, 'Write a colon after the key.'],
    ['{"a": 1 "b": 2}', 9, 'Write a comma between the two'],
    ["{'a': 1}", 2, 'Use double quotes.'],
    ['{“a”: 1}', 2, 'Use straight double quotes.'],
    ['{a: 1}', 2, 'Put the key in double quotes.'],
    ['{"a": True}', 7, 'Write true.'],
    ['{"a": None}', 7, 'Leave the key out'],
    ['{"a": NaN}', 7, 'Leave the key out'],
    ['{"a": 01}', 7, 'Write it that way.'],
    ['{"a": .5}', 7, 'Write it that way.'],
    ['{"a": +1}', 7, 'Write it that way.'],
    ['{"a": 0x1F}', 7, 'Write it that way.'],
    ['{"a": 1.62 kg ± 5 g, "b": 1}', 7, 'Put a quantity in double quotes: "1.62 kg ± 5 g".'],
    ['{"a": 3,2 A}', 7, 'Put a quantity in double quotes: "3.2 A".'],
    ['{"a": "b\n"}', 9, 'Close the text with a double quote'],
    ['{"a": "\\q"}', 8, 'Write \\\\ for a backslash.'],
    ['{"a": 1 // why\n}', 9, 'JSON has no comments'],
    ['{"a": 1', 8, 'cut off'],
    ['{"a": "b', 9, 'cut off'],
    ['{} {}', 4, 'Take away what stands after'],
    ['\u00A0{}', 1, 'invisible'],
    ['', 1, 'right file'],
  ])('%j is placed at column %i and told how to mend it', (text, column, says) => {
    const reading = readJson(text);
    const [first] = reading.ok ? [] : reading.faults;
    expect(first).toMatchObject({ code: 'DOSSIER_NOT_JSON', line: 1, column, todo: expect.stringContaining(says) });
  });
});

describe('a JSON pointer', () => {
  it('leads back to its path, whatever the keys', () => {
    fc.assert(
      fc.property(fc.array(fc.string()), (path) => {
        expect(pathOf(pointer(path))).toEqual(path);
      }),
      RUNS,
    );
  });

  it('is written as the standard shows it', () => {
    // RFC 6901, section 5: the keys "a/b" and "m~n" are /a~1b and /m~0n, and the empty key is /.
    expect([pointer(['a/b']), pointer(['m~n']), pointer(['']), pointer(['foo', 0])]).toEqual([
      '/a~1b',
      '/m~0n',
      '/',
      '/foo/0',
    ]);
  });
});
