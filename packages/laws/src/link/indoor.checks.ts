import { checkLaw } from '../check.ts';
import { indoorLoss, partitionLoss } from './indoor.ts';
import { streetLoss } from './street.ts';

const STREET = 'Rec. ITU-R P.1411-12, table 4';
const ATTENUATION =
  'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., example 4.11, printed answer from memory';

export const indoorChecks = [
  checkLaw(indoorLoss, [
    {
      case: '2114 MHz, residential, 30 m along and 9 m up, two floors at 4 dB',
      source: 'ns-3 network simulator, ITU-R P.1238 test vector',
      kind: 'reference library',
      args: { frequency: 2114e6, coefficient: 28, distance: Math.hypot(30, 9), floorLoss: 8 },
      expected: 88.3855,
      allowed: 1e-5,
    },
    {
      case: '5.2 GHz, office, 30 m on one floor, by logarithm table: 74.3 + 45.8 − 28',
      source: 'Rec. ITU-R P.1238, table 2',
      kind: 'published',
      args: { frequency: 5.2e9, coefficient: 31, distance: 30, floorLoss: 0 },
      expected: 92.1,
      allowed: 0.001,
    },
  ]),
  checkLaw(partitionLoss, [
    {
      case: 'same-floor exponent 3.27, 31.5 dB at 1 m, 30 m, floor factor 24.4 dB, two block walls at 13 dB',
      source: ATTENUATION,
      kind: 'memory',
      args: { referenceLoss: 31.5, exponent: 3.27, distance: 30, floorLoss: 24.4, walls: 2, wallLoss: 13 },
      expected: 130.2,
      allowed: 5e-4,
    },
    {
      case: 'multi-floor exponent 5.22, 5.5 dB at 1 m, 30 m, two block walls at 13 dB',
      source: ATTENUATION,
      kind: 'memory',
      args: { referenceLoss: 5.5, exponent: 5.22, distance: 30, floorLoss: 0, walls: 2, wallLoss: 13 },
      expected: 108.6,
      allowed: 5e-4,
    },
  ]),
  checkLaw(streetLoss, [
    {
      case: 'in sight, 2.4 GHz, 100 m, by hand: 42.4 + 29.2 + 8.02',
      source: STREET,
      kind: 'published',
      args: { place: 'in sight', frequency: 2.4e9, distance: 100 },
      expected: 79.62,
      allowed: 3e-4,
    },
    {
      case: 'residential, out of sight, 2.4 GHz, 50 m, by hand: 51.14 + 18.8 + 7.87',
      source: STREET,
      kind: 'published',
      args: { place: 'residential, out of sight', frequency: 2.4e9, distance: 50 },
      expected: 77.81,
      allowed: 3e-4,
    },
    {
      case: 'high-rise, out of sight, 2.4 GHz, 100 m, by hand: 80 + 10.2 + 8.97',
      source: STREET,
      kind: 'published',
      args: { place: 'high-rise, out of sight', frequency: 2.4e9, distance: 100 },
      expected: 99.17,
      allowed: 3e-4,
    },
  ]),
];
