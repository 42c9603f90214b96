/**
 * Sums of soft ground. They inform and never decide: the laws were found with wheels of half a metre and more, and for
 * a toy's wheels they give an order of size.
 */
import { compactionResistance, SOILS, SOILS_SOURCE, type SoilName, soilModulus, wheelSinkage } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type Constant, route, type SumsOf, sumByRoutes } from '../sum.ts';
import { byAxleCount, eachAxle, names, perAxle } from './axle-routes.ts';

type SoftId = 'soft.sinkage' | 'soft.resistance';

/** The row of the soil table taken for each soft ground, the ground that resists most first. */
const SOIL_OF: readonly (readonly [surface: string, soil: SoilName])[] = [
  ['earth, wet', 'sandy loam 32'],
  ['sand, dry', 'dry sand'],
  ['sand, damp', 'sandy loam 15'],
];

const softest = ({ surfaces }: Layout) => SOIL_OF.find(([soft]) => surfaces.some(({ surface }) => surface === soft));
const anySoft = (layout: Layout) => softest(layout) !== undefined;

const CAVEAT =
  'An order of size, say ±50 %: a stiff wheel, the first in its rut, on the nearest row of the soil table (wet earth: the wettest sandy loam; damp sand: a moist sandy loam).';

type Row = Readonly<Record<'exponent' | 'cohesive' | 'frictional', Constant>>;

/** The figures of the soil, each saying which soil it is. */
function soilRow(layout: Layout): Row {
  const [surface, name] = softest(layout) ?? (SOIL_OF[0] as (typeof SOIL_OF)[number]);
  const soil = SOILS[name];
  const figure = (value: number, is: string): Constant => ({
    value,
    // The unit of a modulus depends on the exponent, so it is shown as a plain number in SI.
    unit: '1',
    is: `${is} of ‘${name}’, taken for ‘${surface}’`,
    source: SOILS_SOURCE,
  });
  return {
    exponent: figure(soil.exponent, 'sinkage exponent n'),
    cohesive: figure(soil.cohesive, 'cohesive modulus, N/m^(n+1),'),
    frictional: figure(soil.frictional, 'frictional modulus, N/m^(n+2),'),
  };
}

interface Ground {
  readonly diameter: number;
  readonly width: number;
  readonly exponent: number;
  readonly cohesive: number;
  readonly frictional: number;
}

const wheelOn = (x: Ground, load: number) => ({
  load,
  diameter: x.diameter,
  width: x.width,
  modulus: soilModulus({ cohesive: x.cohesive, frictional: x.frictional, width: x.width }),
  exponent: x.exponent,
});

const SINKAGE = '(3 · W / ((3 − {exponent}) · {width} · k · √{diameter}))^(2/(2 · {exponent} + 1))';
const MODULUS = 'k = {cohesive} / {width} + {frictional}';

export const softGroundSums: SumsOf<SoftId> = {
  'soft.sinkage': sumByRoutes(
    { title: 'depth the heaviest wheel sinks on the softest ground', unit: 'mm', when: anySoft, caveat: CAVEAT },
    ...byAxleCount((axles) =>
      route({
        uses: {
          diameter: 'toy.wheelDiameter',
          width: 'toy.wheelWidth',
          ...perAxle('load', axles, (axle) => `balance.load.${axle}`),
        },
        takes: soilRow,
        formula: `${SINKAGE}, ${MODULUS}, W the greatest wheel load of axles that carry ${names('load', axles)}`,
        laws: [wheelSinkage, soilModulus],
        value: (x, layout) => {
          const wheelLoads = eachAxle(x, 'load', axles).map((load, i) => load / (layout.axles[i]?.wheels ?? 1));
          return wheelSinkage(wheelOn(x, Math.max(...wheelLoads)));
        },
      }),
    ),
  ),
  'soft.resistance': sumByRoutes(
    { title: 'share of its weight the softest ground resists with', unit: '1', when: anySoft, caveat: CAVEAT },
    ...byAxleCount((axles) =>
      route({
        uses: {
          diameter: 'toy.wheelDiameter',
          width: 'toy.wheelWidth',
          ...perAxle('load', axles, (axle) => `balance.load.${axle}`),
        },
        takes: soilRow,
        formula: `{width} · k · z^({exponent} + 1) / ({exponent} + 1), summed over the wheels, over ${names('load', axles, ' + ')}, z = ${SINKAGE}, ${MODULUS}, W the load of the wheel`,
        laws: [compactionResistance, soilModulus],
        value: (x, layout) => {
          const loads = eachAxle(x, 'load', axles);
          const resistances = loads.map((load, i) => {
            const wheels = layout.axles[i]?.wheels ?? 1;
            return load > 0 ? wheels * compactionResistance(wheelOn(x, load / wheels)) : 0;
          });
          return resistances.reduce((a, b) => a + b, 0) / loads.reduce((a, b) => a + b, 0);
        },
      }),
    ),
  ),
};
