/** Asks for the few measurements that matter and writes a dossier. */
import { dirname } from 'node:path';
import {
  builtInShelf,
  CHEMISTRIES,
  parseQuantity,
  partsOf,
  QUANTITIES,
  type QuantityId,
  readDossier,
  SURFACE_NAMES,
} from '@longrein/engineering';
import { type Command, EXIT, theFile, UserError } from '../command.ts';
import { writeText } from '../files.ts';
import type { Io } from '../io.ts';
import { wordFaults } from '../load.ts';
import { paint, wrap } from '../paint.ts';
import { type Answers, dossierFrom } from './new-dossier.ts';

const about = { name: 'new', usage: 'FILE' };

/** One question: how it is asked, and what makes an answer good. */
interface Question {
  readonly key: keyof Answers;
  readonly ask: string;
  readonly hint: string;
  /** Taken on an empty line; without it an answer is needed, unless `optional`. */
  readonly otherwise?: string;
  readonly optional?: boolean;
  readonly when?: (answers: Partial<Answers>) => boolean;
  /** The fault of an answer, or nothing. */
  readonly fault: (text: string) => string | undefined;
}

/** Said where nothing was answered that tells of the motor. */
const BLIND =
  'Mind: with neither the run time of the toy nor the resistance of a motor, nothing about its drive can be settled. Add one of them to the file when you can.';

const quantity = (id: QuantityId) => (text: string) => {
  const reading = parseQuantity(text, QUANTITIES[id].unit, QUANTITIES[id]);
  return reading.ok ? undefined : reading.fault.hint;
};

const oneOf = (accepted: readonly string[]) => (text: string) =>
  accepted.includes(text) ? undefined : `Accepted: ${accepted.join(', ')}.`;

const wholeFrom = (least: number, most: number) => (text: string) =>
  /^\d+$/.test(text) && Number(text) >= least && Number(text) <= most
    ? undefined
    : `A whole number from ${least} to ${most}.`;

function measured(
  key: keyof Answers,
  id: QuantityId,
  ask: string,
  example: string,
  more: Partial<Question> = {},
): Question {
  return { key, ask, hint: `${QUANTITIES[id].how} For example ${example}`, fault: quantity(id), ...more };
}

const steers = (kind: string) => (answers: Partial<Answers>) => answers.steering === kind;

const QUESTIONS: readonly Question[] = [
  {
    key: 'name',
    ask: 'What is it called?',
    hint: 'Any name up to 60 letters.',
    fault: (t) => (t.length <= 60 ? undefined : 'At most 60 letters.'),
  },
  measured('mass', 'toy.mass', 'How heavy is it, with its own pack?', '1.62 kg ± 5 g'),
  measured('length', 'toy.length', 'How long?', '380 mm ± 3 mm'),
  measured('width', 'toy.width', 'How wide?', '210 mm ± 3 mm'),
  measured('height', 'toy.height', 'How high?', '170 mm ± 5 mm'),
  measured('wheelDiameter', 'toy.wheelDiameter', 'Wheel diameter?', '85 mm ± 1 mm'),
  measured('wheelbase', 'axle.position', 'From front to rear axle?', '240 mm ± 2 mm'),
  measured('track', 'axle.track', 'Track, middle of tyre to middle of tyre?', '165 mm ± 2 mm'),
  {
    key: 'steering',
    ask: 'How does it steer?',
    hint: 'on-off: a motor pushed against a spring; servo: to any angle; skid: by driving the sides differently.',
    otherwise: 'on-off',
    fault: oneOf(['on-off', 'servo', 'skid']),
  },
  {
    key: 'clutch',
    ask: 'Does a slip clutch tick at the end of the steering?',
    hint: 'yes or no',
    otherwise: 'no',
    when: steers('on-off'),
    fault: oneOf(['yes', 'no']),
  },
  {
    key: 'driven',
    ask: 'Which axles are driven?',
    hint: 'front, rear or all',
    otherwise: 'rear',
    when: (a) => a.steering !== 'skid',
    fault: oneOf(['front', 'rear', 'all']),
  },
  {
    key: 'motorPer',
    ask: 'One drive motor for the whole vehicle, or one an axle or wheel?',
    hint: 'vehicle, axle or wheel',
    otherwise: 'vehicle',
    when: (a) => a.steering !== 'skid',
    fault: oneOf(['vehicle', 'axle', 'wheel']),
  },
  measured('motorResistance', 'motor.resistance', 'Resistance of one drive motor?', '1.3 Ω ± 10 %', {
    optional: true,
  }),
  {
    key: 'toyChemistry',
    ask: 'Original pack: which chemistry?',
    hint: 'nimh: often a wrapped row of AA cells; lipo: a soft flat bag; nmc: round metal cells; alkaline: household batteries.',
    otherwise: 'nimh',
    fault: oneOf(CHEMISTRIES),
  },
  {
    key: 'toyCells',
    ask: 'How many cells in series?',
    hint: 'Printed voltage / 1.2 V (nickel), / 3.7 V (lithium), / 1.5 V (alkaline), / 2 V (lead).',
    fault: wholeFrom(1, 24),
  },
  measured('capacity', 'toy.capacity', 'Printed capacity?', '700 mAh ± 15 %', { optional: true }),
  measured('runTime', 'toy.runTime', 'How long did it run, driven hard?', '20 min ± 3 min', { optional: true }),
  measured('topSpeed', 'toy.topSpeed', 'How fast did it go?', '1.9 m/s ± 10 %', { optional: true }),
  {
    key: 'surface',
    ask: 'What ground will it run on, mostly?',
    hint: SURFACE_NAMES.join('; '),
    otherwise: 'hall floor',
    fault: oneOf(SURFACE_NAMES),
  },
  measured('slope', 'want.slope', 'Steepest slope it must climb?', '5°', { otherwise: '5°' }),
  measured('wantedTime', 'want.runTime', 'How long must it run on a charge?', '1 h', { otherwise: '1 h' }),
  {
    key: 'pack',
    ask: 'Which pack goes in?',
    hint: partsOf(builtInShelf(), 'pack')
      .map(({ id }) => id)
      .join(', '),
    otherwise: 'nmc-2s-2600-protected',
    fault: oneOf(partsOf(builtInShelf(), 'pack').map(({ id }) => id)),
  },
];

export const newCommand: Command = {
  ...about,
  summary: 'ask for the few measurements that matter, and write a dossier',
  help: `
Asks some twenty questions that a kitchen scale, a tape and a stopwatch can answer, and writes a dossier with a usual
conversion from the shelf. Write quantities with their doubt: 1.62 kg ± 5 g, 0.9 m/s ± 10 %, 4 … 6 V. An empty line
takes what stands in brackets, or leaves an optional quantity to be assumed with a wide doubt. Everything can be
changed later in the file; an existing file is never overwritten.

Example:  longrein new my-toy.json
Next:     longrein reckon my-toy.json
          longrein measure-next my-toy.json`,
  options: {},
  run: async (io, args) => {
    const file = theFile(about, args);
    if (io.exists(file)) throw new UserError(`${file} is there already and is not overwritten. Give another name.`);
    if (!io.exists(dirname(file))) throw new UserError(`There is no folder ${dirname(file)} to write ${file} in.`);
    io.out(
      wrap(
        'Lithium packs can burn: unplug the pack before you measure or open anything, and keep wheels off the table while motors can run.',
        io.width,
      ),
    );
    const answers = await askAll(io);
    if (answers.motorResistance === undefined && answers.runTime === undefined) io.out(`\n${wrap(BLIND, io.width)}`);
    const text = `${JSON.stringify(dossierFrom(answers), null, 2)}\n`;
    const reading = readDossier(text, builtInShelf());
    if (!reading.ok) throw new UserError(wordFaults('The answers do not fit together', reading.faults));
    writeText(io, file, text);
    io.out(`\n${wrap(`Written to ${file}. Next: longrein reckon ${file}`, io.width)}`);
    return EXIT.fine;
  },
};

async function askAll(io: Io): Promise<Answers> {
  const answers: Partial<Answers> = {};
  for (const question of QUESTIONS) {
    if (question.when && !question.when(answers)) continue;
    const answer = await askOne(io, question);
    if (answer !== undefined) answers[question.key] = answer;
  }
  return answers as Answers;
}

async function askOne(io: Io, question: Question): Promise<string | undefined> {
  io.out(`\n${paint(io, 'strong', wrap(question.ask, io.width))}`);
  io.out(paint(io, 'faint', wrap(question.hint, io.width, '  ')));
  const bracket =
    question.otherwise !== undefined ? `[${question.otherwise}] ` : question.optional ? '[not known] ' : '';
  for (;;) {
    const line = await io.ask(`${bracket}> `);
    if (line === undefined) throw new UserError('The answers ended before the questions; nothing was written.');
    const answer = line.trim();
    if (answer === '') {
      if (question.otherwise !== undefined || question.optional) return question.otherwise;
      io.out('  An answer is needed here.');
      continue;
    }
    const fault = question.fault(answer);
    if (fault === undefined) return answer;
    io.out(paint(io, 'warn', wrap(fault, io.width, '  ')));
  }
}
