/** The schema of the conversion: parts, places, wiring, settings. */
import * as z from 'zod';
import type { Placed } from '../facts/build.ts';
import { field, may, need } from '../field.ts';
import {
  aerialSchema,
  bridgeSchema,
  cameraSchema,
  chargerSchema,
  computerSchema,
  connectorSchema,
  converterSchema,
  enclosureSchema,
  fuseSchema,
  modemSchema,
  packSchema,
  servoSchema,
  wireSchema,
} from './parts.ts';

/** A part: the id of one on the shelf, or described in place. */
const part = <S extends z.ZodType>(schema: S) => z.union([z.string().min(1).max(60), schema]);

const partsSchema = z.strictObject({
  pack: part(packSchema),
  converter: part(converterSchema),
  bridge: part(bridgeSchema),
  computer: part(computerSchema),
  camera: part(cameraSchema),
  modem: part(modemSchema),
  aerial: part(aerialSchema),
  fuse: part(fuseSchema),
  charger: part(chargerSchema),
  servo: part(servoSchema).optional(),
  enclosure: part(enclosureSchema).optional(),
});

const place = z
  .strictObject({ behind: field('at.pack.behind').optional(), height: field('at.pack.height').optional() })
  .optional();

const placesSchema = z.strictObject({
  pack: place,
  converter: place,
  bridge: place,
  computer: place,
  camera: place,
  modem: place,
  aerial: place,
  servo: place,
  enclosure: place,
  fixings: place,
  payload: place,
} satisfies Record<Placed, typeof place>);

const run = z.strictObject({
  wire: part(wireSchema),
  length: field('run.pack.length').optional(),
  connector: part(connectorSchema),
  /** Mated contact pairs in the loop, out and back together. */
  pairs: z.int().min(0).max(20),
});

const wiringSchema = z.strictObject({ pack: run, bridge: run, motor: run, converter: run, board: run });

const settingsSchema = z.strictObject(
  may(
    'set.dutyCeiling',
    'set.frequency',
    'set.stallTime',
    'set.holdDuty',
    'set.holdTime',
    'set.reserve',
    'set.speedCap',
  ),
);

export const conversionSchema = z.strictObject({
  parts: partsSchema,
  /** How many bridge boards are fitted. */
  bridges: z.int().min(1).max(4).optional(),
  places: placesSchema.optional(),
  fixings: z.strictObject(need('fixings.mass')).optional(),
  cameraPitch: field('camera.pitch').optional(),
  wiring: wiringSchema,
  settings: settingsSchema.optional(),
});
