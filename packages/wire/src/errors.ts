/** What can be wrong with a record that travels: a closed catalogue. Faults are data first, worded in one place. */

export interface WireErrorFact {
  readonly code: string;
  readonly meaning: string;
  /** What to do now, as a sentence. */
  readonly todo: string;
}

export const WIRE_ERRORS = [
  {
    code: 'WIRE_TOO_LARGE',
    meaning: 'The record is larger than such a record can be.',
    todo: 'Check that this is the file that was meant.',
  },
  {
    code: 'WIRE_NOT_JSON',
    meaning: 'The text is not JSON; it may have been cut short.',
    todo: 'Fetch or make the record again.',
  },
  {
    code: 'WIRE_TOO_DEEP',
    meaning: 'The value is nested deeper than any record is.',
    todo: 'Check that this is the file that was meant.',
  },
  {
    code: 'WIRE_NON_FINITE',
    meaning: 'A number is infinite or not a number, which a record cannot carry.',
    todo: 'Correct the sum that gave it.',
  },
  {
    code: 'WIRE_LONE_SURROGATE',
    meaning: 'A text holds half a character, which has no bytes of its own.',
    todo: 'Write the text anew.',
  },
  {
    code: 'WIRE_NOT_DATA',
    meaning: 'A value is neither text, number, truth value, null, list nor plain object.',
    todo: 'Leave the entry out or give its data.',
  },
  { code: 'WIRE_KIND', meaning: 'This is a record of another kind.', todo: 'Give the record that is wanted here.' },
  {
    code: 'WIRE_VERSION',
    meaning: 'The record has a version that this program does not read.',
    todo: 'Update the older of the two programs and make the record again.',
  },
  {
    code: 'WIRE_CHECKSUM',
    meaning: 'The content does not fit its checksum: it was damaged or changed by hand.',
    todo: 'Make the record again from the dossier instead of editing it.',
  },
  {
    code: 'WIRE_NOT_CANONICAL',
    meaning: 'The content fits its checksum but is not written the one way a record is written.',
    todo: 'Use the file as it was made, byte for byte.',
  },
  { code: 'WIRE_KEY_UNKNOWN', meaning: 'A key is not one of this record.', todo: 'Leave the key out.' },
  { code: 'WIRE_KEY_MISSING', meaning: 'A key that must be there is absent.', todo: 'Add the entry.' },
  { code: 'WIRE_TYPE', meaning: 'A value is of the wrong type.', todo: 'Give what is accepted.' },
  {
    code: 'WIRE_UNIT',
    meaning: 'The unit is not the one this entry is stated in.',
    todo: 'Convert the value to the accepted unit.',
  },
  {
    code: 'WIRE_BOUNDS',
    meaning: 'A number lies outside what this entry can be.',
    todo: 'Check the sum that gave it; a vehicle outside these bounds cannot be guarded.',
  },
  {
    code: 'WIRE_LENGTH',
    meaning: 'A list has fewer or more entries than it can have.',
    todo: 'Give as many entries as are accepted.',
  },
  { code: 'WIRE_TEXT', meaning: 'A text is not of the accepted form.', todo: 'Write the text as accepted.' },
  {
    code: 'WIRE_CONTRADICTION',
    meaning: 'Two entries of the record cannot both hold.',
    todo: 'Correct one of the two.',
  },
  {
    code: 'WIRE_KEY_FORM',
    meaning: 'The key given to sign or to check with is no Ed25519 key.',
    todo: 'Give a key as 64 lower-case hexadecimal digits.',
  },
  {
    code: 'WIRE_UNSIGNED',
    meaning: 'The record bears no signature, and one is required here.',
    todo: 'Sign the record with the owner’s key.',
  },
  {
    code: 'WIRE_SIGNER',
    meaning: 'The record is signed with another key than the owner’s.',
    todo: 'Have the owner sign it, or make the new key known to the vehicle.',
  },
  {
    code: 'WIRE_SIGNATURE',
    meaning: 'The signature does not belong to this content.',
    todo: 'Do not use the record; sign it again.',
  },
] as const satisfies readonly WireErrorFact[];

export type WireErrorCode = (typeof WIRE_ERRORS)[number]['code'];

/** One thing wrong with a record. */
export interface WireFault {
  readonly code: WireErrorCode;
  /** JSON pointer (RFC 6901) of the place; '' is the whole record. */
  readonly at: string;
  readonly found: string;
  readonly accepted: string;
}

/** Thrown where a program hands over data that cannot become a record. Reading foreign text never throws it. */
export class WireError extends Error {
  readonly fault: WireFault;

  constructor(fault: WireFault) {
    super(wordFault(fault));
    this.name = 'WireError';
    this.fault = fault;
  }
}

/** A fault as sentences for people: where, what was found, what is accepted, what to do. */
export function wordFault(fault: WireFault): string {
  const todo = WIRE_ERRORS.find((known) => known.code === fault.code)?.todo;
  return `At ${fault.at || '/'}: found ${fault.found}. Accepted: ${fault.accepted}. ${todo} [${fault.code}]`;
}

/** A JSON pointer from the keys on the way. */
export function pointer(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** Shows a value in a message, cut so that a message stays a message. */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'string') return value.length > 80 ? `"${value.slice(0, 77)}…"` : `"${value}"`;
  return typeof value === 'function' || typeof value === 'symbol' ? `a ${typeof value}` : String(value);
}
