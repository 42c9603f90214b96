import type { Checks } from '../check.ts';

export const driveBook: readonly Checks[] = [];
