/**
 * Goal: the tables of wire are consistent with the laws of wire.
 * Method: every gauge and every metric size; the fusing laws against each other.
 */
import { describe, expect, it } from 'vitest';
import { COPPER_REFERENCE } from '../constants.ts';
import { FLEXIBLE_SIZES, FLEXIBLE_WIRE } from './flexible.ts';
import { chooseFusingCurrent, onderdonkFusingCurrent, onderdonkFusingTime, preeceFusingCurrent } from './fusing.ts';
import { traceCurrent, traceWidth } from './trace.ts';
import { COPPER_RESISTIVITY, gaugeForArea, wireGaugeArea } from './wire.ts';

const gauges = Array.from({ length: 43 }, (_, i) => i - 2);

describe('wire gauges', () => {
  it.each(gauges)('%s is found again from its own area, and from a trifle more the next thicker', (gauge) => {
    expect(gaugeForArea({ area: wireGaugeArea({ gauge }) })).toBe(gauge);
    expect(gaugeForArea({ area: wireGaugeArea({ gauge }) * 1.001 })).toBe(gauge - 1);
  });

  it('double their area in three steps, within half a per cent', () => {
    expect(wireGaugeArea({ gauge: 20 }) / wireGaugeArea({ gauge: 23 })).toBeCloseTo(2, 1);
  });
});

describe('flexible wire', () => {
  it.each(FLEXIBLE_SIZES)('%s mm² resists 5 to 25 % more than solid copper of its nominal area', (size) => {
    const row = FLEXIBLE_WIRE[size];
    const ratio = (row.plain * row.area) / COPPER_RESISTIVITY;
    expect(ratio).toBeGreaterThan(1.04);
    expect(ratio).toBeLessThan(1.25);
    expect(row.area).toBeCloseTo(Number(size) * 1e-6, 12);
    expect(row.tinned).toBeGreaterThan(row.plain);
    expect(row.tinned / row.plain).toBeLessThan(1.06);
  });
});

describe('fusing', () => {
  const wire = { area: 0.5e-6, ambient: COPPER_REFERENCE };

  it('time and current undo each other', () => {
    const current = onderdonkFusingCurrent({ ...wire, time: 0.7 });
    expect(onderdonkFusingTime({ ...wire, current })).toBeCloseTo(0.7, 9);
  });

  it('is taken from the adiabatic law for a blink and from the steady law for a minute', () => {
    expect(chooseFusingCurrent({ ...wire, time: 0.1 })).toMatchObject({
      law: 'onderdonk-fusing-current',
      current: onderdonkFusingCurrent({ ...wire, time: 0.1 }),
    });
    const steady = preeceFusingCurrent({ diameter: Math.sqrt((4 * wire.area) / Math.PI) });
    expect(chooseFusingCurrent({ ...wire, time: 60 })).toMatchObject({ law: 'preece-fusing-current', current: steady });
  });

  it('never falls below what the wire carries for ever', () => {
    const thin = { area: 0.005e-6, ambient: COPPER_REFERENCE };
    const steady = preeceFusingCurrent({ diameter: Math.sqrt((4 * thin.area) / Math.PI) });
    for (const time of [0.01, 0.1, 1, 5, 10]) {
      expect(chooseFusingCurrent({ ...thin, time }).current).toBeGreaterThanOrEqual(steady);
    }
    expect(chooseFusingCurrent({ ...thin, time: 10 }).law).toBe('preece-fusing-current');
  });
});

describe('printed-board traces', () => {
  it('inside need the width of twice the current outside', () => {
    for (const current of [0.5, 1, 3, 10]) {
      const shared = { thickness: 35e-6, rise: 15 };
      expect(traceWidth({ current, ...shared, layer: 'inner' })).toBeCloseTo(
        traceWidth({ current: 2 * current, ...shared, layer: 'outer' }),
        12,
      );
    }
  });

  it('carry the current their width was made for', () => {
    const facts = { thickness: 70e-6, rise: 20, layer: 'outer' } as const;
    expect(traceCurrent({ width: traceWidth({ current: 4, ...facts }), ...facts })).toBeCloseTo(4, 9);
  });
});
