/** Sums of the picture: how wide and how fine it is, and how motion smears it. */
import { focalPixels, turningBlur, viewFromFocalPixels } from '@longrein/laws';
import { type SumsOf, sum } from '../sum.ts';

export type LensId = 'picture.widest' | 'picture.focal' | 'picture.view' | 'picture.viewUp' | 'picture.blur';

/** Width in pixels that the camera really gives: enlarging adds pixels, but nothing to see. */
const shown = (width: number, widest: number): number => Math.min(width, widest);

export const lensSums: SumsOf<LensId> = {
  'picture.widest': sum(
    {
      title: 'widest picture of these proportions the camera gives',
      unit: 'px',
      caveat: 'A wider one is enlarged: it weighs more and shows no more.',
    },
    {
      uses: {
        captured: 'camera.widthPixels',
        rows: 'camera.heightPixels',
        width: 'picture.width',
        height: 'picture.height',
      },
      formula: 'lesser of {captured} and {rows} · {width} / {height}',
      laws: [],
      value: ({ captured, rows, width, height }) => Math.min(captured, (rows * width) / height),
    },
  ),
  'picture.focal': sum(
    {
      title: 'focal length in pixels of the picture sent',
      unit: 'px',
      caveat: 'A lens without distortion; what the camera has beyond the proportions of the picture is cut off.',
    },
    {
      uses: {
        view: 'camera.fieldOfView',
        captured: 'camera.widthPixels',
        rows: 'camera.heightPixels',
        width: 'picture.width',
        height: 'picture.height',
        widest: 'picture.widest',
      },
      formula:
        'with the lesser of {width} and {widest} as the width, and the height in the proportion {height} / {width}: {captured} / (2 · tan({view} / 2)) · the greater of width / {captured} and height / {rows}',
      laws: [focalPixels],
      value: ({ view, captured, rows, width, height, widest }) => {
        const across = shown(width, widest);
        const up = (across * height) / width;
        return focalPixels({ pixels: captured, view }) * Math.max(across / captured, up / rows);
      },
    },
  ),
  'picture.view': sum(
    { title: 'horizontal view of the picture sent', unit: '°' },
    {
      uses: { width: 'picture.width', widest: 'picture.widest', focal: 'picture.focal' },
      formula: '2 · atan(lesser of {width} and {widest} / (2 · {focal}))',
      laws: [viewFromFocalPixels],
      value: ({ width, widest, focal }) => viewFromFocalPixels({ pixels: shown(width, widest), focalPixels: focal }),
    },
  ),
  'picture.viewUp': sum(
    { title: 'vertical view of the picture sent', unit: '°' },
    {
      uses: { width: 'picture.width', height: 'picture.height', widest: 'picture.widest', focal: 'picture.focal' },
      formula: '2 · atan(lesser of {width} and {widest} · {height} / {width} / (2 · {focal}))',
      laws: [viewFromFocalPixels],
      value: ({ width, height, widest, focal }) =>
        viewFromFocalPixels({ pixels: (shown(width, widest) * height) / width, focalPixels: focal }),
    },
  ),
  'picture.blur': sum(
    {
      title: 'smear of the picture in the tightest turn at the usual speed',
      unit: 'px',
      caveat: 'Shake on rough ground comes on top.',
    },
    {
      uses: {
        focal: 'picture.focal',
        speed: 'want.speed',
        radius: 'want.cornerRadius',
        exposure: 'camera.exposure',
      },
      formula: '{focal} · {speed} / {radius} · {exposure}',
      laws: [turningBlur],
      value: ({ focal, speed, radius, exposure }) =>
        turningBlur({ focalPixels: focal, rate: speed / radius, exposure }),
    },
  ),
};
