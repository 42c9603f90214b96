/** Sums of the radio link, and of the way behind it to the driver. */
import type { SumsOf } from '../sum.ts';
import type { SumIdOf } from './ids.ts';
import { linkRateSums } from './link-rate.ts';
import { linkSignalSums } from './link-signal.ts';

export const linkSums: SumsOf<SumIdOf<'link'>> = { ...linkSignalSums, ...linkRateSums };
