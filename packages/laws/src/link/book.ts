import type { Checks } from '../check.ts';

export const linkBook: readonly Checks[] = [];
