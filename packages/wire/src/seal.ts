/**
 * The seal of a record: a checksum over the canonical bytes of its content, which tells damage, and if wanted a
 * signature over the same bytes, which tells who stands behind it. The content names its kind, so that a signature
 * under one kind of record is worth nothing under another.
 */
import { canonicalJson } from './canonical.ts';
import { show, WireError, type WireFault } from './errors.ts';
import { HEX_32, isSignedBy, publicKeyOf, sha256Hex, signatureOf } from './keys.ts';

export interface Seal {
  readonly checksum: string;
  readonly signature?: { readonly algorithm: 'ed25519'; readonly publicKey: string; readonly value: string };
}

/** Makes the seal of a content; with a secret key it is signed. */
export function sealOf(content: object, secretKey?: string): Seal {
  const text = canonicalJson(content);
  const checksum = sha256Hex(text);
  if (secretKey === undefined) return { checksum };
  const publicKey = publicKeyOf(secretKey);
  return { checksum, signature: { algorithm: 'ed25519', publicKey, value: signatureOf(text, secretKey) } };
}

/** The fault of a checksum that is absent or does not fit, else undefined. Needs no more than a JSON object. */
export function checksumFault(record: Readonly<Record<string, unknown>>): WireFault | undefined {
  const { checksum, signature: _signature, ...content } = record;
  const at = '/checksum';
  if (checksum === undefined) {
    return { code: 'WIRE_KEY_MISSING', at, found: show(checksum), accepted: 'the checksum of the content' };
  }
  let expected: string;
  try {
    expected = sha256Hex(canonicalJson(content));
  } catch (error) {
    if (error instanceof WireError) return error.fault;
    throw error;
  }
  return checksum === expected ? undefined : { code: 'WIRE_CHECKSUM', at, found: show(checksum), accepted: expected };
}

/**
 * The fault of a signature, else undefined. With an owner's key the record must bear that owner's signature; without
 * one, a signature that is there must fit the key it names.
 */
export function signatureFault(record: Seal, ownerKey?: string): WireFault | undefined {
  const { checksum: _checksum, signature, ...content } = record;
  const at = '/signature';
  if (ownerKey !== undefined && !HEX_32.test(ownerKey)) {
    return { code: 'WIRE_KEY_FORM', at: '', found: show(ownerKey), accepted: '64 lower-case hexadecimal digits' };
  }
  if (signature === undefined) {
    if (ownerKey === undefined) return undefined;
    return { code: 'WIRE_UNSIGNED', at, found: show(signature), accepted: `a signature by ${ownerKey}` };
  }
  if (ownerKey !== undefined && signature.publicKey !== ownerKey) {
    return { code: 'WIRE_SIGNER', at: `${at}/publicKey`, found: show(signature.publicKey), accepted: ownerKey };
  }
  if (isSignedBy(signature.publicKey, signature.value, canonicalJson(content))) return undefined;
  return {
    code: 'WIRE_SIGNATURE',
    at: `${at}/value`,
    found: show(signature.value),
    accepted: `a signature of this content by ${signature.publicKey}`,
  };
}
