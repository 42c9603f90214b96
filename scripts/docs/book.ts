/** The book of checks: an index page, and a page for each subject with every law, its facts and its rows. */
import { book } from '@longrein/engineering/book';
import * as laws from '@longrein/laws';
import { type AnyLaw, type Argument, acceptedRange, isLaw } from '@longrein/laws';
import { type CheckKind, type CheckResult, type Checks, runRow } from '@longrein/laws/check';
import { quantityBook } from '../../packages/engineering/src/quantity/book.ts';
import { circuitsBook } from '../../packages/laws/src/circuits/book.ts';
import { conductorsBook } from '../../packages/laws/src/conductors/book.ts';
import { driveBook } from '../../packages/laws/src/drive/book.ts';
import { heatBook } from '../../packages/laws/src/heat/book.ts';
import { linkBook } from '../../packages/laws/src/link/book.ts';
import { motionBook } from '../../packages/laws/src/motion/book.ts';
import { pictureBook } from '../../packages/laws/src/picture/book.ts';
import { supplyBook } from '../../packages/laws/src/supply/book.ts';
import type { Page } from '../tree.ts';
import { cell, code, GENERATED, page, sentence, slug, table } from './markdown.ts';
import { errorOf, percent, shown } from './numbers.ts';

/** A subject of the book: the folder its checks stand in, and the title of its page. */
interface Subject {
  readonly folder: string;
  readonly title: string;
  readonly book: readonly Checks[];
}

const SUBJECTS: readonly Subject[] = [
  { folder: 'conductors', title: 'Conductors and fuses', book: conductorsBook },
  { folder: 'drive', title: 'Motors, gears, bridges and steering', book: driveBook },
  { folder: 'supply', title: 'Packs, charging and converters', book: supplyBook },
  { folder: 'heat', title: 'Heat', book: heatBook },
  { folder: 'motion', title: 'Motion, stability and soft ground', book: motionBook },
  { folder: 'link', title: 'Radio link', book: linkBook },
  { folder: 'picture', title: 'Picture and sight', book: pictureBook },
  { folder: 'circuits', title: 'Whole circuits, several laws at once', book: circuitsBook },
  { folder: 'quantity', title: 'Quantities, cases and doubt', book: quantityBook },
];

const KINDS: readonly (readonly [CheckKind, string])[] = [
  ['published', 'a standard, a table, a worked example or a data set that was seen'],
  ['reference library', 'a general-purpose library computes the same thing'],
  ['memory', 'a published value, quoted from memory'],
  ['common practice', 'a rule of the trade, without a source'],
];

/** All checks of one law or method, gathered from wherever they are written. */
interface Group {
  readonly name: string;
  readonly of: AnyLaw | undefined;
  readonly rows: readonly (CheckResult & { readonly because?: string })[];
}

type Full = Subject & { readonly groups: readonly Group[] };

/** @throws Error where the book holds checks that no page shows */
export function bookOfChecks(): Page[] {
  const subjects = fullSubjects();
  const paged = new Set(SUBJECTS.flatMap((subject) => subject.book));
  const lost = book.filter((checks) => !paged.has(checks)).map((checks) => checks.law);
  if (lost.length > 0) throw new Error(`no page of the book of checks shows ${lost.join(', ')}`);
  return [
    { path: 'docs/book-of-checks.md', text: indexPage(subjects) },
    ...subjects.map((subject) => ({ path: `docs/checks/${subject.folder}.md`, text: subjectPage(subject) })),
  ];
}

/** Where a law and its rows are printed, from the folder docs/, by the id of the law. */
export function lawLinks(): ReadonlyMap<string, string> {
  return new Map(
    fullSubjects().flatMap(({ folder, groups }) =>
      groups
        .filter((group) => group.of !== undefined)
        .map((group): [string, string] => [group.name, `checks/${folder}.md#${slug(headingOf(group))}`]),
    ),
  );
}

/** Every subject with its groups. What is checked in several places is printed in the first. */
const fullSubjects = once((): Full[] => {
  const all = SUBJECTS.flatMap((subject) => subject.book.map((checks) => ({ checks, folder: subject.folder })));
  const groups = new Map<string, { readonly folder: string; readonly group: Group }>();
  for (const { checks, folder } of all) {
    const { law, of } = checks;
    const before = groups.get(law);
    const rows = [...(before?.group.rows ?? []), ...rowsDone(checks)];
    groups.set(law, { folder: before?.folder ?? folder, group: { name: law, of, rows } });
  }
  return SUBJECTS.map((subject) => ({
    ...subject,
    groups: [...groups.values()].filter(({ folder }) => folder === subject.folder).map(({ group }) => group),
  }));
});

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function rowsDone({ law, rows }: Checks): Group['rows'] {
  return rows.map((row) => ({ ...runRow(law, row), ...(row.because === undefined ? {} : { because: row.because }) }));
}

const isSeen = ({ kind }: CheckResult): boolean => kind === 'published' || kind === 'reference library';

const headingOf = ({ name, of }: Group): string => (of ? of.facts.id : name);

function indexPage(subjects: readonly Full[]): string {
  const groups = subjects.flatMap((subject) => subject.groups);
  const rows = groups.flatMap((group) => group.rows);
  const covered = groups.filter((group) => group.of).length;
  const all = Object.values(laws).filter(isLaw).length;
  const outside = rows.filter(isSeen).length;
  const seen = groups.filter((group) => group.of && group.rows.some(isSeen)).length;
  const notices = rows.map((row) => row.notices).sort((a, b) => a - b);
  const middle = notices[Math.floor(notices.length / 2)] ?? 0;
  const of = (kind: CheckKind, within = rows) => within.filter((row) => row.kind === kind).length;
  return page(
    '# The book of checks',
    GENERATED,
    `Every law, and every method that is not a law, is compared here with something outside this project. ${rows.length} rows
from ${new Set(rows.map((row) => row.source)).size} sources cover ${covered} of ${all} laws. In ${outside} rows the outside value was seen in a named source or computed
by a named library, and ${seen} laws have at least one such row; the other rows say that they come from memory or from
common practice. ${rows.filter((row) => !row.ok).length} rows disagree. Half of the rows would notice an error of ${percent(middle)} or less.`,
    '`npm run checks` prints the same rows, computed anew; `longrein checks --json` gives them to a program.',
    '## How to read a row',
    [
      '- **Expected** is the outside value, **ours** what the code gives for the same case, both in SI and to five digits.',
      '- **Error** is the relative difference of the two, **allowed** the difference up to which the row agrees. It covers the',
      '  rounding of the source and what the law is known to leave out; above 10 % the reason stands with the case. An error',
      '  below a thousand-millionth is rounding of the machine and is shown as 0.',
      '- **Notices** is the smallest relative error of ours, up or down, that the row would be sure to notice.',
      '- **Kind** tells how good the outside value is:',
      ...KINDS.map(([kind, is]) => `  - _${kind}_ (${of(kind)} rows): ${is}.`),
    ],
    `A row must be able to fail: our result scaled by 1.2 and by 0.8 has to miss it. For each law, moving any one argument by
20 % has to break at least one row. [packages/laws/src/check.ts](../packages/laws/src/check.ts) says how, and the tests refuse a check that is not so.`,
    '## Counts',
    table(
      ['Subject', 'Laws', 'Methods', 'Rows', ...KINDS.map(([kind]) => kind)],
      subjects.map((subject) => {
        const here = subject.groups.flatMap((group) => group.rows);
        const lawCount = subject.groups.filter((group) => group.of).length;
        return [
          `[${subject.title}](checks/${subject.folder}.md)`,
          String(lawCount),
          String(subject.groups.length - lawCount),
          String(here.length),
          ...KINDS.map(([kind]) => String(of(kind, here))),
        ];
      }),
    ),
    ...subjects.flatMap((subject) => [`## ${subject.title}`, contents(subject)]),
  );
}

function contents({ folder, groups }: Full): string[] {
  return groups.map((group) => {
    const rows = group.rows.length === 1 ? '1 row' : `${group.rows.length} rows`;
    const title = group.of ? `: ${group.of.facts.title}` : '';
    return `- [${headingOf(group)}](checks/${folder}.md#${slug(headingOf(group))})${title} (${rows})`;
  });
}

function subjectPage({ title, groups }: Full): string {
  return page(
    `# Checks: ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
    `${GENERATED} How to read it: [the book of checks](../book-of-checks.md).`,
    ...groups.flatMap((group) => [`## ${headingOf(group)}`, ...(group.of ? facts(group.of) : []), rowsOf(group)]),
  );
}

function facts({ facts: { title, equation, args, gives, validFor, leavesOut, source } }: AnyLaw): string[] {
  const symbols = Object.values(args as Readonly<Record<string, Argument>>).map(
    (argument) => `${argument.symbol}: ${argument.is} (${acceptedRange(argument)})`,
  );
  return [
    `**${title}**`,
    code(equation),
    [
      `- Gives ${gives.symbol}, ${gives.is}${gives.unit === '1' ? '' : ` [${gives.unit}]`}`,
      ...symbols.map((line) => `- ${line}`),
    ].join('\n'),
    `Valid for ${validFor}. Leaves out: ${leavesOut}. Source: ${sentence(source)}`,
  ];
}

function rowsOf({ rows }: Group): string[] {
  return table(
    ['Case', 'Expected', 'Ours', 'Error', 'Allowed', 'Notices', 'Kind', 'Source'],
    rows.map((row) => {
      const error = errorOf(row.ours, row.expected);
      return [
        cell(row.because === undefined ? row.case : `${row.case} (so wide because ${row.because})`),
        shown(row.expected),
        shown(row.ours),
        percent(error),
        percent(row.allowed),
        percent((row.allowed + error) / (1 - error)),
        row.kind,
        cell(row.source),
      ];
    }),
  );
}
