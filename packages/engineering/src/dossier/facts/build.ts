/** Quantities of the conversion itself: where parts sit, wiring runs, settings. */
import { assume, facts, type QuantityFacts } from './facts.ts';

/** Parts that have a place in the vehicle. */
export const PLACED = [
  'pack',
  'converter',
  'bridge',
  'computer',
  'camera',
  'modem',
  'aerial',
  'servo',
  'enclosure',
  'fixings',
  'payload',
] as const;
export type Placed = (typeof PLACED)[number];

type PlaceId = `at.${Placed}.behind` | `at.${Placed}.height`;

const places = Object.fromEntries(
  PLACED.flatMap((part): [string, QuantityFacts][] => [
    [
      `at.${part}.behind`,
      {
        title: `distance of the ${part} behind the front axle`,
        unit: 'mm',
        is: 'doubt',
        from: -1,
        to: 3,
        how: 'Tape, to the middle of the part. Ahead of the front axle is negative.',
      },
    ],
    [
      `at.${part}.height`,
      {
        title: `height of the ${part} over the ground`,
        unit: 'mm',
        is: 'doubt',
        from: 0,
        to: 3,
        how: 'Tape, to the middle of the part.',
      },
    ],
  ]),
) as Record<PlaceId, QuantityFacts>;

/** Wiring runs: pack to the branching point, to the bridge, to a motor, to the converter, converter to board. */
export const RUNS = ['pack', 'bridge', 'motor', 'converter', 'board'] as const;
export type Run = (typeof RUNS)[number];

type RunId = `run.${Run}.length`;

const runs = Object.fromEntries(
  RUNS.map((run): [string, QuantityFacts] => [
    `run.${run}.length`,
    {
      title: `one-way length of the ${run} run`,
      unit: 'm',
      is: 'doubt',
      above: 0.001,
      to: 10,
      how: 'Tape, along the wire, one way; the return is counted by the sum.',
      otherwise: assume('0.2 m ± 30 %', 'run not measured'),
    },
  ]),
) as Record<RunId, QuantityFacts>;

export const buildFacts = {
  ...places,
  ...runs,
  ...facts({
    'fixings.mass': {
      title: 'mass of mast, mounts, screws and printed parts',
      unit: 'g',
      is: 'doubt',
      from: 0,
      to: 20,
      how: 'Kitchen scale.',
      otherwise: assume('60 g ± 40 %', 'mounts not weighed'),
    },
    'camera.pitch': {
      title: 'pitch of the camera below the horizon',
      unit: '°',
      is: 'setting',
      from: -0.5,
      to: 1.4,
      how: 'Protractor or the level of a phone.',
      otherwise: assume('8 °', 'set so that the near ground is seen'),
    },
    'set.dutyCeiling': {
      title: 'duty ceiling of the drive',
      unit: '%',
      is: 'setting',
      above: 0.01,
      to: 1,
      how: 'A setting; left out, the reckoning computes the greatest that is safe.',
    },
    'set.frequency': {
      title: 'pulse-width frequency of the bridge',
      unit: 'kHz',
      is: 'setting',
      above: 10,
      to: 500000,
      how: 'A setting of the drive.',
      otherwise: (t) =>
        t.bridge === 'bipolar'
          ? assume('2 kHz', 'usual with a bipolar bridge (common practice, no source)')
          : assume('20 kHz', 'above hearing, usual with a MOSFET bridge (common practice, no source)'),
    },
    'set.stallTime': {
      title: 'time after which the drive cuts a stall',
      unit: 's',
      is: 'setting',
      above: 0.01,
      to: 600,
      how: 'A setting of the guard.',
      otherwise: assume('2 s', 'default of the guard'),
    },
    'set.holdDuty': {
      title: 'duty that holds the on/off steering at its stop',
      unit: '%',
      is: 'setting',
      above: 0.01,
      to: 1,
      how: 'A setting of the guard.',
      otherwise: assume('40 %', 'default of the guard: full drive to get there, then just enough to hold'),
    },
    'set.holdTime': {
      title: 'longest time the steering is held',
      unit: 's',
      is: 'setting',
      above: 0.05,
      to: 600,
      how: 'A setting of the guard.',
      otherwise: assume('5 s', 'default of the guard'),
    },
    'set.reserve': {
      title: 'charge kept in reserve',
      unit: '%',
      is: 'setting',
      from: 0,
      below: 0.9,
      how: 'A setting; 20 % is common practice.',
      otherwise: assume('20 %', 'common practice, no source'),
    },
    'set.speedCap': {
      title: 'speed cap of the place',
      unit: 'm/s',
      is: 'setting',
      above: 0.02,
      to: 15,
      how: 'A setting of the place; it holds whatever the picture.',
    },
  }),
};
