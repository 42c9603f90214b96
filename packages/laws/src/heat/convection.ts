/** Natural convection in still air: Nusselt numbers of plates and cylinders, and the coefficient they give. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import {
  bottomCoefficient,
  cylinder,
  cylinderCoefficient,
  type Film,
  filmBetween,
  plateDown,
  plateUp,
  sideCoefficient,
  topCoefficient,
  vertical,
  verticalLaminar,
} from './still-air.kernel.ts';

const PLATE = 'Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323–1329';
const CYLINDER = 'Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053';
const HORIZONTAL =
  'Incropera et al., Fundamentals of Heat and Mass Transfer, horizontal plates in free convection; also Cengel, Heat Transfer, table 9-1';
const prandtl = { symbol: 'Pr', is: 'Prandtl number at film temperature', unit: '1', above: 0 } as const;
const NUSSELT = { symbol: 'Nu', is: 'average Nusselt number', unit: '1' } as const;
const STILL = 'uniform surface temperature, still air, free surroundings';
const LEAVES = 'wind, which only helps; neighbours closer than a few centimetres';

const rayleigh = (to: number) => ({ symbol: 'Ra', is: 'Rayleigh number', unit: '1', above: 0, to }) as const;

/** Rayleigh number of a warm surface in a fluid. */
export const rayleighNumber = law(
  {
    id: 'rayleigh-number',
    title: 'Rayleigh number of a warm surface',
    equation: 'Ra = 9.80665 m/s² · β · ΔT · L³ · Pr / ν²',
    args: {
      expansion: { symbol: 'β', is: 'thermal expansion of the fluid, 1/T for a gas', unit: '1/K', above: 0 },
      difference: { symbol: 'ΔT', is: 'surface less fluid temperature, without sign', unit: 'K', from: 0 },
      length: { symbol: 'L', is: 'height, diameter, or area over perimeter', unit: 'm', above: 0 },
      viscosity: { symbol: 'ν', is: 'kinematic viscosity', unit: 'm²/s', above: 0 },
      prandtl,
    },
    gives: { symbol: 'Ra', is: 'Rayleigh number', unit: '1' },
    validFor: 'properties at the mean of surface and fluid temperature',
    leavesOut: 'nothing; it is a definition',
    source: 'definition of the Rayleigh number, any heat-transfer text',
  },
  ({ expansion, difference, length, viscosity, prandtl }) =>
    (GRAVITY * expansion * difference * length ** 3 * prandtl) / viscosity ** 2,
);

/** Vertical plate, every Rayleigh number. */
export const nusseltVerticalPlate = law(
  {
    id: 'nusselt-vertical-plate',
    title: 'Natural convection of a vertical plate, all flows',
    equation: 'Nu = (0.825 + 0.387 Ra^(1/6) / (1 + (0.492 / Pr)^(9/16))^(8/27))²',
    args: { rayleigh: rayleigh(1e12), prandtl },
    gives: NUSSELT,
    validFor: STILL,
    leavesOut: LEAVES,
    source: `${PLATE}, equation 9`,
  },
  ({ rayleigh, prandtl }) => vertical(rayleigh, prandtl),
);

/** Vertical plate, laminar: the closer rival below Ra = 1e9. */
export const nusseltVerticalLaminar = law(
  {
    id: 'nusselt-vertical-plate-laminar',
    title: 'Natural convection of a vertical plate, laminar flow',
    equation: 'Nu = 0.68 + 0.670 Ra^(1/4) / (1 + (0.492 / Pr)^(9/16))^(4/9)',
    args: { rayleigh: rayleigh(1e9), prandtl },
    gives: NUSSELT,
    validFor: STILL,
    leavesOut: LEAVES,
    source: `${PLATE}, laminar form`,
  },
  ({ rayleigh, prandtl }) => verticalLaminar(rayleigh, prandtl),
);

/** Horizontal cylinder: wires, cans, tubes. */
export const nusseltHorizontalCylinder = law(
  {
    id: 'nusselt-horizontal-cylinder',
    title: 'Natural convection of a long horizontal cylinder',
    equation: 'Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))²',
    args: { rayleigh: rayleigh(1e12), prandtl },
    gives: NUSSELT,
    validFor: STILL,
    leavesOut: LEAVES,
    source: CYLINDER,
  },
  ({ rayleigh, prandtl }) => cylinder(rayleigh, prandtl),
);

/** Hot plate facing up, or cold plate facing down. */
export const nusseltPlateUp = law(
  {
    id: 'nusselt-hot-plate-up',
    title: 'Natural convection of a hot plate facing up',
    equation: 'Nu = 0.54 Ra^(1/4) up to 1e7, 0.15 Ra^(1/3) above',
    args: { rayleigh: { ...rayleigh(1e11), from: 1e4 } },
    gives: NUSSELT,
    validFor: `${STILL}; L = area over perimeter`,
    leavesOut: LEAVES,
    source: HORIZONTAL,
  },
  ({ rayleigh }) => plateUp(rayleigh),
);

/** Hot plate facing down, older form. */
export const nusseltPlateDown = law(
  {
    id: 'nusselt-hot-plate-down',
    title: 'Natural convection of a hot plate facing down',
    equation: 'Nu = 0.27 Ra^(1/4)',
    args: { rayleigh: { ...rayleigh(1e10), from: 1e5 } },
    gives: NUSSELT,
    validFor: `${STILL}; L = area over perimeter`,
    leavesOut: LEAVES,
    source: `${HORIZONTAL} (editions to the sixth)`,
  },
  ({ rayleigh }) => plateDown(rayleigh),
);

/** Hot plate facing down, newer form. */
export const nusseltPlateDownNewer = law(
  {
    id: 'nusselt-hot-plate-down-newer',
    title: 'Natural convection of a hot plate facing down, newer form',
    equation: 'Nu = 0.52 Ra^(1/5)',
    args: { rayleigh: { ...rayleigh(1e9), from: 1e4 } },
    gives: NUSSELT,
    validFor: `${STILL}; L = area over perimeter`,
    leavesOut: LEAVES,
    source: 'Incropera et al., Fundamentals of Heat and Mass Transfer, seventh edition, from memory',
  },
  ({ rayleigh }) => 0.52 * rayleigh ** 0.2,
);

/** Says which law to use for a vertical face, and why. */
export function chooseVerticalPlate(rayleigh: number): {
  readonly use: 'nusselt-vertical-plate-laminar' | 'nusselt-vertical-plate';
  readonly why: string;
} {
  return rayleigh <= 1e9
    ? {
        use: 'nusselt-vertical-plate-laminar',
        why: 'Below Ra = 1e9 the flow is laminar and the authors’ laminar form is closer.',
      }
    : { use: 'nusselt-vertical-plate', why: 'Above Ra = 1e9 the flow is turbulent.' };
}

/** Says which law to use for a hot face looking down, and why. */
export function choosePlateDown(rayleigh: number): {
  readonly use: 'nusselt-hot-plate-down' | 'nusselt-hot-plate-down-newer';
  readonly why: string;
} {
  return rayleigh < 1e5
    ? { use: 'nusselt-hot-plate-down-newer', why: 'The older form starts at Ra = 1e5.' }
    : { use: 'nusselt-hot-plate-down', why: 'It gives the smaller coefficient, which is the careful side.' };
}

/** Heat-transfer coefficient from a Nusselt number. */
export const convectionCoefficient = law(
  {
    id: 'convection-coefficient',
    title: 'Heat-transfer coefficient from a Nusselt number',
    equation: 'h = Nu · k / L',
    args: {
      nusselt: { symbol: 'Nu', is: 'Nusselt number', unit: '1', above: 0 },
      conductivity: { symbol: 'k', is: 'conductivity of the fluid', unit: 'W/(m·K)', above: 0 },
      length: { symbol: 'L', is: 'length the Nusselt number is based on', unit: 'm', above: 0 },
    },
    gives: { symbol: 'h', is: 'heat-transfer coefficient', unit: 'W/(m²·K)' },
    validFor: 'any convection',
    leavesOut: 'nothing; it is a definition',
    source: 'definition of the Nusselt number, any heat-transfer text',
  },
  ({ nusselt, conductivity, length }) => (nusselt * conductivity) / length,
);

/** How a surface stands in the air. */
export const AIR_SURFACES = ['side', 'top', 'bottom', 'cylinder'] as const;
export type AirSurface = (typeof AIR_SURFACES)[number];

const BY_SURFACE: Readonly<Record<AirSurface, (film: Film, length: number) => number>> = {
  side: sideCoefficient,
  top: topCoefficient,
  bottom: bottomCoefficient,
  cylinder: cylinderCoefficient,
};

/** Coefficient of a warm surface in still air, properties at its own film temperature. */
export const stillAirCoefficient = law(
  {
    id: 'still-air-coefficient',
    title: 'Heat-transfer coefficient of a warm surface in still air',
    equation: 'h = Nu[surface](Ra, Pr) · k / L, properties at (T + Ta)/2',
    args: {
      surface: { symbol: 'surface', is: 'how the surface stands', unit: 'name', oneOf: AIR_SURFACES },
      length: {
        symbol: 'L',
        is: 'height of a side, area over perimeter of top or bottom, diameter',
        unit: 'm',
        above: 0,
      },
      temperature: { symbol: 'T', is: 'surface temperature', unit: 'K', from: 220, to: 600 },
      ambient: { symbol: 'Ta', is: 'air temperature', unit: 'K', from: 220, to: 400 },
    },
    gives: { symbol: 'h', is: 'heat-transfer coefficient', unit: 'W/(m²·K)' },
    validFor: `${STILL}, 1 atm, T not below Ta`,
    leavesOut: `${LEAVES}; below their printed range the laws of horizontal plates are continued, which makes small boxes look warmer`,
    source: `${PLATE}; ${CYLINDER}; ${HORIZONTAL}`,
  },
  ({ surface, length, temperature, ambient }) => BY_SURFACE[surface](filmBetween(temperature, ambient), length),
);
