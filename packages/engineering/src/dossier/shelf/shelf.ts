/** The shelf: generic parts by id, the built-in ones and those a user adds. */
import type { Part, PartKind, PartOf } from '../schema/parts.ts';

export interface Shelf {
  /** All parts, in the order they were added. */
  readonly parts: readonly (Part & { readonly id: string })[];
  /** The part of that id, whatever its kind. */
  readonly find: (id: string) => Part | undefined;
}

/** A shelf of these parts. A later part takes the place of an earlier one of the same id. */
export function makeShelf(parts: readonly Part[]): Shelf {
  const byId = new Map<string, Part & { readonly id: string }>();
  for (const part of parts) {
    if (part.id !== undefined) byId.set(part.id, { ...part, id: part.id });
  }
  return { parts: [...byId.values()], find: (id) => byId.get(id) };
}

/** All parts of a kind. */
export function partsOf<K extends PartKind>(shelf: Shelf, kind: K): (PartOf<K> & { readonly id: string })[] {
  return shelf.parts.filter((part) => part.kind === kind) as (PartOf<K> & { readonly id: string })[];
}
