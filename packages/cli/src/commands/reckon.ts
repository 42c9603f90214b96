/** Reckons a dossier and prints its findings. */
import { type FindingResult, type Reckoning, report, SUBJECTS, verdictOf } from '@longrein/engineering';
import { type Command, EXIT, type Exit, theFile, UserError } from '../command.ts';
import { daysText, decidersText, figuresText, STATE_WIDTH, stateText } from '../finding-text.ts';
import type { Io } from '../io.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { columnsOf, paint, STATES, wrap } from '../paint.ts';

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
  – informs    shown for what it tells; never decides

Findings that fail or are tight come with their figures and a remedy. --all prints these of every finding.

Example:  longrein reckon examples/reedmere/teasel.json
          longrein reckon my-toy.json --subject "5 V supply" --all

Next:     longrein explain FILE FINDING    shows the working, down to what was measured
          longrein measure-next FILE       says which measurement would settle most`,
  options: { ...RECKON_OPTIONS, all: { type: 'boolean' }, subject: { type: 'string' } },
  run: (io, args) => {
    const file = theFile(about, args);
    const subject = subjectAsked(args.values.subject);
    const reckoning = loadReckoning(io, file, args);
    if (args.values.json) io.out(JSON.stringify(told(reckoning, subject), null, 2));
    else printReckoning(io, reckoning, { file, all: args.values.all === true, subject });
    return exitOf(reckoning);
  },
};

function subjectAsked(subject: string | boolean | undefined): string | undefined {
  if (typeof subject !== 'string' || subject in SUBJECTS) return subject as string | undefined;
  throw new UserError(`There is no subject "${subject}". Accepted: ${Object.keys(SUBJECTS).join(', ')}.`);
}

function told(reckoning: Reckoning, subject: string | undefined): ReturnType<typeof report> {
  const whole = report(reckoning);
  if (subject === undefined) return whole;
  return { ...whole, findings: whole.findings.filter((finding) => finding.subject === subject) };
}

/** 1 where something that decides fails or is unsettled, whatever part of it was asked for. */
function exitOf(reckoning: Reckoning): Exit {
  const verdict = verdictOf(reckoning.findings);
  return verdict === 'holds' || verdict === 'tight' ? EXIT.fine : EXIT.fails;
}

interface Asked {
  readonly file: string;
  readonly all: boolean;
  readonly subject: string | undefined;
}

/** The verdict, the findings by subject, the verdict again where much stands between, what is assumed, cautions. */
function printReckoning(io: Io, reckoning: Reckoning, asked: Asked): void {
  const { vehicle, study, assumptions } = reckoning;
  const shown = reckoning.findings.filter(
    ({ finding }) => asked.subject === undefined || finding.subject === asked.subject,
  );
  const say = (text: string) => io.out(wrap(text, io.width));
  io.out(paint(io, 'strong', vehicle.name) + (vehicle.invented ? '  (invented demonstration data)' : ''));
  say(verdictText(io, reckoning));
  const inputs = `${vehicle.inputs.size} inputs, ${assumptions.length} of them assumed`;
  const counts = `${study.count} possible vehicles, seed ${study.seed}; ${inputs}; ${study.sums.size} sums`;
  io.out(paint(io, 'faint', wrap(counts, io.width)));
  const causes = new Map<string, string>();
  for (const subject of Object.keys(SUBJECTS)) {
    const here = shown.filter(({ finding }) => finding.subject === subject);
    if (here.length === 0) continue;
    io.out(`\n${paint(io, 'strong', subject)}`);
    for (const result of here) printFinding(io, result, asked.all, causes);
  }
  io.out('');
  if (asked.subject === undefined) say(verdictText(io, reckoning));
  if (assumptions.length > 0) {
    say(
      `${assumptions.length} quantities were not stated and are assumed with a wide doubt: "longrein validate ${asked.file}" lists them, "longrein measure-next ${asked.file}" says which to measure.`,
    );
  }
  printCautions(io, shown);
}

function verdictText(io: Io, { findings }: Reckoning): string {
  const deciding = findings.filter(({ finding }) => !finding.informs);
  const count = (state: keyof typeof STATES) => deciding.filter((result) => result.state === state).length;
  const informing = findings.length - deciding.length;
  const verdict = verdictOf(findings);
  const { mark, tone } = STATES[verdict];
  const counts = `${count('holds')} hold, ${count('tight')} tight, ${count('fails')} fail, ${count('unsettled')} unsettled`;
  return `Verdict: ${paint(io, tone, `${mark} ${verdict}`)} (${counts}; ${informing} only inform)`;
}

/** @param causes why findings printed before are unsettled, with the first of each: what many share is told once */
function printFinding(io: Io, result: FindingResult, all: boolean, causes: Map<string, string>): void {
  const { finding, state } = result;
  const told = stateText(io, result);
  const head = `  ${told}${' '.repeat(STATE_WIDTH + 1 - columnsOf(told))}`;
  io.out(wrap(finding.title, io.width, ' '.repeat(STATE_WIDTH + 3), head));
  if (!all && (state === 'holds' || finding.informs)) return;
  const indent = ' '.repeat(6);
  const say = (text: string) => text !== '' && io.out(wrap(text, io.width, indent));
  if (state === 'unsettled') {
    const because = result.because ?? '';
    const first = causes.get(because);
    say(first === undefined ? `Because ${because}.` : `For the same reason as ${first}.`);
    if (first === undefined) causes.set(because, result.id);
  } else say(`${figuresText(result)} ${daysText(result)}`.trim());
  if (state === 'tight' || state === 'fails') say(`Remedy: ${finding.remedy}`);
  say(decidersText(result));
  io.out(paint(io, 'faint', `${indent}${result.id}`));
}

function printCautions(io: Io, shown: readonly FindingResult[]): void {
  const open = shown.filter(({ state, finding }) => state !== 'holds' && !finding.informs);
  const cautions = new Set(open.flatMap(({ finding }) => finding.caution ?? []));
  if (cautions.size === 0) return;
  io.out(`\n${paint(io, 'strong', 'Cautions')} for the work on what does not hold:`);
  for (const caution of cautions) io.out(wrap(caution, io.width, '    ', '  - '));
  io.out(wrap('Where local rules or a qualified person say otherwise, follow them.', io.width, '    ', '  - '));
}
