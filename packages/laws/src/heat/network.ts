/** Heat paths in series: walls, films, the board above its air, and the power a temperature limit leaves. */
import { law } from '../law.ts';

const FOURIER = 'Fourier’s law, plane wall, any heat-transfer text';
const NETWORK = 'thermal resistances in series, any heat-transfer text; definition used in semiconductor data sheets';
const area = { symbol: 'A', is: 'area', unit: 'm²', above: 0 } as const;
const resistance = { symbol: 'Rth', is: 'thermal resistance', unit: 'K/W', from: 0 } as const;

/** Thermal resistance of a flat wall. */
export const wallThermalResistance = law(
  {
    id: 'wall-thermal-resistance',
    title: 'Thermal resistance of a flat wall',
    equation: 'Rth = d / (k A)',
    args: {
      thickness: { symbol: 'd', is: 'thickness', unit: 'm', above: 0 },
      conductivity: { symbol: 'k', is: 'thermal conductivity', unit: 'W/(m·K)', above: 0 },
      area,
    },
    gives: { symbol: 'Rth', is: 'thermal resistance', unit: 'K/W' },
    validFor: 'thickness small against the other sizes',
    leavesOut: 'corners, infill (count a printed wall’s solid share)',
    source: FOURIER,
  },
  ({ thickness, conductivity, area }) => thickness / (conductivity * area),
);

/** Thermal resistance of a film of air at a surface. */
export const filmThermalResistance = law(
  {
    id: 'film-thermal-resistance',
    title: 'Thermal resistance of the air film at a surface',
    equation: 'Rth = 1 / (h A)',
    args: {
      coefficient: { symbol: 'h', is: 'heat-transfer coefficient, radiation included', unit: 'W/(m²·K)', above: 0 },
      area,
    },
    gives: { symbol: 'Rth', is: 'thermal resistance', unit: 'K/W' },
    validFor: 'a uniform surface',
    leavesOut: 'that the coefficient grows with the difference of temperature',
    source: 'Newton’s law of cooling, any heat-transfer text',
  },
  ({ coefficient, area }) => 1 / (coefficient * area),
);

/** Air-to-air transmittance of a wall with a film on either side. */
export const wallTransmittance = law(
  {
    id: 'wall-transmittance',
    title: 'Air-to-air thermal transmittance of a wall',
    equation: 'U = 1 / (1/hi + d/k + 1/ho)',
    args: {
      inside: { symbol: 'hi', is: 'inner heat-transfer coefficient', unit: 'W/(m²·K)', above: 0 },
      thickness: { symbol: 'd', is: 'thickness', unit: 'm', above: 0 },
      conductivity: { symbol: 'k', is: 'thermal conductivity', unit: 'W/(m·K)', above: 0 },
      outside: { symbol: 'ho', is: 'outer heat-transfer coefficient', unit: 'W/(m²·K)', above: 0 },
    },
    gives: { symbol: 'U', is: 'thermal transmittance', unit: 'W/(m²·K)' },
    validFor: 'flat walls, steady state',
    leavesOut: 'thermal bridges such as screws and brackets',
    source: `${FOURIER}; ISO 6946`,
  },
  ({ inside, thickness, conductivity, outside }) => 1 / (1 / inside + thickness / conductivity + 1 / outside),
);

/** Temperature of a part above the air or case it gives its heat to. */
export const partTemperature = law(
  {
    id: 'part-temperature',
    title: 'Temperature of a part above its surroundings',
    equation: 'T = Ta + P · Rth',
    args: {
      surroundings: { symbol: 'Ta', is: 'temperature of the air or case around', unit: 'K', above: 0 },
      power: { symbol: 'P', is: 'heat', unit: 'W', from: 0 },
      resistance,
    },
    gives: { symbol: 'T', is: 'temperature of the part', unit: 'K' },
    validFor: 'steady state; inside a box Ta is the box’s air, not the room’s',
    leavesOut: 'that Rth is measured on a test board in still air and differs on yours',
    source: NETWORK,
  },
  ({ surroundings, power, resistance }) => surroundings + power * resistance,
);

/** Heat a part may make before it reaches its limit: where a board begins to throttle. */
export const powerAtTemperatureLimit = law(
  {
    id: 'power-at-temperature-limit',
    title: 'Heat at which a part reaches its temperature limit',
    equation: 'P = (Tmax − Ta) / Rth',
    args: {
      limit: { symbol: 'Tmax', is: 'throttle or rated temperature', unit: 'K', above: 0 },
      surroundings: { symbol: 'Ta', is: 'temperature of the air or case around', unit: 'K', above: 0 },
      resistance: { ...resistance, above: 0 },
    },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'steady state, Ta below Tmax',
    leavesOut: 'that throttling is gradual on most boards',
    source: NETWORK,
  },
  ({ limit, surroundings, resistance }) => (limit - surroundings) / resistance,
);
