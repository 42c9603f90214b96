/** Protection boards of lithium packs: at which current and after how long they open. */
import { law } from '../law.ts';

/** Thresholds of a common one-cell protection chip at room temperature. */
export const PROTECTION_CHIP = {
  over: {
    value: 0.15,
    source: 'data sheet of a common one-cell protection chip, over-current 150 mV ± 30 mV, from memory',
  },
  overDelay: { value: 10e-3, source: 'the same sheet, about 10 ms, from memory' },
  short: { value: 1.35, source: 'the same sheet, short circuit 1.35 V, from memory' },
  shortDelay: { value: 50e-6, source: 'the same sheet, 5 to 50 µs, from memory' },
  lowVoltage: { value: 2.8, source: 'data sheet of a pouch-cell protector, 2.80 V, as quoted in a design note' },
  highVoltage: { value: 4.275, source: 'data sheet of a pouch-cell protector, 4.275 V, as quoted in a design note' },
} as const;

/** Current at which a board that senses across its two transistors opens. */
export const protectionTripCurrent = law(
  {
    id: 'protection-trip-current',
    title: 'Trip current of a protection board that senses across its transistors',
    equation: 'I = Ut / (2 r / n)',
    args: {
      threshold: { symbol: 'Ut', is: 'sense threshold', unit: 'V', above: 0 },
      transistor: { symbol: 'r', is: 'on-resistance of one transistor', unit: 'Ω', above: 0 },
      pairs: { symbol: 'n', is: 'pairs of transistors in parallel', unit: '1', from: 1 },
    },
    gives: { symbol: 'I', is: 'trip current', unit: 'A' },
    validFor: 'boards without a sense resistor: two transistors in series back to back',
    leavesOut: 'spread (±20 % of the threshold), heat (+40 % resistance at 100 °C lowers the trip)',
    source: 'application circuit of one-cell protection chips, data sheets, from memory',
  },
  ({ threshold, transistor, pairs }) => (threshold * pairs) / (2 * transistor),
);

/** Time until the board opens at a current; infinite while it does not. */
export const protectionTripDelay = law(
  {
    id: 'protection-trip-delay',
    title: 'Delay until a protection board opens',
    equation: 't = ∞ below Io; do from Io to Is; ds above Is, at current I',
    args: {
      current: { symbol: 'I', is: 'pack current', unit: 'A', from: 0 },
      overCurrent: { symbol: 'Io', is: 'trip current', unit: 'A', above: 0 },
      shortCurrent: { symbol: 'Is', is: 'current at which the short-circuit comparator acts', unit: 'A', above: 0 },
      overDelay: { symbol: 'do', is: 'over-current delay', unit: 's', above: 0 },
      shortDelay: { symbol: 'ds', is: 'short-circuit delay', unit: 's', above: 0 },
    },
    gives: { symbol: 't', is: 'time until the board opens; infinite when it holds', unit: 's' },
    validFor: 'two-level definite-time boards',
    leavesOut: 'thermal opening, latching until the load is removed, spread of the delays (half to double)',
    source: 'timing diagram of one-cell protection chips, data sheets, from memory',
  },
  ({ current, overCurrent, shortCurrent, overDelay, shortDelay }) => {
    if (current >= shortCurrent) return shortDelay;
    return current >= overCurrent ? overDelay : Number.POSITIVE_INFINITY;
  },
);
