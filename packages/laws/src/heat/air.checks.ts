import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { ATMOSPHERE, airConductivity, airKinematicViscosity, airPrandtl, airViscosity } from './air.ts';

const CENGEL = 'Cengel, Heat Transfer, chapter 9 solutions, air properties printed beside the solution';
const INCROPERA = 'Incropera et al., solution 9.27, air at 320 K';
const USSA = 'U.S. Standard Atmosphere 1976, tables, from memory';

export const airChecks = [
  checkLaw(airViscosity, [
    {
      case: 'sea level, 15 °C',
      source: USSA,
      kind: 'memory',
      args: { temperature: ZERO_CELSIUS + 15 },
      expected: 1.7894e-5,
      allowed: 0.003,
    },
  ]),
  checkLaw(airConductivity, [
    {
      case: 'sea level, 15 °C',
      source: USSA,
      kind: 'memory',
      args: { temperature: ZERO_CELSIUS + 15 },
      expected: 0.025326,
      allowed: 0.005,
    },
    {
      case: '28.5 °C (this book prints 2 % less than others)',
      source: CENGEL,
      kind: 'published',
      args: { temperature: ZERO_CELSIUS + 28.5 },
      expected: 0.02577,
      allowed: 0.03,
    },
    {
      case: '35 °C (this book prints 2 % less than others)',
      source: CENGEL,
      kind: 'published',
      args: { temperature: ZERO_CELSIUS + 35 },
      expected: 0.02625,
      allowed: 0.03,
    },
    {
      case: '320 K',
      source: INCROPERA,
      kind: 'published',
      args: { temperature: 320 },
      expected: 0.0278,
      allowed: 0.015,
    },
  ]),
  checkLaw(airKinematicViscosity, [
    {
      case: '28.5 °C, 1 atm',
      source: CENGEL,
      kind: 'published',
      args: { temperature: ZERO_CELSIUS + 28.5, pressure: ATMOSPHERE },
      expected: 1.594e-5,
      allowed: 0.01,
    },
    {
      case: '32.5 °C, 1 atm',
      source: CENGEL,
      kind: 'published',
      args: { temperature: ZERO_CELSIUS + 32.5, pressure: ATMOSPHERE },
      expected: 1.631e-5,
      allowed: 0.01,
    },
    {
      case: '320 K, 1 atm, interpolated by straight line in the book between 300 and 350 K',
      source: INCROPERA,
      kind: 'published',
      args: { temperature: 320, pressure: ATMOSPHERE },
      expected: 17.9e-6,
      allowed: 0.02,
    },
    {
      case: '5000 m: 255.68 K, 54.05 kPa',
      source: USSA,
      kind: 'memory',
      args: { temperature: 255.68, pressure: 54048 },
      expected: 2.211e-5,
      allowed: 0.005,
    },
  ]),
  checkLaw(airPrandtl, [
    {
      case: '28.5 °C',
      source: CENGEL,
      kind: 'published',
      args: { temperature: ZERO_CELSIUS + 28.5 },
      expected: 0.7286,
      allowed: 0.03,
    },
    {
      case: '320 K; 20 % of temperature moves this number by less than a percent, so only the tight form can notice it',
      source: INCROPERA,
      kind: 'published',
      args: { temperature: 320 },
      expected: 0.704,
      allowed: 0.007,
    },
  ]),
];
