/** The sums of wiring and fuse, held to handbook tables, worked drops and published fuse gates. */
import { onderdonkFusingTime, ZERO_CELSIUS } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { wireBears } from './fuse.ts';
import { WIRING_IDS } from './ids.ts';
import { wiringSums } from './wiring.ts';

const at = (id: keyof typeof wiringSums, values: Values, changes: Partial<typeof PLAIN_LAYOUT> = {}) =>
  evaluateSum(wiringSums[id], values, { ...PLAIN_LAYOUT, ...changes });

describe('every sum of wiring and fuse', () => {
  it.each(WIRING_IDS)('%s shows in its formula exactly what it reads', (id) => {
    expect(strayNames(wiringSums[id])).toEqual([]);
  });
});

describe('resistance of a run', () => {
  it('is the handbook figure of the wire out and back, warmed, and its contacts', () => {
    // Handbook of Electronic Tables and Formulas: 18 gauge, 6.385 Ω per 1000 ft; copper 0.00393 /K (IEC 60028).
    const perMetre = 6.385 / 304.8;
    const values: Values = {
      'run.bridge.length': 0.5,
      'run.bridge.resistancePerMetre': perMetre,
      'run.bridge.contactResistance': 0.002,
    };
    const expected = 2 * 0.5 * perMetre * (1 + 0.00393 * 20) + 0.002;
    expect(at('wiring.bridge.resistance', values)).toBeCloseTo(expected, 9);
  });

  it('of the pack run counts the fuse as well', () => {
    const run: Values = {
      'run.pack.length': 0.1,
      'run.pack.resistancePerMetre': 0.02,
      'run.pack.contactResistance': 0,
    };
    const [without, with_] = [0, 0.005].map((fuse) =>
      at('wiring.pack.resistance', { ...run, 'fuse.resistance': fuse }),
    );
    expect((with_ as number) - (without as number)).toBeCloseTo(0.005, 12);
  });
});

describe('temperature of a wire', () => {
  it('rises by some 44 K in 18 gauge at its 16 A handbook current', () => {
    // Handbook chassis-wiring column; the rise from a cylinder law worked apart at 25 °C, outside 2.1 mm: 44 K.
    const rise = at('wiring.pack.rise', {
      'wiring.pack.current': 16,
      'day.hottest': ZERO_CELSIUS + 25,
      'run.pack.resistancePerMetre': 0.020948,
      'run.pack.area': 0.823e-6,
      'run.pack.diameter': 2.1e-3,
    });
    expect(rise).toBeGreaterThan(40);
    expect(rise).toBeLessThan(48);
  });
});

describe('the fuse', () => {
  it('needs 10 A for 7.5 A, and more than 10 A for 8 A, by the derating rule', () => {
    // Maker's fuse guides: 25 % derating. 7.5 A → 10.0 A; 8.0 A → 10.67 A.
    expect(at('fuse.needed', { 'pack.currentClimb': 7.5 })).toBeCloseTo(10, 9);
    expect(at('fuse.needed', { 'pack.currentClimb': 8 })).toBeCloseTo(10.67, 2);
  });

  it('opens on twice its rating within five seconds, and never below it', () => {
    // ISO 8820-3 and a maker's blade sheet: 200 % opens in 0.15 to 5 s.
    expect(at('fuse.stallTime', { 'fuse.stallShare': 2 })).toBeCloseTo(5, 6);
    expect(at('fuse.stallTime', { 'fuse.stallShare': 0.9 })).toBe(360_000);
  });

  it('of 15 A sees only some 240 % from six small nickel cells', () => {
    // Worked figure: 7.2 V over 6 × 30 mΩ and 20 mΩ gives 36 A; with full cells of 1.45 V it is 43.5 A.
    const current = at(
      'fuse.shortCurrent',
      { 'pack.cellResistance': 0.03, 'wiring.pack.resistance': 0.02 },
      { chemistry: 'nimh', cells: 6 },
    );
    expect(current).toBeCloseTo((6 * 1.45) / 0.2, 6);
    expect(at('fuse.shortShare', { 'fuse.shortCurrent': 36, 'fuse.rating': 15 })).toBeCloseTo(2.4, 9);
  });

  it('sees a start as a falling line, whose squared current a sum over small steps gives as well', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (peak, part) => {
          const end = part * peak;
          const energy = at('fuse.startEnergy', { 'pack.currentStall': peak, 'pack.currentClimb': end });
          let sum = 0;
          const steps = 2000;
          for (let i = 0; i < steps; i++) sum += (peak + ((end - peak) * (i + 0.5)) / steps) ** 2 * (0.3 / steps);
          expect(energy / sum).toBeCloseTo(1, 5);
        },
      ),
    );
  });
});

describe('what a wire bears', () => {
  const area = 0.823e-6;

  it('agrees with Onderdonk where the limit is the melting point', () => {
    // Onderdonk's equation: copper from 20 °C to 1083 °C, constants 33 and 234.
    const [ambient, melting] = [ZERO_CELSIUS + 20, ZERO_CELSIUS + 1083];
    const ours = wireBears(area, 239, ambient, melting);
    expect(ours / onderdonkFusingTime({ area, current: 239, ambient })).toBeCloseTo(1, 1);
  });

  it('agrees with heating the wire in small steps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: 60, max: 200, noNaN: true }),
        (current, top) => {
          const [start, limit] = [ZERO_CELSIUS + 25, ZERO_CELSIUS + top];
          let time = 0;
          const steps = 4000;
          for (let i = 0; i < steps; i++) {
            const t = start + ((i + 0.5) / steps) * (limit - start);
            const power = (current ** 2 * (1 / 58e6) * (1 + 0.00393 * (t - ZERO_CELSIUS - 20))) / area ** 2;
            time += (((limit - start) / steps) * 385 * 8890) / power;
          }
          expect(wireBears(area, current, start, limit) / time).toBeCloseTo(1, 5);
        },
      ),
      { numRuns: 20 },
    );
  });
});
