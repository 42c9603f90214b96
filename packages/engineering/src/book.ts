/** The whole book of checks: the laws, then the methods of this package. */

import { book as lawBook } from '@longrein/laws/book';
import type { Checks } from '@longrein/laws/check';
import { quantityBook } from './quantity/book.ts';

export const book: readonly Checks[] = [...lawBook, ...quantityBook];
