import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  adiabaticHeatingRate,
  heatCapacityFromTimeConstant,
  magnetConstantAt,
  motorContinuousCurrent,
  windingSteadyTemperature,
  windingTemperatureByResistance,
} from './motor-heat.ts';
import { windingAfterStall } from './motor-stall.ts';

const C = ZERO_CELSIUS;
const F0816 = 'FAULHABER 0816 … SR data sheet, 003 type: 20 and 48 K/W, winding limit 85 °C, rated 0.37 A';
const SCIPY = 'SciPy 1.17, solve_ivp with DOP853, relative tolerance 1e-12';
const TINY = { resistance20: 5.4, windingToCan: 20, canToAir: 48, ambient: C + 22 };
const SMALL = {
  resistance20: 2.83,
  windingCapacity: 0.8333,
  canCapacity: 7.6,
  windingToCan: 6,
  canToAir: 25,
  ambient: C + 22,
};

export const motorHeatChecks = [
  checkLaw(magnetConstantAt, [
    {
      case: 'sintered grade N48SH from 20 °C to 150 °C: remanence 13.82 kG becomes 11.69 kG',
      source: 'Advanced Magnets, temperature coefficients',
      kind: 'published',
      args: { constant20: 13.82, temperature: C + 150, magnet: 'neodymium' },
      expected: 11.69,
      allowed: 0.015,
    },
    {
      case: 'rated point of the 003 type: (0.70 + 0.034) mN·m over 0.37 A with the winding at 85 °C',
      source: F0816,
      kind: 'published',
      args: { constant20: 2.11e-3, temperature: C + 85, magnet: 'neodymium' },
      expected: 0.734e-3 / 0.37,
      allowed: 0.015,
    },
    {
      case: 'ferrite motor at 100 °C: 0.84 of its constant at 20 °C',
      source: 'hard ferrite, −0.20 %/K, from memory',
      kind: 'memory',
      args: { constant20: 1, temperature: C + 100, magnet: 'ferrite' },
      expected: 0.84,
      allowed: 0.001,
    },
  ]),
  checkLaw(heatCapacityFromTimeConstant, [
    {
      case: 'thermocouple bead of 0.706 mm, τ = 1 s at h = 400 W/m²K: ρ·c·volume with 8500 kg/m³ and 400 J/kg·K',
      source: 'Incropera, Fundamentals of Heat and Mass Transfer, example 5.1, from memory',
      kind: 'memory',
      args: { timeConstant: 1, thermalResistance: 1 / (400 * Math.PI * 0.70588e-3 ** 2) },
      expected: (8500 * 400 * Math.PI * 0.70588e-3 ** 3) / 6,
      allowed: 0.001,
    },
  ]),
  checkLaw(adiabaticHeatingRate, [
    {
      case: 'copper at 100 A/mm² from 20 °C, against the slope at the start of the fusing equation: 33·J²·254·ln 10',
      source: 'Onderdonk’s equation for the heating of copper without loss',
      kind: 'published',
      args: { current: 100, resistance: 1 / 58, heatCapacity: 8890e-6 * 385 },
      expected: 33 * (1e8 * (Math.PI / 4) * 25.4e-6 ** 2) ** 2 * 254 * Math.LN10,
      allowed: 0.02,
    },
    {
      case: 'RS-380 class can locked at 7.2 V: 157 W into 71 g of 450 J/kg·K warms by 4.9 K/s',
      source: 'Numazu college MIRS project, DC motor page: 0.33 Ω; mass and heat of mixed metal, common practice',
      kind: 'common practice',
      args: { current: 7.2 / 0.33, resistance: 0.33, heatCapacity: 0.071 * 450 },
      expected: 4.9,
      allowed: 0.005,
    },
  ]),
  checkLaw(windingSteadyTemperature, [
    {
      case: 'rated current 0.37 A in air of 22 °C reaches the limit of 85 °C',
      source: F0816,
      kind: 'published',
      args: { current: 0.37, ...TINY },
      expected: C + 85,
      allowed: 0.003,
    },
    {
      case: '1.2 A through 5 Ω over 12 K/W in 25 °C air: root of the heat balance found by bracketing',
      source: 'SciPy 1.17, brentq on T − Ta = Rth·I²·R(T)',
      kind: 'reference library',
      args: { current: 1.2, resistance20: 5, windingToCan: 4, canToAir: 8, ambient: C + 25 },
      expected: 431.5409104,
      allowed: 1e-7,
    },
  ]),
  checkLaw(motorContinuousCurrent, [
    {
      case: 'limit of 85 °C in air of 22 °C: rated 0.37 A',
      source: F0816,
      kind: 'published',
      args: { limit: C + 85, ...TINY },
      expected: 0.37,
      allowed: 0.005,
    },
  ]),
  checkLaw(windingTemperatureByResistance, [
    {
      case: '1/0.833 of the resistance at 20 °C is 70 °C by the factor table',
      source: 'cable maker’s page on IEC 60228, temperature correction factors Kt',
      kind: 'published',
      args: { cold: 0.833, hot: 1, before: C + 20 },
      expected: C + 70,
      allowed: 0.004,
    },
    {
      case: '10.0 Ω at 20 °C becomes 12.4 Ω: (2.4/10)·254.5 = 61.1 K by hand',
      source: 'IEC resistance method, from memory',
      kind: 'memory',
      args: { cold: 10, hot: 12.4, before: C + 20 },
      expected: C + 20 + 61.1,
      allowed: 0.0005,
    },
  ]),
  checkLaw(windingAfterStall, [
    {
      case: '1.5 A for 10 s from 40 °C winding and 30 °C can, integrated step by step',
      source: SCIPY,
      kind: 'reference library',
      args: { current: 1.5, ...SMALL, windingStart: C + 40, canStart: C + 30, time: 10 },
      expected: 346.1521821,
      allowed: 1e-7,
    },
    {
      case: '0.8 A for 120 s from 90 °C winding and 60 °C can, integrated step by step',
      source: SCIPY,
      kind: 'reference library',
      args: { current: 0.8, ...SMALL, windingStart: C + 90, canStart: C + 60, time: 120 },
      expected: 355.1159803,
      allowed: 1e-7,
    },
    {
      case: '3 A for 15 s, where the copper runs away, integrated step by step',
      source: SCIPY,
      kind: 'reference library',
      args: { current: 3, ...SMALL, windingStart: C + 22, canStart: C + 22, time: 15 },
      expected: 605.0272097,
      allowed: 1e-7,
    },
  ]),
];
