/** Sums of the axle loads: how the weight stands on the axles, before and after the conversion. */
import { frontAxleLoad, GRAVITY, rearAxleLoad } from '@longrein/laws';
import { type Ref, type Route, route, type Sum, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { allSprung, bySprings, leverLoad, springLoads } from './axle-loads.ts';
import { type AxleNumber, byAxleCount, eachAxle, names, perAxle, positionsOf, usePositions } from './axle-routes.ts';
import { named } from './practice.ts';

type LoadId =
  | `balance.toyLoad.${AxleNumber}`
  | `balance.load.${AxleNumber}`
  | 'balance.loadGrowth'
  | 'balance.growthMax'
  | 'balance.crestGrowth'
  | 'balance.crestGrowthMax'
  | 'balance.drivenShare'
  | 'balance.drivenNeeded';

/** Axles, bearings and tyres of toys bear about half as much again; common practice, no source. */
const GROWTH_MAX = 1.5;
/** An inner axle on a crest may carry about twice its usual load for a moment; common practice, no source. */
const CREST_GROWTH_MAX = 2;
const sumOf = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

const CAVEAT = 'Standing on the level. On a crest or in a dip several sprung axles share the load quite differently.';

const oneAxle = (mass: Ref): Route =>
  route({
    name: 'the only axle',
    when: ({ axles }) => axles.length === 1,
    uses: { mass },
    formula: '{mass} · g',
    laws: [],
    value: ({ mass }) => mass * GRAVITY,
  });

function twoAxles(axle: AxleNumber, mass: Ref, centre: Ref): Route {
  return route({
    name: 'two axles, by the lever',
    when: ({ axles }) => axles.length === 2,
    uses: { mass, centre, wheelbase: 'balance.wheelbase' },
    formula: axle === 1 ? '{mass} · g · ({wheelbase} − {centre}) / {wheelbase}' : '{mass} · g · {centre} / {wheelbase}',
    laws: [axle === 1 ? frontAxleLoad : rearAxleLoad],
    value: ({ mass, centre, wheelbase }) => leverLoad(axle, mass, wheelbase, centre),
  });
}

const toyLoad = (axle: AxleNumber): Sum =>
  sumByRoutes(
    {
      title: `weight on axle ${axle}, toy as it came`,
      unit: 'N',
      when: ({ axles }) => axles.length >= axle,
      caveat: CAVEAT,
    },
    ...(axle === 1 ? [oneAxle('toy.mass')] : []),
    ...(axle <= 2 ? [twoAxles(axle, 'toy.mass', 'balance.toyCentreBehind')] : []),
    route({
      name: 'as weighed',
      when: ({ axles }) => axles.length > 2,
      uses: { weighed: `axle.${axle}.load` as Ref },
      formula: '{weighed} · g',
      laws: [],
      value: ({ weighed }) => weighed * GRAVITY,
    }),
    ...bySprings((axles, springs) =>
      route({
        uses: {
          mass: 'toy.mass',
          centre: 'balance.toyCentreBehind',
          ...usePositions(axles),
          ...springs.uses,
        },
        formula: `load of axle ${axle} under {mass} · g at {centre} on ${springs.formula}`,
        laws: springs.laws,
        value: (x) => springLoads(positionsOf(x, axles), springs.rates(x), x.mass, x.centre)[axle - 1] ?? 0,
      }),
    ),
  );

const load = (axle: AxleNumber): Sum =>
  sumByRoutes(
    {
      title: `weight on axle ${axle}, as it drives`,
      unit: 'N',
      when: ({ axles }) => axles.length >= axle,
      caveat: CAVEAT,
    },
    ...(axle === 1 ? [oneAxle('mass.total')] : []),
    ...(axle <= 2 ? [twoAxles(axle, 'mass.total', 'balance.centreBehind')] : []),
    ...bySprings((axles, springs) =>
      route({
        uses: {
          before: `balance.toyLoad.${axle}` as Ref,
          total: 'mass.total',
          centre: 'balance.centreBehind',
          toy: 'toy.mass',
          toyCentre: 'balance.toyCentreBehind',
          ...usePositions(axles),
          ...springs.uses,
        },
        // What was weighed stays in it: only the change is shared out by the springs.
        formula: `{before} + load of axle ${axle} under {total} · g at {centre} − the same under {toy} · g at {toyCentre}, on ${springs.formula}`,
        laws: springs.laws,
        value: (x) => {
          const places = positionsOf(x, axles);
          const rates = springs.rates(x);
          const now = springLoads(places, rates, x.total, x.centre)[axle - 1] ?? 0;
          const then = springLoads(places, rates, x.toy, x.toyCentre)[axle - 1] ?? 0;
          return Math.max(0, x.before + now - then);
        },
      }),
    ),
  );

/** Growth of an inner axle's load on a crest, for every inner axle the greatest. */
function crestGrowth(
  places: readonly number[],
  rates: readonly number[],
  x: { mass: number; centre: number; step: number },
) {
  const level = springLoads(places, rates, x.mass, x.centre);
  const inner = places.slice(1, -1).map((_, i) => i + 1);
  return Math.max(
    ...inner.map((axle) => {
      const crest = springLoads(places, rates, x.mass, x.centre, { axle, by: x.step });
      return (crest[axle] as number) / (level[axle] as number);
    }),
  );
}

export const loadSums: SumsOf<LoadId> = {
  'balance.toyLoad.1': toyLoad(1),
  'balance.toyLoad.2': toyLoad(2),
  'balance.toyLoad.3': toyLoad(3),
  'balance.toyLoad.4': toyLoad(4),
  'balance.load.1': load(1),
  'balance.load.2': load(2),
  'balance.load.3': load(3),
  'balance.load.4': load(4),
  'balance.loadGrowth': sumByRoutes(
    { title: 'growth of the axle load, worst axle, over the toy as it came', unit: '1' },
    ...byAxleCount((axles) =>
      route({
        uses: {
          ...perAxle('load', axles, (axle) => `balance.load.${axle}`),
          ...perAxle('toy', axles, (axle) => `balance.toyLoad.${axle}`),
        },
        formula: `the greatest of ${axles.map((axle) => `{load${axle}} / {toy${axle}}`).join(', ')}`,
        laws: [],
        value: (x) => {
          const before = eachAxle(x, 'toy', axles);
          return Math.max(...eachAxle(x, 'load', axles).map((now, i) => now / (before[i] as number)));
        },
      }),
    ),
  ),
  'balance.growthMax': named('growth of an axle load that toys bear', '1', GROWTH_MAX, 'half as much again'),
  'balance.crestGrowth': sumByRoutes(
    {
      title: 'growth of an inner axle’s load on a crest as high as the highest step',
      unit: '1',
      when: (layout) => layout.axles.length > 2 && allSprung(layout),
      caveat: 'Both wheels of the axle on the crest, the others on the level; axles that hang carry nothing.',
    },
    ...bySprings((axles, springs) =>
      route({
        uses: {
          mass: 'mass.total',
          centre: 'balance.centreBehind',
          step: 'want.step',
          ...usePositions(axles),
          ...springs.uses,
        },
        formula: `load of an inner axle raised by {step}, over its load on the level, under {mass} · g at {centre} on ${springs.formula}`,
        laws: springs.laws,
        value: (x) => crestGrowth(positionsOf(x, axles), springs.rates(x), x),
      }),
    ),
  ),
  'balance.crestGrowthMax': named('growth of an axle load on a crest that toys bear', '1', CREST_GROWTH_MAX, 'twice'),
  'balance.drivenShare': sumByRoutes(
    { title: 'share of the weight on driven axles', unit: '%' },
    ...byAxleCount((axles) =>
      route({
        uses: perAxle('load', axles, (axle) => `balance.load.${axle}`),
        formula: `the driven ones among ${names('load', axles)}, over ${names('load', axles, ' + ')}`,
        laws: [],
        value: (x, layout) => {
          const loads = eachAxle(x, 'load', axles);
          return sumOf(loads.filter((_, i) => layout.axles[i]?.driven)) / sumOf(loads);
        },
      }),
    ),
  ),
  'balance.drivenNeeded': sum(
    {
      title: 'share of the weight that must stand on driven axles for the steepest slope',
      unit: '%',
      caveat: 'On the most slippery ground, without the shift of weight that the slope brings.',
    },
    {
      uses: { slope: 'want.slope', rolling: 'ground.rollingWorst', adhesion: 'ground.adhesionWorst' },
      formula: '(tan {slope} + {rolling}) / {adhesion}',
      laws: [],
      value: ({ slope, rolling, adhesion }) => (Math.tan(slope) + rolling) / adhesion,
    },
  ),
};
