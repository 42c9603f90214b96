/**
 * The limits record: how a sum made at the bench becomes a limit the vehicle drives by. Every number is SI and states
 * its unit, the sum it comes from and the quantile of the possible vehicles it is taken at, so that a record read
 * years later needs no program to be understood.
 */
import { LIMIT_FACTS, type LimitName, type LimitUnit, type OptionalLimitName } from './limit-facts.ts';
import type { ModelName, ModelTableName, ModelUnit, OptionalModelName } from './model-facts.ts';

export const LIMITS_KIND = 'longrein-limits';
export const LIMITS_VERSION = 1;
/** A full record has about 7 kB; what is larger than this bound is not read at all. */
export const LIMITS_BYTES_MAX = 65_536;

export interface Limit<Unit extends string = string> {
  /** SI. */
  readonly value: number;
  readonly unit: Unit;
  /** Id of the sum, or of the stated quantity, that the value comes from. */
  readonly sum: string;
  /** The part of the possible vehicles that lie below the value: 0.05 and 0.95 are ends, 0.5 is the middle. */
  readonly quantile: number;
  readonly meaning: string;
}

export interface ModelNumber<Unit extends string = string> {
  /** The middle of the possible vehicles, SI. */
  readonly value: number;
  readonly unit: Unit;
  /** The band that holds 90 % of the possible vehicles: both ends or neither. */
  readonly low?: number;
  readonly high?: number;
}

export interface ModelTable<Unit extends string = string> {
  /** Points [argument, value] in rising order of the argument; straight in between. */
  readonly value: readonly (readonly [number, number])[];
  readonly unit: Unit;
}

export type Limits = { readonly [N in Exclude<LimitName, OptionalLimitName>]: Limit<LimitUnit<N>> } & {
  readonly [N in OptionalLimitName]?: Limit<LimitUnit<N>>;
};

type Parameter<N extends ModelName> = N extends ModelTableName ? ModelTable<ModelUnit<N>> : ModelNumber<ModelUnit<N>>;

export type Model = { readonly [N in Exclude<ModelName, OptionalModelName>]: Parameter<N> } & {
  readonly [N in OptionalModelName]?: Parameter<N>;
};

export interface Signature {
  readonly algorithm: 'ed25519';
  /** 32 bytes in lower-case hexadecimal. */
  readonly publicKey: string;
  /** 64 bytes in lower-case hexadecimal, over the same bytes as the checksum. */
  readonly value: string;
}

/** What a reckoning gives; the codec adds the checksum and, with a key, the signature. */
export interface LimitsDraft {
  readonly kind: typeof LIMITS_KIND;
  readonly version: typeof LIMITS_VERSION;
  /** The vehicle's name. */
  readonly vehicle: string;
  /** SHA-256 of the canonical dossier. */
  readonly dossierHash: string;
  /** The laws the sums were made with. */
  readonly laws: { readonly version: string; readonly hash: string };
  /** What repeats the possible vehicles. */
  readonly madeWith: { readonly cases: number; readonly seed: number };
  readonly limits: Limits;
  readonly model: Model;
}

export interface LimitsRecord extends LimitsDraft {
  /** SHA-256 over the canonical bytes of everything but checksum and signature. It also names the record in logs. */
  readonly checksum: string;
  readonly signature?: Signature;
}

/** A limit with the unit and the meaning that the table states for it. */
export function limitOf<N extends LimitName>(
  name: N,
  from: { readonly value: number; readonly sum: string; readonly quantile: number },
): Limit<LimitUnit<N>> {
  const { unit, meaning } = LIMIT_FACTS[name];
  return { value: from.value, unit, sum: from.sum, quantile: from.quantile, meaning };
}
