/**
 * The motor and its gears as they came: held to makers' sheets where the same figures are published, and to a toy
 * that is run by brute force and then identified from what its owner would have measured.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { InputId } from '../../dossier/facts/quantities.ts';
import { ROVER, ROVER_LAYOUT } from '../drive.fixture.ts';
import type { Sum } from '../sum.ts';
import { routeTaken, strayNames, type Values, withSums } from '../testing.ts';
import { driveSums } from './drive.ts';
import { driveMotorSums } from './drive-motor.ts';
import { heatSums } from './heat.ts';
import { DRIVE_IDS, HEAT_IDS } from './ids.ts';
import { packSums } from './pack.ts';

const RPM = (2 * Math.PI) / 60;
const G = 9.80665;
/** What the routes of the ratio and the constant may rest on comes first, so that no later route is taken for want of it. */
const FIRST = [
  'pack.toyFull',
  'pack.toyResistance',
  'drive.toyCurrent',
  'drive.resistance',
  'drive.noLoadCurrent',
  'drive.ratio',
];
const ALL = { ...packSums, ...driveSums } as Readonly<Record<string, Sum>>;
const SUMS: Readonly<Record<string, Sum>> = {
  ...Object.fromEntries(FIRST.map((id) => [id, ALL[id] as Sum])),
  ...driveMotorSums,
};

const motor = (values: Values, assumed: readonly InputId[] = []) => withSums(SUMS, values, ROVER_LAYOUT, assumed);

describe('sums of drive and heat', () => {
  it('stand in the order of their ids', () => {
    expect(Object.keys(driveSums).toSorted()).toEqual([...DRIVE_IDS].toSorted());
    expect(Object.keys(heatSums).toSorted()).toEqual([...HEAT_IDS].toSorted());
  });

  it.each(Object.entries({ ...driveSums, ...heatSums }))('%s shows in its formula just what it reads', (_, sum) => {
    expect(strayNames(sum, ROVER_LAYOUT)).toEqual([]);
  });
});

describe('the motor constant', () => {
  /** FAULHABER 1331 T … SR and 0816 … SR data sheets: volts, ohms, no-load amperes and rpm; torque constant in N·m/A. */
  it.each([
    ['1331 006', 6, 2.83, 0.022, 10600, 5.35e-3],
    ['1331 012', 12, 13.7, 0.0105, 9900, 11.4e-3],
    ['1331 024', 24, 52.9, 0.0055, 10400, 21.8e-3],
    ['0816 003', 3, 5.4, 0.016, 13250, 2.11e-3],
    ['0816 012', 12, 101.8, 0.0039, 12600, 8.8e-3],
  ])('follows from the no-load row of %s within a hundredth of the sheet', (_, volts, ohms, idle, rpm, constant) => {
    const found = motor({
      'motor.resistance': ohms,
      'motor.noLoadCurrent': idle,
      'motor.noLoadVoltage': volts,
      'motor.noLoadSpeed': rpm * RPM,
    });
    expect((found['drive.constant'] as number) / constant).toBeCloseTo(1, 2);
  });

  /** Catalogue rows of toy motors (Mabuchi, from memory): the stall torque there is below what the speed promises. */
  it.each([
    ['FA-130RA-2270', 1.5, 0.2, 2.2, 9100, 2.55e-3, 0.109],
    ['RS-540SH-6527', 7.2, 2.4, 70, 23400, 0.196, 0.0215],
  ])('of %s disagrees between torque and speed as the catalogue does', (_, volts, idle, stall, rpm, torque, gap) => {
    const found = motor({
      'motor.stallCurrent': stall,
      'motor.stallVoltage': volts,
      'motor.stallTorque': torque,
      'motor.noLoadCurrent': idle,
      'motor.noLoadVoltage': volts,
      'motor.noLoadSpeed': rpm * RPM,
    });
    expect((found['drive.constantGap'] as number) / gap).toBeCloseTo(1, 1);
    expect(found['drive.constantGapMost']).toBeGreaterThan(found['drive.constantGap'] as number);
  });
});

/** Runs a toy on its full pack until its speed settles: torque of the motor against that of the floor, by bisection. */
function topSpeed(toy: {
  k: number;
  ohms: number;
  idle: number;
  ratio: number;
  mass: number;
  rolling: number;
}): number {
  const { k, ohms, idle, ratio, mass, rolling } = toy;
  const radius = (ROVER['toy.wheelDiameter'] as number) / 2;
  const [volts, source] = [6 * 1.45, 6 * (ROVER['toy.cellResistance'] as number)];
  const spare = (speed: number) => {
    const current = (volts - (k * speed * ratio) / radius) / (ohms + source);
    const push = (k * (current - idle) * ratio * (ROVER['gear.efficiency'] as number)) / radius;
    return push - rolling * mass * G;
  };
  let [low, high] = [0, (volts * radius) / (k * ratio)];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (spare(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Middle of the band of a hall floor in the table of surfaces, on which the top speed is taken to be timed. */
const FLOOR = 0.035;

const toys = fc.record({
  k: fc.double({ min: 0.003, max: 0.008, noNaN: true }),
  ohms: fc.double({ min: 0.4, max: 1.5, noNaN: true }),
  idle: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  ratio: fc.double({ min: 15, max: 35, noNaN: true }),
  mass: fc.double({ min: 0.8, max: 2, noNaN: true }),
});

const bench = (toy: { k: number; ohms: number; idle: number; ratio: number; mass: number }): Values => ({
  'toy.mass': toy.mass,
  'toy.wheelDiameter': ROVER['toy.wheelDiameter'] as number,
  'toy.cellResistance': ROVER['toy.cellResistance'] as number,
  'gear.efficiency': ROVER['gear.efficiency'] as number,
  'motor.resistance': toy.ohms,
  'motor.noLoadCurrent': toy.idle,
  'toy.topSpeed': topSpeed({ ...toy, rolling: FLOOR }),
});

describe('a toy run by brute force', () => {
  it('gives its motor constant back from its top speed and gear ratio', () => {
    fc.assert(
      fc.property(toys, (toy) => {
        const found = motor({ ...bench(toy), 'gear.ratio': toy.ratio });
        expect((found['drive.constant'] as number) / toy.k).toBeCloseTo(1, 6);
      }),
    );
  });

  it('gives its gear ratio back from its no-load test and top speed', () => {
    fc.assert(
      fc.property(toys, (toy) => {
        const volts = 6;
        const test = { 'motor.noLoadVoltage': volts, 'motor.noLoadSpeed': (volts - toy.ohms * toy.idle) / toy.k };
        const found = motor({ ...bench(toy), ...test, 'gear.ratio': 20 }, ['gear.ratio']);
        expect((found['drive.ratio'] as number) / toy.ratio).toBeCloseTo(1, 6);
      }),
    );
  });

  it('shows no disagreement when timed on the road and on the bench, and shows a wrongly counted gear', () => {
    const toy = { k: 0.005, ohms: 0.9, idle: 0.4, ratio: 22, mass: 1.5 };
    const test = { 'motor.noLoadVoltage': 6, 'motor.noLoadSpeed': (6 - 0.9 * 0.4) / 0.005 };
    const gap = (ratio: number) =>
      motor({ ...bench(toy), ...test, 'gear.ratio': ratio })['drive.constantGap'] as number;
    expect(gap(22)).toBeLessThan(1e-6);
    expect(gap(32)).toBeGreaterThan(0.25);
  });
});

describe('an assumption', () => {
  const known: Values = { ...bench({ k: 0.005, ohms: 0.9, idle: 0.4, ratio: 22, mass: 1.5 }), 'gear.ratio': 25 };
  const withTest: Values = { ...known, 'motor.noLoadVoltage': 6, 'motor.noLoadSpeed': 1100 };
  const taken = (values: Values, assumed: readonly InputId[]) =>
    routeTaken(driveSums['drive.ratio'], motor(values, assumed), ROVER_LAYOUT, assumed).name;

  it('of the gear ratio gives way to what speeds tell, and that to a count', () => {
    expect(taken(known, ['gear.ratio', 'toy.topSpeed'])).toBe('usual in toys');
    expect(taken(withTest, ['gear.ratio', 'toy.topSpeed'])).toBe('from the no-load test and the toy’s top speed');
    expect(taken(withTest, ['toy.topSpeed'])).toBe('counted');
  });

  it('never makes two measured constants', () => {
    expect(motor(withTest, ['toy.topSpeed'])['drive.constantGap']).toBeUndefined();
    expect(motor(withTest, ['gear.ratio'])['drive.constantGap']).toBeUndefined();
    expect(motor(withTest)['drive.constantGap']).toBeDefined();
  });

  it('of the ratio hardly moves speed and pull, since the constant follows from it', () => {
    const product = (ratio: number) => {
      const found = motor({ ...known, 'gear.ratio': ratio }, ['gear.ratio']);
      return (found['drive.constant'] as number) * (found['drive.ratio'] as number);
    };
    expect(product(12) / product(40)).toBeCloseTo(1, 9);
  });
});

describe('the winding resistance', () => {
  it('is the measured one, else that of the stall test of a published 12 V kit motor', () => {
    const stall = { 'motor.stallCurrent': 42, 'motor.stallVoltage': 12 };
    expect(motor(stall)['drive.resistance']).toBeCloseTo(0.2857, 4);
    expect(motor({ ...stall, 'motor.resistance': 0.3 })['drive.resistance']).toBe(0.3);
  });

  /** Catalogue rows of the smallest toy cans (Mabuchi, from memory): volts, no-load and stall current. */
  it.each([
    ['FA-130RA-2270', 1.5, 0.2, 2.2],
    ['FA-130RA-18100', 3, 0.15, 2.1],
  ])('of %s lies within what its no-load current alone tells', (_, volts, idle, stall) => {
    const told = (share: number) =>
      motor({ 'motor.ratedVoltage': volts, 'motor.noLoadCurrent': idle, 'motor.noLoadShare': share })[
        'drive.resistance'
      ] as number;
    expect(told(0.07)).toBeLessThan(volts / stall);
    expect(told(0.14)).toBeGreaterThan(volts / stall);
  });

  it('follows from run time, label and rule where only a stopwatch was at hand: 595 mAh in 18 min on 7.2 V', () => {
    const found = motor({
      'toy.capacity': 2520,
      'toy.capacityShare': 0.85,
      'toy.runTime': 1080,
      'motor.ratedVoltage': 7.2,
      'motor.averageShare': 0.2,
      'motor.noLoadShare': 0.1,
    });
    expect(found['drive.toyCurrent']).toBeCloseTo(1.9833, 4);
    // A stall current of 1.9833 A / 20 % = 9.917 A at 7.2 V, and a tenth of it without load.
    expect(found['drive.resistance']).toBeCloseTo(7.2 / 9.9167, 4);
    expect(found['drive.noLoadCurrent']).toBeCloseTo(0.99167, 4);
  });

  it('of two motors on one pack is that of each: twice that of one', () => {
    const values: Values = { 'motor.ratedVoltage': 7.2, 'motor.averageShare': 0.2, 'drive.toyCurrent': 2 };
    const of = (motors: number) => withSums(SUMS, values, { ...ROVER_LAYOUT, motors })['drive.resistance'] as number;
    expect(of(2) / of(1)).toBeCloseTo(2, 12);
  });
});
