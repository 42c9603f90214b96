/** Shows what is on the shelf. */
import { PART_KINDS, type Part, type PartKind } from '@longrein/engineering';
import { type Command, EXIT, UserError } from '../command.ts';
import { loadShelf } from '../load.ts';
import { columns, paint, wrap } from '../paint.ts';

const about = { name: 'shelf', usage: '[KIND | ID] [--shelf FOLDER] [--json]' };

export const shelfCommand: Command = {
  ...about,
  summary: 'list the parts on the shelf, or show one',
  help: `
The shelf holds generic parts by their data-sheet values. A dossier names a part by its id, or describes its own in
place. Your own parts go into JSON files in a folder, given with --shelf:  { "format": 1, "parts": [ { "kind": "pack", … } ] }

Kinds: ${PART_KINDS.join(', ')}

Example:  longrein shelf
          longrein shelf pack
          longrein shelf lipo-2s-2200`,
  options: { shelf: { type: 'string' }, json: { type: 'boolean' } },
  run: (io, args) => {
    const shelf = loadShelf(io, args.values.shelf);
    const [asked, ...more] = args.positionals;
    if (more.length > 0) throw new UserError(`One kind or id at a time. Usage: longrein shelf ${about.usage}`);
    const isKind = PART_KINDS.includes(asked as PartKind);
    const one = asked === undefined || isKind ? undefined : shelf.find(asked);
    if (asked !== undefined && !isKind && !one) {
      const near = shelf.parts.filter(({ id }) => id.includes(asked)).map(({ id }) => id);
      throw new UserError(
        `There is no kind or part "${asked}". Kinds: ${PART_KINDS.join(', ')}.${near.length > 0 ? ` Parts near it: ${near.join(', ')}.` : ''}`,
      );
    }
    const parts = one ? [one] : shelf.parts.filter((part) => asked === undefined || part.kind === asked);
    if (args.values.json) io.out(JSON.stringify(parts.map(plain), null, 2));
    else if (one) {
      io.out(paint(io, 'strong', `${one.title} (${one.kind})`));
      io.out(columns(figures(one).map(([key, value]) => [`  ${key}`, value])));
      if (one.remark) io.out(wrap(one.remark, io.width, '  '));
    } else {
      io.out(columns([...parts].map((part) => [`  ${part.kind}`, part.id ?? '', part.title])));
    }
    return EXIT.fine;
  },
};

/** The stated quantities and choices of a part, as written. */
function figures(part: Part): [string, string][] {
  return Object.entries(part)
    .filter(([key]) => !['kind', 'id', 'title', 'remark'].includes(key))
    .map(([key, value]) => [
      key,
      typeof value === 'object' && 'quantity' in value ? value.quantity.text : String(value),
    ]);
}

function plain(part: Part): Record<string, unknown> {
  return { kind: part.kind, id: part.id, title: part.title, ...Object.fromEntries(figures(part)), remark: part.remark };
}
