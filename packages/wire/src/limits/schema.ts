/** The schema of the limits record, made from the tables of limits and parameters. */
import * as z from 'zod/mini';
import { HEX_32, HEX_64 } from '../keys.ts';
import { LIMIT_FACTS, LIMIT_NAMES, type LimitFact, type LimitName } from './limit-facts.ts';
import { MODEL_FACTS, MODEL_NAMES, type ModelName, type ModelNumberFact, type ModelTableFact } from './model-facts.ts';
import { LIMITS_KIND, LIMITS_VERSION, type Limits, type LimitsDraft, type LimitsRecord, type Model } from './record.ts';
import { contradictions } from './rules.ts';

/** A number of a unit within bounds, both included; a message names both. */
function numberIn([least, most]: readonly [number, number], unit: string) {
  const accepted = unit === '1' ? `a number from ${least} to ${most}` : `a number from ${least} to ${most} ${unit}`;
  return z.number(accepted).check(z.gte(least, accepted), z.lte(most, accepted));
}

function wholeIn(least: number, most: number) {
  const accepted = `a whole number from ${least} to ${most}`;
  return z.int(accepted).check(z.gte(least, accepted), z.lte(most, accepted));
}

function matching(pattern: RegExp, accepted: string) {
  return z.string(accepted).check(z.regex(pattern, accepted));
}

/** Text in a record reaches terminals and pages: no control characters, and no half characters either. */
function line(longest: number) {
  const accepted = `one line of 1 to ${longest} characters`;
  const pattern = /^[^\p{Cc}\p{Cs}]+$/u;
  return z.string(accepted).check(z.maxLength(longest, accepted), z.regex(pattern, accepted));
}

/** An object of exactly these keys. */
function objectOf<Shape extends z.core.$ZodShape>(shape: Shape) {
  const keys = Object.keys(shape);
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? `one of ${keys.join(', ')}` : 'an object'),
  });
}

function unitOf(unit: string) {
  return z.literal(unit, `"${unit}"`);
}

const hash = matching(HEX_32, '64 lower-case hexadecimal digits');

function limitSchema(fact: LimitFact) {
  return objectOf({
    value: numberIn(fact.bounds, fact.unit),
    unit: unitOf(fact.unit),
    sum: matching(/^[A-Za-z0-9][A-Za-z0-9._/-]{0,79}$/, 'an id of up to 80 letters, digits and . _ / -'),
    // A limit taken at the wrong end would let most vehicles of this kind do harm.
    quantile: numberIn(fact.careful === 'low' ? [0, 0.5] : [0.5, 1], '1'),
    meaning: line(200),
  });
}

function numberSchema(fact: ModelNumberFact) {
  const number = numberIn(fact.bounds, fact.unit);
  return objectOf({
    value: number,
    unit: unitOf(fact.unit),
    low: z.exactOptional(number),
    high: z.exactOptional(number),
  });
}

function tableSchema(fact: ModelTableFact) {
  const accepted = `2 to 101 points [${fact.over.meaning}, ${fact.unit}]`;
  const point = z.tuple([numberIn(fact.over.bounds, fact.over.unit), numberIn(fact.bounds, fact.unit)], accepted);
  return objectOf({
    value: z.array(point, accepted).check(z.minLength(2, accepted), z.maxLength(101, accepted)),
    unit: unitOf(fact.unit),
  });
}

function parameterSchema(fact: ModelNumberFact | ModelTableFact) {
  return 'over' in fact ? tableSchema(fact) : numberSchema(fact);
}

/** One schema a row, optional where the row says so. */
function shapeOf<Name extends string, Fact extends { readonly optional?: true }>(
  names: readonly Name[],
  facts: Readonly<Record<Name, Fact>>,
  make: (fact: Fact) => z.ZodMiniType,
): Record<string, z.ZodMiniType> {
  return Object.fromEntries(
    names.map((name) => {
      const fact = facts[name];
      return [name, fact.optional ? z.exactOptional(make(fact)) : make(fact)];
    }),
  );
}

// The types of these two are the mapped ones above: made from the same tables, which the compiler cannot follow
// through a loop. A test holds the two together.
const limitsSchema = objectOf(
  shapeOf<LimitName, LimitFact>(LIMIT_NAMES, LIMIT_FACTS, limitSchema),
) as z.ZodMiniType<unknown> as z.ZodMiniType<Limits>;
const modelSchema = objectOf(
  shapeOf<ModelName, ModelNumberFact | ModelTableFact>(MODEL_NAMES, MODEL_FACTS, parameterSchema),
) as z.ZodMiniType<unknown> as z.ZodMiniType<Model>;

const draftShape = {
  kind: z.literal(LIMITS_KIND, `"${LIMITS_KIND}"`),
  version: z.literal(LIMITS_VERSION, String(LIMITS_VERSION)),
  vehicle: line(120),
  dossierHash: hash,
  laws: objectOf({ version: line(60), hash }),
  madeWith: objectOf({ cases: wholeIn(1, 1_000_000), seed: wholeIn(0, Number.MAX_SAFE_INTEGER) }),
  limits: limitsSchema,
  model: modelSchema,
};

const signatureSchema = objectOf({
  algorithm: z.literal('ed25519', '"ed25519"'),
  publicKey: hash,
  value: matching(HEX_64, '128 lower-case hexadecimal digits'),
});

/** A record before it is sealed. */
export const limitsDraftSchema: z.ZodMiniType<LimitsDraft> = objectOf(draftShape).check(contradictions);

/** A record as it travels. Whether checksum and signature are true is for the codec to tell. */
export const limitsRecordSchema: z.ZodMiniType<LimitsRecord> = objectOf({
  ...draftShape,
  checksum: hash,
  signature: z.exactOptional(signatureSchema),
}).check(contradictions);
