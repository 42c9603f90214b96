import { checkLaw } from '../check.ts';
import { dutyCeiling } from './duty.ts';
import {
  pwmCurrentDiode,
  pwmMeanAntiphase,
  pwmMeanDeadTime,
  pwmMeanDiodeOff,
  pwmMeanSlowDecay,
  pwmSupplyCurrent,
  pwmSupplyCurrentAntiphase,
} from './pwm.ts';

const SPICE = 'general-purpose SPICE simulator';
const SLOW = `${SPICE}: 12 V, 20 kHz, half duty into 1 Ω, 1 mH and 4 V carries a mean of 2.000006 A, 2.00047 A rms`;
const BOTH_WAYS = `${SPICE}: ±12 V, 20 kHz, duty 0.75 into 1 Ω, 1 mH and 4 V carries a mean of 2.00001 A, ripple 0.22495 A`;
const L298 = 'STMicroelectronics, L298 data sheet, January 2000: 2.55 V typical at 1 A';

export const pwmChecks = [
  checkLaw(pwmMeanSlowDecay, [
    {
      case: 'mean voltage that drives the simulated current',
      source: SLOW,
      kind: 'reference library',
      args: { voltage: 12, duty: 0.5, bridgeDrop: 0 },
      expected: 2.000006 + 4,
      allowed: 1e-4,
    },
    {
      case: '7.4 V, full duty, bipolar bridge at 1 A: 4.85 V by hand',
      source: L298,
      kind: 'published',
      args: { voltage: 7.4, duty: 1, bridgeDrop: 2.55 },
      expected: 4.85,
      allowed: 1e-6,
    },
  ]),
  checkLaw(pwmMeanAntiphase, [
    {
      case: 'mean voltage that drives the simulated current',
      source: BOTH_WAYS,
      kind: 'reference library',
      args: { voltage: 12, duty: 0.75, bridgeDrop: 0 },
      expected: 2.00001 + 4,
      allowed: 1e-4,
    },
    {
      case: '7.4 V, duty 0.9, bipolar bridge at 1 A: 5.92 V − 2.55 V by hand',
      source: L298,
      kind: 'published',
      args: { voltage: 7.4, duty: 0.9, bridgeDrop: 2.55 },
      expected: 3.37,
      allowed: 1e-6,
    },
  ]),
  checkLaw(pwmMeanDeadTime, [
    {
      case: '12 V, half duty, 1 µs at 20 kHz, diode 0.7 V: 23 µs at 12 V and two times 1 µs at −0.7 V of 50 µs, by areas',
      source: 'area of the leg voltage over one period worked by hand, any power-electronics text',
      kind: 'published',
      args: { voltage: 12, duty: 0.5, deadTime: 1e-6, frequency: 20e3, diodeDrop: 0.7 },
      expected: (24 * 12 - 2 * 0.7) / 50,
      allowed: 1e-6,
    },
  ]),
  checkLaw(pwmMeanDiodeOff, [
    {
      case: '12 V, half duty, 1 µs late at 20 kHz, diode 0.7 V',
      source: `${SPICE}: 5.3957 V`,
      kind: 'reference library',
      args: { voltage: 12, duty: 0.5, deadTime: 1e-6, frequency: 20e3, diodeDrop: 0.7 },
      expected: 5.3957,
      allowed: 2e-4,
    },
  ]),
  checkLaw(pwmCurrentDiode, [
    {
      case: '12 V, half duty, switches of 0.1 Ω, diode 0.5635 V, 1 Ω, 1 mH, 4 V',
      source: `${SPICE}: mean 1.4951 A`,
      kind: 'reference library',
      args: { voltage: 12, duty: 0.5, diodeDrop: 0.5635, backEmf: 4, resistance: 1, lowSwitch: 0.1, highSwitch: 0.1 },
      expected: 1.4951,
      allowed: 0.002,
    },
  ]),
  checkLaw(pwmSupplyCurrent, [
    {
      case: 'power balance: (2.00047²·1 Ω + 4 V·2.000006 A)/12 V',
      source: SLOW,
      kind: 'reference library',
      args: { duty: 0.5, motorCurrent: 2.000006, quiescent: 0 },
      expected: (2.00047 ** 2 + 4 * 2.000006) / 12,
      allowed: 5e-4,
    },
    {
      case: '0.5 A at half duty with a classic bridge of 50 mA: 0.3 A by hand',
      source: 'STMicroelectronics, L298 data sheet, January 2000: quiescent 50 mA typical',
      kind: 'published',
      args: { duty: 0.5, motorCurrent: 0.5, quiescent: 0.05 },
      expected: 0.3,
      allowed: 1e-6,
    },
  ]),
  checkLaw(pwmSupplyCurrentAntiphase, [
    {
      case: 'power balance: ((2.00001² + 0.22495²/12)·1 Ω + 4 V·2.00001 A)/12 V',
      source: BOTH_WAYS,
      kind: 'reference library',
      args: { duty: 0.75, motorCurrent: 2.00001, quiescent: 0 },
      expected: (2.00001 ** 2 + 0.22495 ** 2 / 12 + 4 * 2.00001) / 12,
      allowed: 5e-4,
    },
    {
      case: '0.5 A at duty 0.7 with a classic bridge of 50 mA: 0.25 A by hand',
      source: 'STMicroelectronics, L298 data sheet, January 2000: quiescent 50 mA typical',
      kind: 'published',
      args: { duty: 0.7, motorCurrent: 0.5, quiescent: 0.05 },
      expected: 0.25,
      allowed: 1e-6,
    },
  ]),
  checkLaw(dutyCeiling, [
    {
      case: 'a 6 V motor on 12 V: the duty whose simulated mean is 6.000006 V',
      source: SLOW,
      kind: 'reference library',
      args: { ratedVoltage: 6.000006, bridgeDrop: 0, packVoltage: 12 },
      expected: 0.5,
      allowed: 1e-4,
    },
    {
      case: 'a 3 V motor on 8.4 V behind a bipolar bridge at 1 A: 5.55/8.4 by hand',
      source: L298,
      kind: 'published',
      args: { ratedVoltage: 3, bridgeDrop: 2.55, packVoltage: 8.4 },
      expected: 0.6607,
      allowed: 1e-4,
    },
  ]),
];
