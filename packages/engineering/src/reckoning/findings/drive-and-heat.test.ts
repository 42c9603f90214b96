/**
 * The findings of drive, duty, bridge and heat on one invented rover that passes them all: each is shown to fail when
 * the thing it watches is made worse, and to leave the unrelated ones alone.
 */
import { describe, expect, it } from 'vitest';
import { factsOf, type QuantityId } from '../../dossier/facts/quantities.ts';
import { unitOf } from '../../quantity/units.ts';
import { ROVER, ROVER_LAYOUT } from '../drive.fixture.ts';
import type { Finding } from '../finding.ts';
import { driveSums } from '../sums/drive.ts';
import { dutySums } from '../sums/duty.ts';
import { heatSums } from '../sums/heat.ts';
import { isSumId, type SumId } from '../sums/ids.ts';
import { packSums } from '../sums/pack.ts';
import { supplySums } from '../sums/supply.ts';
import { holds, type Values, withSums } from '../testing.ts';
import { driveFindings } from './drive.ts';
import { dutyFindings } from './duty.ts';
import { heatFindings } from './heat.ts';

const SUMS = { ...packSums, ...driveSums, ...dutySums, ...supplySums, ...heatSums };
const FINDINGS: Readonly<Record<string, Finding>> = { ...driveFindings, ...dutyFindings, ...heatFindings };

const SKID = {
  ...ROVER_LAYOUT,
  steering: 'skid',
  motorPer: 'side',
  motors: 2,
  channels: 2,
  axles: ROVER_LAYOUT.axles.map((axle) => ({ ...axle, driven: true, steered: false })),
} as const;
const SKID_ONLY = ['skid-turn', 'skid-bridge'];
const STEERED_ONLY = ['steering-held', 'steering-full', 'steering-bridge'];

/** The careful settings with which the rover passes: a duty that keeps even the stall at the toy's own. */
const GENTLE: Values = { 'set.dutyCeiling': 0.8 };

const failing = (changes: Values, layout: typeof ROVER_LAYOUT = ROVER_LAYOUT): string[] => {
  const values = withSums(SUMS, { ...ROVER, ...GENTLE, ...changes }, layout);
  const apart = layout.steering === 'skid' ? STEERED_ONLY : SKID_ONLY;
  return Object.keys(FINDINGS).filter(
    (id) => !apart.includes(id) && id !== 'constants-agree' && !holds(FINDINGS[id] as Finding, values),
  );
};

describe('the invented rover', () => {
  it('passes every finding of drive, duty, bridge and heat as it stands', () => {
    expect(failing({})).toEqual([]);
  });

  const worse: [string, Values, string[]][] = [
    ['a steeper slope than its tyres hold', { 'ground.adhesionWorst': 0.25 }, ['climbs-slope']],
    ['a pack of cold, worn cells', { 'pack.cellResistance': 0.3 }, ['climb-duty', 'bridge-voltage-low']],
    [
      'a duty too high for the motor',
      { 'set.dutyCeiling': 0.9 },
      ['duty-ceiling', 'motor-voltage', 'stall-torque', 'gear-force'],
    ],
    ['weak plastic under the toy’s own force', { 'gear.strength': 20e6 }, ['gear-stress']],
    ['a toy whose pack was weak', { 'toy.cellResistance': 0.4 }, ['stall-torque', 'gear-force']],
    [
      'a toy whose pack was weak, and weak plastic',
      { 'toy.cellResistance': 0.4, 'gear.strength': 20e6 },
      ['stall-torque', 'gear-force', 'gear-stress', 'gear-bears'],
    ],
    ['a wish for speed', { 'want.speed': 2.1 }, ['top-speed', 'climb-duty']],
    [
      'a small bridge',
      { 'bridge.currentContinuous': 2, 'bridge.currentPeak': 5 },
      ['bridge-continuous', 'bridge-peak', 'bridge-reversal', 'climbs-slope'],
    ],
    ['a bridge of a low peak', { 'bridge.currentPeak': 11 }, ['bridge-reversal']],
    ['a bridge for one cell', { 'bridge.voltageMax': 7 }, ['bridge-voltage-high']],
    ['a bridge that wants much supply', { 'bridge.voltageMin': 7.2 }, ['bridge-voltage-low']],
    ['a bridge without a way out for its heat', { 'bridge.toAir': 350 }, ['bridge-hot-climb', 'bridge-hot-stall']],
    [
      'a stall that lasts',
      { 'set.stallTime': 60, 'bridge.timeConstant': 8, 'bridge.toAir': 60 },
      ['bridge-hot-stall', 'winding-stall'],
    ],
    ['slow pulses', { 'set.frequency': 2000, 'motor.windingLimit': 400 }, ['bridge-ripple']],
    ['a winding of poor enamel', { 'motor.windingLimit': 375 }, ['winding-stall']],
    ['a long climb', { 'want.climbTime': 3600 }, ['winding-climb', 'winding-stall']],
    ['a motor wrapped in foam', { 'motor.canToAir': 300 }, ['winding-cruise', 'winding-climb', 'winding-stall']],
    ['a steering motor held hard', { 'set.holdDuty': 0.8 }, ['steering-held']],
    ['a steering motor left at full drive', { 'set.holdTime': 30 }, ['steering-full']],
    [
      'a steering motor of few thick turns',
      { 'steer.resistance': 0.5, 'steer.toAir': 1, 'steer.windingMass': 0.04 },
      ['steering-bridge'],
    ],
    ['a poor board in a warm box', { 'computer.toAir': 15 }, ['board-hot']],
    ['a dark box in the sun', { 'day.sun': 1000, 'enclosure.absorptivity': 0.9 }, ['board-hot', 'enclosure-soft']],
  ];
  it.each(worse)('fails with %s on what that touches, and on nothing else', (_, changes, expected) => {
    expect(failing(changes).toSorted()).toEqual(expected.toSorted());
  });

  it('climbs too slowly shortly before it cannot climb at all', () => {
    const steep = failing({ 'want.slope': 0.3, 'ground.adhesionWorst': 1 });
    expect(steep).toContain('climb-speed');
    expect(steep).not.toContain('climbs-slope');
  });

  it('on skid steering turns on smooth ground, and neither turns nor spares its bridge where the tyres grip', () => {
    expect(failing({ 'set.dutyCeiling': 0.6 }, SKID)).toEqual([]);
    const gripping = failing({ 'ground.adhesion': 1.4, 'mass.total': 5, 'balance.wheelbase': 0.4 }, SKID);
    expect(gripping).toEqual(expect.arrayContaining(SKID_ONLY));
  });

  it('is told of two measured constants that disagree, and only of measured ones', () => {
    const stall: Values = { 'motor.stallCurrent': 4, 'motor.stallVoltage': 3.6 };
    const torque = (share: number) => ({ ...stall, 'motor.stallTorque': share * 5.2615e-3 * (4 - 0.4) });
    const gap = driveFindings['constants-agree'];
    const values = (changes: Values) => withSums(SUMS, { ...ROVER, ...changes }, ROVER_LAYOUT);
    expect(holds(gap, values(torque(0.95)))).toBe(true);
    expect(holds(gap, values(torque(0.7)))).toBe(false);
    expect(values({})['drive.constantGap']).toBeUndefined();
  });
});

describe('every finding of drive, duty, bridge and heat', () => {
  const unit = (ref: string): string =>
    isSumId(ref)
      ? ((SUMS as Partial<Record<SumId, { unit: string }>>)[ref]?.unit ?? '')
      : factsOf(ref as QuantityId).unit;

  it('compares quantities of one dimension, and shows them in a unit of it', () => {
    for (const [id, { need, has, unit: shown }] of Object.entries(FINDINGS)) {
      for (const ref of [need, has]) expect(unitOf(unit(ref)).powers, `${id}: ${ref}`).toEqual(unitOf(shown).powers);
    }
  });

  it('of hot parts, driven gears and work on the bridge carries a caution', () => {
    for (const id of [
      'winding-stall',
      'bridge-hot-stall',
      'gear-bears',
      'climbs-slope',
      'bridge-peak',
      'steering-full',
    ]) {
      expect(FINDINGS[id]?.caution, id).toBeDefined();
    }
  });
});
