/** Shows what is on the shelf. */
import { PART_KINDS, type Part, type PartKind, type Shelf } from '@longrein/engineering';
import { type Command, EXIT, UserError } from '../command.ts';
import type { Io } from '../io.ts';
import { loadShelf } from '../load.ts';
import { nearTo } from '../near.ts';
import { columnsWithin, paint, wrap } from '../paint.ts';

const about = { name: 'shelf', usage: '[KIND | ID] [--shelf FOLDER] [--json]' };

export const shelfCommand: Command = {
  ...about,
  summary: 'list the parts on the shelf, or show one',
  help: `
The shelf holds generic parts by their data-sheet values. A dossier names a part by its id, or describes its own in
place. Your own parts go into JSON files in a folder, given with --shelf:  { "format": 1, "parts": [ { "kind": "pack", … } ] }
--json prints parts in just that form, as a start.

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
    const one = asked === undefined || isKind ? undefined : partNamed(shelf, asked);
    const parts = one ? [one] : shelf.parts.filter((part) => asked === undefined || part.kind === asked);
    if (args.values.json) io.out(JSON.stringify(parts.map(plain), null, 2));
    else if (one) printPart(io, one);
    else printParts(io, parts);
    return EXIT.fine;
  },
};

/** @throws UserError with the kinds and what is near */
function partNamed(shelf: Shelf, asked: string): Part {
  const found = shelf.find(asked);
  if (found) return found;
  const near = nearTo(
    asked,
    shelf.parts.flatMap(({ id }) => id ?? []),
  );
  const hint = near.length > 0 ? ` Parts near it: ${near.join(', ')}.` : '';
  throw new UserError(`There is no kind or part "${asked}". Kinds: ${PART_KINDS.join(', ')}.${hint}`);
}

function printPart(io: Io, part: Part): void {
  io.out(wrap(paint(io, 'strong', `${part.title} (${part.kind})`), io.width));
  io.out(
    columnsWithin(
      figures(part).map(([key, value]) => [`  ${key}`, Array.isArray(value) ? value.join(', ') : String(value)]),
      io.width,
    ),
  );
  if (part.remark) io.out(wrap(part.remark, io.width, '  '));
}

/** Parts kind by kind; a kind by itself needs no heading. */
function printParts(io: Io, parts: readonly Part[]): void {
  const width = Math.max(0, ...parts.map(({ id = '' }) => id.length));
  for (const kind of PART_KINDS) {
    const here = parts.filter((part) => part.kind === kind);
    if (here.length === 0) continue;
    if (here.length < parts.length) io.out(`${kind === parts[0]?.kind ? '' : '\n'}${paint(io, 'strong', kind)}`);
    io.out(
      columnsWithin(
        here.map((part) => [`  ${(part.id ?? '').padEnd(width)}`, part.title]),
        io.width,
      ),
    );
  }
}

/** The stated quantities, as written, and the choices of a part. */
function figures(part: Part): [string, unknown][] {
  return Object.entries(part)
    .filter(([key]) => !['kind', 'id', 'title', 'remark'].includes(key))
    .map(([key, value]) => [key, typeof value === 'object' && 'quantity' in value ? value.quantity.text : value]);
}

/** A part as it would be written in a file of parts, so that it can be the start of one of the user's own. */
function plain(part: Part): Record<string, unknown> {
  return { kind: part.kind, id: part.id, title: part.title, ...Object.fromEntries(figures(part)), remark: part.remark };
}
