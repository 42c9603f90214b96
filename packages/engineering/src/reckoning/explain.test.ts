/**
 * Goal: an explanation can be checked with a pocket calculator, ends at what was measured or published, and can be
 * printed or sent whole.
 * Method: the numbers of every formula that is plain arithmetic are worked out by a calculator written for this test
 * and compared with the value, within what rounding the printed numbers can make; every tree is walked to its leaves.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inUnit } from '../quantity/units.ts';
import { type Explanation, explainFinding, explainSum } from './explain.ts';
import { byHand, NotArithmetic } from './hand-evaluation.fixture.ts';
import { plantedVehicle, vehicleOf } from './planted.fixture.ts';
import { type Reckoning, reckon } from './reckon.ts';
import { SUMS } from './sums/all.ts';
import type { SumId } from './sums/ids.ts';

const NAMES = ['sedge', 'teasel', 'burdock'] as const;
const example = (name: string): Reckoning =>
  reckon(vehicleOf(readFileSync(new URL(`../../../../examples/reedmere/${name}.json`, import.meta.url), 'utf8')), {
    cases: 20,
  });
const EXAMPLES = Object.fromEntries(NAMES.map((name) => [name, example(name)])) as Record<
  (typeof NAMES)[number],
  Reckoning
>;
const { sedge } = EXAMPLES;

type SumNode = Extract<Explanation, { kind: 'sum' }>;

function sumNode(reckoning: Reckoning, id: SumId): SumNode {
  const node = explainSum(reckoning, id);
  if (node.kind !== 'sum') throw new Error(`${id} is ${node.kind}`);
  return node;
}

/** All nodes of all sums, from the top down: what was met below another is not explained again. */
function allNodes(reckoning: Reckoning): Explanation[] {
  const met = new Set<string>();
  return [...reckoning.study.graph.order].reverse().flatMap((id) => {
    const nodes = met.has(id) ? [] : nodesOf(sumNode(reckoning, id));
    return nodes.filter((node) => !met.has(node.id) && met.add(node.id));
  });
}

const allSums = (reckoning: Reckoning) => allNodes(reckoning).filter((node) => node.kind === 'sum');

function nodesOf(node: Explanation): Explanation[] {
  return [node, ...(node.kind === 'sum' ? node.uses.flatMap(nodesOf) : [])];
}

const stated = (reckoning: Reckoning, id: SumId) =>
  reckoning.study.sums.get(id)?.values[reckoning.study.count] as number;

describe('the calculator of this test', () => {
  it('reads units, powers, functions and words as a person does', () => {
    expect(byHand('2 · 3.00 V / (1.50 Ω + 500 mΩ)').value).toBeCloseTo(3, 12);
    expect(byHand('½ · 2.00 kg · (3.00 m/s)²').value).toBeCloseTo(9, 12);
    expect(byHand('max(0, 1.00 m − 200 cm)').value).toBe(0);
    expect(byHand('1.00 m − 3.00 m, not below 0').value).toBe(0);
    expect(byHand('atan(1.00) + √0.250 − |(−2.00)|').value).toBeCloseTo(Math.PI / 4 + 0.5 - 2, 12);
    expect(byHand('20.0 °C + 5.00 K/W · 2.00 W').value - byHand('0 °C').value).toBeCloseTo(30, 12);
    expect(() => byHand('the lesser of 1 and 2')).toThrow(NotArithmetic);
  });

  it('knows how far rounding can have moved a result', () => {
    // 2.00 m may be 1.995 to 2.005 m, 4.00 s 3.995 to 4.005 s.
    expect(byHand('2.00 m / 4.00 s').allowed).toBeCloseTo(0.005 / 4 + 2 / 3.995 - 2 / 4, 9);
    expect(byHand('96.0 mm / 2').allowed).toBeCloseTo(0.05e-3 / 2, 12);
  });
});

describe('the numbers of a formula', () => {
  /** Sums of different shapes: products, quotients, differences, roots, squares, arcs, clipped ones. */
  const SHAPES: readonly SumId[] = [
    'mass.total',
    'mass.momentBehind',
    'balance.centreHeight',
    'balance.load.1',
    'balance.drivenNeeded',
    'drive.constant',
    'drive.forceClimb',
    'drive.toothForce',
    'duty.ceiling',
    'bridge.junctionClimb',
    'pack.runTime',
    'heat.motorCapacity',
    'tip.side',
    'tip.cornerSpeed',
    'picture.speedObstacle',
    'picture.blind',
    'picture.age',
    'link.commandsReceived',
    'safe.energy',
    'safe.stopping',
  ];

  it.each(NAMES)('give the value when worked out by hand, within their rounding: every plain formula of %s', (name) => {
    const reckoning = EXAMPLES[name];
    let checked = 0;
    for (const { id, numbers } of allSums(reckoning)) {
      let worked: ReturnType<typeof byHand>;
      try {
        worked = byHand(numbers);
      } catch (error) {
        if (error instanceof NotArithmetic) continue;
        throw error;
      }
      const value = stated(reckoning, id);
      const off = Math.abs(worked.value - value);
      expect(off, `${id}: ${numbers} = ${worked.value}, but ${value}`).toBeLessThanOrEqual(
        worked.allowed * 1.01 + 1e-9 * Math.abs(value),
      );
      // A formula that rounding could move by a tenth of its value would prove little.
      if (worked.allowed < 0.1 * Math.abs(value)) checked++;
    }
    expect(checked).toBeGreaterThan(100);
  });

  it.each(SHAPES)('are plain arithmetic in the sum %s', (id) => {
    expect(() => byHand(sumNode(sedge, id).numbers)).not.toThrow();
  });

  it('leave no name unfilled, and keep squares and negative values in brackets', () => {
    for (const { id, numbers, formula } of allSums(sedge)) {
      expect(numbers, id).not.toMatch(/[{}]|unknown|NaN/);
      expect(formula, id).not.toMatch(/[{}]/);
      expect(numbers, id).not.toMatch(/[+−·/] −|[a-zA-Z%Ω][²³]? ?[²³]{2}/);
    }
    expect(sumNode(sedge, 'safe.energy').numbers).toMatch(/^½ · [\d.]+ kg · \([\d.]+ m\/s\)²$/);
    expect(sumNode(sedge, 'link.snr').numbers).toMatch(/^\(−[\d.]+ dBm\) − \(−[\d.]+ dBm\)$/);
  });
});

describe('the tree of an explanation', () => {
  it.each(NAMES)('ends in inputs that say where they come from, or in figures with a source: %s', (name) => {
    const reckoning = EXAMPLES[name];
    for (const node of allNodes(reckoning)) {
      if (node.kind === 'input') {
        expect(node.written, node.id).not.toBe('');
        expect(node.how.length, node.id).toBeGreaterThan(3);
        if (node.origin === 'assumed') expect(node.remark, node.id).toMatch(/.{8,}/);
        else expect(node.where, node.id).toMatch(/^(?:\/|shelf: )/);
      } else if (node.kind === 'sum') {
        for (const { is, source } of node.constants)
          expect(Math.min(is.length, source.length), node.id).toBeGreaterThan(3);
        for (const { source, leavesOut, equation } of node.laws) {
          expect(Math.min(source.length, leavesOut.length, equation.length), node.id).toBeGreaterThan(2);
        }
        // What rests on nothing is a published figure, or no more than yes or no.
        if (node.uses.length === 0 && node.constants.length === 0) expect(['0', '1']).toContain(node.formula);
      } else expect(node.kind, node.id).toBe('shown above');
    }
  });

  it('gives each thing it rests on the name it has in the formula, and leaves none out', () => {
    for (const { id, uses } of allSums(sedge)) {
      const { route } = sedge.study.sums.get(id) ?? { route: undefined };
      const named = Object.fromEntries(uses.flatMap((node) => (node.as ?? []).map((name) => [name, node.id])));
      expect(named, id).toEqual(route?.uses);
    }
  });

  it('shows the value with everything as stated, and the band of the cases', () => {
    const nodes = allSums(sedge);
    expect(nodes.map(({ id }) => id).sort()).toEqual([...sedge.study.sums.keys()].sort());
    for (const node of nodes) {
      const { id } = node;
      const result = sedge.study.sums.get(id);
      expect(node.band).toEqual(result?.band);
      const shown = Number(node.value.replace('−', '-').split(/[ °]/)[0]);
      const value = inUnit(stated(sedge, id), SUMS[id].unit);
      expect(Math.abs(shown - value), id).toBeLessThanOrEqual(0.006 * Math.abs(value));
    }
  });
});

describe('the explanation of a finding', () => {
  it.each(NAMES)('can be given for every finding, and sent as JSON without loss: %s', (name) => {
    const reckoning = EXAMPLES[name];
    expect(reckoning.findings.length).toBeGreaterThan(45);
    for (const result of reckoning.findings) {
      const { has, need, finding } = explainFinding(reckoning, result);
      expect(finding).toBe(result);
      expect([has.id, need.id]).toEqual([result.finding.has, result.finding.need]);
      // NaN would come back as null.
      if (result.state !== 'unsettled') expect(JSON.parse(JSON.stringify([has, need]))).toEqual([has, need]);
    }
  });

  it('explains what is met twice once', () => {
    const [result] = sedge.findings;
    if (result === undefined) throw new Error('sedge has no findings');
    const { has, need } = explainFinding(sedge, result);
    const sums = [...nodesOf(has), ...nodesOf(need)].filter((node) => node.kind === 'sum').map(({ id }) => id);
    expect(new Set(sums).size).toBe(sums.length);
  });
});

describe('what cannot be explained', () => {
  it('says what would have to be stated, or that it means nothing for this vehicle', () => {
    const bare = reckon(plantedVehicle({ 'toy.mass': '1 kg' }), { cases: 20 });
    expect(explainSum(bare, 'pack.realCapacity')).toMatchObject({
      kind: 'missing',
      how: expect.stringMatching(/^Would need .*\(pack\.capacity\)/),
    });
    expect(explainSum(sedge, 'drive.skidForce')).toMatchObject({
      kind: 'missing',
      how: 'Does not apply to this vehicle.',
    });
  });
});
