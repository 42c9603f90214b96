/** The ground in the picture: its edges, its rows, what hides it, and how drops vanish. */
import { law } from '../law.ts';
import { FOCAL_PIXELS } from './argument.ts';

const FLAT =
  'central projection of a plane; Hartley and Zisserman, Multiple View Geometry, 2nd ed., horizon of a plane';

const height = { symbol: 'H', is: 'height of the camera above the ground', unit: 'm', above: 0 } as const;
const pitch = {
  symbol: 'p',
  is: 'angle of the axis below the horizon',
  unit: 'rad',
  from: 0,
  to: Math.PI / 2,
} as const;
const view = { symbol: 'V', is: 'vertical field of view', unit: 'rad', above: 0, below: Math.PI } as const;
const distance = { symbol: 'Z', is: 'distance along the ground', unit: 'm', above: 0 } as const;

/** Where the ground enters the lower edge of the picture. */
export const nearEdge = law(
  {
    id: 'near-edge',
    title: 'Near edge of the ground seen',
    equation: 'dn = H / tan(p + V/2)',
    args: { height, pitch, view },
    gives: { symbol: 'dn', is: 'distance ahead of the camera, negative when it sees behind its own foot', unit: 'm' },
    validFor: 'flat ground, camera not turned about its axis',
    leavesOut: 'the body of the vehicle, which may hide the foreground',
    source: FLAT,
  },
  ({ height, pitch, view }) => height / Math.tan(pitch + view / 2),
);

/** Where the ground leaves the upper edge of the picture. */
export const farEdge = law(
  {
    id: 'far-edge',
    title: 'Far edge of the ground seen',
    equation: 'df = H / tan(p − V/2), endless when p ≤ V/2',
    args: { height, pitch, view },
    gives: { symbol: 'df', is: 'distance ahead of the camera; infinite when the horizon is in the picture', unit: 'm' },
    validFor: 'flat ground, camera not turned about its axis',
    leavesOut: 'resolution: far ground has too few rows to be read long before the far edge',
    source: FLAT,
  },
  ({ height, pitch, view }) => (pitch <= view / 2 ? Number.POSITIVE_INFINITY : height / Math.tan(pitch - view / 2)),
);

/** Ground between the bumper and the first ground seen. */
export const blindForeground = law(
  {
    id: 'blind-foreground',
    title: 'Blind foreground',
    equation: 'b = max(0, dn − o)',
    args: {
      nearEdge: { symbol: 'dn', is: 'near edge of the ground seen, ahead of the camera', unit: 'm' },
      overhang: { symbol: 'o', is: 'distance from the camera forward to the bumper', unit: 'm' },
    },
    gives: { symbol: 'b', is: 'unseen ground ahead of the bumper', unit: 'm' },
    validFor: 'straight driving',
    leavesOut: 'ground seen earlier and remembered',
    source: 'common practice, no source; geometry of the layout',
  },
  ({ nearEdge, overhang }) => Math.max(0, nearEdge - overhang),
);

/** Rows between the horizon and a point of the ground, level camera. */
export const rowsBelowHorizon = law(
  {
    id: 'rows-below-horizon',
    title: 'Rows below the horizon',
    equation: 'y = F · H / Z',
    args: { focalPixels: FOCAL_PIXELS, height, distance },
    gives: { symbol: 'y', is: 'rows below the horizon', unit: 'px' },
    validFor: 'flat ground, level axis; nearly so for a few degrees of pitch',
    leavesOut: 'bounce of the vehicle, which moves the horizon itself',
    source: FLAT,
  },
  ({ focalPixels, height, distance }) => (focalPixels * height) / distance,
);

/** Distance of the ground at a row. */
export const distanceAtRow = law(
  {
    id: 'distance-at-row',
    title: 'Distance of the ground at a row',
    equation: 'Z = F · H / y',
    args: {
      focalPixels: FOCAL_PIXELS,
      height,
      rows: { symbol: 'y', is: 'rows below the horizon', unit: 'px', above: 0 },
    },
    gives: { symbol: 'Z', is: 'distance along the ground', unit: 'm' },
    validFor: 'flat ground, level axis',
    leavesOut: 'bounce of the vehicle',
    source: FLAT,
  },
  ({ focalPixels, height, rows }) => (focalPixels * height) / rows,
);

/** Ground covered by one row. */
export const depthPerRow = law(
  {
    id: 'depth-per-row',
    title: 'Ground in one row',
    equation: 'δ = Z² / (F · H)',
    args: { focalPixels: FOCAL_PIXELS, height, distance },
    gives: { symbol: 'δ', is: 'depth of ground in one row', unit: 'm' },
    validFor: 'flat ground, level axis, distances of many rows',
    leavesOut: 'compression and blur',
    source: FLAT,
  },
  ({ focalPixels, height, distance }) => (distance * distance) / (focalPixels * height),
);

/** Ground hidden behind an obstacle, or behind the vehicle's own bonnet. */
export const hiddenGround = law(
  {
    id: 'hidden-ground',
    title: 'Ground hidden behind an obstacle',
    equation: 'x = Z · o / (H − o), endless when o ≥ H',
    args: {
      height,
      obstacle: { symbol: 'o', is: 'height of the obstacle', unit: 'm', above: 0 },
      distance: { symbol: 'Z', is: 'distance of the obstacle', unit: 'm', above: 0 },
    },
    gives: { symbol: 'x', is: 'ground hidden behind it; infinite when it reaches the eye', unit: 'm' },
    validFor: 'flat ground behind the obstacle',
    leavesOut: 'obstacles that can be seen through',
    source: 'similar triangles; Euclid, Elements, VI.4',
  },
  ({ height, obstacle, distance }) =>
    obstacle >= height ? Number.POSITIVE_INFINITY : (distance * obstacle) / (height - obstacle),
);

/** How far one sees over the crest of a hill. */
export const crestSight = law(
  {
    id: 'crest-sight',
    title: 'Sight over a crest',
    equation: 'S = √((R + h)² − R²) + √((R + o)² − R²)',
    args: {
      radius: { symbol: 'R', is: 'radius of the crest', unit: 'm', above: 0 },
      eye: { symbol: 'h', is: 'height of the camera', unit: 'm', from: 0 },
      object: { symbol: 'o', is: 'height of what must be seen', unit: 'm', from: 0 },
    },
    gives: { symbol: 'S', is: 'length of the sight line touching the crest', unit: 'm' },
    validFor: 'crest longer than the sight line',
    leavesOut: 'grass, which hides a low eye long before',
    source: 'AASHTO, A Policy on Geometric Design of Highways and Streets, 6th ed., crest vertical curves',
  },
  ({ radius, eye, object }) => Math.sqrt(eye * (2 * radius + eye)) + Math.sqrt(object * (2 * radius + object)),
);

/** Rows that a gap in the ground takes on the picture. */
export const dropPixels = law(
  {
    id: 'drop-pixels',
    title: 'Rows that a drop takes on the picture',
    equation: 'n = F · H · w / (Z · (Z + w))',
    args: {
      focalPixels: FOCAL_PIXELS,
      height,
      gap: { symbol: 'w', is: 'width of the gap along the line of sight', unit: 'm', above: 0 },
      distance: { symbol: 'Z', is: 'distance of the near edge', unit: 'm', above: 0 },
    },
    gives: { symbol: 'n', is: 'rows between the near and the far edge', unit: 'px' },
    validFor: 'level ground on both sides; far off it falls with the square of the distance',
    leavesOut: 'gaps shallower than the eye looks into, shadow and grass at the edge',
    source:
      'Matthies and Rankin, Negative obstacle detection by thermal signature, IROS 2003, angle of a ditch, from memory',
  },
  ({ focalPixels, height, gap, distance }) => (focalPixels * height * gap) / (distance * (distance + gap)),
);

/** Farthest distance at which a gap still takes the wanted rows. */
export const dropSight = law(
  {
    id: 'drop-sight',
    title: 'Sight distance for a drop',
    equation: 'Z = (√(w² + 4 · F · H · w / n) − w) / 2',
    args: {
      focalPixels: FOCAL_PIXELS,
      height,
      gap: { symbol: 'w', is: 'width of the gap along the line of sight', unit: 'm', above: 0 },
      pixels: { symbol: 'n', is: 'rows needed to make it out', unit: 'px', above: 0 },
    },
    gives: { symbol: 'Z', is: 'farthest distance the drop can be made out', unit: 'm' },
    validFor: 'level ground on both sides; doubling the pixels wins only 41 % of sight',
    leavesOut: 'gaps shallower than the eye looks into, shadow and grass at the edge',
    source: 'inverse of the angle of a ditch, Matthies and Rankin, IROS 2003, from memory',
  },
  ({ focalPixels, height, gap, pixels }) =>
    (Math.sqrt(gap * gap + (4 * focalPixels * height * gap) / pixels) - gap) / 2,
);
