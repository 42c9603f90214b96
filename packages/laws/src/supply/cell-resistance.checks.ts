import { checkLaw, checkSubject } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  activationEnergyFromReadings,
  measuredResistanceFactor,
  resistanceAtTemperature,
  resistanceChargeFactor,
  resistanceTemperatureFactor,
  usualCellResistance,
} from './cell-resistance.ts';

const CELL27 = 'Simulink example data "battery state of charge estimation", 27 Ah lithium cell';
const ARRHENIUS = 'Arrhenius law worked by hand with R = 8.314 J/(mol·K)';
const NCERT = 'NCERT Chemistry XII, chapter on chemical kinetics';

export const cellResistanceChecks = [
  checkLaw(resistanceAtTemperature, [
    {
      case: '1 Ω, 20 kJ/mol, 0 °C',
      source: ARRHENIUS,
      kind: 'published',
      args: { r25: 1, activationEnergy: 20e3, temperature: ZERO_CELSIUS },
      expected: 2.093,
      allowed: 5e-4,
    },
    {
      case: 'doubling over 10 K below 25 °C at the activation energy printed for 298 to 308 K; allowance for the shift of the interval',
      source: `${NCERT}, exercise on doubling per 10 K (52.897 kJ/mol), from memory`,
      kind: 'memory',
      args: { r25: 0.03, activationEnergy: 52897, temperature: ZERO_CELSIUS + 15 },
      expected: 0.06,
      allowed: 0.05,
    },
  ]),
  checkLaw(resistanceTemperatureFactor, [
    {
      case: 'lithium at −10 °C, 20 kJ/mol',
      source: ARRHENIUS,
      kind: 'published',
      args: { chemistry: 'lipo', temperature: ZERO_CELSIUS - 10 },
      expected: 2.925,
      allowed: 5e-4,
    },
    {
      case: 'NiMH at −10 °C, resistance about doubled',
      source: 'NiMH makers’ handbooks, from memory',
      kind: 'memory',
      args: { chemistry: 'nimh', temperature: ZERO_CELSIUS - 10 },
      expected: 2,
      allowed: 0.05,
    },
  ]),
  checkSubject('cell resistance in the cold', [
    {
      case: 'ohmic and polarisation resistance together, 5 against 20 °C, half charged',
      source: `${CELL27}, (0.0107 + 0.0036) / (0.0082 + 0.0016)`,
      kind: 'published',
      expected: 1.459,
      allowed: 0.07,
      ours: () =>
        resistanceTemperatureFactor({ chemistry: 'lipo', temperature: ZERO_CELSIUS + 5 }) /
        resistanceTemperatureFactor({ chemistry: 'lipo', temperature: ZERO_CELSIUS + 20 }),
    },
  ]),
  checkLaw(activationEnergyFromReadings, [
    {
      case: 'rate doubles from 298 to 308 K',
      source: `${NCERT}, exercise on doubling per 10 K, from memory`,
      kind: 'memory',
      args: { coldResistance: 2, coldTemperature: 298, warmResistance: 1, warmTemperature: 308 },
      expected: 52897,
      allowed: 0.001,
    },
    {
      case: 'rates 0.02 and 0.07 at 500 and 700 K',
      source: `${NCERT}, worked example, 18 230.8 J, from memory`,
      kind: 'memory',
      args: { coldResistance: 0.07, coldTemperature: 500, warmResistance: 0.02, warmTemperature: 700 },
      expected: 18230.8,
      allowed: 0.001,
    },
    {
      case: 'ohmic resistance 10.7 mΩ at 278 K and 8.2 mΩ at 293 K',
      source: `${CELL27}, worked by hand: 12.0 kJ/mol`,
      kind: 'published',
      args: { coldResistance: 0.0107, coldTemperature: 278, warmResistance: 0.0082, warmTemperature: 293 },
      expected: 12.0e3,
      allowed: 0.005,
    },
  ]),
  checkLaw(resistanceChargeFactor, [
    {
      case: 's = 0.1: (0.08812 + 0.06410 + 0.04984) / (0.07446 + 0.04669 + 0.04984)',
      source: 'Chen & Rincón-Mora 2006, resistances worked by hand from the coefficients',
      kind: 'published',
      args: { charge: 0.1 },
      expected: 1.1817,
      allowed: 2e-4,
    },
    {
      case: 's = 0.05: (0.12064 + 0.12142 + 0.05266) / 0.17099',
      source: 'Chen & Rincón-Mora 2006, resistances worked by hand from the coefficients',
      kind: 'published',
      args: { charge: 0.05 },
      expected: 1.7236,
      allowed: 2e-4,
    },
    {
      case: 's = 0.25 against another cell, 8.7 over 8.2 mΩ at 20 °C',
      source: CELL27,
      kind: 'published',
      args: { charge: 0.25 },
      expected: 1.061,
      allowed: 0.06,
    },
  ]),
  checkLaw(measuredResistanceFactor, [
    {
      case: '10 % charge at 5 °C, 11.0 over 8.2 mΩ',
      source: CELL27,
      kind: 'published',
      args: { charge: 0.1, temperature: ZERO_CELSIUS + 5 },
      expected: 0.011 / 0.0082,
      allowed: 0.001,
    },
    {
      case: '90 % charge at 40 °C, 8.9 over 8.2 mΩ',
      source: CELL27,
      kind: 'published',
      args: { charge: 0.9, temperature: ZERO_CELSIUS + 40 },
      expected: 0.0089 / 0.0082,
      allowed: 0.001,
    },
  ]),
  checkLaw(usualCellResistance, [
    {
      case: 'racing pouch cell of 2.2 Ah: middle of 5 to 14 mΩ',
      source: 'common practice, no source',
      kind: 'common practice',
      args: { make: 'racing', capacity: 2.2 * 3600 },
      expected: 9.5e-3,
      allowed: 0.06,
    },
    {
      case: 'energy cell of 2.6 Ah: middle of 30 to 60 mΩ',
      source: 'common practice, no source',
      kind: 'common practice',
      args: { make: 'energy-18650', capacity: 2.6 * 3600 },
      expected: 45e-3,
      allowed: 0.01,
    },
  ]),
];
