/** Units of the trade against the conversion factors of a published guide. */
import { type Checks, checkSubject } from '@longrein/laws/check';
import { parseQuantity } from './quantity.ts';

/** [text, dimension, SI value as the guide prints it]; digits are those of the guide. */
const FACTORS = [
  ['1 kgf', 'N', 9.80665],
  ['1 kgf·cm', 'N·m', 9.80665e-2],
  ['1 km/h', 'm/s', 2.777778e-1],
  ['1 rpm', 'rad/s', 1.047198e-1],
  ['1 deg', 'rad', 1.745329e-2],
  ['1 Wh', 'J', 3600],
  ['1 mAh', 'C', 3.6],
  ['1 d', 's', 86_400],
  ['23 °C', '°C', 296.15],
  ['1 N*cm', 'N·m', 1e-2],
  ['1 g/mm^3', 'kg/m³', 1e6],
] as const;

export const unitChecks: Checks = checkSubject(
  'units',
  FACTORS.map(([text, dimension, expected]) => ({
    case: `${text} in SI`,
    source: 'NIST Special Publication 811 (2008), Appendix B, factors for units',
    kind: 'memory',
    expected,
    allowed: 5e-7,
    ours: () => {
      const reading = parseQuantity(text, dimension);
      return reading.ok ? reading.quantity.value : Number.NaN;
    },
  })),
);
