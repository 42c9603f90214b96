/** Sound dossiers that damage starts from: the examples, the odd vehicles and the plain one. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PLAIN_TEXT } from '../../packages/engineering/src/dossier/testing.ts';
import { HOUSE } from '../../scripts/tree.ts';

const FOLDERS = ['examples/reedmere', 'tests/fixtures/vehicles'];

/** Text of every sound dossier by its file. */
export const SEEDS: readonly { readonly name: string; readonly text: string }[] = [
  { name: 'plain', text: PLAIN_TEXT },
  ...FOLDERS.flatMap((folder) =>
    readdirSync(join(HOUSE, folder))
      .filter((name) => name.endsWith('.json'))
      .sort()
      .map((name) => ({ name, text: readFileSync(join(HOUSE, folder, name), 'utf8') })),
  ),
];
