/** What a command is. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import type { Io } from './io.ts';

/** 0: all hold or are tight. 1: something fails or is unsettled. 2: bad input. */
export const EXIT = { fine: 0, fails: 1, badInput: 2 } as const;
export type Exit = (typeof EXIT)[keyof typeof EXIT];

export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** What stands behind the name, as in 'FILE [--json]'. */
  readonly usage: string;
  /** Teaches: what it is for, an example, what comes next. */
  readonly help: string;
  readonly options: NonNullable<ParseArgsConfig['options']>;
  readonly run: (io: Io, args: Args) => Exit | Promise<Exit>;
}

export interface Args {
  readonly values: Readonly<Record<string, string | boolean | undefined>>;
  readonly positionals: readonly string[];
}

/** A mistake of the person at the keyboard: printed as it stands, without a stack, exit 2. */
export class UserError extends Error {}

/** Parses the words behind a command. @throws UserError with what is accepted */
export function parse(command: Command, words: readonly string[]): Args {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: { ...command.options, help: { type: 'boolean', short: 'h' } },
      allowPositionals: true,
    });
    return { values: values as Args['values'], positionals };
  } catch (error) {
    const accepted = Object.keys(command.options).map((name) => `--${name}`);
    throw new UserError(
      `${(error as Error).message.split('. ')[0]}. Accepted: ${[...accepted, '--help'].join(', ')}.\nUsage: longrein ${command.name} ${command.usage}`,
    );
  }
}

/** A whole number given as an option. @throws UserError */
export function wholeNumber(args: Args, name: string, least: number, most: number, otherwise: number): number {
  const text = args.values[name];
  if (text === undefined) return otherwise;
  const value = Number(text);
  if (typeof text !== 'string' || !/^\d+$/.test(text) || value < least || value > most) {
    throw new UserError(`--${name} is "${String(text)}". Accepted: a whole number from ${least} to ${most}.`);
  }
  return value;
}

/** The one file a command works on. @throws UserError */
export function theFile(command: Pick<Command, 'name' | 'usage'>, args: Args): string {
  const [file, ...more] = args.positionals;
  if (file === undefined) throw new UserError(`Which dossier? Usage: longrein ${command.name} ${command.usage}`);
  if (more.length > 0) throw new UserError(`One dossier at a time; found also ${more.join(' ')}.`);
  return file;
}
