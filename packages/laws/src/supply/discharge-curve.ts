/**
 * Voltage of a pack while it empties: the modified Shepherd model of Tremblay and Dessaint, and how to read its
 * constants off a data sheet. The published model writes one K both per ampere-hour and per ampere; in SI the charge
 * beside it is divided by one hour, so that K is a resistance.
 */
import { law } from '../law.ts';

const HOUR = 3600;
const PAPER =
  'Tremblay & Dessaint, Experimental Validation of a Battery Dynamic Model for EV Applications, World Electric Vehicle Journal 3, 2009';
const SHORT_CUT = `${PAPER}; two-point extraction as in the ns-3 network simulator, generic battery model`;

const e0 = { symbol: 'E0', is: 'constant voltage', unit: 'V', above: 0 } as const;
const resistance = { symbol: 'R', is: 'internal resistance', unit: 'Ω', from: 0 } as const;
const capacity = { symbol: 'Q', is: 'capacity to empty', unit: 'C', above: 0 } as const;
const current = { symbol: 'I', is: 'constant current of the printed curve', unit: 'A', above: 0 } as const;
const fullVoltage = { symbol: 'Uf', is: 'voltage at the start of the curve', unit: 'V', above: 0 } as const;
const kneeVoltage = { symbol: 'Ue', is: 'voltage at the end of the exponential zone', unit: 'V', above: 0 } as const;
const kneeCharge = {
  symbol: 'Qe',
  is: 'charge drawn at the end of the exponential zone',
  unit: 'C',
  above: 0,
} as const;
const nominalVoltage = { symbol: 'Un', is: 'voltage at the end of the nominal zone', unit: 'V', above: 0 } as const;
const nominalCharge = { symbol: 'Qn', is: 'charge drawn at the end of the nominal zone', unit: 'C', above: 0 } as const;
const points = {
  fullVoltage,
  kneeVoltage,
  kneeCharge,
  nominalVoltage,
  nominalCharge,
  capacity,
  current,
} as const;
const VALID = 'a printed constant-current discharge curve with Qe below Qn below Q';

interface Points {
  readonly fullVoltage: number;
  readonly kneeVoltage: number;
  readonly kneeCharge: number;
  readonly nominalVoltage: number;
  readonly nominalCharge: number;
  readonly capacity: number;
  readonly current: number;
}

/** Polarisation voltage per ohm of K when `drawn` has gone out at steady current. */
function perK(drawn: number, capacity: number, current: number): number {
  return (capacity / (capacity - drawn)) * (drawn / HOUR + current);
}

/** Terminal voltage while discharging. */
export const dischargeVoltage = law(
  {
    id: 'discharge-voltage',
    title: 'Voltage of a pack while it discharges, modified Shepherd model',
    equation: 'U = E0 − R I − K Q/(Q − q) (q/3600 s + Is) + A e^(−B q)',
    args: {
      e0,
      resistance,
      polarisation: { symbol: 'K', is: 'polarisation resistance', unit: 'Ω', from: 0 },
      exponential: { symbol: 'A', is: 'height of the exponential zone', unit: 'V', from: 0 },
      exponentialRate: { symbol: 'B', is: 'inverse width of the exponential zone', unit: '1/C', from: 0 },
      capacity,
      drawn: { symbol: 'q', is: 'charge drawn since full', unit: 'C', from: 0 },
      current: { symbol: 'I', is: 'current drawn', unit: 'A', from: 0 },
      smoothed: { symbol: 'Is', is: 'current after the low-pass of about 30 s', unit: 'A', from: 0 },
    },
    gives: { symbol: 'U', is: 'terminal voltage', unit: 'V' },
    validFor: 'discharge, q below Q, constant temperature',
    leavesOut: 'temperature, age, Peukert effect, self-discharge, voltage hysteresis',
    source: PAPER,
  },
  ({ e0, resistance, polarisation, exponential, exponentialRate, capacity, drawn, current, smoothed }) =>
    e0 -
    resistance * current -
    polarisation * perK(drawn, capacity, smoothed) +
    exponential * Math.exp(-exponentialRate * drawn),
);

/** The model's low-passed current at a time after a step from rest. */
export const smoothedCurrent = law(
  {
    id: 'smoothed-current',
    title: 'Low-passed current after a step from rest',
    equation: 'Is = I (1 − e^(−t/τ))',
    args: {
      current: { symbol: 'I', is: 'current from time zero on', unit: 'A' },
      time: { symbol: 't', is: 'time since the step', unit: 's', from: 0 },
      timeConstant: { symbol: 'τ', is: 'time constant, about 30 s', unit: 's', above: 0 },
    },
    gives: { symbol: 'Is', is: 'low-passed current', unit: 'A' },
    validFor: 'constant current after rest',
    leavesOut: 'earlier currents',
    source: PAPER,
  },
  ({ current, time, timeConstant }) => current * (1 - Math.exp(-time / timeConstant)),
);

/** B of the model: the exponential has died to e⁻³ at the knee. */
export const shepherdRate = law(
  {
    id: 'shepherd-rate',
    title: 'B of the modified Shepherd model from the knee of a printed curve',
    equation: 'B = 3 / Qe',
    args: { kneeCharge },
    gives: { symbol: 'B', is: 'inverse width of the exponential zone', unit: '1/C' },
    validFor: VALID,
    leavesOut: 'the shape of the exponential zone beyond its width',
    source: PAPER,
  },
  ({ kneeCharge }) => 3 / kneeCharge,
);

/** Solves the three curve points for A and K; E0 follows from the first point. */
function solvePoints(p: Points): { readonly exponential: number; readonly polarisation: number } {
  const kneeFall = 1 - Math.exp(-3);
  const nominalFall = 1 - Math.exp((-3 * p.nominalCharge) / p.kneeCharge);
  const kneeK = perK(p.kneeCharge, p.capacity, p.current);
  const nominalK = perK(p.nominalCharge, p.capacity, p.current);
  const determinant = kneeFall * nominalK - nominalFall * kneeK;
  const [knee, nominal] = [p.fullVoltage - p.kneeVoltage, p.fullVoltage - p.nominalVoltage];
  return {
    exponential: (knee * nominalK - nominal * kneeK) / determinant,
    polarisation: (kneeFall * nominal - nominalFall * knee) / determinant,
  };
}

const THREE =
  'Uf = E0 − R I + A; Ue = E0 − R I − K Q/(Q − Qe) (Qe/3600 s + I) + A e^(−3); Un = E0 − R I − K Q/(Q − Qn) (Qn/3600 s + I) + A e^(−3 Qn/Qe)';
const THREE_LEAVES = 'reading errors of the curve; a negative A or K says that the points do not fit the model';

/** A of the model, three points of a printed curve solved exactly. */
export const shepherdExponential = law(
  {
    id: 'shepherd-exponential',
    title: 'A of the modified Shepherd model from three points of a printed curve',
    equation: `A from ${THREE}`,
    args: points,
    gives: { symbol: 'A', is: 'height of the exponential zone', unit: 'V' },
    validFor: VALID,
    leavesOut: THREE_LEAVES,
    source: PAPER,
  },
  ({ fullVoltage, kneeVoltage, kneeCharge, nominalVoltage, nominalCharge, capacity, current }) =>
    solvePoints({ fullVoltage, kneeVoltage, kneeCharge, nominalVoltage, nominalCharge, capacity, current }).exponential,
);

/** K of the model, three points of a printed curve solved exactly. */
export const shepherdPolarisation = law(
  {
    id: 'shepherd-polarisation',
    title: 'K of the modified Shepherd model from three points of a printed curve',
    equation: `K from ${THREE}`,
    args: points,
    gives: { symbol: 'K', is: 'polarisation resistance', unit: 'Ω' },
    validFor: VALID,
    leavesOut: THREE_LEAVES,
    source: PAPER,
  },
  ({ fullVoltage, kneeVoltage, kneeCharge, nominalVoltage, nominalCharge, capacity, current }) =>
    solvePoints({ fullVoltage, kneeVoltage, kneeCharge, nominalVoltage, nominalCharge, capacity, current })
      .polarisation,
);

/** E0 of the model from the start of the printed curve, once A is known. */
export const shepherdConstantVoltage = law(
  {
    id: 'shepherd-constant-voltage',
    title: 'E0 of the modified Shepherd model from the start of a printed curve',
    equation: 'E0 = Uf + R I − A',
    args: {
      fullVoltage,
      resistance,
      current,
      exponential: { symbol: 'A', is: 'height of the exponential zone', unit: 'V' },
    },
    gives: { symbol: 'E0', is: 'constant voltage', unit: 'V' },
    validFor: VALID,
    leavesOut: 'the filtered current, zero at the first instant',
    source: PAPER,
  },
  ({ fullVoltage, resistance, current, exponential }) => fullVoltage + resistance * current - exponential,
);

/** A by the short cut: the exponential is taken as finished at the knee. */
export const shortCutExponential = law(
  {
    id: 'short-cut-exponential',
    title: 'A of the modified Shepherd model, short cut',
    equation: 'A = Uf − Ue',
    args: { fullVoltage, kneeVoltage },
    gives: { symbol: 'A', is: 'height of the exponential zone', unit: 'V' },
    validFor: VALID,
    leavesOut: 'the polarisation already present at the knee',
    source: SHORT_CUT,
  },
  ({ fullVoltage, kneeVoltage }) => fullVoltage - kneeVoltage,
);

/** K by the short cut: from the end of the nominal zone alone. */
export const shortCutPolarisation = law(
  {
    id: 'short-cut-polarisation',
    title: 'K of the modified Shepherd model, short cut',
    equation: 'K = (Uf − Un − A (1 − e^(−3 Qn/Qe))) (Q − Qn) / (Q (Qn/3600 s + I))',
    args: {
      fullVoltage,
      nominalVoltage,
      nominalCharge,
      kneeCharge,
      capacity,
      current,
      exponential: { symbol: 'A', is: 'height of the exponential zone', unit: 'V' },
    },
    gives: { symbol: 'K', is: 'polarisation resistance', unit: 'Ω' },
    validFor: VALID,
    leavesOut: 'the knee point of the curve',
    source: SHORT_CUT,
  },
  ({ fullVoltage, nominalVoltage, nominalCharge, kneeCharge, capacity, current, exponential }) =>
    (fullVoltage - nominalVoltage - exponential * (1 - Math.exp((-3 * nominalCharge) / kneeCharge))) /
    perK(nominalCharge, capacity, current),
);

/** Says whether to solve the three points or take the short cut, and why. */
export function chooseShepherd(p: Points): { readonly use: 'three points' | 'short cut'; readonly why: string } {
  const { exponential, polarisation } = solvePoints(p);
  if (exponential >= 0 && polarisation >= 0) {
    return { use: 'three points', why: 'The three points agree with the model, so all of them are met exactly.' };
  }
  return { use: 'short cut', why: 'The three points contradict the model: solving them gives a negative A or K.' };
}
