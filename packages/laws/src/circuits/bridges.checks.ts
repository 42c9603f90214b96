/** The laws of pulse-width drive against simulated bridges. */
import { checkLaw } from '../check.ts';
import {
  pwmCurrentDiode,
  pwmMeanAntiphase,
  pwmMeanDeadTime,
  pwmMeanDiodeOff,
  pwmMeanSlowDecay,
  pwmSupplyCurrent,
  pwmSupplyCurrentAntiphase,
} from '../drive/pwm.ts';
import { pwmDiscontinuousMean, pwmPulsePeak, pwmRippleExact, pwmRippleSimple, pwmRms } from '../drive/ripple.ts';
import { bridgeAntiphase } from './bridge-antiphase.circuit.ts';
import { bridgeSlowDecay } from './bridge-slow-decay.circuit.ts';
import { sourceOf } from './circuit.ts';
import { coastPulses } from './coast-pulses.circuit.ts';
import { legCoarsePulses } from './leg-coarse-pulses.circuit.ts';
import { legDeadTime } from './leg-dead-time.circuit.ts';
import { legWithDiode } from './leg-with-diode.circuit.ts';

const kind = 'reference library';
const slow = bridgeSlowDecay.kept.results;
const both = bridgeAntiphase.kept.results;
const coarse = legCoarsePulses.kept.results;
const diode = legWithDiode.kept.results;
const dead = legDeadTime.kept.results;
const coast = coastPulses.kept.results;
const SLOW = { source: sourceOf(bridgeSlowDecay), kind } as const;
const BOTH = { source: sourceOf(bridgeAntiphase), kind } as const;
const COARSE = { source: sourceOf(legCoarsePulses), kind } as const;
const DEAD = { source: sourceOf(legDeadTime), kind } as const;
const COAST = { source: sourceOf(coastPulses), kind } as const;

/** Two switches of 0.1 Ω are in the path at any time. */
const PATH = 0.2;
const CAN = { swing: 3, duty: 0.5, resistance: 0.682, inductance: 0.34e-3, frequency: 1000 };
const STEADY = { resistance: 1 + PATH, inductance: 1e-3, frequency: 20e3 };
const GENTLE = { voltage: 3, backEmf: 1.5, duty: 0.3, resistance: 1.428571, inductance: 340e-6, frequency: 1000 };
const FAST = { voltage: 7.4, backEmf: 3, duty: 0.45, resistance: 1.43, inductance: 340e-6, frequency: 2000 };

const meanChecks = [
  checkLaw(pwmMeanSlowDecay, [
    {
      case: 'full bridge, 12 V, half duty: mean current times 1 Ω and 4 V of back-EMF',
      ...SLOW,
      args: { voltage: 12, duty: 0.5, bridgeDrop: PATH * slow.mean },
      expected: slow.mean + 4,
      allowed: 2e-5,
    },
    {
      case: 'the same, read at the motor terminals, whose steps the simulator spreads over a nanosecond',
      ...SLOW,
      args: { voltage: 12, duty: 0.5, bridgeDrop: PATH * slow.mean },
      expected: slow.voltage,
      allowed: 2e-4,
    },
  ]),
  checkLaw(pwmMeanAntiphase, [
    {
      case: 'full bridge, 12 V, duty 0.75: mean current times 1 Ω and 4 V of back-EMF',
      ...BOTH,
      args: { voltage: 12, duty: 0.75, bridgeDrop: PATH * both.mean },
      expected: both.mean + 4,
      allowed: 2e-5,
    },
    {
      case: 'the same, read at the motor terminals',
      ...BOTH,
      args: { voltage: 12, duty: 0.75, bridgeDrop: PATH * both.mean },
      expected: both.voltage,
      allowed: 2e-4,
    },
  ]),
  checkLaw(pwmSupplyCurrent, [
    {
      case: 'full bridge at half duty that draws 50 mA itself',
      ...SLOW,
      args: { duty: 0.5, motorCurrent: slow.mean, quiescent: 0.05 },
      expected: -slow.supply,
      allowed: 5e-4,
    },
  ]),
  checkLaw(pwmSupplyCurrentAntiphase, [
    {
      case: 'full bridge at duty 0.75 that draws 50 mA itself; the loss of the ripple adds 0.4 mA',
      ...BOTH,
      args: { duty: 0.75, motorCurrent: both.mean, quiescent: 0.05 },
      expected: -both.supply,
      allowed: 0.002,
    },
  ]),
  checkLaw(pwmCurrentDiode, [
    {
      case: 'switches of 0.1 Ω, 12 V, half duty, 1 Ω, 4 V; the drop of the diode is read in the middle of the pause',
      source: sourceOf(legWithDiode),
      kind,
      args: {
        voltage: 12,
        duty: 0.5,
        diodeDrop: -diode.leg,
        backEmf: 4,
        resistance: 1,
        lowSwitch: 0.1,
        highSwitch: 0.1,
      },
      expected: diode.mean,
      allowed: 1e-4,
    },
  ]),
  checkLaw(pwmMeanDeadTime, [
    {
      case: '6 V, half duty, 2 µs of 50 µs at each edge; the drop of the diode is read in both dead times',
      ...DEAD,
      args: {
        voltage: 6,
        duty: 0.5,
        deadTime: 2e-6,
        frequency: 20e3,
        diodeDrop: -(dead.deadEarly + dead.deadLate) / 2,
      },
      expected: dead.synchronous,
      allowed: 5e-4,
    },
  ]),
  checkLaw(pwmMeanDiodeOff, [
    {
      case: '6 V, half duty, switched on 2 µs late; the drop of the diode is read in the middle of the pause',
      ...DEAD,
      args: { voltage: 6, duty: 0.5, deadTime: 2e-6, frequency: 20e3, diodeDrop: -dead.pause },
      expected: dead.diode,
      allowed: 5e-4,
    },
  ]),
];

const rippleChecks = [
  checkLaw(pwmRippleSimple, [
    {
      case: 'full bridge in slow decay, 12 V, half duty',
      ...SLOW,
      args: { swing: 12, duty: 0.5, inductance: 1e-3, frequency: 20e3 },
      expected: slow.max - slow.min,
      allowed: 5e-4,
    },
    {
      case: 'full bridge in locked antiphase, ±12 V, duty 0.75',
      ...BOTH,
      args: { swing: 24, duty: 0.75, inductance: 1e-3, frequency: 20e3 },
      expected: both.max - both.min,
      allowed: 5e-4,
    },
  ]),
  checkLaw(pwmRippleExact, [
    {
      case: 'small can, period twice L/R, 3 V, half duty',
      ...COARSE,
      args: CAN,
      expected: coarse.max - coarse.min,
      allowed: 1e-4,
    },
    {
      case: 'full bridge in slow decay, 12 V, half duty',
      ...SLOW,
      args: { swing: 12, duty: 0.5, ...STEADY },
      expected: slow.max - slow.min,
      allowed: 5e-4,
    },
    {
      case: 'full bridge in locked antiphase, ±12 V, duty 0.75',
      ...BOTH,
      args: { swing: 24, duty: 0.75, ...STEADY },
      expected: both.max - both.min,
      allowed: 5e-4,
    },
  ]),
  checkLaw(pwmRms, [
    {
      case: 'full bridge in slow decay',
      ...SLOW,
      args: { mean: slow.mean, ripple: slow.max - slow.min },
      expected: slow.rms,
      allowed: 1e-5,
    },
    {
      case: 'small can, period twice L/R: its curved current heats a third of a percent more than the triangle',
      ...COARSE,
      args: { mean: coarse.mean, ripple: coarse.max - coarse.min },
      expected: coarse.rms,
      allowed: 0.01,
    },
  ]),
  checkLaw(pwmPulsePeak, [
    { case: '3 V, duty 0.3, coasting', ...COAST, args: GENTLE, expected: coast.diodePeak, allowed: 1e-5 },
    { case: '7.4 V, duty 0.45, fast decay', ...COAST, args: FAST, expected: coast.fastPeak, allowed: 1e-5 },
  ]),
  checkLaw(pwmDiscontinuousMean, [
    {
      case: '3 V, duty 0.3, against a diode of 0.4 V whose drop is read in the pause',
      ...COAST,
      args: { ...GENTLE, offVoltage: -coast.diodeOff },
      expected: coast.diodeMean,
      allowed: 2e-4,
    },
    {
      case: '7.4 V, duty 0.45, full bridge in fast decay through both diodes',
      ...COAST,
      args: { ...FAST, offVoltage: -coast.fastOff },
      expected: coast.fastMean,
      allowed: 2e-4,
    },
  ]),
];

export const bridgeCircuitChecks = [...meanChecks, ...rippleChecks];
