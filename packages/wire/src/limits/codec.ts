/** Limits records to text and back. One record has one text; any other text is refused, and never with an exception. */
import { canonicalJson } from '../canonical.ts';
import { show, WireError, type WireFault } from '../errors.ts';
import { utf8Length } from '../keys.ts';
import { checksumFault, sealOf, signatureFault } from '../seal.ts';
import { shapeFault } from '../shape-fault.ts';
import { LIMITS_BYTES_MAX, LIMITS_KIND, LIMITS_VERSION, type LimitsDraft, type LimitsRecord } from './record.ts';
import { limitsDraftSchema, limitsRecordSchema } from './schema.ts';

export type Decoded =
  | { readonly ok: true; readonly record: LimitsRecord }
  | { readonly ok: false; readonly fault: WireFault };

/** Everything that keeps a draft from becoming a record; empty where nothing does. */
export function limitsFaults(draft: LimitsDraft): readonly WireFault[] {
  const parsed = limitsDraftSchema.safeParse(draft, { jitless: true });
  if (!parsed.success) return parsed.error.issues.map((issue) => shapeFault(issue, draft));
  return [];
}

/**
 * The text of a record: the draft with its checksum and, with a secret key (64 hexadecimal digits), its signature.
 * @throws WireError with the first fault where the draft cannot be a record or the key cannot be a key.
 */
export function encodeLimits(draft: LimitsDraft, secretKey?: string): string {
  const fault = limitsFaults(draft)[0];
  if (fault !== undefined) throw new WireError(fault);
  return canonicalJson({ ...draft, ...sealOf(draft, secretKey) });
}

/**
 * Reads a record. With the owner's public key it must bear the owner's signature. Damage is told before anything
 * else about the content, because whatever a damaged record says is not what its maker said.
 */
export function decodeLimits(text: string, options: { readonly publicKey?: string } = {}): Decoded {
  const read = readJson(text);
  if (!read.ok) return read;
  const { value } = read;
  const unfit = labelFault(value) ?? checksumFault(value);
  if (unfit !== undefined) return { ok: false, fault: unfit };

  const parsed = limitsRecordSchema.safeParse(value, { jitless: true });
  const issue = parsed.error?.issues[0];
  if (issue !== undefined) return { ok: false, fault: shapeFault(issue, value) };
  const record = value as unknown as LimitsRecord;

  const fault = formFault(text, value) ?? signatureFault(record, options.publicKey);
  return fault === undefined ? { ok: true, record } : { ok: false, fault };
}

type Json = Readonly<Record<string, unknown>>;

function readJson(text: string): { ok: true; value: Json } | { ok: false; fault: WireFault } {
  const accepted = `at most ${LIMITS_BYTES_MAX} bytes`;
  // The bytes are never fewer than the characters, and counting characters costs nothing.
  const bytes = text.length > LIMITS_BYTES_MAX ? text.length : utf8Length(text);
  if (bytes > LIMITS_BYTES_MAX) {
    return { ok: false, fault: { code: 'WIRE_TOO_LARGE', at: '', found: `${bytes} bytes or more`, accepted } };
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, fault: { code: 'WIRE_NOT_JSON', at: '', found: show(text), accepted: 'JSON' } };
  }
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { ok: true, value: value as Json };
  return { ok: false, fault: { code: 'WIRE_KIND', at: '', found: show(value), accepted: `"${LIMITS_KIND}"` } };
}

/** Another kind or version may be right in itself: it is told apart before its content is judged. */
function labelFault({ kind, version }: Json): WireFault | undefined {
  if (kind !== LIMITS_KIND) {
    return { code: 'WIRE_KIND', at: '/kind', found: show(kind), accepted: `"${LIMITS_KIND}"` };
  }
  if (version === LIMITS_VERSION) return undefined;
  return { code: 'WIRE_VERSION', at: '/version', found: show(version), accepted: String(LIMITS_VERSION) };
}

/** A key given twice, a space or another way of writing a number leaves the value and so the checksum as they are. */
function formFault(text: string, value: Json): WireFault | undefined {
  const canonical = canonicalJson(value);
  if (text === canonical) return undefined;
  let at = 0;
  while (at < text.length && text[at] === canonical[at]) at += 1;
  return {
    code: 'WIRE_NOT_CANONICAL',
    at: '',
    found: `${show(text.slice(at, at + 20))} at character ${at + 1}`,
    accepted: show(canonical.slice(at, at + 20)),
  };
}
