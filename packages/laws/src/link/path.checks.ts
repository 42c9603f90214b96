import { checkLaw, checkSubject, type LawRow } from '../check.ts';
import { receivedPower } from './budget.ts';
import { wattsFromDbm } from './decibel.ts';
import {
  breakpointDistance,
  crossoverDistance,
  freeSpaceLoss,
  logDistanceLoss,
  twoRayFarLoss,
  twoRayLoss,
} from './path.ts';

const RAP = 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed.';
const NS3 = 'ns-3 network simulator, propagation loss test vectors';
const CASE_STUDY = 'published case study of a wireless link, loss table';

/** Carrier of 0.125 m and transmitter of the ns-3 test vectors. */
const CARRIER = 2398339664;
const TRANSMITTER = 50.357e-3;
/** Loss that a printed received power implies with isotropic aerials [dB]. */
const lossTo = (received: number): number => 10 * Math.log10(TRANSMITTER / received);

const freeSpace = (frequency: number, distance: number, expected: number) =>
  ({
    case: `${distance / 1000} km at ${frequency / 1e9} GHz`,
    source: CASE_STUDY,
    kind: 'published',
    args: { frequency, distance },
    expected,
    allowed: 2e-4,
  }) as const;

const flat = (distance: number, roverHeight: number, received: number) =>
  ({
    case: `heights 1.5 m and ${roverHeight} m, ${distance} m: ${received} W of 50.357 mW`,
    source: NS3,
    kind: 'reference library',
    args: { distance, baseHeight: 1.5, roverHeight },
    expected: lossTo(received),
    allowed: 2e-6,
  }) as const;

const twoRays = (frequency: number, baseHeight: number, roverHeight: number, distance: number, expected: number) =>
  ({
    case: `${frequency / 1e9} GHz, heights ${baseHeight} m and ${roverHeight} m, ${distance} m, over ground of ε = 15, σ = 0.1 S/m`,
    source: 'independent computation with the complex reflection coefficient (Rappaport, section on ground reflection)',
    kind: 'reference library',
    args: { frequency, distance, baseHeight, roverHeight, permittivity: 15 },
    expected,
    allowed: 0.0015,
  }) as const satisfies LawRow<object>;

export const pathChecks = [
  checkLaw(freeSpaceLoss, [
    freeSpace(2.4e9, 5000, 114.02),
    freeSpace(5.8e9, 5000, 121.69),
    freeSpace(2.4e9, 10000, 120.05),
    freeSpace(5.8e9, 10000, 127.71),
  ]),
  checkSubject('received power over free space', [
    ...[[100, 4.98265e-10] as const, [1000, 4.98265e-12] as const].map(([distance, expected]) => ({
      case: `50.357 mW (17.0206 dBm) at ${distance} m, wavelength 0.125 m`,
      source: NS3,
      kind: 'reference library' as const,
      ours: () => {
        const pathLoss = freeSpaceLoss({ frequency: CARRIER, distance });
        return wattsFromDbm({ level: receivedPower({ radiated: 17.0206, gain: 0, pathLoss, extraLoss: 0 }) });
      },
      expected,
      allowed: 2e-5,
    })),
    {
      case: '50 W (47 dBm) at 900 MHz, 10 km, receiving gain 2 (3.01 dB)',
      source: `${RAP}, example 4.3, printed answer from memory`,
      kind: 'memory',
      ours: () => {
        const pathLoss = freeSpaceLoss({ frequency: 900e6, distance: 10000 });
        return receivedPower({ radiated: 47.0, gain: 3.01, pathLoss, extraLoss: 0 });
      },
      expected: -61.5,
      allowed: 0.002,
    },
  ]),
  checkLaw(twoRayFarLoss, [
    flat(500, 1.5, 4.07891862e-12),
    flat(2000, 1.5, 1.593327585938e-14),
    flat(500, 2.5, 1.13303295e-11),
    flat(1000, 5.5, 3.42742467375e-12),
  ]),
  checkLaw(twoRayLoss, [
    twoRays(2.437e9, 1.5, 0.15, 30, 72.9),
    twoRays(2.437e9, 1.5, 0.3, 100, 87.3),
    twoRays(2.437e9, 3, 0.3, 30, 66.9),
    twoRays(2.437e9, 3, 0.5, 30, 70.3),
    twoRays(5.5e9, 1.5, 0.3, 30, 72.8),
    twoRays(5.5e9, 3, 0.3, 30, 79.8),
    twoRays(5.5e9, 3, 0.3, 1000, 121.0),
    {
      case: 'heights 1.5 m, wavelength 0.125 m, 2 km: the far form, 1.593327585938e-14 W of 50.357 mW, is the limit',
      source: NS3,
      kind: 'reference library',
      args: { frequency: CARRIER, distance: 2000, baseHeight: 1.5, roverHeight: 1.5, permittivity: 15 },
      expected: lossTo(1.593327585938e-14),
      allowed: 0.002,
    },
  ]),
  checkLaw(crossoverDistance, [
    {
      case: 'heights 1.5 m, wavelength 0.125 m: where 20·log10(4πd/λ) equals 40·log10 d − 20·log10 h1h2, by bisection',
      source: `${RAP}, two-ray model`,
      kind: 'published',
      args: { frequency: CARRIER, baseHeight: 1.5, roverHeight: 1.5 },
      expected: 226.19,
      allowed: 5e-4,
    },
  ]),
  checkLaw(breakpointDistance, [
    {
      case: '2.437 GHz, heights 3 m and 0.3 m: where the reflected ray is half a wave longer, by bisection',
      source: 'Rec. ITU-R P.1411-12, section 4.1.2, breakpoint distance',
      kind: 'published',
      args: { frequency: 2.437e9, baseHeight: 3, roverHeight: 0.3 },
      expected: 29.11,
      allowed: 0.006,
    },
  ]),
  checkLaw(logDistanceLoss, [
    ...[[10, 4.98265e-9] as const, [80, 9.73173e-12] as const].map(([distance, received]) => ({
      case: `exponent 3, 40.046 dB at 1 m, ${distance} m: ${received} W of 50.357 mW`,
      source: NS3,
      kind: 'reference library' as const,
      args: { referenceLoss: 40.046, exponent: 3, distance, referenceDistance: 1 },
      expected: lossTo(received),
      allowed: 2e-5,
    })),
    {
      case: 'exponent 4.4 fitted to four measurements, 2 km against 100 m',
      source: `${RAP}, example 4.9, printed answer from memory`,
      kind: 'memory',
      args: { referenceLoss: 0, exponent: 4.4, distance: 2000, referenceDistance: 100 },
      expected: 57.24,
      allowed: 1e-4,
    },
  ]),
];
