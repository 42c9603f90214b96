/** What a picture weighs and how often one fits the link. */
import { law } from '../law.ts';

const FIT = 'fit to 20 photographs encoded with libjpeg tables (libvips 8.18), widths 320 to 1280, quality 20 to 90';

/** Detail of a scene: bits per pixel at 640 wide and quality 50. Median of ten detailed views, and their spread. */
export const SCENE_DETAIL = { least: 0.59, median: 0.8, most: 1.16, source: FIT } as const;

const WIDTH_EXPONENT = -0.33;
const QUANTISER_EXPONENT = -0.61;

const detail = {
  symbol: 'K',
  is: 'detail of the scene, bits per pixel at 640 wide and quality 50',
  unit: 'bit/px',
  above: 0,
  to: 3,
} as const;
const width = { symbol: 'w', is: 'width', unit: 'px', from: 160, to: 1920 } as const;
const height = { symbol: 'h', is: 'height', unit: 'px', from: 90, to: 1920 } as const;
const quality = { symbol: 'q', is: 'quality setting of the usual scale', unit: '1', from: 5, to: 95 } as const;

/** How much the quality setting multiplies the quantiser steps. */
export const quantiserScale = law(
  {
    id: 'quantiser-scale',
    title: 'Quantiser multiplier of a JPEG quality',
    equation: 's = 50 / q below 50, 2 − q / 50 from 50 on',
    args: { quality: { symbol: 'q', is: 'quality setting', unit: '1', from: 1, to: 99 } },
    gives: { symbol: 's', is: 'multiplier of the base tables', unit: '1' },
    validFor: 'encoders with the usual quality scale on the tables of ITU-T T.81 annex K',
    leavesOut: 'rounding of the table entries and their floor of one',
    source: 'libjpeg, jpeg_quality_scaling; base tables ITU-T T.81, annex K',
  },
  ({ quality }) => (quality < 50 ? 50 / quality : 2 - quality / 50),
);

/** Bytes of a JPEG picture of a detailed scene. */
export const jpegBytes = law(
  {
    id: 'jpeg-bytes',
    title: 'Bytes of a JPEG picture',
    equation: 'b = w · h · K · (w/640)^(−0.33) · s(q)^(−0.61) / 8',
    args: { width, height, detail, quality },
    gives: { symbol: 'b', is: 'bytes', unit: 'B' },
    validFor: 'detailed outdoor and indoor views; fitted from 320 to 1280 wide and quality 20 to 90',
    leavesOut: 'noise (up to half more), motion blur and dusk (down to a third): regulate by bytes measured',
    source: FIT,
  },
  ({ width, height, detail, quality }) => {
    const perPixel = detail * (width / 640) ** WIDTH_EXPONENT * quantiserScale({ quality }) ** QUANTISER_EXPONENT;
    return (width * height * perPixel) / 8;
  },
);

/** Quality that makes a JPEG picture weigh so many bytes. */
export const jpegQuality = law(
  {
    id: 'jpeg-quality',
    title: 'JPEG quality for wanted bytes',
    equation: 'q = 50/s above s = 1, 50·(2 − s) below, s = (8·b / (w·h·K·(w/640)^(−0.33)))^(−1/0.61)',
    args: {
      width,
      height,
      detail,
      bytes: { symbol: 'b', is: 'bytes wanted', unit: 'B', above: 0 },
    },
    gives: { symbol: 'q', is: 'quality setting; may fall outside what an encoder offers', unit: '1' },
    validFor: 'as the law of bytes; outside quality 5 to 95 choose another size instead',
    leavesOut: 'rounding to whole settings',
    source: `inverse of the ${FIT}`,
  },
  ({ width, height, detail, bytes }) => {
    const perPixel = (8 * bytes) / (width * height * detail * (width / 640) ** WIDTH_EXPONENT);
    const scale = perPixel ** (1 / QUANTISER_EXPONENT);
    return scale > 1 ? 50 / scale : 50 * (2 - scale);
  },
);

/** Shortest interval at which pictures fit a share of the link. */
export const pictureInterval = law(
  {
    id: 'picture-interval',
    title: 'Interval between pictures over a link',
    equation: 'T = 8 · b / (u · R)',
    args: {
      bytes: { symbol: 'b', is: 'bytes of a picture with its headers', unit: 'B', above: 0 },
      rate: { symbol: 'R', is: 'throughput measured', unit: 'bit/s', above: 0 },
      share: { symbol: 'u', is: 'share of the link given to pictures', unit: '1', above: 0, to: 1 },
    },
    gives: { symbol: 'T', is: 'shortest interval', unit: 's' },
    validFor: 'one picture in flight; keep the share at 0.5 to 0.7 so that no queue builds',
    leavesOut: 'variation of the throughput',
    source: 'common practice, no source; offered load of a queue',
  },
  ({ bytes, rate, share }) => (8 * bytes) / (share * rate),
);

/** Bit rate of video by the motion in it. */
export const videoRate = law(
  {
    id: 'video-rate',
    title: 'Bit rate of H.264 video',
    equation: 'R = w · h · fps · m · 0.07 bit',
    args: {
      width,
      height,
      fps: { symbol: 'fps', is: 'pictures each second', unit: '1/s', from: 5, to: 60 },
      motion: { symbol: 'm', is: 'motion rank: 1 low, 2 medium, 4 high', unit: '1', from: 1, to: 4 },
    },
    gives: { symbol: 'R', is: 'bit rate', unit: 'bit/s' },
    validFor: 'good quality at 15 to 30 pictures a second; fewer pictures do not save in proportion',
    leavesOut: 'key frames, which set the delay on a thin link',
    source: 'Amerasinghe, H.264 for the rest of us, 2010, from memory',
  },
  ({ width, height, fps, motion }) => width * height * fps * motion * 0.07,
);

/** How long a store lasts at a rate. */
export const storageTime = law(
  {
    id: 'storage-time',
    title: 'Recording time of a store',
    equation: 't = 8 · c / R',
    args: {
      capacity: { symbol: 'c', is: 'free space', unit: 'B', above: 0 },
      rate: { symbol: 'R', is: 'bit rate recorded', unit: 'bit/s', above: 0 },
    },
    gives: { symbol: 't', is: 'time until full', unit: 's' },
    validFor: 'steady rate',
    leavesOut: '3 to 7 % for the file system and its reserve',
    source: 'definition of a rate; hours printed by makers of memory cards',
  },
  ({ capacity, rate }) => (8 * capacity) / rate,
);

/** Data that a stream of pictures uses. */
export const dataVolume = law(
  {
    id: 'data-volume',
    title: 'Data used by pictures',
    equation: 'D = b · t / T',
    args: {
      bytes: { symbol: 'b', is: 'bytes of a picture', unit: 'B', above: 0 },
      interval: { symbol: 'T', is: 'interval between pictures', unit: 's', above: 0 },
      time: { symbol: 't', is: 'time streamed', unit: 's', from: 0 },
    },
    gives: { symbol: 'D', is: 'data used', unit: 'B' },
    validFor: 'even interval; one copy leaves the rover however many watch',
    leavesOut: 'headers and retries, 3 to 10 %',
    source: 'definition of a rate',
  },
  ({ bytes, interval, time }) => (bytes * time) / interval,
);

const MODIFIED = 'measured on four scenes, 640 wide, quality 60, libvips 8.18';

/** Factors on the bytes of a JPEG picture. */
export const JPEG_FACTORS = [
  { cause: 'sensor noise of 4 grey levels', factor: 1.08, source: MODIFIED },
  { cause: 'sensor noise of 8 grey levels', factor: 1.24, source: MODIFIED },
  { cause: 'sensor noise of 12 grey levels', factor: 1.48, source: MODIFIED },
  { cause: 'sideways blur of 4 pixels', factor: 0.84, source: MODIFIED },
  { cause: 'sideways blur of 8 pixels', factor: 0.71, source: MODIFIED },
  { cause: 'sideways blur of 16 pixels', factor: 0.59, source: MODIFIED },
  { cause: 'a quarter of the light', factor: 0.38, source: MODIFIED },
  { cause: 'grey instead of colour', factor: 0.94, source: MODIFIED },
] as const;
