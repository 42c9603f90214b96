import { checkLaw } from '../check.ts';
import { pwmDiscontinuousMean, pwmPulsePeak, pwmRippleExact, pwmRippleSimple, pwmRms } from './ripple.ts';

const SPICE = 'general-purpose SPICE simulator';
const SCIPY = 'SciPy 1.17, solve_ivp with DOP853, relative tolerance 1e-12';
const COAST = `${SPICE}: 3 V, 1 kHz, duty 0.3, ideal freewheel diode, 1.428571 Ω, 340 µH, back-EMF 1.5 V`;
const SMALL = { duty: 0.3, resistance: 1.428571, inductance: 340e-6, frequency: 1000 };
const FAST = { voltage: 7.4, backEmf: 3, duty: 0.45, resistance: 1.43, inductance: 340e-6, frequency: 2000 };
const CAN = { swing: 3, resistance: 0.682, inductance: 0.34e-3, frequency: 1000 };

export const rippleChecks = [
  checkLaw(pwmRippleSimple, [
    {
      case: '12 V, 1 mH, 20 kHz, half duty',
      source: `${SPICE}: peak to peak 0.14996 A`,
      kind: 'reference library',
      args: { swing: 12, duty: 0.5, inductance: 1e-3, frequency: 20e3 },
      expected: 0.14996,
      allowed: 0.001,
    },
    {
      case: '±12 V, 1 mH, 20 kHz, duty 0.75',
      source: `${SPICE}: peak to peak 0.22495 A`,
      kind: 'reference library',
      args: { swing: 24, duty: 0.75, inductance: 1e-3, frequency: 20e3 },
      expected: 0.22495,
      allowed: 0.001,
    },
  ]),
  checkLaw(pwmRippleExact, [
    {
      case: 'toy can of 0.682 Ω and 0.34 mH at 3 V, 1 kHz, half duty: periodic solution found by shooting',
      source: SCIPY,
      kind: 'reference library',
      args: { ...CAN, duty: 0.5 },
      expected: 2.0378573832,
      allowed: 1e-8,
    },
    {
      case: 'the same at duty 0.3',
      source: SCIPY,
      kind: 'reference library',
      args: { ...CAN, duty: 0.3 },
      expected: 1.7337642251,
      allowed: 1e-8,
    },
    {
      case: '12 V, 1 Ω, 1 mH, 20 kHz, half duty',
      source: `${SPICE}: peak to peak 0.14996 A`,
      kind: 'reference library',
      args: { swing: 12, duty: 0.5, resistance: 1, inductance: 1e-3, frequency: 20e3 },
      expected: 0.14996,
      allowed: 5e-4,
    },
  ]),
  checkLaw(pwmRms, [
    {
      case: 'mean 2.000006 A, ripple 0.14996 A',
      source: `${SPICE}: 2.00047 A rms`,
      kind: 'reference library',
      args: { mean: 2.000006, ripple: 0.14996 },
      expected: 2.00047,
      allowed: 1e-5,
    },
    {
      case: 'triangle from zero to 1 A: 1/√3',
      source: 'Littelfuse, Fuseology selection guide (2017), chart 1: I²t of a triangle is a third of the rectangle',
      kind: 'published',
      args: { mean: 0.5, ripple: 1 },
      expected: 1 / Math.sqrt(3),
      allowed: 1e-9,
    },
  ]),
  checkLaw(pwmPulsePeak, [
    {
      case: 'peak 0.752314 A',
      source: COAST,
      kind: 'reference library',
      args: { voltage: 3, backEmf: 1.5, ...SMALL },
      expected: 0.752314,
      allowed: 1e-4,
    },
    {
      case: '7.4 V into 1.43 Ω and 340 µH at 3 V, 2 kHz, duty 0.45',
      source: SCIPY,
      kind: 'reference library',
      args: FAST,
      expected: 1.8825677466,
      allowed: 1e-8,
    },
  ]),
  checkLaw(pwmDiscontinuousMean, [
    {
      case: 'mean 0.179973 A',
      source: COAST,
      kind: 'reference library',
      args: { voltage: 3, backEmf: 1.5, offVoltage: 0, ...SMALL },
      expected: 0.179973,
      allowed: 2e-4,
    },
    {
      case: 'fast decay against the supply: 7.4 V, 3 V back-EMF, 2 kHz, duty 0.45, integrated to the zero of the current',
      source: SCIPY,
      kind: 'reference library',
      args: { ...FAST, offVoltage: 7.4 },
      expected: 0.5884973546,
      allowed: 1e-8,
    },
  ]),
];
