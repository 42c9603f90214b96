/**
 * Goal: units, random numbers, cases, quantiles and influences agree with values from outside this project.
 * Method: runs every row of the book, and tries each row for its ability to fail.
 */
import { dishonesties, runRow } from '@longrein/laws/check';
import { describe, expect, it } from 'vitest';
import { quantityBook } from './book.ts';

for (const checks of quantityBook) {
  describe(checks.law, () => {
    for (const row of checks.rows) {
      it(`agrees with ${row.source}: ${row.case}`, () => {
        const { ok, ours } = runRow(checks.law, row);
        expect(ok, `ours ${ours}, theirs ${row.expected}, allowed ${row.allowed}`).toBe(true);
      });
    }
    it('has checks that can fail', () => {
      expect(dishonesties(checks)).toEqual([]);
    });
  });
}
