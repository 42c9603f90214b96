/**
 * Goal: a reckoning as plain data keeps the shape that was promised, and every number in it can be used.
 * Method: the promised keys are written out here; numbers are compared with the columns in the unit named.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fromUnit, unitOf } from '../quantity/units.ts';
import { vehicleOf } from './planted.fixture.ts';
import { type Reckoning, reckon } from './reckon.ts';
import { type Report, report, type ShownBand } from './report.ts';

const read = (path: string) => readFileSync(new URL(`../../../../${path}.json`, import.meta.url), 'utf8');
const reckoned = (path: string): Reckoning => reckon(vehicleOf(read(path)), { cases: 100, seed: 4 });
const sedge = reckoned('examples/reedmere/sedge');

const FINDING_KEYS = [
  'id',
  'title',
  'subject',
  'state',
  'holds',
  'sense',
  'need',
  'has',
  'margin',
  'unit',
  'marginUnit',
  'bands',
  'variation',
  'remedy',
  'informs',
  'decidedBy',
];

function bandsOf({ sums, findings }: Report): [string, ShownBand][] {
  const ofFindings = findings.flatMap(({ id, bands }) =>
    Object.entries(bands).map(([side, band]) => [`${id} ${side}`, band] as [string, ShownBand]),
  );
  return [...sums.map((sum) => [sum.id, sum] as [string, ShownBand]), ...ofFindings];
}

describe.each([
  ['examples/reedmere/sedge', sedge],
  ['examples/reedmere/burdock', reckoned('examples/reedmere/burdock')],
  ['tests/fixtures/vehicles/bare-minimum', reckoned('tests/fixtures/vehicles/bare-minimum')],
] as const)('the report of %s', (_path, reckoning) => {
  const told = report(reckoning);

  it('has the keys that were promised, and two more only where there is something to say', () => {
    expect(Object.keys(told)).toEqual(['name', 'invented', 'cases', 'seed', 'assumptions', 'sums', 'findings']);
    expect(told).toMatchObject({ name: reckoning.vehicle.name, cases: 100, seed: 4 });
    for (const finding of told.findings) {
      const more = Object.keys(finding).filter((key) => !FINDING_KEYS.includes(key));
      expect(more.filter((key) => key !== 'caution' && key !== 'because')).toEqual([]);
      expect(FINDING_KEYS.filter((key) => !(key in finding))).toEqual([]);
      expect('because' in finding, finding.id).toBe(finding.state === 'unsettled');
    }
    for (const sum of told.sums)
      expect(Object.keys(sum)).toEqual(['id', 'title', 'unit', 'p5', 'p50', 'p95', 'stated']);
    for (const assumption of told.assumptions)
      expect(Object.keys(assumption)).toEqual(['id', 'title', 'value', 'because']);
  });

  it('lists each sum and each finding once', () => {
    for (const list of [told.sums, told.findings, told.assumptions]) {
      const ids = list.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
    expect(told.sums.length).toBe(reckoning.study.sums.size);
    expect(told.findings.map(({ id }) => id)).toEqual(reckoning.findings.map(({ id }) => id));
  });

  it('survives being sent as JSON: numbers or null, never anything JSON drops', () => {
    expect(JSON.parse(JSON.stringify(told))).toEqual(told);
  });

  it('has bands in order, numbers together or not at all', () => {
    for (const [where, { p5, p50, p95 }] of bandsOf(told)) {
      if (p5 === null || p50 === null || p95 === null) expect([p5, p50, p95], where).toEqual([null, null, null]);
      else {
        expect(p5, where).toBeLessThanOrEqual(p50);
        expect(p50, where).toBeLessThanOrEqual(p95);
      }
    }
    for (const { id, state, holds, need, has, margin } of told.findings) {
      const numbers = [holds, need, has, margin];
      expect(
        numbers.every((x) => (state === 'unsettled' ? x === null : Number.isFinite(x))),
        id,
      ).toBe(true);
    }
  });

  it('names units there are, and what decides in shares of one', () => {
    for (const { unit } of told.sums) expect(() => unitOf(unit)).not.toThrow();
    for (const { unit, marginUnit, decidedBy, id } of told.findings) {
      expect(() => [unitOf(unit), unitOf(marginUnit)], id).not.toThrow();
      for (const { share, title } of decidedBy) {
        expect(share, id).toBeGreaterThan(0);
        expect(share, id).toBeLessThanOrEqual(1);
        expect(title).not.toBe('');
      }
    }
    expect(told.findings.some(({ decidedBy }) => decidedBy.length > 0)).toBe(true);
  });
});

describe('numbers in the unit they are shown in', () => {
  const told = report(sedge);

  it('are those of the columns', () => {
    for (const { id, unit, stated } of told.sums) {
      const si = sedge.study.sums.get(id as never)?.values[sedge.study.count];
      expect(fromUnit(stated ?? Number.NaN, unit), id).toBeCloseTo(si ?? Number.NaN, 9);
    }
  });

  it('give margins of temperatures in kelvin and of levels in decibels', () => {
    const units = new Map(told.findings.map(({ unit, marginUnit }) => [unit, marginUnit]));
    expect(units.get('°C')).toBe('K');
    expect(units.get('dBm')).toBe('dB');
    expect(units.get('V')).toBe('V');
    for (const { unit, sense, bands, id } of told.findings) {
      // Where neither side varies the margin is the plain difference.
      const { need, has, margin } = bands;
      if (need.p5 !== need.p95 || has.p5 !== has.p95 || need.p50 === null || has.p50 === null) continue;
      const apart = (has.p50 - need.p50) * (sense === 'at least' ? 1 : -1);
      expect(margin.p50, `${id} in ${unit}`).toBeCloseTo(apart, 9);
    }
  });
});
