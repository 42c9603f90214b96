/**
 * `npm run arrows`: holds the arrows of the house. A cruiser that finds no compiler sees no module and is content;
 * so this also demands that every tracked TypeScript file of the packages was read.
 */
import { cruise } from './cruise.ts';
import { HOUSE, tracked } from './tree.ts';

/** The house had more modules than this on its first day. */
const FLOOR = 25;

const { modules, violations } = cruise(HOUSE);
for (const v of violations) console.error(`${v.from} → ${v.to}\n  ${v.rule}: ${v.why}`);

const seen = new Set(modules);
const unseen = tracked.filter((path) => /^packages\/.*\.ts$/.test(path) && !seen.has(path));
if (unseen.length > 0) console.error(`${unseen.length} files were not read, the first being ${unseen[0]}`);
if (modules.length < FLOOR) console.error(`Only ${modules.length} modules were read; at least ${FLOOR} are there`);

console.log(`${modules.length} modules read, ${violations.length} arrows broken`);
if (violations.length > 0 || unseen.length > 0 || modules.length < FLOOR) process.exitCode = 1;
