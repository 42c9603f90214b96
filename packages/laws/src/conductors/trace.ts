/** Traces of printed boards: current against width and rise. */
import { law } from '../law.ts';

/** Where the trace lies. */
export const TRACE_LAYERS = ['outer', 'inner'] as const;
export type TraceLayer = (typeof TRACE_LAYERS)[number];

/** Constant of the fit by layer [A/(K^0.44·mil^1.45)], IPC-2221. */
export const TRACE_CONSTANT: Readonly<Record<TraceLayer, number>> = { outer: 0.048, inner: 0.024 };
/** Thickness of one ounce of copper per square foot [m], 1.378 mil. */
export const OUNCE_COPPER = 1.378 * 25.4e-6;
const RISE_POWER = 0.44;
const AREA_POWER = 0.725;
const SQUARE_MIL = 25.4e-6 ** 2;

const RISE = { symbol: 'ΔT', is: 'permitted rise of the trace', unit: 'K', from: 1, to: 100 } as const;
const THICKNESS = { symbol: 'h', is: 'copper thickness', unit: 'm', from: 5e-6, to: 2.2e-4 } as const;
const LAYER = { symbol: 'k', is: 'layer: 0.048 outer, 0.024 inner', unit: 'name', oneOf: TRACE_LAYERS } as const;
const SHARED = {
  validFor: 'up to 35 A outside and 17.5 A inside, width to 10 mm; the curves are from the 1950s and careful',
  leavesOut: 'planes beneath and neighbours beside the trace, board material; IPC-2152 supersedes it',
  source: 'IPC-2221, section 6.2, fit to the current-carrying charts: I = k·ΔT^0.44·A^0.725',
} as const;

/** Current a trace carries with a given rise. */
export const traceCurrent = law(
  {
    id: 'trace-current',
    title: 'Current of a printed-board trace',
    equation: 'I = k · ΔT^0.44 · (w·h/mil²)^0.725',
    args: {
      width: { symbol: 'w', is: 'trace width', unit: 'm', above: 0, to: 0.0102 },
      thickness: THICKNESS,
      rise: RISE,
      layer: LAYER,
    },
    gives: { symbol: 'I', is: 'current', unit: 'A' },
    ...SHARED,
  },
  ({ width, thickness, rise, layer }) =>
    TRACE_CONSTANT[layer] * rise ** RISE_POWER * ((width * thickness) / SQUARE_MIL) ** AREA_POWER,
);

/** Trace width for a current and a permitted rise. */
export const traceWidth = law(
  {
    id: 'trace-width',
    title: 'Width of a printed-board trace',
    equation: 'w = (I/(k · ΔT^0.44))^(1/0.725) · mil²/h',
    args: {
      current: { symbol: 'I', is: 'current', unit: 'A', above: 0, to: 35 },
      thickness: THICKNESS,
      rise: RISE,
      layer: LAYER,
    },
    gives: { symbol: 'w', is: 'trace width', unit: 'm' },
    ...SHARED,
  },
  ({ current, thickness, rise, layer }) =>
    (SQUARE_MIL / thickness) * (current / (TRACE_CONSTANT[layer] * rise ** RISE_POWER)) ** (1 / AREA_POWER),
);
