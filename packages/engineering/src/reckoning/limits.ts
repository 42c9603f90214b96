/** From a reckoning to the limits record the vehicle drives by: each limit from one sum, at its careful end. */

import * as everyLaw from '@longrein/laws';
import { type AnyLaw, isLaw, restVoltage } from '@longrein/laws';
import {
  canonicalJson,
  LIMIT_FACTS,
  LIMITS_KIND,
  LIMITS_VERSION,
  type LimitName,
  type LimitsDraft,
  limitOf,
  MODEL_FACTS,
  type ModelName,
  sha256Hex,
} from '@longrein/wire';
import { quantile } from '../quantity/bands.ts';
import { formatQuantity } from '../quantity/quantity.ts';
import type { Reckoning } from './reckon.ts';
import { columnOf } from './study.ts';
import type { Ref } from './sum.ts';

/** The careful ends: 5 % of the possible vehicles lie beyond. */
const CAREFUL = { low: 0.05, high: 0.95 } as const;

/** Where each limit comes from. Those without a source here are fixed by the guard's own careful defaults below. */
const FROM_SUMS: { readonly [N in LimitName]?: Ref } = {
  dutyCeiling: 'duty.limit',
  speedCap: 'safe.speedCap',
  deceleration: 'safe.deceleration',
  steepestDescent: 'want.slope',
  tipSideSlope: 'tip.side',
  cornerSpeed: 'tip.cornerSpeed',
  actuationDelay: 'driving.actuation',
  reactionTime: 'driving.reaction',
  cameraLag: 'camera.lag',
  screenLag: 'picture.screenLag',
  sightPictureWidth: 'picture.width',
  sightObstacle: 'picture.clearObstacle',
  sightEdge: 'picture.clearEdge',
  sightWalker: 'picture.clearWalker',
  walkerSpeed: 'near.walkerSpeed',
  blindForeground: 'picture.blind',
  stallCurrent: 'drive.stallThreshold',
  stallTime: 'set.stallTime',
  steeringHoldDuty: 'set.holdDuty',
  steeringHoldTime: 'set.holdTime',
  packCutOff: 'pack.cutOff',
  packReserve: 'set.reserve',
  boardVoltageMin: 'computer.brownOut',
  motorWindingMax: 'motor.windingLimit',
};

/** Careful defaults of the guard: chosen, not computed. `sum` names the rule they come from. */
const CHOSEN: { readonly [N in LimitName]?: { readonly value: number; readonly sum: string } } = {
  crawlSpeed: { value: 0.15, sum: 'guard default' },
  deadManTime: { value: 0.3, sum: 'guard default' },
};

const MODEL_FROM: { readonly [N in ModelName]?: Ref } = {
  packCapacity: 'pack.realCapacity',
  packResistance: 'pack.resistance',
  wiringResistance: 'wiring.pack.resistance',
  idlePower: 'supply.inputPower',
  bridgeDrop: 'bridge.threshold',
  bridgeResistance: 'bridge.slope',
  motorResistance: 'drive.resistance',
  motorConstant: 'drive.constant',
  motorNoLoadCurrent: 'drive.noLoadCurrent',
  motorInductance: 'motor.inductance',
  motorHeatResistance: 'heat.motorResistance',
  motorHeatCapacity: 'heat.motorCapacity',
  gearRatio: 'drive.ratio',
  gearEfficiency: 'gear.efficiency',
  wheelRadius: 'drive.wheelRadius',
  wheelbase: 'balance.wheelbase',
  trackWidth: 'balance.track',
  steerAngleMax: 'steer.angle',
  mass: 'mass.total',
  rollingCoefficient: 'ground.rolling',
};

/** Points of the open-circuit table: enough for straight lines between them to follow the curve. */
const TABLE_POINTS = [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1];

/** Version of the set of laws: raised when a law changes its meaning. */
export const LAWS_VERSION = '1';

/** Hash over the stated facts and the arithmetic of every law, so that a record tells which laws it was made with. */
export function lawsHash(): string {
  const laws: AnyLaw[] = Object.values(everyLaw).filter(isLaw);
  const stated = laws.map(({ facts }) => ({ ...facts })).sort((a, b) => (a.id < b.id ? -1 : 1));
  return sha256Hex(canonicalJson(stated));
}

/** Hash of what was stated: every input in canonical form, with the traits of the vehicle. */
export function dossierHash({ vehicle }: Reckoning): string {
  const inputs = [...vehicle.inputs.values()]
    .map((input) => [input.id, formatQuantity(input.quantity), input.origin])
    .sort(([a], [b]) => ((a as string) < (b as string) ? -1 : 1));
  return sha256Hex(canonicalJson({ name: vehicle.name, layout: vehicle.layout, inputs }));
}

/** Why no limits record can be made. */
export class LimitsMissing extends Error {
  readonly names: readonly string[];
  constructor(names: readonly string[]) {
    super(`no limits record without ${names.join(', ')}`);
    this.name = 'LimitsMissing';
    this.names = names;
  }
}

/**
 * The draft of the limits record; `encodeLimits` of the wire package adds checksum and signature.
 * @throws {@link LimitsMissing} where a limit that must be there rests on something unknown
 */
export function limitsDraft(reckoning: Reckoning): LimitsDraft {
  const { study, vehicle } = reckoning;
  const missing: string[] = [];
  const limits: Record<string, unknown> = {};
  for (const [name, fact] of Object.entries(LIMIT_FACTS) as [LimitName, (typeof LIMIT_FACTS)[LimitName]][]) {
    const chosen = CHOSEN[name];
    const ref = FROM_SUMS[name];
    const column = ref && columnOf(study, ref)?.subarray(0, study.count);
    if (chosen) {
      limits[name] = limitOf(name, { ...chosen, quantile: CAREFUL[fact.careful] });
    } else if (ref && column?.every(Number.isFinite)) {
      const at = CAREFUL[fact.careful];
      limits[name] = limitOf(name, { value: within(quantile(column, at), fact.bounds), sum: ref, quantile: at });
    } else if (!('optional' in fact)) missing.push(name);
  }
  const model = modelOf(reckoning, missing);
  if (missing.length > 0) throw new LimitsMissing(missing);
  keepCrawlBelowCap(limits as unknown as LimitsDraft['limits']);
  return {
    kind: LIMITS_KIND,
    version: LIMITS_VERSION,
    vehicle: vehicle.name,
    dossierHash: dossierHash(reckoning),
    laws: { version: LAWS_VERSION, hash: lawsHash() },
    madeWith: { cases: study.count, seed: study.seed },
    limits: limits as unknown as LimitsDraft['limits'],
    model,
  };
}

/** A sum may pass what a record may carry, such as a sight of kilometres; the bound is then the limit. */
function within(value: number, [low, high]: readonly [number, number]): number {
  return Math.min(high, Math.max(low, value));
}

function keepCrawlBelowCap(limits: LimitsDraft['limits']): void {
  const { crawlSpeed, speedCap } = limits;
  if (crawlSpeed.value > speedCap.value) Object.assign(crawlSpeed, { value: speedCap.value });
}

function modelOf({ study, vehicle }: Reckoning, missing: string[]): LimitsDraft['model'] {
  const { chemistry, cells, motors } = vehicle.layout;
  const model: Record<string, unknown> = {
    motorCount: { value: motors, unit: MODEL_FACTS.motorCount.unit },
    openCircuit: {
      value: TABLE_POINTS.map((charge) => [charge, cells * restVoltage({ chemistry, charge })]),
      unit: MODEL_FACTS.openCircuit.unit,
    },
  };
  for (const [name, fact] of Object.entries(MODEL_FACTS) as [ModelName, (typeof MODEL_FACTS)[ModelName]][]) {
    if (name in model) continue;
    const ref = MODEL_FROM[name];
    const column = ref && columnOf(study, ref)?.subarray(0, study.count);
    if (column?.every(Number.isFinite)) {
      const [low, value, high] = [0.05, 0.5, 0.95].map((p) => within(quantile(column, p), fact.bounds));
      model[name] = { value, unit: fact.unit, low, high };
    } else if (!('optional' in fact)) missing.push(name);
  }
  return model as unknown as LimitsDraft['model'];
}
