/** Files of the person at the keyboard: what cannot be read or written is said in words. */
import { UserError } from './command.ts';
import type { Io } from './io.ts';

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of the path is no folder',
  EACCES: 'you may not',
  EPERM: 'you may not',
  EROFS: 'the disk cannot be written to',
  ENOSPC: 'the disk is full',
};

function why(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code && WHY[code]) ?? code ?? message;
}

/** Reads a file. @throws UserError that says what is wrong with it */
export function readText(io: Io, path: string, hint = ''): string {
  try {
    return io.read(path);
  } catch (error) {
    throw new UserError(`Cannot read ${path}: ${why(error)}.${hint === '' ? '' : ` ${hint}`}`);
  }
}

/** The files of a folder. @throws UserError */
export function listFolder(io: Io, folder: string): string[] {
  try {
    return io.list(folder);
  } catch (error) {
    throw new UserError(`Cannot read the folder ${folder}: ${why(error)}.`);
  }
}

/** Writes a file whole or not at all. @throws UserError */
export function writeText(io: Io, path: string, text: string, mode?: number): void {
  try {
    io.write(path, text, mode);
  } catch (error) {
    throw new UserError(`Cannot write ${path}: ${why(error)}. Nothing was written.`);
  }
}
