/** Capacitors on the bus: riding through a dip, and the rush when the pack is plugged in. */
import { law } from '../law.ts';

const CIRCUIT = 'energy of a capacitor, ½ C U², any circuit text';
const RC = 'charging of a capacitor through a resistor, any circuit text';
const power = { symbol: 'P', is: 'constant power drawn', unit: 'W', above: 0 } as const;
const from = { symbol: 'U1', is: 'voltage at the start of the dip', unit: 'V', above: 0 } as const;
const to = { symbol: 'U2', is: 'lowest useful voltage', unit: 'V', from: 0 } as const;
const capacitance = { symbol: 'C', is: 'capacitance', unit: 'F', above: 0 } as const;
const source = { symbol: 'U', is: 'voltage of the source', unit: 'V', above: 0 } as const;
const resistance = { symbol: 'R', is: 'resistance of pack, leads and capacitor', unit: 'Ω', above: 0 } as const;

/** How long a capacitor alone carries a constant-power load. */
export const holdUpTime = law(
  {
    id: 'hold-up-time',
    title: 'Time a capacitor carries a constant-power load',
    equation: 't = C (U1² − U2²) / (2 P)',
    args: { capacitance, from, to, power },
    gives: { symbol: 't', is: 'time until the lower voltage', unit: 's' },
    validFor: 'U2 below U1, source disconnected (behind a diode)',
    leavesOut: 'series resistance and ageing of the capacitor; stalled motors on the same bus empty it far sooner',
    source: CIRCUIT,
  },
  ({ capacitance, from, to, power }) => (capacitance * (from ** 2 - to ** 2)) / (2 * power),
);

/** Capacitance that carries a constant-power load through a dip. */
export const holdUpCapacitance = law(
  {
    id: 'hold-up-capacitance',
    title: 'Capacitance that carries a constant-power load through a dip',
    equation: 'C = 2 P t / (U1² − U2²)',
    args: { power, time: { symbol: 't', is: 'duration of the dip', unit: 's', above: 0 }, from, to },
    gives: { symbol: 'C', is: 'capacitance needed', unit: 'F' },
    validFor: 'U2 below U1, source disconnected (behind a diode)',
    leavesOut: 'tolerance (−20 % is usual), series resistance, ageing',
    source: CIRCUIT,
  },
  ({ power, time, from, to }) => (2 * power * time) / (from ** 2 - to ** 2),
);

/** Peak of the current when a discharged capacitor is plugged in. */
export const inrushPeak = law(
  {
    id: 'inrush-peak',
    title: 'Peak inrush current into a discharged capacitor',
    equation: 'I = U / R',
    args: { source, resistance },
    gives: { symbol: 'I', is: 'current at the first instant', unit: 'A' },
    validFor: 'short leads, hard contact',
    leavesOut: 'lead inductance (lowers it) and contact bounce (repeats it)',
    source: RC,
  },
  ({ source, resistance }) => source / resistance,
);

/** Current-squared time of the inrush, to hold against a fuse's melting value. */
export const inrushIntegral = law(
  {
    id: 'inrush-integral',
    title: 'I²t of the inrush into a discharged capacitor',
    equation: 'J = C U² / (2 R)',
    args: { capacitance, source, resistance },
    gives: { symbol: 'J', is: 'current-squared time', unit: 'A²·s' },
    validFor: 'short leads, hard contact',
    leavesOut: 'lead inductance, contact bounce',
    source: RC,
  },
  ({ capacitance, source, resistance }) => (capacitance * source ** 2) / (2 * resistance),
);

/** Voltage of the capacitor while it charges. */
export const capacitorVoltage = law(
  {
    id: 'capacitor-charging-voltage',
    title: 'Voltage of a capacitor while it charges through a resistor',
    equation: 'u = U (1 − e^(−t / (R C)))',
    args: { source, resistance, capacitance, time: { symbol: 't', is: 'time since plugging in', unit: 's', from: 0 } },
    gives: { symbol: 'u', is: 'voltage of the capacitor', unit: 'V' },
    validFor: 'capacitor empty at time zero',
    leavesOut: 'lead inductance',
    source: RC,
  },
  ({ source, resistance, capacitance, time }) => source * (1 - Math.exp(-time / (resistance * capacitance))),
);
