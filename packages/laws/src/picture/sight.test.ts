/**
 * Goal: the laws of sight agree with what they describe: rays, rows, stops and loops.
 * Method: inverse pairs, brute-force rays and step-by-step motion, limits.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { smoothLoopGain, stableLoopGain } from './age.ts';
import { exposureForBlur, hazeContrast, hazeSight, sidewaysBlur } from './blur.ts';
import { jpegBytes, jpegQuality } from './bytes.ts';
import {
  blindForeground,
  crestSight,
  depthPerRow,
  distanceAtRow,
  dropPixels,
  dropSight,
  farEdge,
  hiddenGround,
  nearEdge,
  rowsBelowHorizon,
} from './ground.ts';
import { focalPixels, obstacleSight, sizeInPixels, viewFromFocalPixels } from './lens.ts';
import { DENSITY_CLASSES } from './seeing.ts';
import { personLimitSpeed, personSightNeeded, sightLimitSpeed, sightNeeded, steeredSight } from './sight-limit.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Way a rover has driven when it rests, and the way a person walked meanwhile, in small steps of time. */
function meet(speed: number, personSpeed: number, delay: number, braking: number): number {
  const dt = 1e-4;
  let now = 0;
  let v = speed;
  let way = 0;
  while (v > 0) {
    way += (v + personSpeed) * dt;
    if (now >= delay) v -= braking * dt;
    now += dt;
  }
  return way;
}

/** Greatest undershoot and last amplitude of x′ = −k·x(t − τ) from 1. */
function delayedLoop(gain: number, delay: number): { least: number; late: number } {
  const dt = delay / 500;
  const past: number[] = new Array(501).fill(1);
  let least = 1;
  let late = 0;
  const steps = 500 * 60;
  for (let i = 0; i < steps; i++) {
    const x = (past.at(-1) ?? 0) - gain * (past[past.length - 501] ?? 0) * dt;
    past.push(x);
    least = Math.min(least, x);
    if (i > steps * 0.9) late = Math.max(late, Math.abs(x));
  }
  return { least, late };
}

describe('the lens', () => {
  it('gives back the view it was computed from', () => {
    fc.assert(
      fc.property(between(100, 4000), between(0.2, 2.5), (pixels, view) => {
        expect(viewFromFocalPixels({ pixels, focalPixels: focalPixels({ pixels, view }) })).toBeCloseTo(view, 9);
      }),
    );
  });

  it('sees an obstacle at its sight distance with just the wanted pixels', () => {
    fc.assert(
      fc.property(between(200, 2000), between(0.01, 2), between(2, 50), (focal, size, pixels) => {
        const distance = obstacleSight({ focalPixels: focal, size, pixels });
        expect(sizeInPixels({ focalPixels: focal, size, distance })).toBeCloseTo(pixels, 9);
      }),
    );
  });

  it('has densities that rise within each edition', () => {
    for (const edition of ['2014', '2025'] as const) {
      const densities = DENSITY_CLASSES.filter((c) => c.edition === edition).map((c) => c.density);
      expect(densities).toEqual([...densities].sort((a, b) => a - b));
    }
  });
});

describe('the ground', () => {
  it('has no far edge when the horizon is in the picture', () => {
    expect(farEdge({ height: 0.15, pitch: 0.1, view: 0.8 })).toBe(Number.POSITIVE_INFINITY);
    expect(farEdge({ height: 0.15, pitch: 0.5, view: 0.8 })).toBeGreaterThan(
      nearEdge({ height: 0.15, pitch: 0.5, view: 0.8 }),
    );
  });

  it('is never blind for less than nothing', () => {
    expect(blindForeground({ nearEdge: -0.05, overhang: 0.1 })).toBe(0);
  });

  it('puts row and distance in agreement, and one row as deep as its neighbours are apart', () => {
    fc.assert(
      fc.property(between(300, 1500), between(0.05, 1), between(0.5, 8), (focal, height, distance) => {
        const rows = rowsBelowHorizon({ focalPixels: focal, height, distance });
        expect(distanceAtRow({ focalPixels: focal, height, rows })).toBeCloseTo(distance, 9);
        fc.pre(rows > 10);
        const above = distanceAtRow({ focalPixels: focal, height, rows: rows - 0.5 });
        const below = distanceAtRow({ focalPixels: focal, height, rows: rows + 0.5 });
        expect(depthPerRow({ focalPixels: focal, height, distance }) / (above - below)).toBeCloseTo(1, 2);
      }),
    );
  });

  it('shows a drop with the rows between its edges, falling fourfold when twice as far', () => {
    fc.assert(
      fc.property(between(0.05, 0.5), between(1, 20), (gap, distance) => {
        const at = { focalPixels: 640, height: 0.15 };
        const pixels = dropPixels({ ...at, gap, distance });
        const rows = rowsBelowHorizon({ ...at, distance }) - rowsBelowHorizon({ ...at, distance: distance + gap });
        expect(pixels).toBeCloseTo(rows, 9);
        expect(dropSight({ ...at, gap, pixels })).toBeCloseTo(distance, 6);
      }),
    );
    const far = { focalPixels: 640, height: 0.15, gap: 0.01 };
    const ratio = dropPixels({ ...far, distance: 10 }) / dropPixels({ ...far, distance: 20 });
    expect(ratio).toBeCloseTo(4, 2);
  });

  it('is hidden without end behind what reaches the eye', () => {
    expect(hiddenGround({ height: 0.15, obstacle: 0.15, distance: 1 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('is seen farther over a flatter crest and from a higher eye', () => {
    fc.assert(
      fc.property(between(1, 1000), between(0.01, 2), between(0, 1), (radius, eye, object) => {
        const sight = crestSight({ radius, eye, object });
        expect(crestSight({ radius: radius * 1.1, eye, object })).toBeGreaterThan(sight);
        expect(crestSight({ radius, eye: eye * 1.1, object })).toBeGreaterThan(sight);
      }),
    );
  });
});

describe('the sight limit', () => {
  it('is the speed whose stop takes just the sight', () => {
    fc.assert(
      fc.property(between(0, 50), between(0, 5), between(0.2, 8), (sight, delay, braking) => {
        const speed = sightLimitSpeed({ sight, delay, braking });
        expect(sightNeeded({ speed, delay, braking })).toBeCloseTo(sight, 8);
      }),
    );
  });

  it('falls with age and rises with sight', () => {
    fc.assert(
      fc.property(between(0.1, 50), between(0, 5), between(0.2, 8), (sight, delay, braking) => {
        const speed = sightLimitSpeed({ sight, delay, braking });
        expect(sightLimitSpeed({ sight, delay: delay + 0.1, braking })).toBeLessThan(speed);
        expect(sightLimitSpeed({ sight: sight * 1.1, delay, braking })).toBeGreaterThan(speed);
      }),
    );
  });

  it('keeps its digits when the delay is long', () => {
    expect(sightLimitSpeed({ sight: 1e-6, delay: 1000, braking: 5 })).toBeCloseTo(1e-9, 18);
  });

  it('for a person is where rover and person meet at rest, in small steps', () => {
    for (const [speed, personSpeed, delay, braking] of [
      [1, 1.6, 0.3, 2],
      [2, 0.9, 1.2, 3],
      [0.5, 1.2, 0.8, 1],
    ] as const) {
      const needed = personSightNeeded({ speed, personSpeed, delay, braking });
      expect(meet(speed, personSpeed, delay, braking) / needed).toBeCloseTo(1, 3);
      expect(personLimitSpeed({ sight: needed, personSpeed, delay, braking })).toBeCloseTo(speed, 9);
    }
  });

  it('for a person is zero when he arrives within the delay, and the plain limit when he stands', () => {
    expect(personLimitSpeed({ sight: 1, personSpeed: 1.6, delay: 1, braking: 2 })).toBe(0);
    fc.assert(
      fc.property(between(0.1, 50), between(0, 5), between(0.2, 8), (sight, delay, braking) => {
        const standing = personLimitSpeed({ sight, personSpeed: 0, delay, braking });
        expect(standing).toBeCloseTo(sightLimitSpeed({ sight, delay, braking }), 12);
      }),
    );
  });

  it('along a turn ends where the arc leaves the view or the sight, found by walking it', () => {
    fc.assert(
      fc.property(between(0.3, 20), between(0.3, 3), between(0.2, 15), (radius, view, sight) => {
        let turned = 0;
        const step = 1e-3;
        while (turned < Math.PI) {
          const x = radius * Math.sin(turned + step);
          const y = radius * (1 - Math.cos(turned + step));
          if (Math.hypot(x, y) > sight || Math.atan2(y, x) > view / 2) break;
          turned += step;
        }
        const walked = radius * turned;
        expect(Math.abs(steeredSight({ radius, view, sight }) - walked)).toBeLessThan(2 * radius * step);
      }),
    );
  });

  it('refuses braking of nothing', () => {
    expect(() => sightLimitSpeed({ sight: 1, delay: 0.5, braking: 0 })).toThrow(OutOfRange);
  });
});

describe('a loop with delay', () => {
  it('does not overshoot below 1/(e·τ) and does above', () => {
    const gain = smoothLoopGain({ delay: 0.5 });
    expect(delayedLoop(gain * 0.95, 0.5).least).toBeGreaterThan(0);
    expect(delayedLoop(gain * 1.2, 0.5).least).toBeLessThan(0);
  });

  it('dies out below π/(2·τ) and grows above', () => {
    const gain = stableLoopGain({ delay: 0.5 });
    expect(delayedLoop(gain * 0.95, 0.5).late).toBeLessThan(0.2);
    expect(delayedLoop(gain * 1.05, 0.5).late).toBeGreaterThan(2);
  });
});

describe('what dims and weighs a picture', () => {
  it('keeps the smear within bounds at the exposure asked for', () => {
    fc.assert(
      fc.property(between(0.3, 5), between(0.2, 20), between(0.1, 3), (blur, distance, speed) => {
        const exposure = exposureForBlur({ blur, distance, focalPixels: 640, speed });
        expect(sidewaysBlur({ focalPixels: 640, speed, exposure, distance })).toBeCloseTo(blur, 9);
      }),
    );
  });

  it('leaves just the threshold of contrast at the sight through haze, and none when none is left', () => {
    const range = 80;
    const sight = hazeSight({ contrast: 0.6, threshold: 0.1, range });
    expect(hazeContrast({ contrast: 0.6, distance: sight, range })).toBeCloseTo(0.1, 12);
    expect(hazeSight({ contrast: 0.05, threshold: 0.1, range })).toBe(0);
  });

  it('finds the quality back from the bytes', () => {
    fc.assert(
      fc.property(between(10, 90), between(0.3, 1.5), fc.constantFrom(320, 640, 1280), (quality, detail, width) => {
        const at = { width, height: (width * 3) / 4, detail };
        const bytes = jpegBytes({ ...at, quality });
        expect(jpegQuality({ ...at, bytes })).toBeCloseTo(quality, 6);
      }),
    );
  });

  it('weighs more with quality and with size', () => {
    fc.assert(
      fc.property(between(10, 80), (quality) => {
        const at = { width: 640, height: 480, detail: 0.8 };
        expect(jpegBytes({ ...at, quality: quality + 5 })).toBeGreaterThan(jpegBytes({ ...at, quality }));
        expect(jpegBytes({ width: 1280, height: 960, detail: 0.8, quality })).toBeGreaterThan(
          2 * jpegBytes({ ...at, quality }),
        );
      }),
    );
  });
});
