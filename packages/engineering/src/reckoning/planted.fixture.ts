/** For tests: vehicles read from a text, and vehicles planted with exactly the inputs, sums and findings a test needs. */
import type { Behaviour } from '../dossier/facts/facts.ts';
import { factsOf, type InputId, type QuantityId } from '../dossier/facts/quantities.ts';
import { wordFault } from '../dossier/faults.ts';
import { readDossier } from '../dossier/read.ts';
import { type Input, type Origin, resolve, type Vehicle } from '../dossier/resolve.ts';
import { builtInShelf } from '../dossier/shelf/built-in.ts';
import { parseQuantity } from '../quantity/quantity.ts';
import type { Finding } from './finding.ts';
import type { Sums } from './graph.ts';
import { type Sum, sum } from './sum.ts';
import { SUM_IDS, type SumId } from './sums/ids.ts';
import { PLAIN_LAYOUT } from './testing.ts';

/** The vehicle of a dossier's text. */
export function vehicleOf(text: string): Vehicle {
  const reading = readDossier(text, builtInShelf());
  if (!reading.ok) throw new Error(reading.faults.map(wordFault).join('\n'));
  return resolve(reading.value, builtInShelf());
}

interface Planted {
  readonly text: string;
  readonly is?: Behaviour;
  readonly origin?: Origin;
}

/** An input as somebody would write it. */
export function inputOf(id: InputId, planted: string | Planted): Input {
  const { text, is, origin = 'measured' } = typeof planted === 'string' ? { text: planted } : planted;
  const facts = factsOf(id as QuantityId);
  const reading = parseQuantity(text, facts.unit, facts);
  if (!reading.ok) throw new Error(`${id}: ${reading.fault.hint}`);
  return { id, quantity: reading.quantity, facts, behaviour: is ?? facts.is, origin, where: `/${id}` };
}

export type PlantedInputs = Readonly<Partial<Record<InputId, string | Planted>>>;

/** A vehicle of which nothing is known but these inputs. */
export function plantedVehicle(inputs: PlantedInputs, correlations: Vehicle['correlations'] = []): Vehicle {
  const entries = Object.entries(inputs) as [InputId, string | Planted][];
  return {
    name: 'planted',
    invented: true,
    layout: PLAIN_LAYOUT,
    parts: {},
    inputs: new Map(entries.map(([id, planted]) => [id, inputOf(id, planted)])),
    missing: new Set(),
    correlations,
  };
}

/** The same vehicle with one input replaced. */
export function withInput(vehicle: Vehicle, input: Input): Vehicle {
  return { ...vehicle, inputs: new Map(vehicle.inputs).set(input.id, input) };
}

const NOTHING: Sum = { title: 'not planted', unit: '1', when: () => false, routes: [] };

/** These sums and no others. */
export function plantedSums(sums: Readonly<Partial<Record<SumId, Sum>>>): Sums {
  return Object.fromEntries(SUM_IDS.map((id) => [id, sums[id] ?? NOTHING])) as Record<SumId, Sum>;
}

/** A sum that is a plain number, the same in every case. */
export function constant(value: number): Sum {
  return sum({ title: 'planted number', unit: '1' }, { uses: {}, formula: `${value}`, laws: [], value: () => value });
}

/** A finding that a sum is at least another. */
export function plantedFinding(has: SumId, need: SumId, more: Partial<Finding> = {}): Finding {
  return {
    title: 'Planted',
    subject: 'drive',
    unit: '1',
    sense: 'at least',
    has,
    need,
    remedy: 'Plant something else.',
    ...more,
  };
}
