/** From a reckoning to the limits record the vehicle drives by: each limit from one sum, at its careful end. */

import * as everyLaw from '@longrein/laws';
import { type AnyLaw, isLaw, restVoltage } from '@longrein/laws';
import {
  canonicalJson,
  LIMIT_FACTS,
  LIMITS_KIND,
  LIMITS_VERSION,
  type Limit,
  type LimitFact,
  type LimitName,
  type LimitsDraft,
  limitOf,
  MODEL_FACTS,
  type ModelName,
  sha256Hex,
} from '@longrein/wire';
import { quantile } from '../quantity/bands.ts';
import { CHOSEN, GUARD_DEFAULT, LIMITS_FROM, MODEL_FROM, TABLE_POINTS } from './limit-sources.ts';
import { type Reckoning, whyUnknown } from './reckon.ts';
import { columnOf, type Study } from './study.ts';
import type { Ref } from './sum.ts';
import { isSumId } from './sums/ids.ts';

/** The careful ends: 5 % of the possible vehicles lie beyond. */
const CAREFUL = { low: 0.05, high: 0.95 } as const;
/** What is stated or chosen, and not computed, is taken as it stands. */
const AS_STATED = 0.5;

/** Version of the set of laws: raised when a law changes its arithmetic without changing its stated facts. */
export const LAWS_VERSION = '1';

/** Hash over the stated facts of every law, so that a record tells which laws it was made with. */
export function lawsHash(): string {
  const laws: AnyLaw[] = Object.values(everyLaw).filter(isLaw);
  const stated = laws.map(({ facts }) => ({ ...facts })).sort((a, b) => (a.id < b.id ? -1 : 1));
  return sha256Hex(canonicalJson(stated));
}

/**
 * Hash of what the sums were made from: traits, every input in SI, and what ties inputs together. However a quantity
 * was written and whatever was remarked, the same vehicle has the same hash.
 */
export function dossierHash({ vehicle }: Pick<Reckoning, 'vehicle'>): string {
  const inputs = [...vehicle.inputs.values()].map(({ id, quantity: { value, doubt, spread }, behaviour, origin }) => [
    id,
    { value, doubt, spread, behaviour, origin },
  ]);
  const { name, layout, correlations } = vehicle;
  return sha256Hex(canonicalJson({ name, layout, inputs: Object.fromEntries(inputs), correlations }));
}

/** Why no limits record can be made: what it needs is not known, or lies where no vehicle can be guarded. */
export class LimitsMissing extends Error {
  /** Names of the entries. */
  readonly names: readonly string[];
  constructor(missing: readonly { readonly name: string; readonly because: string }[]) {
    super(`no limits record without ${missing.map(({ name, because }) => `${name} (${because})`).join('; ')}`);
    this.name = 'LimitsMissing';
    this.names = missing.map(({ name }) => name);
  }
}

type Missing = { readonly name: string; readonly because: string }[];

/**
 * The draft of the limits record; `encodeLimits` of the wire package adds checksum and signature.
 * @throws {@link LimitsMissing} where an entry that must be there rests on something unknown or lies out of bounds
 */
export function limitsDraft(reckoning: Reckoning): LimitsDraft {
  const { study, vehicle } = reckoning;
  const missing: Missing = [];
  const limits = limitsOf(study, missing);
  const model = modelOf(reckoning, missing);
  if (missing.length > 0) throw new LimitsMissing(missing);
  return {
    kind: LIMITS_KIND,
    version: LIMITS_VERSION,
    vehicle: vehicle.name,
    dossierHash: dossierHash(reckoning),
    laws: { version: LAWS_VERSION, hash: lawsHash() },
    madeWith: { cases: study.count, seed: study.seed },
    limits: withWholeHold(withCrawlBelowCap(limits as LimitsDraft['limits']), vehicle.layout.steering === 'on-off'),
    model,
  };
}

type Entry<K extends string, F> = readonly [K, F];

function limitsOf(study: Study, missing: Missing): Partial<LimitsDraft['limits']> {
  const limits: Partial<Record<LimitName, Limit>> = {};
  for (const [name, fact] of Object.entries(LIMIT_FACTS) as Entry<LimitName, LimitFact>[]) {
    const chosen = CHOSEN[name];
    const ref = LIMITS_FROM[name];
    if (chosen !== undefined) limits[name] = limitOf(name, { value: chosen, sum: GUARD_DEFAULT, quantile: AS_STATED });
    if (ref === undefined) continue;
    const column = finiteColumn(study, [ref]);
    const at = !isSumId(ref) && isConstant(column) ? AS_STATED : CAREFUL[fact.careful];
    const value = column && carefully(quantile(column, at), fact);
    if (value !== undefined) limits[name] = limitOf(name, { value, sum: ref, quantile: at });
    else if (!fact.optional) missing.push({ name, because: becauseOf(study, [ref], fact) });
  }
  return limits as Partial<LimitsDraft['limits']>;
}

/**
 * A sum may pass what a record can carry, such as a sight of kilometres: the bound is then the limit, where that is the
 * careful direction. In the other direction it would promise what the vehicle cannot do, and there is no limit.
 */
function carefully(value: number, { bounds: [low, high], careful }: LimitFact): number | undefined {
  if (value > high) return careful === 'low' ? high : undefined;
  if (value < low) return careful === 'high' ? low : undefined;
  return value;
}

/** The values of a sum, or of several added up, over all cases; nothing where one is not known in every case. */
function finiteColumn(study: Study, refs: readonly Ref[]): Float64Array | undefined {
  const total = new Float64Array(study.count);
  for (const ref of refs) {
    const column = columnOf(study, ref);
    if (column === undefined) return undefined;
    for (let i = 0; i < total.length; i++) total[i] = (total[i] as number) + (column[i] as number);
  }
  return total.every(Number.isFinite) ? total : undefined;
}

function isConstant(column: Float64Array | undefined): boolean {
  return column?.every((value) => value === column[0]) === true;
}

function becauseOf(study: Study, refs: readonly Ref[], { bounds: [low, high] }: Pick<LimitFact, 'bounds'>): string {
  for (const ref of refs) {
    const why = whyUnknown(study, ref);
    if (why !== undefined) return why;
  }
  return `${refs.join(' + ')} lies outside ${low} to ${high}, where a vehicle can be guarded`;
}

function withCrawlBelowCap(limits: LimitsDraft['limits']): LimitsDraft['limits'] {
  const { crawlSpeed, speedCap } = limits;
  if (crawlSpeed.value <= speedCap.value) return limits;
  const { value, sum, quantile: at } = speedCap;
  return { ...limits, crawlSpeed: limitOf('crawlSpeed', { value, sum, quantile: at }) };
}

/** Only an on/off steering is held by duty, and holding needs both how hard and how long. */
function withWholeHold(limits: LimitsDraft['limits'], isHeld: boolean): LimitsDraft['limits'] {
  const { steeringHoldDuty, steeringHoldTime, ...others } = limits;
  return isHeld && steeringHoldDuty && steeringHoldTime ? limits : others;
}

function modelOf({ study, vehicle }: Reckoning, missing: Missing): LimitsDraft['model'] {
  const { chemistry, cells, motors } = vehicle.layout;
  const model: Record<string, unknown> = {
    motorCount: { value: motors, unit: MODEL_FACTS.motorCount.unit },
    openCircuit: {
      value: TABLE_POINTS.map((charge) => [charge, cells * restVoltage({ chemistry, charge })]),
      unit: MODEL_FACTS.openCircuit.unit,
    },
  };
  for (const [name, fact] of Object.entries(MODEL_FACTS) as Entry<ModelName, (typeof MODEL_FACTS)[ModelName]>[]) {
    const refs = MODEL_FROM[name];
    if (refs === undefined) continue;
    const column = finiteColumn(study, refs);
    const [low, value, high] = [0.05, 0.5, 0.95].map((p) => (column ? quantile(column, p) : Number.NaN));
    if (isWithin(low, fact.bounds) && isWithin(high, fact.bounds)) {
      model[name] = { value, unit: fact.unit, low, high };
    } else if (!('optional' in fact)) missing.push({ name, because: becauseOf(study, refs, fact) });
  }
  return model as unknown as LimitsDraft['model'];
}

function isWithin(value: number | undefined, [low, high]: readonly [number, number]): boolean {
  return value !== undefined && value >= low && value <= high;
}
