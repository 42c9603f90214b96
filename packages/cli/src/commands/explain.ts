/** Explains a finding or sum down to what was measured. */
import {
  type Explanation,
  explainFinding,
  explainSum,
  type FindingExplanation,
  type FindingResult,
  formatValue,
  isSumId,
  type Reckoning,
  SUM_IDS,
  SUMS,
} from '@longrein/engineering';
import { type Command, EXIT, UserError, wholeNumber } from '../command.ts';
import { daysText, decidersText, figuresText, stateText } from '../finding-text.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { nearTo } from '../near.ts';
import { paint, wrap } from '../paint.ts';

const about = { name: 'explain', usage: 'FILE ID [--depth N] [--cases N] [--seed N] [--shelf FOLDER] [--json]' };
/** Deeper than any chain of sums. */
const DEEPEST = 1000;

export const explainCommand: Command = {
  ...about,
  summary: 'show the working of a finding or a sum, down to what was measured',
  help: `
ID is the id of a finding or a sum, as "longrein reckon" prints under each finding. The formula is shown in words and
then with the numbers of the vehicle exactly as stated, so that it can be checked with a pocket calculator; the band
beside each result holds 90 of 100 possible vehicles. Below it stands what it rests on, each under the name it has in
the formula. Laws come with their source and with what they leave out. --depth says how many levels to walk down.

Example:  longrein explain examples/reedmere/teasel.json brown-out-stall
          longrein explain my-toy.json pack.runTime --depth 2`,
  options: { ...RECKON_OPTIONS, depth: { type: 'string' } },
  run: (io, args) => {
    const [file, id, ...more] = args.positionals;
    if (file === undefined || id === undefined) {
      throw new UserError(
        `${file === undefined ? 'Which dossier, and what of it' : 'Explain what'}? "longrein reckon FILE --all" prints the ids. Usage: longrein explain ${about.usage}`,
      );
    }
    if (more.length > 0) throw new UserError(`One id at a time; found also ${more.join(' ')}.`);
    const depth = wholeNumber(args, 'depth', 0, DEEPEST, DEEPEST);
    const reckoning = loadReckoning(io, file, args);
    const explained = explain(reckoning, id);
    if (args.values.json) io.out(JSON.stringify(explained, asJson, 2));
    else if ('finding' in explained) printFinding(io, explained, depth);
    else print({ io, depth, laws: new Set() }, explained, 0);
    return EXIT.fine;
  },
};

function explain(reckoning: Reckoning, id: string): FindingExplanation | Explanation {
  const finding = reckoning.findings.find((result) => result.id === id);
  if (finding) return explainFinding(reckoning, finding);
  if (isSumId(id)) return explainSum(reckoning, id);
  const near = nearTo(id, [...reckoning.findings.map((result) => result.id as string), ...SUM_IDS]);
  const hint = near.length > 0 ? `Near it: ${near.join(', ')}.` : 'longrein reckon FILE --all prints the ids.';
  throw new UserError(`There is no finding or sum "${id}" for this vehicle. ${hint}`);
}

/** JSON without what only the program uses, the verdict of each case; what is no number is null. */
function asJson(key: string, value: unknown): unknown {
  if (key === 'verdicts') return undefined;
  return typeof value === 'number' && !Number.isFinite(value) ? null : value;
}

function printFinding(io: Io, { finding, has, need }: FindingExplanation, depth: number): void {
  const context = { io, depth, laws: new Set<string>() };
  io.out(wrap(`${paint(io, 'strong', finding.finding.title)} ${paint(io, 'faint', `[${finding.id}]`)}`, io.width));
  for (const line of findingLines(io, finding)) io.out(wrap(line, io.width, '  '));
  io.out(`\n${paint(io, 'strong', 'It has')}`);
  print(context, has, 0);
  io.out(`\n${paint(io, 'strong', `It needs ${finding.finding.sense}`)}`);
  print(context, need, 0);
}

function findingLines(io: Io, result: FindingResult): string[] {
  const { finding, state } = result;
  const lines = [
    stateText(io, result),
    state === 'unsettled' ? `Because ${result.because}.` : `${figuresText(result)} ${daysText(result)}`.trim(),
    decidersText(result),
    `${state === 'tight' || state === 'fails' ? 'Remedy' : 'Should it fail'}: ${finding.remedy}`,
    finding.caution === undefined ? '' : `Caution: ${finding.caution}`,
  ];
  return lines.filter((line) => line !== '');
}

interface Context {
  readonly io: Io;
  readonly depth: number;
  /** Laws told in full already. */
  readonly laws: Set<string>;
}

function print(context: Context, node: Explanation, level: number): void {
  const { io } = context;
  const indent = '  '.repeat(level);
  const head = (text: string) => io.out(wrap(text, io.width, `${indent}    `, `${indent}- `));
  const say = (text: string) => io.out(wrap(text, io.width, `${indent}    `));
  const name = node.as === undefined ? '' : `${paint(io, 'faint', `${node.as.join(', ')}:`)} `;
  if (node.kind === 'input') {
    const from = node.where === '' ? node.origin : `${node.origin}, ${node.where}`;
    head(`${name}${node.title}: ${paint(io, 'strong', node.written)} (${from})`);
    if (node.remark) io.out(paint(io, 'faint', wrap(node.remark, io.width, `${indent}    `)));
  } else if (node.kind === 'missing') {
    head(`${name}${node.title}: ${paint(io, 'bad', 'not known')}`);
    say(node.how);
  } else if (node.kind === 'shown above') {
    head(`${name}${node.title} = ${node.value} ${paint(io, 'faint', `[${node.id}, explained above]`)}`);
  } else {
    const { p5, p95 } = node.band;
    const [low, high] = [p5, p95].map((si) => formatValue(si, SUMS[node.id].unit));
    const spread = low === high ? '' : ` (${low} to ${high})`;
    head(`${name}${node.title} = ${paint(io, 'strong', node.value)}${spread} ${paint(io, 'faint', `[${node.id}]`)}`);
    printWorking(context, node, say);
    if (level < context.depth) for (const used of node.uses) print(context, used, level + 1);
  }
}

type SumNode = Extract<Explanation, { kind: 'sum' }>;

function printWorking({ io, laws }: Context, node: SumNode, say: (text: string) => void): void {
  const faint = (text: string) => say(io.colour ? paint(io, 'faint', text) : text);
  if (node.route) say(`Route: ${node.route}`);
  say(`= ${node.formula}`);
  // A single name with its value would say the value twice.
  if (node.numbers !== node.formula && node.formula.includes(' ')) say(`= ${node.numbers}`);
  for (const law of node.laws) {
    if (laws.has(law.id)) faint(`Law: ${law.title}, as above.`);
    else faint(`Law: ${law.title}. ${law.equation}. Source: ${law.source}. Leaves out: ${law.leavesOut}.`);
    laws.add(law.id);
  }
  for (const c of node.constants) faint(`${c.name}: ${c.is}, ${c.value} (${c.source})`);
  if (node.caveat) say(`Mind: ${node.caveat}`);
  if (node.problem) say(`Problem: ${node.problem}`);
}
