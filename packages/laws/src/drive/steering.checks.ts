import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { heldCoilTemperature, holdCurrent, holdHeat, servoCounts, servoStallAt, servoStallPower } from './steering.ts';

const C = ZERO_CELSIUS;
const CAN = 'Mabuchi catalogue, FA-130RA-18100: stall 2.10 A at 3 V, from memory';
const HS422 = 'trade article on the HS-422 servo: 4.1 kg·cm at 4.8 V, 5.0 kg·cm at 6 V';
const BRENTQ = 'SciPy 1.17, brentq on T − Ta = Rth·V²/R(T)';
/** A kilogram-force centimetre [N·m]. */
const KG_CM = 0.0980665;

export const steeringChecks = [
  checkLaw(holdCurrent, [
    {
      case: 'held at 40 % of 3 V: 0.4 of the stall current',
      source: CAN,
      kind: 'memory',
      args: { voltage: 3, duty: 0.4, resistance: 1.4286 },
      expected: 0.4 * 2.1,
      allowed: 0.001,
    },
  ]),
  checkLaw(holdHeat, [
    {
      case: 'held all the time at full duty: 3 V · 2.10 A',
      source: CAN,
      kind: 'memory',
      args: { voltage: 3, duty: 1, resistance: 1.4286, share: 1 },
      expected: 6.3,
      allowed: 0.001,
    },
    {
      case: 'held a quarter of the time at 40 %: 0.4 · 3 V · 0.84 A · 0.25',
      source: CAN,
      kind: 'memory',
      args: { voltage: 3, duty: 0.4, resistance: 1.4286, share: 0.25 },
      expected: 0.252,
      allowed: 0.001,
    },
  ]),
  checkLaw(heldCoilTemperature, [
    {
      case: '6 V, 5 Ω, 12 K/W, 25 °C',
      source: BRENTQ,
      kind: 'reference library',
      args: { voltage: 6, resistance20: 5, thermalResistance: 12, ambient: C + 25 },
      expected: 365.43543515,
      allowed: 1e-7,
    },
    {
      case: '2 V, 1.43 Ω, 30 K/W, 30 °C',
      source: BRENTQ,
      kind: 'reference library',
      args: { voltage: 2, resistance20: 1.43, thermalResistance: 30, ambient: C + 30 },
      expected: 367.99339926,
      allowed: 1e-7,
    },
  ]),
  checkLaw(servoStallAt, [
    {
      case: 'stall torque of 4.8 V at 6 V',
      source: HS422,
      kind: 'published',
      args: { known: 4.1 * KG_CM, knownVoltage: 4.8, voltage: 6 },
      expected: 5 * KG_CM,
      allowed: 0.03,
    },
  ]),
  checkLaw(servoStallPower, [
    {
      case: 'two standard servos of 0.9 A at 4.8 V: 8.64 W by hand',
      source: 'common practice, no source',
      kind: 'common practice',
      args: { count: 2, voltage: 4.8, stallCurrent: 0.9 },
      expected: 8.64,
      allowed: 1e-6,
    },
  ]),
  checkLaw(servoCounts, [
    {
      case: '1.5 ms at 50 Hz on 12 bits: 307 counts',
      source: 'common practice of twelve-bit servo boards, no source',
      kind: 'common practice',
      args: { pulse: 1.5e-3, frequency: 50, bits: 12 },
      expected: 307,
      allowed: 0.002,
    },
  ]),
];
