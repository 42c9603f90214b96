/** Sums of safety: what stops it, how it stands on a slope, what it carries into a knock. */
import { kineticEnergy } from '@longrein/laws';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { brakingSums } from './braking.ts';
import { holdingSums } from './holding.ts';
import type { SumIdOf } from './ids.ts';
import { named, practice } from './practice.ts';

/** The speed cap where none is set, if the drive is faster: a brisk walk [m/s]. */
const CAP = 1.5;
const WALKING_PACE = 1.4;

export const safetySums: SumsOf<SumIdOf<'safety'>> = {
  ...brakingSums,
  'safe.speedCap': sumByRoutes(
    { title: 'speed cap', unit: 'm/s' },
    route({ name: 'as set', uses: { set: 'set.speedCap' }, formula: '{set}', laws: [], value: ({ set }) => set }),
    route({
      name: 'none set: top speed, but no more than a brisk walk',
      uses: { top: 'drive.topSpeed' },
      takes: () => ({ walk: practice(CAP, 'm/s', 'a brisk walk') }),
      formula: 'min({top}, {walk})',
      laws: [],
      value: ({ top, walk }) => Math.min(top, walk),
    }),
    route({
      name: 'none set, and nothing known of the top speed: a brisk walk, held by the guard',
      uses: {},
      takes: () => ({ walk: practice(CAP, 'm/s', 'a brisk walk') }),
      formula: '{walk}',
      laws: [],
      value: ({ walk }) => walk,
    }),
  ),
  'safe.walkingPace': named('walking pace', 'm/s', WALKING_PACE, 'usual walking speed'),
  'safe.energy': sum(
    { title: 'kinetic energy at the speed cap', unit: 'J' },
    {
      uses: { mass: 'mass.total', cap: 'safe.speedCap' },
      formula: '½ · {mass} · {cap}²',
      laws: [kineticEnergy],
      value: ({ mass, cap }) => kineticEnergy({ mass, speed: cap }),
    },
  ),
  ...holdingSums,
};
