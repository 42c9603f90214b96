import type { Checks } from '../check.ts';

export const heatBook: readonly Checks[] = [];
