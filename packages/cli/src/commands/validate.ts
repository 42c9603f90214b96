/** Checks a dossier and lists what is assumed. */
import type { Input } from '@longrein/engineering';
import { type Command, EXIT, theFile } from '../command.ts';
import type { Io } from '../io.ts';
import { loadVehicle } from '../load.ts';
import { paint, wrap } from '../paint.ts';

const about = { name: 'validate', usage: 'FILE [--shelf FOLDER] [--json]' };

export const validateCommand: Command = {
  ...about,
  summary: 'check a dossier, and list what is assumed because nobody stated it',
  help: `
Reads the dossier and reports every fault with its place: JSON pointer, line and column, what was found, what is
accepted. When there is none it lists the quantities that are not stated and what is assumed for each, with the reason.

Example:  longrein validate examples/reedmere/burdock.json`,
  options: { shelf: { type: 'string' }, json: { type: 'boolean' } },
  run: (io, args) => {
    const file = theFile(about, args);
    const vehicle = loadVehicle(io, file, args);
    const inputs = [...vehicle.inputs.values()];
    const assumed = inputs.filter((input) => input.origin === 'assumed');
    const stated = inputs.length - assumed.length;
    if (args.values.json) {
      io.out(JSON.stringify({ name: vehicle.name, ok: true, stated, assumptions: assumed.map(plain) }, null, 2));
      return EXIT.fine;
    }
    const invented = vehicle.invented ? ' (invented demonstration data)' : '';
    io.out(wrap(`${paint(io, 'good', '✓')} ${file} is a dossier: ${vehicle.name}${invented}`, io.width));
    io.out(`${stated} quantities stated, ${assumed.length} assumed${assumed.length > 0 ? ':' : '.'}`);
    printAssumed(io, assumed);
    return EXIT.fine;
  },
};

/** What is assumed, under the reason it is assumed for. */
function printAssumed(io: Io, assumed: readonly Input[]): void {
  const reasons = new Map<string, Input[]>();
  for (const input of assumed) reasons.set(input.remark ?? '', [...(reasons.get(input.remark ?? '') ?? []), input]);
  for (const [reason, inputs] of reasons) {
    for (const input of inputs) {
      const value = paint(io, 'strong', input.quantity.text);
      io.out(wrap(`${input.facts.title}: ${value}`, io.width, '    ', '  '));
    }
    io.out(paint(io, 'faint', wrap(reason, io.width, '      ')));
  }
}

const plain = (input: Input) => ({
  id: input.id,
  title: input.facts.title,
  value: input.quantity.text,
  because: input.remark ?? '',
  how: input.facts.how,
});
