/** House rules that can be read off the text. Patterns and examples are written so that this file keeps them too. */
import { isCode, isText, matches, type Rule } from './rule.ts';

const LONGEST_FILE = 400;
const ZERO = ['273', '15'].join('.');
const lines = (...all: string[]): string => all.join('\n');

export const textRules: readonly Rule[] = [
  {
    claim: '0 °C on the kelvin scale is written once',
    covers: (path) => isCode(path) && path !== 'packages/laws/src/constants.ts',
    faults: (page) => matches(page, /(?<![\d.])273[.]150*(?!\d)/g, (x) => `"${x}": use ZERO_CELSIUS of @longrein/laws`),
    broken: { path: 'a.ts', text: lines('const a = 20;', `const k = a + ${ZERO};`, `const f = ${ZERO}0;`), at: [2, 3] },
    kept: { path: 'a.ts', text: `const warm = ${ZERO}9 + 1${ZERO};` },
  },
  {
    claim: 'no work is left over and no test is left out',
    covers: isText,
    faults: (page) => [
      ...matches(page, /\b(?:T[O]DO|F[I]XME|X[X]X|H[A]CK)\b/g, (x) => `"${x}": do it, or leave it out`),
      ...matches(page, /\b(?:it|test|describe)[.](?:skip|only|todo)\b/g, (x) => `"${x}": every test runs everywhere`),
      ...matches(page, /\bexpect\((?:true|false)\)/g, (x) => `"${x}": a test that cannot fail tests nothing`),
    ],
    broken: {
      path: 'a.test.ts',
      text: lines(
        '// TO' + 'DO later',
        `it.${'skip'}('a')`,
        'ok',
        `expect(${'true'}).toBe(true)`,
        `describe.${'only'}(`,
      ),
      at: [1, 2, 4, 5],
    },
    kept: { path: 'a.test.ts', text: `it.${'skipIf'}(noBrowser)('a'); expect(${'trueNorth'}).toBe(1)` },
  },
  {
    claim: 'no path of one machine and no host of a package registry is written down',
    covers: (path) => isText(path) || path === 'package-lock.json',
    faults: (page) => [
      ...matches(page, /(?<![\w.~-])\/(?:wor[k]|roo[t])\/|\/tm[p]\/brief/g, (x) => `"${x}": a path of one machine`),
      ...matches(page, /\bregistr[y][.][\w-]+|"resolve[d]": *"\w+:/g, (x) => `"${x}": a host of a package registry`),
    ],
    broken: {
      path: 'a.md',
      text: lines(
        'See /wor' + 'k/main.',
        `"resolved": "${'https'}://x"`,
        'from registry' + '.example.org',
        '(/roo' + 't/a)',
      ),
      at: [1, 2, 3, 4],
    },
    kept: { path: 'a.md', text: lines('(docs/work/a.md)', '"resolved": "packages/laws"', 'a registry of parts.') },
  },
  {
    claim: `no file of code has more than ${LONGEST_FILE} lines`,
    covers: isCode,
    faults: ({ text }) => {
      const count = text.replace(/\n$/, '').split('\n').length;
      return count > LONGEST_FILE ? [{ line: count, says: `${count} lines: cut the file by subject` }] : [];
    },
    broken: { path: 'a.ts', text: '\n'.repeat(LONGEST_FILE + 1), at: [LONGEST_FILE + 1] },
    kept: { path: 'a.ts', text: '\n'.repeat(LONGEST_FILE) },
  },
];
