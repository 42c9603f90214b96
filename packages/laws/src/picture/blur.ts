/** What motion, haze and light take from a picture. */
import { law } from '../law.ts';
import { FOCAL_PIXELS } from './argument.ts';

const MOTION = 'Horn, Robot Vision, 1986, motion field of a moving camera';

const speed = { symbol: 'v', is: 'speed', unit: 'm/s', from: 0 } as const;
const exposure = { symbol: 'te', is: 'exposure time', unit: 's', above: 0 } as const;
const distance = { symbol: 'Z', is: 'distance along the axis', unit: 'm', above: 0 } as const;
const rate = { symbol: 'ω', is: 'rate of turn', unit: 'rad/s', from: 0 } as const;

/** Smear of a thing passed sideways. */
export const sidewaysBlur = law(
  {
    id: 'sideways-blur',
    title: 'Blur by sideways motion',
    equation: 'n = F · v · te / Z',
    args: { focalPixels: FOCAL_PIXELS, speed, exposure, distance },
    gives: { symbol: 'n', is: 'length of the smear', unit: 'px' },
    validFor: 'motion square to the axis',
    leavesOut: 'shake and turn',
    source: MOTION,
  },
  ({ focalPixels, speed, exposure, distance }) => (focalPixels * speed * exposure) / distance,
);

/** Smear of everything while the camera turns. */
export const turningBlur = law(
  {
    id: 'turning-blur',
    title: 'Blur by turning',
    equation: 'n = F · ω · te',
    args: { focalPixels: FOCAL_PIXELS, rate, exposure },
    gives: { symbol: 'n', is: 'length of the smear at the centre', unit: 'px' },
    validFor: 'centre of the picture; independent of distance',
    leavesOut: 'the edges of a wide picture, where it is longer',
    source: MOTION,
  },
  ({ focalPixels, rate, exposure }) => focalPixels * rate * exposure,
);

/** Smear away from the centre while the camera drives along its axis. */
export const forwardBlur = law(
  {
    id: 'forward-blur',
    title: 'Blur by driving ahead',
    equation: 'n = q · v · te / Z',
    args: {
      radius: { symbol: 'q', is: 'distance from the point driven at, on the picture', unit: 'px', from: 0 },
      speed,
      exposure,
      distance,
    },
    gives: { symbol: 'n', is: 'length of the smear', unit: 'px' },
    validFor: 'way during the exposure small beside the distance',
    leavesOut: 'shake and turn',
    source: MOTION,
  },
  ({ radius, speed, exposure, distance }) => (radius * speed * exposure) / distance,
);

/** Longest exposure that keeps the smear within bounds. */
export const exposureForBlur = law(
  {
    id: 'exposure-for-blur',
    title: 'Longest exposure for a wanted sharpness',
    equation: 'te = n · Z / (F · v)',
    args: {
      blur: { symbol: 'n', is: 'smear allowed', unit: 'px', above: 0 },
      distance,
      focalPixels: FOCAL_PIXELS,
      speed: { symbol: 'v', is: 'speed square to the axis', unit: 'm/s', above: 0 },
    },
    gives: { symbol: 'te', is: 'longest exposure', unit: 's' },
    validFor: 'motion square to the axis',
    leavesOut: 'shake and turn, which usually ask for less',
    source: MOTION,
  },
  ({ blur, distance, focalPixels, speed }) => (blur * distance) / (focalPixels * speed),
);

/** Slant of upright things while turning, because rows are read one after another. */
export const shutterSkew = law(
  {
    id: 'shutter-skew',
    title: 'Rolling-shutter skew',
    equation: 'n = F · ω · tr',
    args: {
      focalPixels: FOCAL_PIXELS,
      rate,
      readout: { symbol: 'tr', is: 'time to read all rows', unit: 's', from: 0 },
    },
    gives: { symbol: 'n', is: 'shift between the first and the last row', unit: 'px' },
    validFor: 'steady turn during the read-out, centre of the picture',
    leavesOut: 'vibration, which wobbles instead',
    source: 'Liang, Chang and Chen, Analysis and compensation of rolling shutter effect, IEEE TIP 17(8), 2008',
  },
  ({ focalPixels, rate, readout }) => focalPixels * rate * readout,
);

/** Contrast left of a thing seen through haze. */
export const hazeContrast = law(
  {
    id: 'haze-contrast',
    title: 'Contrast through haze',
    equation: 'C = C0 · 0.05^(Z / M)',
    args: {
      contrast: { symbol: 'C0', is: 'contrast close by', unit: '1', above: 0, to: 1 },
      distance: { symbol: 'Z', is: 'distance', unit: 'm', from: 0 },
      range: { symbol: 'M', is: 'meteorological optical range', unit: 'm', above: 0 },
    },
    gives: { symbol: 'C', is: 'contrast seen against the horizon', unit: '1' },
    validFor: 'even haze or fog in daylight, seen against the horizon',
    leavesOut: 'dirt and rain on the lens, glare',
    source: 'Koschmieder 1924; WMO-No. 8, Guide to Instruments, chapter 9, optical range at 5 % contrast, from memory',
  },
  ({ contrast, distance, range }) => contrast * 0.05 ** (distance / range),
);

/** Distance at which haze brings contrast down to what can still be made out. */
export const hazeSight = law(
  {
    id: 'haze-sight',
    title: 'Sight through haze',
    equation: 'Z = max(0, M · ln(C0 / Ct) / ln 20)',
    args: {
      contrast: { symbol: 'C0', is: 'contrast close by', unit: '1', above: 0, to: 1 },
      threshold: { symbol: 'Ct', is: 'least contrast made out', unit: '1', above: 0, below: 1 },
      range: { symbol: 'M', is: 'meteorological optical range', unit: 'm', above: 0 },
    },
    gives: { symbol: 'Z', is: 'farthest distance; zero when the contrast is too low close by', unit: 'm' },
    validFor: 'even haze or fog in daylight, seen against the horizon',
    leavesOut: 'dirt and rain on the lens, glare',
    source: 'Koschmieder 1924; WMO-No. 8, Guide to Instruments, chapter 9, from memory',
  },
  ({ contrast, threshold, range }) => Math.max(0, (range * Math.log(contrast / threshold)) / Math.log(20)),
);

/** Calibration constant of reflected-light metering [cd·s/m² at ISO 1]; ISO 2720:1974, usual choice. */
export const METER_CONSTANT = 12.5;

/** Exposure time that a scene asks for. */
export const exposureTime = law(
  {
    id: 'exposure-time',
    title: 'Exposure time from the light',
    equation: 'te = 12.5 · N² / (Lv · S)',
    args: {
      luminance: { symbol: 'Lv', is: 'mean luminance of the scene', unit: 'cd/m²', above: 0 },
      aperture: { symbol: 'N', is: 'f-number of the lens', unit: '1', above: 0 },
      speed: { symbol: 'S', is: 'speed setting, ISO arithmetic', unit: '1', above: 0 },
    },
    gives: { symbol: 'te', is: 'exposure time', unit: 's' },
    validFor: 'scene of average reflectance; gain beyond the sensor is paid in noise and in bytes',
    leavesOut: 'loss in the lens beyond the f-number, strong backlight',
    source: 'ISO 2720:1974, reflected-light meters, constant 12.5, from memory',
  },
  ({ luminance, aperture, speed }) => (METER_CONSTANT * aperture * aperture) / (luminance * speed),
);
