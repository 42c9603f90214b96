/** Outputs that the authors of the generators, and those who rebuilt them, have published. */
import { type Checks, checkSubject } from '@longrein/laws/check';
import { SplitMix64, Stream } from './random.ts';

/** A whole number below 2⁵³ must come out exactly; the allowance is that of the comparison. */
const EXACT = 1e-12;

function wordOf(n: number): number {
  const generator = new Stream(1, 2, 3, 4);
  let word = 0;
  for (let i = 0; i < n; i++) word = generator.word();
  return word;
}

function halvesOf(seed: number, n: number): SplitMix64 {
  const generator = new SplitMix64(0, seed);
  for (let i = 0; i < n; i++) generator.next();
  return generator;
}

/** The second output is zero, which no relative comparison can hold; the sequence test covers it. */
const XOSHIRO = [
  [1, 11520],
  [3, 5927040],
  [4, 70819200],
  [5, 2031721883],
  [6, 1637235492],
  [7, 1287239034],
  [8, 3734860849],
  [9, 3729100597],
  [10, 4258142804],
] as const;

const SPLITMIX = [
  [1234567, 1, 0x599ed017, 0xfb08fc85],
  [1234567, 2, 0x2c73f084, 0x58540fa5],
  [1234567, 3, 0x883ebce5, 0xa3f27c77],
  [1234567, 4, 0x3fbef740, 0xe9177b3f],
  [0, 1, 0xe220a839, 0x7b1dcdaf],
  [0, 2, 0x6e789e6a, 0xa1b965f4],
  [0, 3, 0x06c45d18, 0x8009454f],
  [0, 4, 0xf88bb8a8, 0x724c81ec],
] as const;

export const generatorChecks: readonly Checks[] = [
  checkSubject(
    'stream',
    XOSHIRO.map(([n, expected]) => ({
      case: `xoshiro128** 1.1 from state 1, 2, 3, 4: output ${n}`,
      source: "Blackman & Vigna, xoshiro128** 1.1, output of the authors' code as kept in the rand_xoshiro test suite",
      kind: 'published',
      expected,
      allowed: EXACT,
      ours: () => wordOf(n),
    })),
  ),
  checkSubject(
    'stream',
    SPLITMIX.flatMap(([seed, n, high, low]) => {
      const facts = {
        source: 'Steele, Lea & Flood 2014, SplitMix64, outputs kept in several test suites',
        kind: 'published',
        allowed: EXACT,
      } as const;
      const output = `SplitMix64 from ${seed}: output ${n}`;
      return [
        { ...facts, case: `${output}, upper half`, expected: high, ours: () => halvesOf(seed, n).high },
        { ...facts, case: `${output}, lower half`, expected: low, ours: () => halvesOf(seed, n).low },
      ];
    }),
  ),
];
