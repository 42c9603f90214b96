import { checkLaw } from '../check.ts';
import { ageEqualQueue, ageNewestWins, ageRandomQueue, queueWait } from './queue.ts';
import {
  ACK_DELAYED,
  ACK_EVERY_SEGMENT,
  bandwidthDelay,
  keepAliveInterval,
  lossBoundRate,
  lossTimeoutRate,
  wholePictureChance,
} from './transport.ts';

const MATHIS = 'Mathis, Semke, Mahdavi and Ott 1997';
const RFC = 'RFC 3819, section 8.5';
const BINOMIAL = 'printed table of the binomial distribution, n = 15, no event, from memory';
const STEVENS = 'Stevens, TCP/IP Illustrated, volume 1, table of bandwidth-delay products, from memory';
const KLEINROCK = 'Kleinrock, Queueing Systems, volume 1, 1975, from memory';
const KAUL = 'event simulation of the queue; best load as in Kaul, Yates and Gruteser, INFOCOM 2012';
const SIMULATED = 'event simulation of the queue, within 1 %';

export const transportChecks = [
  checkLaw(lossBoundRate, [
    {
      case: '1460 B, 37.29 ms, loss 0.001, C = 1: 1.238 megabytes a second; the tutorial prints megabits',
      source: 'web tutorial on TCP throughput, its unit put right',
      kind: 'published',
      args: { segment: 1460, roundTrip: 37.29e-3, loss: 1e-3, constant: 1 },
      expected: 1.238e6 * 8,
      allowed: 0.001,
    },
    {
      case: '1460 B, 100 ms, loss 1 %, delayed acknowledgements: 116.8 kbit/s · 0.93 / 0.1',
      source: MATHIS,
      kind: 'published',
      args: { segment: 1460, roundTrip: 0.1, loss: 0.01, constant: ACK_DELAYED },
      expected: 1086e3,
      allowed: 0.001,
    },
    {
      case: 'Reno with 1348 B segments, round trip 82 ms, loss 0.5 %: 2168 kbit/s measured',
      source: 'measured on Linux TCP Reno over an emulated path, 25 s of bulk transfer',
      kind: 'reference library',
      args: { segment: 1348, roundTrip: 0.082, loss: 0.005, constant: ACK_EVERY_SEGMENT },
      expected: 2168e3,
      allowed: 0.06,
    },
  ]),
  checkLaw(lossTimeoutRate, [
    {
      case: '1460 B, 100 ms, time-out 1 s, loss 1 %: 11 680 bit in 11.53 ms + 2.606 ms',
      source: RFC,
      kind: 'published',
      args: { segment: 1460, roundTrip: 0.1, timeout: 1, loss: 0.01 },
      expected: 826e3,
      allowed: 0.001,
    },
    {
      case: '1460 B, 50 ms, time-out 1 s, loss 0.1 %: 11 680 bit in 1.8235 ms + 0.0822 ms',
      source: RFC,
      kind: 'published',
      args: { segment: 1460, roundTrip: 0.05, timeout: 1, loss: 0.001 },
      expected: 6129e3,
      allowed: 0.001,
    },
  ]),
  checkLaw(bandwidthDelay, [
    {
      case: '1.544 Mbit/s across a continent, 60 ms',
      source: STEVENS,
      kind: 'memory',
      args: { rate: 1.544e6, roundTrip: 0.06 },
      expected: 11580,
      allowed: 1e-6,
    },
    {
      case: '45 Mbit/s across a continent, 60 ms',
      source: STEVENS,
      kind: 'memory',
      args: { rate: 45e6, roundTrip: 0.06 },
      expected: 337500,
      allowed: 1e-6,
    },
  ]),
  checkLaw(wholePictureChance, [
    {
      case: '15 pieces at 1 % loss',
      source: BINOMIAL,
      kind: 'memory',
      args: { loss: 0.01, pieces: 15 },
      expected: 0.8601,
      allowed: 1e-4,
    },
    {
      case: '15 pieces at 10 % loss',
      source: BINOMIAL,
      kind: 'memory',
      args: { loss: 0.1, pieces: 15 },
      expected: 0.2059,
      allowed: 2e-4,
    },
  ]),
  checkLaw(keepAliveInterval, [
    {
      case: 'mappings forgotten after 30 s, one keep-alive may be lost: the 15 s of connectivity checks',
      source: 'RFC 8445, section 11, keep-alive every 15 s, from memory',
      kind: 'memory',
      args: { mapping: 30, misses: 1 },
      expected: 15,
      allowed: 1e-6,
    },
  ]),
  checkLaw(queueWait, [
    {
      case: 'load 0.8, random sending times: four sending times',
      source: KLEINROCK,
      kind: 'memory',
      args: { service: 1, load: 0.8, variation: 1 },
      expected: 4,
      allowed: 1e-6,
    },
    {
      case: 'load 0.8, equal sending times: half of that',
      source: KLEINROCK,
      kind: 'memory',
      args: { service: 1, load: 0.8, variation: 0 },
      expected: 2,
      allowed: 1e-6,
    },
  ]),
  checkLaw(ageRandomQueue, [
    {
      case: 'at the best load of 0.53 the age is 3.48 sending times',
      source: KAUL,
      kind: 'reference library',
      args: { service: 1, load: 0.53 },
      expected: 3.484,
      allowed: 0.001,
    },
    {
      case: 'load 0.8',
      source: SIMULATED,
      kind: 'reference library',
      args: { service: 1, load: 0.8 },
      expected: 5.45,
      allowed: 0.01,
    },
  ]),
  checkLaw(ageEqualQueue, [
    {
      case: 'at the best load of 0.629 the age is 2.954 sending times',
      source: SIMULATED,
      kind: 'reference library',
      args: { service: 1, load: 0.629 },
      expected: 2.954,
      allowed: 0.01,
    },
    {
      case: 'load 0.9',
      source: SIMULATED,
      kind: 'reference library',
      args: { service: 1, load: 0.9 },
      expected: 5.77,
      allowed: 0.01,
    },
  ]),
  checkLaw(ageNewestWins, [
    {
      case: 'load 0.5',
      source: SIMULATED,
      kind: 'reference library',
      args: { service: 1, load: 0.5 },
      expected: 3.0,
      allowed: 0.01,
    },
    {
      case: 'load 0.9',
      source: SIMULATED,
      kind: 'reference library',
      args: { service: 1, load: 0.9 },
      expected: 2.11,
      allowed: 0.01,
    },
  ]),
];
