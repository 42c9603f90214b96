/** Records that travel between programs, and what is needed to write and read them. */
export { CANONICAL_DEPTH_MAX, canonicalJson } from './canonical.ts';
export { WIRE_ERRORS, WireError, type WireErrorCode, type WireErrorFact, type WireFault, wordFault } from './errors.ts';
export { type KeyPair, makeKeyPair, sha256Hex } from './keys.ts';
export { type Decoded, decodeLimits, encodeLimits, limitsFaults } from './limits/codec.ts';
export { limitsJsonSchema } from './limits/json-schema.ts';
export {
  LIMIT_FACTS,
  LIMIT_NAMES,
  type LimitFact,
  type LimitName,
  type LimitUnit,
  type OptionalLimitName,
} from './limits/limit-facts.ts';
export {
  MODEL_FACTS,
  MODEL_NAMES,
  type ModelName,
  type ModelNumberFact,
  type ModelTableFact,
  type ModelTableName,
  type ModelUnit,
  type OptionalModelName,
} from './limits/model-facts.ts';
export {
  LIMITS_BYTES_MAX,
  LIMITS_KIND,
  LIMITS_VERSION,
  type Limit,
  type Limits,
  type LimitsDraft,
  type LimitsRecord,
  limitOf,
  type Model,
  type ModelNumber,
  type ModelTable,
  type Signature,
} from './limits/record.ts';
export { LIMITS_RULES } from './limits/rules.ts';
