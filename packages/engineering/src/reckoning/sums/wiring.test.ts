/** The sums of wiring and fuse, held to handbook tables, worked drops and published fuse gates. */
import { onderdonkFusingTime, ZERO_CELSIUS } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RUNS } from '../../dossier/facts/build.ts';
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

describe('a wire that carries too much', () => {
  const thin: Values = {
    'wiring.motor.current': 40,
    'day.hottest': ZERO_CELSIUS + 30,
    'run.motor.resistancePerMetre': 0.0551,
    'run.motor.area': 0.326e-6,
    'run.motor.diameter': 1.7e-3,
  };

  it('is burnt, a number, and fails whatever its insulation', () => {
    const burnt = at('wiring.motor.rise', thin);
    const rises = Object.fromEntries(RUNS.map((run) => [`wiring.${run}.rise`, run === 'motor' ? burnt : 1]));
    // The best insulation the dossier admits, 327 °C.
    const limits = Object.fromEntries(RUNS.map((run) => [`run.${run}.temperatureMax`, 600]));
    const air = { 'day.hottest': ZERO_CELSIUS + 30, 'heat.localAir': ZERO_CELSIUS + 30 };
    expect(at('wiring.insulationSpare', { ...rises, ...limits, ...air })).toBeLessThan(0);
  });

  it('is never cooler for more current, across the end of what is worked out', () => {
    const amperes = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(amperes, amperes, (a, b) => {
        const rise = (current: number) => at('wiring.motor.rise', { ...thin, 'wiring.motor.current': current });
        // Currents of nothing give rises of a rounding error, whose order means nothing.
        expect(rise(Math.max(a, b)) + 1e-9).toBeGreaterThanOrEqual(rise(Math.min(a, b)));
      }),
    );
  });
});

describe('the insulation', () => {
  const rises = Object.fromEntries(RUNS.map((run) => [`wiring.${run}.rise`, 10])) as Values;
  const limits = Object.fromEntries(RUNS.map((run) => [`run.${run}.temperatureMax`, ZERO_CELSIUS + 80])) as Values;
  const spare = (box: number, changes: Values = {}) =>
    at('wiring.insulationSpare', {
      ...rises,
      ...limits,
      'day.hottest': ZERO_CELSIUS + 30,
      'heat.localAir': ZERO_CELSIUS + box,
      ...changes,
    });

  it('of runs in the enclosure has to bear the air in it', () => {
    expect(spare(30)).toBeCloseTo(40, 9);
    expect(spare(65)).toBeCloseTo(5, 9);
  });

  it('of pack and motor runs has not', () => {
    expect(spare(50, { 'wiring.pack.rise': 35 })).toBeCloseTo(15, 9);
    expect(spare(50, { 'wiring.board.rise': 35 })).toBeCloseTo(-5, 9);
  });

  it('at the hottest is where the hottest wire is, outside or in the box', () => {
    const air = { 'day.hottest': 300, 'heat.localAir': 330 };
    expect(at('wiring.hottest', { ...rises, ...air })).toBeCloseTo(340, 9);
    expect(at('wiring.hottest', { ...rises, ...air, 'wiring.motor.rise': 60 })).toBeCloseTo(360, 9);
  });
});

describe('what hangs on the fuse', () => {
  const of = (key: string, board: number) =>
    Object.fromEntries(RUNS.map((run, i) => [`run.${run}.${key}`, run === 'board' ? board : 10 + i])) as Values;

  it('is the weakest wire and connector but for the board run, which hangs on the converter', () => {
    expect(at('wiring.weakest', of('currentMax', 2))).toBe(10);
    expect(at('wiring.weakestContact', of('contactCurrentMax', 3))).toBe(10);
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
    expect(at('fuse.shortShare', { 'fuse.shortLow': 36, 'fuse.rating': 15 })).toBeCloseTo(2.4, 9);
  });

  const cold: Values = {
    'pack.restReserve': 7.2,
    'pack.resistanceCold': 0.4,
    'wiring.pack.resistance': 0.03,
    'wiring.bridge.resistance': 0.02,
    'wiring.motor.resistance': 0.05,
    'wiring.converter.resistance': 0.04,
  };

  it('must open on the weakest short: a cold pack at its reserve, at the far end of the longest run', () => {
    // Ohm's law: 7.2 V over 0.4 + 0.03 + 0.07 Ω is 14.4 A; a long converter run makes it less.
    expect(at('fuse.shortLow', cold)).toBeCloseTo(14.4, 9);
    expect(at('fuse.shortLow', { ...cold, 'wiring.converter.resistance': 0.29 })).toBeCloseTo(10, 9);
  });

  it('is asked to protect the wires on that short, which lets more I²t through than a strong one', () => {
    // Blade gates: 350 % within 0.5 s, 600 % within 0.15 s; 12.25 · 0.5 is more than 36 · 0.15.
    const let_ = (share: number) => share ** 2 * at('fuse.shortTime', { 'fuse.shortShare': share });
    expect(let_(3.5)).toBeGreaterThan(let_(6));
    expect(let_(2)).toBeGreaterThan(let_(3.5));
  });

  const stall: Values = {
    'pack.restReserve': 7,
    'pack.resistanceCold': 0.1,
    'drive.resistance': 1,
    'pack.currentStand': 0.8,
    'wiring.pack.resistance': 0.02,
    'wiring.bridge.resistance': 0.01,
    'wiring.motor.resistance': 0.02,
    'bridge.threshold': 0,
    'bridge.slope': 0.05,
    'duty.applied': 0.7,
  };

  it('sees of a lasting stall what a hot winding lets through on the last of the charge', () => {
    const current = at('fuse.stallCurrent', stall, { motors: 2, motorsPerChannel: 1 });
    // Kirchhoff round the loop of one motor, copper at 80 °C (IEC 60028): 1.2358 Ω.
    const each = (current - 0.8) / (2 * 0.7);
    const bus = 7 - 2 * 0.7 * each * 0.13;
    expect(0.7 * bus).toBeCloseTo(each * (1 + 0.00393 * 60 + 0.02 + 0.05), 9);
  });

  it('sees less of a lasting stall than of its first instant on a full pack', () => {
    const cold = (0.7 * 8.4) / (1.07 + 2 * 0.49 * 0.1);
    expect(at('fuse.stallCurrent', stall, { motors: 2 })).toBeLessThan(0.8 + 2 * 0.7 * cold * 0.8);
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
