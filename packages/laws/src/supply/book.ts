import type { Checks } from '../check.ts';

export const supplyBook: readonly Checks[] = [];
