/** What stands in the way of the ray: edges, the Fresnel zone, foliage. */
import { LIGHT_SPEED } from '../constants.ts';
import { law } from '../law.ts';

const frequency = { symbol: 'f', is: 'carrier frequency', unit: 'Hz', from: 3e7, to: 3e11 } as const;
const toBase = { symbol: 'd1', is: 'distance from the base to the point', unit: 'm', above: 0 } as const;
const toRover = { symbol: 'd2', is: 'distance from the point to the rover', unit: 'm', above: 0 } as const;

/** Radius of the first Fresnel zone at a point of the path. */
export const fresnelRadius = law(
  {
    id: 'fresnel-radius',
    title: 'First Fresnel radius',
    equation: 'R1 = √(c/f · d1 · d2 / (d1 + d2))',
    args: { frequency, toBase, toRover },
    gives: { symbol: 'R1', is: 'radius of the first zone about the ray', unit: 'm' },
    validFor: 'radius small beside both distances; keep 60 % of it clear for free-space loss',
    leavesOut: 'the ground itself, which has its own law; never count it twice',
    source: 'Rec. ITU-R P.526, equation 2, radius of the Fresnel ellipsoid',
  },
  ({ frequency, toBase, toRover }) => Math.sqrt(((LIGHT_SPEED / frequency) * toBase * toRover) / (toBase + toRover)),
);

/** Diffraction parameter of a single edge from its height over the ray. */
export const edgeParameter = law(
  {
    id: 'edge-parameter',
    title: 'Diffraction parameter of an edge',
    equation: 'ν = h · √(2 · (d1 + d2) · f / (c · d1 · d2))',
    args: {
      frequency,
      height: { symbol: 'h', is: 'height of the edge above the straight ray, negative below it', unit: 'm' },
      toBase,
      toRover,
    },
    gives: { symbol: 'ν', is: 'diffraction parameter', unit: '1' },
    validFor: 'height small beside both distances',
    leavesOut: 'rounding of the crest, ground before and behind',
    source: 'Rec. ITU-R P.526-15, section 4.1, diffraction parameter',
  },
  ({ frequency, height, toBase, toRover }) =>
    height * Math.sqrt((2 * (toBase + toRover) * frequency) / (LIGHT_SPEED * toBase * toRover)),
);

/** Below this parameter the approximation gives no loss. */
const EDGE_CLEAR = -0.78;

/** Loss over a single knife edge. */
export const knifeEdgeLoss = law(
  {
    id: 'knife-edge-loss',
    title: 'Loss over a single knife edge',
    equation: 'J = 6.9 + 20 · log10(√((ν − 0.1)² + 1) + ν − 0.1), zero when ν ≤ −0.78',
    args: { parameter: { symbol: 'ν', is: 'diffraction parameter of the edge', unit: '1' } },
    gives: { symbol: 'J', is: 'loss above free space', unit: 'dB' },
    validFor: 'one edge across the path; within 0.15 dB of the Fresnel integrals',
    leavesOut: 'further edges, rounding of the crest, the ripple of an edge below the ray',
    source: 'Rec. ITU-R P.526-15, equation 31',
  },
  ({ parameter }) => {
    if (parameter <= EDGE_CLEAR) return 0;
    const x = parameter - 0.1;
    return 6.9 + 20 * Math.log10(Math.sqrt(x * x + 1) + x);
  },
);

const depth = { symbol: 'd', is: 'depth of foliage along the ray', unit: 'm', from: 0, to: 400 } as const;

/** Foliage loss by Weissberger's modified exponential decay. */
export const foliageLoss = law(
  {
    id: 'foliage-loss',
    title: 'Foliage loss, modified exponential decay',
    equation: 'L = 0.45 · (f/1 GHz)^0.284 · d up to 14 m, 1.33 · (f/1 GHz)^0.284 · d^0.588 beyond',
    args: {
      frequency: { symbol: 'f', is: 'carrier frequency', unit: 'Hz', from: 0.23e9, to: 95e9 },
      depth,
    },
    gives: { symbol: 'L', is: 'loss above free space', unit: 'dB' },
    validFor: 'dense, dry, in-leaf trees of a temperate climate',
    leavesOut: 'rain-wet leaves, the way over or round the trees',
    source:
      'Weissberger, An initial critical summary of models for predicting the attenuation of radio waves by trees, 1982',
  },
  ({ frequency, depth }) => {
    const band = (frequency / 1e9) ** 0.284;
    return depth <= 14 ? 0.45 * band * depth : 1.33 * band * depth ** 0.588;
  },
);

/** Foliage loss by the early ITU formula, a rival of the former. */
export const foliageLossEarly = law(
  {
    id: 'foliage-loss-early',
    title: 'Foliage loss, early ITU form',
    equation: 'L = 0.2 · (f/1 MHz)^0.3 · d^0.6',
    args: {
      frequency: { symbol: 'f', is: 'carrier frequency', unit: 'Hz', from: 0.2e9, to: 95e9 },
      depth,
    },
    gives: { symbol: 'L', is: 'loss above free space', unit: 'dB' },
    validFor: 'less than 400 m of trees; run to kilometres it is absurd',
    leavesOut: 'kind of tree, season, rain',
    source: 'CCIR, Influences of terrain irregularities and vegetation on tropospheric propagation, Report 236-6, 1986',
  },
  ({ frequency, depth }) => 0.2 * (frequency / 1e6) ** 0.3 * depth ** 0.6,
);

/** Loss with one end inside a wood, which levels off because a way over the trees opens. */
export const woodlandLoss = law(
  {
    id: 'woodland-loss',
    title: 'Loss with one end inside a wood',
    equation: 'A = Am · (1 − e^(−γ · d / Am))',
    args: {
      depth: { symbol: 'd', is: 'depth of wood along the ray', unit: 'm', from: 0 },
      specific: { symbol: 'γ', is: 'loss per metre for short depths', unit: 'dB/m', above: 0 },
      most: { symbol: 'Am', is: 'greatest loss, reached deep in the wood', unit: 'dB', above: 0 },
    },
    gives: { symbol: 'A', is: 'loss above free space', unit: 'dB' },
    validFor: 'one aerial among the trees',
    leavesOut: 'season and rain, except through γ and Am',
    source: 'Rec. ITU-R P.833-10, section 2.1, equation 1',
  },
  ({ depth, specific, most }) => most * (1 - Math.exp((-specific * depth) / most)),
);
