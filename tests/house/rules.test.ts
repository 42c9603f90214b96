/**
 * Goal: the house rules hold in every tracked file, and each rule is known to bite.
 * Method: each rule is first tried on a text that breaks it and on one that only comes near, then on the house.
 */
import { describe, expect, it } from 'vitest';
import { files } from '../../scripts/tree.ts';
import { codeRules } from './code-rules.ts';
import { textRules } from './text-rules.ts';

const all = files(/./);

describe.each([...textRules, ...codeRules])('$claim', ({ covers, faults, broken, kept }) => {
  it('is noticed where it is broken, and only there', () => {
    expect(covers(broken.path) && covers(kept.path)).toBe(true);
    const lines = new Set(faults(broken).map((fault) => fault.line));
    expect([...lines].sort((a, b) => a - b)).toEqual(broken.at);
    expect(faults(kept)).toEqual([]);
  });

  it('is kept', () => {
    const covered = all.filter((page) => covers(page.path));
    expect(covered.length).toBeGreaterThan(0);
    const found = covered.flatMap((page) => faults(page).map(({ line, says }) => `${page.path}:${line} ${says}`));
    expect(found).toEqual([]);
  });
});
