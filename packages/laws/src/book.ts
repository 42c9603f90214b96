/** The book of checks of the laws, in reading order. */
import type { Checks } from './check.ts';
import { circuitsBook } from './circuits/book.ts';
import { conductorsBook } from './conductors/book.ts';
import { driveBook } from './drive/book.ts';
import { heatBook } from './heat/book.ts';
import { linkBook } from './link/book.ts';
import { motionBook } from './motion/book.ts';
import { pictureBook } from './picture/book.ts';
import { supplyBook } from './supply/book.ts';

export const book: readonly Checks[] = [
  ...conductorsBook,
  ...driveBook,
  ...supplyBook,
  ...heatBook,
  ...motionBook,
  ...linkBook,
  ...pictureBook,
  ...circuitsBook,
];
