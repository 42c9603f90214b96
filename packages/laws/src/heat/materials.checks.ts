import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { printedPartLimit } from './materials.ts';

const GUIDE = 'printing guides on softening of loaded parts, from memory';

const limit = (plastic: 'PLA' | 'PETG' | 'ABS', celsius: number) =>
  ({
    case: `${plastic}: about ${celsius} °C`,
    source: GUIDE,
    kind: 'memory',
    args: { plastic },
    expected: ZERO_CELSIUS + celsius,
    allowed: 0.01,
  }) as const;

export const materialsChecks = [checkLaw(printedPartLimit, [limit('PLA', 50), limit('PETG', 68), limit('ABS', 90)])];
