import { checkLaw } from '../check.ts';
import { protectionTripCurrent, protectionTripDelay } from './protection.ts';

const MODULE =
  'one-cell charger modules with a protection chip and one dual transistor, sold as tripping at 3 A, from memory';
const CHIP = 'data sheet of a common one-cell protection chip, timing diagram, from memory';
const board = { overCurrent: 3, shortCurrent: 27, overDelay: 10e-3, shortDelay: 50e-6 };

export const protectionChecks = [
  checkLaw(protectionTripCurrent, [
    {
      case: '150 mV over twice 25 mΩ',
      source: MODULE,
      kind: 'memory',
      args: { threshold: 0.15, transistor: 0.025, pairs: 1 },
      expected: 3,
      allowed: 0.01,
    },
    {
      case: '1.35 V over twice 25 mΩ, two pairs',
      source: 'Ohm’s law worked by hand: 1.35 V / 25 mΩ',
      kind: 'published',
      args: { threshold: 1.35, transistor: 0.025, pairs: 2 },
      expected: 54,
      allowed: 1e-6,
    },
  ]),
  checkLaw(protectionTripDelay, [
    {
      case: '3.3 A: over-current, about 10 ms',
      source: CHIP,
      kind: 'memory',
      args: { current: 3.3, ...board },
      expected: 10e-3,
      allowed: 0.01,
    },
    {
      case: '30 A: short circuit, 50 µs at most',
      source: CHIP,
      kind: 'memory',
      args: { current: 30, ...board },
      expected: 50e-6,
      allowed: 0.01,
    },
  ]),
];
