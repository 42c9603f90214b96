/**
 * Goal: a law refuses exactly the arguments that its facts do not accept, however the check is carried out.
 * Method: random bounds of all four kinds, tried at the bounds, at the doubles beside them, and at random.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Argument, law, OutOfRange } from './law.ts';

const ABOUT = { id: 'double', title: 'Double', equation: 'y = 2 x', validFor: 'tests', leavesOut: 'the rest' };
const GIVES = { symbol: 'y', is: 'twice', unit: '1' };

const doubled = (bounds: Partial<Argument>) =>
  law(
    { ...ABOUT, args: { x: { symbol: 'x', is: 'a number', unit: '1', ...bounds } }, gives: GIVES, source: 'this test' },
    ({ x }) => 2 * (x as number),
  );

/** The double beside a number, found by halving steps from far away: slow, and without looking at bits. */
function beside(x: number, toward: 1 | -1): number {
  let step = Math.max(Math.abs(x), Number.MIN_VALUE);
  while (x + (toward * step) / 2 !== x && step / 2 > 0) step /= 2;
  return x + toward * step;
}

const number = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constantFrom(0, -0, 1, -1, Number.MIN_VALUE, -Number.MIN_VALUE, Number.MAX_VALUE, -Number.MAX_VALUE),
);

describe('a checked law', () => {
  it('accepts what lies inside its bounds and refuses the first double outside them', () => {
    const bound = fc.constantFrom('from', 'to', 'above', 'below');
    fc.assert(
      fc.property(fc.dictionary(bound, number, { maxKeys: 4 }), number, (bounds, stray) => {
        const { from = -Infinity, to = Infinity, above = -Infinity, below = Infinity } = bounds;
        const f = doubled(bounds);
        const tried = Object.values(bounds).flatMap((b) => [b, beside(b, 1), beside(b, -1)]);
        for (const x of [...tried, stray]) {
          if (Number.isFinite(x) && x >= from && x <= to && x > above && x < below) expect(f({ x })).toBe(2 * x);
          else expect(() => f({ x })).toThrow(OutOfRange);
        }
      }),
    );
  });

  it('refuses what is no finite number, and text that would pass for one', () => {
    const f = doubled({});
    for (const x of [Number.NaN, Infinity, -Infinity, undefined, null, '1']) {
      expect(() => f({ x: x as number })).toThrow(OutOfRange);
    }
  });

  it('names the first argument out of range, what was found, what is accepted, and the source', () => {
    const f = law(
      {
        ...ABOUT,
        args: {
          kind: { symbol: 'k', is: 'a kind', unit: 'name', oneOf: ['round', 'flat'] },
          a: { symbol: 'A', is: 'an area', unit: 'm²', above: 0, to: 2 },
          b: { symbol: 'B', is: 'a share', unit: '1', from: 0, below: 1 },
        },
        gives: GIVES,
        source: 'a book',
      },
      ({ a, b }) => a + b,
    );
    expect(f({ kind: 'flat', a: 2, b: 0 })).toBe(2);
    expect(() => f({ kind: 'flat', a: 0, b: 1 })).toThrow('double: A is 0; accepted: above 0 to 2 m² (a book)');
    expect(() => f({ kind: 'flat', a: 1, b: 1 })).toThrow('double: B is 1; accepted: from 0 below 1 (a book)');
    expect(() => f({ kind: 'bent' as 'flat', a: 1, b: 0 })).toThrow(
      'double: k is bent; accepted: round, flat (a book)',
    );
  });

  it('has its arithmetic without the check', () => {
    expect(doubled({ to: 1 }).bare({ x: 3 })).toBe(6);
  });
});
