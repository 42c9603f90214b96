import { checkLaw } from '../check.ts';
import { pulseEnergy, pulseShare, rampEnergy } from './pulse.ts';

const CHART = 'Littelfuse, Fuseology selection guide (2017), chart 1';
const SHARES = 'Littelfuse, Fuseology selection guide (2017), chart 2';
const TEN = { peak: 10, time: 0.01 };

export const pulseChecks = [
  checkLaw(pulseEnergy, [
    {
      case: 'rectangle of 10 A for 10 ms',
      source: CHART,
      kind: 'published',
      args: { ...TEN, shape: 'rectangle' },
      expected: 1,
      allowed: 1e-6,
    },
    {
      case: 'half sine: mean of sin² is one half',
      source: CHART,
      kind: 'published',
      args: { ...TEN, shape: 'half sine' },
      expected: 0.5,
      allowed: 1e-6,
    },
    {
      case: 'triangle: integral of t² is one third',
      source: CHART,
      kind: 'published',
      args: { ...TEN, shape: 'triangle' },
      expected: 1 / 3,
      allowed: 1e-6,
    },
    {
      case: 'exponential decay of time constant 10 ms: integral of e^(−2t/τ) is τ/2',
      source: CHART,
      kind: 'published',
      args: { ...TEN, shape: 'exponential decay' },
      expected: 0.5,
      allowed: 1e-6,
    },
    {
      case: 'inrush of 1000 µF from 12 V through 0.1 Ω: C·V²/(2R), by energy',
      source: 'energy stored in the capacitor equals energy lost in the resistor, any circuits text',
      kind: 'published',
      args: { peak: 120, time: 1e-4, shape: 'exponential decay' },
      expected: (1e-3 * 12 ** 2) / (2 * 0.1),
      allowed: 1e-6,
    },
  ]),
  checkLaw(rampEnergy, [
    {
      case: 'trapezoid from 10 A to 5 A in 10 ms',
      source: CHART,
      kind: 'published',
      args: { peak: 10, end: 5, time: 0.01 },
      expected: 0.583,
      allowed: 0.001,
    },
  ]),
  checkLaw(pulseShare, [
    {
      case: '1000 pulses: 38 %, a point the fit does not use',
      source: SHARES,
      kind: 'published',
      args: { pulses: 1000 },
      expected: 0.38,
      allowed: 0.03,
    },
    {
      case: '10 000 pulses: 29 %, a point the fit does not use',
      source: SHARES,
      kind: 'published',
      args: { pulses: 10_000 },
      expected: 0.29,
      allowed: 0.02,
    },
    {
      case: '100 000 pulses: 22 %',
      source: SHARES,
      kind: 'published',
      args: { pulses: 100_000 },
      expected: 0.22,
      allowed: 0.005,
    },
  ]),
];
