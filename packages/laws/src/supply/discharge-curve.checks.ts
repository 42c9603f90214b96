import { checkLaw, checkSubject } from '../check.ts';
import {
  dischargeVoltage,
  shepherdConstantVoltage,
  shepherdExponential,
  shepherdPolarisation,
  shepherdRate,
  shortCutExponential,
  shortCutPolarisation,
  smoothedCurrent,
} from './discharge-curve.ts';

const H = 3600;
const PAPER = 'Tremblay & Dessaint 2009, parameter table, from memory';
const NIMH_CURVE = 'Panasonic HHR650D curve points as in the ns-3 network simulator, battery presets';
const REGRESSION = 'ns-3 network simulator, generic battery model, regression test on the Panasonic CGR18650DA';

/** Curve points of the 7 Ah NiMH cell at 1.3 A. */
const nimhPoints = {
  fullVoltage: 1.39,
  kneeVoltage: 1.28,
  kneeCharge: 1.3 * H,
  nominalVoltage: 1.18,
  nominalCharge: 6.25 * H,
  capacity: 7 * H,
  current: 1.3,
};
/** The model of that cell with the constants the paper prints, R = 2 mΩ. */
const nimh = { e0: 1.2816, resistance: 0.002, polarisation: 0.0014, exponential: 0.111, exponentialRate: 2.3077 / H };
/** The 18650 cell of the regression test with constants taken by the short cut. */
const cell18650 = {
  e0: 3.75268,
  resistance: 0.083,
  polarisation: 0.00486239,
  exponential: 0.456,
  exponentialRate: 1.72414 / H,
  capacity: 2.33 * H,
};

const onCurve = (drawn: number, expected: number) =>
  ({
    case: `NiMH at 1.3 A after ${drawn} Ah, constants of the paper against the maker’s curve`,
    source: NIMH_CURVE,
    kind: 'published',
    args: { ...nimh, capacity: 7 * H, drawn: drawn * H, current: 1.3, smoothed: drawn === 0 ? 0 : 1.3 },
    expected,
    allowed: 5e-4,
  }) as const;

const lfp = (drawn: number, expected: number) =>
  ({
    case: `iron phosphate 2.3 Ah at 2.3 A after ${drawn} Ah, worked apart from this code`,
    source: PAPER,
    kind: 'memory',
    args: {
      e0: 3.366,
      resistance: 0.01,
      polarisation: 0.0076,
      exponential: 0.26422,
      exponentialRate: 26.5487 / H,
      capacity: 2.3 * H,
      drawn: drawn * H,
      current: 2.3,
      smoothed: 2.3,
    },
    expected,
    allowed: 5e-5,
  }) as const;

export const dischargeCurveChecks = [
  checkLaw(dischargeVoltage, [
    {
      case: '18650 at 2.33 A reaches 3.00 V after 3459 s',
      source: REGRESSION,
      kind: 'published',
      args: { ...cell18650, drawn: 2.33 * 3459, current: 2.33, smoothed: 2.33 },
      expected: 3.0,
      allowed: 0.0034,
    },
    onCurve(0, 1.39),
    onCurve(1.3, 1.28),
    onCurve(6.25, 1.18),
    lfp(0.5, 3.3158),
    lfp(1.15, 3.2906),
    lfp(2.2, 2.5564),
  ]),
  checkLaw(smoothedCurrent, [
    {
      case: 'one time constant after a step: 63.2 %',
      source: 'first-order response, 1 − 1/e = 0.632, any circuit text',
      kind: 'published',
      args: { current: 2, time: 30, timeConstant: 30 },
      expected: 1.264,
      allowed: 0.001,
    },
  ]),
  checkLaw(shepherdRate, [
    {
      case: 'knee at 1.3 Ah gives the paper’s 2.3077 per Ah',
      source: `${PAPER}; ${NIMH_CURVE}`,
      kind: 'memory',
      args: { kneeCharge: 1.3 * H },
      expected: 2.3077 / H,
      allowed: 3e-5,
    },
  ]),
  checkLaw(shepherdExponential, [
    {
      case: 'NiMH curve points give the paper’s A',
      source: `${PAPER}; ${NIMH_CURVE}`,
      kind: 'memory',
      args: nimhPoints,
      expected: 0.111,
      allowed: 6e-4,
    },
  ]),
  checkLaw(shepherdPolarisation, [
    {
      case: 'NiMH curve points give the paper’s K, printed to two digits',
      source: `${PAPER}; ${NIMH_CURVE}`,
      kind: 'memory',
      args: nimhPoints,
      expected: 0.0014,
      allowed: 0.005,
    },
  ]),
  checkLaw(shepherdConstantVoltage, [
    {
      case: 'NiMH curve points and A = 0.11104 V give the paper’s E0',
      source: `${PAPER}; ${NIMH_CURVE}`,
      kind: 'memory',
      args: { fullVoltage: 1.39, resistance: 0.002, current: 1.3, exponential: 0.11104 },
      expected: 1.2816,
      allowed: 5e-5,
    },
    {
      case: '18650 with 83 mΩ at 0.466 A: 4.17 + 0.0387 − 0.456',
      source: `${REGRESSION}, preset worked by hand`,
      kind: 'published',
      args: { fullVoltage: 4.17, resistance: 0.083, current: 0.466, exponential: 0.456 },
      expected: 3.75268,
      allowed: 1e-5,
    },
  ]),
  checkLaw(shortCutExponential, [
    {
      case: 'lead block 12.8 V, knee 12.5 V',
      source: 'CSB GP1272 preset of the ns-3 network simulator, worked by hand',
      kind: 'published',
      args: { fullVoltage: 12.8, kneeVoltage: 12.5 },
      expected: 0.3,
      allowed: 1e-9,
    },
  ]),
  checkLaw(shortCutPolarisation, [
    {
      case: 'NiMH curve points; the exact solution of all three points is 0.001404',
      source: `${NIMH_CURVE}, three equations solved by a linear solver`,
      kind: 'published',
      args: {
        fullVoltage: 1.39,
        nominalVoltage: 1.18,
        nominalCharge: 6.25 * H,
        kneeCharge: 1.3 * H,
        capacity: 7 * H,
        current: 1.3,
        exponential: 0.11,
      },
      expected: 0.001404,
      allowed: 0.012,
    },
    {
      case: 'lead block: 0.0771876',
      source: 'CSB GP1272 preset of the ns-3 network simulator, worked by hand',
      kind: 'published',
      args: {
        fullVoltage: 12.8,
        nominalVoltage: 11.5,
        nominalCharge: 4.5 * H,
        kneeCharge: 2 * H,
        capacity: 7.2 * H,
        current: 0.36,
        exponential: 0.3,
      },
      expected: 0.0771876,
      allowed: 1e-5,
    },
  ]),
  checkSubject('discharge to the cut-off', [
    {
      case: '18650 at 2.33 A: time to 3.00 V, walked in steps of a tenth of a second with the 30 s filter',
      source: REGRESSION,
      kind: 'published',
      expected: 3459,
      allowed: 5e-4,
      ours: () => {
        const current = 2.33;
        for (let time = 0; ; time += 0.1) {
          const smoothed = smoothedCurrent({ current, time, timeConstant: 30 });
          if (dischargeVoltage({ ...cell18650, drawn: current * time, current, smoothed }) <= 3) return time;
        }
      },
    },
  ]),
];
