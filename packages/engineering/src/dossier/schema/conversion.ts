/** The schema of the conversion: parts, places, wiring, settings. */
import * as z from 'zod';
import { ACCEPTS } from '../accepts.ts';
import type { Placed } from '../facts/build.ts';
import { field, may, need } from '../field.ts';
import { aKind, PART_SCHEMAS, type PartKind } from './parts.ts';

/** A part: the id of one on the shelf, or described in place. */
const part = <K extends PartKind>(kind: K) => {
  const schema = z.union([z.string().min(1).max(60), PART_SCHEMAS[kind]]);
  ACCEPTS.add(schema, {
    accepted: `the id of ${aKind(kind)} on the shelf, or ${aKind(kind)} described in place: { … }`,
  });
  return schema;
};

const partsSchema = z.strictObject({
  pack: part('pack'),
  converter: part('converter'),
  bridge: part('bridge'),
  computer: part('computer'),
  camera: part('camera'),
  modem: part('modem'),
  aerial: part('aerial'),
  fuse: part('fuse'),
  charger: part('charger'),
  servo: part('servo').optional(),
  enclosure: part('enclosure').optional(),
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
  wire: part('wire'),
  length: field('run.pack.length').optional(),
  connector: part('connector'),
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
