/** How long charging takes: constant current, then a tail at constant voltage, and what a USB source allows. */
import { law } from '../law.ts';

const LINEAR =
  'constant-current constant-voltage charge of a cell with rest voltage V0 + m q/Q and series resistance R, worked from Kirchhoff’s voltage law';
const LINEAR_LEAVES = 'the curvature of the rest voltage, diffusion, charge refused in the cold';
const LINEAR_VALID = 'lithium and lead cells; V0 and m fitted to the upper half of the rest-voltage curve';
const emptyVoltage = {
  symbol: 'V0',
  is: 'rest voltage at zero charge of the straight line',
  unit: 'V',
  above: 0,
} as const;
const rise = { symbol: 'm', is: 'rise of the rest voltage from empty to full', unit: 'V', above: 0 } as const;
const capacity = { symbol: 'Q', is: 'capacity', unit: 'C', above: 0 } as const;
const resistance = { symbol: 'R', is: 'series resistance', unit: 'Ω', above: 0 } as const;
const current = { symbol: 'I', is: 'charge current', unit: 'A', above: 0 } as const;
const limit = { symbol: 'Vc', is: 'constant voltage of the charger', unit: 'V', above: 0 } as const;
const taper = { symbol: 'Ie', is: 'current at which charging stops', unit: 'A', above: 0 } as const;

/** State of charge at which the charger goes over from constant current to constant voltage. */
export const chargeAtSwitch = law(
  {
    id: 'charge-at-switch',
    title: 'State of charge when constant voltage begins',
    equation: 's = (Vc − I R − V0) / m',
    args: { limit, current, resistance, emptyVoltage, rise },
    gives: { symbol: 's', is: 'state of charge at the change-over', unit: '1' },
    validFor: LINEAR_VALID,
    leavesOut: LINEAR_LEAVES,
    source: LINEAR,
  },
  ({ limit, current, resistance, emptyVoltage, rise }) => (limit - current * resistance - emptyVoltage) / rise,
);

/** Time of the constant-current part. */
export const constantCurrentTime = law(
  {
    id: 'constant-current-time',
    title: 'Duration of the constant-current part of a charge',
    equation: 't = (s1 − s0) · Q / I',
    args: {
      start: { symbol: 's0', is: 'state of charge at the start', unit: '1', from: 0, to: 1 },
      end: { symbol: 's1', is: 'state of charge when constant voltage begins', unit: '1', from: 0, to: 1 },
      capacity,
      current,
    },
    gives: { symbol: 't', is: 'time', unit: 's' },
    validFor: 'lithium cells, coulombic efficiency above 0.99',
    leavesOut: 'trickle start of a deeply discharged cell',
    source: 'charge balance; definition of electric current, IEC 60050-121',
  },
  ({ start, end, capacity, current }) => ((end - start) * capacity) / current,
);

/** Time of the constant-voltage tail from resistance and slope. */
export const constantVoltageTime = law(
  {
    id: 'constant-voltage-time',
    title: 'Duration of the constant-voltage tail, from resistance and slope',
    equation: 't = (R Q / m) · ln(I / Ie)',
    args: { resistance, capacity, rise, current, taper },
    gives: { symbol: 't', is: 'time', unit: 's' },
    validFor: `${LINEAR_VALID}; Ie below I`,
    leavesOut: LINEAR_LEAVES,
    source: LINEAR,
  },
  ({ resistance, capacity, rise, current, taper }) => ((resistance * capacity) / rise) * Math.log(current / taper),
);

/** Time of the tail from the charge still to go: the rival when the change-over was observed. */
export const tailTime = law(
  {
    id: 'tail-time',
    title: 'Duration of the constant-voltage tail, from the charge it brings',
    equation: 't = (q / (I − Ie)) · ln(I / Ie)',
    args: {
      remaining: { symbol: 'q', is: 'charge brought by the tail', unit: 'C', above: 0 },
      current,
      taper,
    },
    gives: { symbol: 't', is: 'time', unit: 's' },
    validFor: 'a tail that falls exponentially from I to Ie; Ie below I',
    leavesOut: 'slower late tails of real cells',
    source: 'area under a falling exponential, integral calculus; exponential tail as in chargers’ application notes',
  },
  ({ remaining, current, taper }) => (remaining / (current - taper)) * Math.log(current / taper),
);

/** Time to charge a nickel pack, which takes more charge than it gives. */
export const nickelChargeTime = law(
  {
    id: 'nickel-charge-time',
    title: 'Time to charge a nickel-metal hydride pack',
    equation: 't = Q / (η I)',
    args: {
      capacity,
      efficiency: { symbol: 'η', is: 'coulombic efficiency, 0.66 slow to 0.92 fast', unit: '1', from: 0.5, to: 1 },
      current,
    },
    gives: { symbol: 't', is: 'time from empty', unit: 's' },
    validFor: 'slow charge without an end signal, or fast charge ended by −dV or dT/dt',
    leavesOut: 'temperature; what was left in the pack',
    source: 'charge balance with coulombic efficiency, NiMH makers’ handbooks',
  },
  ({ capacity, efficiency, current }) => capacity / (efficiency * current),
);

/** Pack charge current that a limited source can feed through a converting charger. */
export const sourceLimitedChargeCurrent = law(
  {
    id: 'source-limited-charge-current',
    title: 'Charge current that a source of limited current allows',
    equation: 'I = η · Us · Is / U',
    args: {
      sourceVoltage: { symbol: 'Us', is: 'voltage of the source', unit: 'V', above: 0 },
      sourceCurrent: { symbol: 'Is', is: 'current limit of the source', unit: 'A', above: 0 },
      efficiency: { symbol: 'η', is: 'efficiency of the charger', unit: '1', above: 0, to: 1 },
      packVoltage: { symbol: 'U', is: 'pack voltage while charging', unit: 'V', above: 0 },
    },
    gives: { symbol: 'I', is: 'charge current', unit: 'A' },
    validFor: 'switching chargers; a linear charger passes the source current unchanged',
    leavesOut: 'the charger’s own current limit, voltage drop of the cable',
    source: 'power balance of a converter, any power electronics text',
  },
  ({ sourceVoltage, sourceCurrent, efficiency, packVoltage }) =>
    (efficiency * sourceVoltage * sourceCurrent) / packVoltage,
);

/** Says which law of the tail to use, and why. */
export function chooseTail(switchObserved: boolean): {
  readonly use: 'tail-time' | 'constant-voltage-time';
  readonly why: string;
} {
  return switchObserved
    ? {
        use: 'tail-time',
        why: 'The change-over was observed, so the charge still to go is known without a model of the cell.',
      }
    : { use: 'constant-voltage-time', why: 'Only resistance and the slope of the rest voltage are known.' };
}
