/** Sums of balance: wheelbase, track and the mass centre of the toy and of the vehicle made of it. */
import { cgFromAxleWeights } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type Ref, route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import {
  type AxleNumber,
  byAxleCount,
  eachAxle,
  names,
  perAxle,
  placesOf,
  positionsOf,
  usePositions,
} from './axle-routes.ts';
import type { SumIdOf } from './ids.ts';
import { loadSums } from './loads.ts';
import { springSums } from './springs.ts';

type BalanceId = Extract<SumIdOf<'mass and balance'>, `balance.${string}`>;

const severalAxles = ({ axles }: Layout) => axles.length > 1;
const sumOf = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

export const balanceSums: SumsOf<BalanceId> = {
  'balance.wheelbase': sumByRoutes(
    { title: 'wheelbase, front axle to last axle', unit: 'mm', when: severalAxles },
    ...byAxleCount((axles) => {
      const last = axles.at(-1) as AxleNumber;
      return route({
        uses: { last: `axle.${last}.position` as Ref },
        formula: '{last}',
        laws: [],
        value: ({ last }) => last,
      });
    }, 2),
  ),
  'balance.track': sumByRoutes(
    {
      title: 'narrowest track',
      unit: 'mm',
      when: ({ axles }) => axles.some(({ wheels }) => wheels > 1),
      caveat: 'An axle with a single wheel has no track and does not count.',
    },
    ...byAxleCount((axles) =>
      route({
        uses: perAxle('track', axles, (axle) => `axle.${axle}.track`),
        formula: `the least of ${names('track', axles)} with two wheels`,
        laws: [],
        value: (x, layout) =>
          Math.min(...eachAxle(x, 'track', axles).filter((_, i) => (layout.axles[i]?.wheels ?? 0) > 1)),
      }),
    ),
  ),
  'balance.toyCentreBehind': sumByRoutes(
    { title: 'mass centre behind the front axle, toy as it came', unit: 'mm', when: severalAxles },
    route({
      name: 'as stated',
      uses: { stated: 'toy.centreBehind' },
      formula: '{stated}',
      laws: [],
      value: ({ stated }) => stated,
    }),
    route({
      name: 'from two axle weights',
      when: ({ axles }) => axles.length === 2,
      uses: { wheelbase: 'balance.wheelbase', front: 'axle.1.load', rear: 'axle.2.load' },
      formula: '{wheelbase} · {rear} / ({front} + {rear})',
      laws: [cgFromAxleWeights],
      value: ({ wheelbase, front, rear }) => cgFromAxleWeights({ wheelbase, front, rear }),
    }),
    ...byAxleCount(
      (axles) =>
        route({
          name: `from ${axles.length} axle weights`,
          uses: { ...perAxle('load', axles, (axle) => `axle.${axle}.load`), ...usePositions(axles) },
          formula: `mean of the places ${placesOf(axles)}, weighted with ${names('load', axles)}`,
          laws: [],
          value: (x) => {
            const loads = eachAxle(x, 'load', axles);
            const places = positionsOf(x, axles);
            return sumOf(loads.map((load, i) => load * (places[i] as number))) / sumOf(loads);
          },
        }),
      3,
    ),
  ),
  'balance.centreBehind': sum(
    {
      title: 'mass centre behind the front axle, as it drives',
      unit: 'mm',
      when: severalAxles,
      caveat: 'What was taken out is counted at the mass centre of the toy.',
    },
    {
      uses: {
        toy: 'toy.mass',
        removed: 'toy.removed',
        centre: 'balance.toyCentreBehind',
        moment: 'mass.momentBehind',
        total: 'mass.total',
      },
      formula: '(({toy} − {removed}) · {centre} + {moment}) / {total}',
      laws: [],
      value: ({ toy, removed, centre, moment, total }) => ((toy - removed) * centre + moment) / total,
    },
  ),
  'balance.centreHeight': sum(
    {
      title: 'height of the mass centre, as it drives',
      unit: 'mm',
      caveat: 'What was taken out is counted at the mass centre of the toy; sunk springs would lower it a little.',
    },
    {
      uses: {
        toy: 'toy.mass',
        removed: 'toy.removed',
        centre: 'toy.centreHeight',
        moment: 'mass.momentHeight',
        total: 'mass.total',
      },
      formula: '(({toy} − {removed}) · {centre} + {moment}) / {total}',
      laws: [],
      value: ({ toy, removed, centre, moment, total }) => ((toy - removed) * centre + moment) / total,
    },
  ),
  ...loadSums,
  ...springSums,
};
