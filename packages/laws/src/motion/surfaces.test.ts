/**
 * Goal: the tables of grounds and soils are complete, plausible and refuse what nobody can vouch for.
 * Method: every row is read; refusals are provoked.
 */
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { rollOffAngle } from './grade.ts';
import { soilModulus } from './soil.ts';
import { SOILS, soilNamed } from './soils.table.ts';
import { SURFACE_NAMES, surfaceNamed } from './surfaces.table.ts';

describe('the table of grounds', () => {
  it.each(SURFACE_NAMES)('%s has bands that open upwards and name their source', (name) => {
    for (const band of Object.values(surfaceNamed(name))) {
      expect(band.low).toBeGreaterThan(0);
      expect(band.high).toBeGreaterThan(band.low);
      expect(band.high).toBeLessThan(1);
      expect(band.source.length).toBeGreaterThan(10);
    }
  });

  it.each(SURFACE_NAMES)('%s lies within what the laws accept', (name) => {
    expect(() => rollOffAngle({ rolling: surfaceNamed(name).rolling.high })).not.toThrow();
  });

  it('grips less wet than dry', () => {
    for (const [wet, dry] of [
      ['boardwalk timber, wet', 'boardwalk timber, dry'],
      ['tarmac, wet', 'tarmac, dry'],
      ['grass, short and wet', 'grass, short'],
      ['earth, wet', 'earth, dry'],
    ] as const) {
      expect(surfaceNamed(wet).adhesion.high).toBeLessThan(surfaceNamed(dry).adhesion.high);
    }
  });

  it.each(['snow', 'ice', 'lava', 'toString'])('refuses %s', (name) => {
    expect(() => surfaceNamed(name)).toThrow(OutOfRange);
  });

  it('says that a wheel sinks to its axle in snow', () => {
    expect(() => surfaceNamed('snow')).toThrow(/sinks to its axle/);
    expect(() => soilNamed('snow')).toThrow(/sinks to its axle/);
  });
});

describe('the table of soils', () => {
  it.each(Object.keys(SOILS))('%s stays within the exponents of the wheel formula', (name) => {
    const soil = soilNamed(name);
    expect(soil.exponent).toBeGreaterThan(0);
    expect(soil.exponent).toBeLessThanOrEqual(1.3);
    expect(soilModulus({ cohesive: soil.cohesive, frictional: soil.frictional, width: 0.05 })).toBeGreaterThan(4e4);
  });

  it('refuses a soil it does not hold', () => {
    expect(() => soilNamed('peat')).toThrow(OutOfRange);
  });
});
