/** What must hold of any text that is taken for a dossier: the reader, what follows it, and the reckoning now and then. */
import {
  builtInShelf,
  type Dossier,
  dossierJsonSchema,
  ERROR_CODES,
  type ErrorCode,
  type Fault,
  formatDossier,
  readDossier,
  reckon,
  resolve,
  statedAsExact,
  type Vehicle,
  type WrittenDossier,
  within,
  wordFault,
} from '@longrein/engineering';
import { fits } from './json-schema-walk.ts';

/** Counts over many texts. */
export interface Tally {
  accepted: number;
  refused: number;
  reckoned: number;
  /** Findings met in reckonings, by their state. */
  readonly states: Map<string, number>;
  readonly codes: Map<ErrorCode, number>;
}

export const newTally = (): Tally => ({ accepted: 0, refused: 0, reckoned: 0, states: new Map(), codes: new Map() });

const count = <K>(map: Map<K, number>, key: K) => map.set(key, (map.get(key) ?? 0) + 1);
const CODES = new Set<string>(ERROR_CODES.map(({ code }) => code));
/** One more than may be listed: the last tells how many are left. */
const LISTED_MAX = 101;
const SCHEMA = dossierJsonSchema();
const SHELF = builtInShelf();

/** Tells that something which must hold does not. */
function claim(holds: boolean, says: string): void {
  if (!holds) throw new Error(says);
}

/**
 * Reads a text and proves what must hold of it.
 * @param reckonEvery every n-th accepted text is reckoned; 0 for none
 * @throws Error where something does not hold
 */
export function tryText(text: string, tally: Tally, reckonEvery: number): void {
  const reading = readDossier(text, SHELF);
  if (!reading.ok) {
    tally.refused++;
    claim(reading.faults.length > 0, 'refused without a reason');
    claim(reading.faults.length <= LISTED_MAX, `${reading.faults.length} faults listed`);
    const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
    for (const fault of reading.faults) {
      proveFault(fault, lines);
      count(tally.codes, fault.code);
    }
    return;
  }
  tally.accepted++;
  proveAccepted(text, reading.value);
  const vehicle = resolve(reading.value, SHELF);
  proveVehicle(vehicle);
  if (reckonEvery > 0 && tally.accepted % reckonEvery === 0) proveReckoning(vehicle, tally);
}

function proveFault(fault: Fault, lines: readonly string[]): void {
  const says = wordFault(fault);
  claim(CODES.has(fault.code), `a code out of the catalogue: ${says}`);
  claim(fault.at === '' || fault.at.startsWith('/'), `no pointer: ${says}`);
  const line = lines[(fault.line ?? 0) - 1];
  claim(line !== undefined, `no such line: ${says}`);
  claim((fault.column ?? 0) >= 1 && (fault.column ?? 0) <= (line?.length ?? 0) + 1, `no such column: ${says}`);
  for (const part of [fault.found, fault.accepted, fault.todo]) claim(part.trim() !== '', `a part is empty: ${says}`);
  claim(/[.!?:]$/.test(fault.todo), `what to do is no sentence: ${says}`);
  claim(!/[\p{C}\p{Zl}\p{Zp}]/u.test(says), `a message that acts on a terminal: ${JSON.stringify(says)}`);
  claim(says.length < 4000, `a message of ${says.length} characters`);
  claim(
    !/undefined|NaN|\[object|Invalid input/.test(says.replace(/found .*?\. Accepted/, '')),
    `words of a machine: ${says}`,
  );
}

/** What is accepted fits the published schema, and is read as the same dossier after it was written again. */
function proveAccepted(text: string, dossier: Dossier): void {
  const written = JSON.parse(text.replace(/^\uFEFF/, '')) as WrittenDossier;
  claim(fits(SCHEMA, written), 'accepted, and refused by the published schema');
  const again = readDossier(formatDossier(written), SHELF);
  claim(
    again.ok && JSON.stringify(again.value) === JSON.stringify(dossier),
    'another dossier after it was written again',
  );
}

function proveVehicle(vehicle: Vehicle): void {
  for (const { id, quantity, facts, origin, where } of vehicle.inputs.values()) {
    claim(Number.isFinite(quantity.value) && Number.isFinite(quantity.doubt), `${id} is not finite`);
    claim(quantity.doubt >= 0 && within(quantity.value, facts), `${id} of ${quantity.text} is beyond its limits`);
    claim((origin === 'assumed') === (where === ''), `${id} has no place`);
    claim(!vehicle.missing.has(id), `${id} is there and missing`);
  }
  for (const [name, value] of Object.entries(vehicle.layout)) {
    claim(typeof value !== 'number' || (Number.isInteger(value) && value >= 1), `${name} of the layout is ${value}`);
  }
  statedAsExact(vehicle);
}

/** No finding is settled on what is not a number, and what is not settled says why. */
function proveReckoning(vehicle: Vehicle, tally: Tally): void {
  const { findings } = reckon(vehicle, { cases: 20 });
  tally.reckoned++;
  claim(findings.length > 0, 'a reckoning without findings');
  for (const { id, state, holds, need, has, margin, because, decidedBy } of findings) {
    count(tally.states, state);
    if (state === 'unsettled') {
      claim((because ?? '').length > 5, `${id} is unsettled without a cause`);
      continue;
    }
    claim(holds >= 0 && holds <= 100, `${id} holds in ${holds} of 100`);
    for (const band of [need, has, margin]) {
      claim(
        [band.p5, band.p50, band.p95].every(Number.isFinite) && band.missing === 0,
        `${id} is settled on no number`,
      );
    }
    for (const { share } of decidedBy) claim(Number.isFinite(share), `${id} is decided by no number`);
  }
}
