import { checkLaw } from '../check.ts';
import { capacitorVoltage, holdUpCapacitance, holdUpTime, inrushIntegral, inrushPeak } from './capacitor.ts';

const HOLD = 'ngspice transient analysis: 2200 µF at 12 V feeding a constant 5 W';
const N9 = 'general-purpose SPICE simulator: 12 V step through 0.1 Ω into 1000 µF';

export const capacitorChecks = [
  checkLaw(holdUpTime, [
    {
      case: 'down to 8 V',
      source: HOLD,
      kind: 'reference library',
      args: { capacitance: 2.2e-3, from: 12, to: 8, power: 5 },
      expected: 17.6121e-3,
      allowed: 0.001,
    },
    {
      case: 'down to 9 V',
      source: HOLD,
      kind: 'reference library',
      args: { capacitance: 2.2e-3, from: 12, to: 9, power: 5 },
      expected: 13.8721e-3,
      allowed: 0.0015,
    },
  ]),
  checkLaw(holdUpCapacitance, [
    {
      case: '17.61 ms from 12 to 8 V',
      source: HOLD,
      kind: 'reference library',
      args: { power: 5, time: 17.6121e-3, from: 12, to: 8 },
      expected: 2.2e-3,
      allowed: 0.001,
    },
  ]),
  checkLaw(inrushPeak, [
    {
      case: 'first instant',
      source: N9,
      kind: 'reference library',
      args: { source: 12, resistance: 0.1 },
      expected: 119.9994,
      allowed: 1e-5,
    },
  ]),
  checkLaw(inrushIntegral, [
    {
      case: 'current squared, integrated over 2.9 ms by the simulator',
      source: `${N9}, ngspice`,
      kind: 'reference library',
      args: { capacitance: 1e-3, source: 12, resistance: 0.1 },
      expected: 0.7199995,
      allowed: 1e-5,
    },
  ]),
  checkLaw(capacitorVoltage, [
    {
      case: 'after 100 µs',
      source: N9,
      kind: 'reference library',
      args: { source: 12, resistance: 0.1, capacitance: 1e-3, time: 100e-6 },
      expected: 7.585425,
      allowed: 1e-5,
    },
    {
      case: 'after 300 µs',
      source: N9,
      kind: 'reference library',
      args: { source: 12, resistance: 0.1, capacitance: 1e-3, time: 300e-6 },
      expected: 11.40255,
      allowed: 1e-5,
    },
  ]),
];
