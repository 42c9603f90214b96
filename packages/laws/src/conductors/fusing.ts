/** The current that melts a copper wire: for ever (Preece) and within seconds (Onderdonk). */
import { ZERO_CELSIUS } from '../constants.ts';
import { law } from '../law.ts';
import { CIRCULAR_MIL } from './wire.ts';

/** Melting point in Onderdonk's equation [K], 1083 °C. */
const MELTING = ZERO_CELSIUS + 1083;
/** Temperature at which copper's resistance would reach zero by the line of the equation [K], −234 °C. */
const ZERO_RESISTANCE = ZERO_CELSIUS - 234;
/** Onderdonk's constant [s/cmil²·A²]. */
const ONDERDONK = 33;
/** Preece's constant for copper [A/m^1.5]: 80 A/mm^1.5. */
const PREECE = 80 / 1e-3 ** 1.5;
/** Longest time Onderdonk's adiabatic equation answers for [s]. */
export const ONDERDONK_LONGEST = 10;

const AREA = { symbol: 'A', is: 'copper area', unit: 'm²', above: 0 } as const;
const AMBIENT = { symbol: 'Ta', is: 'temperature before', unit: 'K', from: 223, to: 573 } as const;
const ONDERDONK_SOURCE =
  'Onderdonk, as printed in E. R. Stauffacher, Short-time current carrying capacity of copper wire, GE Review 31 (1928)';

/** Steady current that melts a bare copper wire in free air. */
export const preeceFusingCurrent = law(
  {
    id: 'preece-fusing-current',
    title: 'Steady fusing current of bare copper wire',
    equation: 'I = 80 · d^1.5, d in mm',
    args: { diameter: { symbol: 'd', is: 'wire diameter', unit: 'm', from: 0.00005, to: 0.01 } },
    gives: { symbol: 'I', is: 'current that just melts the wire', unit: 'A' },
    validFor: 'one bare round copper wire in free air, tens of seconds and longer',
    leavesOut: 'cooling by terminals of short wires, insulation, which burns long before',
    source: 'W. H. Preece, Proc. Royal Society 36 (1884) 464 and 44 (1888) 109, copper',
  },
  ({ diameter }) => PREECE * diameter ** 1.5,
);

const melting = (ambient: number): number => Math.log10((MELTING - ambient) / (ambient - ZERO_RESISTANCE) + 1);

/** Current that melts a copper wire within a time so short that no heat leaves it. */
export const onderdonkFusingCurrent = law(
  {
    id: 'onderdonk-fusing-current',
    title: 'Short-time fusing current of copper wire',
    equation: 'I = (A/cmil) · √(log10((1083 − Ta)/(234 + Ta) + 1)/(33·t)), Ta in °C',
    args: {
      area: AREA,
      time: { symbol: 't', is: 'time to melt', unit: 's', above: 0, to: ONDERDONK_LONGEST },
      ambient: AMBIENT,
    },
    gives: { symbol: 'I', is: 'current that melts the wire in t', unit: 'A' },
    validFor: 'adiabatic heating, t up to about 10 s; note 234 + Ta: a minus sign there is a widespread error',
    leavesOut: 'heat given off, heat of fusion',
    source: ONDERDONK_SOURCE,
  },
  ({ area, time, ambient }) => (area / CIRCULAR_MIL) * Math.sqrt(melting(ambient) / (ONDERDONK * time)),
);

/** Time a copper wire withstands a current until it melts, if no heat leaves it. */
export const onderdonkFusingTime = law(
  {
    id: 'onderdonk-fusing-time',
    title: 'Time until a copper wire melts',
    equation: 't = (A/cmil)² · log10((1083 − Ta)/(234 + Ta) + 1)/(33·I²), Ta in °C',
    args: { area: AREA, current: { symbol: 'I', is: 'current', unit: 'A', above: 0 }, ambient: AMBIENT },
    gives: { symbol: 't', is: 'time to melt; beyond about 10 s it is too short', unit: 's' },
    validFor: 'adiabatic heating; results above about 10 s are a lower bound',
    leavesOut: 'heat given off, heat of fusion',
    source: ONDERDONK_SOURCE,
  },
  ({ area, current, ambient }) => ((area / CIRCULAR_MIL) ** 2 * melting(ambient)) / (ONDERDONK * current ** 2),
);

/** Which fusing law answers, and why. */
export interface FusingChoice {
  /** Current that melts the wire [A]. */
  readonly current: number;
  readonly law: 'preece-fusing-current' | 'onderdonk-fusing-current';
  readonly why: string;
}

/** Fusing current for an exposure of `time` seconds: Onderdonk while heat has no time to leave, Preece afterwards. */
export function chooseFusingCurrent(wire: { area: number; time: number; ambient: number }): FusingChoice {
  const steady = preeceFusingCurrent({ diameter: Math.sqrt((4 * wire.area) / Math.PI) });
  if (wire.time > ONDERDONK_LONGEST) {
    return {
      current: steady,
      law: 'preece-fusing-current',
      why: 'Beyond 10 s the wire gives off heat while it warms.',
    };
  }
  const short = onderdonkFusingCurrent(wire);
  return short > steady
    ? { current: short, law: 'onderdonk-fusing-current', why: 'So short that hardly any heat leaves the wire.' }
    : {
        current: steady,
        law: 'preece-fusing-current',
        why: 'The adiabatic figure lies below what the wire carries for ever, so heat does leave it.',
      };
}
