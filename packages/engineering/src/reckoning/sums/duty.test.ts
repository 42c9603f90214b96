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

describe('a junction in a stall', () => {
  it('lies between the climb’s temperature and the steady one, nearer to it the longer the stall', () => {
    const junction = (time: number) =>
      at('bridge.junctionStall', {
        'bridge.junctionClimb': 320,
        'heat.localAir': 300,
        'bridge.lossStall': 5,
        'bridge.toAir': 30,
        'set.stallTime': time,
        'bridge.timeConstant': 20,
      });
    expect(junction(1e-9)).toBeCloseTo(320, 6);
    expect(junction(20)).toBeCloseTo(450 - 130 / Math.E, 6);
    expect(junction(1e4)).toBeCloseTo(450, 6);
  });
});
