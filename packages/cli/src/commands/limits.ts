/** Makes the limits record of a vehicle. */

import { randomBytes } from 'node:crypto';
import { LimitsMissing, limitsDraft, verdictOf } from '@longrein/engineering';
import { decodeLimits, encodeLimits, makeKeyPair, WireError } from '@longrein/wire';
import { type Command, EXIT, theFile, UserError } from '../command.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { columns, wrap } from '../paint.ts';

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
    const keyFile = args.values['new-key'];
    if (typeof keyFile === 'string') return makeKey(io, keyFile);
    const reckoning = loadReckoning(io, theFile(about, args), args);
    const text = encode(() => encodeLimits(limitsDraft(reckoning), secretOf(io, args.values.key)));
    const decoded = decodeLimits(text);
    if (!decoded.ok)
      throw new UserError(`The record cannot be read back: ${decoded.fault.code} at ${decoded.fault.at}.`);
    const { record } = decoded;
    if (typeof args.values.out === 'string') io.write(args.values.out, `${text}\n`);
    if (args.values.json) io.out(text);
    else {
      io.out(
        `Limits of ${record.vehicle}, checksum ${record.checksum.slice(0, 16)}…, ${record.signature ? 'signed' : 'not signed'}`,
      );
      const rows = Object.entries(record.limits).map(([name, limit]) => [
        `  ${name}`,
        `${Number(limit.value.toPrecision(4))} ${limit.unit === '1' ? '' : limit.unit}`,
        `${limit.quantile * 100} %`,
        limit.sum,
      ]);
      io.out(columns([['  limit', 'value', 'quantile', 'from'], ...rows]));
      if (verdictOf(reckoning.findings) === 'fails') {
        io.out(
          wrap(
            'Mind: some findings fail. The record is right, but the vehicle it is for should not be driven by strangers yet.',
            io.width,
          ),
        );
      }
      if (typeof args.values.out === 'string') io.out(`Written to ${args.values.out}.`);
    }
    return EXIT.fine;
  },
};

function makeKey(io: Io, path: string): typeof EXIT.fine {
  if (io.exists(path)) throw new UserError(`${path} is there already; a key is never overwritten.`);
  const seed = randomBytes(32);
  const { publicKey } = makeKeyPair(seed);
  io.write(path, `${seed.toString('hex')}\n`, 0o600);
  io.out(`Secret key written to ${path}: keep it off the vehicle and out of version control.`);
  io.out(`Public key, for the vehicle: ${publicKey}`);
  return EXIT.fine;
}

function secretOf(io: Io, path: string | boolean | undefined): string | undefined {
  if (typeof path !== 'string') return undefined;
  try {
    return io.read(path).trim();
  } catch {
    throw new UserError(`Cannot read the key ${path}. "longrein limits --new-key ${path}" makes one.`);
  }
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
