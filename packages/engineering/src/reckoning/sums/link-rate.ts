/**
 * Sums of the link: what it carries, and the margins it keeps against fading. Rates are in bytes a second inside, as
 * the byte is the base of the units; the laws take bits.
 */
import {
  ACK_DELAYED,
  airRate,
  CHANNEL_WIDTHS,
  type ChannelWidth,
  chooseModulation,
  freeSpaceLoss,
  goodput,
  linkMargin,
  lossBoundRate,
  MODULATIONS,
  type Modulation,
  modulationRate,
  noiseFloor,
  rayleighMargin,
  shadowingMargin,
  twoRayFarLoss,
} from '@longrein/laws';
import { type Constant, route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { onWlan } from './link-signal.ts';

/** Bits in a byte. */
const BITS = 8;

/** Noise figure the table of sensitivities assumes [dB], beside 5 dB for an imperfect receiver; IEEE Std 802.11-2016. */
const TABLE_NOISE_FIGURE = 10;
const TABLE_WIDTH: ChannelWidth = '20 MHz';
/** Greatest modulation of the high-throughput radio with one stream; IEEE Std 802.11-2016, clause 19. */
const HIGHEST = 7;

const HELD: readonly Modulation[] = MODULATIONS.filter(({ index }) => index <= HIGHEST);
const SLOWEST = HELD[0] as Modulation;
const FASTEST = HELD.at(-1) as Modulation;

const hertz = (width: ChannelWidth): number => Number.parseFloat(width) * 1e6;

/** Noise of the receiver that the table of sensitivities is written for. */
const TABLE_NOISE = noiseFloor({ bandwidth: hertz(TABLE_WIDTH), noiseFigure: TABLE_NOISE_FIGURE });

/** Least power that a modulation needs at the receiver of the table [dBm]. */
const needed = (modulation: Modulation): number => modulation.sensitivity[TABLE_WIDTH] as number;

/** Air rate of a modulation [B/s]. Between the widths of the table the next narrower counts; below it, the clock slows. */
function rateIn(modulation: Modulation, bandwidth: number): number {
  const width = CHANNEL_WIDTHS.findLast((name) => hertz(name) <= bandwidth) ?? TABLE_WIDTH;
  return (modulationRate(modulation, width) * Math.min(1, bandwidth / hertz(width))) / BITS;
}

/** The slowest modulation that carries a rate, or the fastest where none does. */
function modulationFor(rate: number, share: number, bandwidth: number): Modulation {
  return HELD.find((modulation) => share * rateIn(modulation, bandwidth) >= rate) ?? FASTEST;
}

const tableNoise = (): Record<'table', Constant> => ({
  table: {
    value: TABLE_NOISE,
    unit: 'dBm',
    is: 'noise of a 20 MHz receiver with a noise figure of 10 dB, for which the sensitivities are printed',
    source: 'IEEE Std 802.11-2016, table 19-23',
  },
});

type CarriedId = 'link.airRate' | 'link.tcpRate' | 'link.throughput';

const carried: SumsOf<CarriedId> = {
  'link.airRate': sum(
    {
      title: 'air rate at the greatest distance',
      unit: 'Mbit/s',
      when: onWlan,
      caveat: 'One stream and the middling signal, no fade: 0 where even the slowest modulation is not held.',
    },
    {
      uses: { snr: 'link.snr', width: 'modem.bandwidth' },
      takes: tableNoise,
      formula: 'rate, in {width}, of the fastest modulation whose sensitivity lies below {table} + {snr}',
      laws: [airRate, noiseFloor],
      value: ({ snr, width, table }) => {
        const chosen = chooseModulation(snr + table, TABLE_WIDTH, HIGHEST);
        return chosen === undefined ? 0 : rateIn(chosen.modulation, width);
      },
    },
  ),
  'link.tcpRate': sum(
    {
      title: 'rate that a stream steered by loss reaches',
      unit: 'Mbit/s',
      caveat:
        'For the usual congestion control, which halves its rate on each loss; one that models the path is not bound by it. Above 5 % loss time-outs take more.',
    },
    {
      uses: { roundTrip: 'link.roundTrip', loss: 'link.loss' },
      takes: () => ({
        segment: {
          value: 1448,
          unit: 'B',
          is: 'payload of a packet of 1500 B, less headers and time stamps',
          source: 'RFC 9293 and RFC 7323, sizes of the headers',
        },
        constant: {
          value: ACK_DELAYED,
          unit: '1',
          is: 'constant for delayed acknowledgements',
          source: 'Mathis, Semke, Mahdavi and Ott 1997',
        },
      }),
      formula: '{segment} · {constant} / ({roundTrip} · √{loss})',
      laws: [lossBoundRate],
      value: ({ segment, roundTrip, loss, constant }) => lossBoundRate({ segment, roundTrip, loss, constant }) / BITS,
    },
  ),
  'link.throughput': sumByRoutes(
    {
      title: 'rate that reaches the driver',
      unit: 'Mbit/s',
      caveat: 'At the greatest distance with a middling signal. It differs from second to second.',
    },
    route({
      name: 'wireless network',
      when: onWlan,
      uses: { air: 'link.airRate', share: 'link.share', uplink: 'link.uplinkRate', stream: 'link.tcpRate' },
      formula: 'least of {share} · {air}, {uplink} and {stream}',
      laws: [goodput],
      value: ({ air, share, uplink, stream }) =>
        air === 0 ? 0 : Math.min(goodput({ rate: air, share }), uplink, stream),
    }),
    route({
      name: 'cellular',
      when: (layout) => !onWlan(layout),
      uses: { uplink: 'link.uplinkRate' },
      formula: '{uplink}',
      laws: [],
      value: ({ uplink }) => uplink,
    }),
  ),
};

type MarginId = 'link.marginWanted' | 'link.marginPictures' | 'link.marginCommands' | 'link.reach';

const margins: SumsOf<MarginId> = {
  'link.marginWanted': sum(
    {
      title: 'margin wanted against fading',
      unit: 'dB',
      when: onWlan,
      caveat: 'Slow and fast fading added, as if there were no clear line of sight: a little too careful in the open.',
    },
    {
      uses: { sigma: 'link.shadowing', availability: 'link.availability' },
      formula: '{sigma} · z({availability}) − 10 · log10(−ln {availability})',
      laws: [shadowingMargin, rayleighMargin],
      value: ({ sigma, availability }) => shadowingMargin({ sigma, availability }) + rayleighMargin({ availability }),
    },
  ),
  'link.marginPictures': sum(
    {
      title: 'margin of the pictures at the greatest distance',
      unit: 'dB',
      when: onWlan,
      caveat:
        'Over what the slowest modulation needs that carries the pictures, or the fastest where none does. Good receivers do 5 to 12 dB better at the low rates than the standard asks.',
    },
    {
      uses: { snr: 'link.snr', rate: 'picture.rateNeeded', share: 'link.share', width: 'modem.bandwidth' },
      takes: tableNoise,
      formula: '{table} + {snr} − sensitivity of the modulation that gives {rate} / {share} in {width}',
      laws: [linkMargin, airRate, noiseFloor],
      value: ({ table, snr, rate, share, width }) =>
        linkMargin({ received: table + snr, sensitivity: needed(modulationFor(rate, share, width)) }),
    },
  ),
  'link.marginCommands': sum(
    {
      title: 'margin of the commands at the greatest distance',
      unit: 'dB',
      when: onWlan,
      caveat: 'Over what the slowest modulation needs, as commands are short.',
    },
    {
      uses: { received: 'link.commandsReceived', noise: 'link.noise' },
      takes: tableNoise,
      formula: '{table} + {received} − {noise} − sensitivity of the slowest modulation',
      laws: [linkMargin, noiseFloor],
      value: ({ table, received, noise }) =>
        linkMargin({ received: table + received - noise, sensitivity: needed(SLOWEST) }),
    },
  ),
  'link.reach': sum(
    {
      title: 'distance at which the margin wanted is used up',
      unit: 'm',
      when: onWlan,
      caveat: 'Of pictures or commands, whichever ends first, with the same walls and plants in the way.',
    },
    {
      uses: {
        path: 'link.pathLoss',
        pictures: 'link.marginPictures',
        commands: 'link.marginCommands',
        wanted: 'link.marginWanted',
        frequency: 'modem.frequency',
        base: 'link.baseHeight',
        aerial: 'at.aerial.height',
      },
      formula:
        'with a loss to spend of {path} + lesser of {pictures} and {commands} − {wanted}: the lesser of the distance with this free-space loss at {frequency} and the distance with this loss over flat ground for {base} and {aerial}',
      laws: [freeSpaceLoss, twoRayFarLoss],
      value: ({ path, pictures, commands, wanted, frequency, base, aerial }) => {
        const spend = path + Math.min(pictures, commands) - wanted;
        // Both laws are straight lines over the logarithm of distance, so their value at 1 m says it all.
        const free = freeSpaceLoss({ frequency, distance: 1 });
        const flat = twoRayFarLoss({ distance: 1, baseHeight: base, roverHeight: aerial });
        return Math.min(10 ** ((spend - free) / 20), 10 ** ((spend - flat) / 40));
      },
    },
  ),
};

export const linkRateSums: SumsOf<CarriedId | MarginId> = { ...carried, ...margins };
