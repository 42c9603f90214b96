/** Sums of tipping over: on slopes, in turns, under the brakes. */
import {
  brakingTip,
  corneringSlideSpeed,
  corneringTipSpeed,
  GRAVITY,
  MOTION_PRACTICE,
  staticStabilityFactor,
  tipAcceleration,
  tipNoseDown,
  tipNoseUp,
  tipSide,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { route, type Sum, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { byAxleCount, eachAxle, names, perAxle, placesOf, positionsOf, usePositions } from './axle-routes.ts';
import type { SumIdOf } from './ids.ts';

type TipId = Extract<SumIdOf<'stability and obstacles'>, `tip.${string}`>;

/** The laws of turning are given for factors up to this; a flatter vehicle is taken as no better, which is careful. */
const STABILITY_TO = 5;

const margin = () => ({
  margin: {
    value: MOTION_PRACTICE.tipMargin.value,
    unit: '1',
    is: MOTION_PRACTICE.tipMargin.of,
    source: MOTION_PRACTICE.tipMargin.source,
  },
});

const severalAxles = ({ axles }: Layout) => axles.length > 1;
const allPaired = ({ axles }: Layout) => axles.every(({ wheels }) => wheels > 1);

/** Width at `at` of the outline round the contact points: the highest chord between any two axles about it. */
function outlineWidth(places: readonly number[], widths: readonly number[], at: number): number {
  let widest = 0;
  for (const [i, from] of places.entries()) {
    for (const [j, to] of places.entries()) {
      if (!(from <= at && at <= to && from < to)) continue;
      const share = (at - from) / (to - from);
      widest = Math.max(widest, (1 - share) * (widths[i] as number) + share * (widths[j] as number));
    }
  }
  return widest;
}

const slopeNeeded = (title: string, slope: 'want.slope' | 'want.sideSlope'): Sum =>
  sum(
    { title, unit: '°' },
    {
      uses: { slope },
      takes: margin,
      formula: '{slope} / {margin}',
      laws: [],
      value: ({ slope, margin }) => slope / margin,
    },
  );

/** The hardest braking the vehicle can do on its steepest descent, on ground of ordinary grip. */
const BRAKING_MOST = {
  title: 'hardest braking on the steepest descent, for tipping',
  unit: 'm/s²',
  caveat: 'Grip helps to tip: the ordinary ground is taken, not the slippery one. Reversing the motors is left out.',
} as const;

function hardest(brake: number, adhesion: number, slope: number): number {
  return Math.min(brake, adhesion * GRAVITY) * Math.cos(slope) - GRAVITY * Math.sin(slope);
}

export const tipSums: SumsOf<TipId> = {
  'tip.support': sumByRoutes(
    {
      title: 'width the vehicle stands on at its mass centre',
      unit: 'mm',
      caveat:
        'Between the middles of the tyres. With a single wheel on an axle it narrows towards that wheel: such a vehicle tips about the line between its contact points.',
    },
    route({
      name: 'two wheels on every axle: the narrowest track',
      when: allPaired,
      uses: { track: 'balance.track' },
      formula: '{track}',
      laws: [],
      value: ({ track }) => track,
    }),
    ...byAxleCount(
      (axles) =>
        route({
          name: `outline of the wheels of ${axles.length} axles, some with a single wheel`,
          uses: {
            centre: 'balance.centreBehind',
            ...perAxle('track', axles, (axle) => `axle.${axle}.track`),
            ...usePositions(axles),
          },
          formula: `width at {centre} of the outline round wheels ${names('track', axles)} apart (0 for a single wheel) at ${placesOf(axles)}`,
          laws: [],
          value: (x, layout) => {
            const tracks = eachAxle(x, 'track', axles);
            const widths = tracks.map((track, i) => ((layout.axles[i]?.wheels ?? 0) > 1 ? track : 0));
            return outlineWidth(positionsOf(x, axles), widths, x.centre);
          },
        }),
      2,
    ),
  ),
  'tip.noseUp': sum(
    {
      title: 'slope that tips it over backwards while it climbs',
      unit: '°',
      when: severalAxles,
      caveat:
        'Standing or creeping, stiff springs. 0° where the mass centre lies outside the axles: it tips on the level.',
    },
    {
      uses: { wheelbase: 'balance.wheelbase', centre: 'balance.centreBehind', height: 'balance.centreHeight' },
      formula: 'atan(({wheelbase} − {centre}) / {height})',
      laws: [tipNoseUp],
      value: ({ wheelbase, centre, height }) =>
        centre > 0 && centre < wheelbase ? tipNoseUp({ wheelbase, cgBehindFront: centre, cgHeight: height }) : 0,
    },
  ),
  'tip.noseDown': sum(
    {
      title: 'slope that tips it over forwards while it descends',
      unit: '°',
      when: severalAxles,
      caveat:
        'Standing or creeping, stiff springs. 0° where the mass centre lies outside the axles: it tips on the level.',
    },
    {
      uses: { wheelbase: 'balance.wheelbase', centre: 'balance.centreBehind', height: 'balance.centreHeight' },
      formula: 'atan({centre} / {height}), for {centre} between 0 and {wheelbase}',
      laws: [tipNoseDown],
      value: ({ wheelbase, centre, height }) =>
        centre > 0 && centre < wheelbase ? tipNoseDown({ cgBehindFront: centre, cgHeight: height }) : 0,
    },
  ),
  'tip.climbNeeded': slopeNeeded('tip angle wanted for the steepest slope', 'want.slope'),
  'tip.side': sum(
    {
      title: 'side slope that tips it over, standing',
      unit: '°',
      caveat: 'Stiff springs, weight in the middle; soft springs let the body lean out and cost a tenth or more.',
    },
    {
      uses: { support: 'tip.support', height: 'balance.centreHeight' },
      formula: 'atan({support} / (2 · {height}))',
      laws: [tipSide],
      value: ({ support, height }) => (support > 0 ? tipSide({ track: support, offset: 0, cgHeight: height }) : 0),
    },
  ),
  'tip.sideNeeded': slopeNeeded('tip angle wanted for the steepest side slope', 'want.sideSlope'),
  'tip.factor': sum(
    { title: 'static stability factor', unit: '1', caveat: 'Sideways acceleration in g that lifts the inner wheels.' },
    {
      uses: { support: 'tip.support', height: 'balance.centreHeight' },
      formula: '{support} / (2 · {height})',
      laws: [staticStabilityFactor],
      value: ({ support, height }) => (support > 0 ? staticStabilityFactor({ track: support, cgHeight: height }) : 0),
    },
  ),
  'tip.cornerSpeed': sum(
    {
      title: 'speed that tips it in the tightest turn, on the level',
      unit: 'm/s',
      caveat: 'Steady turn; a wheel that trips on a kerb or in a rut tips it far sooner.',
    },
    {
      uses: { factor: 'tip.factor', radius: 'want.cornerRadius' },
      formula: '√(g · {radius} · {factor})',
      laws: [corneringTipSpeed],
      value: ({ factor, radius }) =>
        factor > 0 ? corneringTipSpeed({ stability: Math.min(factor, STABILITY_TO), radius, sideSlope: 0 }) : 0,
    },
  ),
  'tip.cornerNeeded': sum(
    {
      title: 'tip speed wanted for the tightest turn at the speed cap',
      unit: 'm/s',
      caveat:
        'So that the sideways acceleration at the cap stays within the usual margin; it grows with the square of the speed.',
    },
    {
      uses: { cap: 'safe.speedCap' },
      takes: margin,
      formula: '{cap} / √{margin}',
      laws: [],
      value: ({ cap, margin }) => cap / Math.sqrt(margin),
    },
  ),
  'tip.slideSpeed': sum(
    { title: 'speed at which it slides in the tightest turn, on the most slippery ground', unit: 'm/s' },
    {
      uses: { adhesion: 'ground.adhesionWorst', radius: 'want.cornerRadius' },
      formula: '√(g · {radius} · {adhesion})',
      laws: [corneringSlideSpeed],
      value: ({ adhesion, radius }) => corneringSlideSpeed({ adhesion, radius, sideSlope: 0 }),
    },
  ),
  'tip.sideAcceleration': sum(
    {
      title: 'sideways acceleration it may be driven at on any arc: neither near tipping nor sliding',
      unit: 'm/s²',
      caveat: 'On the level, on the most slippery ground; tripping on a kerb or in a rut is left out.',
    },
    {
      uses: { factor: 'tip.factor', adhesion: 'ground.adhesionWorst' },
      takes: margin,
      formula: 'g · min({margin} · {factor}, {adhesion})',
      laws: [],
      value: ({ factor, adhesion, margin }) => GRAVITY * Math.min(margin * factor, adhesion),
    },
  ),
  'tip.cornerLimit': sum(
    { title: 'highest speed in the tightest turn, neither near tipping nor sliding', unit: 'm/s' },
    {
      uses: { acceleration: 'tip.sideAcceleration', radius: 'want.cornerRadius' },
      formula: '√({acceleration} · {radius})',
      laws: [],
      value: ({ acceleration, radius }) => Math.sqrt(acceleration * radius),
    },
  ),
  'tip.sideTurning': sum(
    {
      title: 'side slope that tips it in the tightest turn at the speed cap',
      unit: '°',
      caveat: 'The outside of the turn downhill. 0° where the turn alone tips it.',
    },
    {
      uses: { factor: 'tip.factor', cap: 'safe.speedCap', radius: 'want.cornerRadius' },
      formula: 'atan {factor} − atan({cap}² / (g · {radius}))',
      laws: [tipAcceleration],
      value: ({ factor, cap, radius }) => Math.max(0, Math.atan(factor) - Math.atan(cap ** 2 / (GRAVITY * radius))),
    },
  ),
  'tip.braking': sum(
    {
      title: 'braking that tips it over forwards on the steepest descent',
      unit: 'm/s²',
      when: severalAxles,
      caveat: '0 where the mass centre lies ahead of the front axle: it tips without braking.',
    },
    {
      uses: { centre: 'balance.centreBehind', height: 'balance.centreHeight', slope: 'want.slope' },
      formula: 'g · ({centre} · cos {slope} / {height} − sin {slope})',
      laws: [brakingTip],
      value: ({ centre, height, slope }) =>
        centre > 0 ? brakingTip({ cgBehindFront: centre, cgHeight: height, slope: -slope }) : 0,
    },
  ),
  'tip.brakingMost': sumByRoutes(
    BRAKING_MOST,
    route({
      name: 'braking measured',
      uses: { brake: 'driving.braking', adhesion: 'ground.adhesion', slope: 'want.slope' },
      formula: 'min({brake}, {adhesion} · g) · cos {slope} − g · sin {slope}',
      laws: [],
      value: ({ brake, adhesion, slope }) => hardest(brake, adhesion, slope),
    }),
    route({
      name: 'shorted motors at the speed cap, with rolling resistance',
      uses: {
        force: 'safe.shortedForce',
        mass: 'mass.total',
        rolling: 'ground.rolling',
        adhesion: 'ground.adhesion',
        slope: 'want.slope',
      },
      formula: 'min({force} / {mass} + g · {rolling}, {adhesion} · g) · cos {slope} − g · sin {slope}',
      laws: [],
      value: ({ force, mass, rolling, adhesion, slope }) => hardest(force / mass + GRAVITY * rolling, adhesion, slope),
    }),
  ),
};
