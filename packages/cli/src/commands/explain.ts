/** Explains a finding or sum down to what was measured. */
import {
  type Explanation,
  explainFinding,
  explainSum,
  formatValue,
  isSumId,
  type Reckoning,
  SUM_IDS,
  SUMS,
} from '@longrein/engineering';
import { type Command, EXIT, UserError } from '../command.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { paint, wrap } from '../paint.ts';

const about = { name: 'explain', usage: 'FILE ID [--depth N] [--cases N] [--seed N] [--shelf FOLDER] [--json]' };

export const explainCommand: Command = {
  ...about,
  summary: 'show the working of a finding or a sum, down to what was measured',
  help: `
ID is the id of a finding or a sum, as "longrein reckon" prints under each finding. The formula is shown in words and
then with the numbers of the vehicle exactly as stated, so that it can be checked with a pocket calculator; the band
beside each result holds 90 of 100 possible vehicles. Laws come with their source and with what they leave out.

Example:  longrein explain examples/reedmere/teasel.json brown-out-stall
          longrein explain my-toy.json pack.runTime --depth 2`,
  options: { ...RECKON_OPTIONS, depth: { type: 'string' } },
  run: (io, args) => {
    const [file, id, ...more] = args.positionals;
    if (file === undefined || id === undefined || more.length > 0) {
      throw new UserError(`Usage: longrein explain ${about.usage}`);
    }
    const depth = args.values.depth === undefined ? Number.POSITIVE_INFINITY : Number(args.values.depth);
    if (!(depth >= 0))
      throw new UserError(`--depth is "${String(args.values.depth)}". Accepted: a whole number from 0.`);
    const reckoning = loadReckoning(io, file, args);
    const explained = explain(reckoning, id);
    if (args.values.json) io.out(JSON.stringify(plain(explained), null, 2));
    else if ('finding' in explained) {
      const { finding } = explained.finding;
      io.out(paint(io, 'strong', finding.title));
      io.out(`  ${explained.finding.state}; needs ${finding.sense} what stands second.\n`);
      io.out(paint(io, 'faint', 'has'));
      print(io, explained.has, 0, depth);
      io.out(`\n${paint(io, 'faint', 'needs')}`);
      print(io, explained.need, 0, depth);
    } else print(io, explained, 0, depth);
    return EXIT.fine;
  },
};

function explain(reckoning: Reckoning, id: string): ReturnType<typeof explainFinding> | Explanation {
  const finding = reckoning.findings.find((result) => result.id === id);
  if (finding) return explainFinding(reckoning, finding);
  if (isSumId(id)) return explainSum(reckoning, id);
  const known = [...reckoning.findings.map((result) => result.id as string), ...SUM_IDS];
  const near = known.filter((candidate) => candidate.includes(id) || id.includes(candidate.split(/[.-]/)[0] ?? ''));
  throw new UserError(
    `There is no finding or sum "${id}" for this vehicle. ${near.length > 0 ? `Near it: ${near.slice(0, 12).join(', ')}.` : 'longrein reckon FILE --all prints the ids.'}`,
  );
}

/** JSON without what only the program uses: the verdict of each case, and NaN as null. */
function plain(explained: object): unknown {
  return JSON.parse(
    JSON.stringify(explained, (key, value: unknown) =>
      key === 'verdicts' || (typeof value === 'number' && !Number.isFinite(value)) ? undefined : value,
    ),
  );
}

function print(io: Io, node: Explanation, level: number, depth: number): void {
  const indent = '  '.repeat(level);
  const say = (text: string) => io.out(wrap(text, io.width, `${indent}    `));
  switch (node.kind) {
    case 'input':
      io.out(
        `${indent}- ${node.title}: ${paint(io, 'strong', node.written)} (${node.origin}${node.where ? `, ${node.where}` : ''})`,
      );
      if (node.remark) say(paint(io, 'faint', node.remark));
      return;
    case 'missing':
      io.out(`${indent}- ${node.title}: ${paint(io, 'bad', 'not known')}`);
      say(node.how);
      return;
    case 'shown above':
      io.out(`${indent}- ${node.title} = ${node.value}  ${paint(io, 'faint', `[${node.id}, explained above]`)}`);
      return;
    case 'sum':
      break;
  }
  const show = (si: number) => formatValue(si, SUMS[node.id].unit);
  const spread = node.band.p5 === node.band.p95 ? '' : `  (${show(node.band.p5)} to ${show(node.band.p95)})`;
  io.out(
    `${indent}- ${node.title} = ${paint(io, 'strong', node.value)}${spread}  ${paint(io, 'faint', `[${node.id}]`)}`,
  );
  if (node.route) say(`Route: ${node.route}`);
  say(`= ${node.formula}`);
  if (node.numbers !== node.formula) say(`= ${node.numbers}`);
  for (const law of node.laws)
    say(paint(io, 'faint', `Law: ${law.title}. ${law.source}. Leaves out: ${law.leavesOut}.`));
  for (const c of node.constants) say(paint(io, 'faint', `${c.is}: ${c.value} (${c.source})`));
  if (node.caveat) say(`Mind: ${node.caveat}`);
  if (node.problem) say(`Problem: ${node.problem}`);
  if (level < depth) for (const used of node.uses) print(io, used, level + 1, depth);
}
