import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { onderdonkFusingCurrent, onderdonkFusingTime, preeceFusingCurrent } from './fusing.ts';
import { CIRCULAR_MIL } from './wire.ts';

const NESS = 'Ness Engineering, fuse equations after Preece, table for copper';
const WORKED =
  'public worked example (2581 cmil 5 s, 4110 cmil 400 A, 25 °C), its 234 − Ta put right to 234 + Ta and worked by hand';

export const fusingChecks = [
  checkLaw(
    preeceFusingCurrent,
    (
      [
        [10, 0.0098],
        [30, 0.0205],
        [100, 0.0457],
        [200, 0.0725],
      ] as const
    ).map(([amperes, inches]) => ({
      case: `a copper wire of ${inches} in melts at ${amperes} A`,
      source: NESS,
      kind: 'published' as const,
      args: { diameter: inches * 0.0254 },
      expected: amperes,
      allowed: 0.01,
    })),
  ),
  checkLaw(onderdonkFusingCurrent, [
    {
      case: '2581 circular mil, 5 s, 25 °C',
      source: WORKED,
      kind: 'published',
      args: { area: 2581 * CIRCULAR_MIL, time: 5, ambient: ZERO_CELSIUS + 25 },
      expected: 168.9,
      allowed: 0.001,
    },
    {
      case: '1000 circular mil, 1 s, 40 °C: log10(1317/274) = 0.6819, √(0.6819/33) = 0.14375 A per circular mil',
      source: 'Onderdonk’s equation worked with logarithms by hand',
      kind: 'published',
      args: { area: 1000 * CIRCULAR_MIL, time: 1, ambient: ZERO_CELSIUS + 40 },
      expected: 143.75,
      allowed: 0.001,
    },
  ]),
  checkLaw(onderdonkFusingTime, [
    {
      case: '4110 circular mil at 400 A, 25 °C',
      source: WORKED,
      kind: 'published',
      args: { area: 4110 * CIRCULAR_MIL, current: 400, ambient: ZERO_CELSIUS + 25 },
      expected: 2.26,
      allowed: 0.002,
    },
  ]),
];
