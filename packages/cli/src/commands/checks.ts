/** Prints the book of checks. */
import { book } from '@longrein/engineering/book';
import { runChecks } from '@longrein/laws/check';
import { type Command, EXIT, UserError } from '../command.ts';
import type { Io } from '../io.ts';
import { nearTo } from '../near.ts';
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
    const { law, failing, json } = args.values;
    if (args.positionals.length > 0) {
      throw new UserError(`checks takes no ${args.positionals.join(' ')}; one law is asked for with --law ID.`);
    }
    const rows = rowsOf(typeof law === 'string' ? law : undefined).filter((row) => !failing || !row.ok);
    if (json) io.out(JSON.stringify(rows.map(plain), null, 2));
    else print(io, rows);
    return rows.every((row) => row.ok) ? EXIT.fine : EXIT.fails;
  },
};

type Row = ReturnType<typeof runChecks>[number];

/** @throws UserError where no row is about this law */
function rowsOf(law: string | undefined): readonly Row[] {
  const all = runChecks(book);
  if (law === undefined) return all;
  const rows = all.filter((row) => row.law === law);
  if (rows.length > 0) return rows;
  const near = nearTo(law, [...new Set(all.map((row) => row.law))]);
  throw new UserError(
    `There is no check of "${law}".${near.length > 0 ? ` Near it: ${near.join(', ')}.` : ' longrein checks lists all.'}`,
  );
}

function plain({ law, source, kind, case: of, expected, ours, allowed, ok }: Row): object {
  return { law, source, kind, case: of, expected, ours, allowed, ok };
}

function print(io: Io, rows: readonly Row[]): void {
  const n = (x: number) => String(Number(x.toPrecision(5)));
  const percent = (x: number) => `${Number((x * 100).toPrecision(2))} %`;
  io.out(
    columns([
      ['', 'law', 'case', 'expected', 'ours', 'error', 'allowed', 'notices', 'source'],
      ...rows.map((row) => [
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
  const failed = rows.filter((row) => !row.ok).length;
  const sources = new Set(rows.map((row) => row.source)).size;
  const count = `${rows.length} rows from ${sources} sources: ${rows.length - failed} agree, ${failed} do not.`;
  io.out(`\n${paint(io, failed > 0 ? 'bad' : 'good', count)}`);
}

function cut(text: string, length: number): string {
  return text.length > length ? `${text.slice(0, length - 1)}…` : text;
}
