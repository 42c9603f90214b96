/**
 * What the example dossiers are there to show, as their README tells it: a well measured vehicle that holds, a poorly
 * measured one that stays undecided, and a conversion that goes wrong in the usual ways and is put right.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { State } from '../../reckoning/finding.ts';
import type { FindingId } from '../../reckoning/findings/all.ts';
import { type FindingResult, reckon } from '../../reckoning/reckon.ts';
import { wordFault } from '../faults.ts';
import { readDossier } from '../read.ts';
import { resolve } from '../resolve.ts';
import { builtInShelf } from './built-in.ts';

const REEDMERE = new URL('../../../../../examples/reedmere/', import.meta.url);

function deciding(name: string): readonly FindingResult[] {
  const reading = readDossier(readFileSync(new URL(`${name}.json`, REEDMERE), 'utf8'), builtInShelf());
  if (!reading.ok) throw new Error(reading.faults.map(wordFault).join('\n'));
  const { findings } = reckon(resolve(reading.value, builtInShelf()), { cases: 500 });
  return findings.filter(({ finding }) => finding.informs !== true);
}

const inState = (results: readonly FindingResult[], ...states: State[]): FindingId[] =>
  results.filter(({ state }) => states.includes(state)).map(({ id }) => id);

describe('the vehicles of Reedmere', () => {
  it('Sedge holds what is asked of it, but for at most two findings that are tight', () => {
    const results = deciding('sedge');
    expect(inState(results, 'fails', 'unsettled')).toEqual([]);
    expect(inState(results, 'tight').length).toBeLessThanOrEqual(2);
    expect(inState(results, 'holds').length).toBeGreaterThan(50);
  });

  it('Burdock leaves more than a tenth of its findings undecided, as too little of it is measured', () => {
    const results = deciding('burdock');
    expect(inState(results, 'tight', 'unsettled').length).toBeGreaterThan(results.length / 10);
  });

  it('Teasel fails, as it was first converted, in every way its remark and the README name', () => {
    const failed = inState(deciding('teasel'), 'fails');
    const named: FindingId[] = [
      'brown-out-stall',
      'converter-input-low',
      'motor-voltage',
      'duty-ceiling',
      'fuse-below-wire',
      'charger-suits',
      'cap-within-sight',
      'winding-stall',
    ];
    expect(failed).toEqual(expect.arrayContaining(named));
  });

  it('Teasel fails in nothing that decides, as it was converted again', () => {
    expect(inState(deciding('teasel-second'), 'fails', 'unsettled')).toEqual([]);
  });
});
