/**
 * The findings of link and picture on one invented vehicle that passes them all: each is shown to fail when the one
 * thing it watches is made worse, and to leave the unrelated ones alone.
 */
import { describe, expect, it } from 'vitest';
import { factsOf, type QuantityId } from '../../dossier/facts/quantities.ts';
import { unitOf } from '../../quantity/units.ts';
import type { Finding } from '../finding.ts';
import { isSumId, type SumId } from '../sums/ids.ts';
import { linkSums } from '../sums/link.ts';
import { pictureSums } from '../sums/picture.ts';
import { holds, PLAIN_LAYOUT, type Values, withSums } from '../testing.ts';
import { linkFindings } from './link.ts';
import { pictureFindings } from './picture.ts';

const DEGREE = Math.PI / 180;
const MBIT = 1e6 / 8;
const SUMS = { ...linkSums, ...pictureSums };
const FINDINGS: Readonly<Record<string, Finding>> = { ...linkFindings, ...pictureFindings };

/** A slow rover on a wireless network, near its base, with a good camera. */
const ROVER: Values = {
  'modem.transmitPower': 16,
  'modem.frequency': 2.437e9,
  'modem.bandwidth': 20e6,
  'modem.noiseFigure': 7,
  'aerial.gain': 2,
  'aerial.cableLoss': 0.5,
  'at.aerial.height': 0.35,
  'link.basePower': 16,
  'link.baseGain': 2,
  'link.baseHeight': 2.5,
  'link.distance': 30,
  'link.walls': 0,
  'link.wallLoss': 6,
  'link.vegetationLoss': 2,
  'link.availability': 0.95,
  'link.shadowing': 5,
  'link.share': 0.5,
  'link.loss': 0.002,
  'link.roundTrip': 0.05,
  'link.uplinkRate': 8 * MBIT,
  'link.dataDay': 10e9,
  'camera.fieldOfView': 75 * DEGREE,
  'camera.widthPixels': 1640,
  'camera.heightPixels': 1232,
  'camera.exposure': 0.008,
  'camera.lag': 0.06,
  'camera.pitch': 12 * DEGREE,
  'at.camera.height': 0.3,
  'at.camera.behind': 0.02,
  'toy.frontOverhang': 0.05,
  'picture.width': 640,
  'picture.height': 480,
  'picture.bitsPerPixel': 0.9,
  'picture.interval': 0.125,
  'picture.screenLag': 0.04,
  'picture.pixelsWanted': 8,
  'picture.pixelsEdge': 3,
  'picture.kept': 1,
  'picture.hours': 6 * 3600,
  'picture.card': 16e9,
  'driving.reaction': 1,
  'driving.actuation': 0.05,
  'near.obstacle': 0.08,
  'near.dropWidth': 0.1,
  'near.walkerSpeed': 1.4,
  'want.speed': 0.4,
  'want.cornerRadius': 1.5,
  'safe.speedCap': 0.5,
  'safe.descentDeceleration': 1.5,
};

const failing = (changes: Values, layout = PLAIN_LAYOUT): string[] => {
  const values = withSums(SUMS, { ...ROVER, ...changes }, layout);
  return Object.keys(FINDINGS).filter((id) => !holds(FINDINGS[id] as Finding, values));
};

describe('the invented rover', () => {
  it('passes every finding of link and picture as it stands', () => {
    expect(failing({})).toEqual([]);
  });

  /** What follows when any of the three things that must be seen is seen too late even for the usual speed. */
  const late = ['cap-within-sight', 'usual-speed-within-sight'];
  const inTime = ['edge-seen-in-time', 'obstacle-seen-in-time', 'walker-seen-in-time'];

  const worse: [string, Values, string[]][] = [
    ['a vehicle that whispers', { 'modem.transmitPower': -8 }, ['pictures-arrive', 'reach-covers-distance']],
    ['a base that whispers', { 'link.basePower': -12 }, ['commands-arrive', 'reach-covers-distance']],
    ['an uplink with no head-room', { 'link.uplinkRate': 2.5 * MBIT }, ['link-carries-pictures']],
    [
      'an uplink thinner than the pictures',
      { 'link.uplinkRate': 1.5 * MBIT },
      ['link-carries-pictures', 'picture-sent-in-interval'],
    ],
    [
      'loss on a long way',
      { 'link.loss': 0.02, 'link.roundTrip': 0.12 },
      ['link-carries-pictures', 'picture-sent-in-interval', 'loss-leaves-rate', 'pictures-often-enough'],
    ],
    ['a strong transmitter', { 'modem.transmitPower': 19 }, ['vehicle-power-allowed']],
    ['much gain at the base', { 'link.baseGain': 9 }, ['base-power-allowed']],
    ['a slow camera', { 'camera.lag': 1.2 }, ['age-lets-steer']],
    ['a long interval', { 'picture.interval': 0.4 }, ['pictures-often-enough']],
    ['an edge with a narrow band', { 'near.dropWidth': 0.005 }, ['edge-seen-in-time', ...late]],
    ['a small obstacle', { 'near.obstacle': 0.01 }, ['obstacle-seen-in-time', ...late]],
    ['a runner', { 'near.walkerSpeed': 5, 'driving.reaction': 2.6 }, ['walker-seen-in-time', ...late]],
    ['a cap of a run', { 'safe.speedCap': 1.5 }, ['edge-seen-in-time', 'obstacle-seen-in-time', 'cap-within-sight']],
    ['a wish for speed', { 'want.speed': 1.2 }, ['usual-speed-within-sight']],
    ['no brakes downhill', { 'safe.descentDeceleration': -0.2 }, [...inTime, ...late]],
    [
      'a high camera that looks level, at small things',
      { 'camera.pitch': 0, 'at.camera.height': 0.6, 'near.obstacle': 0.01 },
      ['foreground-covered', 'obstacle-seen-in-time', ...late],
    ],
    ['a long exposure', { 'camera.exposure': 0.1 }, ['blur-bearable']],
    ['a small allowance of data', { 'link.dataDay': 4e9 }, ['data-within-allowance']],
    ['a month of pictures', { 'picture.kept': 30 }, ['recordings-fit']],
  ];
  it.each(worse)('fails with %s on what that touches, and on nothing else', (_, changes, expected) => {
    expect(failing(changes).toSorted()).toEqual(expected.toSorted());
  });

  it('counts data against an allowance only where one is stated', () => {
    const { 'link.dataDay': _, ...without } = ROVER;
    expect(withSums(SUMS, without)['picture.dataDay']).toBeUndefined();
  });

  it('is told of a picture larger than the camera gives', () => {
    expect(failing({ 'picture.width': 1920, 'picture.height': 1440 })).toContain('picture-not-enlarged');
  });

  it('sends late whatever is heavier than its interval, and is told so', () => {
    const heavy = failing({ 'picture.bitsPerPixel': 9 });
    expect(heavy).toContain('picture-sent-in-interval');
    expect(heavy).toContain('link-carries-pictures');
  });

  it('reaches too short exactly where one of both margins is too small', () => {
    for (const distance of [20, 30, 45, 70, 120, 300]) {
      const failed = failing({ 'link.distance': distance });
      const margins = failed.includes('pictures-arrive') || failed.includes('commands-arrive');
      expect(failed.includes('reach-covers-distance'), `${distance} m`).toBe(margins);
    }
    expect(failing({ 'link.distance': 300 })).toContain('reach-covers-distance');
  });

  it('keeps what the radio does not touch when nothing is received: space, view and blur', () => {
    const failed = failing({ 'link.distance': 3000 });
    expect(failed).toContain('age-lets-steer');
    expect(failed).toContain('cap-within-sight');
    for (const id of ['recordings-fit', 'picture-not-enlarged', 'blur-bearable', 'foreground-covered']) {
      expect(failed).not.toContain(id);
    }
  });
});

describe('every finding of link and picture', () => {
  const unit = (ref: string): string =>
    isSumId(ref)
      ? ((SUMS as Partial<Record<SumId, { unit: string }>>)[ref]?.unit ?? 'm/s')
      : factsOf(ref as QuantityId).unit;

  it('compares quantities of one dimension, and shows them in a unit of it', () => {
    for (const [id, { need, has, unit: shown }] of Object.entries(FINDINGS)) {
      for (const ref of [need, has]) expect(unitOf(unit(ref)).powers, `${id}: ${ref}`).toEqual(unitOf(shown).powers);
    }
  });

  it('of radio power, of what strangers could hit and of recordings carries a caution', () => {
    const cautioned = Object.entries(FINDINGS).filter(([, finding]) => finding.caution !== undefined);
    expect(cautioned.map(([id]) => id)).toEqual(
      expect.arrayContaining([
        'vehicle-power-allowed',
        'base-power-allowed',
        'recordings-fit',
        'edge-seen-in-time',
        'walker-seen-in-time',
      ]),
    );
  });
});
