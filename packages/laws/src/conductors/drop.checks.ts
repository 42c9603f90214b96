import { checkLaw, checkSubject } from '../check.ts';
import { twoWireDrop, twoWireLoss, wireAreaForDrop } from './drop.ts';
import { CIRCULAR_MIL, COPPER_RESISTIVITY, conductorResistance, wireGaugeArea } from './wire.ts';

const AWG_18 = 6.385 / 304.8;
const HANDBOOK = 'Handbook of Electronic Tables and Formulas, wire table: AWG 18 is 6.385 Ω per 1000 ft';
const FEET = 0.3048;

const gaugePerMetre = (gauge: number): number =>
  conductorResistance({ resistivity: COPPER_RESISTIVITY, length: 1, area: wireGaugeArea({ gauge }) });

export const dropChecks = [
  checkLaw(twoWireDrop, [
    {
      case: 'AWG 18, half a metre each way, 5 A: 3.2808 ft of wire worked by hand in feet',
      source: HANDBOOK,
      kind: 'published',
      args: { length: 0.5, resistancePerMetre: AWG_18, current: 5 },
      expected: 0.1047,
      allowed: 0.001,
    },
  ]),
  checkLaw(twoWireLoss, [
    {
      case: 'AWG 18, half a metre each way, 5 A: 3.2808 ft of wire worked by hand in feet',
      source: HANDBOOK,
      kind: 'published',
      args: { length: 0.5, resistancePerMetre: AWG_18, current: 5 },
      expected: 0.5237,
      allowed: 0.001,
    },
  ]),
  checkLaw(wireAreaForDrop, [
    {
      case: '10 A, 20 ft there and back, 3 % of 12 V: 5972 circular mil',
      source: 'ABYC E-11, A = 10.75·I·L/E, from memory',
      kind: 'memory',
      args: { length: 10 * FEET, current: 10, drop: 0.36 },
      expected: 5972 * CIRCULAR_MIL,
      allowed: 0.001,
    },
  ]),
  checkSubject(
    'cable length at one voltage budget',
    (
      [
        [22, 3.33],
        [24, 2.08],
        [26, 1.31],
        [28, 0.81],
      ] as const
    ).map(([gauge, longest]) => ({
      case: `longest cable with an AWG ${gauge} pair, scaled from 5.00 m with AWG 20 by resistance alone`,
      source: 'USB Implementers Forum, FAQ on cable length, as printed in The Hardware Book (2004)',
      kind: 'published' as const,
      ours: () => (5 * gaugePerMetre(20)) / gaugePerMetre(gauge),
      expected: longest,
      allowed: 0.06,
    })),
  ),
];
