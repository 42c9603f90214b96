/** Step-down converters and linear regulators: input current, loss, drop-out, ripple, derating. */
import { law } from '../law.ts';

const BALANCE = 'power balance of a converter, any power electronics text';
const HART = 'Hart, Power Electronics, chapter 6, buck converter in continuous current';
const output = { symbol: 'Uo', is: 'output voltage', unit: 'V', above: 0 } as const;
const input = { symbol: 'Ui', is: 'input voltage', unit: 'V', above: 0 } as const;
const current = { symbol: 'Io', is: 'output current', unit: 'A', above: 0 } as const;
const efficiency = { symbol: 'η', is: 'efficiency', unit: '1', above: 0, to: 1 } as const;
const inductance = { symbol: 'L', is: 'inductance', unit: 'H', above: 0 } as const;
const frequency = { symbol: 'f', is: 'switching frequency', unit: 'Hz', above: 0 } as const;
const CONTINUOUS = 'continuous inductor current, Uo below Ui';

/** Input current of a converter. */
export const converterInputCurrent = law(
  {
    id: 'converter-input-current',
    title: 'Input current of a converter',
    equation: 'Ii = Uo Io / (η Ui)',
    args: { output, current, efficiency, input },
    gives: { symbol: 'Ii', is: 'mean input current', unit: 'A' },
    validFor: 'switching converters in regulation',
    leavesOut: 'ripple; start-up',
    source: BALANCE,
  },
  ({ output, current, efficiency, input }) => (output * current) / (efficiency * input),
);

/** Heat a converter makes. */
export const converterHeat = law(
  {
    id: 'converter-heat',
    title: 'Heat in a converter',
    equation: 'P = Uo Io (1/η − 1)',
    args: { output, current, efficiency },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'any converter whose efficiency at this load is known',
    leavesOut: 'nothing beyond the efficiency itself',
    source: BALANCE,
  },
  ({ output, current, efficiency }) => output * current * (1 / efficiency - 1),
);

/** Efficiency against load: fixed, proportional and quadratic loss. */
export const converterEfficiency = law(
  {
    id: 'converter-efficiency',
    title: 'Efficiency of a converter against load',
    equation: 'η = Uo Io / (Uo Io + P0 + k Io + R Io²)',
    args: {
      output,
      current,
      fixed: { symbol: 'P0', is: 'loss without load', unit: 'W', from: 0 },
      proportional: { symbol: 'k', is: 'loss per ampere (junction drops, switching)', unit: 'V', from: 0 },
      quadratic: { symbol: 'R', is: 'loss per ampere squared (resistance)', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'η', is: 'efficiency', unit: '1' },
    validFor: 'fixed input voltage; three points of a printed curve give the three constants',
    leavesOut: 'pulse-skipping modes at light load, heating of the resistances',
    source:
      'separation of losses, as for transformers (Theraja, A Textbook of Electrical Technology, vol. II) and converters',
  },
  ({ output, current, fixed, proportional, quadratic }) =>
    (output * current) / (output * current + fixed + proportional * current + quadratic * current ** 2),
);

/** Load at which a converter is most efficient. */
export const mostEfficientCurrent = law(
  {
    id: 'most-efficient-current',
    title: 'Output current at which a converter is most efficient',
    equation: 'Io = √(P0 / R)',
    args: {
      fixed: { symbol: 'P0', is: 'loss without load', unit: 'W', above: 0 },
      quadratic: { symbol: 'R', is: 'loss per ampere squared', unit: 'Ω', above: 0 },
    },
    gives: { symbol: 'Io', is: 'output current', unit: 'A' },
    validFor: 'as converter-efficiency',
    leavesOut: 'as converter-efficiency',
    source:
      'maximum efficiency where fixed and quadratic loss are equal, Theraja, A Textbook of Electrical Technology, vol. II',
  },
  ({ fixed, quadratic }) => Math.sqrt(fixed / quadratic),
);

/** Duty cycle of a step-down converter. */
export const buckDuty = law(
  {
    id: 'buck-duty',
    title: 'Duty cycle of a step-down converter',
    equation: 'D = Uo / (η Ui)',
    args: { output, input, efficiency },
    gives: { symbol: 'D', is: 'duty cycle', unit: '1' },
    validFor: `${CONTINUOUS}; η = 1 gives the ideal value`,
    leavesOut: 'discontinuous current at light load',
    source: 'makers’ design notes on step-down converters; ideal form in Hart, Power Electronics, chapter 6',
  },
  ({ output, input, efficiency }) => output / (efficiency * input),
);

/** Lowest input voltage that keeps a step-down converter in regulation: its drop-out. */
export const buckMinimumInput = law(
  {
    id: 'buck-minimum-input',
    title: 'Lowest input voltage of a step-down converter in regulation',
    equation: 'Ui = Uo / Dmax + Us + Io R',
    args: {
      output,
      maximumDuty: { symbol: 'Dmax', is: 'largest duty cycle', unit: '1', above: 0.5, to: 1 },
      switchDrop: { symbol: 'Us', is: 'saturation voltage of a bipolar switch (0 for a MOSFET)', unit: 'V', from: 0 },
      current,
      resistance: { symbol: 'R', is: 'switch and inductor resistance in series', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'Ui', is: 'lowest input voltage', unit: 'V' },
    validFor: 'full load; at light load it falls towards Uo/Dmax',
    leavesOut: 'the chip’s own lowest supply voltage, which may be higher',
    source: 'makers’ design notes on step-down converters, drop-out at the largest duty cycle',
  },
  ({ output, maximumDuty, switchDrop, current, resistance }) =>
    output / maximumDuty + switchDrop + current * resistance,
);

/** Peak-to-peak ripple of the inductor current. */
export const buckInductorRipple = law(
  {
    id: 'buck-inductor-ripple',
    title: 'Ripple of the inductor current of a step-down converter',
    equation: 'ΔI = (Ui − Uo) (Uo / Ui) / (L f)',
    args: { input, output, inductance, frequency },
    gives: { symbol: 'ΔI', is: 'peak-to-peak ripple current', unit: 'A' },
    validFor: CONTINUOUS,
    leavesOut: 'losses, which lengthen the duty; saturation',
    source: HART,
  },
  ({ input, output, inductance, frequency }) => ((input - output) * (output / input)) / (inductance * frequency),
);

/** Relative ripple of the output voltage. */
export const buckOutputRipple = law(
  {
    id: 'buck-output-ripple',
    title: 'Relative ripple of the output voltage of a step-down converter',
    equation: 'ΔUo / Uo = (1 − D) / (8 L C f²)',
    args: {
      duty: { symbol: 'D', is: 'duty cycle', unit: '1', above: 0, below: 1 },
      inductance,
      capacitance: { symbol: 'C', is: 'output capacitance', unit: 'F', above: 0 },
      frequency,
    },
    gives: { symbol: 'ΔUo / Uo', is: 'peak-to-peak ripple over output voltage', unit: '1' },
    validFor: CONTINUOUS,
    leavesOut: 'series resistance of the capacitor, usually the larger part for electrolytics',
    source: HART,
  },
  ({ duty, inductance, capacitance, frequency }) => (1 - duty) / (8 * inductance * capacitance * frequency ** 2),
);

/** Current the input capacitor of a step-down converter must carry. */
export const inputCapacitorCurrent = law(
  {
    id: 'input-capacitor-current',
    title: 'RMS current in the input capacitor of a step-down converter',
    equation: 'Ic = Io √(D (1 − D))',
    args: { current, duty: { symbol: 'D', is: 'duty cycle', unit: '1', above: 0, below: 1 } },
    gives: { symbol: 'Ic', is: 'RMS current', unit: 'A' },
    validFor: 'continuous current, small inductor ripple, stiff capacitor',
    leavesOut: 'inductor ripple (a few percent), ripple let through to the pack',
    source: 'RMS of a rectangular wave less its mean, makers’ design notes on step-down converters',
  },
  ({ current, duty }) => current * Math.sqrt(duty * (1 - duty)),
);

/** Heat in a linear regulator. */
export const linearRegulatorHeat = law(
  {
    id: 'linear-regulator-heat',
    title: 'Heat in a linear regulator',
    equation: 'P = (Ui − Uo) Io + Ui Iq',
    args: {
      input,
      output,
      current,
      quiescent: { symbol: 'Iq', is: 'current of the regulator itself', unit: 'A', from: 0 },
    },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'Ui above Uo plus the drop-out voltage',
    leavesOut: 'nothing at steady load',
    source: 'makers’ data sheets of linear regulators, power dissipation',
  },
  ({ input, output, current, quiescent }) => (input - output) * current + input * quiescent,
);

/** Output current left at an ambient temperature, straight-line derating of a module. */
export const deratedCurrent = law(
  {
    id: 'derated-current',
    title: 'Output current of a module derated for ambient temperature',
    equation: 'I = Ir · min(1, (T0 − Ta) / (T0 − Tk))',
    args: {
      rated: { symbol: 'Ir', is: 'rated current', unit: 'A', above: 0 },
      ambient: { symbol: 'Ta', is: 'air temperature at the module', unit: 'K', above: 0 },
      knee: { symbol: 'Tk', is: 'air temperature up to which the rating holds', unit: 'K', above: 0 },
      zero: { symbol: 'T0', is: 'air temperature at which nothing is left', unit: 'K', above: 0 },
    },
    gives: { symbol: 'I', is: 'permitted output current', unit: 'A' },
    validFor: 'Tk below T0, Ta up to T0; at fixed rise per ampere',
    leavesOut: 'airflow; small step-down modules need 60 to 70 % of the print without it',
    source: 'straight-line derating curves of module and power transistor data sheets, as explained in makers’ notes',
  },
  ({ rated, ambient, knee, zero }) => rated * Math.max(0, Math.min(1, (zero - ambient) / (zero - knee))),
);
