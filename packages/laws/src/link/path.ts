/** Loss over open ground and along streets: free space, two rays, and the general street law. */
import { LIGHT_SPEED } from '../constants.ts';
import { law } from '../law.ts';

const frequency = { symbol: 'f', is: 'carrier frequency', unit: 'Hz', from: 3e7, to: 3e11 } as const;
const distance = { symbol: 'd', is: 'distance between the aerials along the ground', unit: 'm', above: 0 } as const;
const baseHeight = { symbol: 'h1', is: 'height of the base aerial above ground', unit: 'm', above: 0 } as const;
const roverHeight = { symbol: 'h2', is: 'height of the rover aerial above ground', unit: 'm', above: 0 } as const;

/** Free-space basic transmission loss. */
export const freeSpaceLoss = law(
  {
    id: 'free-space-loss',
    title: 'Free-space loss',
    equation: 'L = 20 · log10(4π · d · f / c)',
    args: { frequency, distance },
    gives: { symbol: 'L', is: 'loss between isotropic aerials', unit: 'dB' },
    validFor: 'clear first Fresnel zone, at least three wavelengths apart',
    leavesOut: 'ground, obstacles, foliage, absorption by air',
    source: 'Rec. ITU-R P.525, point-to-point free-space loss',
  },
  ({ frequency, distance }) => 20 * Math.log10((4 * Math.PI * distance * frequency) / LIGHT_SPEED),
);

/** Loss over flat ground far beyond the crossover, where it grows with the fourth power of distance. */
export const twoRayFarLoss = law(
  {
    id: 'two-ray-far-loss',
    title: 'Flat-ground loss, far form',
    equation: 'L = 40 · log10(d) − 20 · log10(h1 · h2)',
    args: { distance, baseHeight, roverHeight },
    gives: { symbol: 'L', is: 'loss between isotropic aerials', unit: 'dB' },
    validFor: 'flat ground, distance beyond the crossover 4π·h1·h2/λ; independent of frequency',
    leavesOut: 'the ripple nearer than the crossover, obstacles, grass and people',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., ground-reflection (two-ray) model',
  },
  ({ distance, baseHeight, roverHeight }) => 40 * Math.log10(distance) - 20 * Math.log10(baseHeight * roverHeight),
);

/** Loss over flat ground as the sum of the direct and the reflected ray, vertical polarisation. */
export const twoRayLoss = law(
  {
    id: 'two-ray-loss',
    title: 'Flat-ground loss, direct and reflected ray',
    equation: 'L = −20 · log10(c/(4π·f) · |1/r1 + Γ(ε)·e^(−j·2π·f·(r2−r1)/c)/r2|), r1,2 = √(d² + (h1 ∓ h2)²)',
    args: {
      frequency,
      distance,
      baseHeight,
      roverHeight,
      permittivity: { symbol: 'ε', is: 'relative permittivity of the ground', unit: '1', above: 1, to: 81 },
    },
    gives: { symbol: 'L', is: 'loss between isotropic aerials', unit: 'dB' },
    validFor: 'smooth flat ground, vertical aerials several wavelengths apart',
    leavesOut:
      'conductivity (below 0.1 dB at 2 to 6 GHz), roughness, surface wave; real nulls are shallower than computed',
    source:
      'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., reflection from dielectrics and two-ray model',
  },
  ({ frequency, distance, baseHeight, roverHeight, permittivity }) => {
    const direct = Math.hypot(distance, baseHeight - roverHeight);
    const reflected = Math.hypot(distance, baseHeight + roverHeight);
    const sine = (baseHeight + roverHeight) / reflected;
    const refracted = Math.sqrt(permittivity - 1 + sine * sine);
    const gamma = (permittivity * sine - refracted) / (permittivity * sine + refracted);
    const phase = (2 * Math.PI * frequency * (reflected - direct)) / LIGHT_SPEED;
    const inPhase = 1 / direct + (gamma * Math.cos(phase)) / reflected;
    const field = Math.hypot(inPhase, (gamma * Math.sin(phase)) / reflected);
    return -20 * Math.log10((field * LIGHT_SPEED) / (4 * Math.PI * frequency));
  },
);

/** Distance at which the far form of the flat-ground loss overtakes free space. */
export const crossoverDistance = law(
  {
    id: 'crossover-distance',
    title: 'Crossover from free space to flat ground',
    equation: 'd× = 4π · h1 · h2 · f / c',
    args: { frequency, baseHeight, roverHeight },
    gives: { symbol: 'd×', is: 'distance of equal free-space and far flat-ground loss', unit: 'm' },
    validFor: 'flat ground',
    leavesOut: 'obstacles and roughness',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., two-ray model, crossover distance',
  },
  ({ frequency, baseHeight, roverHeight }) => (4 * Math.PI * baseHeight * roverHeight * frequency) / LIGHT_SPEED,
);

/** Distance at which flat ground enters the first Fresnel zone. */
export const breakpointDistance = law(
  {
    id: 'breakpoint-distance',
    title: 'First-Fresnel breakpoint',
    equation: 'Rbp = 4 · h1 · h2 · f / c',
    args: { frequency, baseHeight, roverHeight },
    gives: { symbol: 'Rbp', is: 'distance beyond which the loss exponent rises', unit: 'm' },
    validFor: 'flat ground, heights above the effective height of the surface',
    leavesOut: 'effective road height; above 3 GHz over a busy surface a low aerial has no breakpoint',
    source: 'Rec. ITU-R P.1411-12, section 4.1.2, breakpoint distance',
  },
  ({ frequency, baseHeight, roverHeight }) => (4 * baseHeight * roverHeight * frequency) / LIGHT_SPEED,
);

/** Loss from a known loss at a reference distance and an exponent. */
export const logDistanceLoss = law(
  {
    id: 'log-distance-loss',
    title: 'Log-distance loss',
    equation: 'L = L0 + 10 · n · log10(d/d0)',
    args: {
      referenceLoss: { symbol: 'L0', is: 'loss at the reference distance', unit: 'dB', from: 0 },
      exponent: { symbol: 'n', is: 'loss exponent', unit: '1', from: 1, to: 7 },
      distance,
      referenceDistance: { symbol: 'd0', is: 'reference distance', unit: 'm', above: 0 },
    },
    gives: { symbol: 'L', is: 'median loss', unit: 'dB' },
    validFor: 'distances beyond the reference, within one kind of surroundings',
    leavesOut: 'shadowing about the median; add a margin from the spread',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., log-distance path loss, table 4.2',
  },
  ({ referenceLoss, exponent, distance, referenceDistance }) =>
    referenceLoss + 10 * exponent * Math.log10(distance / referenceDistance),
);
