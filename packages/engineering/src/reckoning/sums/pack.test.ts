/**
 * The sums of the pack, its use and its charging, held to worked examples and to energy and charge balances that the
 * sums themselves do not use.
 */
import { CHEMISTRIES, CHEMISTRY_FACTS, restVoltage, ZERO_CELSIUS } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values } from '../testing.ts';
import { PACK_IDS } from './ids.ts';
import { packSums } from './pack.ts';

const AH = 3600;
const layout = PLAIN_LAYOUT;
const at = (id: keyof typeof packSums, values: Values, changes: Partial<typeof layout> = {}) =>
  evaluateSum(packSums[id], values, { ...layout, ...changes });

describe('every sum of the pack', () => {
  it.each(PACK_IDS)('%s shows in its formula exactly what it reads', (id) => {
    expect(strayNames(packSums[id])).toEqual([]);
  });
});

describe('pack voltages', () => {
  it('a full three-cell lithium pack stands at 12.6 V, two iron phosphate cells at 7.3 V, six nickel cells at 8.7 V', () => {
    // Cell voltages: charge ends at 4.20, 3.65 and 1.45 V (makers' sheets as kept in the chemistry table).
    expect(at('pack.full', {}, { cells: 3 })).toBeCloseTo(12.6, 6);
    expect(at('pack.full', {}, { cells: 2, chemistry: 'lfp' })).toBeCloseTo(7.3, 6);
    expect(at('pack.full', {}, { cells: 6, chemistry: 'nimh' })).toBeCloseTo(8.7, 6);
  });

  it.each(CHEMISTRIES)('of %s rises from cut-off over nominal to full', (chemistry) => {
    const [cut, nominal, full] = (['pack.cutOff', 'pack.nominal', 'pack.full'] as const).map((id) =>
      at(id, {}, { chemistry, cells: 3 }),
    );
    expect(cut).toBeLessThan(nominal as number);
    expect(nominal).toBeLessThanOrEqual(full as number);
  });

  it('the cell count hides in the label: four iron phosphate cells are nearer to a three-cell than to a four-cell lithium pack', () => {
    // Trap 1 of the trade: chemistry changes what a cell count means.
    const lfp = at('pack.nominal', {}, { cells: 4, chemistry: 'lfp' });
    const [three, four] = [3, 4].map((cells) => at('pack.nominal', {}, { cells })) as [number, number];
    expect(Math.abs(lfp - three)).toBeLessThan(Math.abs(lfp - four));
  });
});

describe('pack resistance', () => {
  const values: Values = { 'pack.cellResistance': 0.02, 'pack.cyclesDone': 0, 'pack.life': 500 };

  it('is the cells in series at 25 °C', () => {
    expect(at('pack.resistance', { ...values, 'day.usual': ZERO_CELSIUS + 25 }, { cells: 3 })).toBeCloseTo(0.06, 9);
  });

  it('about doubles at freezing point', () => {
    // Arrhenius with 20 kJ/mol: factor 2.093 at 0 °C, worked by hand from the published form.
    const cold = at('pack.resistanceCold', { ...values, 'day.coldest': ZERO_CELSIUS }, { cells: 1 });
    expect(cold / 0.02).toBeCloseTo(2.093, 2);
  });

  it('doubles over the cycles of its life', () => {
    const worn = { ...values, 'pack.cyclesDone': 500, 'day.usual': ZERO_CELSIUS + 25 };
    expect(at('pack.resistance', worn, { cells: 1 })).toBeCloseTo(0.04, 9);
  });
});

describe('run time', () => {
  const values: Values = { 'pack.realCapacity': 2 * AH, 'pack.usableShare': 0.75, 'pack.currentMean': 0.5 };

  it('is three hours from 2 Ah, three quarters of it usable, at half an ampere', () => {
    expect(at('pack.runTime', values)).toBeCloseTo(3 * 3600, 6);
  });

  it('is nothing where the climb leaves no usable charge', () => {
    expect(at('pack.runTime', { ...values, 'pack.usableShare': 0 })).toBe(0);
  });

  it('counts a day of standing and driving by its shares', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (moving, stand) => {
          const mean = at('pack.currentMean', {
            'want.moving': moving,
            'pack.currentCruise': stand * 3,
            'pack.currentStand': stand,
          });
          // Charge balance over an hour: what was drawn while driving and while standing.
          expect(mean * 3600).toBeCloseTo(moving * 3600 * stand * 3 + (1 - moving) * 3600 * stand, 6);
        },
      ),
    );
  });
});

describe('pack current', () => {
  it('standing counts the quiescent current of every bridge board', () => {
    const stand = (bridges: number) =>
      at('pack.currentStand', { 'supply.inputPower': 7.4, 'pack.nominal': 7.4, 'bridge.quiescent': 0.04 }, { bridges });
    expect(stand(1)).toBeCloseTo(1.04, 9);
    expect(stand(3)).toBeCloseTo(1.12, 9);
  });

  const cruise: Values = {
    'pack.currentStand': 0.8,
    'drive.dutyCruise': 0.4,
    'duty.applied': 0.7,
    'drive.currentCruise': 1.5,
  };

  it('on the level is duty times motor current, so that leads and bridge take their energy from the pack too', () => {
    const current = at('pack.currentCruise', cruise, { motors: 2 });
    // Energy balance at 7.4 V: what leaves the pack for the drive is 2 motors of 1.5 A at 0.4 of its voltage.
    expect((current - 0.8) * 7.4).toBeCloseTo(2 * 1.5 * 0.4 * 7.4, 9);
  });

  it('in a stall counts an on/off steering motor at its stop, and a servo with the board', () => {
    const values: Values = {
      'drive.stallCurrent': 4,
      'duty.applied': 0.5,
      'pack.currentStand': 0.8,
      'heat.steerCurrent': 1.5,
    };
    expect(at('pack.currentStall', values, { motors: 2, steering: 'on-off' })).toBeCloseTo(4 + 0.8 + 1.5, 9);
    expect(at('pack.currentStall', values, { motors: 2, steering: 'servo' })).toBeCloseTo(4 + 0.8, 9);
  });

  it('on the level takes no more than the duty ceiling lets through', () => {
    expect(at('pack.currentCruise', { ...cruise, 'drive.dutyCruise': 1.4 })).toBeCloseTo(0.8 + 0.7 * 1.5, 9);
  });
});

describe('usable charge', () => {
  const mild: Values = {
    'set.reserve': 0.2,
    'pack.cutOff': 6,
    'pack.currentClimb': 0,
    'pack.resistance': 0.1,
    'day.usual': ZERO_CELSIUS + 25,
  };

  it('is what the reserve leaves where nothing sags', () => {
    expect(at('pack.usableShare', mild)).toBeCloseTo(0.8, 9);
  });

  it('ends where the loaded voltage meets the cut-off, as a search along the charge finds', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 12, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        (current, resistance) => {
          const share = at('pack.usableShare', {
            ...mild,
            'pack.currentClimb': current,
            'pack.resistance': resistance,
          });
          // Brute force: walk down from full until the loaded pack is at the cut-off or the reserve.
          const steps = 20_000;
          let charge = 1;
          for (let i = steps; i >= 0; i--) {
            charge = i / steps;
            if (charge <= 0.2 || 2 * restVoltage({ chemistry: 'lipo', charge }) - current * resistance <= 6) break;
          }
          expect(share).toBeCloseTo(1 - charge, 3);
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('usable charge of cells whose capacity is printed for a slow discharge', () => {
  const share = (chemistry: 'lead' | 'alkaline', capacity: number, current: number) =>
    at(
      'pack.usableShare',
      {
        'set.reserve': 0,
        'pack.cutOff': 0,
        'pack.currentClimb': 0,
        'pack.resistance': 0,
        'day.usual': ZERO_CELSIUS + 25,
        'pack.currentMean': current,
        'pack.realCapacity': capacity * AH,
      },
      { chemistry, cells: 1 },
    );

  it('is that of the encyclopedia’s lead battery: 100 Ah at 20 h give 10 A for 8.7 hours, 87 Ah', () => {
    expect(share('lead', 100, 10)).toBeCloseTo(0.87, 2);
  });

  it('of lead emptied in an hour is little more than half, as its makers say, and never more than is printed', () => {
    expect(share('lead', 4.5, 4.5 * 0.55)).toBeGreaterThan(0.5);
    expect(share('lead', 4.5, 4.5 * 0.55)).toBeLessThan(0.65);
    expect(share('lead', 4.5, 0.01)).toBe(1);
  });

  it('of alkaline cells about halves from a tenth of an ampere to one', () => {
    expect(share('alkaline', 2.5, 1) / share('alkaline', 2.5, 0.1)).toBeCloseTo(0.5, 1);
  });
});

describe('charging', () => {
  const charge: Values = {
    'pack.realCapacity': 2.2 * AH,
    'pack.chargeCurrent': 1.1,
    'charger.tailCurrent': 0.11,
    'pack.resistance': 0.08,
    'pack.full': 8.4,
    'set.reserve': 0,
  };

  it('takes longer than the charge over the current, and less than with the whole charge at half the current', () => {
    const time = at('pack.chargeTime', charge);
    expect(time).toBeGreaterThan(2 * 3600);
    expect(time).toBeLessThan(4 * 3600);
  });

  it('is shorter from a larger reserve', () => {
    const times = [0, 0.2, 0.5].map((reserve) => at('pack.chargeTime', { ...charge, 'set.reserve': reserve }));
    expect(times).toEqual([...times].sort((a, b) => b - a));
  });

  it('takes nickel cells the charge over the current and a quarter more, as their efficiency of 80 % asks', () => {
    const time = at('pack.chargeTime', { ...charge, 'pack.chargeCurrent': 0.22 }, { chemistry: 'nimh', cells: 6 });
    expect(time).toBeCloseTo((10 / 0.8) * 3600, 0);
  });

  it('is limited by its source: a 5 W port feeds a two-cell pack half an ampere at the most', () => {
    const current = at('pack.chargeCurrent', {
      'charger.current': 2,
      'charger.sourcePower': 5,
      'charger.efficiency': 0.85,
      'pack.full': 8.4,
    });
    expect(current).toBeCloseTo((5 * 0.85) / 8.4, 9);
  });

  it('does not apply to cells that must not be charged', () => {
    for (const id of ['pack.chargeTime', 'pack.chargeCurrent', 'pack.dayShare'] as const) {
      expect(packSums[id].when?.({ ...layout, chemistry: 'alkaline' }, () => true)).toBe(false);
    }
    expect(CHEMISTRY_FACTS.alkaline.charge).toBeUndefined();
  });
});

describe('short circuit', () => {
  it('of a three-cell racing pack is about 500 A', () => {
    // Worked figure: 12.6 V over 3 × 5 mΩ and 10 mΩ of leads, 504 A.
    expect(at('pack.short', { 'pack.cellResistance': 0.005 }, { cells: 3 })).toBeCloseTo(504, 0);
  });
});
