/** The vehicle that is timed: sedge of the Reedmere scenario. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { builtInShelf, readDossier, resolve, type Vehicle } from './built.ts';

export const SHELF = builtInShelf();
export const SEDGE_TEXT = readFileSync(join(import.meta.dirname, '../examples/reedmere/sedge.json'), 'utf8');

export function sedge(): Vehicle {
  const reading = readDossier(SEDGE_TEXT, SHELF);
  if (!reading.ok)
    throw new Error('examples/reedmere/sedge.json cannot be read; run `npm run longrein -- validate` on it');
  return resolve(reading.value, SHELF);
}
