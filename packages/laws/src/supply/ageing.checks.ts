import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { capacityAfterCycles, cycleLife, cyclingLoss, throughputToLoss } from './ageing.ts';

const WANG =
  'Wang et al., J. Power Sources 196 (2011) 3942, coefficients as quoted in three public programs; worked apart from this code';
const SHEET = 'battery handling sheet, cycles against depth of discharge';
const H = 3600;

const loss = (rate: number, celsius: number, ampereHours: number, expected: number) =>
  ({
    case: `${rate} C, ${celsius} °C, ${ampereHours} Ah put through`,
    source: WANG,
    kind: 'published',
    args: { rate, temperature: ZERO_CELSIUS + celsius, throughput: ampereHours * H },
    expected,
    allowed: 0.0015,
  }) as const;

const until = (rate: number, celsius: number, ampereHours: number) =>
  ({
    case: `20 % lost at ${rate} C, ${celsius} °C`,
    source: WANG,
    kind: 'published',
    args: { rate, temperature: ZERO_CELSIUS + celsius, loss: 0.2 },
    expected: ampereHours * H,
    allowed: 0.003,
  }) as const;

const cycles = (depth: number, low: number, high: number) =>
  ({
    case: `depth ${depth * 100} %, middle of ${low} to ${high}`,
    source: SHEET,
    kind: 'published',
    args: { depth },
    expected: (low + high) / 2,
    allowed: 1e-6,
  }) as const;

export const ageingChecks = [
  checkLaw(cyclingLoss, [
    loss(0.5, 25, 1000, 0.0425),
    loss(0.5, 25, 2000, 0.0623),
    loss(0.5, 45, 1000, 0.0946),
    loss(2, 25, 1000, 0.0365),
    loss(10, 25, 1000, 0.086259),
  ]),
  checkLaw(throughputToLoss, [until(0.5, 25, 16.67e3), until(0.5, 45, 3.9e3), until(2, 25, 22.043e3)]),
  checkLaw(cycleLife, [
    cycles(1, 300, 500),
    cycles(0.5, 1200, 1500),
    cycles(0.25, 2000, 2500),
    cycles(0.1, 3750, 4700),
  ]),
  checkLaw(capacityAfterCycles, [
    {
      case: 'full depth, 400 of 400 cycles: end of life by definition',
      source: 'end of life at 80 % of the rated capacity, cell data sheets, from memory',
      kind: 'memory',
      args: { cycles: 400, life: 400 },
      expected: 0.8,
      allowed: 1e-6,
    },
  ]),
];
