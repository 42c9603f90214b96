import { checkLaw } from '../check.ts';
import { dopplerShift, fadeDuration, fadeRate, rayleighMargin, shadowingMargin } from './fading.ts';
import { normalQuantile } from './normal.ts';

const RAP = 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed.';
const AS241 = 'Wichura, Algorithm AS 241, Applied Statistics 37, 1988, test values, from memory';
const TABLE = 'Abramowitz and Stegun, normal percentage points, from memory';

export const fadingChecks = [
  checkLaw(normalQuantile, [
    {
      case: 'p = 0.25',
      source: AS241,
      kind: 'memory',
      args: { probability: 0.25 },
      expected: -0.6744897501960817,
      allowed: 1e-14,
    },
    {
      case: 'p = 0.001',
      source: AS241,
      kind: 'memory',
      args: { probability: 0.001 },
      expected: -3.090232306167814,
      allowed: 1e-14,
    },
    {
      case: 'p = 1e-20',
      source: AS241,
      kind: 'memory',
      args: { probability: 1e-20 },
      expected: -9.26234008979841,
      allowed: 1e-14,
    },
    {
      case: 'p = 0.95',
      source: TABLE,
      kind: 'memory',
      args: { probability: 0.95 },
      expected: 1.6449,
      allowed: 1e-4,
    },
  ]),
  checkLaw(shadowingMargin, [
    {
      case: 'spread 8 dB, 90 % of places: 8 times the tabled 1.2816',
      source: TABLE,
      kind: 'memory',
      args: { sigma: 8, availability: 0.9 },
      expected: 8 * 1.2816,
      allowed: 1e-4,
    },
    {
      case: 'spread 5 dB, 99 % of places: 5 times the tabled 2.3263',
      source: TABLE,
      kind: 'memory',
      args: { sigma: 5, availability: 0.99 },
      expected: 5 * 2.3263,
      allowed: 1e-4,
    },
  ]),
  checkLaw(rayleighMargin, [
    {
      case: '90 % needs 10 dB, to the decibel of the rule',
      source: 'textbook rule 10, 20, 30 dB for 90, 99, 99.9 %, from memory',
      kind: 'memory',
      args: { availability: 0.9 },
      expected: 10,
      allowed: 0.03,
    },
    {
      case: '99 % needs 20 dB',
      source: 'textbook rule 10, 20, 30 dB for 90, 99, 99.9 %, from memory',
      kind: 'memory',
      args: { availability: 0.99 },
      expected: 20,
      allowed: 0.002,
    },
    {
      case: '99.9 % needs 30 dB',
      source: 'textbook rule 10, 20, 30 dB for 90, 99, 99.9 %, from memory',
      kind: 'memory',
      args: { availability: 0.999 },
      expected: 30,
      allowed: 0.001,
    },
  ]),
  checkLaw(dopplerShift, [
    {
      case: '24 km/h at 900 MHz gives 20 Hz',
      source: `${RAP}, example 5.7, printed answer from memory`,
      kind: 'memory',
      args: { speed: 24 / 3.6, frequency: 900e6 },
      expected: 20,
      allowed: 0.002,
    },
  ]),
  checkLaw(fadeRate, [
    {
      case: 'level 1, 20 Hz',
      source: `${RAP}, example 5.7, printed answer from memory`,
      kind: 'memory',
      args: { shift: 20, level: 1 },
      expected: 18.44,
      allowed: 0.001,
    },
  ]),
  checkLaw(fadeDuration, [
    {
      case: 'level 0.01, 200 Hz',
      source: `${RAP}, example 5.8, printed answer from memory`,
      kind: 'memory',
      args: { shift: 200, level: 0.01 },
      expected: 19.9e-6,
      allowed: 0.003,
    },
    {
      case: 'level 1, 200 Hz',
      source: `${RAP}, example 5.8, printed answer from memory`,
      kind: 'memory',
      args: { shift: 200, level: 1 },
      expected: 3.43e-3,
      allowed: 0.001,
    },
  ]),
];
