/**
 * Goal: the limits record carries each limit at its careful end, from the sum it names, can be read by whoever knows
 * the wire, and is not made where something it needs is not known.
 * Method: the records of all vehicles kept with the program through the codec; each value against a quantile taken by
 * sorting; hashes against Node’s own; planted changes of the dossier.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import {
  decodeLimits,
  encodeLimits,
  LIMIT_FACTS,
  LIMIT_NAMES,
  type LimitName,
  type LimitsRecord,
  MODEL_FACTS,
  MODEL_NAMES,
  makeKeyPair,
} from '@longrein/wire';
import { describe, expect, it } from 'vitest';
import { QUANTITIES } from '../dossier/facts/quantities.ts';
import { sameDimension, unitOf } from '../quantity/units.ts';
import { CHOSEN, GUARD_DEFAULT, LIMITS_FROM, MODEL_FROM } from './limit-sources.ts';
import { dossierHash, LimitsMissing, lawsHash, limitsDraft } from './limits.ts';
import { constant, inputOf, vehicleOf, withInput } from './planted.fixture.ts';
import { type Reckoning, reckon, reckonWith } from './reckon.ts';
import { columnOf } from './study.ts';
import type { Ref } from './sum.ts';
import { SUMS } from './sums/all.ts';
import { isSumId } from './sums/ids.ts';

const ROOT = new URL('../../../../', import.meta.url);
const textOf = (path: string) => readFileSync(new URL(`${path}.json`, ROOT), 'utf8');
const SEDGE = textOf('examples/reedmere/sedge');
const OWNER = makeKeyPair(new Uint8Array(32).fill(5));
const STRANGER = makeKeyPair(new Uint8Array(32).fill(6));

const reckoned = (text: string): Reckoning => reckon(vehicleOf(text), { cases: 200 });
const sedge = reckoned(SEDGE);

function recordOf(reckoning: Reckoning): LimitsRecord {
  const decoded = decodeLimits(encodeLimits(limitsDraft(reckoning), OWNER.secretKey), { publicKey: OWNER.publicKey });
  if (!decoded.ok) throw new Error(`${decoded.fault.code} at ${decoded.fault.at}`);
  return decoded.record;
}

/** The type-7 quantile, from its definition. */
function quantileBySorting(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const h = (sorted.length - 1) * p;
  const [low, high] = [sorted[Math.floor(h)] as number, sorted[Math.ceil(h)] as number];
  return low + (h - Math.floor(h)) * (high - low);
}

const casesOf = ({ study }: Reckoning, ref: Ref): readonly number[] => [
  ...(columnOf(study, ref)?.subarray(0, study.count) ?? []),
];

describe('the record of every example', () => {
  it.each(['sedge', 'teasel', 'burdock', 'teasel-second'])('decodes, and its limits are careful: %s', (name) => {
    const reckoning = name === 'sedge' ? sedge : reckoned(textOf(`examples/reedmere/${name}`));
    const { limits, model, vehicle, madeWith } = recordOf(reckoning);
    expect(vehicle).toBe(reckoning.vehicle.name);
    expect(madeWith).toEqual({ cases: 200, seed: 1 });
    for (const limitName of LIMIT_NAMES) {
      const limit = limits[limitName];
      if (limit === undefined) continue;
      const { careful, bounds } = LIMIT_FACTS[limitName];
      if (limit.sum === GUARD_DEFAULT) {
        expect(limit, limitName).toMatchObject({ value: CHOSEN[limitName], quantile: 0.5 });
        continue;
      }
      const cases = casesOf(reckoning, limit.sum as Ref);
      expect(cases, limitName).toHaveLength(200);
      const inBounds = (x: number) => Math.min(bounds[1], Math.max(bounds[0], x));
      const taken = inBounds(quantileBySorting(cases, limit.quantile));
      expect(limit.value, limitName).toBeCloseTo(taken, 9);
      const middle = inBounds(quantileBySorting(cases, 0.5));
      if (careful === 'low') expect(limit.value, limitName).toBeLessThanOrEqual(middle + 1e-12);
      else expect(limit.value, limitName).toBeGreaterThanOrEqual(middle - 1e-12);
      // Only what somebody stated without doubt is taken in the middle.
      const doubtful = new Set(cases).size > 1;
      const end = careful === 'low' ? 0.05 : 0.95;
      if (isSumId(limit.sum) || doubtful) expect(limit.quantile, limitName).toBe(end);
      else expect(limit.quantile, limitName).toBe(0.5);
    }
    expect(limits.crawlSpeed.value).toBeLessThanOrEqual(limits.speedCap.value);
    for (const modelName of MODEL_NAMES) {
      const parameter = model[modelName];
      if (parameter === undefined || !('low' in parameter)) continue;
      const refs = MODEL_FROM[modelName] ?? [];
      const cases = refs.map((ref) => casesOf(reckoning, ref));
      const totals = (cases[0] ?? []).map((_, i) => cases.reduce((sum, column) => sum + (column[i] as number), 0));
      const ends = [0.05, 0.5, 0.95].map((p) => quantileBySorting(totals, p));
      [parameter.low, parameter.value, parameter.high].forEach((shown, i) => {
        expect(shown, modelName).toBeCloseTo(ends[i] as number, 9);
      });
    }
  });

  it('is signed by the owner, for nobody else, and refused after any change', () => {
    const text = encodeLimits(limitsDraft(sedge), OWNER.secretKey);
    expect(decodeLimits(text, { publicKey: OWNER.publicKey }).ok).toBe(true);
    expect(decodeLimits(text, { publicKey: STRANGER.publicKey }).ok).toBe(false);
    for (let place = 0; place < text.length; place += 37) {
      const other = text[place] === '1' ? '2' : '1';
      const mutant = text.slice(0, place) + other + text.slice(place + 1);
      expect(decodeLimits(mutant, { publicKey: OWNER.publicKey }).ok, `at ${place}`).toBe(false);
    }
  });
});

describe('where the limits come from', () => {
  const unit = (ref: Ref) => (isSumId(ref) ? SUMS[ref].unit : QUANTITIES[ref as keyof typeof QUANTITIES]?.unit);

  it('is a sum or input of the same dimension, for every limit that must be there', () => {
    for (const name of LIMIT_NAMES) {
      const fact = LIMIT_FACTS[name];
      const ref = LIMITS_FROM[name];
      if (ref === undefined) expect('optional' in fact || CHOSEN[name] !== undefined, name).toBe(true);
      else expect(sameDimension(unitOf(unit(ref) ?? ''), unitOf(fact.unit)), `${name}: ${unit(ref)}`).toBe(true);
    }
    for (const name of MODEL_NAMES) {
      for (const ref of MODEL_FROM[name] ?? []) {
        const wanted = unitOf(MODEL_FACTS[name].unit);
        expect(sameDimension(unitOf(unit(ref) ?? ''), wanted), `${name}: ${unit(ref)}`).toBe(true);
      }
    }
  });

  it('leaves no limit of a wheeled vehicle out that has a source', () => {
    const { limits } = recordOf(sedge);
    const absent = LIMIT_NAMES.filter((name) => limits[name] === undefined);
    // A servo is not held by duty; ramp and steps are the guard’s own affair.
    expect(absent).toEqual(['dutyRate', 'stepDistance', 'stepTurn', 'steeringHoldDuty', 'steeringHoldTime']);
  });

  it('takes the corner at the speed at which it neither slides nor tips', () => {
    const { limits } = recordOf(sedge);
    for (const id of ['tip.cornerSpeed', 'tip.slideSpeed'] as const) {
      expect(limits.cornerSpeed?.value).toBeLessThanOrEqual(quantileBySorting(casesOf(sedge, id), 0.05) + 1e-12);
    }
  });

  it('gives the model the whole way from pack to bridge', () => {
    const { model } = recordOf(sedge);
    const runs = ['wiring.pack.resistance', 'wiring.bridge.resistance'] as const;
    const middles = runs.map((id) => quantileBySorting(casesOf(sedge, id), 0.5));
    expect(model.wiringResistance?.value).toBeCloseTo((middles[0] ?? 0) + (middles[1] ?? 0), 3);
    expect(model.wiringResistance?.value).toBeGreaterThan(Math.max(...middles));
  });
});

describe('a setting beyond what is safe', () => {
  it('does not reach the record: the duty stays at what the motor’s rating allows in the careful case', () => {
    const reckless = reckon(withInput(vehicleOf(SEDGE), inputOf('set.dutyCeiling', '100 %')), { cases: 200 });
    const safe = quantileBySorting(casesOf(reckless, 'duty.ceiling'), 0.05);
    expect(safe).toBeLessThan(0.95);
    expect(recordOf(reckless).limits.dutyCeiling.value).toBeCloseTo(safe, 9);
  });

  it('pulls the crawl down to a cap below it, and names the cap as its origin', () => {
    const slow = reckon(withInput(vehicleOf(SEDGE), inputOf('set.speedCap', '0.1 m/s')), { cases: 50 });
    const { crawlSpeed, speedCap } = recordOf(slow).limits;
    expect(crawlSpeed).toMatchObject({ value: speedCap.value, sum: 'safe.speedCap', quantile: speedCap.quantile });
  });
});

describe('what the wire cannot carry', () => {
  const draftWith = (ref: keyof typeof SUMS, value: number, name: LimitName) => {
    const planted = { ...SUMS, [ref]: constant(value) };
    return limitsDraft(reckonWith(planted, {}, vehicleOf(SEDGE), { cases: 20 })).limits[name]?.value;
  };

  it('is cut to the bound where that is the careful direction', () => {
    expect(draftWith('picture.clearObstacle', 5000, 'sightObstacle')).toBe(1000);
    expect(draftWith('tip.side', 1.6, 'tipSideSlope')).toBe(LIMIT_FACTS.tipSideSlope.bounds[1]);
  });

  it('makes no record where the bound would promise what the vehicle cannot do', () => {
    expect(() => draftWith('safe.deceleration', 0.01, 'deceleration')).toThrow(/deceleration .* outside 0\.05 to 20/);
    expect(() => draftWith('picture.blind', 150, 'blindForeground')).toThrow(/blindForeground/);
    expect(() => draftWith('mass.total', 200, 'speedCap')).toThrow(/mass \(mass\.total lies outside/);
  });
});

describe('a vehicle of which something needed is not known', () => {
  const without = (...ids: Ref[]) => {
    const vehicle = vehicleOf(SEDGE);
    const inputs = new Map([...vehicle.inputs].filter(([id]) => !ids.includes(id)));
    return reckon({ ...vehicle, inputs }, { cases: 20 });
  };

  it('has no record, and the refusal names the limit and the quantity', () => {
    const refusal = (...ids: Ref[]) => {
      try {
        return limitsDraft(without(...ids));
      } catch (error) {
        return error;
      }
    };
    const reaction = refusal('driving.reaction');
    expect(reaction).toBeInstanceOf(LimitsMissing);
    expect((reaction as LimitsMissing).names).toEqual(['reactionTime']);
    expect((reaction as Error).message).toMatch(/reactionTime \(nothing is known of .*\(driving\.reaction\)\)/);
    const mass = refusal('toy.mass');
    expect((mass as LimitsMissing).names).toEqual(expect.arrayContaining(['mass']));
    expect((mass as Error).message).toContain('(toy.mass)');
  });

  it('has one without the limits that a vehicle may do without', () => {
    const { limits, model } = limitsDraft(without('motor.inductance'));
    expect(model.motorInductance).toBeUndefined();
    expect(limits.speedCap).toBeDefined();
  });
});

describe('holding an on/off steering', () => {
  const burdock = vehicleOf(textOf('examples/reedmere/burdock'));
  const teasel = vehicleOf(textOf('examples/reedmere/teasel'));
  const heldBy = (vehicle: typeof burdock) => {
    const { steeringHoldDuty, steeringHoldTime } = recordOf(reckon(vehicle, { cases: 20 })).limits;
    return [steeringHoldDuty !== undefined, steeringHoldTime !== undefined];
  };
  const onOff = [burdock, teasel].find(({ layout }) => layout.steering === 'on-off');

  it('has a duty and a time, or neither where one of them is unknown', () => {
    if (onOff === undefined) throw new Error('no example steers on/off');
    expect(heldBy(onOff)).toEqual([true, true]);
    const inputs = new Map(onOff.inputs);
    inputs.delete('set.holdTime');
    expect(heldBy({ ...onOff, inputs })).toEqual([false, false]);
  });

  it('is no affair of a servo, whatever its dossier sets', () => {
    expect(heldBy(withInput(vehicleOf(SEDGE), inputOf('set.holdDuty', '30 %')))).toEqual([false, false]);
  });
});

describe('the hash of the dossier', () => {
  const hash = (text: string) => dossierHash({ vehicle: vehicleOf(text) });
  const before = hash(SEDGE);

  it('is the same however the same is written', () => {
    expect(before).toMatch(/^[0-9a-f]{64}$/);
    expect(hash(JSON.stringify(JSON.parse(SEDGE)))).toBe(before);
    expect(hash(SEDGE.replace('"1.62 kg ± 5 g"', '"1620 g ± 0.005 kg"'))).toBe(before);
    expect(hash(SEDGE.replace('kitchen scale, with its own pack', 'the good scale'))).toBe(before);
    const turned = Object.fromEntries(Object.entries(JSON.parse(SEDGE)).reverse());
    expect(hash(JSON.stringify(turned))).toBe(before);
  });

  it.each([
    ['a value', SEDGE.replace('"1.62 kg ± 5 g"', '"1.63 kg ± 5 g"')],
    ['a doubt', SEDGE.replace('"1.62 kg ± 5 g"', '"1.62 kg ± 6 g"')],
    ['a part', SEDGE.replace('"nmc-2s-3000-power"', '"nmc-2s-2600-protected"')],
    ['a surface', SEDGE.replace('"gravel, packed"', '"grass, short"')],
    ['a correlation', SEDGE.replaceAll('0.35', '0.36')],
    ['the name', SEDGE.replace('"name": "Sedge"', '"name": "Rush"')],
  ])('is another when %s is another', (_what, text) => {
    expect(text).not.toBe(SEDGE);
    expect(hash(text)).not.toBe(before);
  });

  it('is another when an assumption becomes a measurement of the same value', () => {
    const assumed = [...vehicleOf(SEDGE).inputs.values()].find(({ origin }) => origin === 'assumed');
    if (assumed === undefined) throw new Error('sedge states everything');
    const vehicle = withInput(vehicleOf(SEDGE), { ...assumed, origin: 'measured' });
    expect(dossierHash({ vehicle })).not.toBe(before);
  });
});

describe('the hash of the laws', () => {
  it('is that of their stated facts in order of id, keys sorted, as SHA-256 by another implementation', async () => {
    const laws = Object.values(await import('@longrein/laws')).filter(
      (value): value is typeof value & { facts: { id: string } } => typeof value === 'function' && 'facts' in value,
    );
    expect(laws.length).toBeGreaterThan(50);
    const sortKeys = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(sortKeys);
      if (typeof value !== 'object' || value === null) return value;
      const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
      return Object.fromEntries(entries.map(([key, inner]) => [key, sortKeys(inner)]));
    };
    const facts = laws.map((law) => law.facts).sort((a, b) => (a.id < b.id ? -1 : 1));
    const text = JSON.stringify(sortKeys(facts));
    expect(lawsHash()).toBe(createHash('sha256').update(text).digest('hex'));
    expect(lawsHash()).toBe(lawsHash());
  });

  it('stands in the record beside the version of the laws', () => {
    expect(recordOf(sedge).laws).toEqual({ version: '1', hash: lawsHash() });
    expect(recordOf(sedge).dossierHash).toBe(dossierHash(sedge));
  });
});
