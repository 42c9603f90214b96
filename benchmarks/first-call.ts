/** Prints the seconds of the first reckoning of a fresh program. */
import { reckon } from './built.ts';
import { secondsOf } from './clock.ts';
import { sedge } from './sedge.ts';

const vehicle = sedge();
console.log(secondsOf(1, () => reckon(vehicle)));
