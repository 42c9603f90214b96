/** The normal distribution and its inverse at points computed elsewhere. */
import { type Checks, checkSubject } from '@longrein/laws/check';
import { normalBelow, normalQuantile } from './normal.ts';

const BELOW = [
  [1, 0.8413447460685429],
  [1.96, 0.9750021048517795],
  [-6, 9.865876450376946e-10],
  [-10, 7.61985302416047e-24],
] as const;

const POINTS = [
  [0.75, 0.674489750196082],
  [0.9, 1.2815515655446],
  [0.95, 1.644853626951473],
  [0.975, 1.959963984540054],
  [1e-9, -5.997807015007686],
] as const;

/** Wichura's own test points, one for each of the three ranges of the algorithm. */
const WICHURA = [
  [0.25, -0.6744897501960817],
  [0.001, -3.090232306167814],
  [1e-20, -9.26234008979841],
] as const;

export const normalChecks: Checks = checkSubject('normal distribution', [
  ...BELOW.map(([z, expected]) => ({
    case: `chance below ${z}`,
    source: 'SciPy 1.17.1, special.ndtr',
    kind: 'reference library' as const,
    expected,
    allowed: 1e-13,
    ours: () => normalBelow(z),
  })),
  ...POINTS.map(([p, expected]) => ({
    case: `point of chance ${p}`,
    source: 'SciPy 1.17.1, special.ndtri',
    kind: 'reference library' as const,
    expected,
    allowed: 1e-14,
    ours: () => normalQuantile(p),
  })),
  ...WICHURA.map(([p, expected]) => ({
    case: `point of chance ${p}`,
    source: 'Wichura 1988, AS 241, test points of PPND16',
    kind: 'memory' as const,
    expected,
    allowed: 1e-14,
    ours: () => normalQuantile(p),
  })),
]);
