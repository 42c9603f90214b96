/**
 * Goal: one value has one canonical text, the one RFC 8785 prescribes, and what has none is refused at its place.
 * Method: the examples of RFC 8785 (section 3.2 and appendix B), quoted from memory; the reading engine as a twin for
 * random values; texts and keys with no canonical form.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CANONICAL_DEPTH_MAX, canonicalJson } from './canonical.ts';
import { WireError, type WireErrorCode } from './errors.ts';

function double(bits: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
}

function refusal(value: unknown): { code: WireErrorCode; at: string } {
  try {
    canonicalJson(value);
  } catch (error) {
    if (error instanceof WireError) return { code: error.fault.code, at: error.fault.at };
    throw error;
  }
  throw new Error('was not refused');
}

/** Rebuilds a value with the keys of every object in reverse order. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, item]) => [key, reversed(item)])
      .reverse(),
  );
}

describe('numbers after RFC 8785, appendix B (from memory)', () => {
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('the double %s is written %s', (bits, text) => {
    expect(canonicalJson(double(bits))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])('the double %s is refused', (bits) => {
    expect(refusal(double(bits))).toEqual({ code: 'WIRE_NON_FINITE', at: '' });
  });
});

describe('objects and texts after RFC 8785, section 3.2 (from memory)', () => {
  it('writes the sample of section 3.2.2 as section 3.2.3 prints it', () => {
    const sample = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    expect(canonicalJson(JSON.parse(sample))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('orders keys by UTF-16 code units, so that a surrogate pair comes before U+FB33', () => {
    const sample = String.raw`{"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh",
      "1":"One","\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control",
      "\u00f6":"Latin Small Letter O With Diaeresis"}`;
    // The values are read from the text: reading it back as an object would move the key "1" to the front.
    const written = [...canonicalJson(JSON.parse(sample)).matchAll(/:"([^"]*)"/g)].map((match) => match[1]);
    expect(written).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });
});

describe('any value', () => {
  // The unit 'binary' is any whole character; half surrogate pairs have a test of their own.
  const value = fc.jsonValue({ maxDepth: 5, stringUnit: 'binary' });

  it('is read back as itself', () => {
    fc.assert(
      fc.property(value, (given) => {
        // The engine's own writer is the twin: it differs only in the order of keys and the sign of zero.
        expect(JSON.parse(canonicalJson(given))).toEqual(JSON.parse(JSON.stringify(given)));
      }),
    );
  });

  it('has the same text whatever order its keys were given in', () => {
    fc.assert(fc.property(value, (given) => canonicalJson(reversed(given)) === canonicalJson(given)));
  });

  it('keeps its text when it is read and written again', () => {
    fc.assert(
      fc.property(value, (given) => {
        const text = canonicalJson(given);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
    );
  });
});

describe('a value without canonical text', () => {
  it.each([
    ['half a surrogate pair in a text', { a: ['\ud83d'] }, 'WIRE_LONE_SURROGATE', '/a/0'],
    ['the other half in a key', { '\ude00': 1 }, 'WIRE_LONE_SURROGATE', '/\ude00'],
    ['undefined', { a: undefined }, 'WIRE_NOT_DATA', '/a'],
    // biome-ignore lint/suspicious/noSparseArray: the hole is the case.
    ['a hole in a list', [1, , 2], 'WIRE_NOT_DATA', '/1'],
    ['a big integer', { 'a/b~c': 1n }, 'WIRE_NOT_DATA', '/a~1b~0c'],
    ['a map', new Map([['a', 1]]), 'WIRE_NOT_DATA', ''],
    ['a day', { day: new Date(0) }, 'WIRE_NOT_DATA', '/day'],
    ['a function', [() => 1], 'WIRE_NOT_DATA', '/0'],
  ])('is refused at its place: %s', (_case, value, code, at) => {
    expect(refusal(value)).toEqual({ code, at });
  });

  it('is refused when it contains itself', () => {
    const loop: unknown[] = [];
    loop.push(loop);
    expect(refusal(loop).code).toBe('WIRE_TOO_DEEP');
  });

  it('is refused from the first level beyond the bound on', () => {
    const nested = (levels: number): unknown => JSON.parse('['.repeat(levels) + ']'.repeat(levels));
    expect(canonicalJson(nested(CANONICAL_DEPTH_MAX))).toHaveLength(2 * CANONICAL_DEPTH_MAX);
    expect(refusal(nested(CANONICAL_DEPTH_MAX + 1)).code).toBe('WIRE_TOO_DEEP');
  });
});
