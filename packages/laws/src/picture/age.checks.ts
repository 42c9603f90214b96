import { checkLaw } from '../check.ts';
import { pictureAge, shownAgeMean, shownAgeMost, sightDelay, smoothLoopGain, stableLoopGain } from './age.ts';

const CHAIN = 'common practice, no source: a still of 20 kB over 1 Mbit/s';
const KAUL = 'Kaul, Yates and Gruteser, INFOCOM 2012; event simulation of the queue';
const HAYES = 'Hayes 1950, from memory; simulated loop: 0.70 does not overshoot, 3.0 dies out, 3.2 grows';

export const ageChecks = [
  checkLaw(pictureAge, [
    {
      case: '33 + 20 + 160 + 30 + 5 + 5 + 12 ms',
      source: CHAIN,
      kind: 'common practice',
      args: {
        exposure: 0.033,
        encode: 0.02,
        air: 0.16,
        propagation: 0.03,
        relay: 0.005,
        decode: 0.005,
        screen: 0.012,
      },
      expected: 0.265,
      allowed: 1e-9,
    },
  ]),
  checkLaw(shownAgeMean, [
    {
      case: 'even arrivals, even sending times, load 0.9: 1.556 sending times',
      source: KAUL,
      kind: 'reference library',
      args: { painted: 1, interval: 1 / 0.9 },
      expected: 1.556,
      allowed: 0.001,
    },
    {
      case: '5 pictures a second, each painted at 265 ms',
      source: CHAIN,
      kind: 'common practice',
      args: { painted: 0.265, interval: 0.2 },
      expected: 0.365,
      allowed: 1e-9,
    },
  ]),
  checkLaw(shownAgeMost, [
    {
      case: '5 pictures a second, each painted at 265 ms',
      source: CHAIN,
      kind: 'common practice',
      args: { painted: 0.265, interval: 0.2 },
      expected: 0.465,
      allowed: 1e-9,
    },
  ]),
  checkLaw(sightDelay, [
    {
      case: 'picture 0.30 s, unexpected but common event 1.25 s, command 0.08 s, actuator 0.05 s, 5 pictures a second',
      source: 'Green, Transportation Human Factors 2(3), 2000, reaction 1.25 s; the rest common practice',
      kind: 'published',
      args: { painted: 0.3, wait: 0.2, reaction: 1.25, command: 0.08, actuation: 0.05 },
      expected: 1.88,
      allowed: 1e-9,
    },
  ]),
  checkLaw(smoothLoopGain, [
    {
      case: 'delay 0.5 s',
      source: HAYES,
      kind: 'memory',
      args: { delay: 0.5 },
      expected: 0.7358,
      allowed: 1e-4,
    },
  ]),
  checkLaw(stableLoopGain, [
    {
      case: 'delay 0.5 s',
      source: HAYES,
      kind: 'memory',
      args: { delay: 0.5 },
      expected: Math.PI,
      allowed: 1e-4,
    },
  ]),
];
