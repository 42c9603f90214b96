import { checkLaw } from '../check.ts';
import {
  blindForeground,
  crestSight,
  depthPerRow,
  distanceAtRow,
  dropPixels,
  dropSight,
  farEdge,
  hiddenGround,
  nearEdge,
  rowsBelowHorizon,
} from './ground.ts';

const DEGREE = Math.PI / 180;
const TRIANGLES = 'plane trigonometry, triangles of 45° and of 30° and 60°';
const PLANE = 'central projection of a plane, Hartley and Zisserman, 2nd ed.';
const AASHTO = 'AASHTO, A Policy on Geometric Design, 6th ed., crest curves, K = S²/658, from memory';
const HORIZON = 'seamen’s rule, distance of the horizon 3.57 km · √(height/1 m), from memory';
const DITCH = 'angle of a ditch, atan(H/Z) − atan(H/(Z+w)), Matthies and Rankin, IROS 2003, from memory';

export const groundChecks = [
  checkLaw(nearEdge, [
    {
      case: 'lower edge 45° below the horizon: as far as the camera is high',
      source: TRIANGLES,
      kind: 'published',
      args: { height: 0.15, pitch: 15 * DEGREE, view: 60 * DEGREE },
      expected: 0.15,
      allowed: 1e-9,
    },
    {
      case: 'lower edge 60° below the horizon: height / √3',
      source: TRIANGLES,
      kind: 'published',
      args: { height: 0.3, pitch: 45 * DEGREE, view: 30 * DEGREE },
      expected: 0.3 / Math.sqrt(3),
      allowed: 1e-9,
    },
  ]),
  checkLaw(farEdge, [
    {
      case: 'upper edge 30° below the horizon: height · √3',
      source: TRIANGLES,
      kind: 'published',
      args: { height: 0.3, pitch: 45 * DEGREE, view: 30 * DEGREE },
      expected: 0.3 * Math.sqrt(3),
      allowed: 1e-9,
    },
    {
      case: 'upper edge 10° below the horizon: 5.671 heights by the table of cotangents',
      source: 'table of cotangents, cot 10° = 5.6713',
      kind: 'published',
      args: { height: 0.15, pitch: 30 * DEGREE, view: 40 * DEGREE },
      expected: 0.15 * 5.6713,
      allowed: 1e-5,
    },
  ]),
  checkLaw(blindForeground, [
    {
      case: 'camera 80 mm behind the bumper, ground seen from 219 mm',
      source: 'common practice, no source',
      kind: 'common practice',
      args: { nearEdge: 0.219, overhang: 0.08 },
      expected: 0.139,
      allowed: 1e-9,
    },
  ]),
  checkLaw(rowsBelowHorizon, [
    {
      case: '640 px, 0.15 m high, 5 m: ray through the row falls 0.15 m in 5 m, 3 in 100',
      source: PLANE,
      kind: 'published',
      args: { focalPixels: 640, height: 0.15, distance: 5 },
      expected: 640 * 0.03,
      allowed: 1e-9,
    },
  ]),
  checkLaw(distanceAtRow, [
    {
      case: '640 px, 0.15 m high, 9.6 rows down: ray falling 15 in 1000',
      source: PLANE,
      kind: 'published',
      args: { focalPixels: 640, height: 0.15, rows: 9.6 },
      expected: 10,
      allowed: 1e-9,
    },
  ]),
  checkLaw(depthPerRow, [
    {
      case: '640 px, 0.15 m high, 10 m: rows 9.1 and 10.1 lie at 10.549 m and 9.505 m',
      source: PLANE,
      kind: 'published',
      args: { focalPixels: 640, height: 0.15, distance: 10 },
      expected: 1.0445,
      allowed: 0.004,
    },
  ]),
  checkLaw(hiddenGround, [
    {
      case: 'eye 0.15 m, obstacle 0.05 m at 2 m: the ray comes down in half as far again',
      source: 'similar triangles; Euclid, Elements, VI.4',
      kind: 'published',
      args: { height: 0.15, obstacle: 0.05, distance: 2 },
      expected: 1.0,
      allowed: 1e-9,
    },
    {
      case: 'eye 0.15 m, obstacle 0.10 m at 2 m',
      source: 'similar triangles; Euclid, Elements, VI.4',
      kind: 'published',
      args: { height: 0.15, obstacle: 0.1, distance: 2 },
      expected: 4.0,
      allowed: 1e-9,
    },
  ]),
  checkLaw(crestSight, [
    {
      case: 'eye 1.08 m, object 0.60 m, radius 100·S²/658 for a sight of 100 m',
      source: AASHTO,
      kind: 'memory',
      args: { radius: (100 * 100 ** 2) / 658, eye: 1.08, object: 0.6 },
      expected: 100,
      allowed: 0.001,
    },
    {
      case: 'sea horizon of an eye 2 m up',
      source: HORIZON,
      kind: 'memory',
      args: { radius: 6371e3, eye: 2, object: 0 },
      expected: 3570 * Math.sqrt(2),
      allowed: 0.001,
    },
  ]),
  checkLaw(dropPixels, [
    {
      case: '640 px, 0.15 m high, gap of 0.3 m at 2 m: 9.735 mrad by arc tangents',
      source: DITCH,
      kind: 'memory',
      args: { focalPixels: 640, height: 0.15, gap: 0.3, distance: 2 },
      expected: 640 * (Math.atan(0.15 / 2) - Math.atan(0.15 / 2.3)),
      allowed: 0.006,
    },
    {
      case: '640 px, 0.3 m high, gap of 1 m at 10 m: rows 19.2 and 17.4545 below the horizon',
      source: PLANE,
      kind: 'published',
      args: { focalPixels: 640, height: 0.3, gap: 1, distance: 10 },
      expected: 1.7455,
      allowed: 1e-4,
    },
  ]),
  checkLaw(dropSight, [
    {
      case: '640 px, 0.15 m high, gap of 0.3 m, as many rows as its angle gives at 2 m',
      source: DITCH,
      kind: 'memory',
      args: {
        focalPixels: 640,
        height: 0.15,
        gap: 0.3,
        pixels: 640 * (Math.atan(0.15 / 2) - Math.atan(0.15 / 2.3)),
      },
      expected: 2,
      allowed: 0.004,
    },
    {
      case: '640 px, 0.3 m high, gap of 1 m, 1.7455 rows: rows 19.2 and 17.4545 are 10 m and 11 m',
      source: PLANE,
      kind: 'published',
      args: { focalPixels: 640, height: 0.3, gap: 1, pixels: 1.7455 },
      expected: 10,
      allowed: 1e-4,
    },
  ]),
];
