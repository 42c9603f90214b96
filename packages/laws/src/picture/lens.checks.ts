import { checkLaw } from '../check.ts';
import {
  densityDistance,
  fieldOfView,
  focalPixels,
  obstacleSight,
  pixelDensity,
  scaledFocalPixels,
  sizeInPixels,
  viewFromFocalPixels,
} from './lens.ts';
import { johnsonChance, johnsonDistance } from './seeing.ts';

const DEGREE = Math.PI / 180;
const PHOTOGRAPHIC = 'photographic table of angles of view, 36 mm wide frame, from memory';
const BOARD_8 = 'specification of an 8-megapixel board camera';
const BOARD_5 = 'specification of a 5-megapixel board camera, active pixels times pitch';
const WEBCAM = 'published note on a web camera: 70.42° wide, 43.3° high, 78° diagonal, 1360.38 px';
const IEC = 'IEC 62676-4:2014, densities in px/m and mm/px';
const FACE = 'table of pixels on a 16 cm face at the densities of IEC 62676-4:2014';
const JOHNSON = 'Johnson 1958, line pairs for an even chance';
const PRINTED_CHANCE = 'printed table of the target transfer probability, from memory';

export const lensChecks = [
  checkLaw(fieldOfView, [
    {
      case: '36 mm wide, 50 mm lens',
      source: PHOTOGRAPHIC,
      kind: 'memory',
      args: { size: 0.036, focalLength: 0.05 },
      expected: 39.6 * DEGREE,
      allowed: 0.001,
    },
    {
      case: '3.68 mm wide, 3.04 mm lens',
      source: BOARD_8,
      kind: 'published',
      args: { size: 3.68e-3, focalLength: 3.04e-3 },
      expected: 62.2 * DEGREE,
      allowed: 0.004,
    },
    {
      case: '2592 pixels of 1.4 µm, 3.60 mm lens, width',
      source: BOARD_5,
      kind: 'published',
      args: { size: 2592 * 1.4e-6, focalLength: 3.6e-3 },
      expected: 53.5 * DEGREE,
      allowed: 5e-4,
    },
    {
      case: '1944 pixels of 1.4 µm, 3.60 mm lens, height',
      source: BOARD_5,
      kind: 'published',
      args: { size: 1944 * 1.4e-6, focalLength: 3.6e-3 },
      expected: 41.41 * DEGREE,
      allowed: 5e-4,
    },
  ]),
  checkLaw(focalPixels, [
    {
      case: '1920 pixels over 70.42°',
      source: WEBCAM,
      kind: 'published',
      args: { pixels: 1920, view: 70.42 * DEGREE },
      expected: 1360.38,
      allowed: 1e-5,
    },
    {
      case: '1280 pixels over a right angle: half the width, since tan 45° = 1',
      source: 'Hartley and Zisserman, Multiple View Geometry, 2nd ed., pinhole camera',
      kind: 'published',
      args: { pixels: 1280, view: Math.PI / 2 },
      expected: 640,
      allowed: 1e-12,
    },
  ]),
  checkLaw(viewFromFocalPixels, [
    {
      case: 'height of 1080 pixels',
      source: WEBCAM,
      kind: 'published',
      args: { pixels: 1080, focalPixels: 1360.38 },
      expected: 43.3 * DEGREE,
      allowed: 1e-4,
    },
    {
      case: 'diagonal of 2202.9 pixels',
      source: WEBCAM,
      kind: 'published',
      args: { pixels: Math.hypot(1920, 1080), focalPixels: 1360.38 },
      expected: 78 * DEGREE,
      allowed: 2e-4,
    },
  ]),
  checkLaw(scaledFocalPixels, [
    {
      case: '1920 scaled to 1280: 640 / tan(35.21°) = 640 / 0.70568',
      source: WEBCAM,
      kind: 'published',
      args: { focalPixels: 1360.38, captured: 1920, sent: 1280 },
      expected: 906.9,
      allowed: 1e-4,
    },
  ]),
  checkLaw(pixelDensity, [
    {
      case: '640 px, 5.12 m: 8 mm to a pixel is "recognise"',
      source: IEC,
      kind: 'published',
      args: { focalPixels: 640, distance: 5.12 },
      expected: 1 / 0.008,
      allowed: 1e-9,
    },
    {
      case: '640 px, 51.2 m: 80 mm to a pixel is "monitor"',
      source: IEC,
      kind: 'published',
      args: { focalPixels: 640, distance: 51.2 },
      expected: 1 / 0.08,
      allowed: 1e-9,
    },
  ]),
  checkLaw(densityDistance, [
    {
      case: '640 px, "monitor" at 12.5 px/m, 80 mm to a pixel: 640 · 0.08',
      source: IEC,
      kind: 'published',
      args: { focalPixels: 640, density: 12.5 },
      expected: 51.2,
      allowed: 1e-9,
    },
  ]),
  checkLaw(sizeInPixels, [
    {
      case: 'face of 16 cm at the distance of 125 px/m: 20 pixels',
      source: FACE,
      kind: 'published',
      args: { focalPixels: 640, size: 0.16, distance: 640 / 125 },
      expected: 20,
      allowed: 1e-9,
    },
    {
      case: 'face of 16 cm at the distance of 25 px/m: 4 pixels',
      source: FACE,
      kind: 'published',
      args: { focalPixels: 640, size: 0.16, distance: 640 / 25 },
      expected: 4,
      allowed: 1e-9,
    },
  ]),
  checkLaw(obstacleSight, [
    {
      case: 'face of 16 cm, 10 pixels wanted: where 62.5 px/m is left',
      source: FACE,
      kind: 'published',
      args: { focalPixels: 640, size: 0.16, pixels: 10 },
      expected: 640 / 62.5,
      allowed: 1e-9,
    },
  ]),
  checkLaw(johnsonDistance, [
    {
      case: 'person 0.5 m by 1.8 m, 640 px, recognition by 4 pairs: 8 pixels of 0.1186 m each',
      source: JOHNSON,
      kind: 'published',
      args: { focalPixels: 640, dimension: Math.sqrt(0.5 * 1.8), cycles: 4 },
      expected: 75.9,
      allowed: 5e-4,
    },
    {
      case: 'same person, identification by 6.4 pairs',
      source: JOHNSON,
      kind: 'published',
      args: { focalPixels: 640, dimension: Math.sqrt(0.5 * 1.8), cycles: 6.4 },
      expected: 47.4,
      allowed: 0.001,
    },
  ]),
  checkLaw(johnsonChance, [
    {
      case: 'half the pairs',
      source: PRINTED_CHANCE,
      kind: 'memory',
      args: { ratio: 0.5 },
      expected: 0.1,
      allowed: 0.09,
    },
    {
      case: 'as many pairs as for an even chance',
      source: PRINTED_CHANCE,
      kind: 'memory',
      args: { ratio: 1 },
      expected: 0.5,
      allowed: 1e-9,
    },
    {
      case: 'half as many pairs again',
      source: PRINTED_CHANCE,
      kind: 'memory',
      args: { ratio: 1.5 },
      expected: 0.8,
      allowed: 0.03,
    },
    {
      case: 'twice the pairs',
      source: PRINTED_CHANCE,
      kind: 'memory',
      args: { ratio: 2 },
      expected: 0.95,
      allowed: 0.006,
    },
  ]),
];
