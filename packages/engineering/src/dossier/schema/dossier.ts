/** The schema of a dossier: one vehicle, one file. Types, JSON Schema and documentation come from here. */
import * as z from 'zod';
import { BASES } from '../field.ts';
import { conversionSchema } from './conversion.ts';
import { donorSchema } from './donor.ts';
import { drivingSchema, linkSchema, pictureSchema, serviceSchema } from './service.ts';

/** The format this program writes. */
export const DOSSIER_FORMAT = 1;

const remark = z.string().max(4000).optional();
const date = z.iso.date();

/** A pack that is owned, with its history. */
const ownedPackSchema = z.strictObject({
  label: z.string().min(1).max(80),
  bought: date.optional(),
  cycles: z.int().min(0).max(100000).optional(),
  remark,
});

/** A bench reading with its date; the quantity it bears on is named by its id. */
const readingSchema = z.strictObject({
  date,
  of: z.string().min(1).max(80),
  value: z.string().min(1).max(200),
  basis: z.enum(BASES).optional(),
  remark,
});

/** A fit that tied quantities together: their correlations. Values and doubts stand where the quantities stand. */
const fitSchema = z.strictObject({
  date,
  quantities: z.array(z.string().min(1).max(80)).min(2).max(12),
  correlation: z
    .array(z.array(z.number().min(-1).max(1)).min(2).max(12))
    .min(2)
    .max(12),
  remark,
});

/** A planned or past trip. */
const outingSchema = z.strictObject({ date, title: z.string().min(1).max(120), remark });

export const dossierSchema = z.strictObject({
  format: z.literal(DOSSIER_FORMAT),
  name: z.string().min(1).max(60),
  /** True for demonstration data: every printed result then says so. */
  invented: z.boolean().optional(),
  remark,
  donor: donorSchema,
  conversion: conversionSchema,
  service: serviceSchema,
  link: linkSchema.optional(),
  picture: pictureSchema.optional(),
  driving: drivingSchema.optional(),
  packs: z.array(ownedPackSchema).max(200).optional(),
  readings: z.array(readingSchema).max(5000).optional(),
  fits: z.array(fitSchema).max(50).optional(),
  outings: z.array(outingSchema).max(2000).optional(),
});

/** A dossier, read: quantities parsed. */
export type Dossier = z.output<typeof dossierSchema>;
/** A dossier as written. */
export type WrittenDossier = z.input<typeof dossierSchema>;
