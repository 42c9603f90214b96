/** Limits of radiated power by band and region. Cautions, not legal advice: local law prevails. */

export type RadioRegion = 'Europe' | 'United States' | 'Japan';

/** A limit with what comes with it. */
export interface RadioLimit {
  readonly region: RadioRegion;
  /** Edges of the band [Hz]. */
  readonly low: number;
  readonly high: number;
  /** Greatest equivalent isotropically radiated power, aerial gain included [dBm]. */
  readonly radiated: number;
  readonly caution: string;
  readonly source: string;
}

const EN_328 = 'ETSI EN 300 328; wireless regulatory database, row DE';
const EN_893 = 'ETSI EN 301 893; wireless regulatory database, row DE';
const US_247 = '47 CFR 15.247';
const US_407 = '47 CFR 15.407; wireless regulatory database, row US';
const JAPAN = 'wireless regulatory database, row JP';

/** Limits as the regulatory database stood in 2022. */
export const RADIO_LIMITS: readonly RadioLimit[] = [
  {
    region: 'Europe',
    low: 2400e6,
    high: 2483.5e6,
    radiated: 20,
    caution: 'The gain of the aerial counts inside the limit; at most 10 mW in each megahertz.',
    source: EN_328,
  },
  { region: 'Europe', low: 5150e6, high: 5250e6, radiated: 23, caution: 'Indoors.', source: EN_893 },
  {
    region: 'Europe',
    low: 5250e6,
    high: 5350e6,
    radiated: 20,
    caution: 'Indoors, with radar avoidance; 23 dBm with transmit power control.',
    source: EN_893,
  },
  {
    region: 'Europe',
    low: 5470e6,
    high: 5725e6,
    radiated: 27,
    caution: 'Radar avoidance: the channel may vanish for a minute. Less is allowed in road vehicles.',
    source: EN_893,
  },
  {
    region: 'Europe',
    low: 5725e6,
    high: 5875e6,
    radiated: 14,
    caution: 'Short-range devices, 25 mW.',
    source: 'wireless regulatory database, row DE',
  },
  {
    region: 'United States',
    low: 2400e6,
    high: 2483.5e6,
    radiated: 36,
    caution: '30 dBm at the connector with up to 6 dBi; each further decibel of gain takes one of power.',
    source: US_247,
  },
  {
    region: 'United States',
    low: 5150e6,
    high: 5250e6,
    radiated: 23,
    caution: 'Figure for a client; an access point may use more.',
    source: US_407,
  },
  {
    region: 'United States',
    low: 5250e6,
    high: 5350e6,
    radiated: 24,
    caution: 'Radar avoidance.',
    source: US_407,
  },
  {
    region: 'United States',
    low: 5470e6,
    high: 5725e6,
    radiated: 24,
    caution: 'Radar avoidance.',
    source: US_407,
  },
  {
    region: 'United States',
    low: 5725e6,
    high: 5850e6,
    radiated: 30,
    caution: 'A rover that drives is not a fixed point-to-point link.',
    source: US_407,
  },
  { region: 'Japan', low: 2400e6, high: 2483.5e6, radiated: 20, caution: 'Certified equipment only.', source: JAPAN },
  { region: 'Japan', low: 5490e6, high: 5710e6, radiated: 23, caution: 'Radar avoidance.', source: JAPAN },
];

/** The limit that covers a frequency in a region; undefined means no licence-free entry is known here. */
export function radioLimitAt(region: RadioRegion, frequency: number): RadioLimit | undefined {
  return RADIO_LIMITS.find((limit) => limit.region === region && frequency >= limit.low && frequency <= limit.high);
}
