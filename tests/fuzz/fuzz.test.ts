/**
 * Goal: no text makes the reader throw, and whatever it accepts can be resolved, reckoned and written again.
 * Method: sound dossiers damaged at random, and random values in the shape of a dossier; the seed is fixed here, while
 * `npm run fuzz` runs fifty times as many on a seed of its own.
 */
import { ERROR_CODES, type ErrorCode } from '@longrein/engineering';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { damaged } from './damage.ts';
import { SEEDS } from './seeds.ts';
import { shaped } from './shaped.ts';
import { newTally, type Tally, tryText } from './trial.ts';

const SEED = 20_240_229;
const DAMAGED = 1600;
const SHAPED = 400;

const all: Record<string, Tally> = { sound: newTally(), damaged: newTally(), shaped: newTally() };

const of = (name: string): Tally => all[name] ?? newTally();

describe('any text', () => {
  it('that is a sound dossier is read, resolved and reckoned', () => {
    for (const { text } of SEEDS) tryText(text, of('sound'), 1);
    expect(of('sound')).toMatchObject({ accepted: SEEDS.length, refused: 0, reckoned: SEEDS.length });
    expect(of('sound').states.size).toBeGreaterThan(2);
  }, 300_000);

  it(`that is a damaged dossier (${DAMAGED} of them) is refused with a reason or read`, () => {
    const tally = of('damaged');
    fc.assert(
      fc.property(damaged, (text) => tryText(text, tally, 12)),
      { seed: SEED, numRuns: DAMAGED, endOnFailure: true },
    );
    expect(tally.accepted).toBeGreaterThan(DAMAGED / 20);
    expect(tally.refused).toBeGreaterThan(DAMAGED / 4);
    expect(tally.reckoned).toBeGreaterThan(5);
  }, 300_000);

  it(`that has the shape of a dossier (${SHAPED} of them) is refused with a reason or read`, () => {
    const tally = of('shaped');
    fc.assert(
      fc.property(shaped, (text) => tryText(text, tally, 1)),
      { seed: SEED, numRuns: SHAPED, endOnFailure: true },
    );
    expect(tally.refused).toBeGreaterThan(SHAPED / 4);
  }, 300_000);

  it('has met every kind of fault of the catalogue', () => {
    const met = new Set(Object.values(all).flatMap(({ codes }) => [...codes.keys()]));
    const never = ERROR_CODES.map(({ code }): ErrorCode => code).filter((code) => !met.has(code));
    expect(never).toEqual([]);
  });

  afterAll(() => {
    for (const [name, { accepted, refused, reckoned, codes, states }] of Object.entries(all)) {
      const list = (map: ReadonlyMap<string, number>) => [...map].map(([key, n]) => `${key} ${n}`).join(', ');
      console.log(
        `${name}: ${accepted} accepted, ${refused} refused, ${reckoned} reckoned; ${list(codes)}; ${list(states)}`,
      );
    }
  });
});
