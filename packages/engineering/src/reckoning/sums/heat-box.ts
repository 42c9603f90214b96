/** Sums of the heat of the electronics: what is made in the box, what the sun adds, how warm wall, air and board get. */
import {
  enclosureAirTemperature,
  enclosureHeat,
  enclosureWallTemperature,
  PLASTIC_FACTS,
  partTemperature,
  printedPartLimit,
  solarGain,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type Constant, route, type SumsOf, sum, sumByRoutes } from '../sum.ts';

type BoxHeatId =
  | 'heat.boxPower'
  | 'heat.sunPower'
  | 'heat.boxWall'
  | 'heat.wallMost'
  | 'heat.boxAir'
  | 'heat.localAir'
  | 'heat.board';

const enclosed = ({ enclosure }: Layout): boolean => enclosure;

/** Share of the bottom that air can reach: the box sits on the chassis. Common practice, no source. */
const FREE_BOTTOM = 0;
/** A wall this far above the air is beyond any use: figures end here [K]. The law of the wall ends just above. */
const HOTTEST_RISE = 150;

const freeBottom = (): Constant => ({
  value: FREE_BOTTOM,
  unit: '1',
  is: 'share of the bottom that air can reach',
  source: 'common practice, no source: the box sits on the chassis',
});

const BOX = {
  length: 'enclosure.length',
  width: 'enclosure.width',
  height: 'enclosure.height',
  emissivity: 'enclosure.emissivity',
} as const;

type BoxValues = Readonly<Record<keyof typeof BOX | 'bottom' | 'air', number>>;

/** Wall temperature at a power; ends a fixed rise above the air. */
function wallAt({ bottom, air, ...box }: BoxValues, power: number): number {
  const outside = { ...box, freeBottom: bottom, ambient: air };
  const hottest = air + HOTTEST_RISE;
  if (enclosureHeat({ ...outside, wall: hottest }) <= power) return hottest;
  return enclosureWallTemperature({ ...outside, power });
}

const ENDS = `Figures end at ${HOTTEST_RISE} K above the air.`;
const BOX_WORDS =
  'a box {length} × {width} × {height} of emissivity {emissivity}, {bottom} of its bottom free, in air at {air}';

export const boxHeatSums: SumsOf<BoxHeatId> = {
  'heat.boxPower': sum(
    {
      title: 'heat made in the enclosure',
      unit: 'W',
      caveat:
        'Board, camera and modem streaming, converter, and the bridge as on the steepest climb for ever: careful, as a box takes half an hour to warm.',
    },
    {
      uses: {
        load: 'supply.loadMean',
        converter: 'supply.heat',
        bridge: 'bridge.lossClimb',
        steering: 'bridge.lossSteer',
      },
      takes: (layout) => ({
        channels: { value: layout.channels, unit: '1', is: 'bridge channels in use', source: 'the bridge fitted' },
      }),
      formula: '{load} + {converter} + {channels} · {bridge} + {steering}',
      laws: [],
      value: ({ load, converter, bridge, steering, channels }) => load + converter + channels * bridge + steering,
    },
  ),
  'heat.sunPower': sum(
    {
      title: 'heat the enclosure takes from the sun',
      unit: 'W',
      when: enclosed,
      caveat: 'From the worst direction: the shadow of a box is greatest seen along its diagonal.',
    },
    {
      uses: {
        absorptivity: 'enclosure.absorptivity',
        sun: 'day.sun',
        length: 'enclosure.length',
        width: 'enclosure.width',
        height: 'enclosure.height',
      },
      formula: '{absorptivity} · {sun} · √(({length} · {width})² + ({length} · {height})² + ({width} · {height})²)',
      laws: [solarGain],
      value: ({ absorptivity, sun, length, width, height }) =>
        solarGain({
          absorptivity,
          irradiance: sun,
          area: Math.hypot(length * width, length * height, width * height),
        }),
    },
  ),
  'heat.boxWall': sum(
    {
      title: 'wall of the enclosure on the hottest day, in the sun',
      unit: '°C',
      when: enclosed,
      caveat: `Still air, closed box, mean of all walls; the side in the sun is hotter. ${ENDS}`,
    },
    {
      uses: { power: 'heat.boxPower', sun: 'heat.sunPower', air: 'day.hottest', ...BOX },
      takes: () => ({ bottom: freeBottom() }),
      formula: `wall at which ${BOX_WORDS} sheds {power} + {sun}`,
      laws: [enclosureWallTemperature, enclosureHeat],
      value: ({ power, sun, ...box }) => wallAt(box, power + sun),
    },
  ),
  'heat.wallMost': sum(
    {
      title: 'temperature a loaded part printed in PLA bears',
      unit: '°C',
      when: enclosed,
      caveat: 'PETG bears 18 K and ABS 41 K more.',
    },
    {
      uses: {},
      takes: () => ({
        limit: {
          value: printedPartLimit({ plastic: 'PLA' }),
          unit: '°C',
          is: 'glass transition of PLA less 10 K',
          source: PLASTIC_FACTS.PLA.source,
        },
      }),
      formula: '{limit}',
      laws: [printedPartLimit],
      value: ({ limit }) => limit,
    },
  ),
  'heat.boxAir': sum(
    {
      title: 'air in the enclosure on the hottest day',
      unit: '°C',
      when: enclosed,
      caveat:
        'The air is hotter than the wall by about as much again as the inner heat alone warms the wall; the sun warms the wall first, and through it the air.',
    },
    {
      uses: { wall: 'heat.boxWall', power: 'heat.boxPower', air: 'day.hottest', ...BOX },
      takes: () => ({ bottom: freeBottom() }),
      formula: `{wall} + 0.9 · (W − {air}), W = wall at which ${BOX_WORDS} sheds {power} alone`,
      laws: [enclosureAirTemperature, enclosureWallTemperature, enclosureHeat],
      value: ({ wall, power, ...box }) => {
        const shaded = wallAt(box, power);
        return wall + enclosureAirTemperature({ wall: shaded, ambient: box.air }) - shaded;
      },
    },
  ),
  'heat.localAir': sumByRoutes(
    { title: 'air around the electronics on the hottest day', unit: '°C' },
    route({
      name: 'in the enclosure',
      when: enclosed,
      uses: { air: 'heat.boxAir' },
      formula: '{air}',
      laws: [],
      value: ({ air }) => air,
    }),
    route({
      name: 'in the open',
      when: ({ enclosure }) => !enclosure,
      uses: { air: 'day.hottest' },
      formula: '{air}',
      laws: [],
      value: ({ air }) => air,
    }),
  ),
  'heat.board': sum(
    { title: 'computer board streaming, on the hottest day', unit: '°C', caveat: 'Steady; boards throttle by steps.' },
    {
      uses: { air: 'heat.localAir', power: 'computer.busyPower', toAir: 'computer.toAir' },
      formula: '{air} + {toAir} · {power}',
      laws: [partTemperature],
      value: ({ air, power, toAir }) => partTemperature({ surroundings: air, power, resistance: toAir }),
    },
  ),
};
