/**
 * The sums of the picture, held to lens arithmetic with exact angles, to published sizes of pictures, and to budgets of
 * delay worked out by others.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, strayNames, type Values, withSums } from '../testing.ts';
import { SUBJECTS } from './ids.ts';
import { pictureSums } from './picture.ts';

const DEGREE = Math.PI / 180;
const KBIT = 1000 / 8;

const camera = (view: number, captured: number, rows: number, width: number, height: number): Values =>
  withSums(pictureSums, {
    'camera.fieldOfView': view * DEGREE,
    'camera.widthPixels': captured,
    'camera.heightPixels': rows,
    'picture.width': width,
    'picture.height': height,
  });

describe('the lens', () => {
  it('has the focal lengths in pixels that its angles give: 640 at 90° and 1280 px, 530.5 at 62.2° and 640 px', () => {
    expect(camera(90, 1280, 720, 1280, 720)['picture.focal']).toBeCloseTo(640, 6);
    expect(camera(62.2, 3280, 2460, 640, 480)['picture.focal']).toBeCloseTo(530.5, 1);
  });

  it('sees as far up as a maker prints for his camera: 62.4° by 48.8°', () => {
    // Sensor of 3.68 by 2.76 mm behind 3.04 mm; the maker prints 62.2 by 48.8 degrees.
    const seen = camera(62.37, 3280, 2460, 640, 480);
    expect(seen['picture.view']).toBeCloseTo(62.37 * DEGREE, 6);
    expect((seen['picture.viewUp'] as number) / DEGREE).toBeCloseTo(48.83, 1);
  });

  it('loses its sides to a narrower picture: of 90° a picture of 4 to 3 cut from 16 to 9 keeps 2 · atan(3/4)', () => {
    const seen = camera(90, 1920, 1080, 640, 480);
    expect(seen['picture.widest']).toBe(1440);
    expect(seen['picture.view']).toBeCloseTo(2 * Math.atan(3 / 4), 9);
    // 640 px across tan of half that angle on either side.
    expect(seen['picture.focal']).toBeCloseTo(320 / (3 / 4), 9);
  });

  it('shows no more by enlarging: a picture twice as wide as the camera gives has the same focal length and view', () => {
    const [full, enlarged] = [1280, 2560].map((width) => camera(90, 1280, 720, width, (width * 9) / 16));
    for (const id of ['picture.focal', 'picture.view', 'picture.viewUp', 'picture.widest'] as const) {
      expect(enlarged?.[id]).toBeCloseTo(full?.[id] as number, 9);
    }
  });

  it('keeps what a thing of the size of the whole view takes: the whole width', () => {
    const pixels = fc.integer({ min: 160, max: 3000 });
    fc.assert(
      fc.property(fc.double({ min: 20, max: 150, noNaN: true }), pixels, pixels, pixels, pixels, (v, w, h, a, b) => {
        const seen = camera(v, w, h, a, b);
        const real = Math.min(a, seen['picture.widest'] as number);
        const [focal, view, up] = (['picture.focal', 'picture.view', 'picture.viewUp'] as const).map(
          (id) => seen[id] as number,
        ) as [number, number, number];
        expect((focal * 2 * Math.tan(view / 2)) / real).toBeCloseTo(1, 9);
        expect((focal * 2 * Math.tan(up / 2)) / ((real * b) / a)).toBeCloseTo(1, 9);
        expect(view).toBeLessThanOrEqual(v * DEGREE + 1e-9);
      }),
    );
  });

  it('smears 6.70 px while turning by 60°/s during 10 ms with a focal length of 640 px', () => {
    const blur = evaluateSum(pictureSums['picture.blur'], {
      'picture.focal': 640,
      'want.speed': 30 * DEGREE,
      'want.cornerRadius': 0.5,
      'camera.exposure': 0.01,
    });
    expect(blur).toBeCloseTo(6.7, 2);
  });
});

describe('the bytes', () => {
  it('are those of a published photograph: 640 by 480 at 0.97 bits a pixel is 37 139 bytes', () => {
    // SIGGRAPH education slide set, one photograph at quality 50; 0.97 is rounded to 1 %.
    const bytes = evaluateSum(pictureSums['picture.bytes'], {
      'picture.width': 640,
      'picture.height': 480,
      'picture.bitsPerPixel': 0.97,
    });
    expect(bytes / 37139).toBeCloseTo(1, 2);
  });

  it('add up to 0.36 GB an hour at five pictures of 20 kB a second, to 2.16 GB in six hours, and to 64.8 GB in thirty days of six hours', () => {
    const hour = evaluateSum(pictureSums['picture.dataHour'], { 'picture.bytes': 20e3, 'picture.spacing': 0.2 });
    expect(hour).toBeCloseTo(0.36e9, 0);
    const day: Values = { 'picture.bytes': 20e3, 'picture.spacing': 0.2, 'picture.hours': 6 * 3600 };
    expect(evaluateSum(pictureSums['picture.dataDay'], day)).toBeCloseTo(2.16e9, 0);
    const kept = (days: number) =>
      evaluateSum(pictureSums['picture.keptBytes'], {
        'picture.bytes': 20e3,
        'picture.interval': 0.2,
        'picture.hours': 6 * 3600,
        'picture.kept': days,
      });
    expect(kept(30)).toBeCloseTo(64.8e9, 0);
    expect(kept(0)).toBe(0);
  });

  it('ask for 800 kbit/s at five pictures of 20 kB a second, and that may fill 70 % of the link', () => {
    const needed = evaluateSum(pictureSums['picture.rateNeeded'], { 'picture.bytes': 20e3, 'picture.interval': 0.2 });
    expect((needed * 0.7) / KBIT).toBeCloseTo(800, 6);
  });
});

describe('the time', () => {
  const send = (rate: number) =>
    evaluateSum(pictureSums['picture.sendTime'], { 'picture.bytes': 20e3, 'link.throughput': rate * KBIT });

  it('to send 20 kB is 625, 313, 160, 80 and 32 ms at 256, 512, 1000, 2000 and 5000 kbit/s', () => {
    const printed = [0.625, 0.313, 0.16, 0.08, 0.032];
    [256, 512, 1000, 2000, 5000].forEach((rate, i) => {
      expect(send(rate) / (printed[i] as number)).toBeCloseTo(1, 2);
    });
  });

  it('over a link that carries nothing is a long but finite one, and none is longer', () => {
    expect(send(0)).toBeGreaterThan(600);
    expect(send(1e-9)).toBeLessThanOrEqual(send(0));
  });

  it('between pictures is the time to send on an overloaded link: 3.75 a second where five are wanted', () => {
    // 20 kB every 200 ms into 600 kbit/s; simulated by events elsewhere, newest wins.
    const sendTime = send(600);
    const spacing = (interval: number) =>
      evaluateSum(pictureSums['picture.spacing'], { 'picture.interval': interval, 'picture.sendTime': sendTime });
    expect(1 / spacing(0.2)).toBeCloseTo(3.75, 6);
    expect(spacing(0.5)).toBe(0.5);
  });

  it('of a budget worked by hand is 265 ms: 33 + 20 + 160 + 30 + 5 + 5 + 12', () => {
    const age = evaluateSum(pictureSums['picture.age'], {
      'camera.lag': 0.033 + 0.02,
      'picture.sendTime': send(1000),
      'link.roundTrip': 0.06,
      'picture.screenLag': 0.005 + 0.012,
    });
    expect(age).toBeCloseTo(0.265, 9);
  });

  it('until the brake bites adds wait, person, way of the command and actuator to the age', () => {
    const delay = (spacing: number) =>
      evaluateSum(pictureSums['picture.delay'], {
        'picture.age': 0.25,
        'picture.spacing': spacing,
        'driving.reaction': 0.7,
        'link.roundTrip': 0.1,
        'driving.actuation': 0.05,
      });
    expect(delay(0)).toBeCloseTo(1.05, 9);
    expect(delay(0.2)).toBeCloseTo(1.25, 9);
  });

  it('bounds are those published: one second for steering on, five pictures a second for finding the way', () => {
    expect(evaluateSum(pictureSums['picture.ageMax'], {})).toBe(1);
    expect(evaluateSum(pictureSums['picture.spacingMax'], {})).toBeCloseTo(0.2, 12);
  });
});

it('every formula of the picture shows what it uses, and nothing else', () => {
  for (const id of SUBJECTS['picture and sight']) expect(strayNames(pictureSums[id]), id).toEqual([]);
});
