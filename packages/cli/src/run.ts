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
import { columns } from './paint.ts';

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
    io.err(error.message);
    return EXIT.badInput;
  } finally {
    io.close();
  }
}

async function dispatch(io: Io, words: readonly string[]): Promise<Exit> {
  const [name, ...rest] = words;
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
    const asked = COMMANDS.find((known) => known.name === rest[0]);
    io.out(asked ? helpOf(asked) : overview());
    return EXIT.fine;
  }
  const command = COMMANDS.find((known) => known.name === name);
  if (!command) {
    throw new UserError(
      `There is no command "${name}". Accepted: ${COMMANDS.map((known) => known.name).join(', ')}; longrein help says what each is for.`,
    );
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    io.out(helpOf(command));
    return EXIT.fine;
  }
  return command.run(io, parse(command, rest));
}

function helpOf(command: Command): string {
  return `longrein ${command.name} ${command.usage}\n\n${command.help.trim()}`;
}

function overview(): string {
  return `longrein: from a stock toy vehicle to a camera rover that strangers can drive from anywhere.

A vehicle is one file, its dossier. What was measured goes in with its doubt; what was not is assumed, and said.

${columns(COMMANDS.map(({ name, summary }) => [`  ${name}`, summary]))}

Begin with:  longrein new my-toy.json
Then:        longrein reckon my-toy.json
More:        longrein help COMMAND

Exit codes: 0 all findings hold or are tight; 1 something fails or is unsettled; 2 bad input.`;
}
