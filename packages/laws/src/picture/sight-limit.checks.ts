import { checkLaw } from '../check.ts';
import {
  blindDistance,
  moveAndWaitSpeed,
  personLimitSpeed,
  personSightNeeded,
  sightLimitSpeed,
  sightNeeded,
  steeredSight,
} from './sight-limit.ts';

const DEGREE = Math.PI / 180;
const KMH = 1 / 3.6;
const MPH = 0.44704;
const AASHTO = 'AASHTO, A Policy on Geometric Design of Highways and Streets, 6th ed., table 3-1';
const HIGHWAY_CODE = 'The Highway Code, rule 126, typical stopping distances';
const BECAUSE_ROUNDED = 'The table is made with constants rounded to 0.278 and 0.039, 0.3 to 0.8 % high.';
const SEPARATION = 'ISO/TS 15066:2016, 5.5.4, sum of the ways of person and machine, from memory';
const CIRCLE = 'Euclid, Elements, III.32 and IV.15: a chord as long as the radius spans 60°';
const ROVER_DELAY = 'Litaker et al., NASA TM-20240001217, rover speed against round-trip delay';

const road = (speed: number, expected: number) =>
  ({
    case: `${speed} km/h, 2.5 s, 3.4 m/s². ${BECAUSE_ROUNDED}`,
    source: AASHTO,
    kind: 'published',
    args: { speed: speed * KMH, delay: 2.5, braking: 3.4 },
    expected,
    allowed: 0.009,
  }) as const;

const roadLimit = (speed: number, sight: number) =>
  ({
    case: `${sight} m of sight, 2.5 s, 3.4 m/s². ${BECAUSE_ROUNDED}`,
    source: `${AASHTO}, read backwards`,
    kind: 'published',
    args: { sight, delay: 2.5, braking: 3.4 },
    expected: speed * KMH,
    allowed: 0.006,
  }) as const;

export const sightLimitChecks = [
  checkLaw(blindDistance, [
    {
      case: '80 km/h for 2.5 s',
      source: AASHTO,
      kind: 'published',
      args: { speed: 80 * KMH, delay: 2.5 },
      expected: 55.6,
      allowed: 0.001,
    },
    {
      case: '60 mph, the thinking time that gives 6 m at 20 mph',
      source: HIGHWAY_CODE,
      kind: 'published',
      args: { speed: 60 * MPH, delay: 6 / (20 * MPH) },
      expected: 18,
      allowed: 1e-9,
    },
  ]),
  checkLaw(sightNeeded, [
    road(80, 129.0),
    road(100, 184.2),
    road(110, 215.3),
    {
      case: '70 mph: one foot of thinking for each mph, v²/20 feet of braking, 96 m',
      source: HIGHWAY_CODE,
      kind: 'published',
      args: { speed: 70 * MPH, delay: (70 * 0.3048) / (70 * MPH), braking: (70 * MPH) ** 2 / (2 * 245 * 0.3048) },
      expected: 96,
      allowed: 0.001,
    },
  ]),
  checkLaw(sightLimitSpeed, [
    roadLimit(80, 129.0),
    roadLimit(110, 215.3),
    {
      case: 'toy scale: 1.5 m/s needs 1.575 m of reaction in 1.05 s and 0.5625 m of braking at 2 m/s²',
      source: AASHTO,
      kind: 'published',
      args: { sight: 2.1375, delay: 1.05, braking: 2 },
      expected: 1.5,
      allowed: 1e-9,
    },
  ]),
  checkLaw(personSightNeeded, [
    {
      case: 'person at 1.6 m/s, rover at 1 m/s, 0.3 s, 2 m/s²: person 1.28 m in 0.8 s, rover 0.30 m and 0.25 m',
      source: SEPARATION,
      kind: 'memory',
      args: { speed: 1, personSpeed: 1.6, delay: 0.3, braking: 2 },
      expected: 1.83,
      allowed: 1e-9,
    },
  ]),
  checkLaw(personLimitSpeed, [
    {
      case: 'person at 1.6 m/s, 1.83 m of sight, 0.3 s, 2 m/s²: person 1.28 m in 0.8 s, rover 0.30 m and 0.25 m',
      source: SEPARATION,
      kind: 'memory',
      args: { sight: 1.83, personSpeed: 1.6, delay: 0.3, braking: 2 },
      expected: 1,
      allowed: 1e-9,
    },
  ]),
  checkLaw(steeredSight, [
    {
      case: 'view of 60°, radius 2 m, far sight: the arc leaves the view after 60° of turn',
      source: CIRCLE,
      kind: 'published',
      args: { radius: 2, view: 60 * DEGREE, sight: 100 },
      expected: (2 * Math.PI) / 3,
      allowed: 1e-9,
    },
    {
      case: 'wide view, sight as long as the radius of 2 m: 60° of turn',
      source: CIRCLE,
      kind: 'published',
      args: { radius: 2, view: 170 * DEGREE, sight: 2 },
      expected: (2 * Math.PI) / 3,
      allowed: 1e-9,
    },
    {
      case: 'nearly straight: the arc is as long as the sight',
      source: 'Euclid, Elements, III.32, limit of a long radius',
      kind: 'published',
      args: { radius: 1e4, view: 60 * DEGREE, sight: 5 },
      expected: 5,
      allowed: 1e-6,
    },
  ]),
  checkLaw(moveAndWaitSpeed, [
    {
      case: '10 m in steps of 1 m at 0.5 m/s, delay 1 s, reaction 0.7 s: 20 s of driving and 17 s of waiting',
      source: 'common practice, no source: times of driving and waiting added',
      kind: 'common practice',
      args: { step: 1, speed: 0.5, delay: 1, reaction: 0.7 },
      expected: 10 / 37,
      allowed: 1e-9,
    },
    {
      case: '3.24 km/h without delay, 6 s of round trip, step of 8.57 m that the speed at 8 s implies',
      source: ROVER_DELAY,
      kind: 'published',
      args: { step: 8.57, speed: 3.24 * KMH, delay: 6, reaction: 0 },
      expected: 2.03 * KMH,
      allowed: 0.025,
    },
  ]),
];
