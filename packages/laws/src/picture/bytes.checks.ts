import { checkLaw } from '../check.ts';
import {
  dataVolume,
  jpegBytes,
  jpegQuality,
  pictureInterval,
  quantiserScale,
  SCENE_DETAIL,
  storageTime,
  videoRate,
} from './bytes.ts';

const SLIDES = 'SIGGRAPH education slide set, one 640×480 photograph at six qualities';
const MEASURED = 'median of ten detailed photographs encoded with libvips 8.18';
const T81 = 'ITU-T T.81 annex K with the libjpeg scale: luminance entry 16 becomes 32 at 25, 8 at 75, from memory';
const CARDS = 'makers of memory cards, hours of 26 Mbit/s video';

/** Detail of the photograph of the slide set, from its own row at quality 50. */
const SLIDE_DETAIL = (8 * 37139) / (640 * 480);

const slide = (quality: number, expected: number, allowed: number) =>
  ({
    case: `quality ${quality}, detail taken from its row at quality 50`,
    source: SLIDES,
    kind: 'published',
    args: { width: 640, height: 480, detail: SLIDE_DETAIL, quality },
    expected,
    allowed,
  }) as const;

const measured = (width: number, quality: number, perPixel: number, allowed: number) =>
  ({
    case: `${width} wide, quality ${quality}: ${perPixel} bits per pixel`,
    source: MEASURED,
    kind: 'reference library',
    args: { width, height: (width * 3) / 4, detail: SCENE_DETAIL.median, quality },
    expected: (width * width * 0.75 * perPixel) / 8,
    allowed,
  }) as const;

export const bytesChecks = [
  checkLaw(quantiserScale, [
    {
      case: 'quality 25 doubles the entries',
      source: T81,
      kind: 'memory',
      args: { quality: 25 },
      expected: 32 / 16,
      allowed: 1e-9,
    },
    {
      case: 'quality 75 halves the entries',
      source: T81,
      kind: 'memory',
      args: { quality: 75 },
      expected: 8 / 16,
      allowed: 1e-9,
    },
  ]),
  checkLaw(jpegBytes, [
    slide(90, 101853, 0.03),
    slide(75, 57447, 0.015),
    slide(25, 22837, 0.07),
    slide(15, 17814, 0.01),
    slide(10, 14164, 0.03),
    measured(320, 60, 1.18, 0.04),
    measured(640, 40, 0.72, 0.05),
    measured(1280, 60, 0.76, 0.06),
  ]),
  checkLaw(jpegQuality, [
    {
      case: '57 447 bytes',
      source: SLIDES,
      kind: 'published',
      args: { width: 640, height: 480, detail: SLIDE_DETAIL, bytes: 57447 },
      expected: 75,
      allowed: 0.01,
    },
    {
      case: '17 814 bytes',
      source: SLIDES,
      kind: 'published',
      args: { width: 640, height: 480, detail: SLIDE_DETAIL, bytes: 17814 },
      expected: 15,
      allowed: 0.015,
    },
  ]),
  checkLaw(pictureInterval, [
    {
      case: '20 kB offered without end to 600 kbit/s: 3.75 pictures a second get through',
      source: 'event simulation of a link where the newest picture waits',
      kind: 'reference library',
      args: { bytes: 20e3, rate: 600e3, share: 1 },
      expected: 1 / 3.75,
      allowed: 0.001,
    },
    {
      case: '20 kB over 1 Mbit/s at half of the link: 160 ms of sending, 160 ms of rest',
      source: 'common practice, no source',
      kind: 'common practice',
      args: { bytes: 20e3, rate: 1e6, share: 0.5 },
      expected: 0.32,
      allowed: 1e-9,
    },
  ]),
  checkLaw(videoRate, [
    {
      case: '1280×720, 30 pictures a second, medium motion: 3.9 Mbit/s',
      source: 'Amerasinghe, H.264 for the rest of us, 2010, from memory',
      kind: 'memory',
      args: { width: 1280, height: 720, fps: 30, motion: 2 },
      expected: 3.9e6,
      allowed: 0.01,
    },
  ]),
  checkLaw(storageTime, [
    {
      case: '128 GB rated 43 800 h and 4003 full writes: 10.94 h for each',
      source: CARDS,
      kind: 'published',
      args: { capacity: 128e9, rate: 26e6 },
      expected: (43800 / 4003) * 3600,
      allowed: 0.001,
    },
    {
      case: '32 GB at 4 Mbit/s: half a megabyte a second, 64 000 s',
      source: 'definition of a rate',
      kind: 'published',
      args: { capacity: 32e9, rate: 4e6 },
      expected: 64000,
      allowed: 1e-9,
    },
  ]),
  checkLaw(dataVolume, [
    {
      case: '20 kB five times a second for six hours: 2.16 GB a day',
      source: 'definition of a rate: 0.36 GB an hour',
      kind: 'published',
      args: { bytes: 20e3, interval: 0.2, time: 6 * 3600 },
      expected: 2.16e9,
      allowed: 1e-9,
    },
  ]),
];
