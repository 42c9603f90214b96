/** Makes the limits record of a vehicle. */

import { randomBytes } from 'node:crypto';
import {
  formatValue,
  isSumId,
  LimitsMissing,
  limitsDraft,
  QUANTITIES,
  type QuantityId,
  SUMS,
  verdictOf,
} from '@longrein/engineering';
import {
  decodeLimits,
  encodeLimits,
  LIMIT_NAMES,
  type Limit,
  type LimitsRecord,
  makeKeyPair,
  WireError,
} from '@longrein/wire';
import { type Command, EXIT, theFile, UserError } from '../command.ts';
import { readText, writeText } from '../files.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { columns, paint, wrap } from '../paint.ts';

const about = {
  name: 'limits',
  usage: 'FILE [--out RECORD] [--key KEYFILE] [--cases N] [--seed N] [--shelf FOLDER] [--json] | --new-key KEYFILE',
};

export const limitsCommand: Command = {
  ...about,
  summary: 'make the limits record that the vehicle drives by',
  help: `
Every limit comes from one sum, taken at its careful end: 5 of 100 possible vehicles lie beyond it. The record carries
the hash of the dossier and of the laws, a checksum and, with --key, the owner's signature.

  --new-key KEYFILE   makes a secret key; keep it off the vehicle and out of version control
  --out RECORD        writes the record to a file, whole or not at all
  --json              prints the record itself

Example:  longrein limits --new-key owner.key
          longrein limits examples/reedmere/sedge.json --key owner.key --out sedge.limits.json`,
  options: { ...RECKON_OPTIONS, out: { type: 'string' }, key: { type: 'string' }, 'new-key': { type: 'string' } },
  run: (io, args) => {
    const { key, out, json, 'new-key': keyFile } = args.values;
    if (typeof keyFile === 'string') {
      if (args.positionals.length > 0) {
        throw new UserError(
          `--new-key only makes a key; leave ${args.positionals.join(' ')} out, and use the key afterwards.`,
        );
      }
      return makeKey(io, keyFile);
    }
    const file = theFile(about, args);
    const secret = secretOf(io, key);
    if (typeof out === 'string' && secret === undefined) keepSignature(io, out);
    const reckoning = loadReckoning(io, file, args);
    const text = encode(() => encodeLimits(limitsDraft(reckoning), secret));
    const decoded = decodeLimits(text);
    if (!decoded.ok)
      throw new UserError(`The record cannot be read back: ${decoded.fault.code} at ${decoded.fault.at}.`);
    if (typeof out === 'string') writeText(io, out, text);
    if (json) io.exactly(text);
    else printRecord(io, decoded.record, typeof out === 'string' ? out : undefined);
    if (!json && verdictOf(reckoning.findings) === 'fails') {
      const mind =
        'Mind: some findings fail. The record is right, but the vehicle it is for should not be driven by strangers yet.';
      io.out(wrap(mind, io.width));
    }
    return EXIT.fine;
  },
};

/** A signed record is not replaced by an unsigned one: the vehicle would refuse it. @throws UserError */
function keepSignature(io: Io, path: string): void {
  if (!io.exists(path)) return;
  const found = decodeLimits(readText(io, path));
  if (found.ok && found.record.signature) {
    throw new UserError(`${path} is signed, and this record would not be. Give the key with --key, or another name.`);
  }
}

function printRecord(io: Io, record: LimitsRecord, out: string | undefined): void {
  const { vehicle, checksum, signature, limits } = record;
  io.out(`Limits of ${vehicle}, checksum ${checksum.slice(0, 16)}…, ${signature ? 'signed' : 'not signed'}`);
  const rows = LIMIT_NAMES.flatMap((name) => {
    const limit = limits[name];
    if (limit === undefined) return [];
    return [[`  ${name}`, valueText(limit), asShown(limit), `${Math.round(limit.quantile * 100)} %`, limit.sum]];
  });
  io.out(columns([['  limit', 'value', 'that is', 'quantile', 'from'], ...rows]));
  const quantiles =
    'The quantile is the share of the possible vehicles below the value: 5 % and 95 % are the careful ends, 50 % is as stated or chosen.';
  io.out(paint(io, 'faint', wrap(quantiles, io.width)));
  if (out !== undefined) io.out(`Written to ${out}.`);
}

function valueText({ value, unit }: Limit): string {
  return `${Number(value.toPrecision(4))}${unit === '1' ? '' : ` ${unit}`}`;
}

/** The value in the unit its sum is shown in, where that is another one than the record's. */
function asShown({ value, unit, sum }: Limit): string {
  const shownIn = isSumId(sum) ? SUMS[sum].unit : QUANTITIES[sum as QuantityId]?.unit;
  return shownIn === undefined || shownIn === unit ? '' : formatValue(value, shownIn);
}

function makeKey(io: Io, path: string): typeof EXIT.fine {
  if (io.exists(path)) throw new UserError(`${path} is there already; a key is never overwritten.`);
  const seed = randomBytes(32);
  const { publicKey } = makeKeyPair(seed);
  writeText(io, path, `${seed.toString('hex')}\n`, 0o600);
  io.out(`Secret key written to ${path}: keep it off the vehicle and out of version control.`);
  io.out(`Public key, for the vehicle: ${publicKey}`);
  return EXIT.fine;
}

function secretOf(io: Io, path: string | boolean | undefined): string | undefined {
  if (typeof path !== 'string') return undefined;
  const hint = `"longrein limits --new-key ${path}" makes one.`;
  const text = readText(io, path, hint).trim();
  if (/^[0-9a-f]{64}$/.test(text)) return text;
  throw new UserError(`${path} holds no secret key: 64 hexadecimal digits on one line. ${hint}`);
}

function encode(make: () => string): string {
  try {
    return make();
  } catch (error) {
    if (error instanceof WireError || error instanceof LimitsMissing)
      throw new UserError(`No record: ${error.message}.`);
    throw error;
  }
}
