/** Steps: a rigid wheel against a square edge, moved so slowly that only forces count. */
import { law } from '../law.ts';
import { zeroOfRising } from '../root.ts';
import { ADHESION, CG_BEHIND_FRONT, CG_HEIGHT, WHEEL_RADIUS, WHEELBASE } from './arguments.ts';
import { insist } from './refuse.ts';

const HEIGHT_GIVEN = { symbol: 's', is: 'highest step', unit: 'm' } as const;
const RADIUS_OR_MORE = { symbol: 's', is: 'highest step; r when even a vertical face is climbed', unit: 'm' } as const;
const KERB = 'Beer & Johnston, Vector Mechanics for Engineers: Statics, wheel and kerb problems';
const METHOD = 'quasi-static obstacle crossing after Bekker, 1969, and Wong, Theory of Ground Vehicles, chapter 4';
const LEAVES_OUT = 'give of the tyre (which helps), springs, run-up';

/** Height of the edge under a wheel whose contact normal leans by `lean` from the vertical. */
const heightOfLean = (radius: number, lean: number): number => radius * (1 - Math.cos(lean));

/** Force at the axle that pulls an undriven wheel up a step. */
export const stepPushForce = law(
  {
    id: 'step-push-force',
    title: 'Push that takes an undriven wheel up a step',
    equation: 'F = W · √(2 · r · s − s²) / (r − s)',
    args: {
      load: { symbol: 'W', is: 'load on the wheel', unit: 'N', above: 0 },
      radius: WHEEL_RADIUS,
      step: { symbol: 's', is: 'height of the step, below the axle', unit: 'm', from: 0 },
    },
    gives: { symbol: 'F', is: 'horizontal push at the axle', unit: 'N' },
    validFor: 'steps lower than the axle; above it no push is enough',
    leavesOut: LEAVES_OUT,
    source: KERB,
  },
  ({ load, radius, step }) => {
    insist(step < radius, 'step-push-force', 's', step, `below r = ${radius} m`, 'no push is enough');
    return (load * Math.sqrt(2 * radius * step - step ** 2)) / (radius - step);
  },
);

/** Step that an undriven wheel climbs under a given push. */
export const stepByPush = law(
  {
    id: 'step-by-push',
    title: 'Step climbed by an undriven wheel that is pushed',
    equation: 's = r · (1 − 1 / √(1 + (F / W)²))',
    args: {
      radius: WHEEL_RADIUS,
      push: { symbol: 'F', is: 'horizontal push at the axle', unit: 'N', from: 0 },
      load: { symbol: 'W', is: 'load on the wheel', unit: 'N', above: 0 },
    },
    gives: HEIGHT_GIVEN,
    validFor: 'an undriven axle of a vehicle whose other axle drives',
    leavesOut: LEAVES_OUT,
    source: KERB,
  },
  ({ radius, push, load }) => heightOfLean(radius, Math.atan(push / load)),
);

/** Step that a wheel climbs by its own torque, with nothing pushing it. */
export const stepByOwnTorque = law(
  {
    id: 'step-by-own-torque',
    title: 'Step climbed by a wheel alone',
    equation: 's = r · (1 − 1 / √(1 + μ²))',
    args: { radius: WHEEL_RADIUS, adhesion: ADHESION },
    gives: HEIGHT_GIVEN,
    validFor: 'a driven axle of a vehicle whose other axles are not driven',
    leavesOut: LEAVES_OUT,
    source: KERB,
  },
  ({ radius, adhesion }) => heightOfLean(radius, Math.atan(adhesion)),
);

/** Step that one axle climbs when all axles drive and it carries a given share of the weight. */
export const stepAllDriven = law(
  {
    id: 'step-all-driven',
    title: 'Step climbed with all axles driven',
    equation: 's = r · (1 − cos α), cot α = q · (1 + μ²) / μ − μ',
    args: {
      radius: WHEEL_RADIUS,
      share: { symbol: 'q', is: 'share of the weight carried by the climbing axle', unit: '1', above: 0, below: 1 },
      adhesion: ADHESION,
    },
    gives: RADIUS_OR_MORE,
    validFor: 'any number of axles; for a stiff frame with three or four the even share is optimistic',
    leavesOut: `${LEAVES_OUT}; the lifted axle takes more than its share`,
    source: METHOD,
  },
  ({ radius, share, adhesion }) => {
    const lean = Math.atan2(1, (share * (1 + adhesion ** 2)) / adhesion - adhesion);
    return heightOfLean(radius, Math.min(lean, Math.PI / 2));
  },
);

/** Adhesion with which all-wheel drive walks up a vertical face. */
export const verticalFaceAdhesion = law(
  {
    id: 'vertical-face-adhesion',
    title: 'Adhesion that climbs a vertical face',
    equation: 'μ = √(q / (1 − q))',
    args: {
      share: { symbol: 'q', is: 'share of the weight carried by the climbing axle', unit: '1', above: 0, below: 1 },
    },
    gives: { symbol: 'μ', is: 'adhesion coefficient', unit: '1' },
    validFor: 'all axles driven, step up to the axle',
    leavesOut: LEAVES_OUT,
    source: METHOD,
  },
  ({ share }) => Math.sqrt(share / (1 - share)),
);

/** Lean at which the front axle stops, for a support at `base` behind it and the weight at `arm` ahead of the support. */
function frontLean(radius: number, base: number, arm: number, mu: number): number {
  // The balance has the form p·cos α + q·sin α + c = 0.
  const p = mu * base - mu ** 2 * radius;
  const q = mu * radius + mu ** 2 * base - arm * (1 + mu ** 2);
  const c = mu ** 2 * radius;
  const size = Math.hypot(p, q);
  return c >= size ? Math.PI / 2 : Math.min(Math.PI / 2, Math.atan2(q, p) + Math.acos(-c / size));
}

/** Step that the front axle climbs when both axles drive. */
export const stepFrontAxle = law(
  {
    id: 'step-front-axle',
    title: 'Step climbed by the front axle, both axles driven',
    equation:
      's = r · (1 − cos α), μ · ((L · cos α + r · sin α) + μ · (L · sin α + r − r · cos α)) = (L − a) · (1 + μ²) · sin α',
    args: { radius: WHEEL_RADIUS, wheelbase: WHEELBASE, cgBehindFront: CG_BEHIND_FRONT, adhesion: ADHESION },
    gives: RADIUS_OR_MORE,
    validFor: 'two axles with equal wheels, at the start of the climb',
    leavesOut: LEAVES_OUT,
    source: METHOD,
  },
  ({ radius, wheelbase, cgBehindFront, adhesion }) =>
    heightOfLean(radius, frontLean(radius, wheelbase, wheelbase - cgBehindFront, adhesion)),
);

/** Step that the front axle climbs when the rear two axles sit on a free bogie and all drive. */
export const stepFrontBogie = law(
  {
    id: 'step-front-bogie',
    title: 'Step climbed by the front axle ahead of a driven bogie',
    equation:
      's = r · (1 − cos α), μ · ((L′ · cos α + r · sin α) + μ · (L′ · sin α + r − r · cos α)) = (L′ − a) · (1 + μ²) · sin α, L′ = L + μ · h_p',
    args: {
      radius: WHEEL_RADIUS,
      wheelbase: { symbol: 'L', is: 'front axle to bogie pivot', unit: 'm', above: 0 },
      cgBehindFront: CG_BEHIND_FRONT,
      pivotHeight: { symbol: 'h_p', is: 'bogie pivot above the ground', unit: 'm', from: 0 },
      adhesion: ADHESION,
    },
    gives: RADIUS_OR_MORE,
    validFor: 'three axles with equal wheels, the rear pair on a free bogie',
    leavesOut: `${LEAVES_OUT}; the middle wheel on the edge`,
    source: METHOD,
  },
  ({ radius, wheelbase, cgBehindFront, pivotHeight, adhesion }) => {
    const base = wheelbase + adhesion * pivotHeight;
    return heightOfLean(radius, frontLean(radius, base, base - cgBehindFront, adhesion));
  },
);

/** Step that the rear axle climbs when both axles drive and the front already stands on top. */
export const stepRearAxle = law(
  {
    id: 'step-rear-axle',
    title: 'Step climbed by the rear axle, both axles driven',
    equation:
      'r · μ · N_2 + N_1 · (L · cos p + μ · (r − s)) = (L − a) · cos p − (h − r) · sin p, N_2 = μ / ((1 + μ²) · sin α), N_1 = N_2 · (sin α − μ · cos α) / μ, sin p = s / L',
    args: {
      radius: WHEEL_RADIUS,
      wheelbase: WHEELBASE,
      cgBehindFront: CG_BEHIND_FRONT,
      cgHeight: CG_HEIGHT,
      adhesion: ADHESION,
    },
    gives: RADIUS_OR_MORE,
    validFor: 'two axles with equal wheels, a wheel radius below the wheelbase',
    leavesOut: LEAVES_OUT,
    source: METHOD,
  },
  ({ radius, wheelbase, cgBehindFront, cgHeight, adhesion }) => {
    insist(radius < wheelbase, 'step-rear-axle', 'r', radius, `below L = ${wheelbase} m`, 'wheels overlap');
    const spare = rearBalance(radius, wheelbase, wheelbase - cgBehindFront, cgHeight - radius, adhesion);
    return firstZero(spare, heightOfLean(radius, Math.atan(adhesion)), radius);
  },
);

/** Moment by which the weight, at full grip of both axles, leans too much on the climbing rear wheel; negative below the limit. */
function rearBalance(radius: number, wheelbase: number, arm: number, above: number, mu: number) {
  return (step: number): number => {
    const lean = Math.acos(1 - step / radius);
    const pitch = Math.asin(step / wheelbase);
    const rear = mu / ((1 + mu ** 2) * Math.sin(lean));
    const front = (rear * (Math.sin(lean) - mu * Math.cos(lean))) / mu;
    const held = radius * mu * rear + front * (wheelbase * Math.cos(pitch) + mu * (radius - step));
    return held - (arm * Math.cos(pitch) - above * Math.sin(pitch));
  };
}

/** Number of intervals searched for the first change of sign; the balance bends once at most on a climb. */
const SEARCH_STEPS = 64;

/** First zero of a function that starts below zero; `to` when it stays below. */
function firstZero(of: (x: number) => number, from: number, to: number): number {
  let low = from;
  let ofLow = of(from);
  for (let i = 1; i <= SEARCH_STEPS; i++) {
    const high = from + ((to - from) * i) / SEARCH_STEPS;
    const ofHigh = of(high);
    if (ofHigh >= 0) return zeroOfRising(of, low, high, ofLow, ofHigh);
    low = high;
    ofLow = ofHigh;
  }
  return to;
}
