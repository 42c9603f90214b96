/** The modulations of the 802.11 radio, the signal each needs, and the choice among them. */
import { airRate } from './rates.ts';

/** Channel widths of the table. */
export const CHANNEL_WIDTHS = ['20 MHz', '40 MHz', '80 MHz'] as const;
export type ChannelWidth = (typeof CHANNEL_WIDTHS)[number];

/** Data carriers by channel width; IEEE Std 802.11-2016, clauses 19.3 and 21.3. */
export const DATA_CARRIERS: Readonly<Record<ChannelWidth, number>> = { '20 MHz': 52, '40 MHz': 108, '80 MHz': 234 };

/** Guard intervals [s]; IEEE Std 802.11-2016, clause 19.3. */
export const LONG_GUARD = 800e-9;
export const SHORT_GUARD = 400e-9;

/** One modulation and coding, with the least power a conforming receiver may need. */
export interface Modulation {
  readonly index: number;
  readonly name: string;
  /** Bits on one carrier. */
  readonly bits: number;
  /** Share of data in the coded bits. */
  readonly coding: number;
  /** Minimum input sensitivity by width [dBm]; absent where the pair is not allowed for one stream. */
  readonly sensitivity: Readonly<Partial<Record<ChannelWidth, number>>>;
  readonly source: string;
}

const HT = 'IEEE Std 802.11-2016, table 19-23, minimum input sensitivity';
const VHT = 'IEEE Std 802.11-2016, table 21-25, minimum input sensitivity';
const needs = (at20: number): Record<ChannelWidth, number> => ({
  '20 MHz': at20,
  '40 MHz': at20 + 3,
  '80 MHz': at20 + 6,
});

/** Modulations in rising order of rate. Good chips do better by 5 to 12 dB at the low rates. */
export const MODULATIONS: readonly Modulation[] = [
  { index: 0, name: 'BPSK 1/2', bits: 1, coding: 1 / 2, sensitivity: needs(-82), source: HT },
  { index: 1, name: 'QPSK 1/2', bits: 2, coding: 1 / 2, sensitivity: needs(-79), source: HT },
  { index: 2, name: 'QPSK 3/4', bits: 2, coding: 3 / 4, sensitivity: needs(-77), source: HT },
  { index: 3, name: '16-QAM 1/2', bits: 4, coding: 1 / 2, sensitivity: needs(-74), source: HT },
  { index: 4, name: '16-QAM 3/4', bits: 4, coding: 3 / 4, sensitivity: needs(-70), source: HT },
  { index: 5, name: '64-QAM 2/3', bits: 6, coding: 2 / 3, sensitivity: needs(-66), source: HT },
  { index: 6, name: '64-QAM 3/4', bits: 6, coding: 3 / 4, sensitivity: needs(-65), source: HT },
  { index: 7, name: '64-QAM 5/6', bits: 6, coding: 5 / 6, sensitivity: needs(-64), source: HT },
  { index: 8, name: '256-QAM 3/4', bits: 8, coding: 3 / 4, sensitivity: needs(-59), source: VHT },
  {
    index: 9,
    name: '256-QAM 5/6',
    bits: 8,
    coding: 5 / 6,
    sensitivity: { '40 MHz': -54, '80 MHz': -51 },
    source: VHT,
  },
];

/** A modulation chosen for a signal, with the reason. */
export interface ChosenModulation {
  readonly modulation: Modulation;
  /** Air rate [bit/s]. */
  readonly rate: number;
  /** Power above the sensitivity of the choice [dB]. */
  readonly margin: number;
  readonly why: string;
}

/** Air rate of a modulation in a channel, one stream [bit/s]. */
export function modulationRate(modulation: Modulation, width: ChannelWidth, guard: number = LONG_GUARD): number {
  return airRate({ carriers: DATA_CARRIERS[width], bits: modulation.bits, coding: modulation.coding, guard });
}

/**
 * The fastest modulation whose sensitivity the signal meets.
 * @param received   power at the receiver connector [dBm]
 * @param width      channel width
 * @param highest    greatest index the radio offers; 7 for the high-throughput set
 * @returns          undefined when even the slowest does not hold: there is no link
 */
export function chooseModulation(received: number, width: ChannelWidth, highest = 7): ChosenModulation | undefined {
  let chosen: ChosenModulation | undefined;
  for (const modulation of MODULATIONS) {
    const sensitivity = modulation.sensitivity[width];
    if (modulation.index > highest || sensitivity === undefined || received < sensitivity) continue;
    const margin = received - sensitivity;
    const why = `${modulation.name} needs ${sensitivity} dBm; the signal is ${margin.toFixed(1)} dB above it`;
    chosen = { modulation, rate: modulationRate(modulation, width), margin, why };
  }
  return chosen;
}
