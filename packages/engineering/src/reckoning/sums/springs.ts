/** Sums of the springs: how far the added mass presses them down, what travel and clearance is left. */
import { springTravel } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { type AxleNumber, bySprungAxles, eachAxle, perAxle, sprungAxles } from './axle-routes.ts';

type SpringId = 'balance.springUsed' | 'balance.springLeft' | 'balance.springLeftNeeded' | 'balance.clearance';

/** Travel that must be left at rest [m]: springs that touch their stops at rest are no springs. */
const TRAVEL_LEFT = 0;

const sprung = (layout: Layout) => sprungAxles(layout).length > 0;

const useSprings = (axles: readonly AxleNumber[]) => ({
  ...perAxle('load', axles, (axle) => `balance.load.${axle}`),
  ...perAxle('toy', axles, (axle) => `balance.toyLoad.${axle}`),
  ...perAxle('rate', axles, (axle) => `axle.${axle}.springRate`),
});

const sinkOf = (axle: AxleNumber) => `({load${axle}} − {toy${axle}}) / {rate${axle}}`;

/** How far each of these axles sinks under what its load has grown by; negative where it has become lighter. */
function sinks(
  x: { readonly [K in `${'load' | 'toy' | 'rate'}${AxleNumber}`]: number },
  axles: readonly AxleNumber[],
): number[] {
  const loads = eachAxle(x, 'load', axles);
  const before = eachAxle(x, 'toy', axles);
  const rates = eachAxle(x, 'rate', axles);
  return loads.map((load, i) => (load - (before[i] as number)) / (rates[i] as number));
}

export const springSums: SumsOf<SpringId> = {
  'balance.springUsed': sumByRoutes(
    {
      title: 'spring travel used by the added mass, worst axle',
      unit: 'mm',
      when: sprung,
      caveat: 'Straight springs without friction; worn or progressive ones differ.',
    },
    ...bySprungAxles((axles) =>
      route({
        uses: useSprings(axles),
        formula: `the greatest of ${axles.map(sinkOf).join(', ')}`,
        laws: [springTravel],
        value: (x) => Math.max(...sinks(x, axles)),
      }),
    ),
  ),
  'balance.springLeft': sumByRoutes(
    { title: 'spring travel left, worst axle', unit: 'mm', when: sprung },
    ...bySprungAxles((axles) =>
      route({
        uses: { ...useSprings(axles), ...perAxle('travel', axles, (axle) => `axle.${axle}.springTravel`) },
        formula: `the least of ${axles.map((axle) => `{travel${axle}} − ${sinkOf(axle)}`).join(', ')}`,
        laws: [springTravel],
        value: (x) => {
          const used = sinks(x, axles);
          return Math.min(...eachAxle(x, 'travel', axles).map((travel, i) => travel - (used[i] as number)));
        },
      }),
    ),
  ),
  'balance.springLeftNeeded': sum(
    { title: 'spring travel that must be left at rest', unit: 'mm', when: sprung },
    {
      uses: {},
      takes: () => ({
        least: {
          value: TRAVEL_LEFT,
          unit: 'mm',
          is: 'short of the stops',
          source: 'a spring on its stop does not spring',
        },
      }),
      formula: '{least}',
      laws: [],
      value: ({ least }) => least,
    },
  ),
  'balance.clearance': sumByRoutes(
    { title: 'ground clearance under the belly, as it drives', unit: 'mm', caveat: 'Tyres that give cost more.' },
    route({
      name: 'springs pressed down',
      when: sprung,
      uses: { clearance: 'toy.clearance', used: 'balance.springUsed' },
      formula: '{clearance} − {used}',
      laws: [],
      value: ({ clearance, used }) => clearance - used,
    }),
    route({
      name: 'no spring rate stated: taken as stiff',
      when: (layout) => !sprung(layout),
      uses: { clearance: 'toy.clearance' },
      formula: '{clearance}',
      laws: [],
      value: ({ clearance }) => clearance,
    }),
  ),
};
