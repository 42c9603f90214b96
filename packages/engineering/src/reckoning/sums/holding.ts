/** Sums of standing on a slope: how fast shorted motors let it creep, and where held wheels slide. */
import {
  copperResistance,
  creepSpeed,
  GRAVITY,
  magnetConstantAt,
  tractionSlopeAll,
  tractionSlopeFront,
} from '@longrein/laws';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { everyAxleDriven, LEVER, onlyFrontOfTwo, onlyRearOfTwo } from './braked-axles.ts';
import { named } from './practice.ts';
import { LOOP, loopOf, ofCircuit, SHORTED, SHORTED_CAVEAT, warmed } from './shorted-motors.ts';

type HoldingId = 'safe.gravityForce' | 'safe.creep' | 'safe.creepAllowed' | 'safe.slideSlope';

/** A creep that is noticed and driven against in time [m/s]. */
const CREEP_ALLOWED = 0.02;

const LOCKED = {
  title: 'slope on which it slides although its driven wheels are held',
  unit: '°',
  caveat: 'On the most slippery ground, the worse way round; rolling resistance, which helps, is left out.',
} as const;

export const holdingSums: SumsOf<HoldingId> = {
  'safe.gravityForce': sum(
    { title: 'pull of gravity down the steepest slope', unit: 'N' },
    {
      uses: { mass: 'mass.total', slope: 'want.slope' },
      formula: '{mass} · g · sin {slope}',
      laws: [],
      value: ({ mass, slope }) => mass * GRAVITY * Math.sin(slope),
    },
  ),
  'safe.creep': sum(
    {
      title: 'creep down the steepest slope with the motors shorted',
      unit: 'mm/s',
      caveat: `A brake made of copper never quite holds. ${SHORTED_CAVEAT} Rolling resistance, which helps, is left out. 0 where the motors’ own friction holds; friction of the train at rest often does.`,
    },
    {
      uses: { ...SHORTED, gravity: 'safe.gravityForce' },
      takes: ofCircuit,
      formula: `(T · R / k² + {threshold} / k) · {diameter} / (2 · {ratio}), T = {gravity} · {diameter} · {efficiency} / (2 · {motors} · {ratio}) − k · {idle}, 0 where T is not above 0, ${LOOP}`,
      laws: [creepSpeed, copperResistance, magnetConstantAt],
      value: (given, layout) => {
        const x = warmed(given, layout);
        const radius = x.diameter / 2;
        const creep = creepSpeed({
          force: x.gravity / x.motors,
          wheelRadius: radius,
          ratio: x.ratio,
          backEfficiency: x.efficiency,
          motorConstant: x.constant,
          noLoadCurrent: x.idle,
          ...loopOf(x),
        });
        return creep > 0 ? creep + ((x.threshold / x.constant) * radius) / x.ratio : 0;
      },
    },
  ),
  'safe.creepAllowed': named('creep that may be left', 'mm/s', CREEP_ALLOWED, 'noticed and driven against in time'),
  'safe.slideSlope': sumByRoutes(
    LOCKED,
    route({
      name: 'every axle driven',
      when: everyAxleDriven,
      uses: { adhesion: 'ground.adhesionWorst' },
      formula: 'atan {adhesion}',
      laws: [tractionSlopeAll],
      value: ({ adhesion }) => tractionSlopeAll({ adhesion, rolling: 0 }),
    }),
    route({
      name: 'rear axle of two, nose down',
      when: onlyRearOfTwo,
      uses: LEVER,
      formula: 'atan({adhesion} · {centre} / ({wheelbase} + {adhesion} · {height}))',
      laws: [tractionSlopeFront],
      // The held axle is the upper one, as the front axle is on a climb: the same law seen from behind.
      value: ({ adhesion, wheelbase, centre, height }) =>
        tractionSlopeFront({ adhesion, rolling: 0, wheelbase, cgBehindFront: wheelbase - centre, cgHeight: height }),
    }),
    route({
      name: 'front axle of two, nose up',
      when: onlyFrontOfTwo,
      uses: LEVER,
      formula: 'atan({adhesion} · ({wheelbase} − {centre}) / ({wheelbase} + {adhesion} · {height}))',
      laws: [tractionSlopeFront],
      value: ({ adhesion, wheelbase, centre, height }) =>
        tractionSlopeFront({ adhesion, rolling: 0, wheelbase, cgBehindFront: centre, cgHeight: height }),
    }),
    route({
      name: 'by the share of the weight on driven axles',
      uses: { adhesion: 'ground.adhesionWorst', share: 'balance.drivenShare' },
      formula: 'atan({adhesion} · {share})',
      laws: [tractionSlopeAll],
      value: ({ adhesion, share }) => Math.atan(adhesion * share),
    }),
  ),
};
