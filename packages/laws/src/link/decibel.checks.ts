import { checkLaw } from '../check.ts';
import { dbmFromWatts, wattsFromDbm, wavelength } from './decibel.ts';

const RAP = 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed.';

export const decibelChecks = [
  checkLaw(dbmFromWatts, [
    {
      case: '50 W transmitter',
      source: `${RAP}, example 4.2, printed answer from memory`,
      kind: 'memory',
      args: { power: 50 },
      expected: 47.0,
      allowed: 0.002,
    },
    {
      case: '4 W, the radiated limit at 2.4 GHz',
      source: '47 CFR 15.247, 1 W with 6 dBi, 36 dBm',
      kind: 'published',
      args: { power: 4 },
      expected: 36,
      allowed: 0.001,
    },
    {
      case: '50.357 mW, the transmitter of the propagation test vectors',
      source: 'ns-3 network simulator, propagation loss test vectors',
      kind: 'reference library',
      args: { power: 50.357e-3 },
      expected: 17.0206,
      allowed: 1e-5,
    },
  ]),
  checkLaw(wattsFromDbm, [
    {
      case: '−92.68 dBm received over 5 km of flat ground',
      source: `${RAP}, example 4.6, printed answer from memory`,
      kind: 'memory',
      args: { level: -92.68 },
      expected: 5.4e-13,
      allowed: 0.01,
    },
    {
      case: '48 dBm radiated by a 24 dBi dish',
      source: 'worked example to 47 CFR 15.247, point-to-point rule',
      kind: 'published',
      args: { level: 48 },
      expected: 63,
      allowed: 0.005,
    },
  ]),
  checkLaw(wavelength, [
    {
      case: '2 398 339 664 Hz is chosen to give 0.125 m',
      source: 'ns-3 network simulator, propagation loss test vectors',
      kind: 'reference library',
      args: { frequency: 2398339664 },
      expected: 0.125,
      allowed: 1e-8,
    },
    {
      case: '900 MHz is taken as one third of a metre',
      source: `${RAP}, example 4.7, printed answer from memory`,
      kind: 'memory',
      args: { frequency: 900e6 },
      expected: 1 / 3,
      allowed: 0.001,
    },
  ]),
];
