/**
 * Goal: the laws of loss behave as physics asks, also where no published row stands.
 * Method: properties over random paths, and the exact sums they approximate by brute force.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { chooseOpenGroundLoss, foliageBand } from './choose.ts';
import { dbmFromWatts, wattsFromDbm, wavelength } from './decibel.ts';
import { edgeParameter, fresnelRadius, knifeEdgeLoss, woodlandLoss } from './obstacles.ts';
import { crossoverDistance, freeSpaceLoss, twoRayFarLoss, twoRayLoss } from './path.ts';
import { STREET_ROWS, STREETS, streetLoss } from './street.ts';

const frequency = fc.double({ min: 4e8, max: 6e9, noNaN: true });
const height = fc.double({ min: 0.1, max: 5, noNaN: true });
const distance = fc.double({ min: 10, max: 2000, noNaN: true });

/** Loss over an edge from the Fresnel integrals, summed in small steps. */
function exactEdgeLoss(parameter: number): number {
  const steps = 20000;
  let c = 0;
  let s = 0;
  for (let i = 0; i < steps; i++) {
    const t = (parameter * (i + 0.5)) / steps;
    c += (Math.cos((Math.PI / 2) * t * t) * parameter) / steps;
    s += (Math.sin((Math.PI / 2) * t * t) * parameter) / steps;
  }
  return -20 * Math.log10(0.5 * Math.hypot(1 - c - s, c - s));
}

describe('levels', () => {
  it('come back unchanged from watts to dBm and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-15, max: 1e3, noNaN: true }), (power) => {
        expect(wattsFromDbm({ level: dbmFromWatts({ power }) }) / power).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('open ground', () => {
  it('costs 6.02 dB for each doubling in free space and 12.04 dB far over flat ground', () => {
    fc.assert(
      fc.property(frequency, distance, height, height, (frequency, distance, baseHeight, roverHeight) => {
        const near = (d: number) => freeSpaceLoss({ frequency, distance: d });
        const far = (d: number) => twoRayFarLoss({ distance: d, baseHeight, roverHeight });
        expect(near(2 * distance) - near(distance)).toBeCloseTo(20 * Math.log10(2), 9);
        expect(far(2 * distance) - far(distance)).toBeCloseTo(40 * Math.log10(2), 9);
      }),
    );
  });

  it('never gains more than the 6 dB of two rays in step', () => {
    fc.assert(
      fc.property(frequency, distance, height, height, (frequency, distance, baseHeight, roverHeight) => {
        const exact = twoRayLoss({ frequency, distance, baseHeight, roverHeight, permittivity: 15 });
        const direct = freeSpaceLoss({ frequency, distance: Math.hypot(distance, baseHeight - roverHeight) });
        expect(exact).toBeGreaterThan(direct - 20 * Math.log10(2) - 1e-9);
      }),
    );
  });

  it('tends to the far form, less what vertical waves keep at grazing incidence', () => {
    // At grazing incidence Γ is −1 + 2ε·(h1+h2)/(d·√(ε−1)); its real rest stands at right angles to the far form.
    const at = { frequency: 2.437e9, baseHeight: 1.5, roverHeight: 0.3 };
    const lambda = wavelength({ frequency: at.frequency });
    for (const permittivity of [4, 15, 30]) {
      const rest = (permittivity * 1.8 * lambda) / (2 * Math.PI * Math.sqrt(permittivity - 1) * 1.5 * 0.3);
      const limit = twoRayFarLoss({ ...at, distance: 1e5 }) - 10 * Math.log10(1 + rest * rest);
      expect(twoRayLoss({ ...at, distance: 1e5, permittivity })).toBeCloseTo(limit, 2);
    }
  });

  it('is the same at both ends', () => {
    fc.assert(
      fc.property(frequency, distance, height, height, (frequency, distance, a, b) => {
        const there = twoRayLoss({ frequency, distance, baseHeight: a, roverHeight: b, permittivity: 15 });
        const back = twoRayLoss({ frequency, distance, baseHeight: b, roverHeight: a, permittivity: 15 });
        expect(there).toBeCloseTo(back, 9);
      }),
    );
  });

  it('chooses the greater of both laws, without a step at the crossover', () => {
    fc.assert(
      fc.property(frequency, distance, height, height, (frequency, distance, baseHeight, roverHeight) => {
        const at = { frequency, distance, baseHeight, roverHeight };
        const chosen = chooseOpenGroundLoss(at);
        expect(chosen.loss).toBeCloseTo(Math.max(freeSpaceLoss(at), twoRayFarLoss(at)), 6);
        const crossover = crossoverDistance(at);
        expect(freeSpaceLoss({ frequency, distance: crossover })).toBeCloseTo(
          twoRayFarLoss({ distance: crossover, baseHeight, roverHeight }),
          6,
        );
      }),
    );
    const near = chooseOpenGroundLoss({ frequency: 2.437e9, distance: 10, baseHeight: 1.5, roverHeight: 0.3 });
    expect(near.law).toBe('free-space-loss');
    expect(near.why).toContain('within');
  });

  it('refuses a distance of nothing and names the law', () => {
    expect(() => freeSpaceLoss({ frequency: 2.4e9, distance: 0 })).toThrow(OutOfRange);
    expect(() => freeSpaceLoss({ frequency: 2.4e9, distance: 0 })).toThrow(/free-space-loss: d is 0/);
  });
});

describe('edges', () => {
  it('lie within 0.15 dB of the Fresnel integrals from −0.7 to 10', () => {
    for (let parameter = -0.7; parameter <= 10; parameter += 0.1) {
      expect(Math.abs(knifeEdgeLoss({ parameter }) - exactEdgeLoss(parameter))).toBeLessThan(0.15);
    }
  });

  it('cost more the higher they stand', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 20, noNaN: true }), (parameter) => {
        expect(knifeEdgeLoss({ parameter: parameter + 0.1 })).toBeGreaterThanOrEqual(knifeEdgeLoss({ parameter }));
      }),
    );
  });

  it('standing one Fresnel radius above the ray have the parameter √2', () => {
    fc.assert(
      fc.property(frequency, distance, distance, (frequency, toBase, toRover) => {
        const height = fresnelRadius({ frequency, toBase, toRover });
        expect(edgeParameter({ frequency, height, toBase, toRover })).toBeCloseTo(Math.SQRT2, 9);
      }),
    );
  });
});

describe('foliage and streets', () => {
  it('adds the loss of a wood metre by metre until it levels off', () => {
    for (const depth of [5, 20, 100, 400]) {
      let loss = 0;
      const step = depth / 100000;
      for (let i = 0; i < 100000; i++) loss += 0.3 * (1 - loss / 32.6) * step;
      expect(woodlandLoss({ depth, specific: 0.3, most: 32.6 })).toBeCloseTo(loss, 3);
    }
  });

  it('gives a band whose ends are in order and apart below 10 m', () => {
    for (const depth of [2, 5, 10, 50]) {
      const { lowest, highest } = foliageBand(2.4e9, depth);
      expect(lowest.loss).toBeLessThan(highest.loss);
    }
    const { lowest, highest } = foliageBand(2.4e9, 5);
    expect(highest.loss / lowest.loss).toBeGreaterThan(2);
  });

  it('names a source for every street', () => {
    for (const place of STREETS) expect(STREET_ROWS[place].source).toContain('P.1411');
    expect(() => streetLoss({ place: 'in sight', frequency: 2.4e9, distance: 2000 })).toThrow(OutOfRange);
  });
});
