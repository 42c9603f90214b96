import { checkLaw, checkSubject } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { partTemperature } from '../heat/network.ts';
import {
  BIPOLAR_BRIDGE,
  bipolarBridgeDrop,
  deadTimeLoss,
  mosfetConductionLoss,
  mosfetJunction,
  mosfetResistance,
  quiescentLoss,
  switchingLoss,
} from './bridge.ts';

const C = ZERO_CELSIUS;
const { source: _typical, ...TYPICAL } = BIPOLAR_BRIDGE.typical;
const { source: _maximum, ...MAXIMUM } = BIPOLAR_BRIDGE.maximum;
const L298 = 'STMicroelectronics, L298 data sheet, January 2000';
const DRV8835 = 'Texas Instruments, DRV8835 data sheet SLVSB18G (2016), section 10.3';
const DRV8428 = 'Texas Instruments, DRV8428E data sheet SLOSE51A (2020), power dissipation';
const SLVA504 = 'Texas Instruments, SLVA504A (2012, rev. 2021), section 2.1.1';

export const bridgeChecks = [
  checkLaw(bipolarBridgeDrop, [
    {
      case: 'largest total drop at 2 A: 4.9 V',
      source: L298,
      kind: 'published',
      args: { current: 2, ...MAXIMUM },
      expected: 4.9,
      allowed: 1e-6,
    },
    {
      case: 'typical drop at 1 A: 1.35 V above and 1.2 V below',
      source: L298,
      kind: 'published',
      args: { current: 1, ...TYPICAL },
      expected: 1.35 + 1.2,
      allowed: 1e-6,
    },
    {
      case: 'typical drop at 1.5 A: half way from 2.55 V to 3.7 V',
      source: L298,
      kind: 'published',
      args: { current: 1.5, ...TYPICAL },
      expected: 3.125,
      allowed: 1e-6,
    },
  ]),
  checkLaw(mosfetResistance, [
    {
      case: 'at 125 °C makers’ curves stand at about 1.4 to 1.5 times the value at 25 °C',
      source: 'normalised on-resistance in data sheets of small power MOSFETs, from memory',
      kind: 'memory',
      args: { resistance25: 0.1, junction: C + 125 },
      expected: 0.145,
      allowed: 0.06,
    },
  ]),
  checkLaw(mosfetConductionLoss, [
    {
      case: '0.8 A through 1.0 Ω of both switches: 0.64 W',
      source: DRV8835,
      kind: 'published',
      args: { current: 0.8, highSwitch: 0.5, lowSwitch: 0.5 },
      expected: 0.64,
      allowed: 1e-6,
    },
    {
      case: '0.5 A through 0.75 Ω and 0.75 Ω: half of 0.75 W for two motors',
      source: DRV8428,
      kind: 'published',
      args: { current: 0.5, highSwitch: 0.75, lowSwitch: 0.75 },
      expected: 0.375,
      allowed: 1e-6,
    },
  ]),
  checkLaw(switchingLoss, [
    {
      case: 'one edge of 24 V, 0.5 A, 100 ns at 40 kHz: 0.024 W',
      source: DRV8428,
      kind: 'published',
      args: { voltage: 24, current: 0.5, edgeTime: 100e-9, frequency: 40e3, edges: 1 },
      expected: 0.024,
      allowed: 1e-6,
    },
    {
      case: 'both edges of 13.5 V, 1 A, 1 µs at 20 kHz: 0.32 W less 0.05 W of conduction',
      source: SLVA504,
      kind: 'published',
      args: { voltage: 13.5, current: 1, edgeTime: 1e-6, frequency: 20e3, edges: 2 },
      expected: 0.32 - 0.05,
      allowed: 0.002,
    },
  ]),
  checkLaw(deadTimeLoss, [
    {
      case: '1 V, 1 A, 100 ns at 20 kHz: 0.054 W less 0.05 W of conduction',
      source: SLVA504,
      kind: 'published',
      args: { diodeDrop: 1, current: 1, deadTime: 100e-9, frequency: 20e3 },
      expected: 0.054 - 0.05,
      allowed: 1e-6,
    },
  ]),
  checkLaw(quiescentLoss, [
    {
      case: '24 V and 3.8 mA: 0.0912 W',
      source: DRV8428,
      kind: 'published',
      args: { voltage: 24, quiescent: 3.8e-3 },
      expected: 0.0912,
      allowed: 1e-6,
    },
  ]),
  checkSubject('junction temperature of a bridge', [
    {
      case: '0.8 A through 1.0 Ω over 47 K/W in 35 °C: 65 °C',
      source: DRV8835,
      kind: 'published',
      ours: () => {
        const power = mosfetConductionLoss({ current: 0.8, highSwitch: 0.5, lowSwitch: 0.5 });
        return partTemperature({ surroundings: C + 35, power, resistance: 47 });
      },
      expected: C + 65,
      allowed: 5e-4,
    },
    {
      case: '3 A through 0.565 Ω at duty 0.8 and two edges of 100 ns at 12 V, 20 kHz, over 35 K/W in 40 °C: 184.9 °C',
      source: 'web page on the heat of motor drivers, worked example',
      kind: 'published',
      ours: () => {
        const conduction = mosfetConductionLoss({ current: 3, highSwitch: 0.565, lowSwitch: 0 }) * 0.8;
        const edges = switchingLoss({ voltage: 12, current: 3, edgeTime: 100e-9, frequency: 20e3, edges: 2 });
        return partTemperature({ surroundings: C + 40, power: conduction + edges, resistance: 35 });
      },
      expected: C + 184.9,
      allowed: 5e-4,
    },
  ]),
  checkLaw(mosfetJunction, [
    {
      case: '3 A through 0.1 Ω over 40 K/W in 35 °C: root of the heat balance found by bracketing',
      source: 'SciPy 1.17, brentq on Tj − Ta = Rth·I²·Rds(Tj)',
      kind: 'reference library',
      args: { current: 3, resistance25: 0.1, thermalResistance: 40, ambient: C + 35 },
      expected: 351.888317757,
      allowed: 1e-7,
    },
  ]),
];
