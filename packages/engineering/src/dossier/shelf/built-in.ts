/** The shelf that comes with the program, read once through the schemas that also read a user's own parts. */
import { once } from '../../quantity/once.ts';
import { PART_SCHEMAS, type Part, type WrittenPart } from '../schema/parts.ts';
import { BRIDGES } from './bridges.ts';
import { CAMERAS } from './cameras.ts';
import { CHARGERS } from './chargers.ts';
import { COMPUTERS } from './computers.ts';
import { CONNECTORS } from './connectors.ts';
import { CONVERTERS } from './converters.ts';
import { ENCLOSURES } from './enclosures.ts';
import { FUSES } from './fuses.ts';
import { LITHIUM_PACKS } from './packs-lithium.ts';
import { OTHER_PACKS } from './packs-other.ts';
import { AERIALS, MODEMS } from './radio.ts';
import { SERVOS } from './servos.ts';
import { makeShelf, type Shelf } from './shelf.ts';
import { WIRES } from './wires.ts';

/** Every built-in part as it is written, by kind. */
export const BUILT_IN_PARTS: readonly WrittenPart[] = [
  ...LITHIUM_PACKS,
  ...OTHER_PACKS,
  ...CONVERTERS,
  ...BRIDGES,
  ...COMPUTERS,
  ...CAMERAS,
  ...MODEMS,
  ...AERIALS,
  ...WIRES,
  ...FUSES,
  ...CONNECTORS,
  ...CHARGERS,
  ...SERVOS,
  ...ENCLOSURES,
];

/** The built-in shelf; read at the first call and kept. */
export const builtInShelf: () => Shelf = once(() => makeShelf(BUILT_IN_PARTS.map(readPart)));

/** @throws Error when a built-in part breaks its schema, which the tests of the shelf rule out */
function readPart(written: WrittenPart): Part {
  const read = PART_SCHEMAS[written.kind].safeParse(written);
  if (read.success) return read.data;
  const why = read.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`).join('; ');
  throw new Error(`built-in part ${written.id}: ${why}`);
}
