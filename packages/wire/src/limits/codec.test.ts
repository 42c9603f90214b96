/**
 * Goal: a record is read exactly as it was made or not at all, whatever happened to its text, and reading never throws.
 * Method: round trips; every single changed character and every truncation of one record; random texts and values;
 * records whose checksum is true but whose content is not (made by a program of other convictions), one for each code.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../canonical.ts';
import { WireError, type WireErrorCode } from '../errors.ts';
import { makeKeyPair, sha256Hex } from '../keys.ts';
import { sealOf } from '../seal.ts';
import { decodeLimits, encodeLimits, limitsFaults } from './codec.ts';
import { LIMIT_FACTS, LIMIT_NAMES } from './limit-facts.ts';
import { MODEL_FACTS, MODEL_NAMES } from './model-facts.ts';
import { LIMITS_BYTES_MAX, type LimitsDraft } from './record.ts';
import { sampleDraft } from './sample.fixture.ts';

const owner = makeKeyPair(new Uint8Array(32).fill(7));
const stranger = makeKeyPair(new Uint8Array(32).fill(8));

/** A draft with one place changed, deep down; undefined takes the entry out. */
function changed(path: readonly (string | number)[], value: unknown): LimitsDraft {
  const draft = sampleDraft();
  let here = draft as unknown as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) here = here[key] as Record<string | number, unknown>;
  const last = path.at(-1) ?? '';
  if (value === undefined) delete here[last];
  else here[last] = value;
  return draft;
}

/** The text of anything under a true checksum, whatever the schema thinks of it. */
const forged = (content: object, secretKey?: string): string =>
  canonicalJson({ ...content, ...sealOf(content, secretKey) });

/** A text of the right kind and version with something in it that no checksum can be taken of. */
const unsealed = (value: string): string => `{"checksum":"","kind":"longrein-limits","version":1,"x":${value}}`;

function refusal(text: string, publicKey?: string): { code: WireErrorCode; at: string } | 'accepted' {
  const decoded = decodeLimits(text, publicKey === undefined ? {} : { publicKey });
  return decoded.ok ? 'accepted' : { code: decoded.fault.code, at: decoded.fault.at };
}

describe('a record as it was made', () => {
  it('is read back with all its content, its checksum and no signature', () => {
    const draft = sampleDraft();
    const decoded = decodeLimits(encodeLimits(draft));
    expect(decoded).toEqual({ ok: true, record: { ...draft, checksum: sha256Hex(canonicalJson(draft)) } });
  });

  it('is read by who has the owner’s key, and by who has none', () => {
    const text = encodeLimits(sampleDraft(), owner.secretKey);
    expect(refusal(text, owner.publicKey)).toBe('accepted');
    expect(refusal(text)).toBe('accepted');
  });

  it('has one text, whatever order its entries were given in', () => {
    const draft = sampleDraft();
    const turned = Object.fromEntries(Object.entries(draft).reverse()) as unknown as LimitsDraft;
    expect(encodeLimits(turned, owner.secretKey)).toBe(encodeLimits(draft, owner.secretKey));
  });

  it('carries any values within their bounds unharmed, to the last bit', () => {
    const within = ([least, most]: readonly [number, number]) => fc.double({ min: least, max: most, noNaN: true });
    const values = fc.record(Object.fromEntries(LIMIT_NAMES.map((name) => [name, within(LIMIT_FACTS[name].bounds)])));
    fc.assert(
      fc.property(values, fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' }), (given, vehicle) => {
        const draft = { ...sampleDraft(), vehicle };
        for (const name of LIMIT_NAMES) (draft.limits[name] as { value: number }).value = (given[name] ?? 0) + 0;
        fc.pre(draft.limits.crawlSpeed.value <= draft.limits.speedCap.value);
        const decoded = decodeLimits(encodeLimits(draft));
        expect(decoded.ok && decoded.record).toMatchObject(draft);
      }),
    );
  });

  it('fits its bound on bytes even with the longest texts, tables and numbers', () => {
    const draft = sampleDraft() as unknown as {
      vehicle: string;
      limits: Record<string, { value: number; sum: string; quantile: number; meaning: string }>;
      model: Record<string, { value: unknown; low?: number; high?: number }> & { openCircuit: { value: unknown } };
    };
    // A character of three bytes is the longest for one UTF-16 code unit; 24 characters are the longest number here.
    draft.vehicle = '€'.repeat(120);
    for (const limit of Object.values(draft.limits))
      Object.assign(limit, { sum: 's'.repeat(80), meaning: '€'.repeat(200) });
    for (const name of MODEL_NAMES) {
      const [least, most] = MODEL_FACTS[name].bounds;
      const value = least + (most - least) / 3;
      if (name !== 'openCircuit') draft.model[name] = { ...draft.model[name], value, low: value, high: value };
    }
    const points = Array.from({ length: 101 }, (_, i) => [i / 100, 1.1111111111111112 + i * 0.0123456789012345]);
    draft.model.openCircuit.value = points;
    const text = encodeLimits(draft as unknown as LimitsDraft, owner.secretKey);
    expect(Buffer.byteLength(text)).toBeLessThan(LIMITS_BYTES_MAX);
    expect(refusal(text, owner.publicKey)).toBe('accepted');
  });
});

describe('a record whose text was changed', () => {
  const text = encodeLimits(sampleDraft(), owner.secretKey);

  it('is refused at every length shorter than its own', () => {
    for (let length = 0; length < text.length; length += 1) {
      expect(refusal(text.slice(0, length)), `cut to ${length} characters`).not.toBe('accepted');
    }
  });

  it('is refused when any one character is another, with or without the owner’s key at hand', () => {
    // Each place meets a near miss (the next character) and one of the characters that JSON might forgive.
    const forgiven = [' ', '0', '"', '\\', 'é', '\ud800'];
    for (let place = 0; place < text.length; place += 1) {
      const next = String.fromCharCode(text.charCodeAt(place) + 1);
      const other = forgiven[place % forgiven.length] ?? ' ';
      for (const character of [next, other]) {
        if (character === text[place]) continue;
        const mutant = text.slice(0, place) + character + text.slice(place + 1);
        expect(refusal(mutant), `${character} at ${place}`).not.toBe('accepted');
      }
    }
  });

  it('is refused when something is put in, taken out or exchanged anywhere', () => {
    const place = fc.nat({ max: text.length });
    fc.assert(
      fc.property(place, place, fc.string({ maxLength: 3, unit: 'binary' }), (from, to, put) => {
        const mutant = text.slice(0, Math.min(from, to)) + put + text.slice(Math.max(from, to));
        fc.pre(mutant !== text);
        expect(refusal(mutant, owner.publicKey)).not.toBe('accepted');
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    ['a space', (t: string) => t.replace('{', '{ ')],
    ['a line end', (t: string) => `${t}\n`],
    ['another way of writing a number', (t: string) => t.replace('"value":1.4', '"value":1.40')],
    ['an escaped letter', (t: string) => t.replace('longrein', String.raw`\u006congrein`)],
    ['a key given twice', (t: string) => t.replace('"version":1', '"version":1,"version":1')],
    [
      'minus zero',
      (t: string) => t.replace('"bridgeDrop":{"unit":"V","value":0', '"bridgeDrop":{"unit":"V","value":-0'),
    ],
  ])('is refused although its value is unharmed: %s', (_case, change) => {
    const mutant = change(text);
    expect(JSON.parse(mutant)).toMatchObject({ checksum: JSON.parse(text).checksum });
    expect(mutant).not.toBe(text);
    expect(refusal(mutant, owner.publicKey)).toEqual({ code: 'WIRE_NOT_CANONICAL', at: '' });
  });

  it('is called damaged when a digit is another, and a limit edited by hand is no exception', () => {
    expect(refusal(text.replace('"value":1.4', '"value":2.4'))).toEqual({ code: 'WIRE_CHECKSUM', at: '/checksum' });
  });
});

describe('reading', () => {
  it('never throws and never accepts, whatever text it is given', () => {
    const anything = fc.oneof(fc.string({ unit: 'binary' }), fc.json(), fc.jsonValue().map(canonicalJson));
    fc.assert(fc.property(anything, (text) => refusal(text) !== 'accepted'));
  });

  it('never throws and never accepts a record with any one entry replaced, though its checksum be true', () => {
    const top = fc.constantFrom('vehicle', 'dossierHash', 'laws', 'madeWith', 'limits', 'model');
    const inLimits = fc.constantFrom(...LIMIT_NAMES).map((name) => ['limits', name]);
    const inModel = fc.constantFrom(...MODEL_NAMES).map((name) => ['model', name]);
    const path = fc.oneof(fc.tuple(top), inLimits, inModel);
    fc.assert(
      fc.property(path, fc.jsonValue(), (place, value) => {
        // A text is a good name of a vehicle.
        fc.pre(!(place[0] === 'vehicle' && typeof value === 'string'));
        expect(refusal(forged(changed(place, value)))).not.toBe('accepted');
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    ['a text', '"\ud800"', 'WIRE_KIND'],
    ['a list', '[]', 'WIRE_KIND'],
    ['null', 'null', 'WIRE_KIND'],
    ['an empty object', '{}', 'WIRE_KIND'],
    ['nothing', '', 'WIRE_NOT_JSON'],
    ['a beginning', '{', 'WIRE_NOT_JSON'],
    ['another kind', '{"kind":"longrein-plan","version":1}', 'WIRE_KIND'],
    ['no version', '{"kind":"longrein-limits"}', 'WIRE_VERSION'],
    ['the next version', '{"kind":"longrein-limits","version":2}', 'WIRE_VERSION'],
    ['a version as text', '{"kind":"longrein-limits","version":"1"}', 'WIRE_VERSION'],
    ['no checksum', '{"kind":"longrein-limits","version":1}', 'WIRE_KEY_MISSING'],
    ['an infinite number', unsealed('1e999'), 'WIRE_NON_FINITE'],
    ['half a character', unsealed('"\ud800"'), 'WIRE_LONE_SURROGATE'],
    ['ten thousand levels', unsealed('['.repeat(9999) + ']'.repeat(9999)), 'WIRE_TOO_DEEP'],
    ['as many bytes as may be', '['.repeat(LIMITS_BYTES_MAX), 'WIRE_NOT_JSON'],
    ['one byte more', '['.repeat(LIMITS_BYTES_MAX + 1), 'WIRE_TOO_LARGE'],
    ['fewer characters but more bytes', '€'.repeat(LIMITS_BYTES_MAX / 2), 'WIRE_TOO_LARGE'],
  ])('gives a code to %s', (_case, text, code) => {
    expect(refusal(text)).toMatchObject({ code });
  });
});

describe('a record with a true checksum and a wrong content', () => {
  const cases: [string, readonly (string | number)[], unknown, WireErrorCode, string][] = [
    ['an unknown key', ['colour'], 'red', 'WIRE_KEY_UNKNOWN', '/colour'],
    ['an unknown limit', ['limits', 'jumpHeight'], {}, 'WIRE_KEY_UNKNOWN', '/limits/jumpHeight'],
    ['an unknown key in a limit', ['limits', 'speedCap', 'doubt'], 1, 'WIRE_KEY_UNKNOWN', '/limits/speedCap/doubt'],
    ['a limit left out', ['limits', 'speedCap'], undefined, 'WIRE_KEY_MISSING', '/limits/speedCap'],
    ['a parameter left out', ['model', 'mass'], undefined, 'WIRE_KEY_MISSING', '/model/mass'],
    ['a value left out', ['limits', 'speedCap', 'value'], undefined, 'WIRE_KEY_MISSING', '/limits/speedCap/value'],
    ['a number as text', ['limits', 'speedCap', 'value'], '1.4', 'WIRE_TYPE', '/limits/speedCap/value'],
    ['another unit', ['limits', 'speedCap', 'unit'], 'km/h', 'WIRE_UNIT', '/limits/speedCap/unit'],
    ['another unit of the model', ['model', 'packCapacity', 'unit'], 'Ah', 'WIRE_UNIT', '/model/packCapacity/unit'],
    ['a value out of bounds', ['limits', 'deceleration', 'value'], 0, 'WIRE_BOUNDS', '/limits/deceleration/value'],
    [
      'braking at its best',
      ['limits', 'deceleration', 'quantile'],
      0.95,
      'WIRE_BOUNDS',
      '/limits/deceleration/quantile',
    ],
    ['lag at its shortest', ['limits', 'cameraLag', 'quantile'], 0.05, 'WIRE_BOUNDS', '/limits/cameraLag/quantile'],
    ['half a case', ['madeWith', 'cases'], 0.5, 'WIRE_TYPE', '/madeWith/cases'],
    ['no case', ['madeWith', 'cases'], 0, 'WIRE_BOUNDS', '/madeWith/cases'],
    ['a hash in upper case', ['laws', 'hash'], 'A'.repeat(64), 'WIRE_TEXT', '/laws/hash'],
    ['an empty name', ['vehicle'], '', 'WIRE_TEXT', '/vehicle'],
    ['a name that rules the terminal', ['vehicle'], '\u001b[2J', 'WIRE_TEXT', '/vehicle'],
    ['a name too long', ['vehicle'], 'x'.repeat(121), 'WIRE_TEXT', '/vehicle'],
    ['a sum id with a space', ['limits', 'speedCap', 'sum'], 'top speed', 'WIRE_TEXT', '/limits/speedCap/sum'],
    [
      'a crawl faster than the cap',
      ['limits', 'crawlSpeed', 'value'],
      1.5,
      'WIRE_CONTRADICTION',
      '/limits/crawlSpeed/value',
    ],
    [
      'holding without a time',
      ['limits', 'steeringHoldTime'],
      undefined,
      'WIRE_CONTRADICTION',
      '/limits/steeringHoldDuty',
    ],
    ['half a band', ['model', 'mass', 'high'], undefined, 'WIRE_CONTRADICTION', '/model/mass/low'],
    ['a value outside its band', ['model', 'mass', 'value'], 3, 'WIRE_CONTRADICTION', '/model/mass/value'],
    [
      'charge that falls',
      ['model', 'openCircuit', 'value', 2, 0],
      0.1,
      'WIRE_CONTRADICTION',
      '/model/openCircuit/value/2/0',
    ],
    [
      'voltage that falls',
      ['model', 'openCircuit', 'value', 2, 1],
      6.1,
      'WIRE_CONTRADICTION',
      '/model/openCircuit/value/2/1',
    ],
    [
      'a pack that is never empty',
      ['model', 'openCircuit', 'value', 0, 0],
      0.05,
      'WIRE_CONTRADICTION',
      '/model/openCircuit/value/0/0',
    ],
    [
      'a pack that is never full',
      ['model', 'openCircuit', 'value', 3, 0],
      0.95,
      'WIRE_CONTRADICTION',
      '/model/openCircuit/value/3/0',
    ],
    ['a table of one point', ['model', 'openCircuit', 'value'], [[0, 5]], 'WIRE_LENGTH', '/model/openCircuit/value'],
    ['a point of one number', ['model', 'openCircuit', 'value', 1], [0.1], 'WIRE_LENGTH', '/model/openCircuit/value/1'],
  ];

  it.each(cases)('is refused on reading, at its place: %s', (_case, path, value, code, at) => {
    expect(refusal(forged(changed(path, value)))).toEqual({ code, at });
  });

  it.each(cases)('is refused on writing, at its place: %s', (_case, path, value, code, at) => {
    const draft = changed(path, value);
    expect(limitsFaults(draft)[0]).toMatchObject({ code, at });
    expect(() => encodeLimits(draft)).toThrow(WireError);
  });

  it('is refused when an own key is called like the way to another prototype', () => {
    const content = JSON.parse(canonicalJson(sampleDraft()).replace('{', '{"__proto__":{"speedCap":99},'));
    expect(Object.hasOwn(content, '__proto__')).toBe(true);
    const { checksum } = sealOf(content);
    const text = canonicalJson(content).replace('{', `{"checksum":"${checksum}",`);
    expect(refusal(text)).toEqual({ code: 'WIRE_KEY_UNKNOWN', at: '/__proto__' });
  });
});

describe('writing', () => {
  it('finds no fault with a good draft, and all faults of a bad one', () => {
    expect(limitsFaults(sampleDraft())).toEqual([]);
    const draft = changed(['limits', 'speedCap', 'value'], Number.NaN);
    (draft.limits.stallTime as { unit: string }).unit = 'ms';
    expect(limitsFaults(draft).map(({ code, at }) => [code, at])).toEqual([
      ['WIRE_NON_FINITE', '/limits/speedCap/value'],
      ['WIRE_UNIT', '/limits/stallTime/unit'],
    ]);
  });

  it('takes a rested voltage that stays level over part of the charge, as lithium iron phosphate has it', () => {
    expect(limitsFaults(changed(['model', 'openCircuit', 'value', 2, 1], 6.2))).toEqual([]);
  });

  it('refuses a secret key that is none, without showing it', () => {
    const nearly = owner.secretKey.slice(1);
    expect(() => encodeLimits(sampleDraft(), nearly)).toThrow(/WIRE_KEY_FORM/);
    expect(() => encodeLimits(sampleDraft(), nearly)).not.toThrow(new RegExp(nearly.slice(0, 8)));
  });

  it('refuses a sealed record, so that an old seal is never sealed in', () => {
    const decoded = decodeLimits(encodeLimits(sampleDraft()));
    if (!decoded.ok) throw new Error('the sample was refused');
    expect(() => encodeLimits(decoded.record)).toThrow(/WIRE_KEY_UNKNOWN/);
  });
});

describe('the signature', () => {
  it('is required of a record as soon as the owner’s key is given', () => {
    expect(refusal(encodeLimits(sampleDraft()), owner.publicKey)).toEqual({ code: 'WIRE_UNSIGNED', at: '/signature' });
  });

  it('must be the owner’s, however good it is', () => {
    const text = encodeLimits(sampleDraft(), stranger.secretKey);
    expect(refusal(text, owner.publicKey)).toEqual({ code: 'WIRE_SIGNER', at: '/signature/publicKey' });
  });

  it('must be of this content: one moved over from another record is refused, key given or not', () => {
    const { signature } = sealOf(sampleDraft(), owner.secretKey);
    const other = changed(['limits', 'speedCap', 'value'], 1.3);
    const text = canonicalJson({ ...other, checksum: sealOf(other).checksum, signature });
    expect(refusal(text, owner.publicKey)).toEqual({ code: 'WIRE_SIGNATURE', at: '/signature/value' });
    expect(refusal(text)).toEqual({ code: 'WIRE_SIGNATURE', at: '/signature/value' });
  });

  it('cannot be checked with a key that is none, and that is a fault, not a crash', () => {
    expect(refusal(encodeLimits(sampleDraft(), owner.secretKey), 'owner')).toEqual({ code: 'WIRE_KEY_FORM', at: '' });
  });
});
