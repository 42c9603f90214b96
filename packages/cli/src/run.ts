/** Finds the command, runs it, turns mistakes into messages and exit codes. */
import { type Command, EXIT, type Exit, parse, UserError } from './command.ts';
import { checksCommand } from './commands/checks.ts';
import { explainCommand } from './commands/explain.ts';
import { limitsCommand } from './commands/limits.ts';
import { measureNextCommand } from './commands/measure-next.ts';
import { newCommand } from './commands/new.ts';
import { reckonCommand } from './commands/reckon.ts';
import { shelfCommand } from './commands/shelf.ts';
import { validateCommand } from './commands/validate.ts';
import type { Io } from './io.ts';
import { nearTo } from './near.ts';
import { columnsWithin, reflow, wrap } from './paint.ts';

export const COMMANDS: readonly Command[] = [
  newCommand,
  validateCommand,
  reckonCommand,
  explainCommand,
  measureNextCommand,
  limitsCommand,
  shelfCommand,
  checksCommand,
];

/** Runs `longrein` with these words. Never throws on a mistake of the user. */
export async function run(io: Io, words: readonly string[]): Promise<Exit> {
  try {
    return await dispatch(io, words);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    io.err(
      error.message
        .split('\n')
        .map((line) => wrapError(line, io.width))
        .join('\n'),
    );
    return EXIT.badInput;
  } finally {
    io.close();
  }
}

/** Breaks a line of a message, keeping its indent. */
function wrapError(line: string, width: number): string {
  const [indent = ''] = /^ */.exec(line) ?? [];
  return wrap(line.trim(), width, indent === '' ? '' : `${indent}  `, indent);
}

async function dispatch(io: Io, words: readonly string[]): Promise<Exit> {
  const [name, ...rest] = words;
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
    const [asked] = rest;
    io.out(asked === undefined ? overview(io) : helpOf(io, commandNamed(asked)));
    return EXIT.fine;
  }
  if (name === '--version' || name === '-v') {
    io.out(`longrein ${io.version}`);
    return EXIT.fine;
  }
  const command = commandNamed(name);
  if (rest.includes('--help') || rest.includes('-h')) {
    io.out(helpOf(io, command));
    return EXIT.fine;
  }
  return command.run(io, parse(command, rest));
}

/** @throws UserError with what is accepted */
function commandNamed(name: string): Command {
  const command = COMMANDS.find((known) => known.name === name);
  if (command) return command;
  const names = COMMANDS.map((known) => known.name);
  const [near] = nearTo(name, names);
  throw new UserError(
    `There is no command "${name}".${near === undefined ? '' : ` Perhaps ${near}?`} Accepted: ${names.join(', ')}; longrein help says what each is for.`,
  );
}

function helpOf(io: Io, command: Command): string {
  const usage = wrap(`${command.name} ${command.usage}`, io.width, ' '.repeat(4), 'longrein ');
  return `${usage}\n\n${reflow(command.help, io.width)}`;
}

function overview(io: Io): string {
  const say = (text: string) => wrap(text, io.width);
  return [
    say('longrein: from a stock toy vehicle to a camera rover that strangers can drive from anywhere.'),
    say(
      'A vehicle is one file, its dossier. What was measured goes in with its doubt; what was not is assumed, and said.',
    ),
    columnsWithin(
      COMMANDS.map(({ name, summary }) => [`  ${name}`, summary]),
      io.width,
    ),
    'Begin with:  longrein new my-toy.json\nThen:        longrein reckon my-toy.json\nMore:        longrein help COMMAND',
    say('Exit codes: 0 all findings hold or are tight; 1 something fails or is unsettled; 2 bad input.'),
  ].join('\n\n');
}
