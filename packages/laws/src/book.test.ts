/**
 * Goal: every law is held against something outside this project, and every check can fail.
 * Method: runs the book of checks row by row, then tries each row and each law's arguments for honesty.
 */
import { describe, expect, it } from 'vitest';
import { book } from './book.ts';
import { dishonesties, runRow } from './check.ts';
import * as everything from './index.ts';
import { isLaw } from './law.ts';

const laws = Object.values(everything).filter(isLaw);

for (const checks of book) {
  describe(checks.law, () => {
    for (const row of checks.rows) {
      it(`agrees with ${row.source}: ${row.case}`, () => {
        const result = runRow(checks.law, row);
        expect(
          result.ok,
          `${row.source}\n${row.case}\n${JSON.stringify(row.args ?? {})}\nours ${result.ours}, theirs ${row.expected}, allowed ${row.allowed}`,
        ).toBe(true);
      });
    }
    it('has checks that can fail and arguments that are all tested', () => {
      expect(dishonesties(checks)).toEqual([]);
    });
  });
}

describe('the laws', () => {
  it.each(laws.map((law) => [law.facts.id, law] as const))('%s is checked', (id) => {
    expect(book.some((checks) => checks.law === id && checks.rows.length > 0)).toBe(true);
  });

  it.each(laws.map((law) => [law.facts.id, law] as const))('%s states every fact', (_id, { facts }) => {
    const texts = [facts.id, facts.title, facts.equation, facts.validFor, facts.leavesOut, facts.source];
    const args = Object.values(facts.args).flatMap((a) => [a.symbol, a.is, a.unit]);
    for (const text of [...texts, ...args, facts.gives.symbol, facts.gives.is, facts.gives.unit]) {
      expect(text.trim()).not.toBe('');
    }
    for (const a of Object.values(facts.args)) expect(facts.equation).toContain(a.symbol);
  });

  it.each(laws.map((law) => [law.facts.id, law] as const))('%s takes the arguments its facts name', (_id, law) => {
    const signature = /^\s*\(\s*\{([^}]*)\}/.exec(law.bare.toString())?.[1] ?? '';
    const taken = signature
      .split(',')
      .map((name) => name.split(':')[0]?.trim())
      .filter(Boolean);
    expect(taken).toEqual(Object.keys(law.facts.args));
  });

  it('have unique ids', () => {
    const ids = laws.map((law) => law.facts.id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });
});
