import type { Checks } from '../check.ts';

export const motionBook: readonly Checks[] = [];
