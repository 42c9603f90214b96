import { checkLaw } from '../check.ts';
import { bulldozingResistance, cohesionFactor, safePressure, surchargeFactor, weightFactor } from './bulldozing.ts';

const DEG = Math.PI / 180;
const LECTURE = 'University of Maryland, ENAE 788X lecture notes on terramechanics, lunar rover wheel';
const TERZAGHI = 'Terzaghi, Theoretical Soil Mechanics, 1943, table of bearing factors (from memory)';
const CODUTO = 'Coduto, Foundation Design, table of bearing factors (from memory)';
const FRICTION = 0.576;

export const bulldozingChecks = [
  checkLaw(surchargeFactor, [
    {
      case: 'φ 0.576',
      source: LECTURE,
      kind: 'published',
      args: { friction: FRICTION },
      expected: 32.23,
      allowed: 1e-3,
    },
    { case: 'φ 20°', source: TERZAGHI, kind: 'memory', args: { friction: 20 * DEG }, expected: 7.44, allowed: 1e-3 },
    { case: 'φ 30°', source: TERZAGHI, kind: 'memory', args: { friction: 30 * DEG }, expected: 22.46, allowed: 1e-3 },
  ]),
  checkLaw(cohesionFactor, [
    {
      case: 'φ 0.576',
      source: LECTURE,
      kind: 'published',
      args: { surcharge: 32.23, friction: FRICTION },
      expected: 48.09,
      allowed: 1e-3,
    },
    {
      case: 'φ 30°',
      source: TERZAGHI,
      kind: 'memory',
      args: { surcharge: 22.46, friction: 30 * DEG },
      expected: 37.16,
      allowed: 1e-3,
    },
  ]),
  checkLaw(weightFactor, [
    {
      case: 'φ 0.576',
      source: LECTURE,
      kind: 'published',
      args: { surcharge: 32.23, friction: FRICTION },
      expected: 33.27,
      allowed: 1e-3,
    },
    {
      case: 'φ 20°',
      source: CODUTO,
      kind: 'memory',
      args: { surcharge: 7.44, friction: 20 * DEG },
      expected: 4.4,
      allowed: 0.01,
    },
    {
      case: 'φ 30°',
      source: CODUTO,
      kind: 'memory',
      args: { surcharge: 22.46, friction: 30 * DEG },
      expected: 20.1,
      allowed: 0.003,
    },
  ]),
  checkLaw(safePressure, [
    {
      case: 'sunk 15.1 mm: 18 790 Pa',
      source: LECTURE,
      kind: 'published',
      args: {
        cohesion: 170,
        weight: 2472,
        sinkage: 0.0151,
        width: 0.229,
        cohesionFactor: 48.09,
        surchargeFactor: 32.23,
        weightFactor: 33.27,
      },
      expected: 18_790,
      allowed: 1e-3,
    },
  ]),
  checkLaw(bulldozingResistance, [
    {
      case: 'leading wheel, sinkage of the printed wedge angle 0.2999 rad: 95 N',
      source: LECTURE,
      kind: 'published',
      args: {
        width: 0.229,
        diameter: 0.813,
        sinkage: (0.813 * (1 - Math.cos(0.2999))) / 2,
        cohesion: 170,
        weight: 2472,
        friction: FRICTION,
        cohesionFactor: 48.09,
        weightFactor: 33.27,
      },
      expected: 95,
      allowed: 0.015,
    },
  ]),
];
