/**
 * Goal: the example in the README works as printed.
 * Method: the function below is the example; the README must hold its text, letter by letter.
 */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { decodeLimits, encodeLimits, type LimitsDraft, limitsFaults, makeKeyPair, wordFault } from './index.ts';
import { sampleDraft } from './limits/sample.fixture.ts';

/** Signs what a reckoning gave, and reads it as the vehicle does, which knows only the owner's public key. */
export function handOver(draft: LimitsDraft, seed: Uint8Array): string {
  const faults = limitsFaults(draft);
  if (faults.length > 0) return faults.map(wordFault).join('\n');

  const owner = makeKeyPair(seed);
  const text = encodeLimits(draft, owner.secretKey);
  const read = decodeLimits(text, { publicKey: owner.publicKey });
  return read.ok ? `${read.record.vehicle}: ${read.record.limits.speedCap.value} m/s` : wordFault(read.fault);
}

it('the example hands a record over, and says what is wrong with a bad one', () => {
  const draft = sampleDraft();
  const seed = new Uint8Array(32).fill(1);
  expect(handOver(draft, seed)).toBe(`${draft.vehicle}: ${draft.limits.speedCap.value} m/s`);
  const bad = { ...draft, vehicle: '' };
  expect(handOver(bad, seed)).toMatch(/^At \/vehicle: found ""\. Accepted: one line of 1 to 120 characters\./);
});

it('the README prints that very function', () => {
  const here = readFileSync(new URL(import.meta.url), 'utf8');
  const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
  const example = here.slice(here.indexOf('/** Signs what'), here.indexOf("\n\nit('the example"));
  expect(example.length).toBeGreaterThan(300);
  expect(readme).toContain(example);
});
