/** All quantities of a dossier, by id. */
import { buildFacts } from './build.ts';
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

/** The facts of a quantity. */
export function factsOf(id: QuantityId): QuantityFacts {
  return QUANTITIES[id];
}
