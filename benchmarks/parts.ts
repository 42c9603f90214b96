/** Parts of the way from a dossier to its cases, each against the plainest thing that does less. */
import { type CaseInput, drawCases, parseQuantity, readDossier, resolve, stream, type Vehicle } from './built.ts';
import { compare, type Result, secondsOf } from './clock.ts';
import { SEDGE_TEXT, SHELF } from './sedge.ts';

const CASES = 1000;

/** What the inputs of a vehicle were written as, but for those that the house itself put together from several texts. */
export function readingQuantities(vehicle: Vehicle): Result {
  const texts = [...vehicle.inputs.values()]
    .map(({ quantity, facts }) => ({ text: quantity.text, facts }))
    .filter(({ text, facts }) => parseQuantity(text, facts.unit, facts).ok);
  const quoted = texts.map(({ text }) => JSON.stringify(text));
  const ours = (): void => {
    for (const { text, facts } of texts) parseQuantity(text, facts.unit, facts);
  };
  const baseline = (): void => {
    for (const text of quoted) JSON.parse(text);
  };
  secondsOf(200, ours);
  secondsOf(200, baseline);
  return compare(
    {
      id: 'parse-quantity',
      what: `parseQuantity on the ${texts.length} quantities of sedge against JSON.parse of the same texts as strings`,
      unit: 'µs',
      runs: 11,
    },
    () => ({ ours: secondsOf(100, ours), baseline: secondsOf(1000, baseline) }),
  );
}

/** Draws without strata, limits or order: one number after another from the same generator. */
function plainDraws(inputs: readonly CaseInput[]): Float64Array[] {
  return inputs.map(({ id, quantity: { value, doubt, spread } }) => {
    const random = stream(1, id);
    const values = new Float64Array(CASES);
    for (let i = 0; i < CASES; i++) {
      values[i] =
        spread === 'exact'
          ? value
          : value + doubt * (spread === 'rectangular' ? 2 * random.uniform() - 1 : random.normal());
    }
    return values;
  });
}

export function drawing(vehicle: Vehicle): Result {
  const inputs = [...vehicle.inputs.values()].map(
    ({ id, quantity, facts }): CaseInput => ({ id, quantity, kind: 'doubt', limits: facts }),
  );
  const ours = (): void => void drawCases(inputs, { cases: CASES, seed: 1 });
  const baseline = (): void => void plainDraws(inputs);
  secondsOf(30, ours);
  secondsOf(30, baseline);
  return compare(
    {
      id: 'draw-cases',
      what: `drawing ${CASES} cases of ${inputs.length} inputs by Latin hypercube against plain draws from the same generator`,
      unit: 'ms',
      runs: 11,
    },
    () => ({ ours: secondsOf(10, ours), baseline: secondsOf(10, baseline) }),
  );
}

export function readingDossier(): Result {
  const ours = (): void => {
    const reading = readDossier(SEDGE_TEXT, SHELF);
    if (reading.ok) resolve(reading.value, SHELF);
  };
  const baseline = (): void => void JSON.parse(SEDGE_TEXT);
  secondsOf(30, ours);
  secondsOf(200, baseline);
  return compare(
    {
      id: 'read-dossier',
      what: 'reading sedge.json, checking it and resolving the vehicle, against JSON.parse of the same text',
      unit: 'µs',
      runs: 11,
    },
    () => ({ ours: secondsOf(10, ours), baseline: secondsOf(200, baseline) }),
  );
}
