import { checkLaw } from '../check.ts';
import { GRAVITY } from '../constants.ts';
import {
  airForce,
  gradeForce,
  massFactor,
  roadLoad,
  rollingResistance,
  tractionLimit,
  tractiveEffort,
} from './surface.ts';

const DEG = Math.PI / 180;
/** Newtons in a pound-force, from the pound (0.45359237 kg, exact) and standard gravity. */
const POUND = 0.45359237 * GRAVITY;
const FOOT = 0.3048;
/** Slope of the right triangle with sides 3, 4, 5: sine 0.6, cosine 0.8. */
const THREE_FOUR_FIVE = Math.atan2(3, 4);
const TEXTBOOK = 'Meriam & Kraige, Engineering Mechanics: Dynamics, sample problem 6/1 (from memory)';

export const surfaceChecks = [
  checkLaw(rollingResistance, [
    {
      case: '1500 kg car on asphalt, f 0.03, level: 0.44 kN',
      source: 'Engineering ToolBox, Rolling Resistance, car example (from memory)',
      kind: 'memory',
      args: { rolling: 0.03, mass: 1500, slope: 0 },
      expected: 441,
      allowed: 0.002,
    },
    {
      case: '3 kg, f 0.02 on a 10 % grade, cosine taken from the triangle 1 : 10',
      source: 'Wong, Theory of Ground Vehicles, chapter 1, worked by hand',
      kind: 'published',
      args: { rolling: 0.02, mass: 3, slope: Math.atan(0.1) },
      expected: (0.06 * 9.80665 * 10) / Math.sqrt(101),
      allowed: 1e-4,
    },
    {
      case: '3 kg, f 0.10 on 15°',
      source: 'Wong, Theory of Ground Vehicles, chapter 1, worked by hand with cos 15° = (√6 + √2)/4',
      kind: 'published',
      args: { rolling: 0.1, mass: 3, slope: 15 * DEG },
      expected: (0.3 * 9.80665 * (Math.sqrt(6) + Math.sqrt(2))) / 4,
      allowed: 1e-6,
    },
  ]),
  checkLaw(gradeForce, [
    {
      case: 'a 1004 N lunar rover on 15°: printed totals 613 N on the slope less 352 N on the level',
      source: 'University of Maryland, ENAE 788X lecture notes, lunar rover example',
      kind: 'published',
      args: { mass: 1004 / GRAVITY, slope: 15 * DEG },
      expected: 613 - 352,
      allowed: 0.006,
    },
    {
      case: 'half the weight pulls on 30°',
      source: 'sine of 30°, exact',
      kind: 'published',
      args: { mass: 3, slope: 30 * DEG },
      expected: 1.5 * 9.80665,
      allowed: 1e-9,
    },
  ]),
  checkLaw(tractionLimit, [
    {
      case: 'half of a 5 kg vehicle on grippy ground, μ 0.6',
      source: 'Wong, Theory of Ground Vehicles, chapter 1, worked by hand: 0.6 · 24.517 N',
      kind: 'published',
      args: { adhesion: 0.6, drivenMass: 2.5, slope: 0 },
      expected: 14.71,
      allowed: 1e-3,
    },
    {
      case: 'on a 3-4-5 slope only four fifths of the weight press on it',
      source: 'inclined plane of Stevin, worked by hand',
      kind: 'published',
      args: { adhesion: 0.5, drivenMass: 2, slope: THREE_FOUR_FIVE },
      expected: 0.8 * 9.80665,
      allowed: 1e-9,
    },
  ]),
  checkLaw(roadLoad, [
    {
      case: '3 kg at 0.4 m/s on 25.51° with f 0.05 takes the 5.600 W it was solved for',
      source: 'power over speed, by back-substitution',
      kind: 'published',
      args: { rolling: 0.05, mass: 3, slope: 25.51 * DEG },
      expected: 5.6 / 0.4,
      allowed: 1e-3,
    },
    {
      case: 'on a 3-4-5 slope with f ¼: 0.2 + 0.6 of the weight',
      source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, worked by hand',
      kind: 'published',
      args: { rolling: 0.25, mass: 2, slope: THREE_FOUR_FIVE },
      expected: 1.6 * 9.80665,
      allowed: 1e-9,
    },
  ]),
  checkLaw(tractiveEffort, [
    {
      case: 'pickup truck of 3220 lb reaches 30 mile/h in 200 ft up a 10 % incline: 804 lb at the wheels',
      source: TEXTBOOK,
      kind: 'memory',
      args: {
        road: 3220 * POUND * Math.sin(5.71 * DEG),
        wind: 0,
        massFactor: 1,
        mass: (100 * POUND) / FOOT,
        acceleration: 4.84 * FOOT,
      },
      expected: 804 * POUND,
      allowed: 0.001,
    },
    {
      case: 'road 2 N, wind 1 N, 3 kg felt as 4.5 kg at 1 m/s²',
      source: "Newton's second law, worked by hand",
      kind: 'published',
      args: { road: 2, wind: 1, massFactor: 1.5, mass: 3, acceleration: 1 },
      expected: 7.5,
      allowed: 1e-9,
    },
  ]),
  checkLaw(massFactor, [
    {
      case: 'a hoop has half the acceleration of a sliding block',
      source: 'Halliday & Resnick, Fundamentals of Physics, table of rotational inertias, J = m·r²',
      kind: 'published',
      args: { wheels: 2 * 0.3 ** 2, rotors: 0, ratio: 1, mass: 2, radius: 0.3 },
      expected: 2,
      allowed: 1e-9,
    },
    {
      case: 'a rolling solid sphere accelerates with 5/7 of g sin θ',
      source: 'Halliday & Resnick, Fundamentals of Physics, rolling down a ramp',
      kind: 'published',
      args: { wheels: 0.4 * 2 * 0.3 ** 2, rotors: 0, ratio: 1, mass: 2, radius: 0.3 },
      expected: 7 / 5,
      allowed: 1e-9,
    },
    {
      case: 'four disc wheels of 150 g under 3 kg add a tenth whatever their radius, J = m·r²/2',
      source: 'Halliday & Resnick, Fundamentals of Physics, table of rotational inertias',
      kind: 'published',
      args: { wheels: 4 * 0.5 * 0.15 * 0.06 ** 2, rotors: 0, ratio: 34, mass: 3, radius: 0.06 },
      expected: 1.1,
      allowed: 1e-9,
    },
    {
      case: 'four rotors of 2e-7 kg·m² at 48 : 1 under 2 kg add 0.369',
      source: 'Gillespie, Fundamentals of Vehicle Dynamics, effective inertia, worked by hand',
      kind: 'published',
      args: { wheels: 0, rotors: 8e-7, ratio: 48, mass: 2, radius: 0.05 },
      expected: 1.369,
      allowed: 1e-3,
    },
  ]),
  checkLaw(airForce, [
    {
      case: 'wind zone 2, 25.0 m/s: basic velocity pressure 0.39 kN/m²',
      source: 'DIN EN 1991-1-4/NA, wind zone map (from memory)',
      kind: 'memory',
      args: { density: 1.25, drag: 1, area: 1, speed: 25 },
      expected: 390,
      allowed: 0.005,
    },
    {
      case: 'wind zone 4, 30.0 m/s: basic velocity pressure 0.56 kN/m²',
      source: 'DIN EN 1991-1-4/NA, wind zone map (from memory)',
      kind: 'memory',
      args: { density: 1.25, drag: 1, area: 1, speed: 30 },
      expected: 560,
      allowed: 0.006,
    },
    {
      case: 'velocity pressure 0.613·V² at 40 m/s on 2 m² of a plate with c_w 1.2',
      source: 'ASCE 7, velocity pressure constant 0.613 (from memory)',
      kind: 'memory',
      args: { density: 1.225, drag: 1.2, area: 2, speed: 40 },
      expected: 0.613 * 1600 * 2.4,
      allowed: 0.001,
    },
  ]),
];
