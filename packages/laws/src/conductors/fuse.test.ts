/**
 * Goal: a fuse carries what it is rated for, opens within its gates, and is chosen to protect the wire.
 * Method: every published gate, properties over all currents, and the two rules where they part.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ZERO_CELSIUS } from '../constants.ts';
import { OutOfRange } from '../law.ts';
import { bladeRating, chooseFuse, fuseAmbientShare } from './fuse.ts';
import {
  FUSE_CARRIES,
  FUSE_FAMILIES,
  FUSE_GATES,
  fuseAdiabaticTime,
  fuseFastestOpening,
  fuseOpeningTime,
  fuseSlowestOpening,
} from './fuse-time.ts';

const family = fc.constantFrom(...FUSE_FAMILIES);
const share = fc.double({ min: 0, max: 20, noNaN: true });

describe('the opening time of a blade fuse', () => {
  it.each(FUSE_FAMILIES)('of the family %s lies inside every gate', (name) => {
    for (const gate of FUSE_GATES[name].slice(1)) {
      const time = fuseOpeningTime({ family: name, share: gate.share });
      expect(time).toBeGreaterThan(gate.fastest);
      expect(time).toBeLessThan(gate.slowest);
    }
  });

  it('is never at the rated current', () => {
    fc.assert(
      fc.property(family, fc.double({ min: 0, max: 1, noNaN: true }), (name, m) => {
        expect(fuseOpeningTime({ family: name, share: m })).toBe(Number.POSITIVE_INFINITY);
        expect(fuseFastestOpening({ family: name, share: m })).toBeGreaterThanOrEqual(FUSE_CARRIES);
        expect(fuseSlowestOpening({ family: name, share: m })).toBe(Number.POSITIVE_INFINITY);
      }),
    );
  });

  it('falls as the current grows, for the earliest, the likely and the latest', () => {
    fc.assert(
      fc.property(family, share, share, (name, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        for (const time of [fuseFastestOpening, fuseOpeningTime, fuseSlowestOpening]) {
          expect(time({ family: name, share: high })).toBeLessThanOrEqual(time({ family: name, share: low }));
        }
      }),
    );
  });

  it('keeps the earliest before the likely before the latest', () => {
    fc.assert(
      fc.property(family, share, (name, m) => {
        const likely = fuseOpeningTime({ family: name, share: m });
        expect(fuseFastestOpening({ family: name, share: m })).toBeLessThanOrEqual(likely);
        expect(fuseSlowestOpening({ family: name, share: m })).toBeGreaterThanOrEqual(likely);
      }),
    );
  });

  it.each([
    ['40 A large blade, 8500 A²s', 'large blade', 8500, 40],
    ['40 A blade, 3300 A²s', 'blade', 3300, 40],
    ['3 A miniature, 20 A²s', 'blade', 20, 3],
  ] as const)(
    'from the melting energy of the sheet (%s) lies inside the gates at 350 % and 600 %',
    (_name, of, meltingEnergy, rating) => {
      for (const m of [3.5, 6]) {
        const time = fuseAdiabaticTime({ meltingEnergy, current: m * rating, rating });
        expect(time).toBeGreaterThan(fuseFastestOpening({ family: of, share: m }));
        expect(time).toBeLessThan(fuseSlowestOpening({ family: of, share: m }));
      }
    },
  );

  it('is refused by melting energy below twice the rating, where heat escapes', () => {
    expect(() => fuseAdiabaticTime({ meltingEnergy: 20, current: 5.9, rating: 3 })).toThrow(OutOfRange);
  });
});

describe('choosing a fuse', () => {
  it('takes the 25 % derating where the wire allows it: 8 A gets 15 A', () => {
    expect(chooseFuse({ current: 8, wireLimit: 16 })).toMatchObject({ rating: 15, rule: 'fuse-rating-by-derating' });
  });

  it('falls back to the 125 % form when the wire is too thin for that: 8 A gets 10 A', () => {
    expect(chooseFuse({ current: 8, wireLimit: 11 })).toMatchObject({ rating: 10, rule: 'fuse-rating-by-margin' });
  });

  it('says that nothing fits rather than endanger the wire, or when no blade is large enough', () => {
    expect(chooseFuse({ current: 8, wireLimit: 9 })).toMatchObject({ rating: undefined, rule: 'none' });
    expect(chooseFuse({ current: 38, wireLimit: 100 })).toMatchObject({ rating: undefined, rule: 'none' });
  });

  it('never gives a rating above the wire or below the load', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        (current, wireLimit) => {
          const { rating } = chooseFuse({ current, wireLimit });
          if (rating === undefined) return;
          expect(rating).toBeLessThanOrEqual(wireLimit);
          expect(rating).toBeGreaterThanOrEqual(current);
        },
      ),
    );
  });

  it('does not jump a size for the last digit of a division', () => {
    expect(bladeRating({ rating: 7.5 / 0.75 })).toBe(10);
    expect(bladeRating({ rating: 3 / 0.75 })).toBe(4);
    expect(bladeRating({ rating: 1.25 * 24 })).toBe(30);
  });

  it('derates in the warmth and never grants more than the rating in the cold', () => {
    const celsius = fc.double({ min: -40, max: 125, noNaN: true });
    fc.assert(
      fc.property(celsius, celsius, (one, other) => {
        const cold = fuseAmbientShare({ ambient: ZERO_CELSIUS + Math.min(one, other) });
        const warm = fuseAmbientShare({ ambient: ZERO_CELSIUS + Math.max(one, other) });
        expect(cold).toBeLessThanOrEqual(1);
        expect(warm).toBeLessThanOrEqual(cold);
      }),
    );
  });
});
