/**
 * The sums of the 5 V supply, held to a circuit simulator's answers for a pack with a converter and a stalled motor,
 * and to Kirchhoff's current law at the bus.
 */
import { ZERO_CELSIUS } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { SUPPLY_IDS } from './ids.ts';
import { supplySums } from './supply.ts';

const at = (id: keyof typeof supplySums, values: Values, changes: Partial<typeof PLAIN_LAYOUT> = {}) =>
  evaluateSum(supplySums[id], values, { ...PLAIN_LAYOUT, ...changes });

/** Pack 7.4 V behind 0.15 Ω, 5 W at 90 %, motor 0.999 Ω and a switch of 1 mΩ: the deck of the stall step. */
const DECK: Values = {
  'pack.restReserve': 7.4,
  'pack.resistanceCold': 0.15,
  'wiring.pack.resistance': 0,
  'supply.inputPeakPower': 5.5556,
  'drive.resistance': 0.999,
  'day.coldest': ZERO_CELSIUS + 20,
  'wiring.bridge.resistance': 0,
  'wiring.motor.resistance': 0,
  'bridge.threshold': 0,
  'bridge.slope': 0.001,
  'duty.applied': 1,
};

describe('every sum of the supply', () => {
  it.each(SUPPLY_IDS)('%s shows in its formula exactly what it reads', (id) => {
    expect(strayNames(supplySums[id])).toEqual([]);
  });
});

describe('the bus while the drive stalls', () => {
  it('stands where the circuit simulator puts it', () => {
    // General-purpose circuit simulator, deck of a stall step with a constant-power converter: 6.320126 V.
    expect(at('supply.inputStall', DECK)).toBeCloseTo(6.320126, 4);
  });

  it('collapses above the power the simulator deck gives as its limit', () => {
    // Same deck: 79.36 W with the stalled motor.
    expect(at('supply.collapsePower', DECK)).toBeCloseTo(79.36, 1);
    expect(at('supply.inputStall', { ...DECK, 'supply.inputPeakPower': 79.2 })).toBeGreaterThan(3);
    expect(at('supply.inputStall', { ...DECK, 'supply.inputPeakPower': 79.5 })).toBe(0);
  });

  const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  interface Drawn {
    readonly threshold: number;
    readonly motors: number;
    readonly duty: number;
    readonly winding: number;
    readonly steering: number;
    readonly speed: number;
  }
  const loads: fc.Arbitrary<Drawn> = fc.record({
    threshold: positive(0, 2),
    motors: fc.integer({ min: 1, max: 4 }),
    duty: positive(0.3, 1),
    winding: positive(0.5, 6),
    steering: positive(2, 12),
    speed: positive(0, 2),
  });
  /** Mean voltage of a pulse over the winding: duty times bus, less the drop of the bridge, and a reversed back-EMF. */
  const into = (v: number, at: { threshold: number; motors: number; duty: number; winding: number }, emf = 0) =>
    (at.motors * (at.duty * v - at.threshold + emf)) / at.winding;
  const loaded = ({ threshold, duty, winding, steering, speed }: Drawn): Values => ({
    ...DECK,
    'bridge.threshold': threshold,
    'bridge.slope': 0,
    'duty.applied': duty,
    'drive.resistance': winding,
    'steer.resistance': steering,
    'drive.topSpeed': speed,
    'drive.constant': 0.004,
    'drive.ratio': 20,
    'toy.wheelDiameter': 0.08,
  });

  it("obeys Kirchhoff's current law with any threshold of the bridge, number of motors and duty", () => {
    fc.assert(
      fc.property(loads, (drawn) => {
        const v = at('supply.inputStall', loaded(drawn), { motors: drawn.motors, motorsPerChannel: 1 });
        fc.pre(drawn.duty * v > drawn.threshold);
        expect((7.4 - v) / 0.15).toBeCloseTo(into(v, drawn) + 5.5556 / v, 6);
      }),
    );
  });

  it('obeys it reversed at speed, when the whole back-EMF drives the current and not the pulsed share of it', () => {
    fc.assert(
      fc.property(loads, (drawn) => {
        const v = at('supply.inputReversal', loaded(drawn), { motors: drawn.motors, motorsPerChannel: 1 });
        fc.pre(v > 0 && drawn.duty * v > drawn.threshold);
        const emf = (0.004 * drawn.speed * 2 * 20) / 0.08;
        expect((7.4 - v) / 0.15).toBeCloseTo(into(v, drawn, emf) + 5.5556 / v, 6);
      }),
    );
  });

  it('carries an on/off steering motor at its stop as well, undriven by pulses', () => {
    fc.assert(
      fc.property(loads, (drawn) => {
        const layout = { steering: 'on-off', motors: drawn.motors, motorsPerChannel: 1 } as const;
        const v = at('supply.inputStall', loaded(drawn), layout);
        fc.pre(drawn.duty * v > drawn.threshold);
        const held = (v - drawn.threshold) / drawn.steering;
        expect((7.4 - v) / 0.15).toBeCloseTo(into(v, drawn) + held + 5.5556 / v, 6);
      }),
    );
  });

  it('is not fed by motors whose bridge eats the whole pulse', () => {
    const eaten = { ...DECK, 'bridge.threshold': 4, 'duty.applied': 0.5 };
    const v = at('supply.inputStall', eaten);
    expect((7.4 - v) / 0.15).toBeCloseTo(5.5556 / v, 6);
  });

  it('sags more the more motors stall, the colder the winding and the higher the duty', () => {
    const bus = (changes: Values, motors = 1) => at('supply.inputStall', { ...DECK, ...changes }, { motors });
    expect(bus({}, 2)).toBeLessThan(bus({}));
    expect(bus({ 'day.coldest': ZERO_CELSIUS })).toBeLessThan(bus({}));
    expect(bus({ 'duty.applied': 0.5 })).toBeGreaterThan(bus({}));
  });

  it('sags further when reversed at speed than in a stall, as the back-EMF adds to the supply', () => {
    const moving: Values = {
      ...DECK,
      'drive.topSpeed': 1,
      'drive.constant': 0.004,
      'drive.ratio': 20,
      'toy.wheelDiameter': 0.08,
    };
    expect(at('supply.inputReversal', moving)).toBeLessThan(at('supply.inputStall', DECK));
    expect(at('supply.inputReversal', { ...moving, 'drive.topSpeed': 0 })).toBeCloseTo(6.320126, 4);
  });
});

/** A converter with its lead, and the board behind it, on a bus that may sag. */
const stalled: Values = {
  'supply.inputStall': 7,
  'supply.inputPeakPower': 7,
  'wiring.converter.resistance': 0,
  'converter.headRoom': 1,
  'converter.inputMin': 4,
  'converter.outputVoltage': 5,
  'supply.currentPeak': 1,
  'wiring.board.resistance': 0.1,
};

describe('what the converter needs', () => {
  const values: Values = {
    'converter.inputMin': 4.5,
    'converter.outputVoltage': 5,
    'converter.headRoom': 1.5,
    'supply.inputPeakPower': 13,
    'wiring.converter.resistance': 0.05,
  };

  it('is output and head-room and the drop of its own run', () => {
    // 13 W at 6.5 V are 2 A, through 50 mΩ another 0.1 V.
    expect(at('supply.inputNeeded', values)).toBeCloseTo(6.6, 9);
  });

  it('is its least input where that is more', () => {
    expect(at('supply.inputNeeded', { ...values, 'converter.inputMin': 7, 'supply.inputPeakPower': 0 })).toBeCloseTo(
      7,
      9,
    );
  });

  it('is its least input where it steps up, however far below its output that lies', () => {
    const up = { ...values, 'converter.inputMin': 3, 'converter.outputVoltage': 5.05, 'converter.headRoom': -5 };
    // Data-sheet use of such a part: one lithium cell of 3.7 V feeds 5 V.
    expect(at('supply.inputNeeded', { ...up, 'supply.inputPeakPower': 0 })).toBeCloseTo(3, 9);
    const board = (input: number) => at('supply.boardVoltageStall', { ...stalled, ...up, 'supply.inputStall': input });
    expect(board(3.5)).toBeCloseTo(5.05 - 0.1, 9);
    expect(board(2.9)).toBe(0);
  });

  it('leaves an old converter no head-room on two iron phosphate cells', () => {
    // Trap of the trade: 2 × 3.2 V against 5 V and the 1.16 V typical switch drop plus margin of the old part.
    expect(at('supply.inputNeeded', values)).toBeGreaterThan(2 * 3.2);
  });
});

describe('the board', () => {
  it('sees the drop of its own lead: 0.5 m of a thin wire at 2 A', () => {
    // Published practice figures: 5.10 V, 2 A, 84.2 mΩ and 50 mΩ of contacts leave 4.832 V; with 212.9 mΩ 4.574 V.
    const board = (resistance: number) =>
      at('supply.boardVoltage', {
        'converter.outputVoltage': 5.1,
        'supply.currentPeak': 2,
        'wiring.board.resistance': resistance,
      });
    expect(board(0.1342)).toBeCloseTo(4.832, 3);
    expect(board(0.2629)).toBeCloseTo(4.574, 3);
  });

  it('keeps its voltage in a stall while the converter has head-room, loses it with the input, and goes dark below', () => {
    const board = (input: number) => at('supply.boardVoltageStall', { ...stalled, 'supply.inputStall': input });
    expect(board(7)).toBeCloseTo(4.9, 9);
    expect(board(5.5)).toBeCloseTo(4.4, 9);
    expect(board(3.9)).toBe(0);
    expect(board(0)).toBe(0);
  });
});

describe('converter', () => {
  it('makes 3.75 W of heat at 5 V, 3 A and 80 %', () => {
    // Data sheet of a 3 A bipolar-switch converter, typical efficiency at 12 V: loss 3.75 W.
    const heat = at('supply.heat', {
      'supply.loadBusy': 15,
      'converter.outputVoltage': 5,
      'converter.efficiency': 0.8,
    });
    expect(heat).toBeCloseTo(3.75, 9);
  });

  it('has capacitors that carry its load for microseconds, by the energy they hold', () => {
    const time = at('supply.holdUp', {
      'converter.outputCapacitance': 220e-6,
      'supply.boardVoltage': 5,
      'computer.brownOut': 4.63,
      'supply.loadPeak': 10,
    });
    expect(time * 10).toBeCloseTo(0.5 * 220e-6 * (25 - 4.63 ** 2), 9);
  });
});
