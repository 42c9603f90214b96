import { checkLaw, checkSubject } from '../check.ts';
import { GRAVITY } from '../constants.ts';
import {
  brakingDistance,
  forceDeceleration,
  gripDeceleration,
  kineticEnergy,
  meetingSpeed,
  sightSpeed,
  stoppingDistance,
  stretchEnergy,
} from './stopping.ts';

const KMH = 1 / 3.6;
const MPH = 0.44704;
const FOOT = 0.3048;
const DEG = Math.PI / 180;
const GREEN_BOOK = 'AASHTO, A Policy on Geometric Design of Highways and Streets, 6th ed. 2011, table 3-1';
const GRADES = 'AASHTO, A Policy on Geometric Design of Highways and Streets, 6th ed. 2011, table 3-2 (from memory)';
const HIGHWAY_CODE = 'The Highway Code, rule 126, typical stopping distances';
const CD109 = 'CD 109, Highway link design, table 2.10; reaction 2 s and 0.25 g or 0.375 g after TD 9/93 (from memory)';
const US_FEET = 'Highway Engineering Handbook, table 2.2, rounded up to 5 ft';
const CAMERA = 'sum of delays and braking, worked by hand after the AASHTO form';

/** Road designers' level table: km/h, braking and sum in metres as printed. */
const LEVEL = [
  [20, 4.6, 18.5],
  [30, 10.3, 31.2],
  [40, 18.4, 46.2],
  [50, 28.7, 63.5],
  [60, 41.3, 83.0],
  [70, 56.2, 104.9],
  [80, 73.4, 129.0],
  [90, 92.9, 155.5],
  [100, 114.7, 184.2],
  [110, 138.8, 215.3],
  [120, 165.2, 248.6],
  [130, 193.8, 284.2],
] as const;
const READ_IN_FULL = [80, 90, 100, 110];

/** Typical distances of the driver's book: mile/h, braking and total in metres as printed. */
const CODE = [
  [20, 6, 12],
  [30, 14, 23],
  [40, 24, 36],
  [50, 38, 53],
  [60, 55, 73],
  [70, 75, 96],
] as const;
/** The book's own rule: in feet, thinking is the speed in mile/h, braking its square over twenty. */
const CODE_REACTION = FOOT / MPH;
const CODE_DECELERATION = (20 * MPH ** 2) / (2 * FOOT);

const UK_SIGHT = [
  [60, 0.25, 90],
  [85, 0.25, 160],
  [100, 0.25, 215],
  [120, 0.25, 295],
  [100, 0.375, 160],
  [120, 0.375, 215],
] as const;

export const stoppingChecks = [
  checkLaw(brakingDistance, [
    ...LEVEL.map(
      ([speed, braking]) =>
        ({
          case: `${speed} km/h, 3.4 m/s², printed with rounded constants`,
          source: `${GREEN_BOOK} (from memory)`,
          kind: 'memory',
          args: { speed: speed * KMH, deceleration: 3.4 },
          expected: braking,
          allowed: 0.015,
        }) as const,
    ),
    ...CODE.map(
      ([speed, braking]) =>
        ({
          case: `${speed} mile/h, printed in whole metres`,
          source: HIGHWAY_CODE,
          kind: 'published',
          args: { speed: speed * MPH, deceleration: CODE_DECELERATION },
          expected: braking,
          allowed: speed === 30 ? 0.025 : 0.02,
        }) as const,
    ),
  ]),
  checkLaw(stoppingDistance, [
    ...LEVEL.map(([speed, , total]) => {
      const seen = READ_IN_FULL.includes(speed);
      return {
        case: `${speed} km/h, 2.5 s, 3.4 m/s², printed with rounded constants`,
        source: seen ? GREEN_BOOK : `${GREEN_BOOK} (from memory)`,
        kind: seen ? 'published' : 'memory',
        args: { speed: speed * KMH, reaction: 2.5, deceleration: 3.4 },
        expected: total,
        allowed: 0.01,
      } as const;
    }),
    ...CODE.map(
      ([speed, , total]) =>
        ({
          case: `${speed} mile/h, printed in whole metres`,
          source: HIGHWAY_CODE,
          kind: 'published',
          args: { speed: speed * MPH, reaction: CODE_REACTION, deceleration: CODE_DECELERATION },
          expected: total,
          allowed: 0.018,
        }) as const,
    ),
    ...UK_SIGHT.map(
      ([speed, part, sight]) =>
        ({
          case: `${speed} km/h at ${part} g, printed in steps of 5 m`,
          source: CD109,
          kind: 'memory',
          args: { speed: speed * KMH, reaction: 2, deceleration: part * GRAVITY },
          expected: sight,
          allowed: 0.015,
        }) as const,
    ),
    ...(
      [
        [20, 115],
        [30, 200],
        [50, 425],
        [60, 570],
      ] as const
    ).map(
      ([speed, feet]) =>
        ({
          case: `${speed} mile/h, 2.5 s, 11.2 ft/s²: ${feet} ft`,
          source: US_FEET,
          kind: 'published',
          args: { speed: speed * MPH, reaction: 2.5, deceleration: 11.2 * FOOT },
          expected: feet * FOOT,
          allowed: 5 / feet,
        }) as const,
    ),
    {
      case: 'picture 0.25, person 0.7, command and actuator 0.05 s each, 1.5 m/s, 2 m/s²',
      source: CAMERA,
      kind: 'published',
      args: { speed: 1.5, reaction: 1.05, deceleration: 2 },
      expected: 2.1375,
      allowed: 1e-9,
    },
    {
      case: 'picture 0.30, unexpected event 1.25, command 0.08, actuator 0.05 s, 2 m/s, 2 m/s²',
      source: `${CAMERA}; reaction of Green, Transportation Human Factors 2(3), 2000`,
      kind: 'published',
      args: { speed: 2, reaction: 1.68, deceleration: 2 },
      expected: 4.36,
      allowed: 1e-9,
    },
  ]),
  checkLaw(sightSpeed, [
    ...LEVEL.filter(([speed]) => READ_IN_FULL.includes(speed)).map(
      ([speed, , total]) =>
        ({
          case: `${total} m, 2.5 s, 3.4 m/s²: back to ${speed} km/h`,
          source: GREEN_BOOK,
          kind: 'published',
          args: { sight: total, reaction: 2.5, deceleration: 3.4 },
          expected: speed * KMH,
          allowed: 0.006,
        }) as const,
    ),
    {
      case: '2.1375 m with 1.05 s and 2 m/s²: back to 1.5 m/s',
      source: CAMERA,
      kind: 'published',
      args: { sight: 2.1375, reaction: 1.05, deceleration: 2 },
      expected: 1.5,
      allowed: 1e-9,
    },
  ]),
  checkLaw(meetingSpeed, [
    ...(
      [
        [2, 1, 0.5, 2, 3.5],
        [1.5, 1.3, 0.8, 1.6, 4.161875],
        [3, 1.2, 0.7, 2.5, 6.18],
      ] as const
    ).map(
      ([speed, walking, reaction, deceleration, sight]) =>
        ({
          case: `${sight} m left, person at ${walking} m/s: from ${speed} m/s both ways add up to it`,
          source: 'ways of vehicle and person summed in 200 000 steps of time until the vehicle rests',
          kind: 'published',
          args: { sight, reaction, deceleration, walking },
          expected: speed,
          allowed: 1e-6,
        }) as const,
    ),
    {
      case: 'nobody walks: the level table at 90 km/h',
      source: GREEN_BOOK,
      kind: 'published',
      args: { sight: 155.5, reaction: 2.5, deceleration: 3.4, walking: 0 },
      expected: 90 * KMH,
      allowed: 0.006,
    },
  ]),
  checkLaw(gripDeceleration, [
    {
      case: 'μ 0.6 on the level',
      source: 'Coulomb friction, worked by hand',
      kind: 'published',
      args: { adhesion: 0.6, slope: 0 },
      expected: 5.884,
      allowed: 1e-4,
    },
    {
      case: 'μ 0.6, 10 % down: (0.6 − 0.1) · 10/√101 of g',
      source: 'right triangle 1 : 10, worked by hand',
      kind: 'published',
      args: { adhesion: 0.6, slope: -Math.atan(0.1) },
      expected: (5 * 9.80665) / Math.sqrt(101),
      allowed: 1e-9,
    },
  ]),
  checkSubject(
    'stopping-on-grade',
    (
      [
        [-0.09, 154],
        [-0.06, 144],
        [-0.03, 136],
        [0.03, 123],
        [0.06, 118],
        [0.09, 114],
      ] as const
    ).map(([grade, printed]) => ({
      case: `80 km/h, 2.5 s, 3.4 m/s², grade ${Math.round(100 * grade)} %`,
      source: GRADES,
      kind: 'memory',
      ours: () => {
        const deceleration = gripDeceleration({ adhesion: 3.4 / GRAVITY, slope: Math.atan(grade) });
        return stoppingDistance({ speed: 80 * KMH, reaction: 2.5, deceleration });
      },
      expected: printed,
      allowed: 0.01,
    })),
  ),
  checkLaw(forceDeceleration, [
    {
      case: 'coasting: f 0.0393 under a mass factor of 1.1 shows 0.35 m/s²',
      source: 'SAE J1263, effective mass in a coastdown (figure worked apart)',
      kind: 'published',
      args: { force: 0, mass: 3, rolling: 0.0393, slope: 0, massFactor: 1.1 },
      expected: 0.35,
      allowed: 0.002,
    },
    {
      case: 'a brake of 0.7 of the weight down a 3-4-5 slope with f ¼: 0.3 of g, felt by 1.5 masses',
      source: "Newton's second law, worked by hand",
      kind: 'published',
      args: { force: 0.7 * 2 * 9.80665, mass: 2, rolling: 0.25, slope: -Math.atan2(3, 4), massFactor: 1.5 },
      expected: 0.2 * 9.80665,
      allowed: 1e-9,
    },
    {
      case: 'a block on 30° without friction takes half of g',
      source: 'Halliday & Resnick, Fundamentals of Physics, chapter 5, inclined plane',
      kind: 'published',
      args: { force: 0, mass: 2, rolling: 0, slope: 30 * DEG, massFactor: 1 },
      expected: 9.80665 / 2,
      allowed: 1e-9,
    },
  ]),
  checkLaw(kineticEnergy, [
    {
      case: 'a fall from 204 mm, 2.0 m/s, under 5 kg gives back 10 J',
      source: 'energy of the fall m · g · h, worked by hand',
      kind: 'published',
      args: { mass: 5, speed: 2 },
      expected: 5 * 9.80665 * 0.20394,
      allowed: 1e-4,
    },
  ]),
  checkLaw(stretchEnergy, [
    {
      case: '3 kg, f 0.05, 1 km of level ground: 0.4086 Wh',
      source: 'force times way, worked by hand',
      kind: 'published',
      args: { mass: 3, rolling: 0.05, run: 1000, rise: 0 },
      expected: 0.4086 * 3600,
      allowed: 2e-4,
    },
    {
      case: '3 kg lifted 100 m: 0.8172 Wh',
      source: 'weight times height, worked by hand',
      kind: 'published',
      args: { mass: 3, rolling: 0.05, run: 0, rise: 100 },
      expected: 0.8172 * 3600,
      allowed: 2e-4,
    },
  ]),
];
