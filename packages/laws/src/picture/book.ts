import type { Checks } from '../check.ts';

export const pictureBook: readonly Checks[] = [];
