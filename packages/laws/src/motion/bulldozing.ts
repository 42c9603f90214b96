/** Soil pushed ahead of a sunk wheel, and the pressure soil bears before the wheel breaks in. */
import { law } from '../law.ts';

const FRICTION = { symbol: 'φ', is: 'angle of internal friction', unit: 'rad', from: 0.02, to: 0.8 } as const;
const TERZAGHI = 'Terzaghi, Theoretical Soil Mechanics, 1943, general shear';
const NC = { symbol: 'N_c', is: 'bearing factor of cohesion', unit: '1', above: 0 } as const;
const NQ = { symbol: 'N_q', is: 'bearing factor of surcharge', unit: '1', from: 1 } as const;
const NG = { symbol: 'N_γ', is: 'bearing factor of weight', unit: '1', from: 0 } as const;
const COHESION = { symbol: 'c', is: 'cohesion of the soil', unit: 'Pa', from: 0 } as const;
const WEIGHT = { symbol: 'γ', is: 'unit weight of the soil', unit: 'N/m³', above: 0 } as const;
const SINKAGE = { symbol: 'z', is: 'sinkage', unit: 'm', above: 0 } as const;
const WIDTH = { symbol: 'b', is: 'wheel width', unit: 'm', above: 0 } as const;
const LECTURE = 'University of Maryland, ENAE 788X lecture notes on terramechanics, after Bekker';

/** How much surcharge beside a footing adds to its bearing. */
export const surchargeFactor = law(
  {
    id: 'bearing-surcharge-factor',
    title: 'Bearing factor of surcharge',
    equation: 'N_q = e^((3π/2 − φ) · tan φ) / (2 · cos²(π/4 + φ/2))',
    args: { friction: FRICTION },
    gives: { symbol: 'N_q', is: 'bearing factor', unit: '1' },
    validFor: 'rough base, general shear',
    leavesOut: 'loose soils that fail locally',
    source: TERZAGHI,
  },
  ({ friction }) =>
    Math.exp((1.5 * Math.PI - friction) * Math.tan(friction)) / (2 * Math.cos(Math.PI / 4 + friction / 2) ** 2),
);

/** How much cohesion adds to bearing. */
export const cohesionFactor = law(
  {
    id: 'bearing-cohesion-factor',
    title: 'Bearing factor of cohesion',
    equation: 'N_c = (N_q − 1) / tan φ',
    args: { surcharge: NQ, friction: FRICTION },
    gives: { symbol: 'N_c', is: 'bearing factor', unit: '1' },
    validFor: 'rough base, general shear',
    leavesOut: 'loose soils that fail locally',
    source: TERZAGHI,
  },
  ({ surcharge, friction }) => (surcharge - 1) / Math.tan(friction),
);

/** How much the weight of the soil itself adds to bearing. */
export const weightFactor = law(
  {
    id: 'bearing-weight-factor',
    title: 'Bearing factor of weight',
    equation: 'N_γ = 2 · (N_q + 1) · tan φ / (1 + 0.4 · sin 4φ)',
    args: { surcharge: NQ, friction: FRICTION },
    gives: { symbol: 'N_γ', is: 'bearing factor', unit: '1' },
    validFor: 'a fit to the factors of Terzaghi, within 10 %',
    leavesOut: 'the exact numerical factors',
    source: 'Coduto, Foundation Design, bearing capacity factors',
  },
  ({ surcharge, friction }) => (2 * (surcharge + 1) * Math.tan(friction)) / (1 + 0.4 * Math.sin(4 * friction)),
);

/** Pressure at which the ground under a wheel breaks instead of compacting. */
export const safePressure = law(
  {
    id: 'safe-soil-pressure',
    title: 'Safe pressure of the soil',
    equation: 'p = c · N_c + γ · z · N_q + ½ · γ · b · N_γ',
    args: {
      cohesion: COHESION,
      weight: WEIGHT,
      sinkage: SINKAGE,
      width: WIDTH,
      cohesionFactor: NC,
      surchargeFactor: NQ,
      weightFactor: NG,
    },
    gives: { symbol: 'p', is: 'pressure the soil bears', unit: 'Pa' },
    validFor: 'a long contact patch on level ground',
    leavesOut: 'shape of the patch, slope, slip',
    source: TERZAGHI,
  },
  ({ cohesion, weight, sinkage, width, cohesionFactor, surchargeFactor, weightFactor }) =>
    cohesion * cohesionFactor + weight * sinkage * surchargeFactor + 0.5 * weight * width * weightFactor,
);

/** Force of the soil that a leading wheel pushes ahead of itself. */
export const bulldozingResistance = law(
  {
    id: 'bulldozing-resistance',
    title: 'Bulldozing resistance of a leading wheel',
    equation:
      'R = b · sin(α + φ) / (2 · sin α · cos φ) · (2 · z · c · K_c + γ · z² · K_γ) + γ · l³ · (π/2 − φ) / 3 + c · l² · (1 + tan(π/4 + φ/2)), α = acos(1 − 2z/D), l = z · tan²(π/4 − φ/2), K_c = (N_c − tan φ) · cos² φ, K_γ = (2 · N_γ / tan φ + 1) · cos² φ',
    args: {
      width: WIDTH,
      diameter: { symbol: 'D', is: 'wheel diameter', unit: 'm', above: 0 },
      sinkage: SINKAGE,
      cohesion: COHESION,
      weight: WEIGHT,
      friction: FRICTION,
      cohesionFactor: NC,
      weightFactor: NG,
    },
    gives: { symbol: 'R', is: 'bulldozing resistance', unit: 'N' },
    validFor: 'the wheels that lead; sinkage well below the axle',
    leavesOut: 'followers, which run in the rut',
    source: LECTURE,
  },
  ({ width, diameter, sinkage, cohesion, weight, friction, cohesionFactor, weightFactor }) => {
    const alpha = Math.acos(1 - (2 * sinkage) / diameter);
    const l = sinkage * Math.tan(Math.PI / 4 - friction / 2) ** 2;
    const kc = (cohesionFactor - Math.tan(friction)) * Math.cos(friction) ** 2;
    const kg = ((2 * weightFactor) / Math.tan(friction) + 1) * Math.cos(friction) ** 2;
    const wedge = (width * Math.sin(alpha + friction)) / (2 * Math.sin(alpha) * Math.cos(friction));
    const front = wedge * (2 * sinkage * cohesion * kc + weight * sinkage ** 2 * kg);
    const sides = (weight * l ** 3 * (Math.PI / 2 - friction)) / 3;
    return front + sides + cohesion * l ** 2 * (1 + Math.tan(Math.PI / 4 + friction / 2));
  },
);
