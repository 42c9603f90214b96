import { checkLaw } from '../check.ts';
import {
  edgeParameter,
  foliageLoss,
  foliageLossEarly,
  fresnelRadius,
  knifeEdgeLoss,
  woodlandLoss,
} from './obstacles.ts';

const RAP = 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed.';
const ROUNDED = 'Rec. ITU-R P.526-8, equation 3: 550 · √(d1·d2/((d1+d2)·f)), kilometres and megahertz';
const INTEGRALS = 'Fresnel integrals C and S (Abramowitz and Stegun, chapter 7): −20·log10(½·√((1−C−S)² + (C−S)²))';

const edge = (parameter: number, expected: number) =>
  ({
    case: `ν = ${parameter}, against the integrals the approximation stands for`,
    source: INTEGRALS,
    kind: 'reference library',
    args: { parameter },
    expected,
    allowed: 0.15 / expected,
  }) as const;

export const obstaclesChecks = [
  checkLaw(fresnelRadius, [
    {
      case: 'λ = 1/3 m, middle of 2 km: 25 m is 3.75 zones, so R1 = 25/√3.75',
      source: `${RAP}, example 4.7, printed answer from memory`,
      kind: 'memory',
      args: { frequency: 900e6, toBase: 1000, toRover: 1000 },
      expected: 25 / Math.sqrt(3.75),
      allowed: 0.001,
    },
    {
      case: '2.437 GHz, middle of 10 m',
      source: ROUNDED,
      kind: 'published',
      args: { frequency: 2.437e9, toBase: 5, toRover: 5 },
      expected: 0.5571,
      allowed: 0.006,
    },
    {
      case: '5.5 GHz, 5 m before the end of 20 m',
      source: ROUNDED,
      kind: 'published',
      args: { frequency: 5.5e9, toBase: 15, toRover: 5 },
      expected: 0.4541,
      allowed: 0.006,
    },
  ]),
  checkLaw(edgeParameter, [
    {
      case: 'λ = 1/3 m, middle of 2 km, 25 m above the ray',
      source: `${RAP}, example 4.7, printed answer from memory`,
      kind: 'memory',
      args: { frequency: 900e6, height: 25, toBase: 1000, toRover: 1000 },
      expected: 2.74,
      allowed: 0.002,
    },
    {
      case: '900 MHz, edge 100 m, ends at 50 m and 25 m, 10 km and 2 km away: 70.83 m above the ray',
      source: `${RAP}, example 4.8, printed answer from memory`,
      kind: 'memory',
      args: { frequency: 900e6, height: 100 - (25 + 25 / 6), toBase: 10000, toRover: 2000 },
      expected: 4.25,
      allowed: 0.002,
    },
  ]),
  checkLaw(knifeEdgeLoss, [
    edge(-0.5, 1.86),
    edge(0.5, 10.23),
    edge(1, 13.86),
    edge(2, 19.09),
    edge(5, 26.94),
    edge(10, 32.95),
    {
      case: 'edge of 4.25, read from the curve and computed',
      source: `${RAP}, example 4.8, printed answer from memory`,
      kind: 'memory',
      args: { parameter: 4.25 },
      expected: 25.5,
      allowed: 0.006,
    },
    {
      case: 'ν = 1',
      source: 'published test suite of Rec. ITU-R P.526-15, equation 31',
      kind: 'reference library',
      args: { parameter: 1 },
      expected: 13.9257,
      allowed: 1e-5,
    },
  ]),
  checkLaw(foliageLoss, [
    {
      case: '0.9 GHz through 100 m',
      source: 'published test suite of the Weissberger model',
      kind: 'reference library',
      args: { frequency: 0.9e9, depth: 100 },
      expected: 19.36,
      allowed: 5e-4,
    },
    {
      case: '2.4 GHz through 50 m',
      source: 'published test suite of the Weissberger model',
      kind: 'reference library',
      args: { frequency: 2.4e9, depth: 50 },
      expected: 17.015,
      allowed: 5e-4,
    },
    {
      case: '2.4 GHz through 10 m, near branch: 0.577 dB/m by logarithm table',
      source: 'Weissberger 1982, modified exponential decay, near branch',
      kind: 'published',
      args: { frequency: 2.4e9, depth: 10 },
      expected: 5.77,
      allowed: 0.001,
    },
  ]),
  checkLaw(foliageLossEarly, [
    {
      case: '2400 MHz through 10 m, by logarithm table: 0.2 · 10.33 · 3.98',
      source: 'CCIR Report 236-6, 1986',
      kind: 'published',
      args: { frequency: 2400e6, depth: 10 },
      expected: 8.22,
      allowed: 0.001,
    },
    {
      case: '5500 MHz through 10 m, by logarithm table',
      source: 'CCIR Report 236-6, 1986',
      kind: 'published',
      args: { frequency: 5500e6, depth: 10 },
      expected: 10.55,
      allowed: 0.001,
    },
  ]),
  checkLaw(woodlandLoss, [
    {
      case: 'Am 32.6 dB, γ 0.3 dB/m, 20 m, by adding γ·(1 − A/Am)·dx step by step',
      source: 'Rec. ITU-R P.833-10, section 2.1, equation 1',
      kind: 'published',
      args: { depth: 20, specific: 0.3, most: 32.6 },
      expected: 5.48,
      allowed: 0.002,
    },
    {
      case: 'Am 32.6 dB, γ 0.3 dB/m, 100 m, by adding γ·(1 − A/Am)·dx step by step',
      source: 'Rec. ITU-R P.833-10, section 2.1, equation 1',
      kind: 'published',
      args: { depth: 100, specific: 0.3, most: 32.6 },
      expected: 19.61,
      allowed: 0.001,
    },
  ]),
];
