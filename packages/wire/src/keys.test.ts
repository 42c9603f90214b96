/**
 * Goal: checksums are SHA-256 and signatures Ed25519 as published, so that other programs can check ours.
 * Method: the vectors of FIPS 180-4 and RFC 8032 (7.1), quoted from memory, and the platform's own implementation as
 * a twin on random data.
 */
import { createHash, createPrivateKey, createPublicKey, sign, verify } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WireError } from './errors.ts';
import { isSignedBy, makeKeyPair, publicKeyOf, sha256Hex, signatureOf, utf8Length } from './keys.ts';

const bytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex, 'hex'));

describe('SHA-256 against the examples of FIPS 180-4 (from memory)', () => {
  it.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('of %s', (message, digest) => {
    expect(sha256Hex(message)).toBe(digest);
  });

  it('agrees with the platform on random bytes and texts', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.string({ unit: 'binary' }), (data, text) => {
        expect(sha256Hex(data)).toBe(createHash('sha256').update(data).digest('hex'));
        expect(sha256Hex(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
        expect(utf8Length(text)).toBe(Buffer.byteLength(text, 'utf8'));
      }),
    );
  });
});

const TEST_1 = {
  secretKey: '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60',
  publicKey: 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
  message: new Uint8Array(0),
  signature:
    'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
};
const TEST_2 = {
  secretKey: '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb',
  publicKey: '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
  message: bytes('72'),
  signature:
    '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
};
const TEST_3 = {
  secretKey: 'c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7',
  publicKey: 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025',
  message: bytes('af82'),
  signature:
    '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a',
};

describe('Ed25519 against RFC 8032, section 7.1 (from memory)', () => {
  it.each([TEST_1, TEST_2, TEST_3])('the test with public key $publicKey: key, signature and verification', (test) => {
    expect(makeKeyPair(bytes(test.secretKey))).toEqual({ secretKey: test.secretKey, publicKey: test.publicKey });
    expect(publicKeyOf(test.secretKey)).toBe(test.publicKey);
    expect(signatureOf(test.message, test.secretKey)).toBe(test.signature);
    expect(isSignedBy(test.publicKey, test.signature, test.message)).toBe(true);
  });
});

describe('Ed25519 against the platform', () => {
  it('makes the same signatures, and each accepts the other’s', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 32, maxLength: 32 }), fc.string({ unit: 'binary' }), (seed, text) => {
        // PKCS 8 and SPKI wrappings of an Ed25519 key after RFC 8410.
        const pkcs8 = Buffer.concat([bytes('302e020100300506032b657004220420'), seed]);
        const platformKey = createPrivateKey({ key: pkcs8, format: 'der', type: 'pkcs8' });
        const ours = makeKeyPair(seed);
        const spki = Buffer.concat([bytes('302a300506032b6570032100'), bytes(ours.publicKey)]);
        const message = Buffer.from(text, 'utf8');

        const signature = signatureOf(text, ours.secretKey);
        expect(sign(null, message, platformKey).toString('hex')).toBe(signature);
        const ourPublic = createPublicKey({ key: spki, format: 'der', type: 'spki' });
        expect(verify(null, message, ourPublic, bytes(signature))).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
});

describe('a signature that does not hold', () => {
  const { message, signature, publicKey } = TEST_2;

  it.each([
    ['another message', 'another', signature, publicKey],
    ['another key', message, signature, TEST_1.publicKey],
    ['another signature', message, TEST_1.signature, publicKey],
    ['upper case, because one signature has one text', message, signature.toUpperCase(), publicKey],
    ['a shorter signature', message, signature.slice(2), publicKey],
    ['a key that is no point of the curve', message, signature, `02${'00'.repeat(31)}`],
    ['a key that is no key', message, signature, 'key'],
    // The neutral point as key and as R, with S = 0, satisfies the equation for every message; strict rules refuse it.
    ['a key of small order', message, `01${'00'.repeat(63)}`, `01${'00'.repeat(31)}`],
  ])('is refused: %s', (_case, text, signed, key) => {
    expect(isSignedBy(key, signed, text)).toBe(false);
  });
});

describe('a key that is none', () => {
  it('is refused when it does not grow from 32 bytes', () => {
    expect(() => makeKeyPair(new Uint8Array(31))).toThrow(WireError);
    expect(() => makeKeyPair(new Uint8Array(33))).toThrow(WireError);
  });

  it('is refused without being shown, because messages end in logs', () => {
    const nearly = TEST_1.secretKey.toUpperCase();
    expect(() => publicKeyOf(nearly)).toThrow(/WIRE_KEY_FORM/);
    expect(() => publicKeyOf(nearly)).not.toThrow(new RegExp(nearly.slice(0, 8), 'i'));
  });
});
