/** Says what to measure next. */
import {
  type FindingResult,
  type MeasureNext,
  measureNext,
  type NextMeasurement,
  type Reckoning,
} from '@longrein/engineering';
import { type Command, EXIT, theFile } from '../command.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { paint, wrap } from '../paint.ts';

const about = { name: 'measure-next', usage: 'FILE [--cases N] [--seed N] [--shelf FOLDER] [--json]' };
/** Lines printed; what comes after settles next to nothing. */
const SHOWN = 10;
const FINDINGS_SHOWN = 4;

export const measureNextCommand: Command = {
  ...about,
  summary: 'rank what to measure by how much it would settle',
  help: `
A verdict is open while a finding holds in some possible vehicles and not in others. Each input explains a share of
that; the one that explains most is worth measuring first. What no better than an idle input would seem to settle is
not listed: that noise floor is printed.

Example:  longrein measure-next examples/reedmere/burdock.json`,
  options: RECKON_OPTIONS,
  run: (io, args) => {
    const reckoning = loadReckoning(io, theFile(about, args), args);
    const next = measureNext(reckoning);
    if (args.values.json) io.out(JSON.stringify(plain(reckoning, next), null, 2));
    else print(io, reckoning, next);
    return EXIT.fine;
  },
};

function plain({ vehicle }: Reckoning, { open, floor, ranked }: MeasureNext): object {
  return {
    name: vehicle.name,
    open,
    floor,
    ranked: ranked.map(({ input, settles, findings }) => ({
      id: input.id,
      title: input.facts.title,
      now: input.quantity.text,
      origin: input.origin,
      settles,
      how: input.facts.how,
      findings,
    })),
  };
}

function print(io: Io, { vehicle, findings }: Reckoning, next: MeasureNext): void {
  io.out(paint(io, 'strong', vehicle.name));
  printUnknown(io, findings);
  if (next.ranked.length === 0) {
    const why =
      next.open === 0
        ? 'Every verdict is plain: in all possible vehicles the same. Nothing to measure would change one.'
        : 'No single measurement stands out from chance; several small doubts share what is open. More --cases see finer.';
    io.out(wrap(why, io.width));
    return;
  }
  next.ranked.slice(0, SHOWN).forEach((measurement, i) => {
    printMeasurement(io, measurement, i + 1);
  });
  const more = next.ranked.length - SHOWN;
  const rest = more > 0 ? `${more} more settle less than these; --json lists them. ` : '';
  const floor = `Noise floor: an idle input would seem to settle ${(next.floor * 100).toFixed(1)} %; only what is above it is listed.`;
  io.out(`\n${paint(io, 'faint', wrap(rest + floor, io.width))}`);
}

/** What is not known at all comes before any doubt: it keeps findings from being settled in the first place. */
function printUnknown(io: Io, findings: readonly FindingResult[]): void {
  const unsettled = findings.filter(({ state, finding }) => state === 'unsettled' && !finding.informs);
  const causes = new Map<string, string[]>();
  for (const { because = '', id } of unsettled) causes.set(because, [...(causes.get(because) ?? []), id]);
  if (causes.size === 0) return;
  io.out('\nUnsettled, whatever else is measured:');
  for (const [because, ids] of causes) io.out(wrap(`${ids.join(', ')}: ${because}.`, io.width, '    ', '  - '));
}

function printMeasurement(io: Io, { input, settles, findings }: NextMeasurement, place: number): void {
  const title = paint(io, 'strong', input.facts.title);
  io.out(
    `\n${wrap(`${title}: would settle ${Math.round(settles * 100)} % of what is open`, io.width, '   ', `${place}. `)}`,
  );
  const say = (text: string) => io.out(wrap(text, io.width, '   '));
  const because = input.remark === undefined ? '' : `: ${input.remark}`;
  say(`Now ${input.quantity.text} (${input.origin}${because})`);
  say(`How: ${input.facts.how}`);
  const bears = findings.slice(0, FINDINGS_SHOWN).map((f) => `${f.title} (${Math.round(f.share * 100)} %)`);
  say(`Bears on: ${bears.join('; ')}`);
}
