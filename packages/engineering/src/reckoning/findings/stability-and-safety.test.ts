/**
 * The findings of mass, stability and safety on one invented vehicle that passes them all: each is shown to fail when
 * the one thing it watches is made worse, and to leave the unrelated ones alone.
 */
import { describe, expect, it } from 'vitest';
import { factsOf, type QuantityId } from '../../dossier/facts/quantities.ts';
import type { Layout } from '../../dossier/resolve.ts';
import { unitOf } from '../../quantity/units.ts';
import type { Finding } from '../finding.ts';
import { isSumId, type SumId } from '../sums/ids.ts';
import { massSums } from '../sums/mass.ts';
import { safetySums } from '../sums/safety.ts';
import { stabilitySums } from '../sums/stability.ts';
import { holds, PLAIN_LAYOUT, type Values, withSums } from '../testing.ts';
import { massFindings } from './mass.ts';
import { safetyFindings } from './safety.ts';
import { stabilityFindings } from './stability.ts';

const DEGREE = Math.PI / 180;
const SUMS = { ...massSums, ...stabilitySums, ...safetySums };
const FINDINGS: Readonly<Record<string, Finding>> = { ...massFindings, ...stabilityFindings, ...safetyFindings };

/** Rear drive, front steering, springs all round, without servo and enclosure. */
const LAYOUT: Layout = {
  ...PLAIN_LAYOUT,
  steering: 'on-off',
  enclosure: false,
  axles: [
    { wheels: 2, driven: false, steered: true, sprung: true },
    { wheels: 2, driven: true, steered: false, sprung: true },
  ],
  surfaces: [{ surface: 'sand, damp', share: 1 }],
};

const CARRIED = ['converter', 'bridge', 'computer', 'camera', 'modem', 'aerial', 'fixings'] as const;

/** A low, slow rover of two kilograms on large wheels. */
const ROVER: Values = {
  'toy.mass': 1.8,
  'toy.removed': 0.2,
  'toy.centreBehind': 0.13,
  'toy.centreHeight': 0.07,
  'toy.wheelDiameter': 0.12,
  'toy.wheelWidth': 0.05,
  'toy.clearance': 0.045,
  'toy.frontOverhang': 0.06,
  'toy.frontHeight': 0.05,
  'toy.rearOverhang': 0.06,
  'toy.rearHeight': 0.05,
  'axle.1.track': 0.2,
  'axle.2.track': 0.2,
  'axle.2.position': 0.25,
  'axle.1.springRate': 2000,
  'axle.2.springRate': 2000,
  'axle.1.springTravel': 0.02,
  'axle.2.springTravel': 0.02,
  ...Object.fromEntries(CARRIED.map((part) => [`${part}.mass`, 0.03])),
  ...Object.fromEntries([...CARRIED, 'pack', 'payload'].map((part) => [`at.${part}.behind`, 0.13])),
  ...Object.fromEntries([...CARRIED, 'pack', 'payload'].map((part) => [`at.${part}.height`, 0.09])),
  'pack.mass': 0.2,
  'fuse.mass': 0.005,
  'mass.wiring': 0.03,
  'want.payload': 0,
  'want.slope': 5 * DEGREE,
  'want.sideSlope': 5 * DEGREE,
  'want.step': 0.004,
  'want.cornerRadius': 1,
  'steer.angle': 22 * DEGREE,
  'ground.adhesion': 0.6,
  'ground.adhesionWorst': 0.5,
  'ground.rolling': 0.05,
  'ground.rollingWorst': 0.12,
  'near.energy': 4,
  'set.speedCap': 0.6,
  'driving.braking': 2,
  'driving.actuation': 0.05,
  'picture.clearObstacle': 1.2,
  'drive.constant': 0.02,
  'drive.resistance': 1,
  'drive.noLoadCurrent': 0.2,
  'drive.ratio': 40,
  'gear.efficiency': 0.6,
  'bridge.threshold': 0,
  'bridge.slope': 0.1,
  'wiring.motor.resistance': 0.05,
};

const failing = (changes: Values, layout = LAYOUT): string[] => {
  const values = withSums(SUMS, { ...ROVER, ...changes }, layout);
  return Object.keys(FINDINGS).filter((id) => {
    const finding = FINDINGS[id] as Finding;
    const applies = finding.when?.(layout) ?? true;
    const means = [finding.need, finding.has].every((ref) => values[ref] !== undefined);
    return applies && means && !holds(finding, values);
  });
};

/** A vehicle on three driven axles with springs, so that crests count. */
const SIX_WHEELS: Layout = {
  ...LAYOUT,
  axles: [...LAYOUT.axles, { wheels: 2, driven: true, steered: false, sprung: true }],
};
const THIRD_AXLE: Values = {
  'axle.2.position': 0.125,
  'axle.3.position': 0.25,
  'axle.3.track': 0.2,
  'axle.3.springRate': 2000,
  'axle.3.springTravel': 0.02,
};

describe('the invented rover', () => {
  it('passes every finding of mass, stability and safety as it stands', () => {
    expect(failing({})).toEqual([]);
    expect(failing(THIRD_AXLE, SIX_WHEELS)).toEqual([]);
  });

  const worse: [string, Values, string[]][] = [
    ['a heavy pack that sits in the middle', { 'pack.mass': 0.6 }, ['mass-ratio']],
    ['a heavy pack behind the rear axle', { 'pack.mass': 0.42, 'at.pack.behind': 0.3 }, ['axle-load-growth']],
    ['springs with no travel left', { 'axle.2.springTravel': 0.0005 }, ['spring-travel']],
    [
      'a belly that nearly drags',
      { 'toy.clearance': 0.0015 },
      ['ground-clearance', 'soft-ground-sinkage', 'breakover-angle'],
    ],
    [
      'its weight in front and grip that is scarce',
      { 'toy.centreBehind': 0.06, 'ground.adhesionWorst': 0.35 },
      ['driven-weight', 'descent-braking', 'stops-within-clear-sight', 'step-climbed'],
    ],
    ['a camera on a high mast', { 'camera.mass': 0.1, 'at.camera.height': 4 }, ['slide-before-tip']],
    [
      'a steep wish',
      { 'want.slope': 35 * DEGREE },
      ['driven-weight', 'tip-climbing', 'descent-braking', 'stops-within-clear-sight', 'slope-creep', 'slope-hold'],
    ],
    ['a steep side slope', { 'want.sideSlope': 35 * DEGREE }, ['tip-side-slope']],
    [
      'a hurried cap',
      { 'set.speedCap': 3.4 },
      [
        'tip-cornering',
        'tip-side-slope-turning',
        'grip-cornering',
        'stops-within-clear-sight',
        'energy-near-people',
        'walking-pace',
      ],
    ],
    ['a cap that is a little fast', { 'set.speedCap': 1.45 }, ['walking-pace']],
    [
      'a nose that scrapes',
      { 'toy.frontHeight': 0.003, 'toy.frontOverhang': 0.3 },
      ['approach-angle', 'nose-over-step'],
    ],
    [
      'a tail that scrapes',
      { 'toy.rearHeight': 0.003, 'toy.rearOverhang': 0.3 },
      ['departure-angle', 'tail-over-step'],
    ],
    [
      'a kerb to climb',
      { 'want.step': 0.06 },
      ['ground-clearance', 'nose-over-step', 'tail-over-step', 'step-climbed'],
    ],
    ['lazy steering', { 'steer.angle': 8 * DEGREE }, ['turning-circle']],
    ['ground taken as harder than it is', { 'ground.rollingWorst': 0.05 }, ['soft-ground-resistance']],
    ['weak brakes', { 'driving.braking': 1.2 }, ['descent-braking']],
    ['a short sight', { 'picture.clearObstacle': 0.1 }, ['stops-within-clear-sight']],
    ['a strict place', { 'near.energy': 0.2 }, ['energy-near-people']],
    ['a low gear ratio', { 'drive.ratio': 4 }, ['slope-creep']],
    ['a bridge that drops two volts', { 'drive.ratio': 14, 'bridge.threshold': 2 }, ['slope-creep']],
  ];
  it.each(worse)('fails with %s on what that touches, and on nothing else', (_, changes, expected) => {
    expect(failing(changes).toSorted()).toEqual(expected.toSorted());
  });

  it('tips forwards under hard braking only where grip, brakes and a high centre meet', () => {
    const high: Values = { 'toy.centreHeight': 0.16, 'toy.centreBehind': 0.1, 'ground.adhesion': 1.2 };
    expect(failing({ ...high, 'driving.braking': 9 })).toContain('tip-braking');
    expect(failing(high)).not.toContain('tip-braking');
    expect(failing({ 'driving.braking': 9, 'ground.adhesion': 1.2 })).not.toContain('tip-braking');
  });

  it('creeps slowly enough on the same gears where the bridge drops nothing', () => {
    expect(failing({ 'drive.ratio': 14 })).toEqual([]);
  });

  it('tips forwards on a descent with its weight far in front', () => {
    expect(failing({ 'toy.centreBehind': 0.005, 'want.slope': 15 * DEGREE })).toContain('tip-descending');
  });

  it('is told of springs so stiff that a crest lifts its other axles', () => {
    const stiff = Object.fromEntries([1, 2, 3].map((axle) => [`axle.${axle}.springRate`, 20_000]));
    const values = { ...THIRD_AXLE, ...stiff, 'want.step': 0.02 };
    expect(failing(values, SIX_WHEELS)).toContain('crest-load-growth');
  });

  it('shows each of its findings able to fail somewhere above', () => {
    const shown = new Set([...worse.flatMap(([, , ids]) => ids), 'tip-braking', 'tip-descending', 'crest-load-growth']);
    expect(Object.keys(FINDINGS).filter((id) => !shown.has(id))).toEqual([]);
  });
});

describe('every finding of mass, stability and safety', () => {
  const all = Object.entries(FINDINGS);
  const unitOfRef = (ref: Finding['need']) =>
    isSumId(ref) ? SUMS[ref as keyof typeof SUMS]?.unit : factsOf(ref as QuantityId).unit;

  it.each(all)('%s measures both sides in the dimension it is shown in', (_, { need, has, unit }) => {
    for (const ref of [need, has]) {
      const own = unitOfRef(ref);
      // Sums of other subjects are measured by their own tests.
      if (own !== undefined) expect(unitOf(own)?.powers).toEqual(unitOf(unit)?.powers);
    }
  });

  it.each(all)('%s says what to do about it', (_, { remedy, title }) => {
    expect(remedy).toMatch(/^[A-Z].*\.$/s);
    expect(title).toMatch(/^[A-Z].*[^.]$/s);
  });

  it('warns of people, slopes and tipping wherever it decides about them', () => {
    const ids: SumId[] = ['tip.noseUp', 'tip.noseDown', 'tip.side', 'safe.energy', 'safe.creep', 'safe.stopping'];
    for (const { has, caution } of Object.values(FINDINGS)) {
      if (isSumId(has) && ids.includes(has)) expect(caution).toMatch(/\w/);
    }
  });
});
