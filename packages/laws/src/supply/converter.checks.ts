import { checkLaw, checkSubject } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  buckDuty,
  buckInductorRipple,
  buckMinimumInput,
  buckOutputRipple,
  converterEfficiency,
  converterHeat,
  converterInputCurrent,
  deratedCurrent,
  inputCapacitorCurrent,
  linearRegulatorHeat,
  mostEfficientCurrent,
} from './converter.ts';

const STEP_DOWN = 'LM2596 data sheet, SNVS124, electrical characteristics';
const HART = 'Hart, Power Electronics, Example 6-1 (50 V, D 0.4, 400 µH, 100 µF, 20 kHz, 20 Ω)';
const THERAJA =
  'Theraja, A Textbook of Electrical Technology vol. II, 25 kVA transformer with 350 W iron and 400 W full-load copper loss, from memory';
const transformer = { output: 1, fixed: 350, proportional: 0, quadratic: 400 / 25000 ** 2 };

export const converterChecks = [
  checkLaw(converterInputCurrent, [
    {
      case: '5 V 3 A at 80 % from 12 V: 18.75 W',
      source: STEP_DOWN,
      kind: 'published',
      args: { output: 5, current: 3, efficiency: 0.8, input: 12 },
      expected: 1.5625,
      allowed: 1e-4,
    },
    {
      case: '3.3 V 3 A at 73 % from 12 V: 13.56 W',
      source: STEP_DOWN,
      kind: 'published',
      args: { output: 3.3, current: 3, efficiency: 0.73, input: 12 },
      expected: 1.13,
      allowed: 1e-3,
    },
  ]),
  checkLaw(converterHeat, [
    {
      case: '5 V 3 A at 80 %: 18.75 − 15 W',
      source: STEP_DOWN,
      kind: 'published',
      args: { output: 5, current: 3, efficiency: 0.8 },
      expected: 3.75,
      allowed: 1e-4,
    },
    {
      case: '3.3 V 3 A at 73 %',
      source: STEP_DOWN,
      kind: 'published',
      args: { output: 3.3, current: 3, efficiency: 0.73 },
      expected: 3.66,
      allowed: 1e-3,
    },
  ]),
  checkLaw(converterEfficiency, [
    {
      case: 'full load, unity power factor: 97.08 %',
      source: THERAJA,
      kind: 'memory',
      args: { ...transformer, current: 25000 },
      expected: 0.9708,
      allowed: 1e-4,
    },
    {
      case: 'half load: 96.52 %',
      source: THERAJA,
      kind: 'memory',
      args: { ...transformer, current: 12500 },
      expected: 0.9652,
      allowed: 1e-4,
    },
    {
      case: '5 V 3 A from 12 V, conduction only: 1.16 V switch for D = 0.52, 0.5 V diode for the rest, 0.843 V in all',
      source: `${STEP_DOWN}; 15 W over 17.53 W by hand`,
      kind: 'published',
      args: { output: 5, current: 3, fixed: 0, proportional: 0.843, quadratic: 0 },
      expected: 0.856,
      allowed: 0.001,
    },
  ]),
  checkLaw(mostEfficientCurrent, [
    {
      case: '25 kVA · √(350/400) = 23.4 kVA',
      source: THERAJA,
      kind: 'memory',
      args: { fixed: 350, quadratic: 400 / 25000 ** 2 },
      expected: 23.4e3,
      allowed: 0.002,
    },
  ]),
  checkLaw(buckDuty, [
    {
      case: '12 V to 5 V, ideal',
      source: 'Scilab textbook companion 1823, example 10.4',
      kind: 'published',
      args: { output: 5, input: 12, efficiency: 1 },
      expected: 0.417,
      allowed: 0.001,
    },
    {
      case: '12 V to 5 V at 80 %: on longer than ideal',
      source: `${STEP_DOWN}; 5/9.6 by hand`,
      kind: 'published',
      args: { output: 5, input: 12, efficiency: 0.8 },
      expected: 0.5208,
      allowed: 2e-4,
    },
  ]),
  checkLaw(buckMinimumInput, [
    {
      case: '5 V 3 A, switch 1.5 V at most, 0.1 Ω inductor, no limit on duty, against the printed lowest input of 7 V',
      source: STEP_DOWN,
      kind: 'published',
      args: { output: 5, maximumDuty: 1, switchDrop: 1.5, current: 3, resistance: 0.1 },
      expected: 7,
      allowed: 0.03,
    },
    {
      case: '3.3 V 2 A, 90 % duty, 0.25 Ω: 3.667 + 0.5 V',
      source: 'drop-out rule of makers’ notes worked by hand',
      kind: 'published',
      args: { output: 3.3, maximumDuty: 0.9, switchDrop: 0, current: 2, resistance: 0.25 },
      expected: 4.1667,
      allowed: 1e-4,
    },
  ]),
  checkLaw(buckInductorRipple, [
    {
      case: '1.75 A − 0.25 A',
      source: HART,
      kind: 'published',
      args: { input: 50, output: 20, inductance: 400e-6, frequency: 20e3 },
      expected: 1.5,
      allowed: 0.001,
    },
    {
      case: '12 V halved at 20 kHz through 1 mH',
      source: 'general-purpose SPICE simulator, peak-to-peak over the tenth millisecond',
      kind: 'reference library',
      args: { input: 12, output: 6, inductance: 1e-3, frequency: 20e3 },
      expected: 0.14996,
      allowed: 5e-4,
    },
  ]),
  checkLaw(buckOutputRipple, [
    {
      case: '0.469 %',
      source: `${HART}, number from memory`,
      kind: 'memory',
      args: { duty: 0.4, inductance: 400e-6, capacitance: 100e-6, frequency: 20e3 },
      expected: 0.00469,
      allowed: 0.002,
    },
    {
      case: 'peak-to-peak of the output over 2 ms, over its 20 V',
      source: `ngspice transient analysis of ${HART}`,
      kind: 'reference library',
      args: { duty: 0.4, inductance: 400e-6, capacitance: 100e-6, frequency: 20e3 },
      expected: (20.04382 - 19.94992) / 20,
      allowed: 0.005,
    },
  ]),
  checkLaw(inputCapacitorCurrent, [
    {
      case: '3 A at D = 5/12: √(3² D − (3 D)²), from mean square less square of mean',
      source: 'RMS of a rectangular wave worked by hand',
      kind: 'published',
      args: { current: 3, duty: 5 / 12 },
      expected: 1.479,
      allowed: 5e-4,
    },
    {
      case: '3 A at D = 0.2: 1.2 A, a third of the way to the worst case of half the output current',
      source: 'RMS of a rectangular wave worked by hand: √(1.8 − 0.36)',
      kind: 'published',
      args: { current: 3, duty: 0.2 },
      expected: 1.2,
      allowed: 1e-6,
    },
  ]),
  checkLaw(linearRegulatorHeat, [
    {
      case: '12 V to 5 V, 0.5 A and 50 mA of its own: 12 V · 0.55 A taken, 2.5 W delivered',
      source: 'power balance worked by hand',
      kind: 'published',
      args: { input: 12, output: 5, current: 0.5, quiescent: 0.05 },
      expected: 4.1,
      allowed: 1e-9,
    },
  ]),
  checkLaw(deratedCurrent, [
    {
      case: 'derating line of a power transistor: 115 W to 25 °C, 0.657 W/K beyond, at 100 °C: 65.7 W (line through 200 °C)',
      source: '2N3055 data sheet, maximum ratings, from memory',
      kind: 'memory',
      args: { rated: 115, ambient: ZERO_CELSIUS + 100, knee: ZERO_CELSIUS + 25, zero: ZERO_CELSIUS + 200 },
      expected: 65.7,
      allowed: 0.001,
    },
  ]),
  checkSubject('converter bounds', [
    {
      case: 'switching loss left between the conduction bound and the printed 80 %: 3.75 − 2.53 W',
      source: STEP_DOWN,
      kind: 'published',
      expected: 1.22,
      allowed: 0.01,
      ours: () => {
        const bound = converterEfficiency({ output: 5, current: 3, fixed: 0, proportional: 0.843, quadratic: 0 });
        const [printed, conduction] = [0.8, bound].map((efficiency) =>
          converterHeat({ output: 5, current: 3, efficiency }),
        );
        return (printed ?? 0) - (conduction ?? 0);
      },
    },
  ]),
];
