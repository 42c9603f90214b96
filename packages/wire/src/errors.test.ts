/**
 * Goal: a fault tells a person where, what, and what to do, in a few lines whatever was found.
 * Method: every entry of the catalogue is worded; pointers are compared with the examples of RFC 6901.
 */
import { describe, expect, it } from 'vitest';
import { pointer, show, WIRE_ERRORS, WireError, wordFault } from './errors.ts';

describe('the catalogue', () => {
  it('has every code once', () => {
    expect(new Set(WIRE_ERRORS.map(({ code }) => code)).size).toBe(WIRE_ERRORS.length);
  });

  it.each([...WIRE_ERRORS])('$code is explained and worded in full sentences', ({ code, meaning, todo }) => {
    for (const sentence of [meaning, todo]) expect(sentence).toMatch(/^[A-Z].{8,}\.$/);
    const fault = { code, at: '/limits/speedCap', found: '3', accepted: 'less' };
    expect(wordFault(fault)).toBe(`At /limits/speedCap: found 3. Accepted: less. ${todo} [${code}]`);
    expect(new WireError(fault)).toMatchObject({ name: 'WireError', fault, message: wordFault(fault) });
  });

  it('calls the whole record /', () => {
    expect(wordFault({ code: 'WIRE_KIND', at: '', found: 'a', accepted: 'b' })).toMatch(/^At \/: found a\./);
  });
});

describe('a pointer', () => {
  it.each([
    // RFC 6901, section 5 (from memory).
    [[], ''],
    [['foo', 0], '/foo/0'],
    [[''], '/'],
    [['a/b'], '/a~1b'],
    [['m~n'], '/m~0n'],
    [['~1'], '/~01'],
  ])('to %j is %j', (path, text) => {
    expect(pointer(path)).toBe(text);
  });
});

describe('what was found', () => {
  it.each([
    [undefined, 'nothing'],
    [null, 'null'],
    [1.5, '1.5'],
    [true, 'true'],
    [10n, '10'],
    ['a', '"a"'],
    ['a'.repeat(80), `"${'a'.repeat(80)}"`],
    ['a'.repeat(81), `"${'a'.repeat(77)}…"`],
    [[1, 2], 'a list of 2'],
    [{}, 'an object'],
    [() => 1, 'a function'],
    [Symbol('a'), 'a symbol'],
  ])('is shown in few words: %o', (value, text) => {
    expect(show(value)).toBe(text);
  });
});
