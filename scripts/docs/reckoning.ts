/** Every sum and every finding of the reckoning, by subject. */
import {
  CHEMISTRIES,
  type Constant,
  FINDINGS,
  type Finding,
  formatValue,
  isSumId,
  type Layout,
  QUANTITIES,
  type QuantityFacts,
  type Ref,
  type Route,
  SUBJECTS,
  SUMS,
} from '@longrein/engineering';
import { quantityOf } from '../../packages/engineering/src/dossier/facts/quantities.ts';
import { PLAIN_LAYOUT } from '../../packages/engineering/src/reckoning/testing.ts';
import type { Page } from '../tree.ts';
import { lawLinks } from './book.ts';
import { code, GENERATED, page, sentence, slug } from './markdown.ts';

/** Vehicles of different kinds, to see whether a tabulated figure depends on the kind. */
const LAYOUTS: readonly Layout[] = CHEMISTRIES.flatMap((chemistry) =>
  (['ferrite', 'neodymium'] as const).map((magnet) => ({
    ...PLAIN_LAYOUT,
    chemistry,
    toyChemistry: chemistry,
    magnet,
  })),
);

export function sums(): Page[] {
  const laws = lawLinks();
  const count = Object.keys(SUMS).length;
  const sections = Object.entries(SUBJECTS).flatMap(([subject, ids]) => [
    `## ${subject}`,
    ...ids.map((id) => sumBlock(id, laws)),
  ]);
  const text = page(
    '# Sums',
    GENERATED,
    `A sum is a derived quantity that can show its working. The reckoning works ${count} of them out for every possible vehicle;
those that mean nothing for a vehicle, such as the hold of a snap steering on one with a servo, are left out. Where a sum
has several routes, the first whose inputs are known is taken, and \`longrein explain FILE SUM\` says which. What a route
uses is another sum, or a quantity of [the dossier](dossier.md). A sum without a law is plain bookkeeping.`,
    contents(Object.keys(SUBJECTS)),
    ...sections,
  );
  return [{ path: 'docs/sums.md', text }];
}

function contents(headings: readonly string[]): string {
  return headings.map((heading) => `- [${heading}](#${slug(heading)})`).join('\n');
}

function sumBlock(id: keyof typeof SUMS, laws: ReadonlyMap<string, string>): string {
  const { title, unit, caveat, when, routes } = SUMS[id];
  return [
    `### ${id}`,
    '',
    `${sentence(title)}${unit === '1' ? '' : ` Shown in ${unit}.`}${when ? ' Only for vehicles it means something for.' : ''}`,
    ...routes.flatMap((route, i) => ['', ...routeBlock(route, routes.length > 1 ? i + 1 : undefined, laws)]),
    ...(caveat === undefined ? [] : ['', `Mind: ${caveat}`]),
  ].join('\n');
}

function routeBlock(route: Route, number: number | undefined, laws: ReadonlyMap<string, string>): string[] {
  const name = number === undefined ? '' : `Route ${number}${route.name ? `, ${route.name}` : ''}: `;
  const constants = constantsOf(route);
  return [
    `${name}${code(route.formula.replaceAll(/[{}]/g, ''))}`,
    '',
    ...Object.entries(route.uses).map(([short, ref]) => `- ${code(short)}: ${refLink(ref)}`),
    ...constants,
    ...route.laws.map(({ facts }) => {
      const to = laws.get(facts.id);
      return `- law: ${to === undefined ? facts.title : `[${facts.title}](${to})`}`;
    }),
  ];
}

/** The tabulated figures of a route: with their value where it is the same for every vehicle. */
function constantsOf({ takes }: Route): string[] {
  if (!takes) return [];
  const tables = LAYOUTS.map((layout) => takes(layout));
  const names = [...new Set(tables.flatMap((constants) => Object.keys(constants)))];
  return names.map((name) => {
    const found = tables.map((constants) => constants[name]).filter((c): c is Constant => c !== undefined);
    const [first] = found;
    if (!first) throw new Error(`the figure ${name} is named and never given`);
    const values = new Set(found.map(({ value, unit }) => formatValue(value, unit)));
    const value = values.size === 1 && !isOfVehicle(first) ? `${[...values].join('')}, ` : '';
    return `- ${code(name)}: ${value}${first.is} (${first.source})`;
  });
}

/** Is it a count or choice of the vehicle at hand, and not a figure out of a table? */
const isOfVehicle = ({ source }: Constant): boolean =>
  /\b(?:toy|pack fitted|conversion|dossier|vehicle)\b/.test(source);

/** A sum as a link to its heading; an input with its title. */
function refLink(ref: Ref, from = ''): string {
  if (isSumId(ref)) return `[${ref}](${from}#${slug(ref)})`;
  const facts = factsOfInput(ref);
  return facts ? `${code(ref)}, ${facts.title}` : code(ref);
}

/** The facts of an input; axles and wire runs share those of their kind. */
function factsOfInput(id: string): QuantityFacts | undefined {
  const quantity = quantityOf(id);
  return quantity && QUANTITIES[quantity];
}

export function findings(): Page[] {
  const all: readonly (readonly [string, Finding])[] = Object.entries(FINDINGS);
  const informing = all.filter(([, finding]) => finding.informs).length;
  const subjects = Object.keys(SUBJECTS).filter((subject) => all.some(([, finding]) => finding.subject === subject));
  const text = page(
    '# Findings',
    GENERATED,
    `A finding is a claim about the vehicle: what it needs, what it has, and in how many of 100 possible vehicles it holds. It
_holds_ in 95 or more, is _tight_ in 50 to 95, _fails_ in fewer, and is _unsettled_ where something is not known or cannot
be computed. Of the ${all.length} findings, ${informing} only inform: they are shown and never decide the verdict. A finding that means
nothing for a vehicle is not judged. \`longrein explain FILE FINDING\` shows the working of both sides.`,
    contents(subjects),
    ...subjects.flatMap((subject) => [
      `## ${subject}`,
      ...all.filter(([, finding]) => finding.subject === subject).map(([id, finding]) => findingBlock(id, finding)),
    ]),
  );
  return [{ path: 'docs/findings.md', text }];
}

function findingBlock(id: string, finding: Finding): string {
  const { title, unit, sense, need, has, remedy, caution, informs, when } = finding;
  const notes = [informs ? 'Informs, never decides.' : '', when ? 'Only for vehicles it means something for.' : ''];
  return [
    `### ${id}`,
    '',
    [`**${title}.**`, ...notes.filter(Boolean)].join(' '),
    '',
    `- has: ${refLink(has, 'sums.md')}${unit === '1' ? '' : `, in ${unit}`}`,
    `- needs ${sense}: ${refLink(need, 'sums.md')}`,
    `- remedy: ${remedy}`,
    ...(caution === undefined ? [] : [`- caution: ${caution}`]),
  ].join('\n');
}
