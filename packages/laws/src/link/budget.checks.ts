import { checkLaw, checkSubject } from '../check.ts';
import { linkMargin, noiseFloor, powerWithinLimit, radiatedPower, receivedPower, signalToNoise } from './budget.ts';
import { freeSpaceLoss } from './path.ts';

const BRIDGE = 'user guide of a 2.4 GHz wireless bridge, appendix C';
const CASE_STUDY = 'published case study of a wireless link, 5.8 GHz over 5 km';
const NS3 = 'ns-3 network simulator, wifi testing chapter';
const DISH = 'worked example to 47 CFR 15.247, point-to-point rule';
const PLANNING = 'Wireless Networking in the Developing World, link planning, from memory';

export const budgetChecks = [
  checkLaw(radiatedPower, [
    {
      case: '4 dBm, 18 dBi, 10 m of cable at 0.6 dB/m',
      source: BRIDGE,
      kind: 'published',
      args: { power: 4, gain: 18, cable: 6 },
      expected: 16,
      allowed: 1e-6,
    },
    {
      case: '24 dBm into a 24 dBi dish',
      source: DISH,
      kind: 'published',
      args: { power: 24, gain: 24, cable: 0 },
      expected: 48,
      allowed: 1e-6,
    },
  ]),
  checkLaw(powerWithinLimit, [
    {
      case: '24 dBi dish under the European limit of 20 dBm',
      source: DISH,
      kind: 'published',
      args: { limit: 20, gain: 24, cable: 0 },
      expected: -4,
      allowed: 1e-6,
    },
    {
      case: 'the bridge read backwards: 16 dBm radiated, 18 dBi, 6 dB of cable',
      source: BRIDGE,
      kind: 'published',
      args: { limit: 16, gain: 18, cable: 6 },
      expected: 4,
      allowed: 1e-6,
    },
  ]),
  checkLaw(receivedPower, [
    {
      case: 'EIRP 16 dBm, 18 dBi, 110 dB of path, 6 dB of cable',
      source: BRIDGE,
      kind: 'published',
      args: { radiated: 16, gain: 18, pathLoss: 110, extraLoss: 6 },
      expected: -82,
      allowed: 0.001,
    },
    {
      case: 'access point to client, 20 dBm + 10 dBi − 2 dB, 114 dB, 14 dBi − 2 dB',
      source: PLANNING,
      kind: 'memory',
      args: { radiated: 28, gain: 14, pathLoss: 114, extraLoss: 2 },
      expected: -74,
      allowed: 0.001,
    },
    {
      case: 'client to access point, 14.8 dBm + 14 dBi − 2 dB, 114 dB, 10 dBi − 2 dB: the weaker direction',
      source: PLANNING,
      kind: 'memory',
      args: { radiated: 26.8, gain: 10, pathLoss: 114, extraLoss: 2 },
      expected: -79,
      allowed: 0.004,
    },
  ]),
  checkLaw(noiseFloor, [
    {
      case: '20 MHz, noise figure 7 dB',
      source: NS3,
      kind: 'reference library',
      args: { bandwidth: 20e6, noiseFigure: 7 },
      expected: -93.97,
      allowed: 2e-4,
    },
    {
      case: '1 Hz, perfect receiver: the book value',
      source: 'common practice, no source: −174 dBm in each hertz',
      kind: 'common practice',
      args: { bandwidth: 1, noiseFigure: 0 },
      expected: -174,
      allowed: 3e-4,
    },
  ]),
  checkLaw(signalToNoise, [
    {
      case: 'signal −79.71 dBm over noise −93.97 dBm',
      source: NS3,
      kind: 'reference library',
      args: { received: -79.71, noise: -93.97 },
      expected: 14.25,
      allowed: 0.001,
    },
    {
      case: 'signal −64.69 dBm over noise −93.97 dBm',
      source: NS3,
      kind: 'reference library',
      args: { received: -64.69, noise: -93.97 },
      expected: 29.27,
      allowed: 0.001,
    },
  ]),
  checkLaw(linkMargin, [
    {
      case: 'received −50.69 dBm, sensitivity −72 dBm',
      source: CASE_STUDY,
      kind: 'published',
      args: { received: -50.69, sensitivity: -72 },
      expected: 21.31,
      allowed: 2e-4,
    },
    {
      case: 'received −82 dBm, sensitivity −84 dBm: too small, the guide says',
      source: BRIDGE,
      kind: 'published',
      args: { received: -82, sensitivity: -84 },
      expected: 2,
      allowed: 1e-6,
    },
  ]),
  checkSubject('link budget', [
    {
      case: '5.8 GHz, 5 km, 23 dBm, 24 dBi at both ends, sensitivity −72 dBm: margin',
      source: CASE_STUDY,
      kind: 'published',
      ours: () => {
        const pathLoss = freeSpaceLoss({ frequency: 5.8e9, distance: 5000 });
        const radiated = radiatedPower({ power: 23, gain: 24, cable: 0 });
        const received = receivedPower({ radiated, gain: 24, pathLoss, extraLoss: 0 });
        return linkMargin({ received, sensitivity: -72 });
      },
      expected: 21.31,
      allowed: 0.001,
    },
    {
      case: '1 dBm, 5.18 GHz, 50 m, 20 MHz, noise figure 7 dB: signal-to-noise ratio',
      source: NS3,
      kind: 'reference library',
      ours: () => {
        const pathLoss = freeSpaceLoss({ frequency: 5.18e9, distance: 50 });
        const received = receivedPower({ radiated: 1, gain: 0, pathLoss, extraLoss: 0 });
        return signalToNoise({ received, noise: noiseFloor({ bandwidth: 20e6, noiseFigure: 7 }) });
      },
      expected: 14.25,
      allowed: 0.002,
    },
  ]),
];
