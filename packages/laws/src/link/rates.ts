/** What a signal carries: air rate by modulation, the bound nobody passes, time on air. */
import { law } from '../law.ts';

/** Duration of the useful part of one symbol of the high-throughput radio [s]; IEEE Std 802.11-2016, clause 19. */
const SYMBOL = 3.2e-6;

/** Air rate of one stream from its modulation. */
export const airRate = law(
  {
    id: 'air-rate',
    title: 'Air rate of one stream',
    equation: 'R = Nsd · m · r / (3.2 µs + GI)',
    args: {
      carriers: { symbol: 'Nsd', is: 'data carriers in the channel', unit: '1', from: 1 },
      bits: { symbol: 'm', is: 'bits on one carrier', unit: '1', from: 1, to: 10 },
      coding: { symbol: 'r', is: 'share of data in the coded bits', unit: '1', above: 0, to: 1 },
      guard: { symbol: 'GI', is: 'guard interval', unit: 's', from: 0, to: 3.2e-6 },
    },
    gives: { symbol: 'R', is: 'air rate', unit: 'bit/s' },
    validFor: 'high-throughput and very-high-throughput symbols, one stream',
    leavesOut: 'headers, gaps, acknowledgements, retries: half of it is a good day',
    source: 'IEEE Std 802.11-2016, clauses 19.3 and 21.3',
  },
  ({ carriers, bits, coding, guard }) => (carriers * bits * coding) / (SYMBOL + guard),
);

/** Greatest error-free rate of a channel. */
export const shannonRate = law(
  {
    id: 'shannon-rate',
    title: 'Shannon bound',
    equation: 'C = B · log2(1 + 10^(SNR/10))',
    args: {
      bandwidth: { symbol: 'B', is: 'bandwidth', unit: 'Hz', above: 0 },
      snr: { symbol: 'SNR', is: 'signal-to-noise ratio', unit: 'dB', from: -50, to: 100 },
    },
    gives: { symbol: 'C', is: 'greatest error-free rate', unit: 'bit/s' },
    validFor: 'white Gaussian noise, one aerial at each end',
    leavesOut: 'everything that keeps real radios below it',
    source: 'Shannon, A mathematical theory of communication, Bell System Technical Journal 27, 1948, theorem 17',
  },
  ({ bandwidth, snr }) => bandwidth * Math.log2(1 + 10 ** (snr / 10)),
);

/** What is left of the air rate for data. */
export const goodput = law(
  {
    id: 'goodput',
    title: 'Throughput from air rate',
    equation: 'G = s · R',
    args: {
      rate: { symbol: 'R', is: 'air rate', unit: 'bit/s', above: 0 },
      share: { symbol: 's', is: 'share left for data', unit: '1', above: 0, to: 1 },
    },
    gives: { symbol: 'G', is: 'throughput', unit: 'bit/s' },
    validFor: 'shares measured or taken from the table of shares',
    leavesOut: 'variation from second to second',
    source: 'ns-3 network simulator, wifi testing chapter: goodput against air rate',
  },
  ({ rate, share }) => share * rate,
);

/** Time to put bytes on a link. */
export const timeOnAir = law(
  {
    id: 'time-on-air',
    title: 'Time to send',
    equation: 't = 8 · b / R',
    args: {
      bytes: { symbol: 'b', is: 'bytes to send, queued ones included', unit: 'B', from: 0 },
      rate: { symbol: 'R', is: 'throughput', unit: 'bit/s', above: 0 },
    },
    gives: { symbol: 't', is: 'time until the last bit has left', unit: 's' },
    validFor: 'steady throughput; also the delay of a queue of so many bytes',
    leavesOut: 'propagation, retries',
    source: 'Bertsekas and Gallager, Data Networks, 2nd ed., transmission time',
  },
  ({ bytes, rate }) => (8 * bytes) / rate,
);

/** Share of the air rate that is left for data, by circumstance. */
export const THROUGHPUT_SHARES = [
  { when: 'one station, frames aggregated', share: 0.9, source: 'ns-3 network simulator, wifi testing chapter' },
  { when: 'five busy stations at 24 Mbit/s, no aggregation', share: 0.67, source: 'ns-3, Bianchi model validation' },
  { when: 'five busy stations at 54 Mbit/s, no aggregation', share: 0.54, source: 'ns-3, Bianchi model validation' },
  { when: 'quiet channel, TCP', share: 0.55, source: 'common practice, no source' },
  { when: 'busy park', share: 0.3, source: 'common practice, no source' },
] as const;

/** A rate of a cellular network as printed or measured. */
export interface CellularRate {
  readonly network: string;
  readonly what: 'greatest of the category' | 'median measured' | 'mean measured';
  /** Towards the rover and from the rover [bit/s]. */
  readonly down: number;
  readonly up: number;
  readonly source: string;
}

const CATEGORIES = '3GPP TS 36.306, transport block sizes by category';
const OFCOM = 'Ofcom, Measuring mobile broadband performance in the UK, 2014';

/** Cellular rates; a rover sends, so the uplink decides. Offer at most a third of the measured uplink. */
export const CELLULAR_RATES: readonly CellularRate[] = [
  { network: 'LTE category M1', what: 'greatest of the category', down: 1e6, up: 1e6, source: CATEGORIES },
  { network: 'LTE category 1', what: 'greatest of the category', down: 10.3e6, up: 5.2e6, source: CATEGORIES },
  { network: 'LTE category 4', what: 'greatest of the category', down: 150.8e6, up: 51e6, source: CATEGORIES },
  {
    network: 'LTE',
    what: 'median measured',
    down: 13e6,
    up: 6e6,
    source:
      'Huang et al., A close examination of performance and power characteristics of 4G LTE networks, MobiSys 2012',
  },
  { network: 'LTE', what: 'mean measured', down: 14.7e6, up: 13.6e6, source: OFCOM },
  { network: '3G', what: 'mean measured', down: 6.1e6, up: 1.6e6, source: OFCOM },
];
