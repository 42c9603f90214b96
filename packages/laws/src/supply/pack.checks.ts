import { checkLaw } from '../check.ts';
import {
  equalisingCurrent,
  packCapacity,
  packEnergy,
  packResistance,
  packVoltage,
  parallelShare,
  prospectiveCurrent,
} from './pack.ts';

const HAND = 'Ohm’s law worked by hand';
const LABEL = 'labels of six-cell notebook packs, 10.8 V 5200 mAh 56 Wh of 3.6 V 2.6 Ah cells, from memory';
const SPICE = 'ngspice operating point, 12.6 V behind 50 mΩ and 11.4 V behind 120 mΩ on one bus';
const two = { first: 12.6, second: 11.4, firstResistance: 0.05, secondResistance: 0.12 };

export const packChecks = [
  checkLaw(packResistance, [
    {
      case: 'three cells of 5 mΩ, two strings, 10 mΩ of leads: 7.5 + 10 mΩ',
      source: HAND,
      kind: 'published',
      args: { cell: 5e-3, series: 3, parallel: 2, leads: 10e-3 },
      expected: 17.5e-3,
      allowed: 1e-9,
    },
  ]),
  checkLaw(packCapacity, [
    {
      case: 'two strings',
      source: LABEL,
      kind: 'memory',
      args: { cell: 2.6 * 3600, parallel: 2 },
      expected: 5.2 * 3600,
      allowed: 1e-9,
    },
  ]),
  checkLaw(packVoltage, [
    {
      case: 'three cells',
      source: LABEL,
      kind: 'memory',
      args: { cell: 3.6, series: 3 },
      expected: 10.8,
      allowed: 1e-9,
    },
  ]),
  checkLaw(packEnergy, [
    {
      case: '10.8 V, 5.2 Ah',
      source: LABEL,
      kind: 'memory',
      args: { voltage: 10.8, capacity: 5.2 * 3600 },
      expected: 56 * 3600,
      allowed: 0.01,
    },
    {
      case: '11.1 V reaches the free limit of air travel, 100 Wh, at 9.01 Ah',
      source: 'Lithium Batteries transport e-book 2024, p. 35 (limit)',
      kind: 'published',
      args: { voltage: 11.1, capacity: 9.01 * 3600 },
      expected: 100 * 3600,
      allowed: 0.001,
    },
  ]),
  checkLaw(prospectiveCurrent, [
    {
      case: 'three racing cells of 5 mΩ, 12.6 V, 10 mΩ of leads: 12.6 V / 25 mΩ',
      source: HAND,
      kind: 'published',
      args: { cellVoltage: 4.2, series: 3, parallel: 1, cell: 5e-3, leads: 10e-3 },
      expected: 504,
      allowed: 1e-6,
    },
    {
      case: 'six AA NiMH, 7.2 V, 30 mΩ each, 20 mΩ of leads: 7.2 V / 200 mΩ',
      source: HAND,
      kind: 'published',
      args: { cellVoltage: 1.2, series: 6, parallel: 1, cell: 30e-3, leads: 20e-3 },
      expected: 36,
      allowed: 1e-6,
    },
  ]),
  checkLaw(equalisingCurrent, [
    { case: 'no load', source: SPICE, kind: 'reference library', args: two, expected: 7.058824, allowed: 1e-6 },
  ]),
  checkLaw(parallelShare, [
    {
      case: 'with 6 A of load the bus stands at 12.03529 V',
      source: SPICE,
      kind: 'reference library',
      args: { ...two, load: 6 },
      expected: (12.6 - 12.03529) / 0.05,
      allowed: 2e-5,
    },
  ]),
];
