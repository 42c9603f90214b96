import { checkLaw, checkSubject } from '../check.ts';
import { chooseModulation, DATA_CARRIERS, LONG_GUARD, SHORT_GUARD } from './modulation.ts';
import { airRate, goodput, shannonRate, THROUGHPUT_SHARES, timeOnAir } from './rates.ts';

const HT = 'IEEE Std 802.11-2016, tables of HT rates, one stream';
const VHT = 'IEEE Std 802.11-2016, tables of VHT rates, one stream';
const NS3 = 'ns-3 network simulator, wifi testing chapter, 802.11n goodput';

const aggregated = THROUGHPUT_SHARES[0].share;

export const ratesChecks = [
  checkLaw(airRate, [
    {
      case: 'index 0 in 20 MHz, long guard',
      source: HT,
      kind: 'published',
      args: { carriers: DATA_CARRIERS['20 MHz'], bits: 1, coding: 1 / 2, guard: LONG_GUARD },
      expected: 6.5e6,
      allowed: 1e-9,
    },
    {
      case: 'index 7 in 20 MHz, short guard',
      source: HT,
      kind: 'published',
      args: { carriers: DATA_CARRIERS['20 MHz'], bits: 6, coding: 5 / 6, guard: SHORT_GUARD },
      expected: 72.2e6,
      allowed: 0.001,
    },
    {
      case: 'index 7 in 40 MHz, short guard',
      source: HT,
      kind: 'published',
      args: { carriers: DATA_CARRIERS['40 MHz'], bits: 6, coding: 5 / 6, guard: SHORT_GUARD },
      expected: 150e6,
      allowed: 1e-9,
    },
    {
      case: 'index 9 in 80 MHz, short guard',
      source: VHT,
      kind: 'published',
      args: { carriers: DATA_CARRIERS['80 MHz'], bits: 8, coding: 5 / 6, guard: SHORT_GUARD },
      expected: 433.3e6,
      allowed: 1e-3,
    },
    {
      case: 'the older radio: 48 carriers, 64-QAM 3/4, 54 Mbit/s',
      source: 'IEEE Std 802.11-2016, clause 17, OFDM rates',
      kind: 'published',
      args: { carriers: 48, bits: 6, coding: 3 / 4, guard: LONG_GUARD },
      expected: 54e6,
      allowed: 1e-9,
    },
  ]),
  checkLaw(shannonRate, [
    {
      case: '3 kHz telephone channel at 30 dB',
      source: 'Tanenbaum, Computer Networks, maximum data rate of a channel, "about 30 000 bit/s", from memory',
      kind: 'memory',
      args: { bandwidth: 3000, snr: 30 },
      expected: 30000,
      allowed: 0.004,
    },
    {
      case: '200 kHz channel at 10 dB',
      source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., chapter 6 example, from memory',
      kind: 'memory',
      args: { bandwidth: 200e3, snr: 10 },
      expected: 691.886e3,
      allowed: 1e-5,
    },
  ]),
  checkLaw(goodput, [
    {
      case: 'index 0 in 20 MHz, the tabled share',
      source: NS3,
      kind: 'reference library',
      args: { rate: 6.5e6, share: aggregated },
      expected: 5.81e6,
      allowed: 0.02,
    },
    {
      case: 'index 7 in 20 MHz, the tabled share',
      source: NS3,
      kind: 'reference library',
      args: { rate: 65e6, share: aggregated },
      expected: 59.55e6,
      allowed: 0.02,
    },
  ]),
  checkLaw(timeOnAir, [
    {
      case: '60 kB of queue before a 2 Mbit/s link: round trip rises from 81 to 320 ms',
      source: 'measured on Linux TCP over an emulated path',
      kind: 'reference library',
      args: { bytes: 60e3, rate: 2e6 },
      expected: 0.239,
      allowed: 0.01,
    },
    {
      case: '20 kB at 256 kbit/s: 20 000 / 32 000',
      source: 'Bertsekas and Gallager, Data Networks, 2nd ed., transmission time',
      kind: 'published',
      args: { bytes: 20e3, rate: 256e3 },
      expected: 0.625,
      allowed: 1e-6,
    },
  ]),
  checkSubject('choice of modulation', [
    {
      case: '−66 dBm in 20 MHz meets 64-QAM 2/3 exactly: 52 Mbit/s',
      source: 'IEEE Std 802.11-2016, table 19-23 with the HT rates',
      kind: 'published',
      ours: () => chooseModulation(-66, '20 MHz')?.rate ?? 0,
      expected: 52e6,
      allowed: 1e-9,
    },
    {
      case: '−72 dBm in 40 MHz meets QPSK 3/4 but not 16-QAM 1/2: 40.5 Mbit/s',
      source: 'IEEE Std 802.11-2016, table 19-23 with the HT rates',
      kind: 'published',
      ours: () => chooseModulation(-72, '40 MHz')?.rate ?? 0,
      expected: 40.5e6,
      allowed: 1e-9,
    },
  ]),
];
