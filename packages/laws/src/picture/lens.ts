/** The pinhole: how wide the camera sees and how many pixels a thing of given size gets. */
import { law } from '../law.ts';
import { FOCAL_PIXELS } from './argument.ts';

const PINHOLE = 'Hartley and Zisserman, Multiple View Geometry in Computer Vision, 2nd ed., pinhole camera';

const distance = { symbol: 'Z', is: 'distance along the axis of the camera', unit: 'm', above: 0 } as const;

/** Field of view from the sensor and the focal length. */
export const fieldOfView = law(
  {
    id: 'field-of-view',
    title: 'Field of view',
    equation: 'V = 2 · atan(s / (2 · fl))',
    args: {
      size: { symbol: 's', is: 'active width, height or diagonal of the sensor', unit: 'm', above: 0 },
      focalLength: { symbol: 'fl', is: 'focal length', unit: 'm', above: 0 },
    },
    gives: { symbol: 'V', is: 'angle seen across that size', unit: 'rad' },
    validFor: 'lens without distortion, up to about 100°; use active pixels times pitch, not the printed image area',
    leavesOut: 'distortion of wide lenses, cropping in some modes',
    source: PINHOLE,
  },
  ({ size, focalLength }) => 2 * Math.atan(size / (2 * focalLength)),
);

/** Focal length in pixels from the field of view. */
export const focalPixels = law(
  {
    id: 'focal-pixels',
    title: 'Focal length in pixels',
    equation: 'F = W / (2 · tan(V/2))',
    args: {
      pixels: { symbol: 'W', is: 'pixels across the picture sent', unit: 'px', above: 0 },
      view: { symbol: 'V', is: 'field of view across the same side', unit: 'rad', above: 0, below: Math.PI },
    },
    gives: { symbol: 'F', is: 'focal length in pixels', unit: 'px' },
    validFor: 'lens without distortion, square pixels; scales with the picture: half the width, half the sight',
    leavesOut: 'distortion of wide lenses',
    source: PINHOLE,
  },
  ({ pixels, view }) => pixels / (2 * Math.tan(view / 2)),
);

/** Field of view across another side, from the focal length in pixels. */
export const viewFromFocalPixels = law(
  {
    id: 'view-from-focal-pixels',
    title: 'Field of view across a number of pixels',
    equation: 'V = 2 · atan(W / (2 · F))',
    args: {
      pixels: { symbol: 'W', is: 'pixels across the wanted side', unit: 'px', above: 0 },
      focalPixels: FOCAL_PIXELS,
    },
    gives: { symbol: 'V', is: 'angle seen', unit: 'rad' },
    validFor: 'lens without distortion, square pixels',
    leavesOut: 'distortion of wide lenses',
    source: PINHOLE,
  },
  ({ pixels, focalPixels }) => 2 * Math.atan(pixels / (2 * focalPixels)),
);

/** Focal length in pixels after the picture is scaled. */
export const scaledFocalPixels = law(
  {
    id: 'scaled-focal-pixels',
    title: 'Focal length in pixels of a scaled picture',
    equation: 'F′ = F · w / W',
    args: {
      focalPixels: FOCAL_PIXELS,
      captured: { symbol: 'W', is: 'width captured', unit: 'px', above: 0 },
      sent: { symbol: 'w', is: 'width sent', unit: 'px', above: 0 },
    },
    gives: { symbol: 'F′', is: 'focal length in pixels of the picture sent', unit: 'px' },
    validFor: 'whole picture scaled, not cropped; every sight distance shrinks with it',
    leavesOut: 'sharpness lost or won by the scaler',
    source: PINHOLE,
  },
  ({ focalPixels, captured, sent }) => (focalPixels * sent) / captured,
);

/** Pixels on one metre at a distance. */
export const pixelDensity = law(
  {
    id: 'pixel-density',
    title: 'Pixels on a metre',
    equation: 'ρ = F / Z',
    args: { focalPixels: FOCAL_PIXELS, distance },
    gives: { symbol: 'ρ', is: 'pixels across one metre', unit: 'px/m' },
    validFor: 'surface square to the axis',
    leavesOut: 'blur, compression, lens sharpness',
    source: PINHOLE,
  },
  ({ focalPixels, distance }) => focalPixels / distance,
);

/** Distance at which a wanted density of pixels is left. */
export const densityDistance = law(
  {
    id: 'density-distance',
    title: 'Distance of a wanted pixel density',
    equation: 'Z = F / ρ',
    args: {
      focalPixels: FOCAL_PIXELS,
      density: { symbol: 'ρ', is: 'wanted pixels across one metre', unit: 'px/m', above: 0 },
    },
    gives: { symbol: 'Z', is: 'farthest distance with that density', unit: 'm' },
    validFor: 'surface square to the axis, good light, light compression',
    leavesOut: 'blur, compression, lens sharpness',
    source: PINHOLE,
  },
  ({ focalPixels, density }) => focalPixels / density,
);

/** Pixels that a thing of given size gets. */
export const sizeInPixels = law(
  {
    id: 'size-in-pixels',
    title: 'Size on the picture',
    equation: 'n = F · s / Z',
    args: {
      focalPixels: FOCAL_PIXELS,
      size: { symbol: 's', is: 'size square to the axis', unit: 'm', above: 0 },
      distance,
    },
    gives: { symbol: 'n', is: 'size on the picture', unit: 'px' },
    validFor: 'things small beside their distance, or square to the axis',
    leavesOut: 'blur, compression, lens sharpness',
    source: PINHOLE,
  },
  ({ focalPixels, size, distance }) => (focalPixels * size) / distance,
);

/** Farthest distance at which a thing still gets the wanted pixels. */
export const obstacleSight = law(
  {
    id: 'obstacle-sight',
    title: 'Sight distance for an obstacle',
    equation: 'Z = F · s / n',
    args: {
      focalPixels: FOCAL_PIXELS,
      size: { symbol: 's', is: 'size of the obstacle square to the axis', unit: 'm', above: 0 },
      pixels: { symbol: 'n', is: 'pixels needed to make it out', unit: 'px', above: 0 },
    },
    gives: { symbol: 'Z', is: 'farthest distance it can be made out', unit: 'm' },
    validFor: 'obstacle that differs in brightness from the ground behind it',
    leavesOut: 'blur, haze, compression, lens sharpness: each may cut it shorter',
    source: PINHOLE,
  },
  ({ focalPixels, size, pixels }) => (focalPixels * size) / pixels,
);
