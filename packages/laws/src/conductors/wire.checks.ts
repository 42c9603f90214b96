import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { copperResistance } from './wire.ts';

export const wireChecks = [
  checkLaw(copperResistance, [
    {
      case: '1 Ω at 20 °C heated to 75 °C, cable form (234.5 + T)/254.5',
      source: 'IEC 60228, annex on temperature correction',
      kind: 'published',
      args: { r20: 1, temperature: ZERO_CELSIUS + 75 },
      expected: (234.5 + 75) / 254.5,
      allowed: 0.002,
    },
  ]),
];
