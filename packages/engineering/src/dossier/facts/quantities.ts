/** All quantities of a dossier, by id. */
import { buildFacts, RUNS } from './build.ts';
import { driveFacts } from './drive.ts';
import type { QuantityFacts } from './facts.ts';
import { linkFacts, pictureFacts } from './live.ts';
import {
  bridgeFacts,
  chargerFacts,
  connectorFacts,
  converterFacts,
  fuseFacts,
  packFacts,
  wireFacts,
} from './power-parts.ts';
import { serviceFacts } from './service.ts';
import { aerialFacts, cameraFacts, computerFacts, enclosureFacts, modemFacts, servoFacts } from './sight-parts.ts';
import { toyFacts } from './toy.ts';

export const QUANTITIES = {
  ...toyFacts,
  ...driveFacts,
  ...packFacts,
  ...converterFacts,
  ...bridgeFacts,
  ...computerFacts,
  ...cameraFacts,
  ...modemFacts,
  ...aerialFacts,
  ...servoFacts,
  ...fuseFacts,
  ...wireFacts,
  ...connectorFacts,
  ...chargerFacts,
  ...enclosureFacts,
  ...buildFacts,
  ...serviceFacts,
  ...linkFacts,
  ...pictureFacts,
};

/** The id of a quantity: the key of its facts. Axles and wire runs carry their own number or name in {@link InputId}. */
export type QuantityId = keyof typeof QUANTITIES;

type Repeated = Extract<QuantityId, `axle.${string}` | `wire.${string}` | `connector.${string}`>;
type AxleNumber = 1 | 2 | 3 | 4;
type RunName = 'pack' | 'bridge' | 'motor' | 'converter' | 'board';

/** The id of an input of the reckoning: a quantity, or one of the repeated ones with its axle or run. */
export type InputId =
  | Exclude<QuantityId, Repeated>
  | `axle.${AxleNumber}.${'position' | 'track' | 'load' | 'springRate' | 'springTravel'}`
  | `run.${RunName}.${'resistancePerMetre' | 'area' | 'diameter' | 'currentMax' | 'temperatureMax' | 'massPerMetre'}`
  | `run.${RunName}.${'contactResistance' | 'contactCurrentMax' | 'contactMass'}`;

/** What a run's contacts are called as inputs, and as a connector. */
const CONTACTS = {
  contactResistance: 'connector.resistance',
  contactCurrentMax: 'connector.currentMax',
  contactMass: 'connector.mass',
} as const;

/** Every id an input may have. */
export const INPUT_IDS: readonly InputId[] = (Object.keys(QUANTITIES) as QuantityId[]).flatMap((id): InputId[] => {
  const [first, tail] = [id.slice(0, id.indexOf('.')), id.slice(id.indexOf('.') + 1)];
  if (first === 'axle') return [1, 2, 3, 4].map((axle) => `axle.${axle}.${tail}` as InputId);
  if (first === 'wire') return RUNS.map((run) => `run.${run}.${tail}` as InputId);
  if (first !== 'connector') return [id as InputId];
  const [name] = Object.entries(CONTACTS).find(([, of]) => of === id) ?? [];
  return RUNS.map((run) => `run.${run}.${name}` as InputId);
});

/** The quantity an input stands for; none where the text is the id of no input. */
export function quantityOf(id: string): QuantityId | undefined {
  if (!(INPUT_IDS as readonly string[]).includes(id)) return undefined;
  if (Object.hasOwn(QUANTITIES, id)) return id as QuantityId;
  const [first, , tail = ''] = id.split('.');
  if (first === 'axle') return `axle.${tail}` as QuantityId;
  return Object.hasOwn(CONTACTS, tail) ? CONTACTS[tail as keyof typeof CONTACTS] : (`wire.${tail}` as QuantityId);
}

/** The facts of a quantity. */
export function factsOf(id: QuantityId): QuantityFacts {
  return QUANTITIES[id];
}
