import { checkLaw } from '../check.ts';
import { sourceOf } from '../circuits/circuit.ts';
import { holdUp } from '../circuits/hold-up.circuit.ts';
import { capacitorVoltage, holdUpCapacitance, holdUpTime, inrushIntegral, inrushPeak } from './capacitor.ts';

const HOLD = sourceOf(holdUp);
const N9 = 'general-purpose SPICE simulator: 12 V step through 0.1 Ω into 1000 µF';

export const capacitorChecks = [
  checkLaw(holdUpTime, [
    {
      case: 'down to 8 V',
      source: HOLD,
      kind: 'reference library',
      args: { capacitance: 2.2e-3, from: 12, to: 8, power: 5 },
      expected: holdUp.kept.results.to8,
      allowed: 1e-6,
    },
    {
      case: 'down to 9 V',
      source: HOLD,
      kind: 'reference library',
      args: { capacitance: 2.2e-3, from: 12, to: 9, power: 5 },
      expected: holdUp.kept.results.to9,
      allowed: 1e-6,
    },
  ]),
  checkLaw(holdUpCapacitance, [
    {
      case: '17.6 ms from 12 to 8 V',
      source: HOLD,
      kind: 'reference library',
      args: { power: 5, time: holdUp.kept.results.to8, from: 12, to: 8 },
      expected: 2.2e-3,
      allowed: 1e-6,
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
