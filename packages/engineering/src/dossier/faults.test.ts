/**
 * Goal: whoever breaks a dossier is told where, what was found, what is accepted and what to do.
 * Method: one sound dossier, broken in one place at a time. The expected line is that on which the broken words stand,
 * found by looking for them, without any JSON pointer.
 */
import { describe, expect, it } from 'vitest';
import { ERROR_CODES, type ErrorCode, FAULTS_MAX, type Fault, fault, inOrder, wordFault } from './faults.ts';
import { readDossier, readShelfFile } from './read.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { changed, PLAIN_TEXT } from './testing.ts';

function faultsOf(text: string): readonly Fault[] {
  const reading = readDossier(text, builtInShelf());
  return reading.ok ? [] : reading.faults;
}

const lineOf = (text: string, words: string) => text.slice(0, text.indexOf(words)).split('\n').length;

interface Case {
  readonly from: string;
  readonly to: string;
  readonly code: ErrorCode;
  readonly at: string;
  /** Words on the expected line; absent: those put in. */
  readonly line?: string;
  readonly says: readonly string[];
}

const ROWS: Readonly<Record<string, Case>> = {
  'a decimal comma': {
    from: '"3.1 A ± 10 %"',
    to: '"3,2 A"',
    code: 'QUANTITY_COMMA',
    at: '/donor/drive/motor/stallCurrent/value',
    says: ['found "3,2 A"', 'Write a decimal point: 3.2 A.'],
  },
  'a number without its unit': {
    from: '"0.9 Ω ± 15 %"',
    to: '"0.9"',
    code: 'QUANTITY_UNIT_MISSING',
    at: '/donor/drive/motor/resistance',
    says: ['"0.9"', 'Write the unit: 0.9 Ω.'],
  },
  'a bare number where a quantity stands': {
    from: '"0.9 Ω ± 15 %"',
    to: '0.9',
    code: 'DOSSIER_TYPE',
    at: '/donor/drive/motor/resistance',
    says: ['found 0.9', 'Write a text with its unit: "0.9 Ω"'],
  },
  'a quantity without quotes': {
    from: '"0.9 Ω ± 15 %"',
    to: '0.9 Ω ± 15 %',
    code: 'DOSSIER_NOT_JSON',
    at: '/donor/drive/motor',
    says: ['Put a quantity in double quotes: "0.9 Ω ± 15 %".'],
  },
  'a unit of something else': {
    from: '"380 mm ± 2 mm"',
    to: '"380 g"',
    code: 'QUANTITY_DIMENSION',
    at: '/donor/body/length',
    says: ['"380 g"', 'mm'],
  },
  'a unit nobody knows': {
    from: '"24 V"',
    to: '"24 Vlt"',
    code: 'QUANTITY_UNIT_UNKNOWN',
    at: '/conversion/parts/bridge/voltageMax',
    says: ['24 Vlt', 'V'],
  },
  'no mass': {
    from: '"1.62 kg ± 5 g"',
    to: '"0 kg"',
    code: 'QUANTITY_LIMITS',
    at: '/donor/body/mass',
    says: ['above'],
  },
  'a mass beyond any toy': {
    from: '"1.62 kg ± 5 g"',
    to: '"1e9 kg"',
    code: 'QUANTITY_LIMITS',
    at: '/donor/body/mass',
    says: ['up to 50 kg'],
  },
  'a mass beyond any number': {
    from: '"1.62 kg ± 5 g"',
    to: '"1e999 kg"',
    code: 'QUANTITY_NUMBER',
    at: '/donor/body/mass',
    says: ['smaller number'],
  },
  'a motor without resistance': {
    from: '"0.9 Ω ± 15 %"',
    to: '"0 Ω"',
    code: 'QUANTITY_LIMITS',
    at: '/donor/drive/motor/resistance',
    says: ['"0 Ω"', 'above'],
  },
  'a negative gear ratio': {
    from: '"24 ± 2 %"',
    to: '"-24"',
    code: 'QUANTITY_LIMITS',
    at: '/donor/drive/gear/ratio',
    says: ['above 0.5'],
  },
  'a doubt wider than all that is possible': {
    from: '"24 ± 2 %"',
    to: '"24 ± 1e300"',
    code: 'QUANTITY_LIMITS',
    at: '/donor/drive/gear/ratio',
    says: ['doubt', '0.5 … 2000'],
  },
  'a negative doubt': {
    from: '"24 ± 2 %"',
    to: '"24 ± -2 %"',
    code: 'QUANTITY_DOUBT_NEGATIVE',
    at: '/donor/drive/gear/ratio',
    says: ['without a sign'],
  },
  'a doubt in another unit': {
    from: '"95 mm ± 1 mm"',
    to: '"95 mm ± 1 g"',
    code: 'QUANTITY_DOUBT_UNIT',
    at: '/donor/body/wheelDiameter',
    says: ['%'],
  },
  'a range from high to low': {
    from: '"8 … 22 °C"',
    to: '"22 … 8 °C"',
    code: 'QUANTITY_RANGE_REVERSED',
    at: '/service/day/usual',
    says: ['8 … 22 °C'],
  },
  'an empty quantity': { from: '"60 m"', to: '""', code: 'QUANTITY_EMPTY', at: '/link/distance', says: ['3.2 m'] },
  'a unit alone': { from: '"60 m"', to: '"m"', code: 'QUANTITY_NUMBER_MISSING', at: '/link/distance', says: ['3.2 m'] },
  'two doubts': {
    from: '"60 m"',
    to: '"60 m ± 1 ± 2"',
    code: 'QUANTITY_FORM',
    at: '/link/distance',
    says: ['one doubt'],
  },
  'a story instead of a quantity': {
    from: '"60 m"',
    to: `"${'about as far as the pond '.repeat(20)}"`,
    code: 'QUANTITY_TOO_LONG',
    at: '/link/distance',
    says: ['3.2 m'],
  },
  'a misspelt key': {
    from: '"stallVoltage"',
    to: '"stalVoltage"',
    code: 'DOSSIER_KEY_UNKNOWN',
    at: '/donor/drive/motor/stalVoltage',
    says: ['"stalVoltage"', 'noLoadVoltage', 'Perhaps "stallVoltage" is meant.'],
  },
  'a key named like the innards of the language': {
    from: '"name": "Plain",',
    to: '"name": "Plain", "__proto__": { "mass": 1 },',
    code: 'DOSSIER_KEY_UNKNOWN',
    at: '/__proto__',
    says: ['"__proto__"', 'donor'],
  },
  'a key inside a quantity': {
    from: '"basis": "label"',
    to: '"basiss": "label"',
    code: 'DOSSIER_KEY_UNKNOWN',
    at: '/donor/drive/motor/stallCurrent/basiss',
    says: ['value, basis, remark', 'Perhaps "basis"'],
  },
  'a quantity object without its value': {
    from: '"value": "3.1 A ± 10 %", "basis"',
    to: '"basis"',
    code: 'DOSSIER_KEY_MISSING',
    at: '/donor/drive/motor/stallCurrent/value',
    line: '"stallCurrent"',
    says: ['found nothing', 'a text in double quotes'],
  },
  'a basis of no kind': {
    from: '"basis": "label"',
    to: '"basis": "guess"',
    code: 'DOSSIER_VALUE',
    at: '/donor/drive/motor/stallCurrent/basis',
    says: ['"guess"', 'measured, label, estimate'],
  },
  'a mass left out': {
    from: '"mass": "1.62 kg ± 5 g",',
    to: '',
    code: 'DOSSIER_KEY_MISSING',
    at: '/donor/body/mass',
    line: '"body"',
    says: ['kg', 'Kitchen scale'],
  },
  'a whole part of the file left out': {
    from: '"driving": { "reaction": "0.8 … 1.4 s" },',
    to: '"driving": null,',
    code: 'DOSSIER_TYPE',
    at: '/driving',
    says: ['null', 'Leave the key out'],
  },
  'a list where an object stands': {
    from: '"settings": { "dutyCeiling": "80 %" }',
    to: '"settings": ["80 %"]',
    code: 'DOSSIER_TYPE',
    at: '/conversion/settings',
    says: ['a list of 1', 'an object'],
  },
  'a list where a quantity stands': {
    from: '"60 m"',
    to: '["60 m"]',
    code: 'DOSSIER_TYPE',
    at: '/link/distance',
    says: ['a list of 1', 'a quantity such as "3.2 m ± 5 %"'],
  },
  'half a wheel': {
    from: '"wheels": 2, "driven": false',
    to: '"wheels": 1.5, "driven": false',
    code: 'DOSSIER_TYPE',
    at: '/donor/axles/0/wheels',
    says: ['1.5', 'a whole number'],
  },
  'more cells than a pack has': {
    from: '"cells": 6',
    to: '"cells": 1e300',
    code: 'DOSSIER_VALUE',
    at: '/donor/pack/cells',
    says: ['up to 24'],
  },
  'a chemistry of no cell': {
    from: '"chemistry": "nimh"',
    to: '"chemistry": "nimhh"',
    code: 'DOSSIER_VALUE',
    at: '/donor/pack/chemistry',
    says: ['lipo', 'Perhaps "nimh"'],
  },
  'a steering of no kind': {
    from: '"kind": "on-off"',
    to: '"kind": "tiller"',
    code: 'DOSSIER_VALUE',
    at: '/donor/steering/kind',
    says: ['"tiller"', 'on-off, servo, skid'],
  },
  'a steering without a kind': {
    from: '"kind": "on-off", ',
    to: '',
    code: 'DOSSIER_KEY_MISSING',
    at: '/donor/steering/kind',
    line: '"steering"',
    says: ['on-off, servo, skid'],
  },
  'a key of another steering': {
    from: '"kind": "on-off", "clutch": true',
    to: '"kind": "skid"',
    code: 'DOSSIER_KEY_UNKNOWN',
    at: '/donor/steering/angle',
    says: ['the key "angle"', 'Accepted: kind.'],
  },
  'a part that is not on the shelf': {
    from: '"fuse-mini-3a"',
    to: '"fuse-mini-33a"',
    code: 'PART_UNKNOWN',
    at: '/conversion/parts/fuse',
    says: ['"fuse-mini-33a"', 'fuse-mini-20a', 'Perhaps "fuse-mini-3a"'],
  },
  'a part of another kind': {
    from: '"fuse-mini-3a"',
    to: '"aerial-chip"',
    code: 'PART_KIND',
    at: '/conversion/parts/fuse',
    says: ['which is an aerial', 'fuse-mini-20a'],
  },
  'a part of another kind in place': {
    from: '"kind": "bridge"',
    to: '"kind": "modem"',
    code: 'PART_KIND',
    at: '/conversion/parts/bridge/kind',
    says: ['a modem', 'a bridge'],
  },
  'a part in place without a figure it needs': {
    from: '"mass": "12 g ± 1 g",',
    to: '',
    code: 'DOSSIER_KEY_MISSING',
    at: '/conversion/parts/bridge/mass',
    line: '"bridge": {',
    says: ['a quantity such as "3.2 g ± 5 %"', 'Kitchen scale'],
  },
  'a bridge without the figure of its type': {
    from: '"type": "mosfet"',
    to: '"type": "bipolar"',
    code: 'DOSSIER_KEY_MISSING',
    at: '/conversion/parts/bridge/dropOneAmpere',
    line: '"bridge": {',
    says: ['3.2 V'],
  },
  'a number where a part stands': {
    from: '"fuse-mini-3a"',
    to: '3',
    code: 'DOSSIER_TYPE',
    at: '/conversion/parts/fuse',
    says: ['found 3', 'the id of a fuse on the shelf, or a fuse described in place'],
  },
  'a surface it cannot serve': {
    from: '"surface": "carpet"',
    to: '"surface": "carpt"',
    code: 'DOSSIER_VALUE',
    at: '/service/surfaces/1/surface',
    says: ['gravel, loose', 'Perhaps "carpet"'],
  },
  'a day that does not exist': {
    from: '"2024-02-29"',
    to: '"2023-02-29"',
    code: 'DOSSIER_VALUE',
    at: '/readings/0/date',
    says: ['a date such as'],
  },
  'a reading of nothing known': {
    from: '"of": "motor.resistance"',
    to: '"of": "motor.resistence"',
    code: 'DOSSIER_VALUE',
    at: '/readings/0/of',
    says: ['Perhaps "motor.resistance"'],
  },
  'a reading in another unit': {
    from: '"value": "0.95 Ω ± 5 %"',
    to: '"value": "0.95 V"',
    code: 'QUANTITY_DIMENSION',
    at: '/readings/0/value',
    says: ['Ω'],
  },
  'a fit of what the vehicle has not': {
    from: '"gear.efficiency"]',
    to: '"servo.torque"]',
    code: 'FIT_INVALID',
    at: '/fits/0/quantities/1',
    says: ['"servo.torque"', 'this vehicle'],
  },
  'a fit that names one quantity twice': {
    from: '"gear.efficiency"]',
    to: '"motor.resistance"]',
    code: 'FIT_INVALID',
    at: '/fits/0/quantities/1',
    says: ['a second time'],
  },
  'correlations that are not symmetric': {
    from: '[-0.4, 1]]',
    to: '[0.4, 1]]',
    code: 'FIT_INVALID',
    at: '/fits/0/correlation',
    line: '"correlation"',
    says: ['is not symmetrical'],
  },
  'a format of the future': {
    from: '"format": 1',
    to: '"format": 99',
    code: 'DOSSIER_FORMAT',
    at: '/format',
    says: ['99', 'Use a program that reads it.'],
  },
  'a format of no time': {
    from: '"format": 1',
    to: '"format": "one"',
    code: 'DOSSIER_FORMAT',
    at: '/format',
    says: ['Write 1.'],
  },
  'no format': {
    from: '"format": 1,',
    to: '',
    code: 'DOSSIER_KEY_MISSING',
    at: '/format',
    line: '{',
    says: ['Accepted: 1'],
  },
  'a comma too many': {
    from: '"dutyCeiling": "80 %" }',
    to: '"dutyCeiling": "80 %", }',
    code: 'DOSSIER_NOT_JSON',
    at: '/conversion/settings',
    says: ['Take away the comma'],
  },
  'a key written twice': {
    from: '"clutch": true',
    to: '"clutch": true, "clutch": false',
    code: 'DOSSIER_DUPLICATE_KEY',
    at: '/donor/steering/clutch',
    says: ['a second time'],
  },
  'a number no computer holds': {
    from: '"cycles": 40',
    to: '"cycles": 1e999',
    code: 'DOSSIER_VALUE',
    at: '/packs/0/cycles',
    says: ['1e999', 'finite'],
  },
  'half a character': {
    from: '"blue one"',
    to: '"blue \\ud83d"',
    code: 'DOSSIER_VALUE',
    at: '/packs/0/label',
    says: ['U+D83D'],
  },
  'a character that acts on a terminal': {
    from: '"blue one"',
    to: '"\\u001b[2Jblue"',
    code: 'DOSSIER_VALUE',
    at: '/packs/0/label',
    says: ['U+001B'],
  },
};

describe('a broken dossier', () => {
  it('is sound before it is broken', () => {
    expect(faultsOf(PLAIN_TEXT).map(wordFault)).toEqual([]);
  });

  it.each(Object.entries(ROWS))('with %s is refused where it is broken', (_, { from, to, code, at, line, says }) => {
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
