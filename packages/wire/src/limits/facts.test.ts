/**
 * Goal: the tables of limits and parameters are complete and make schema, types and documentation alike.
 * Method: every row is looked at; every entry is taken out of a record in turn; the documentation is read as text.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { WIRE_ERRORS } from '../errors.ts';
import { limitsFaults } from './codec.ts';
import { LIMIT_FACTS, LIMIT_NAMES, type LimitFact } from './limit-facts.ts';
import { MODEL_FACTS, MODEL_NAMES, type ModelNumberFact, type ModelTableFact } from './model-facts.ts';
import { type LimitsDraft, limitOf } from './record.ts';
import { LIMITS_RULES } from './rules.ts';
import { sampleDraft } from './sample.fixture.ts';

const limitRows = LIMIT_NAMES.map((name): [string, LimitFact] => [name, LIMIT_FACTS[name]]);
const modelRows = MODEL_NAMES.map((name): [string, ModelNumberFact | ModelTableFact] => [name, MODEL_FACTS[name]]);

/** Units of the SI written with its base and derived symbols, without prefixes but the kilogram's; px is a count. */
const SI_UNIT = /^(1|(1|rad|px|[msAKVCΩWHJ]|kg)²?([·/](rad|[msAKVCΩWHJ]|kg)²?)*)$/;

describe('every row', () => {
  it.each([...limitRows, ...modelRows])(
    '%s says what it means, in which SI unit and within which bounds',
    (_name, fact) => {
      expect(fact.meaning).toMatch(/^[a-z1-9].{5,150}[^.]$/);
      expect(fact.unit).toMatch(SI_UNIT);
      const [least, most] = fact.bounds;
      expect(Number.isFinite(least) && Number.isFinite(most)).toBe(true);
      expect(least).toBeGreaterThanOrEqual(0);
      expect(most).toBeGreaterThan(least);
    },
  );

  it.each([...limitRows, ...modelRows])('%s is required unless the row says that it is optional', (name, fact) => {
    const draft = sampleDraft() as unknown as { limits: Record<string, unknown>; model: Record<string, unknown> };
    const group = name in LIMIT_FACTS ? 'limits' : 'model';
    delete draft[group][name];
    const codes = limitsFaults(draft as unknown as LimitsDraft).map(({ code, at }) => [code, at]);
    const missing = ['WIRE_KEY_MISSING', `/${group}/${name}`];
    if (fact.optional) expect(codes).not.toContainEqual(missing);
    else expect(codes).toEqual([missing]);
  });

  it.each(limitRows)('%s is refused at the end of the cases that is not the careful one', (name, { careful }) => {
    const draft = sampleDraft();
    const limit = draft.limits[name as keyof typeof draft.limits] as { quantile: number };
    for (const [quantile, good] of [
      [0.49, careful === 'low'],
      [0.5, true],
      [0.51, careful === 'high'],
    ] as const) {
      limit.quantile = quantile;
      expect(limitsFaults(draft).length === 0, `quantile ${quantile}`).toBe(good);
    }
  });

  it.each([...limitRows, ...modelRows])(
    '%s may stand at its bounds and not beyond',
    (name, { bounds: [least, most] }) => {
      if (name === 'openCircuit') return expect(bandFault([least, most + 1])).toBe('WIRE_BOUNDS');
      const span = most - least;
      for (const [value, good] of [
        [least, true],
        [most, true],
        [least - span / 1e6, false],
        [most + span / 1e6, false],
      ] as const) {
        const draft = sampleDraft() as unknown as Record<
          'limits' | 'model',
          Record<string, { value: number; low?: number }>
        >;
        const group = name in LIMIT_FACTS ? 'limits' : 'model';
        draft[group][name] = { ...draft[group][name], value };
        const out = limitsFaults(draft as unknown as LimitsDraft).filter(({ code }) => code === 'WIRE_BOUNDS');
        expect(
          out.map(({ at }) => at),
          String(value),
        ).toEqual(good ? [] : [`/${group}/${name}/value`]);
      }
    },
  );
});

function bandFault([empty, full]: readonly [number, number]): string | undefined {
  const draft = sampleDraft();
  const value = [
    [0, empty],
    [1, full],
  ] as const;
  return limitsFaults({ ...draft, model: { ...draft.model, openCircuit: { value, unit: 'V' } } })[0]?.code;
}

describe('the types', () => {
  it('know names and units: these lines compile, and those marked do not', () => {
    const { limits } = sampleDraft();
    const metresPerSecond: 'm/s' = limits.speedCap.unit;
    // @ts-expect-error a vehicle may have no on/off steering, so that this may be undefined
    const seconds: 's' = limits.steeringHoldTime.unit;
    // @ts-expect-error a misspelt limit does not exist
    const misspelt = limits.speedCup;
    expect([metresPerSecond, seconds, misspelt]).toEqual(['m/s', 's', undefined]);
    expect(limitOf('stallTime', { value: 1, sum: 'a', quantile: 0.05 })).toEqual({
      value: 1,
      unit: 's',
      sum: 'a',
      quantile: 0.05,
      meaning: LIMIT_FACTS.stallTime.meaning,
    });
  });
});

describe('docs/limits-record.md', () => {
  const page = readFileSync(new URL('../../../../docs/limits-record.md', import.meta.url), 'utf8');
  const rows = (heading: string): readonly string[] => {
    const section = page.split(/^## /m).find((part) => part.startsWith(heading)) ?? '';
    return section.split('\n').filter((line) => line.startsWith('| `'));
  };
  const range = ([least, most]: readonly [number, number]) =>
    `${Number(least.toPrecision(4))} … ${Number(most.toPrecision(4))}`;

  it('lists every limit with unit, bounds, careful end and meaning, and no other', () => {
    expect(rows('The limits')).toEqual(
      limitRows.map(([name, { unit, bounds, careful, optional, meaning }]) => {
        return `| \`${name}\` | ${unit} | ${range(bounds)} | ${careful} | ${optional ? 'may be absent' : ''} | ${meaning} |`;
      }),
    );
  });

  it('lists every parameter with unit, bounds and meaning, and no other', () => {
    expect(rows('The model')).toEqual(
      modelRows.map(([name, { unit, bounds, optional, meaning }]) => {
        return `| \`${name}\` | ${unit} | ${range(bounds)} | ${optional ? 'may be absent' : ''} | ${meaning} |`;
      }),
    );
  });

  it('lists every error code with its meaning and what to do, and no other', () => {
    expect(rows('What can be wrong')).toEqual(
      WIRE_ERRORS.map(({ code, meaning, todo }) => `| \`${code}\` | ${meaning} | ${todo} |`),
    );
  });

  it('states every rule between entries', () => {
    for (const { says } of LIMITS_RULES) expect(page).toContain(`- ${says}\n`);
  });
});
