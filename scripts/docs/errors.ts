/** The error codes: what can be wrong with a dossier or a shelf file, and with a record that travels. */
import { builtInShelf, ERROR_CODES, readDossier, wordFault } from '@longrein/engineering';
import { WIRE_ERRORS } from '@longrein/wire';
import { type Page, read } from '../tree.ts';
import { cell, code, GENERATED, page, table } from './markdown.ts';

const HEAD = ['Code', 'Meaning', 'What to do'];

export function errors(): Page[] {
  const text = page(
    '# Errors',
    GENERATED,
    `A fault is data first: a code, a place (JSON pointer, and line and column where there is a text), what was found, what is
accepted, and what to do. It is worded in one place, and the faults of a file are told all at once, not only the first;
where there are very many, the last says how many more:`,
    ['```text', example(), '```'],
    `A program tells faults apart by their codes. A code is never given another meaning; one that is no longer used is not
used again.`,
    '## Dossiers and shelf files',
    table(
      HEAD,
      ERROR_CODES.map((entry) => [code(entry.code), cell(entry.meaning), cell(entry.todo)]),
    ),
    '## Records that travel',
    'Faults of a limits record, as [the limits record](limits-record.md) explains them.',
    table(
      HEAD,
      WIRE_ERRORS.map((entry) => [`<code>${entry.code}</code>`, cell(entry.meaning), cell(entry.todo)]),
    ),
    '## Laws',
    `A law that is called outside its range throws \`OUT_OF_RANGE\` with the law, the argument, the value and what is accepted; it
never clamps. The reckoning catches it: the sum has no value in those cases, and what rests on it is _unsettled_ and says
why.`,
  );
  return [{ path: 'docs/errors.md', text }];
}

/** What is said of an example whose mass is written with a decimal comma. */
function example(): string {
  const text = read('examples/reedmere/sedge.json').replace('1.62 kg', '1,62 kg');
  const reading = readDossier(text, builtInShelf());
  if (reading.ok) throw new Error('a decimal comma was taken for a number');
  return reading.faults.map(wordFault).join('\n');
}
