import { checkLaw } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  CIRCULAR_MIL,
  COPPER_RESISTIVITY,
  conductorResistance,
  copperResistance,
  gaugeForArea,
  wireGaugeArea,
  wireGaugeDiameter,
} from './wire.ts';

const MIL = 25.4e-6;
/** A thousand feet [m]. */
const KILOFOOT = 304.8;
const HANDBOOK = 'Handbook of Electronic Tables and Formulas, wire table as published by a maker of cable testers';
const B258 = 'ASTM B258, definition of gauges 4/0 and 36, from memory';
const FACTORS = 'cable maker’s page on IEC 60228, temperature correction factors Kt';

export const wireChecks = [
  checkLaw(wireGaugeDiameter, [
    {
      case: 'gauge 4/0 is 0.46 inch',
      source: B258,
      kind: 'memory',
      args: { gauge: -3 },
      expected: 0.46 * 0.0254,
      allowed: 1e-4,
    },
    { case: 'gauge 36 is 5 mil', source: B258, kind: 'memory', args: { gauge: 36 }, expected: 5 * MIL, allowed: 1e-6 },
    {
      case: 'gauge 18',
      source: 'wire table posted in sci.electronics, 6 January 1992: 0.040303 in',
      kind: 'published',
      args: { gauge: 18 },
      expected: 0.040303 * 0.0254,
      allowed: 5e-4,
    },
  ]),
  checkLaw(wireGaugeArea, [
    {
      case: 'gauge 10 carries 15 A at 700 circular mil per ampere',
      source: `${HANDBOOK}, power transmission column`,
      kind: 'published',
      args: { gauge: 10 },
      expected: 15 * 700 * CIRCULAR_MIL,
      allowed: 0.015,
    },
    {
      case: 'gauge 24 carries 0.577 A at 700 circular mil per ampere',
      source: `${HANDBOOK}, power transmission column`,
      kind: 'published',
      args: { gauge: 24 },
      expected: 0.577 * 700 * CIRCULAR_MIL,
      allowed: 0.005,
    },
  ]),
  checkLaw(gaugeForArea, [
    {
      case: '5972 circular mil: the first gauge that passes is 12 (6530 circular mil)',
      source: 'ABYC E-11, conductor sizes, from memory',
      kind: 'memory',
      args: { area: 5972 * CIRCULAR_MIL },
      expected: 12,
      allowed: 1e-9,
    },
    {
      case: '0.5 mm² is replaced by gauge 20',
      source: 'wire table of gauges and millimetres: AWG 20 = 0.518 mm², AWG 21 = 0.410 mm²',
      kind: 'published',
      args: { area: 0.5e-6 },
      expected: 20,
      allowed: 1e-9,
    },
  ]),
  checkLaw(
    conductorResistance,
    (
      [
        [12, 3.3088, 1.588],
        [18, 0.823, 6.385],
        [24, 0.2047, 25.67],
        [30, 0.0509, 103.2],
      ] as const
    ).map(([gauge, area, ohms]) => ({
      case: `a thousand feet of AWG ${gauge} (${area} mm²) at 20 °C`,
      source: `${HANDBOOK}: ${ohms} Ω per 1000 ft`,
      kind: 'published' as const,
      args: { resistivity: COPPER_RESISTIVITY, length: KILOFOOT, area: area * 1e-6 },
      expected: ohms,
      allowed: 0.001,
    })),
  ),
  checkLaw(copperResistance, [
    {
      case: '1 Ω at 20 °C heated to 75 °C, cable form (234.5 + T)/254.5',
      source: 'IEC 60228, annex on temperature correction',
      kind: 'published',
      args: { r20: 1, temperature: ZERO_CELSIUS + 75 },
      expected: (234.5 + 75) / 254.5,
      allowed: 0.002,
    },
    {
      case: '1 Ω at 20 °C heated to 50 °C, Kt = 0.893',
      source: FACTORS,
      kind: 'published',
      args: { r20: 1, temperature: ZERO_CELSIUS + 50 },
      expected: 1 / 0.893,
      allowed: 0.005,
    },
    {
      case: '1 Ω at 20 °C heated to 100 °C, Kt = 0.758',
      source: FACTORS,
      kind: 'published',
      args: { r20: 1, temperature: ZERO_CELSIUS + 100 },
      expected: 1 / 0.758,
      allowed: 0.005,
    },
  ]),
];
