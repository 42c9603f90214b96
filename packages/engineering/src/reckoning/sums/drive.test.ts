/**
 * The drive under load and stalled: held to worked figures, to a circuit solved by brute force, and to itself by
 * another way round, such as a slope at the torque limit, on which the vehicle must just come to a stand.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROVER, ROVER_LAYOUT } from '../drive.fixture.ts';
import { evaluateSum, PLAIN_LAYOUT, type Values, withSums } from '../testing.ts';
import { driveSums } from './drive.ts';
import { dutySums } from './duty.ts';
import { packSums } from './pack.ts';
import { supplySums } from './supply.ts';

const DEGREE = Math.PI / 180;
const G = 9.80665;
const SUMS = { ...packSums, ...driveSums, ...dutySums, ...supplySums };

const rover = (changes: Values = {}, layout = ROVER_LAYOUT) => withSums(SUMS, { ...ROVER, ...changes }, layout);
const of = (values: Values, id: keyof typeof SUMS): number => values[id] as number;

/** Rovers of all kinds that can move: masses, pack resistances, duties, bridges, motors. */
const changes = fc.record({
  'mass.total': fc.double({ min: 1, max: 4, noNaN: true }),
  'pack.cellResistance': fc.double({ min: 0.005, max: 0.08, noNaN: true }),
  'set.dutyCeiling': fc.double({ min: 0.6, max: 1, noNaN: true }),
  'bridge.onResistance': fc.double({ min: 0.01, max: 0.3, noNaN: true }),
  'motor.resistance': fc.double({ min: 0.4, max: 1.5, noNaN: true }),
  'want.slope': fc.double({ min: 0, max: 0.12, noNaN: true }),
});
const motorsOf = fc.constantFrom(
  { motors: 1, motorsPerChannel: 1 },
  { motors: 2, motorsPerChannel: 2 },
  { motors: 4, motorsPerChannel: 2 },
);

describe('the pull that the ground asks for', () => {
  /** Worked cases: 3 kg, f 0.02 on a 10 % grade; 3 kg, f 0.10 on 15°. */
  it.each([
    [0.02, Math.atan(0.1), 3.513],
    [0.1, 15 * DEGREE, 10.456],
  ])('with f = %f on %f rad is %f N', (rolling, slope, force) => {
    const climb = { 'ground.rollingWorst': rolling, 'mass.total': 3, 'want.slope': slope };
    expect(evaluateSum(driveSums['drive.forceClimb'], climb)).toBeCloseTo(force, 3);
  });

  it('comes back from the torque of the motors through gears and wheels', () => {
    fc.assert(
      fc.property(changes, motorsOf, (change, layout) => {
        const found = rover(change, { ...ROVER_LAYOUT, ...layout });
        const push = (of(found, 'drive.torqueClimb') * layout.motors * 22 * 0.65) / (0.085 / 2);
        expect(push / of(found, 'drive.forceClimb')).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the current', () => {
  it('on the climb is 7 % more than the pull alone asks of cold ferrite magnets, 40 K warmer', () => {
    const load = { 'drive.torqueClimb': 0.02, 'drive.constant': 0.005, 'drive.noLoadCurrent': 0 };
    const warm = (magnet: 'ferrite' | 'neodymium') =>
      evaluateSum(driveSums['drive.currentClimb'], load, { ...PLAIN_LAYOUT, magnet });
    expect(warm('ferrite')).toBeCloseTo(4 / 0.92, 9);
    expect(warm('neodymium')).toBeCloseTo(4 / 0.956, 9);
  });

  it('of a published motor at stall and its torque are those of the sheet: 6 V, 1.7 Ω, 2.0 mN·m/A', () => {
    // A university kit motor, course page 2008: 3.5 A and 7.0 mN·m in its system.
    const bare: Values = {
      'pack.full': 6,
      'pack.resistance': 0,
      'drive.resistance': 1.7,
      'drive.constant': 2e-3,
      'drive.noLoadCurrent': 0,
      'duty.applied': 1,
      'bridge.threshold': 0,
      'bridge.slope': 0,
      'wiring.pack.resistance': 0,
      'wiring.bridge.resistance': 0,
      'wiring.motor.resistance': 0,
    };
    const current = evaluateSum(driveSums['drive.stallCurrent'], bare);
    const torque = evaluateSum(driveSums['drive.stallTorque'], { ...bare, 'drive.stallCurrent': current });
    expect(current).toBeCloseTo(3.53, 2);
    expect(torque).toBeCloseTo(7.06e-3, 5);
  });

  it('at stall balances the circuit, found by halving: what the duty leaves of the sagging pack drops along its way', () => {
    fc.assert(
      fc.property(changes, motorsOf, (change, layout) => {
        const found = rover(change, { ...ROVER_LAYOUT, ...layout });
        const duty = change['set.dutyCeiling'];
        const shared = of(found, 'pack.resistance') + 0.02 + 0.005;
        const own = change['motor.resistance'] + 0.01 + layout.motorsPerChannel * change['bridge.onResistance'];
        let [low, high] = [0, 100];
        for (let i = 0; i < 100; i++) {
          const middle = (low + high) / 2;
          const bus = of(found, 'pack.full') - shared * layout.motors * duty * middle;
          if (duty * bus > own * middle) low = middle;
          else high = middle;
        }
        expect(of(found, 'drive.stallCurrent') / low).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of a motor blocked alone is that of a stall where it is the only one, and more where others share the pack', () => {
    fc.assert(
      fc.property(changes, motorsOf, (change, layout) => {
        const found = rover(change, { ...ROVER_LAYOUT, ...layout });
        const [alone, all] = [of(found, 'drive.blockedCurrent'), of(found, 'drive.stallCurrent')];
        if (layout.motors === 1) expect(alone).toBeCloseTo(all, 12);
        else expect(alone).toBeGreaterThan(all);
        // Kirchhoff round the one loop: the pack sags under the mean of this motor's pulses alone.
        const duty = change['set.dutyCeiling'];
        const bus = of(found, 'pack.full') - (of(found, 'pack.resistance') + 0.025) * duty * alone;
        expect(duty * bus).toBeCloseTo(alone * (change['motor.resistance'] + 0.01 + change['bridge.onResistance']), 9);
      }),
    );
  });

  it('at stall is nothing behind a bridge that eats the whole pulse', () => {
    const eaten = rover({ 'bridge.threshold': 5, 'set.dutyCeiling': 0.5 });
    expect(of(eaten, 'drive.stallCurrent')).toBe(0);
    expect(of(eaten, 'drive.stallTorque')).toBe(0);
    expect(of(eaten, 'drive.torqueSlope')).toBeCloseTo(-Math.atan(0.06), 9);
  });

  it('reversed at top speed is near twice that of a stall where nothing holds the motor back', () => {
    const free = rover({ 'motor.noLoadCurrent': 1e-6, 'ground.rolling': 1e-6, 'set.dutyCeiling': 1 });
    // Top speed is that of the nominal pack, the reversal that of a full one: 7.4 V on 8.4 V, magnets warm by 20 K.
    const expected = 1 + 7.4 / 8.4 / (1 - 0.002 * 20);
    expect(of(free, 'drive.reversingCurrent') / of(free, 'drive.stallCurrent')).toBeCloseTo(expected, 3);
  });
});

describe('the duty and the speed', () => {
  it('answer one another: at the duty a climb needs, it climbs with the wanted speed', () => {
    fc.assert(
      fc.property(changes, motorsOf, (change, layout) => {
        const at = { ...ROVER_LAYOUT, ...layout };
        const duty = of(rover(change, at), 'drive.dutyClimb');
        fc.pre(duty <= 1);
        const climbed = rover({ ...change, 'set.dutyCeiling': duty }, at);
        expect(of(climbed, 'drive.speedClimb')).toBeCloseTo(ROVER['want.speed'] as number, 9);
      }),
    );
  });

  it('agree on a climb that no duty can hold: above 100 %, exactly where full duty is slower than wanted', () => {
    fc.assert(
      fc.property(changes, fc.double({ min: 0.1, max: 0.7, noNaN: true }), (change, slope) => {
        const full = rover({ ...change, 'want.slope': slope, 'set.dutyCeiling': 1 });
        const slower = of(full, 'drive.speedClimb') < (ROVER['want.speed'] as number) - 1e-9;
        // A pack past its strongest point pulls harder at a lower duty, so a slow full duty does not rule out a lesser one.
        if (of(full, 'drive.dutyClimb') > 1 + 1e-9) expect(slower).toBe(true);
        if (!slower) expect(of(full, 'drive.dutyClimb')).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });

  it('are those of a drive run second by second on the level until it settles', () => {
    const found = rover({ 'set.dutyCeiling': 0.8 });
    // A warm winding and magnet as the sum takes them: copper 30 K and ferrite 20 K above 20 °C.
    const [ohms, k] = [0.9 * (1 + 0.00393 * 30), of(found, 'drive.constant') * (1 - 0.002 * 20)];
    const shared = of(found, 'pack.resistance') + 0.025;
    const radius = 0.085 / 2;
    let speed = 0;
    for (let i = 0; i < 200_000; i++) {
      const current = (0.8 * 7.4 - (k * speed * 22) / radius) / (ohms + 0.01 + 0.03 + 0.8 ** 2 * shared);
      const push = (k * (current - 0.4) * 22 * 0.65) / radius;
      speed += ((push - 0.03 * 1.9 * G) / 1.9) * 1e-4;
    }
    expect(of(found, 'drive.topSpeed')).toBeCloseTo(speed, 6);
  });

  it('need the power that the road takes, with the losses of gears, winding and friction on top', () => {
    const found = rover();
    const road = of(found, 'drive.forceLevel') * 0.6;
    const [current, k] = [of(found, 'drive.currentCruise'), of(found, 'drive.constant') * 0.96];
    const losses =
      current ** 2 * 0.9 * (1 + 0.00393 * 30) + k * 0.4 * ((0.6 * 22) / (0.085 / 2)) + road * (1 / 0.65 - 1);
    expect(of(found, 'drive.powerCruise')).toBeCloseTo(road + losses, 9);
  });
});

describe('the steepest slope', () => {
  it('by torque is where the vehicle just comes to a stand', () => {
    fc.assert(
      fc.property(changes, motorsOf, (change, layout) => {
        const at = { ...ROVER_LAYOUT, ...layout };
        const slope = of(rover(change, at), 'drive.torqueSlope');
        fc.pre(slope > 0.01 && slope < 1.4);
        const speed = (slope: number) => of(rover({ ...change, 'want.slope': slope }, at), 'drive.speedClimb');
        expect(speed(slope + 0.001)).toBe(0);
        expect(speed(slope - 0.005)).toBeGreaterThan(0);
      }),
    );
  });

  it('by the bridge is where a channel carries its continuous current', () => {
    const found = rover();
    const at = rover({ 'want.slope': of(found, 'drive.bridgeSlope') });
    expect(of(at, 'bridge.channelClimb')).toBeCloseTo(ROVER['bridge.currentContinuous'] as number, 9);
  });

  const axles = (front: boolean, rear: boolean) =>
    [front, rear].map((driven) => ({ wheels: 2, driven, steered: false, sprung: false }));
  const grip: Values = {
    'ground.adhesionWorst': 0.6,
    'ground.rollingWorst': 0.05,
    'balance.wheelbase': 0.25,
    'balance.centreBehind': 0.12,
    'balance.centreHeight': 0.08,
    'balance.drivenShare': 0.5,
  };

  /** Worked case: L 0.25, a 0.12, h 0.08 m, μ 0.6, f 0.05. */
  it.each([
    ['all wheels', axles(true, true), 28.81],
    ['the rear axle', axles(false, true), 16.41],
    ['the front axle', axles(true, false), 12.4],
  ])('by grip with %s driven is that of the worked case', (_, driven, degrees) => {
    const slope = evaluateSum(driveSums['drive.gripSlope'], grip, { ...ROVER_LAYOUT, axles: driven });
    expect(slope / DEGREE).toBeCloseTo(degrees, 2);
  });

  it('by grip falls back on the share of the weight where places are not known or axles are three', () => {
    const { 'balance.centreBehind': _, ...unknown } = grip;
    const share = Math.atan(0.6 * 0.5 - 0.05);
    expect(
      evaluateSum(driveSums['drive.gripSlope'], unknown, { ...ROVER_LAYOUT, axles: axles(false, true) }),
    ).toBeCloseTo(share, 12);
    const three = [...axles(false, true), { wheels: 2, driven: false, steered: false, sprung: false }];
    expect(evaluateSum(driveSums['drive.gripSlope'], grip, { ...ROVER_LAYOUT, axles: three })).toBeCloseTo(share, 12);
  });

  it('falls with mass, and never exceeds any of its limits', () => {
    fc.assert(
      fc.property(changes, (change) => {
        const [light, heavy] = [rover(change), rover({ ...change, 'mass.total': change['mass.total'] + 0.5 })];
        expect(of(heavy, 'drive.slope')).toBeLessThanOrEqual(of(light, 'drive.slope'));
        const limits = (['drive.torqueSlope', 'drive.gripSlope', 'drive.bridgeSlope'] as const).map((id) =>
          of(light, id),
        );
        expect(of(light, 'drive.slope')).toBe(Math.min(...limits));
      }),
    );
  });
});

describe('the gears', () => {
  it('at stall bear a force that a hand reckons: 36 mN·m, 22 : 1, last pair 3 : 1, 65 %, 12 teeth of 0.8 mm', () => {
    const found = rover();
    const torque = of(found, 'drive.stallTorque');
    // Torque on the last pinion over its radius of 4.8 mm.
    expect(of(found, 'drive.toothForce')).toBeCloseTo((torque * (22 / 3) * 0.65) / 4.8e-3, 9);
    // Lewis factor of 12 teeth, 0.245 in the tables.
    expect(of(found, 'drive.toothStress')).toBeCloseTo(of(found, 'drive.toothForce') / (6e-3 * 0.8e-3 * 0.245), 3);
  });

  it('bear what the toy put on them, however weak the plastic, and what the plastic bears, however weak the toy', () => {
    const weak = rover({ 'gear.strength': 2e6 });
    expect(of(weak, 'drive.toothForceBorne')).toBe(of(weak, 'drive.toothForceToy'));
    const strong = rover({ 'gear.strength': 500e6 });
    expect(of(strong, 'drive.toothForceBorne')).toBeCloseTo(500e6 * 6e-3 * 0.8e-3 * 0.245, 6);
  });

  it('of fewer teeth than are tabulated are judged by the toy alone', () => {
    const few = rover({ 'gear.pinionTeeth': 6, 'drive.toothStress': 0, 'gear.strength': 500e6 });
    expect(of(few, 'drive.toothForceBorne')).toBe(of(few, 'drive.toothForceToy'));
  });

  it('are held back by the small old pack: the stiffer it was, the more they bore', () => {
    const borne = [0.02, 0.06, 0.2].map((cell) => of(rover({ 'toy.cellResistance': cell }), 'drive.toothForceToy'));
    expect(borne).toEqual(borne.toSorted((a, b) => b - a));
    expect(borne[0]).toBeGreaterThan(1.5 * (borne[2] as number));
  });
});

describe('turning on the spot', () => {
  const wheel = { wheels: 2, driven: true, steered: false, sprung: false };
  const skid = { ...ROVER_LAYOUT, steering: 'skid', motorPer: 'side', motors: 2, channels: 2 } as const;
  const ground = (values: Values): Values => ({ ...values, 'ground.rolling': 1e-9 });

  it('asks on two axles for the settled push of the worked case: 5 kg, 0.25 by 0.22 m, μ 0.6', () => {
    const values = ground({
      'mass.total': 5,
      'ground.adhesion': 0.6,
      'balance.wheelbase': 0.25,
      'balance.track': 0.22,
    });
    const layout = { ...skid, axles: [wheel, wheel] };
    expect(evaluateSum(driveSums['drive.skidForce'], values, layout)).toBeCloseTo(11.04, 2);
  });

  it('asks on three axles for the moment of the worked case over the track: 4 kg, 0.20 m, μ 0.7', () => {
    const values = ground({ 'mass.total': 4, 'ground.adhesion': 0.7, 'balance.wheelbase': 0.2, 'balance.track': 0.3 });
    const layout = { ...skid, axles: [wheel, wheel, wheel] };
    expect(evaluateSum(driveSums['drive.skidForce'], values, layout)).toBeCloseTo(1.8306 / 0.3, 3);
  });

  it('asks on one axle for rolling alone', () => {
    const values = { 'mass.total': 4, 'ground.rolling': 0.05 };
    const layout = { ...skid, axles: [wheel] };
    expect(evaluateSum(driveSums['drive.skidForce'], values, layout)).toBeCloseTo((4 * G * 0.05) / 2, 9);
  });

  it('takes all the push of a side where the current is that of a stall at the reserve', () => {
    const layout = { ...skid, axles: [wheel, wheel] };
    const push = of(rover({ 'ground.rolling': 0 }, layout), 'drive.skidForceStall');
    // The push is put to the current sum as what the ground asks for; that current must balance the circuit.
    const found = rover({ 'drive.skidForce': push }, layout);
    const [current, duty] = [of(found, 'drive.skidCurrent'), of(found, 'duty.applied')];
    const hot = 0.9 * (1 + 0.00393 * 60);
    const bus = of(found, 'pack.restReserve') - 2 * duty * current * (of(found, 'pack.resistanceCold') + 0.025);
    expect(duty * bus).toBeCloseTo(current * (hot + 0.01 + 0.03), 9);
  });

  it('is harder on the last of the charge: the push of a side is less than a full pack gives a cold motor', () => {
    fc.assert(
      fc.property(changes, (change) => {
        const found = rover(change, { ...skid, axles: [wheel, wheel] });
        expect(of(found, 'drive.skidForceStall')).toBeLessThan(of(found, 'drive.wheelForceStall') / 2);
      }),
    );
  });

  it('means nothing for a vehicle that steers', () => {
    for (const id of ['drive.skidForce', 'drive.skidForceStall', 'drive.skidCurrent', 'drive.skidChannel'] as const) {
      expect(driveSums[id].when?.(ROVER_LAYOUT, () => true)).toBe(false);
      expect(driveSums[id].when?.(skid, () => true)).toBe(true);
    }
  });
});

describe('the current from which the drive counts as stalled', () => {
  it('lies above the climb at full stick and below the weakest stall, so that neither is mistaken', () => {
    fc.assert(
      fc.property(changes, motorsOf, (change, layout) => {
        const at = { ...ROVER_LAYOUT, ...layout };
        const found = rover(change, at);
        fc.pre(of(found, 'drive.speedClimb') > 0);
        const climb = change['set.dutyCeiling'] * layout.motors * of(found, 'drive.currentClimb');
        expect(of(found, 'drive.stallThreshold')).toBeGreaterThan(climb);
        expect(of(found, 'drive.stallThreshold')).toBeLessThan(
          change['set.dutyCeiling'] * layout.motors * of(found, 'drive.stallCurrent'),
        );
      }),
    );
  });
});
