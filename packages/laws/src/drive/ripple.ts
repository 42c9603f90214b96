/** Ripple of a pulsed current, its heating, and current that stops in the pause. */
import { law, OutOfRange } from '../law.ts';
import { DUTY, FREQUENCY, SUPPLY } from './arguments.ts';

const SWING = {
  symbol: 'ΔV',
  is: 'step of the winding voltage: the supply in slow decay, twice the supply in locked antiphase',
  unit: 'V',
  above: 0,
} as const;
const INDUCTANCE = { symbol: 'L', is: 'winding inductance', unit: 'H', above: 0 } as const;
const RESISTANCE = { symbol: 'R', is: 'resistance of winding and path', unit: 'Ω', above: 0 } as const;
const TEXT = 'solution of L·di/dt + R·i over one period, any power-electronics text';

/** Peak-to-peak ripple, taking the current as straight lines. */
export const pwmRippleSimple = law(
  {
    id: 'pwm-ripple-simple',
    title: 'Current ripple, straight-line form',
    equation: 'ΔI = ΔV·D·(1 − D)/(L·f)',
    args: { swing: SWING, duty: DUTY, inductance: INDUCTANCE, frequency: FREQUENCY },
    gives: { symbol: 'ΔI', is: 'ripple, peak to peak', unit: 'A' },
    validFor: 'a period well below L/R; drives that pulse both legs centre-aligned count twice the frequency',
    leavesOut: 'resistance: above a period of L/R use the exact form',
    source: TEXT,
  },
  ({ swing, duty, inductance, frequency }) => (swing * duty * (1 - duty)) / (inductance * frequency),
);

/** Peak-to-peak ripple for any period. */
export const pwmRippleExact = law(
  {
    id: 'pwm-ripple-exact',
    title: 'Current ripple, exact',
    equation: 'ΔI = (ΔV/R)·(1 − e^(−D·T/τ))·(1 − e^(−(1 − D)·T/τ))/(1 − e^(−T/τ)), τ = L/R, T = 1/f',
    args: { swing: SWING, duty: DUTY, resistance: RESISTANCE, inductance: INDUCTANCE, frequency: FREQUENCY },
    gives: { symbol: 'ΔI', is: 'ripple, peak to peak', unit: 'A' },
    validFor: 'any frequency, switches that let the current reverse',
    leavesOut: 'diodes that stop the current, iron loss',
    source: TEXT,
  },
  ({ swing, duty, resistance, inductance, frequency }) => {
    const periods = resistance / (inductance * frequency);
    const part = (share: number): number => -Math.expm1(-share * periods);
    return ((swing / resistance) * part(duty) * part(1 - duty)) / part(1);
  },
);

/** Which ripple form answers, and why. */
export interface RippleChoice {
  /** Peak-to-peak ripple [A]. */
  readonly ripple: number;
  readonly law: 'pwm-ripple-simple' | 'pwm-ripple-exact';
  readonly why: string;
}

/** Period over L/R up to which straight lines are within 0.1 % (the error grows with its square, 1/48 at half duty). */
const STRAIGHT = 0.2;

/** Ripple by the form that a person can check when it is right, else by the exact one. */
export function chooseRipple(drive: {
  swing: number;
  duty: number;
  resistance: number;
  inductance: number;
  frequency: number;
}): RippleChoice {
  const { swing, duty, resistance, inductance, frequency } = drive;
  return resistance / (inductance * frequency) <= STRAIGHT
    ? {
        ripple: pwmRippleSimple({ swing, duty, inductance, frequency }),
        law: 'pwm-ripple-simple',
        why: 'The period is below a fifth of L/R, so the current runs in straight lines within 0.1 %.',
      }
    : {
        ripple: pwmRippleExact(drive),
        law: 'pwm-ripple-exact',
        why: 'The period is not small against L/R, so the current curves.',
      };
}

/** Root mean square of a current with a triangular ripple: what heats the winding. */
export const pwmRms = law(
  {
    id: 'pwm-rms',
    title: 'Root mean square current with ripple',
    equation: 'I = √(Im² + ΔI²/12)',
    args: {
      mean: { symbol: 'Im', is: 'mean current', unit: 'A' },
      ripple: { symbol: 'ΔI', is: 'ripple, peak to peak', unit: 'A', from: 0 },
    },
    gives: { symbol: 'I', is: 'root mean square current', unit: 'A' },
    validFor: 'triangular ripple, continuous current',
    leavesOut: 'curvature at long periods',
    source: 'root mean square of a triangular wave about a mean, any electrical text',
  },
  ({ mean, ripple }) => Math.sqrt(mean ** 2 + ripple ** 2 / 12),
);

const EMF = { symbol: 'E', is: 'back-EMF', unit: 'V', from: 0 } as const;

/** Peak current of a pulse that starts from zero. */
export const pwmPulsePeak = law(
  {
    id: 'pwm-pulse-peak',
    title: 'Peak of a discontinuous current',
    equation: 'ip = ((V − E)/R)·(1 − e^(−D·R/(L·f)))',
    args: {
      voltage: SUPPLY,
      backEmf: EMF,
      duty: DUTY,
      resistance: RESISTANCE,
      inductance: INDUCTANCE,
      frequency: FREQUENCY,
    },
    gives: { symbol: 'ip', is: 'peak current', unit: 'A' },
    validFor: 'current that has stopped before each pulse',
    leavesOut: 'switch and diode drop',
    source: TEXT,
  },
  ({ voltage, backEmf, duty, resistance, inductance, frequency }) =>
    (-(voltage - backEmf) / resistance) * Math.expm1((-duty * resistance) / (inductance * frequency)),
);

/** Mean current when the current stops in every pause, as in small motors that coast through diodes. */
export const pwmDiscontinuousMean = law(
  {
    id: 'pwm-discontinuous-mean',
    title: 'Mean of a discontinuous current',
    equation:
      'Im = ((V − E)·D − (E + Vo)·x)/R, x = (L·f/R)·ln(1 + ip·R/(E + Vo)), ip = ((V − E)/R)·(1 − e^(−D·R/(L·f)))',
    args: {
      voltage: SUPPLY,
      backEmf: EMF,
      offVoltage: {
        symbol: 'Vo',
        is: 'voltage that opposes the current in the pause: the drop of a diode, or the supply in fast decay',
        unit: 'V',
        from: 0,
      },
      duty: DUTY,
      resistance: RESISTANCE,
      inductance: INDUCTANCE,
      frequency: FREQUENCY,
    },
    gives: { symbol: 'Im', is: 'mean current', unit: 'A' },
    validFor: 'current that reaches zero before the pause ends; otherwise it refuses, and the continuous form holds',
    leavesOut: 'switch drop, iron loss',
    source: TEXT,
  },
  ({ voltage, backEmf, offVoltage, duty, resistance, inductance, frequency }) => {
    const peak = pwmPulsePeak.bare({ voltage, backEmf, duty, resistance, inductance, frequency });
    const against = backEmf + offVoltage;
    // The share of the period in which the current dies away.
    const dying = ((inductance * frequency) / resistance) * Math.log1p((peak * resistance) / against);
    if (!(peak >= 0 && dying <= 1 - duty)) {
      throw new OutOfRange('pwm-discontinuous-mean', 'D', duty, 'a duty whose current stops in the pause', TEXT);
    }
    return ((voltage - backEmf) * duty - against * dying) / resistance;
  },
);
