/**
 * Goal: whoever breaks a dossier is told where, what was found, what is accepted and what to do.
 * Method: one sound dossier, broken in one place at a time. The expected line is that on which the broken words stand,
 * found by looking for them, without any JSON pointer.
 */
import { describe, expect, it } from 'vitest';
import { BROKEN } from './broken.fixture.ts';
import { ERROR_CODES, FAULTS_MAX, type Fault, fault, inOrder, wordFault } from './faults.ts';
import { readDossier } from './read.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { changed, PLAIN_TEXT } from './testing.ts';

function faultsOf(text: string): readonly Fault[] {
  const reading = readDossier(text, builtInShelf());
  return reading.ok ? [] : reading.faults;
}

const lineOf = (text: string, words: string) => text.slice(0, text.indexOf(words)).split('\n').length;

describe('a broken dossier', () => {
  it('is sound before it is broken', () => {
    expect(faultsOf(PLAIN_TEXT).map(wordFault)).toEqual([]);
  });

  it.each(Object.entries(BROKEN))('with %s is refused where it is broken', (_, { from, to, code, at, line, says }) => {
    const text = changed(PLAIN_TEXT, from, to);
    const faults = faultsOf(text);
    const found = faults.find((f) => f.code === code && f.at === at);
    expect(found, faults.map(wordFault).join('\n')).toBeDefined();
    expect(found?.line).toBe(line === undefined ? lineOf(PLAIN_TEXT, from) : lineOf(text, line));
    expect(found?.column).toBeGreaterThan(0);
    const sentence = found === undefined ? '' : wordFault(found);
    for (const words of says) expect(sentence).toContain(words);
  });

  it('is told of the decimal comma in one sentence', () => {
    const text = changed(PLAIN_TEXT, '"3.1 A ± 10 %"', '"3,2 A"');
    expect(faultsOf(text).map(wordFault)).toEqual([
      'At /donor/drive/motor/stallCurrent/value (line 32, column 27): found "3,2 A". Accepted: a decimal point. ' +
        'Write a decimal point: 3.2 A. [QUANTITY_COMMA]',
    ]);
  });

  it('has all its faults named at once, from top to bottom', () => {
    const text = changed(
      changed(changed(PLAIN_TEXT, '"60 m"', '"60 kg"'), '"24 V"', '"24 A"'),
      '"1.62 kg ± 5 g"',
      '"0 g"',
    );
    expect(faultsOf(text).map((f) => f.at)).toEqual([
      '/donor/body/mass',
      '/conversion/parts/bridge/voltageMax',
      '/link/distance',
    ]);
  });

  it.each([
    ['\r\n', 'of two characters'],
    ['\r', 'of a carriage return'],
  ])('has the same lines and columns with line ends %j %s', (end) => {
    const text = changed(PLAIN_TEXT, '"60 m"', '"60 kg"');
    const place = ({ line, column }: Fault) => [line, column];
    expect(faultsOf(text.replaceAll('\n', end)).map(place)).toEqual(faultsOf(text).map(place));
  });

  it('has the same lines and columns behind a byte order mark, with which it is read as well', () => {
    expect(faultsOf(`\uFEFF${PLAIN_TEXT}`)).toEqual([]);
    const text = changed(PLAIN_TEXT, '"60 m"', '"60 kg"');
    expect(faultsOf(`\uFEFF${text}`)).toEqual(faultsOf(text));
    expect(faultsOf(`\uFEFF\uFEFF${text}`)[0]?.todo).toContain('invisible');
  });

  it.each(['', ' \n', '[]', '"dossier"', '17', 'null', '[{}]', 'true'])(
    'that is %j is refused at its first character',
    (text) => {
      const [first] = faultsOf(text);
      expect(first).toMatchObject({ at: '', accepted: expect.stringContaining('an object') });
      expect(first?.line).toBeGreaterThan(0);
    },
  );
});

describe('the catalogue', () => {
  it('has each code once, with a meaning and an advice that are sentences', () => {
    expect(new Set(ERROR_CODES.map(({ code }) => code)).size).toBe(ERROR_CODES.length);
    for (const { code, meaning, todo } of ERROR_CODES) {
      expect(code).toMatch(/^(?:DOSSIER|PART|VEHICLE|FIT|QUANTITY)_[A-Z_]+$/);
      expect(meaning, code).toMatch(/^[A-Z].+\.$/);
      expect(todo, code).toMatch(/^[A-Z].+\.$/);
    }
  });

  it('lists faults in the order of their places and never more than it says', () => {
    const many = Array.from({ length: 150 }, (_, i) => ({
      ...fault('DOSSIER_TYPE', `/${i}`, 'x', 'y'),
      line: 150 - i,
      column: 1,
    }));
    const listed = inOrder(many);
    expect(listed.slice(0, FAULTS_MAX).map((f) => f.line)).toEqual(Array.from({ length: FAULTS_MAX }, (_, i) => i + 1));
    expect(listed.at(-1)?.found).toBe('50 more faults');
    expect(inOrder(many.slice(0, 2)).length).toBe(2);
  });
});
