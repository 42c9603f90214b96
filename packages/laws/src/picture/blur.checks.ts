import { checkLaw } from '../check.ts';
import {
  exposureForBlur,
  exposureTime,
  forwardBlur,
  hazeContrast,
  hazeSight,
  shutterSkew,
  sidewaysBlur,
  turningBlur,
} from './blur.ts';

const DEGREE = Math.PI / 180;
const HORN = 'Horn, Robot Vision, 1986, motion field';
const EXPOSURE_VALUES = 'table of exposure values: EV 15 is 4096 cd/m², EV 12 is 512 cd/m², N²/t = 2^EV, from memory';
const WMO = 'WMO-No. 8, optical range 2.996/β at 5 % contrast; Koschmieder range 3.912/β at 2 %, from memory';

export const blurChecks = [
  checkLaw(sidewaysBlur, [
    {
      case: '2 m/s, 1 m off, 10 ms, 640 px: 20 mm of way, 640 pixels to the metre',
      source: HORN,
      kind: 'published',
      args: { focalPixels: 640, speed: 2, exposure: 0.01, distance: 1 },
      expected: 12.8,
      allowed: 1e-9,
    },
  ]),
  checkLaw(turningBlur, [
    {
      case: '60°/s, 10 ms, 640 px: the tangent of 0.6° on the picture',
      source: HORN,
      kind: 'published',
      args: { focalPixels: 640, rate: 60 * DEGREE, exposure: 0.01 },
      expected: 640 * Math.tan(0.6 * DEGREE),
      allowed: 1e-4,
    },
    {
      case: 'shake of ±0.5° at 20 Hz, greatest rate 62.8°/s, 5 ms, 640 px',
      source: HORN,
      kind: 'published',
      args: { focalPixels: 640, rate: 2 * Math.PI * 20 * 0.5 * DEGREE, exposure: 0.005 },
      expected: 3.51,
      allowed: 0.001,
    },
  ]),
  checkLaw(forwardBlur, [
    {
      case: '2 m/s, 10 ms, a point 1 m off, 200 px from the centre: projected again from 0.98 m',
      source: HORN,
      kind: 'published',
      args: { radius: 200, speed: 2, exposure: 0.01, distance: 1 },
      expected: 200 / 0.98 - 200,
      allowed: 0.021,
    },
  ]),
  checkLaw(exposureForBlur, [
    {
      case: 'one pixel at 2 m/s, 1 m off, 640 px: 1/1280 s',
      source: HORN,
      kind: 'published',
      args: { blur: 1, distance: 1, focalPixels: 640, speed: 2 },
      expected: 1 / 1280,
      allowed: 1e-9,
    },
  ]),
  checkLaw(shutterSkew, [
    {
      case: '60°/s, 20 ms of read-out, 640 px: the tangent of 1.2° on the picture',
      source: 'Liang, Chang and Chen, IEEE TIP 17(8), 2008',
      kind: 'published',
      args: { focalPixels: 640, rate: 60 * DEGREE, readout: 0.02 },
      expected: 640 * Math.tan(1.2 * DEGREE),
      allowed: 2e-4,
    },
  ]),
  checkLaw(hazeContrast, [
    {
      case: 'full contrast at the Koschmieder range, 1.3056 times the optical range, falls to 2 %',
      source: WMO,
      kind: 'memory',
      args: { contrast: 1, distance: (100 * 3.912) / 2.996, range: 100 },
      expected: 0.02,
      allowed: 0.002,
    },
    {
      case: 'half contrast at the optical range falls to 2.5 %',
      source: WMO,
      kind: 'memory',
      args: { contrast: 0.5, distance: 100, range: 100 },
      expected: 0.025,
      allowed: 1e-9,
    },
  ]),
  checkLaw(hazeSight, [
    {
      case: 'full contrast, 2 % made out: the Koschmieder range',
      source: WMO,
      kind: 'memory',
      args: { contrast: 1, threshold: 0.02, range: 100 },
      expected: (100 * 3.912) / 2.996,
      allowed: 5e-4,
    },
  ]),
  checkLaw(exposureTime, [
    {
      case: 'EV 15 at f/16 and ISO 100: 1/128 s, the sunny-sixteen rule within a third of a stop',
      source: EXPOSURE_VALUES,
      kind: 'memory',
      args: { luminance: 4096, aperture: 16, speed: 100 },
      expected: 1 / 128,
      allowed: 1e-6,
    },
    {
      case: 'EV 12 at f/8 and ISO 100: 1/64 s',
      source: EXPOSURE_VALUES,
      kind: 'memory',
      args: { luminance: 512, aperture: 8, speed: 100 },
      expected: 1 / 64,
      allowed: 1e-6,
    },
  ]),
];
