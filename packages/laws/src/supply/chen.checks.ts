import { checkLaw, checkSubject } from '../check.ts';
import {
  chenFastCapacitance,
  chenFastResistance,
  chenRestVoltage,
  chenSeriesResistance,
  chenSlowCapacitance,
  chenSlowResistance,
  polarisationVoltage,
} from './chen.ts';

const FITS =
  'Chen & Rincón-Mora 2006, coefficients as in a public re-implementation (CBMS project), worked apart from this code';
const SPICE = 'general-purpose SPICE simulator, two-branch cell at half charge, 0.85 A step';

/** Voltage of the simulator’s source [V]; the closed form gives 3.80336 V. */
const SPICE_SOURCE = 3.80342;

const at = (charge: number, expected: number, allowed: number) =>
  ({ case: `s = ${charge}`, source: FITS, kind: 'published', args: { charge }, expected, allowed }) as const;

const step = (time: number, expected: number) =>
  ({
    case: `terminal voltage ${time} s after a step of 0.85 A at half charge`,
    source: SPICE,
    kind: 'reference library',
    expected,
    allowed: 1e-6,
    ours: () => {
      const charge = 0.5;
      const branch = (resistance: number, capacitance: number) =>
        polarisationVoltage({ current: 0.85, resistance, capacitance, initial: 0, time });
      return (
        SPICE_SOURCE -
        0.85 * chenSeriesResistance({ charge }) -
        branch(chenFastResistance({ charge }), chenFastCapacitance({ charge })) -
        branch(chenSlowResistance({ charge }), chenSlowCapacitance({ charge }))
      );
    },
  }) as const;

export const chenChecks = [
  checkLaw(chenRestVoltage, [
    at(0.1, 3.6746, 2e-5),
    at(0.5, 3.8034, 2e-5),
    at(1, 4.1029, 2e-5),
    {
      case: 'half charge against the hobby percentage table',
      source: 'percentage table of hobby LiPo packs found in many public firmwares',
      kind: 'common practice',
      args: { charge: 0.5 },
      expected: 3.84,
      allowed: 0.012,
    },
  ]),
  checkLaw(chenSeriesResistance, [at(0.05, 0.12064, 1e-4), at(0.1, 0.08812, 1e-4), at(0.9, 0.07446, 1e-4)]),
  checkLaw(chenFastResistance, [at(0.05, 0.12142, 1e-4), at(0.1, 0.0641, 1e-4), at(0.9, 0.04669, 1e-4)]),
  checkLaw(chenFastCapacitance, [at(0.05, 320.4, 2e-4), at(0.1, 508.6, 2e-4), at(0.9, 703.6, 2e-4)]),
  checkLaw(chenSlowResistance, [at(0.05, 0.05266, 2e-4), at(0.9, 0.04984, 2e-4)]),
  checkLaw(chenSlowCapacitance, [at(0.05, 2914, 2e-4), at(0.1, 4073, 2e-4), at(0.9, 4475, 2e-4)]),
  checkLaw(polarisationVoltage, [
    {
      case: '3 A into 4 Ω ∥ 60 F that stands at 20 V, after 120 s (transient analysis)',
      source: 'ngspice transient analysis of the same branch',
      kind: 'reference library',
      args: { current: 3, resistance: 4, capacitance: 60, initial: 20, time: 120 },
      expected: 16.85225,
      allowed: 1e-5,
    },
    {
      case: 'one time constant from zero gives 63.2 % of the end value',
      source: 'first-order response, 1 − 1/e = 0.632, any circuit text',
      kind: 'published',
      args: { current: 1, resistance: 1, capacitance: 10, initial: 0, time: 10 },
      expected: 0.632,
      allowed: 0.001,
    },
  ]),
  checkSubject('cell step response', [step(1, 3.738748), step(10, 3.727845), step(100, 3.687019), step(999, 3.658559)]),
];
