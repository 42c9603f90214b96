/** The best points of a brushed motor, and its time constants. */
import { law } from '../law.ts';
import { CONSTANT, FREE_CURRENT, RESISTANCE, VOLTAGE } from './arguments.ts';

const STALL_CURRENT = { symbol: 'Is', is: 'stall current', unit: 'A', above: 0 } as const;
const SHARED = {
  validFor: 'straight-line motor at constant voltage, flux and temperature',
  leavesOut: 'armature reaction, brush drop, friction that grows with speed or load',
  source: 'motor makers’ catalogues, e.g. maxon, Key information, catalogue May 2009; any machines text',
} as const;

/** Largest mechanical power at the shaft, at half the speed between no load and stall. */
export const motorPeakPower = law(
  {
    id: 'motor-peak-power',
    title: 'Peak shaft power',
    equation: 'Pmax = (V − R·I0)²/(4·R)',
    args: { voltage: VOLTAGE, resistance: RESISTANCE, noLoadCurrent: FREE_CURRENT },
    gives: { symbol: 'Pmax', is: 'largest shaft power', unit: 'W' },
    ...SHARED,
  },
  ({ voltage, resistance, noLoadCurrent }) => (voltage - resistance * noLoadCurrent) ** 2 / (4 * resistance),
);

/** Best efficiency; the gap between torque and back-EMF constant spoils it in proportion. */
export const motorPeakEfficiency = law(
  {
    id: 'motor-peak-efficiency',
    title: 'Best efficiency of a motor',
    equation: 'η = g·(1 − √(I0/Is))²',
    args: {
      noLoadCurrent: FREE_CURRENT,
      stallCurrent: STALL_CURRENT,
      gap: { symbol: 'g', is: 'torque constant over back-EMF constant', unit: '1', above: 0, to: 1.2 },
    },
    gives: { symbol: 'η', is: 'best efficiency', unit: '1' },
    ...SHARED,
  },
  ({ noLoadCurrent, stallCurrent, gap }) => gap * (1 - Math.sqrt(noLoadCurrent / stallCurrent)) ** 2,
);

/** Current at which the efficiency is best. */
export const motorBestCurrent = law(
  {
    id: 'motor-best-current',
    title: 'Current of best efficiency',
    equation: 'i = √(I0·Is)',
    args: { noLoadCurrent: FREE_CURRENT, stallCurrent: STALL_CURRENT },
    gives: { symbol: 'i', is: 'motor current', unit: 'A' },
    ...SHARED,
  },
  ({ noLoadCurrent, stallCurrent }) => Math.sqrt(noLoadCurrent * stallCurrent),
);

/** Speed lost per unit of torque. */
export const motorSpeedGradient = law(
  {
    id: 'motor-speed-gradient',
    title: 'Slope of speed against torque',
    equation: 's = R/k²',
    args: { resistance: RESISTANCE, motorConstant: CONSTANT },
    gives: { symbol: 's', is: 'speed lost per torque', unit: 'rad/(s·N·m)' },
    ...SHARED,
  },
  ({ resistance, motorConstant }) => resistance / motorConstant ** 2,
);

/** Time in which a motor reaches 63 % of its speed, moving an inertia. */
export const mechanicalTimeConstant = law(
  {
    id: 'mechanical-time-constant',
    title: 'Mechanical time constant',
    equation: 'τm = R·J/k²',
    args: {
      resistance: RESISTANCE,
      inertia: { symbol: 'J', is: 'inertia of the rotor and all it moves, seen at the rotor', unit: 'kg·m²', above: 0 },
      motorConstant: CONSTANT,
    },
    gives: { symbol: 'τm', is: 'mechanical time constant', unit: 's' },
    ...SHARED,
    validFor: 'a stiff supply: R includes bridge, leads and pack when they matter',
  },
  ({ resistance, inertia, motorConstant }) => (resistance * inertia) / motorConstant ** 2,
);

/** Time in which the current reaches 63 % of its final value. */
export const electricalTimeConstant = law(
  {
    id: 'electrical-time-constant',
    title: 'Electrical time constant',
    equation: 'τe = L/R',
    args: { inductance: { symbol: 'L', is: 'winding inductance', unit: 'H', above: 0 }, resistance: RESISTANCE },
    gives: { symbol: 'τe', is: 'electrical time constant', unit: 's' },
    ...SHARED,
    leavesOut: 'iron loss, which lowers L at high frequency',
  },
  ({ inductance, resistance }) => inductance / resistance,
);
