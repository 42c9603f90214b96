/**
 * The heat of motors and electronics: held to data sheets and worked figures, to a motor warmed step by step, and to
 * the balance of what is made and what is shed.
 */
import { ZERO_CELSIUS as CELSIUS, enclosureHeat } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROVER, ROVER_LAYOUT } from '../drive.fixture.ts';
import { evaluateSum, PLAIN_LAYOUT, routeTaken, type Values, withSums } from '../testing.ts';
import { heatSums } from './heat.ts';

const ALPHA = 0.00393;

/** Currents and losses that belong to other subjects, as the rover's own come out. */
const LOADS: Values = {
  'drive.resistance': 0.9,
  'drive.currentCruise': 0.73,
  'drive.currentClimb': 2.67,
  'drive.blockedCurrent': 7.24,
  'bridge.ripple': 0.26,
  'bridge.threshold': 0,
  'bridge.slope': 0.03,
  'bridge.lossClimb': 0.38,
  'bridge.lossSteer': 0,
  'pack.full': 8.4,
  'supply.loadMean': 3.9,
  'supply.heat': 0.45,
};

const heat = (changes: Values = {}, layout = ROVER_LAYOUT) =>
  withSums(heatSums, { ...ROVER, ...LOADS, ...changes }, layout);
const of = (values: Values, id: keyof typeof heatSums): number => values[id] as number;
const cool = (changes: Values): Values => ({ 'bridge.ripple': 0, ...changes });

describe('the winding of the drive motor', () => {
  it('reaches its published limit of 85 °C at its published rated current: 5.4 Ω, 0.37 A, 20 + 48 K/W', () => {
    // FAULHABER 0816 003 SR data sheet, rated at an ambient of 22 °C.
    const rated = heat(
      cool({
        'drive.resistance': 5.4,
        'drive.currentCruise': 0.37,
        'motor.windingToCan': 20,
        'motor.canToAir': 48,
        'day.hottest': CELSIUS + 22,
      }),
    );
    expect(Math.abs(of(rated, 'heat.windingCruise') - CELSIUS - 85)).toBeLessThan(3);
    expect(rated['heat.motorResistance']).toBe(68);
  });

  it('counts the ripple: half an ampere peak to peak adds a twelfth of its square', () => {
    const rippling = heat({ 'bridge.ripple': 0.5, 'drive.currentCruise': 0.7 });
    const smooth = heat(cool({ 'drive.currentCruise': Math.sqrt(0.7 ** 2 + 0.25 / 12) }));
    expect(of(rippling, 'heat.windingCruise')).toBeCloseTo(of(smooth, 'heat.windingCruise'), 9);
    expect(of(rippling, 'heat.windingClimb')).toBeGreaterThan(
      of(heat(cool({ 'drive.currentCruise': 0.7 })), 'heat.windingClimb'),
    );
  });

  it('after the climb and the stall is that of two bodies warmed step by step', () => {
    const found = heat();
    const air = ROVER['day.hottest'] as number;
    const [winding, can] = [0.012 * 385, (0.07 - 0.012) * 450];
    // Steady driving first: winding and can share the rise as their resistances do.
    let hot = of(found, 'heat.windingCruise');
    let body = air + ((hot - air) * 14) / 19;
    const warm = (current: number, time: number) => {
      const step = 0.002;
      for (let t = 0; t < time - step / 2; t += step) {
        const made = current ** 2 * 0.9 * (1 + ALPHA * (hot - CELSIUS - 20));
        const [inner, outer] = [(hot - body) / 5, (body - air) / 14];
        hot += ((made - inner) / winding) * step;
        body += ((inner - outer) / can) * step;
      }
    };
    warm(Math.sqrt(2.67 ** 2 + 0.26 ** 2 / 12), 120);
    expect(of(found, 'heat.windingClimb')).toBeCloseTo(hot, 1);
    // The stall is taken from a can as warm as after a climb without end, which is the careful side.
    body = air + ((hot - air) * 14) / 19;
    warm(7.24, 1.5);
    expect(of(found, 'heat.windingStall')).toBeCloseTo(hot, 1);
  });

  it('stays where it was in a climb of no time, and settles in a climb without end', () => {
    const short = heat({ 'want.climbTime': 0 });
    expect(of(short, 'heat.windingClimb')).toBeCloseTo(of(short, 'heat.windingCruise'), 9);
    const current = 1.4;
    const long = heat({ 'want.climbTime': 36000, 'drive.currentClimb': current });
    const steady = heat({ 'drive.currentCruise': current });
    expect(of(long, 'heat.windingClimb')).toBeCloseTo(of(steady, 'heat.windingCruise'), 3);
  });

  it('warms at the first instant of a stall as its copper takes up the heat: 52.4 J/s·Ω on 0.9 Ω into 4.62 J/K', () => {
    expect(of(heat(), 'heat.stallRate')).toBeCloseTo((52.4176 * 0.9) / 4.62, 6);
    const early = heat({ 'set.stallTime': 1e-4, 'want.climbTime': 0, 'drive.currentCruise': 1e-6, 'bridge.ripple': 0 });
    const rate = (of(early, 'heat.windingStall') - of(early, 'heat.windingClimb')) / 1e-4;
    // Air at 303 K, so the copper is warmer than 20 °C by 9.85 K.
    expect(rate / (of(early, 'heat.stallRate') * (1 + ALPHA * 9.85))).toBeCloseTo(1, 3);
  });

  it('is shown as burnt, a number, where warming copper would run away, and stays so', () => {
    const burning = heat({ 'drive.currentCruise': 9, 'drive.currentClimb': 20, 'want.climbTime': 36000 });
    for (const id of ['heat.windingCruise', 'heat.windingClimb', 'heat.windingStall'] as const) {
      expect(of(burning, id)).toBe(473);
      expect(of(burning, id)).toBeGreaterThan(ROVER['motor.windingLimit'] as number);
    }
  });

  it('is never cooler for more current, more time or hotter air', () => {
    const drawn = fc.record({
      'drive.currentClimb': fc.double({ min: 0.5, max: 6, noNaN: true }),
      'want.climbTime': fc.double({ min: 1, max: 600, noNaN: true }),
      'day.hottest': fc.double({ min: 280, max: 315, noNaN: true }),
    });
    fc.assert(
      fc.property(
        drawn,
        fc.constantFrom(...(['drive.currentClimb', 'want.climbTime', 'day.hottest'] as const)),
        (at, more) => {
          const base = heat({ ...at, 'drive.currentCruise': 0.2 });
          const worse = heat({ ...at, 'drive.currentCruise': 0.2, [more]: at[more] * 1.05 });
          for (const id of ['heat.windingClimb', 'heat.windingStall'] as const) {
            expect(of(worse, id)).toBeGreaterThanOrEqual(of(base, id));
          }
        },
      ),
    );
  });

  it('takes a motor lighter than twice its guessed winding for half can', () => {
    const odd = heat({ 'motor.windingMass': 0.06, 'motor.canMass': 0.07 });
    expect(of(odd, 'heat.motorCapacity')).toBeCloseTo(0.06 * 385 + 0.035 * 450, 9);
  });
});

describe('the steering motor at its stop', () => {
  it('draws what the catalogue says of its stall: 2.10 A at 3 V', () => {
    // FA-130RA-18100, Mabuchi catalogue, from memory; R from its stall row.
    const values = { 'pack.full': 3, 'bridge.threshold': 0, 'bridge.slope': 0, 'steer.resistance': 3 / 2.1 };
    expect(evaluateSum(heatSums['heat.steerCurrent'], values)).toBeCloseTo(2.1, 9);
  });

  it('held for ever settles where the worked figure does: 6 V on 5 Ω and 12 K/W in 25 °C comes to 92.3 °C', () => {
    const held = evaluateSum(heatSums['heat.steerHeld'], {
      'pack.full': 12,
      'set.holdDuty': 0.5,
      'bridge.threshold': 0,
      'steer.resistance': 5,
      'steer.toAir': 12,
      'day.hottest': CELSIUS + 25,
    });
    expect(held - CELSIUS).toBeCloseTo(92.3, 1);
  });

  const full = (time: number, duty = 1) =>
    heat({ 'set.holdTime': time, 'set.holdDuty': duty, 'steer.resistance': 4, 'pack.full': 6, 'steer.toAir': 35 });

  it('at full drive warms at first by its heat over its copper, 9 W into 1.54 J/K, and ends no hotter than held so for ever', () => {
    const start = ROVER['day.hottest'] as number;
    expect((of(full(0.01), 'heat.steerFull') - start) / 0.01).toBeCloseTo(9 / 1.54, 2);
    expect(of(full(600), 'heat.steerFull')).toBeCloseTo(of(full(600), 'heat.steerHeld'), 9);
  });

  it('is hotter for a longer hold and for more holding duty', () => {
    const times = [0.5, 2, 8, 30].map((time) => of(full(time), 'heat.steerFull'));
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    const duties = [0.2, 0.4, 0.7, 1].map((duty) => of(full(1, duty), 'heat.steerHeld'));
    expect(new Set(duties).size).toBe(4);
    expect(duties).toEqual(duties.toSorted((a, b) => a - b));
  });

  it('stays at the temperature of the air where the bridge leaves it nothing', () => {
    const eaten = heat({ 'bridge.threshold': 9 });
    for (const id of ['heat.steerFull', 'heat.steerHeld'] as const) expect(of(eaten, id)).toBe(ROVER['day.hottest']);
    expect(of(eaten, 'heat.steerCurrent')).toBe(0);
  });

  it('is asked about only where steering is on or off', () => {
    expect(heat({}, PLAIN_LAYOUT)['heat.steerHeld']).toBeUndefined();
    expect(heat()['heat.steerHeld']).toBeDefined();
  });
});

describe('the enclosure', () => {
  it('sheds through its wall just what is made in it and what the sun adds', () => {
    const drawn = fc.record({
      'enclosure.length': fc.double({ min: 0.08, max: 0.3, noNaN: true }),
      'enclosure.width': fc.double({ min: 0.05, max: 0.2, noNaN: true }),
      'enclosure.height': fc.double({ min: 0.03, max: 0.12, noNaN: true }),
      'day.sun': fc.double({ min: 0, max: 1000, noNaN: true }),
    });
    fc.assert(
      fc.property(drawn, (changes) => {
        const found = heat(changes);
        const shed = enclosureHeat({
          length: changes['enclosure.length'],
          width: changes['enclosure.width'],
          height: changes['enclosure.height'],
          emissivity: 0.9,
          freeBottom: 0,
          wall: of(found, 'heat.boxWall'),
          ambient: ROVER['day.hottest'] as number,
        });
        expect(shed).toBeCloseTo(of(found, 'heat.boxPower') + of(found, 'heat.sunPower'), 6);
      }),
    );
  });

  it('takes 15 W from full sun on a flat black lid of 160 by 100 mm, and more with sides', () => {
    const black = { 'enclosure.length': 0.16, 'enclosure.width': 0.1, 'enclosure.absorptivity': 0.95, 'day.sun': 1000 };
    expect(of(heat({ ...black, 'enclosure.height': 1e-6 }), 'heat.sunPower')).toBeCloseTo(15.2, 3);
    expect(of(heat({ ...black, 'enclosure.height': 0.06 }), 'heat.sunPower')).toBeGreaterThan(15.2);
  });

  it('is 15 K warmer inside than out in the shade, 30 K in the sun, within ten, as the rule of the trade has it', () => {
    const rise = (sun: number) => of(heat({ 'day.sun': sun }), 'heat.boxAir') - (ROVER['day.hottest'] as number);
    expect(Math.abs(rise(0) - 15)).toBeLessThan(10);
    expect(Math.abs(rise(800) - 30)).toBeLessThan(10);
  });

  it('warms its air 1.9 times as much as its wall in the shade, as a published cabinet does, and less in the sun', () => {
    const air = ROVER['day.hottest'] as number;
    const ratio = (values: Values) => (of(values, 'heat.boxAir') - air) / (of(values, 'heat.boxWall') - air);
    expect(ratio(heat())).toBeCloseTo(16.7 / 8.77, 1);
    expect(ratio(heat({ 'day.sun': 1000 }))).toBeLessThan(ratio(heat()) - 0.2);
  });

  it('is at the temperature of the air where nothing warms it', () => {
    const cold = heat({ 'heat.boxPower': 0, 'computer.busyPower': 0 });
    for (const id of ['heat.boxWall', 'heat.boxAir', 'heat.board'] as const) {
      expect(of(cold, id)).toBeCloseTo(ROVER['day.hottest'] as number, 9);
    }
  });

  it('makes a number of a heat that no such box can shed', () => {
    const hopeless = heat({ 'heat.boxPower': 900 });
    expect(of(hopeless, 'heat.boxWall')).toBe((ROVER['day.hottest'] as number) + 150);
    expect(of(hopeless, 'heat.board')).toBeGreaterThan(ROVER['computer.temperatureMax'] as number);
  });

  it('adds every channel of the bridge to its heat', () => {
    const one = of(heat(), 'heat.boxPower');
    expect(one).toBeCloseTo(3.9 + 0.45 + 0.38, 9);
    expect(of(heat({}, { ...ROVER_LAYOUT, channels: 4 }), 'heat.boxPower') - one).toBeCloseTo(3 * 0.38, 9);
  });

  it('where there is none leaves the electronics in the open air', () => {
    const open = { ...ROVER_LAYOUT, enclosure: false };
    const values = { 'day.hottest': 303, 'heat.boxAir': 330 };
    expect(evaluateSum(heatSums['heat.localAir'], values, open)).toBe(303);
    expect(routeTaken(heatSums['heat.localAir'], values).name).toBe('in the enclosure');
    expect(evaluateSum(heatSums['heat.localAir'], values)).toBe(330);
  });

  it('of PLA is called soft at 49 °C: 10 K below the 59.1 °C of a maker’s sheet', () => {
    expect(of(heat(), 'heat.wallMost') - CELSIUS).toBeCloseTo(49.1, 6);
  });
});
