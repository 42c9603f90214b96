import { checkLaw } from '../check.ts';
import { OUNCE_COPPER, traceCurrent, traceWidth } from './trace.ts';

const MIL = 25.4e-6;
const FAB = 'Fab Academy note on trace widths after IPC-2221';
const HWB = 'The Hardware Book, printed-circuit trace widths after IPC-2221, one ounce, 10 K';
const CALC = 'Qorvo, trace width calculator formula I = k·ΔT^0.44·A^0.725, worked with logarithms by hand';
const ONE = { thickness: OUNCE_COPPER, rise: 10, layer: 'outer' } as const;

export const traceChecks = [
  checkLaw(traceCurrent, [
    {
      case: '0.3996 mm outside, 1 oz, 10 K',
      source: FAB,
      kind: 'published',
      args: { width: 0.3996e-3, ...ONE },
      expected: 1.23,
      allowed: 0.005,
    },
    {
      case: '30.8 mil outside, 1 oz, 10 K',
      source: HWB,
      kind: 'published',
      args: { width: 30.8 * MIL, ...ONE },
      expected: 2,
      allowed: 0.005,
    },
    {
      case: '0.781 mm inside, 1 oz, 10 K: half the outside current of 2 A',
      source: `${HWB}; inner constant is half of the outer`,
      kind: 'published',
      args: { width: 0.781e-3, thickness: OUNCE_COPPER, rise: 10, layer: 'inner' },
      expected: 1,
      allowed: 0.005,
    },
  ]),
  checkLaw(traceWidth, [
    {
      case: '1 A outside, 1 oz, 10 K',
      source: HWB,
      kind: 'published',
      args: { current: 1, ...ONE },
      expected: 11.8 * MIL,
      allowed: 0.005,
    },
    {
      case: '2 A outside, 1 oz, 10 K',
      source: FAB,
      kind: 'published',
      args: { current: 2, ...ONE },
      expected: 0.78e-3,
      allowed: 0.005,
    },
    {
      case: '5 A inside, 1 oz, 20 K: log A = log(5/(0.024·20^0.44))/0.725 gives 256.3 square mil',
      source: CALC,
      kind: 'published',
      args: { current: 5, thickness: OUNCE_COPPER, rise: 20, layer: 'inner' },
      expected: 186 * MIL,
      allowed: 0.001,
    },
  ]),
];
