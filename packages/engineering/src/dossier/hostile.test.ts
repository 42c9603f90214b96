/**
 * Goal: no text, however large, deep, long or forged, makes the reader fall over, hang or print what it was given; and a
 * file of parts is read as strictly as a dossier.
 * Method: texts made to hurt, one kind at a time.
 */
import { describe, expect, it } from 'vitest';
import { FAULTS_MAX, type Fault, wordFault } from './faults.ts';
import { readDossier, readShelfFile } from './read.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { changed, PLAIN_TEXT } from './testing.ts';

function faultsOf(text: string): readonly Fault[] {
  const reading = readDossier(text, builtInShelf());
  return reading.ok ? [] : reading.faults;
}

describe('hostile text', () => {
  it('nested a million levels deep, hidden by quotes or comments, is refused without falling over', () => {
    for (const head of ['', '{"a":', '["\n', '/* " */', '["x"', "{'", '"\\u"']) {
      for (const bracket of ['[', '{"a":']) {
        const faults = faultsOf(head + bracket.repeat(300_000));
        expect(faults.length, head).toBe(1);
        expect(['DOSSIER_TOO_DEEP', 'DOSSIER_NOT_JSON']).toContain(faults[0]?.code);
      }
    }
  });

  it('larger than any dossier is refused', () => {
    expect(faultsOf(PLAIN_TEXT + ' '.repeat(2_000_000))).toMatchObject([
      { code: 'DOSSIER_TOO_LARGE', line: 1, column: 1 },
    ]);
  });

  it('with a hundred thousand faults lists some and counts the others, in good time', () => {
    const keys = Array.from({ length: 100_000 }, (_, i) => `"k${i}": 1`).join(',');
    const faults = faultsOf(changed(PLAIN_TEXT, '"name": "Plain",', `"name": "Plain", ${keys},`));
    expect(faults.length).toBe(FAULTS_MAX + 1);
    expect(faults.at(-1)).toMatchObject({ code: 'DOSSIER_MORE', found: `${100_000 - FAULTS_MAX} more faults` });
    const texts = Array.from({ length: 50_000 }, () => '"\\u0000"').join(',');
    const odd = faultsOf(`{ "${'k'.repeat(500_000)}": [${texts}] }`);
    expect(odd.length).toBe(FAULTS_MAX + 1);
    expect(odd.at(-1)?.found).toBe(`${50_000 - FAULTS_MAX} more faults`);
  });

  it('cannot forge or garble the message that quotes it', () => {
    const first = faultsOf('{ "format": 1, "a\u202e\u200b\u2028b": 1 }').find((f) => f.code === 'DOSSIER_KEY_UNKNOWN');
    expect(first?.found).toBe('the key "a\\u{202e}\\u{200b}\\u{2028}b"');
    expect(wordFault(first as Fault)).not.toMatch(/[\u202e\u200b\u2028]/);
  });

  it('with a key of a hundred thousand letters gets a message of a few', () => {
    const [first] = faultsOf(`{ "${'x'.repeat(100_000)}": 1 }`);
    expect(wordFault(first as Fault).length).toBeLessThan(1000);
  });
});

describe('a file of parts', () => {
  const SERVO = {
    kind: 'servo',
    id: 'servo-plain',
    title: 'plain servo',
    stallCurrent: '1.2 A ± 10 %',
    runCurrent: '0.3 A ± 20 %',
    idleCurrent: '8 mA ± 20 %',
    torque: '0.3 N·m ± 20 %',
    mass: '40 g ± 2 g',
  };
  const faultsIn = (...parts: readonly object[]) => {
    const reading = readShelfFile(JSON.stringify({ format: 1, parts }, null, 2));
    return reading.ok ? [] : reading.faults;
  };

  it('is read where nothing is wrong with it', () => {
    expect(faultsIn(SERVO)).toEqual([]);
  });

  it.each([
    ['a part without an id', [{ ...SERVO, id: undefined }], 'DOSSIER_KEY_MISSING', '/parts/0/id', 'Dossiers name'],
    ['an id used twice', [SERVO, SERVO], 'DOSSIER_VALUE', '/parts/1/id', 'a second time'],
    ['an id of capitals', [{ ...SERVO, id: 'Servo' }], 'DOSSIER_VALUE', '/parts/0/id', 'lower-case words'],
    ['a part of no kind', [{ ...SERVO, kind: 'sevro' }], 'DOSSIER_VALUE', '/parts/0/kind', 'Perhaps "servo"'],
    ['a key of another part', [{ ...SERVO, gain: '2 dBi' }], 'DOSSIER_KEY_UNKNOWN', '/parts/0/gain', 'runCurrent'],
    ['figures that clash', [{ ...SERVO, runCurrent: '2 A' }], 'VEHICLE_CONTRADICTION', '/parts/0/runCurrent', '1.2 A'],
    ['no part at all', [], 'DOSSIER_VALUE', '/parts', 'at least 1 value'],
  ])('with %s is refused', (_, parts, code, at, says) => {
    const faults = faultsIn(...parts);
    const found = faults.find((f) => f.code === code && f.at === at);
    expect(found, faults.map(wordFault).join('\n')).toBeDefined();
    const sentence = found === undefined ? '' : wordFault(found);
    expect(sentence.replace('dossiers', 'Dossiers')).toContain(says);
    expect(found?.line).toBeGreaterThan(1);
  });

  it('is refused where it is no object, and says what it should be', () => {
    const reading = readShelfFile('[]');
    expect(reading).toMatchObject({ ok: false, faults: [{ code: 'DOSSIER_TYPE', at: '', line: 1, column: 1 }] });
  });
});
