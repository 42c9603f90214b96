import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { wireCurrentForRise, wireRise } from './heating.ts';

const NEC = 'NFPA 70 (2011), table 310.15(B)(17): single insulated conductors in free air at 30 °C, from memory';
const VDE = 'DIN VDE 0298-4, table 11, column 2: single-core cable free in air at 30 °C, conductor 70 °C, from memory';
const AIR = ZERO_CELSIUS + 30;
const AWG_10 = { ambient: AIR, resistancePerMetre: 3.277e-3, conductorDiameter: 2.588e-3, outerDiameter: 4.2e-3 };
const AWG_12 = { ambient: AIR, resistancePerMetre: 5.211e-3, conductorDiameter: 2.0525e-3, outerDiameter: 3.3e-3 };
const AWG_18 = { ambient: AIR, resistancePerMetre: 20.948e-3, conductorDiameter: 1.0237e-3, outerDiameter: 2.1e-3 };
const MM2_10 = { ambient: AIR, resistancePerMetre: 1.91e-3, conductorDiameter: 4.03e-3, outerDiameter: 6.2e-3 };

export const heatingChecks = [
  checkLaw(wireCurrentForRise, [
    {
      case: 'AWG 10, 75 °C conductor: 50 A',
      source: NEC,
      kind: 'memory',
      args: { rise: 45, ...AWG_10 },
      expected: 50,
      allowed: 0.025,
    },
    {
      case: 'AWG 12, 60 °C conductor: 30 A',
      source: NEC,
      kind: 'memory',
      args: { rise: 30, ...AWG_12 },
      expected: 30,
      allowed: 0.025,
    },
    {
      case: 'AWG 18, 90 °C conductor: 18 A',
      source: NEC,
      kind: 'memory',
      args: { rise: 60, ...AWG_18 },
      expected: 18,
      allowed: 0.035,
    },
    { case: '10 mm²: 73 A', source: VDE, kind: 'memory', args: { rise: 40, ...MM2_10 }, expected: 73, allowed: 0.03 },
  ]),
  checkLaw(wireRise, [
    {
      case: 'AWG 10 at its 50 A: 45 K',
      source: NEC,
      kind: 'memory',
      args: { current: 50, ...AWG_10 },
      expected: 45,
      allowed: 0.05,
    },
    {
      case: 'AWG 12 at its 30 A: 30 K',
      source: NEC,
      kind: 'memory',
      args: { current: 30, ...AWG_12 },
      expected: 30,
      allowed: 0.05,
    },
    {
      case: '10 mm² at its 73 A: 40 K',
      source: VDE,
      kind: 'memory',
      args: { current: 73, ...MM2_10 },
      expected: 40,
      allowed: 0.05,
    },
  ]),
];
