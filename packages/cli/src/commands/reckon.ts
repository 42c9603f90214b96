/** Reckons a dossier and prints its findings. */
import {
  type FindingResult,
  formatDifference,
  formatValue,
  type Reckoning,
  report,
  SUBJECTS,
  verdictOf,
} from '@longrein/engineering';
import { type Command, EXIT, type Exit, theFile, UserError } from '../command.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { paint, STATES, wrap } from '../paint.ts';

const about = {
  name: 'reckon',
  usage: 'FILE [--all] [--subject NAME] [--cases N] [--seed N] [--shelf FOLDER] [--json]',
};

export const reckonCommand: Command = {
  ...about,
  summary: 'work out what the conversion can do, and which findings hold',
  help: `
Draws N equally likely vehicles (1,000 unless --cases says otherwise) that all agree with what was measured, works
every sum out for each, and says of every finding in how many of 100 possible vehicles it holds:

  ✓ holds      in 95 or more          ~ tight   in 50 to 95
  ✗ fails      in fewer than 50       ? unsettled: something is not known or cannot be computed

Findings that fail or are tight come with a remedy. --all prints the figures of those that hold as well.

Example:  longrein reckon examples/reedmere/teasel.json
          longrein reckon my-toy.json --subject "5 V supply" --all

Next:     longrein explain FILE FINDING    shows the working, down to what was measured
          longrein measure-next FILE       says which measurement would settle most`,
  options: { ...RECKON_OPTIONS, all: { type: 'boolean' }, subject: { type: 'string' } },
  run: (io, args) => {
    const reckoning = loadReckoning(io, theFile(about, args), args);
    if (args.values.json) io.out(JSON.stringify(report(reckoning), null, 2));
    else printReckoning(io, reckoning, args.values.all === true, subjectAsked(args.values.subject));
    return exitOf(reckoning);
  },
};

function subjectAsked(subject: string | boolean | undefined): string | undefined {
  if (typeof subject !== 'string') return undefined;
  if (subject in SUBJECTS) return subject;
  throw new UserError(`There is no subject "${subject}". Accepted: ${Object.keys(SUBJECTS).join(', ')}.`);
}

/** 1 where something that decides fails or is unsettled. */
export function exitOf(reckoning: Reckoning): Exit {
  const verdict = verdictOf(reckoning.findings);
  return verdict === 'holds' || verdict === 'tight' ? EXIT.fine : EXIT.fails;
}

/** Prints findings by subject, the summary, the assumptions and the cautions. */
export function printReckoning(io: Io, reckoning: Reckoning, all: boolean, only?: string): void {
  const { vehicle, study, findings } = reckoning;
  io.out(paint(io, 'strong', vehicle.name) + (vehicle.invented ? '  (invented demonstration data)' : ''));
  io.out(
    paint(
      io,
      'faint',
      `${study.count} possible vehicles, seed ${study.seed}, ${vehicle.inputs.size} inputs, ${study.sums.size} sums`,
    ),
  );
  for (const subject of Object.keys(SUBJECTS)) {
    const here = findings.filter(({ finding }) => finding.subject === subject);
    if (here.length === 0 || (only !== undefined && only !== subject)) continue;
    io.out(`\n${paint(io, 'strong', subject)}`);
    for (const result of here) printFinding(io, result, all);
  }
  printSummary(io, reckoning);
}

function printFinding(io: Io, result: FindingResult, all: boolean): void {
  const { finding, state } = result;
  const { mark, word, tone } = STATES[state];
  const count = state === 'unsettled' ? '' : ` ${Math.floor(result.holds)} of 100`;
  const informs = finding.informs ? ' (informs)' : '';
  io.out(`  ${paint(io, tone, `${mark} ${word}${count}`.padEnd(19))} ${finding.title}${informs}`);
  const indent = ' '.repeat(6);
  const say = (text: string) => io.out(wrap(text, io.width, indent));
  if (state === 'unsettled') say(`Because ${result.because}.`);
  if (state === 'holds' && !all) return;
  if (state !== 'unsettled') say(figures(result));
  if (state !== 'holds') say(`Remedy: ${finding.remedy}`);
  if (result.decidedBy.length > 0) {
    say(`Decided by ${result.decidedBy.map((d) => `${d.title} (${Math.round(d.share * 100)} %)`).join('; ')}.`);
  }
  io.out(paint(io, 'faint', `${indent}${result.id}`));
}

/** 'Has 7.10 V (6.92 to 7.31 V), needs at most 7.20 V; margin 0.10 V.' */
function figures(result: FindingResult): string {
  const { finding, need, has, margin } = result;
  const show = (si: number) => formatValue(si, finding.unit);
  const band = (b: FindingResult['has']) =>
    b.p5 === b.p95 ? show(b.p50) : `${show(b.p50)} (${show(b.p5)} to ${show(b.p95)})`;
  const days = result.variation === 'none' ? '' : `; what varies from day to day: ${result.variation}`;
  return `Has ${band(has)}, needs ${finding.sense} ${band(need)}; margin ${formatDifference(margin.p50, finding.unit)} (${formatDifference(margin.p5, finding.unit)} to ${formatDifference(margin.p95, finding.unit)})${days}.`;
}

function printSummary(io: Io, reckoning: Reckoning): void {
  const { findings, assumptions } = reckoning;
  const deciding = findings.filter(({ finding }) => !finding.informs);
  const count = (state: keyof typeof STATES) => deciding.filter((result) => result.state === state).length;
  const counts = [
    `${count('holds')} hold`,
    `${count('tight')} tight`,
    `${count('fails')} fail`,
    `${count('unsettled')} unsettled`,
  ];
  const verdict = verdictOf(findings);
  io.out('');
  io.out(
    `${paint(io, 'strong', 'Verdict')}: ${paint(io, STATES[verdict].tone, `${STATES[verdict].mark} ${verdict}`)} (${counts.join(', ')}; ${findings.length - deciding.length} only inform)`,
  );
  if (assumptions.length > 0) {
    io.out(
      wrap(
        `${assumptions.length} quantities were not stated and are assumed with a wide doubt; "longrein validate FILE" lists them, "longrein measure-next FILE" says which to measure.`,
        io.width,
      ),
    );
  }
  const cautions = [
    ...new Set(
      findings
        .filter(({ state, finding }) => state !== 'holds' && finding.caution)
        .map(({ finding }) => finding.caution as string),
    ),
  ];
  for (const caution of cautions) io.out(wrap(`Caution: ${caution}`, io.width));
  if (cautions.length > 0) io.out('Where local rules or a qualified person say otherwise, follow them.');
}
