/** The schema of the parts a shelf holds and a dossier may describe in place. */

import { CHEMISTRIES } from '@longrein/laws';
import * as z from 'zod';
import { may, need } from '../field.ts';

const about = {
  id: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words joined by hyphens')
    .max(60)
    .optional(),
  title: z.string().min(1).max(120),
  remark: z.string().max(2000).optional(),
  /** Rough price class, 1 (pocket money) to 5 (a month of it). */
  cost: z.int().min(1).max(5).optional(),
};

export const packSchema = z.strictObject({
  kind: z.literal('pack'),
  ...about,
  chemistry: z.enum(CHEMISTRIES),
  cells: z.int().min(1).max(24),
  ...need('pack.capacity', 'pack.cellResistance', 'pack.currentMax', 'pack.mass'),
  ...may('pack.capacityShare', 'pack.tripCurrent', 'pack.tripDelay', 'pack.cyclesDone'),
});

const converterSchema = z.strictObject({
  kind: z.literal('converter'),
  ...about,
  ...need(
    'converter.outputVoltage',
    'converter.outputCurrent',
    'converter.efficiency',
    'converter.headRoom',
    'converter.inputMin',
    'converter.inputMax',
    'converter.mass',
  ),
  ...may('converter.outputCapacitance'),
});

const bridgeSchema = z
  .strictObject({
    kind: z.literal('bridge'),
    ...about,
    type: z.enum(['bipolar', 'mosfet']),
    channels: z.int().min(1).max(4),
    ...need(
      'bridge.currentContinuous',
      'bridge.currentPeak',
      'bridge.voltageMax',
      'bridge.voltageMin',
      'bridge.toAir',
      'bridge.quiescent',
      'bridge.mass',
    ),
    ...may(
      'bridge.dropOneAmpere',
      'bridge.dropTwoAmpere',
      'bridge.onResistance',
      'bridge.junctionMax',
      'bridge.edgeTime',
      'bridge.timeConstant',
    ),
  })
  .superRefine((bridge, context) => {
    const needed =
      bridge.type === 'mosfet' ? (['onResistance'] as const) : (['dropOneAmpere', 'dropTwoAmpere'] as const);
    for (const key of needed) {
      if (bridge[key] === undefined) {
        context.addIssue({
          code: 'custom',
          path: [key],
          message: `a figure every ${bridge.type} bridge has`,
          input: undefined,
        });
      }
    }
  });

const computerSchema = z.strictObject({
  kind: z.literal('computer'),
  ...about,
  ...need(
    'computer.idlePower',
    'computer.busyPower',
    'computer.peakPower',
    'computer.brownOut',
    'computer.toAir',
    'computer.temperatureMax',
    'computer.mass',
  ),
});

const cameraSchema = z.strictObject({
  kind: z.literal('camera'),
  ...about,
  ...need('camera.fieldOfView', 'camera.widthPixels', 'camera.heightPixels', 'camera.power', 'camera.mass'),
  ...may('camera.exposure', 'camera.lag'),
});

const MODEM_TYPES = ['wlan', 'cellular'] as const;

const modemSchema = z.strictObject({
  kind: z.literal('modem'),
  ...about,
  type: z.enum(MODEM_TYPES),
  ...need('modem.power', 'modem.burstPower', 'modem.transmitPower', 'modem.bandwidth', 'modem.frequency', 'modem.mass'),
  ...may('modem.noiseFigure'),
});

const aerialSchema = z.strictObject({
  kind: z.literal('aerial'),
  ...about,
  ...need('aerial.gain', 'aerial.mass'),
  ...may('aerial.cableLoss'),
});

const servoSchema = z.strictObject({
  kind: z.literal('servo'),
  ...about,
  ...need('servo.stallCurrent', 'servo.runCurrent', 'servo.idleCurrent', 'servo.torque', 'servo.mass'),
});

const fuseSchema = z.strictObject({
  kind: z.literal('fuse'),
  ...about,
  ...need('fuse.rating', 'fuse.breaking', 'fuse.meltingEnergy', 'fuse.resistance', 'fuse.mass'),
});

const wireSchema = z.strictObject({
  kind: z.literal('wire'),
  ...about,
  ...need(
    'wire.resistancePerMetre',
    'wire.area',
    'wire.diameter',
    'wire.currentMax',
    'wire.temperatureMax',
    'wire.massPerMetre',
  ),
});

const connectorSchema = z.strictObject({
  kind: z.literal('connector'),
  ...about,
  ...need('connector.resistance', 'connector.currentMax', 'connector.mass'),
});

const chargerSchema = z.strictObject({
  kind: z.literal('charger'),
  ...about,
  chemistries: z.array(z.enum(CHEMISTRIES)).min(1),
  cellsMax: z.int().min(1).max(24),
  ...need('charger.current', 'charger.sourcePower'),
  ...may('charger.tailCurrent', 'charger.efficiency'),
});

const enclosureSchema = z.strictObject({
  kind: z.literal('enclosure'),
  ...about,
  ...need('enclosure.length', 'enclosure.width', 'enclosure.height', 'enclosure.mass'),
  ...may('enclosure.emissivity', 'enclosure.absorptivity'),
});

/** Every kind of part, by name. */
export const PART_SCHEMAS = {
  pack: packSchema,
  converter: converterSchema,
  bridge: bridgeSchema,
  computer: computerSchema,
  camera: cameraSchema,
  modem: modemSchema,
  aerial: aerialSchema,
  servo: servoSchema,
  fuse: fuseSchema,
  wire: wireSchema,
  connector: connectorSchema,
  charger: chargerSchema,
  enclosure: enclosureSchema,
} as const;

export type PartKind = keyof typeof PART_SCHEMAS;
export const PART_KINDS = Object.keys(PART_SCHEMAS) as PartKind[];

/** The kind with its article, for messages. */
export const aKind = (kind: string) => `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;

/** A part of a kind, read. */
export type PartOf<K extends PartKind> = z.output<(typeof PART_SCHEMAS)[K]>;
export type Part = { [K in PartKind]: PartOf<K> }[PartKind];

/** A part as written, before reading. */
export type WrittenPart = { [K in PartKind]: z.input<(typeof PART_SCHEMAS)[K]> }[PartKind];

/** A file of parts a user adds to the shelf. */
export const shelfFileSchema = z.strictObject({
  format: z.literal(1),
  parts: z.array(z.discriminatedUnion('kind', Object.values(PART_SCHEMAS) as [typeof packSchema])).min(1),
});
