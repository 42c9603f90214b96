/** The sums of duty and bridge, held to data sheets and to the circuit they stand for. */
import { ROOM, ZERO_CELSIUS } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { dutySums } from './duty.ts';
import { DUTY_IDS } from './ids.ts';

const BIPOLAR = { ...PLAIN_LAYOUT, bridge: 'bipolar' } as const;
const at = (id: keyof typeof dutySums, values: Values, layout: typeof PLAIN_LAYOUT = PLAIN_LAYOUT) =>
  evaluateSum(dutySums[id], values, layout);

describe('every sum of duty and bridge', () => {
  it.each(DUTY_IDS)('%s shows in its formula exactly what it reads', (id) => {
    expect(strayNames(dutySums[id])).toEqual([]);
    expect(strayNames(dutySums[id], BIPOLAR)).toEqual([]);
  });
});

describe('a bipolar bridge', () => {
  // ST, dual full-bridge driver data sheet, January 2000: 2.55 V typical at 1 A, 3.7 V at 2 A, both switches.
  const sheet: Values = { 'bridge.dropOneAmpere': 2.55, 'bridge.dropTwoAmpere': 3.7 };
  const line: Values = {
    'bridge.threshold': at('bridge.threshold', sheet, BIPOLAR),
    'bridge.slope': at('bridge.slope', sheet, BIPOLAR),
  };

  it('drops what its sheet says at 1 A and at 2 A', () => {
    const drop = (current: number) => at('bridge.dropClimb', { ...line, 'bridge.channelClimb': current }, BIPOLAR);
    expect(drop(1)).toBeCloseTo(2.55, 9);
    expect(drop(2)).toBeCloseTo(3.7, 9);
  });

  it('leaves 4.85 V of a 7.4 V pack at 1 A and makes 2.55 W', () => {
    // The same sheet, worked in public notes: the motor sees 4.85 V, heat 2.55 W.
    const motor = at(
      'duty.motorVoltage',
      { ...line, 'pack.full': 7.4, 'duty.applied': 1, 'drive.noLoadCurrent': 1 },
      BIPOLAR,
    );
    expect(motor).toBeCloseTo(4.85, 9);
    const heat = at(
      'bridge.lossClimb',
      { 'bridge.channelClimb': 1, 'bridge.dropClimb': 2.55, 'pack.full': 7.4, 'bridge.quiescent': 0 },
      BIPOLAR,
    );
    expect(heat).toBeCloseTo(2.55, 9);
  });

  it('reaches 114 °C bare at 2.55 W in air of 25 °C', () => {
    // 35 K/W junction to ambient (same sheet): 25 + 35 · 2.55 = 114 °C.
    const junction = at('bridge.junctionClimb', {
      'heat.localAir': ROOM,
      'bridge.lossClimb': 2.55,
      'bridge.lossSteer': 0,
      'bridge.toAir': 35,
    });
    expect(junction - ZERO_CELSIUS).toBeCloseTo(114.25, 2);
  });
});

describe('the duty ceiling', () => {
  const values: Values = {
    'motor.ratedVoltage': 7.2,
    'bridge.threshold': 0,
    'bridge.slope': 0,
    'drive.noLoadCurrent': 0.3,
    'pack.full': 12.6,
  };

  it('brings a 7.2 V motor on a full three-cell pack to its rated mean voltage', () => {
    const ceiling = at('duty.ceiling', values);
    expect(ceiling).toBeCloseTo(7.2 / 12.6, 9);
    expect(at('duty.motorVoltage', { ...values, 'duty.applied': ceiling })).toBeCloseTo(7.2, 9);
  });

  it('is never above 1, and taken from the full pack, not the nominal one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 20, noNaN: true }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        (rated, full) => {
          const ceiling = at('duty.ceiling', { ...values, 'motor.ratedVoltage': rated, 'pack.full': full });
          expect(ceiling).toBeLessThanOrEqual(1);
          expect(ceiling * full).toBeLessThanOrEqual(rated * (1 + 1e-12));
        },
      ),
    );
  });

  it('in force is the setting where there is one, and no setting lifts what reaches the vehicle above the safe one', () => {
    expect(at('duty.applied', { 'set.dutyCeiling': 1, 'duty.ceiling': 0.6 })).toBe(1);
    expect(at('duty.limit', { 'duty.applied': 1, 'duty.ceiling': 0.6 })).toBe(0.6);
  });
});

describe('bridge channels', () => {
  it('add the currents of motors in parallel', () => {
    const shared = { ...PLAIN_LAYOUT, motors: 3, motorsPerChannel: 3 };
    expect(at('bridge.channelStall', { 'drive.stallCurrent': 4 }, shared)).toBe(12);
  });

  it('carry a ripple that an exact simulation of one period gives as well', () => {
    // Deck of slow decay at 12 V, 1 Ω, 1 mH, 20 kHz, half duty: 0.149992 A exact, simulator 0.14996 A.
    const ripple = at('bridge.ripple', {
      'pack.full': 12,
      'drive.resistance': 1,
      'motor.inductance': 1e-3,
      'set.frequency': 20e3,
    });
    expect(ripple).toBeCloseTo(0.149992, 5);
  });
});

describe('a bridge channel blocked alone', () => {
  const values: Values = {
    'pack.full': 8.4,
    'pack.resistance': 0.15,
    'drive.resistance': 1,
    'wiring.pack.resistance': 0.03,
    'wiring.bridge.resistance': 0.02,
    'wiring.motor.resistance': 0.02,
    'bridge.threshold': 0.5,
    'bridge.slope': 0.1,
    'duty.applied': 0.8,
  };
  const four = { ...PLAIN_LAYOUT, motors: 4, motorsPerChannel: 2, channels: 2 };

  it('balances the circuit of its own motors, the others drawing nothing', () => {
    const current = at('bridge.channelBlocked', values, four);
    const bus = 8.4 - 0.8 * current * 0.2;
    // Two motors in parallel, each 1.02 Ω, behind the channel's 0.1 Ω and its threshold.
    expect(0.8 * bus - 0.5 - current * (0.1 + 1.02 / 2)).toBeCloseTo(0, 9);
  });

  it('carries more than with everything stalled, and just as much where it drives all there is', () => {
    const all = (layout: typeof PLAIN_LAYOUT) => {
      const sharing = layout.motorsPerChannel;
      const one = (0.8 * 8.4 - 0.5) / (1.02 + sharing * 0.1 + layout.motors * 0.64 * 0.2);
      return sharing * one;
    };
    expect(at('bridge.channelBlocked', values, four)).toBeGreaterThan(1.1 * all(four));
    const single = { ...four, motors: 2, channels: 1 };
    expect(at('bridge.channelBlocked', values, single)).toBeCloseTo(all(single), 9);
  });

  it('carries nothing behind a bridge that eats the whole pulse', () => {
    expect(at('bridge.channelBlocked', { ...values, 'bridge.threshold': 7 }, four)).toBe(0);
  });
});

describe('the heat of a bridge board', () => {
  const loss: Values = {
    'bridge.channelClimb': 1,
    'bridge.dropClimb': 2.6,
    'pack.full': 8.4,
    'bridge.quiescent': 0.04,
  };
  const boards = (bridges: number) => ({ ...BIPOLAR, motors: 2, channels: 2, bridges });

  it('is that of all its channels: two at 1 A overheat a board that bears one', () => {
    // Shelf remark of such a bridge: 2.6 V at 1 A, 45 K/W; both channels at 1 A together overheat it.
    const junction = (bridges: number) => {
      const power = at('bridge.lossClimb', { ...loss, 'bridge.quiescent': 0 }, boards(bridges));
      return at(
        'bridge.junctionClimb',
        { 'heat.localAir': ROOM, 'bridge.lossClimb': power, 'bridge.lossSteer': 0, 'bridge.toAir': 45 },
        boards(bridges),
      );
    };
    expect(junction(2) - ZERO_CELSIUS).toBeCloseTo(25 + 45 * 2.6, 9);
    expect(junction(1) - ZERO_CELSIUS).toBeCloseTo(25 + 45 * 5.2, 9);
    expect(junction(1) - ZERO_CELSIUS).toBeGreaterThan(150);
  });

  it('counts the quiescent current once a board', () => {
    const [one, two] = [2, 1].map((bridges) => at('bridge.lossClimb', loss, boards(bridges)) - 2.6) as [number, number];
    expect(one).toBeCloseTo(8.4 * 0.04, 9);
    expect(2 * two).toBeCloseTo(one, 9);
  });

  it('is warmed as well by an on/off steering motor held at its stop, through a bipolar bridge most of all', () => {
    const held: Values = {
      'pack.full': 8.4,
      'set.holdDuty': 0.5,
      'bridge.threshold': 1.4,
      'bridge.slope': 1.2,
      'steer.resistance': 4,
    };
    const steered = { ...BIPOLAR, steering: 'on-off' } as const;
    const power = at('bridge.lossSteer', held, steered);
    // Half of 8.4 V less 1.4 V over 5.2 Ω: 0.538 A; of the power of the pulses the motor keeps i²·4 Ω.
    const current = (4.2 - 1.4) / 5.2;
    expect(power).toBeCloseTo(4.2 * current - current ** 2 * 4, 9);
    expect(at('bridge.lossSteer', { ...held, 'bridge.threshold': 5 }, steered)).toBe(0);
    expect(at('bridge.lossSteer', held, BIPOLAR)).toBe(0);
    const junction = (steering: number) =>
      at('bridge.junctionClimb', {
        'heat.localAir': 300,
        'bridge.lossClimb': 1,
        'bridge.lossSteer': steering,
        'bridge.toAir': 45,
      });
    expect(junction(power) - junction(0)).toBeCloseTo(45 * power, 9);
  });

  it('warms in a stall by all its channels too', () => {
    const values: Values = {
      'bridge.junctionClimb': 300,
      'heat.localAir': 300,
      'bridge.lossStall': 4,
      'bridge.lossSteer': 0,
      'bridge.toAir': 20,
      'set.stallTime': 1e4,
      'bridge.timeConstant': 20,
    };
    expect(at('bridge.junctionStall', values, boards(1))).toBeCloseTo(300 + 2 * 4 * 20, 6);
  });
});

describe('the supply of the bridge in a stall', () => {
  const values: Values = {
    'supply.inputStall': 6,
    'drive.resistance': 0.9,
    'day.coldest': ZERO_CELSIUS + 20,
    'wiring.bridge.resistance': 0.02,
    'wiring.motor.resistance': 0.03,
    'bridge.threshold': 0,
    'bridge.slope': 0.05,
    'duty.applied': 1,
  };

  it('is lower than at the branching point by what its own run drops under all motors', () => {
    const layout = { ...PLAIN_LAYOUT, motors: 2, motorsPerChannel: 1 };
    const low = at('bridge.supplyLow', values, layout);
    // Two motors of 0.98 Ω in parallel behind the run: 6 V divide as the resistances do.
    expect(low).toBeCloseTo((6 * 0.49) / (0.49 + 0.02), 9);
    expect(at('bridge.supplyLow', { ...values, 'wiring.bridge.resistance': 0 }, layout)).toBe(6);
  });

  it('is that of the branching point where the bridge lets nothing through, and where the supply has collapsed', () => {
    expect(at('bridge.supplyLow', { ...values, 'bridge.threshold': 7 })).toBe(6);
    expect(at('bridge.supplyLow', { ...values, 'supply.inputStall': 0 })).toBe(0);
  });
});

describe('a junction in a stall', () => {
  it('lies between the climb’s temperature and the steady one, nearer to it the longer the stall', () => {
    const junction = (time: number) =>
      at('bridge.junctionStall', {
        'bridge.junctionClimb': 320,
        'heat.localAir': 300,
        'bridge.lossStall': 5,
        'bridge.lossSteer': 0,
        'bridge.toAir': 30,
        'set.stallTime': time,
        'bridge.timeConstant': 20,
      });
    expect(junction(1e-9)).toBeCloseTo(320, 6);
    expect(junction(20)).toBeCloseTo(450 - 130 / Math.E, 6);
    expect(junction(1e4)).toBeCloseTo(450, 6);
  });
});
