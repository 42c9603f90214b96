/** Sums of obstacles: what the nose, the tail and the belly clear, what step is climbed, how tightly it turns. */
import {
  breakoverAngle,
  overhangAngle,
  stepAllDriven,
  stepByOwnTorque,
  stepByPush,
  stepFrontAxle,
  stepRearAxle,
  turningRadius,
  twoAxleStepLimit,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type Ref, type Route, route, type Sum, type SumsOf, sumByRoutes } from '../sum.ts';
import {
  byAxleCount,
  eachAxle,
  names,
  perAxle,
  placesOf,
  positionsOf,
  sprungAxles,
  usePositions,
} from './axle-routes.ts';

type ObstacleId =
  | 'clear.approach'
  | 'clear.departure'
  | 'clear.breakover'
  | 'clear.noseHeight'
  | 'clear.tailHeight'
  | 'step.limit'
  | 'turn.radius';

const UPRIGHT = Math.PI / 2;
const severalAxles = ({ axles }: Layout) => axles.length > 1;
const mean = (values: readonly number[]) => values.reduce((total, value) => total + value, 0) / values.length;

/** Angle up to which a tyre meets a ramp before a hard point does; the tyre always comes first where it covers the point. */
function tyreFirst(radius: number, ahead: number, height: number): number {
  if (Math.hypot(ahead, height - radius) < radius) return UPRIGHT;
  return Math.min(UPRIGHT, overhangAngle({ radius, ahead, height }));
}

/** A hard point over the ground, less what the springs are pressed down by. */
const heightLeft = (title: string, height: Ref): Sum =>
  sumByRoutes(
    { title, unit: 'mm', caveat: 'With the travel of the worst spring taken off.' },
    route({
      name: 'springs pressed down',
      when: (layout) => sprungAxles(layout).length > 0,
      uses: { height, used: 'balance.springUsed' },
      formula: 'max(0, {height} − {used})',
      laws: [],
      value: ({ height, used }) => Math.max(0, height - used),
    }),
    route({
      name: 'no spring rate stated: taken as stiff',
      when: (layout) => sprungAxles(layout).length === 0,
      uses: { height },
      formula: '{height}',
      laws: [],
      value: ({ height }) => height,
    }),
  );

const overhang = (title: string, ahead: Ref, height: Ref): Sum =>
  sumByRoutes(
    { title, unit: '°', caveat: '90° where the tyre covers the hard point: then the tyre meets any ramp first.' },
    route({
      uses: { diameter: 'toy.wheelDiameter', ahead, height },
      formula:
        'atan(({height} − r) / {ahead}) + asin(r / √({ahead}² + ({height} − r)²)), r = {diameter} / 2, at most 90°',
      laws: [overhangAngle],
      value: ({ diameter, ahead, height }) => tyreFirst(diameter / 2, ahead, height),
    }),
  );

/** The drive of two axles, as the laws of steps name it. */
function driveOf({ axles }: Layout): 'all' | 'front' | 'rear' {
  if (axles.every(({ driven }) => driven)) return 'all';
  return axles[0]?.driven ? 'front' : 'rear';
}

/**
 * Step of one of several axles. Only the load on driven axles pulls: a driven axle is pushed by the other driven ones,
 * an undriven one by all of them.
 */
function stepOfAxle(i: number, loads: readonly number[], layout: Layout, radius: number, adhesion: number): number {
  const own = loads[i] as number;
  const pulling = loads.reduce((total, load, k) => (k !== i && layout.axles[k]?.driven ? total + load : total), 0);
  if (!layout.axles[i]?.driven) return stepByPush({ radius, push: adhesion * pulling, load: own });
  return pulling > 0
    ? stepAllDriven({ radius, adhesion, share: own / (own + pulling) })
    : stepByOwnTorque({ radius, adhesion });
}

const manyAxles: Route[] = byAxleCount((axles) =>
  route({
    name: axles.length === 1 ? 'the only axle' : `the worst of ${axles.length} axles`,
    uses: {
      diameter: 'toy.wheelDiameter',
      adhesion: 'ground.adhesionWorst',
      ...perAxle('load', axles, (axle) => `balance.load.${axle}`),
    },
    formula: `the least step of any axle of wheels {diameter} high at {adhesion}, pushed by the driven ones among ${names('load', axles)}`,
    laws: [stepAllDriven, stepByPush, stepByOwnTorque],
    value: (x, layout) => {
      const loads = eachAxle(x, 'load', axles);
      // An axle that carries nothing does not stop the vehicle.
      const standing = loads.flatMap((load, i) => (load > 0 ? [i] : []));
      return Math.min(...standing.map((i) => stepOfAxle(i, loads, layout, x.diameter / 2, x.adhesion)));
    },
  }),
);

/** Mean place of the steered axles to that of the others; where all are steered they turn against each other about the middle. */
function steeredBase(places: readonly number[], { axles }: Layout): number {
  const steered = places.filter((_, i) => axles[i]?.steered);
  const fixed = places.filter((_, i) => !axles[i]?.steered);
  return fixed.length === 0 ? ((places.at(-1) ?? 0) - (places[0] ?? 0)) / 2 : Math.abs(mean(steered) - mean(fixed));
}

export const obstacleSums: SumsOf<ObstacleId> = {
  'clear.approach': overhang('approach angle', 'toy.frontOverhang', 'clear.noseHeight'),
  'clear.departure': overhang('departure angle', 'toy.rearOverhang', 'clear.tailHeight'),
  'clear.breakover': sumByRoutes(
    {
      title: 'breakover angle',
      unit: '°',
      when: severalAxles,
      caveat: 'Between the two neighbouring axles farthest apart, lowest point taken midway; stiff springs.',
    },
    ...byAxleCount(
      (axles) =>
        route({
          uses: { diameter: 'toy.wheelDiameter', clearance: 'balance.clearance', ...usePositions(axles) },
          formula: `2 · (atan(({clearance} − r) / e) + asin(r / √(e² + ({clearance} − r)²))), r = {diameter} / 2, e = half the widest gap of ${placesOf(axles)}`,
          laws: [breakoverAngle],
          value: (x) => {
            const places = positionsOf(x, axles);
            const gap = Math.max(...places.slice(1).map((place, i) => place - (places[i] as number)));
            const radius = x.diameter / 2;
            const clearance = Math.max(0, x.clearance);
            if (Math.hypot(gap / 2, clearance - radius) < radius) return 2 * UPRIGHT;
            return breakoverAngle({ radius, wheelbase: gap, behindFront: gap / 2, clearance });
          },
        }),
      2,
    ),
  ),
  'clear.noseHeight': heightLeft('height of the foremost hard part, as it drives', 'toy.frontHeight'),
  'clear.tailHeight': heightLeft('height of the rearmost hard part, as it drives', 'toy.rearHeight'),
  'step.limit': sumByRoutes(
    {
      title: 'highest step it climbs on the most slippery ground',
      unit: 'mm',
      caveat:
        'Square edge, creeping, by grip alone: stiff wheels without springs; soft tyres and a run-up climb more. One wheel’s radius stands for a vertical face.',
    },
    route({
      name: 'the worse of two axles',
      when: ({ axles }) => axles.length === 2,
      uses: {
        diameter: 'toy.wheelDiameter',
        wheelbase: 'balance.wheelbase',
        centre: 'balance.centreBehind',
        height: 'balance.centreHeight',
        adhesion: 'ground.adhesionWorst',
      },
      formula:
        'the lesser step of front and rear axle, wheels {diameter} high and {wheelbase} apart, mass centre at {centre} and {height}, adhesion {adhesion}',
      laws: [stepFrontAxle, stepRearAxle, stepByPush, stepByOwnTorque],
      value: ({ diameter, wheelbase, centre, height, adhesion }, layout) =>
        twoAxleStepLimit({
          drive: driveOf(layout),
          radius: diameter / 2,
          wheelbase,
          cgBehindFront: centre,
          cgHeight: height,
          adhesion,
        }).step,
    }),
    ...manyAxles,
  ),
  'turn.radius': sumByRoutes(
    {
      title: 'radius of the tightest turn',
      unit: 'm',
      caveat:
        'At the middle of the axles that do not steer, at walking pace. 0 m: it turns on the spot, if the drive can.',
    },
    route({
      name: 'skid steering',
      when: ({ steering }) => steering === 'skid',
      uses: {},
      formula: '0',
      laws: [],
      value: () => 0,
    }),
    ...byAxleCount(
      (axles) =>
        route({
          uses: { angle: 'steer.angle', ...usePositions(axles) },
          formula: `L / tan {angle}, L from the steered to the other ones of the axles at ${placesOf(axles)}`,
          laws: [turningRadius],
          value: (x, layout) =>
            turningRadius({ wheelbase: steeredBase(positionsOf(x, axles), layout), steer: x.angle }),
        }),
      2,
    ),
  ),
};
