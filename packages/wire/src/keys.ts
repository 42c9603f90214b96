/** Checksums (SHA-256, FIPS 180-4) and signatures (Ed25519, RFC 8032), with everything that is kept as text in hex. */
import { ed25519 } from '@noble/curves/ed25519.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { WireError } from './errors.ts';

/** A SHA-256 digest or an Ed25519 key: 32 bytes in lower case, so that one value has one text. */
export const HEX_32 = /^[0-9a-f]{64}$/;
/** An Ed25519 signature: 64 bytes. */
export const HEX_64 = /^[0-9a-f]{128}$/;

export interface KeyPair {
  /** Keep it off the vehicle and out of version control: who has it can sign limits. */
  readonly secretKey: string;
  readonly publicKey: string;
}

/** SHA-256 of bytes, or of the UTF-8 bytes of a text, as 64 lower-case hexadecimal digits. */
export function sha256Hex(data: string | Uint8Array): string {
  return bytesToHex(sha256(bytesOf(data)));
}

/**
 * The Ed25519 key pair that grows from 32 bytes. They must come from a source nobody can guess; pure code has none,
 * so the caller brings them.
 * @throws WireError unless there are 32 bytes.
 */
export function makeKeyPair(seedBytes: Uint8Array): KeyPair {
  if (seedBytes.length !== 32) {
    throw new WireError({ code: 'WIRE_KEY_FORM', at: '', found: `${seedBytes.length} bytes`, accepted: '32 bytes' });
  }
  // In Ed25519 the seed itself is the secret key (RFC 8032, 5.1.5).
  return { secretKey: bytesToHex(seedBytes), publicKey: bytesToHex(ed25519.getPublicKey(seedBytes)) };
}

/** The public key of a secret one. The key is checked before, so that what goes wrong is a fault and not a crash. */
export function publicKeyOf(secretKey: string): string {
  // The message must not show the key: logs travel.
  if (!HEX_32.test(secretKey)) {
    throw new WireError({
      code: 'WIRE_KEY_FORM',
      at: '',
      found: `a secret key of ${secretKey.length} characters`,
      accepted: '64 lower-case hexadecimal digits',
    });
  }
  return bytesToHex(ed25519.getPublicKey(hexToBytes(secretKey)));
}

/** How many bytes a text has in UTF-8. */
export function utf8Length(text: string): number {
  return utf8ToBytes(text).length;
}

/** Signs bytes, or the UTF-8 bytes of a text. The key must be one that `publicKeyOf` accepts. */
export function signatureOf(data: string | Uint8Array, secretKey: string): string {
  return bytesToHex(ed25519.sign(bytesOf(data), hexToBytes(secretKey)));
}

/** Tells whether a signature over bytes, or a text, was made with the secret half of a public key. Never throws. */
export function isSignedBy(publicKey: string, signature: string, data: string | Uint8Array): boolean {
  if (!HEX_64.test(signature) || !HEX_32.test(publicKey)) return false;
  // The strict rules of RFC 8032: the laxer ZIP 215 lets weak public keys sign everything.
  return ed25519.verify(hexToBytes(signature), bytesOf(data), hexToBytes(publicKey), { zip215: false });
}

function bytesOf(data: string | Uint8Array): Uint8Array {
  return typeof data === 'string' ? utf8ToBytes(data) : data;
}
