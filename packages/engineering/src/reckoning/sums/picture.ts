/** Sums of the picture: what it weighs, how old it gets, and what is kept of it. */
import { dataVolume, pictureAge, pictureInterval, sightDelay, timeOnAir } from '@longrein/laws';
import { type SumsOf, sum } from '../sum.ts';
import type { SumIdOf } from './ids.ts';
import { type LensId, lensSums } from './lens.ts';
import { type SightId, sightSums } from './sight.ts';

type PictureId = Exclude<SumIdOf<'picture and sight'>, SightId>;
type KeptId = 'picture.dataHour' | 'picture.dataDay' | 'picture.keptBytes';

/** Bits in a byte: rates are in bytes a second inside, the laws take bits. */
const BITS = 8;

/** Where the link carries nothing at all, an hour stands for 'no picture', so that what follows stays a number [s]. */
const NO_PICTURE = 3600;

type TimeId = Exclude<PictureId, LensId | KeptId>;

const times: SumsOf<TimeId> = {
  'picture.bytes': sum(
    {
      title: 'bytes of a picture',
      unit: 'kB',
      caveat: 'Scene, light and noise change it by a factor of two and more: the picture controller holds the bytes.',
    },
    {
      uses: { width: 'picture.width', height: 'picture.height', bits: 'picture.bitsPerPixel' },
      formula: '{width} · {height} · {bits} / 8',
      laws: [],
      value: ({ width, height, bits }) => (width * height * bits) / BITS,
    },
  ),
  'picture.rateNeeded': sum(
    {
      title: 'rate the link must have for the pictures',
      unit: 'Mbit/s',
      caveat: 'With the head-room that keeps pictures from queueing; while they arrive, the link is busy only in part.',
    },
    {
      uses: { bytes: 'picture.bytes', interval: 'picture.interval' },
      takes: () => ({
        share: {
          value: 0.7,
          unit: '1',
          is: 'greatest share of the interval that sending may take before queues build',
          source: 'common practice, no source',
        },
      }),
      formula: '{bytes} / ({share} · {interval})',
      laws: [pictureInterval],
      value: ({ bytes, share, interval }) => bytes / (share * interval),
    },
  ),
  'picture.sendTime': sum(
    {
      title: 'time to send a picture',
      unit: 'ms',
      caveat: 'At the greatest distance, nothing queued before it. An hour stands for a link that carries nothing.',
    },
    {
      uses: { bytes: 'picture.bytes', rate: 'link.throughput' },
      formula: '{bytes} / {rate}',
      laws: [timeOnAir],
      value: ({ bytes, rate }) =>
        rate === 0 ? NO_PICTURE : Math.min(NO_PICTURE, timeOnAir({ bytes, rate: rate * BITS })),
    },
  ),
  'picture.spacing': sum(
    { title: 'time between pictures that arrive', unit: 'ms' },
    {
      uses: { interval: 'picture.interval', send: 'picture.sendTime' },
      formula: 'greater of {interval} and {send}',
      laws: [],
      value: ({ interval, send }) => Math.max(interval, send),
    },
  ),
  'picture.spacingMax': sum(
    { title: 'longest spacing of pictures with which a rover finds its way', unit: 'ms' },
    {
      uses: {},
      takes: () => ({
        rate: {
          value: 5,
          unit: 'Hz',
          is: 'least pictures a second at which operators still found targets, rover at up to 1 m/s',
          source: 'Mellinkoff et al., Acta Astronautica, arXiv 1706.03752',
        },
      }),
      formula: '1 / {rate}',
      laws: [],
      value: ({ rate }) => 1 / rate,
    },
  ),
  'picture.age': sum(
    {
      title: 'age of a picture when it is shown',
      unit: 'ms',
      caveat: 'With one picture in flight and nothing queued. Hidden buffers can add seconds.',
    },
    {
      uses: {
        lag: 'camera.lag',
        send: 'picture.sendTime',
        roundTrip: 'link.roundTrip',
        screen: 'picture.screenLag',
      },
      takes: () => ({
        relay: {
          value: 0.005,
          unit: 's',
          is: 'time in the relay between vehicle and driver',
          source: 'common practice, no source',
        },
      }),
      formula: '{lag} + {send} + {roundTrip} / 2 + {relay} + {screen}',
      laws: [pictureAge],
      value: ({ lag, send, roundTrip, relay, screen }) =>
        pictureAge({ exposure: lag, encode: 0, air: send, propagation: roundTrip / 2, relay, decode: 0, screen }),
    },
  ),
  'picture.ageMax': sum(
    { title: 'age up to which people steer on and do not stop to look', unit: 'ms' },
    {
      uses: {},
      takes: () => ({
        bound: {
          value: 1,
          unit: 's',
          is: 'delay from which operators move a step, then wait and look',
          source:
            'Ferrell, Remote manipulation with transmission delay, IEEE Trans. HFE 6, 1965; the figure from memory',
        },
      }),
      formula: '{bound}',
      laws: [],
      value: ({ bound }) => bound,
    },
  ),
  'picture.delay': sum(
    {
      title: 'time from exposure until the brake bites',
      unit: 's',
      caveat: 'What matters may come into view just after an exposure, so the whole wait for the next one counts.',
    },
    {
      uses: {
        age: 'picture.age',
        spacing: 'picture.spacing',
        reaction: 'driving.reaction',
        roundTrip: 'link.roundTrip',
        actuation: 'driving.actuation',
      },
      formula: '{age} + {spacing} + {reaction} + {roundTrip} / 2 + {actuation}',
      laws: [sightDelay],
      value: ({ age, spacing, reaction, roundTrip, actuation }) =>
        sightDelay({ painted: age, wait: spacing, reaction, command: roundTrip / 2, actuation }),
    },
  ),
};

const kept: SumsOf<KeptId> = {
  'picture.dataHour': sum(
    {
      title: 'data sent in an hour of pictures',
      unit: 'GB',
      caveat: 'Headers and repeats add 3 to 10 %. A relay keeps it the same however many watch.',
    },
    {
      uses: { bytes: 'picture.bytes', spacing: 'picture.spacing' },
      takes: () => ({ hour: { value: 3600, unit: 's', is: 'an hour', source: 'definition of the hour' } }),
      formula: '{bytes} · {hour} / {spacing}',
      laws: [dataVolume],
      value: ({ bytes, spacing, hour }) => dataVolume({ bytes, interval: spacing, time: hour }),
    },
  ),
  'picture.dataDay': sum(
    {
      title: 'data sent in a day of pictures',
      unit: 'GB',
      when: (_, stated) => stated('link.dataDay'),
      caveat: 'As if somebody watched all the time it is open. Headers and repeats add 3 to 10 %.',
    },
    {
      uses: { bytes: 'picture.bytes', spacing: 'picture.spacing', hours: 'picture.hours' },
      formula: '{bytes} · {hours} / {spacing}',
      laws: [dataVolume],
      value: ({ bytes, spacing, hours }) => dataVolume({ bytes, interval: spacing, time: hours }),
    },
  ),
  'picture.keptBytes': sum(
    {
      title: 'space that kept pictures take',
      unit: 'GB',
      caveat: 'Every picture made at the wanted interval; the file system takes 3 to 7 % more.',
    },
    {
      uses: {
        bytes: 'picture.bytes',
        interval: 'picture.interval',
        hours: 'picture.hours',
        days: 'picture.kept',
      },
      formula: '{bytes} · {hours} / {interval} · {days}',
      laws: [dataVolume],
      value: ({ bytes, interval, hours, days }) => dataVolume({ bytes, interval, time: hours }) * days,
    },
  ),
};

export const pictureSums: SumsOf<SumIdOf<'picture and sight'>> = { ...lensSums, ...times, ...sightSums, ...kept };
