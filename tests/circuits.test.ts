/**
 * Goal: the numbers the laws are held against are what a circuit simulator gives for the netlists beside them.
 * Method: runs every netlist afresh and compares; before that, the measuring and the refusals are tried on closed
 * forms and on netlists that are wrong in one respect.
 */
import { basename } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Kept } from '../packages/laws/src/circuits/circuit.ts';
import { CIRCUITS } from '../packages/laws/src/circuits/list.ts';
import { differences } from '../scripts/differences.ts';
import { measure, type Waves } from '../scripts/measure.ts';
import { type Simulator, simulate, startSimulator } from '../scripts/simulate.ts';
import { files } from '../scripts/tree.ts';

/** Points of all circuits together when they were written, in round figures; a run of far fewer did not run. */
const FLOOR = 100_000;

let simulator: Simulator;
beforeAll(async () => {
  simulator = await startSimulator();
}, 60_000);

describe('a measure', () => {
  const time = Array.from({ length: 4001 }, (_, i) => 2e-3 * (i / 4000) ** 1.5);
  const waves: Waves = new Map([
    ['time', time],
    ['sine', time.map((t) => 1 + 3 * Math.sin(2 * Math.PI * 1000 * t))],
    ['ramp', time.map((t) => 5 - 4000 * t)],
  ]);
  const period = { from: 0.5e-3, to: 1.5e-3 };

  it('of a sine on an uneven grid is its offset, its peaks and its effective value', () => {
    expect(measure(waves, { of: 'sine', take: 'mean', ...period })).toBeCloseTo(1, 5);
    expect(measure(waves, { of: 'sine', take: 'rms', ...period })).toBeCloseTo(Math.sqrt(1 + 9 / 2), 5);
    expect(measure(waves, { of: 'sine', take: 'max', ...period })).toBeCloseTo(4, 5);
    expect(measure(waves, { of: 'sine', take: 'min', ...period })).toBeCloseTo(-2, 5);
  });

  it('of a straight line is exact between the points, at a time and at a level', () => {
    expect(measure(waves, { of: 'ramp', take: 'value', at: 0.7771e-3 })).toBeCloseTo(5 - 3.1084, 12);
    expect(measure(waves, { of: 'ramp', take: 'crossing', level: 1.23, from: 0 })).toBeCloseTo(3.77 / 4000, 12);
    expect(measure(waves, { of: 'ramp', minus: 'ramp', take: 'mean', ...period })).toBe(0);
  });

  it('takes the first crossing that is not before the time given', () => {
    const first = measure(waves, { of: 'sine', take: 'crossing', level: 1, from: 1e-4 });
    const next = measure(waves, { of: 'sine', take: 'crossing', level: 1, from: 6e-4 });
    expect([first, next].map((t) => Math.round(t * 1e6))).toEqual([500, 1000]);
  });

  it.each([
    ['a signal that is not there', { of: 'v(x)', take: 'value', at: 1e-3 }],
    ['a time after the end', { of: 'ramp', take: 'value', at: 3e-3 }],
    ['a window that is only partly simulated', { of: 'ramp', take: 'mean', from: 1e-3, to: 3e-3 }],
    ['a level that is never crossed', { of: 'ramp', take: 'crossing', level: 9, from: 0 }],
  ] as const)('refuses %s', (_case, what) => {
    expect(() => measure(waves, what)).toThrow();
  });
});

describe('the simulator', () => {
  const divider = 'Divider\nV1 a 0 1\nR1 a b 1k\nR2 b 0 3k\n.tran 1u 1m 0 10u\n.end\n';

  it('runs a divider to its ratio', async () => {
    const waves = await simulator.run(divider);
    expect(measure(waves, { of: 'v(b)', take: 'value', at: 0.5e-3 })).toBeCloseTo(0.75, 9);
  });

  it.each([
    ['a value it cannot read', divider.replace('3k', 'three')],
    ['a model that is not there', divider.replace('R2 b 0 3k', 'R2 b 0 3k\nD1 b 0 MISSING')],
    ['a netlist without a transient analysis', divider.replace(/^\.tran.*$/m, '.op')],
  ])('refuses %s, and runs the next netlist as if nothing had been', async (_case, netlist) => {
    await expect(simulator.run(netlist)).rejects.toThrow();
    expect((await simulator.run(divider)).get('time')?.length).toBeGreaterThan(100);
  });
});

describe('a difference', () => {
  const kept: Kept = { simulator: 'a 1', points: 10, results: { mean: 2, peak: -3 } };

  it('is none for another number of points or a change in the ninth digit', () => {
    expect(differences(kept, { ...kept, points: 12, results: { mean: 2.00000001, peak: -3 } })).toEqual([]);
  });

  it.each([
    ['a result moved by a hundred-thousandth', { ...kept, results: { mean: 2.00002, peak: -3 } }],
    ['a result of the other sign', { ...kept, results: { mean: 2, peak: 3 } }],
    ['a result that is missing', { ...kept, results: { mean: 2 } }],
    ['a result that is new', { ...kept, results: { mean: 2, peak: -3, rms: 1 } }],
    ['another version of the simulator', { ...kept, simulator: 'a 2' }],
  ])('is %s', (_case, fresh) => {
    expect(differences(kept, fresh)).toHaveLength(1);
  });
});

describe('the circuits', () => {
  it('are all listed, each under the name of its file', () => {
    const written = files(/\/circuits\/[^/]+\.circuit\.ts$/).map(({ path }) => basename(path, '.circuit.ts'));
    expect(written.length).toBeGreaterThan(0);
    expect(CIRCUITS.map(({ id }) => id).sort()).toEqual(written.sort());
  });

  let points = 0;

  it.each(CIRCUITS.map((circuit) => [circuit.id, circuit] as const))(
    '%s gives the kept numbers again',
    async (_id, c) => {
      const fresh = await simulate(simulator, c);
      points += fresh.points;
      expect(Object.keys(fresh.results).length).toBeGreaterThan(0);
      expect(differences(c.kept, fresh)).toEqual([]);
    },
  );

  it(`have together been solved at more than ${FLOOR} instants`, () => {
    expect(points).toBeGreaterThan(FLOOR);
  });
});
