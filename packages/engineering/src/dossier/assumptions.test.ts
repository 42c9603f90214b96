/**
 * Goal: every assumption can be read, means something for the vehicle it is made for, and contradicts nothing stated.
 * Method: all quantities under all traits they may depend on; then the plain dossier with statements taken out.
 */
import { CHEMISTRIES } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawCases } from '../quantity/cases.ts';
import { within } from '../quantity/limits.ts';
import { parseQuantity } from '../quantity/quantity.ts';
import { applies } from './assumptions.ts';
import type { Traits } from './facts/facts.ts';
import { factsOf, INPUT_IDS, type InputId, QUANTITIES, type QuantityId, quantityOf } from './facts/quantities.ts';
import { wordFault } from './faults.ts';
import { readDossier } from './read.ts';
import { resolve, type Vehicle } from './resolve.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { changed, PLAIN_TEXT } from './testing.ts';

type Change = readonly [from: string, to: string];

function vehicle(...changes: readonly Change[]): Vehicle {
  const text = changes.reduce((before, [from, to]) => changed(before, from, to), PLAIN_TEXT);
  const reading = readDossier(text, builtInShelf());
  if (!reading.ok) throw new Error(reading.faults.map(wordFault).join('\n'));
  return resolve(reading.value, builtInShelf());
}

const inputOf = (of: Vehicle, id: InputId) => {
  const input = of.inputs.get(id);
  if (input === undefined) throw new Error(`${id} is not there`);
  return input;
};

const CELLS = Array.from({ length: 24 }, (_, i) => i + 1);

/** Every combination of the traits, of cells only as many as matter at a time. */
function* everyTraits(): Generator<Traits> {
  const other = { bridge: 'mosfet', steering: 'servo', magnet: 'ferrite' } as const;
  for (const chemistry of CHEMISTRIES) {
    for (const cells of CELLS) {
      yield { ...other, chemistry, cells, toyChemistry: chemistry, toyCells: cells };
      for (const toyChemistry of CHEMISTRIES) yield { ...other, chemistry, cells, toyChemistry, toyCells: 25 - cells };
    }
  }
  for (const bridge of ['bipolar', 'mosfet'] as const) {
    for (const steering of ['on-off', 'servo', 'skid'] as const) {
      for (const magnet of ['ferrite', 'neodymium'] as const) {
        yield { bridge, steering, magnet, chemistry: 'lipo', cells: 2, toyChemistry: 'nimh', toyCells: 6 };
      }
    }
  }
}

describe('the assumptions of the facts', () => {
  it('can be read within the limits of their quantities, whatever the vehicle', () => {
    const wrong: string[] = [];
    for (const traits of everyTraits()) {
      for (const id of Object.keys(QUANTITIES) as QuantityId[]) {
        const facts = factsOf(id);
        const assumption = typeof facts.otherwise === 'function' ? facts.otherwise(traits) : facts.otherwise;
        if (assumption === undefined) continue;
        const reading = parseQuantity(assumption.text, facts.unit, facts);
        if (!reading.ok) wrong.push(`${id} with ${JSON.stringify(traits)}: ${assumption.text} (${reading.fault.hint})`);
        if (assumption.because.length < 5) wrong.push(`${id} gives no reason`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('carry a doubt where one truth is not known', () => {
    // Counts, a limit of silicon and what is nothing until somebody says otherwise are assumed as they are.
    const plain = new Set(['pack.cyclesDone', 'bridge.junctionMax', 'want.payload']);
    for (const [id, { is, otherwise }] of Object.entries(QUANTITIES as Record<string, ReturnType<typeof factsOf>>)) {
      if (is !== 'doubt' || typeof otherwise !== 'object' || plain.has(id)) continue;
      expect(otherwise.text, id).toMatch(/[±…]/);
    }
  });
});

describe('the facts', () => {
  it('have a title, a unit, a way to measure and limits on both sides', () => {
    for (const id of Object.keys(QUANTITIES) as QuantityId[]) {
      const { title, unit, how, above, from, below, to } = factsOf(id);
      expect(title.length, id).toBeGreaterThan(3);
      expect(how.length, id).toBeGreaterThan(3);
      const [low, high] = [above ?? from, below ?? to];
      expect(low, id).toBeLessThan(high as number);
      expect(parseQuantity(`1 ${unit === '1' ? '' : unit}`, unit).ok, id).toBe(true);
    }
  });

  it('are found for every input id and for nothing else', () => {
    for (const id of INPUT_IDS) expect(Object.hasOwn(QUANTITIES, quantityOf(id) ?? ''), id).toBe(true);
    expect(new Set(INPUT_IDS).size).toBe(INPUT_IDS.length);
    for (const id of [
      'axle.track',
      'axle.5.track',
      'wire.area',
      'run.mast.area',
      '__proto__',
      'constructor',
      '',
      'toy',
    ]) {
      expect(quantityOf(id), id).toBeUndefined();
    }
    expect(quantityOf('axle.4.track')).toBe('axle.track');
    expect(quantityOf('run.pack.contactMass')).toBe('connector.mass');
    expect(quantityOf('run.board.area')).toBe('wire.area');
  });
});

describe('a vehicle', () => {
  it('has every quantity within its limits, so that all cases can be drawn', () => {
    const of = vehicle();
    for (const { id, quantity, facts } of of.inputs.values()) expect(within(quantity.value, facts), id).toBe(true);
    const inputs = [...of.inputs.values()].map(({ id, quantity, facts }) => ({
      id,
      quantity,
      kind: 'doubt' as const,
      limits: facts,
    }));
    const cases = drawCases(inputs, { cases: 20, seed: 1, correlations: of.correlations });
    for (const { id, values } of cases.columns.values()) expect(values.every(Number.isFinite), id).toBe(true);
  });

  it('is assumed nothing that it does not have', () => {
    const of = vehicle();
    const assumed = [...of.inputs.values()].filter((input) => input.origin === 'assumed').map((input) => input.id);
    expect(assumed.filter((id) => /servo|enclosure|tripDelay/.test(id))).toEqual([]);
    expect(assumed).toContain('steer.resistance');
    expect(assumed).toContain('set.holdDuty');
    const skid = vehicle(
      ['"driven": false, "steered": true', '"driven": true'],
      ['"kind": "on-off", "clutch": true, "angle": "20 ° ± 2 °"', '"kind": "skid"'],
      ['"motorPer": "axle"', '"motorPer": "side"'],
    );
    expect([...skid.inputs.keys()].filter((id) => /^(?:steer|servo|set\.hold)/.test(id))).toEqual([]);
  });

  it('misses only what would mean something for it', () => {
    const { missing, layout, inputs } = vehicle();
    for (const id of missing) expect(applies(id, layout) && !inputs.has(id), id).toBe(true);
    expect(
      [...missing].filter((id) => /servo|enclosure|axle\.[34]|drop|^(?:axle|wire|connector)\.[a-z]/.test(id)),
    ).toEqual([]);
    expect(missing.has('toy.runTime')).toBe(true);
    expect(missing.has('axle.2.springTravel')).toBe(true);
    expect(missing.has('axle.1.springTravel')).toBe(false);
  });
});

describe('what is assumed agrees with what is stated', () => {
  const DAY = '"day": { "coldest": "2 °C", "hottest": "30 °C", "usual": "8 … 22 °C" }';
  const day = (stated: string) => {
    const of = vehicle([DAY, `"day": ${stated}`]);
    return (['day.coldest', 'day.usual', 'day.hottest'] as const).map((id) => inputOf(of, id).quantity.text);
  };

  it.each([
    ['{}', ['5 °C', '12 … 24 °C', '32 °C']],
    ['{ "usual": "30 … 38 °C" }', ['5 °C', '30 … 38 °C', '38 °C']],
    ['{ "usual": "-12 … 3 °C" }', ['-12 °C', '-12 … 3 °C', '32 °C']],
    ['{ "hottest": "0 °C" }', ['0 °C', '0 °C', '0 °C']],
    ['{ "coldest": "40 °C" }', ['40 °C', '40 °C', '40 °C']],
    ['{ "coldest": "15 °C", "hottest": "20 °C" }', ['15 °C', '15 °C … 20 °C', '20 °C']],
    ['{ "coldest": "-20 °C", "hottest": "-5 °C" }', ['-20 °C', '-20 °C … -5 °C', '-5 °C']],
  ])('of the day, where %s is stated', (stated, expected) => {
    expect(day(stated)).toEqual(expected);
  });

  it('of the day, whatever is stated: the usual lies between the coldest and the hottest', () => {
    const kelvin = fc.double({ min: 251, max: 329, noNaN: true });
    const stated = fc.record({ coldest: kelvin, hottest: kelvin, usual: kelvin }, { requiredKeys: [] });
    const sound = stated.filter(
      ({ coldest, hottest, usual }) =>
        (coldest ?? 0) <= (usual ?? coldest ?? 0) &&
        (usual ?? 0) <= (hottest ?? 999) &&
        (coldest ?? 0) <= (hottest ?? 999),
    );
    fc.assert(
      fc.property(sound, (temperatures) => {
        const texts = Object.entries(temperatures).map(([key, t]) => `"${key}": "${t} K"`);
        const of = vehicle([DAY, `"day": { ${texts.join(', ')} }`]);
        const [cold, usual, hot] = (['day.coldest', 'day.usual', 'day.hottest'] as const).map(
          (id) => inputOf(of, id).quantity,
        );
        const [low, high] = [(usual?.value ?? 0) - (usual?.doubt ?? 0), (usual?.value ?? 0) + (usual?.doubt ?? 0)];
        expect(low).toBeGreaterThanOrEqual((cold?.value ?? 0) - 1e-9);
        expect(high).toBeLessThanOrEqual((hot?.value ?? 0) + 1e-9);
      }),
      { numRuns: 60, seed: 3 },
    );
  });

  it.each([
    ['"rolling": "20 … 30 %"', 'ground.rollingWorst', '30 %'],
    ['"rolling": "0.02"', 'ground.rollingWorst', '0.100'],
    ['"rollingWorst": "0.03"', 'ground.rolling', '0.019 … 0.03'],
    ['"adhesion": "0.3"', 'ground.adhesionWorst', '0.3'],
    ['"adhesionWorst": "0.9"', 'ground.adhesion', '0.9'],
  ] as const)('of the ground, where %s is measured', (stated, id, text) => {
    const input = inputOf(vehicle(['"surfaces"', `"ground": { ${stated} }, "surfaces"`]), id);
    expect(input).toMatchObject({ origin: 'assumed', quantity: { text } });
  });

  it('of a toy of 200 g no more is taken out than a fifth', () => {
    const of = vehicle(
      ['"1.62 kg ± 5 g"', '"200 g"'],
      ['"removed": "210 g ± 10 g",', ''],
      ['"load": "0.74 kg ± 5 g"', '"load": "90 g"'],
      ['"load": "0.88 kg ± 5 g"', '"load": "110 g"'],
    );
    expect(inputOf(of, 'toy.removed').quantity.value).toBeCloseTo(0.04, 9);
    expect(inputOf(vehicle(['"removed": "210 g ± 10 g",', '']), 'toy.removed').quantity.value).toBeCloseTo(0.1, 9);
  });
});
