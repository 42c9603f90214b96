/** Copper wire: size by gauge, resistance by resistivity, resistance by temperature. */
import { COPPER_REFERENCE } from '../constants.ts';
import { law } from '../law.ts';

/** Temperature coefficient of resistance of annealed copper at 20 °C [1/K], IEC 60028. */
export const COPPER_COEFFICIENT = 0.00393;
/** Resistivity of annealed copper at 20 °C [Ω·m]: 100 % of the international standard, 58 MS/m, IEC 60028. */
export const COPPER_RESISTIVITY = 1 / 58e6;
/** One circular mil, the area of a circle of one thousandth of an inch [m²]. */
export const CIRCULAR_MIL = (Math.PI / 4) * 25.4e-6 ** 2;

/** Ratio of the diameters of gauges 4/0 and 36, reached in 39 equal steps (ASTM B258). */
const GAUGE_SPAN = 92;
const GAUGE_STEPS = 39;
/** Diameter of gauge 36 [m] (ASTM B258: 5 mil). */
const GAUGE_36 = 0.127e-3;

/** Diameter of a solid wire from its American gauge number; gauges 0, 2/0, 3/0 and 4/0 are 0, −1, −2 and −3. */
export const wireGaugeDiameter = law(
  {
    id: 'wire-gauge-diameter',
    title: 'Diameter of a gauged wire',
    equation: 'd = 0.127 mm · 92^((36 − n)/39)',
    args: { gauge: { symbol: 'n', is: 'American wire gauge number', unit: '1', from: -3, to: 40 } },
    gives: { symbol: 'd', is: 'diameter of the solid conductor', unit: 'm' },
    validFor: 'solid round wire; a stranded conductor of the same gauge has the same copper area but is wider',
    leavesOut: 'rounding of the standard to a tenth of a mil, stranding',
    source: 'ASTM B258, nominal diameters of AWG sizes of solid round wires, explanatory note',
  },
  ({ gauge }) => GAUGE_36 * GAUGE_SPAN ** ((36 - gauge) / GAUGE_STEPS),
);

/** Copper area of a wire from its American gauge number. */
export const wireGaugeArea = law(
  {
    id: 'wire-gauge-area',
    title: 'Copper area of a gauged wire',
    equation: 'A = (π/4) · (0.127 mm · 92^((36 − n)/39))²',
    args: { gauge: { symbol: 'n', is: 'American wire gauge number', unit: '1', from: -3, to: 40 } },
    gives: { symbol: 'A', is: 'copper cross-section', unit: 'm²' },
    validFor: 'solid round wire, and stranded wire sold by the same gauge',
    leavesOut: 'rounding of the standard to a tenth of a mil, tolerance of the strands',
    source: 'ASTM B258, cross-sectional areas of AWG sizes of solid round wires',
  },
  ({ gauge }) => (Math.PI / 4) * wireGaugeDiameter.bare({ gauge }) ** 2,
);

/** Thinnest gauge (largest whole number) whose copper area is at least the area asked for. */
export const gaugeForArea = law(
  {
    id: 'gauge-for-area',
    title: 'Gauge that gives at least an area',
    equation: 'n = floor(36 − 39 · log92(√(4·A/π)/0.127 mm))',
    args: { area: { symbol: 'A', is: 'copper area needed', unit: 'm²', from: 4.9e-9, to: 1.07e-4 } },
    gives: { symbol: 'n', is: 'American wire gauge number', unit: '1' },
    validFor: 'whole gauges 4/0 to 40; odd gauges are made but seldom stocked',
    leavesOut: 'ampacity, strength',
    source: 'ASTM B258, solved for the gauge number',
  },
  ({ area }) => {
    const diameter = Math.sqrt((4 * area) / Math.PI);
    const exact = 36 - (GAUGE_STEPS * Math.log(diameter / GAUGE_36)) / Math.log(GAUGE_SPAN);
    // A gauge's own area must give that gauge back in spite of the last digit of the logarithm.
    return Math.floor(exact + 1e-9);
  },
);

/** Resistance of a conductor of constant cross-section. */
export const conductorResistance = law(
  {
    id: 'conductor-resistance',
    title: 'Resistance of a conductor from its resistivity',
    equation: 'R = ρ · l / A',
    args: {
      resistivity: { symbol: 'ρ', is: 'resistivity at the temperature in question', unit: 'Ω·m', above: 0 },
      length: { symbol: 'l', is: 'length', unit: 'm', from: 0 },
      area: { symbol: 'A', is: 'cross-section', unit: 'm²', above: 0 },
    },
    gives: { symbol: 'R', is: 'resistance', unit: 'Ω' },
    validFor: 'direct current, constant cross-section',
    leavesOut: 'lay of the strands (see the flexible-wire table), joints, skin effect',
    source: 'IEC 60028, resistance of copper: 1/58 Ω·mm²/m at 20 °C for standard annealed copper',
  },
  ({ resistivity, length, area }) => (resistivity * length) / area,
);

/** Copper resistance at a temperature: linear about 20 °C. */
export const copperResistance = law(
  {
    id: 'copper-resistance',
    title: 'Copper resistance at a temperature',
    equation: 'R = R20 · (1 + α · (T − 293.15 K))',
    args: {
      r20: { symbol: 'R20', is: 'resistance at 20 °C', unit: 'Ω', above: 0 },
      temperature: { symbol: 'T', is: 'copper temperature', unit: 'K', from: 223, to: 473 },
    },
    gives: { symbol: 'R', is: 'resistance at T', unit: 'Ω' },
    validFor: 'annealed copper, α = 0.00393 /K',
    leavesOut: 'thermal expansion, other metals',
    source: 'IEC 60028, temperature coefficient of annealed copper at 20 °C',
  },
  ({ r20, temperature }) => r20 * (1 + COPPER_COEFFICIENT * (temperature - COPPER_REFERENCE)),
);
