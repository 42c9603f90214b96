/** Prints the book of checks. */
import { book } from '@longrein/engineering/book';
import { runChecks } from '@longrein/laws/check';
import { type Command, EXIT } from '../command.ts';
import { columns, paint } from '../paint.ts';

export const checksCommand: Command = {
  name: 'checks',
  usage: '[--law ID] [--failing] [--json]',
  summary: 'print the book of checks: every law against something outside this project',
  help: `
Each row compares one result of ours with a published value, a standard, a reference library or a rule of the trade.
"notices" is the smallest error of ours that the row would be sure to notice.

Example:  longrein checks --law duty-ceiling
          longrein checks --failing`,
  options: { law: { type: 'string' }, failing: { type: 'boolean' }, json: { type: 'boolean' } },
  run: (io, args) => {
    const results = runChecks(book).filter(
      (row) => (args.values.law === undefined || row.law === args.values.law) && (!args.values.failing || !row.ok),
    );
    const failed = results.filter((row) => !row.ok).length;
    if (args.values.json) {
      const rows = results.map(({ law, source, kind, case: of, expected, ours, allowed, ok }) => ({
        law,
        source,
        kind,
        case: of,
        expected,
        ours,
        allowed,
        ok,
      }));
      io.out(JSON.stringify(rows, null, 2));
    } else {
      const n = (x: number) => String(Number(x.toPrecision(5)));
      const percent = (x: number) => `${Number((x * 100).toPrecision(2))} %`;
      io.out(
        columns([
          ['', 'law', 'case', 'expected', 'ours', 'error', 'allowed', 'notices', 'source'],
          ...results.map((row) => [
            row.ok ? '✓' : '✗',
            row.law,
            cut(row.case, 60),
            n(row.expected),
            n(row.ours),
            percent(Math.abs(row.ours / row.expected - 1)),
            percent(row.allowed),
            percent(row.notices),
            `${cut(row.source, 70)} (${row.kind})`,
          ]),
        ]),
      );
      const sources = new Set(results.map((row) => row.source)).size;
      io.out(
        paint(
          io,
          failed > 0 ? 'bad' : 'good',
          `\n${results.length} rows from ${sources} sources: ${results.length - failed} agree, ${failed} do not.`,
        ),
      );
    }
    return failed === 0 ? EXIT.fine : EXIT.fails;
  },
};

function cut(text: string, length: number): string {
  return text.length > length ? `${text.slice(0, length - 1)}…` : text;
}
