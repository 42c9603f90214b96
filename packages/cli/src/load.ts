/** Loads a dossier and the shelf it names parts from. */
import {
  builtInShelf,
  type Fault,
  makeShelf,
  type Part,
  type Reckoning,
  readDossier,
  readShelfFile,
  reckon,
  resolve,
  type Shelf,
  type Vehicle,
  wordFault,
} from '@longrein/engineering';
import { type Args, UserError, wholeNumber } from './command.ts';
import { listFolder, readText } from './files.ts';
import type { Io } from './io.ts';

/** Options of every command that reckons. */
export const RECKON_OPTIONS = {
  cases: { type: 'string' },
  seed: { type: 'string' },
  shelf: { type: 'string' },
  json: { type: 'boolean' },
} as const;

const CASES = { least: 20, most: 100_000, usual: 1000 } as const;

/** Faults as a message, one a paragraph. */
export function wordFaults(path: string, faults: readonly Fault[]): string {
  const count = faults.length === 1 ? 'one fault' : `${faults.length} faults`;
  return [`${path}: ${count}.`, ...faults.map((fault) => `  ${wordFault(fault)}`)].join('\n');
}

/** The built-in shelf and the part files of a folder. */
export function loadShelf(io: Io, folder: string | boolean | undefined): Shelf {
  if (typeof folder !== 'string') return builtInShelf();
  const names = listFolder(io, folder).filter((name) => name.endsWith('.json'));
  const added = names.flatMap((name): Part[] => {
    const path = `${folder}/${name}`;
    const reading = readShelfFile(readText(io, path));
    if (!reading.ok) throw new UserError(wordFaults(path, reading.faults));
    return reading.value;
  });
  return makeShelf([...builtInShelf().parts, ...added]);
}

/** Loads and resolves a dossier. @throws UserError with every fault */
export function loadVehicle(io: Io, path: string, args: Args): Vehicle {
  const shelf = loadShelf(io, args.values.shelf);
  const reading = readDossier(readText(io, path), shelf);
  if (!reading.ok) throw new UserError(wordFaults(path, reading.faults));
  return resolve(reading.value, shelf);
}

/** Loads and reckons a dossier. */
export function loadReckoning(io: Io, path: string, args: Args): Reckoning {
  const cases = wholeNumber(args, 'cases', CASES.least, CASES.most, CASES.usual);
  const seed = wholeNumber(args, 'seed', 0, Number.MAX_SAFE_INTEGER, 1);
  const vehicle = loadVehicle(io, path, args);
  const watch = io.progress?.(`Reckoning ${cases} possible vehicles`);
  return reckon(vehicle, { cases, seed, ...(watch ? { watch } : {}) });
}
