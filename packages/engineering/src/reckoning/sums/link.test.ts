/**
 * The sums of the link, held to link budgets and simulator vectors that others have published, and to a search for
 * the distance at which the margin is used up.
 */
import { OutOfRange } from '@longrein/laws';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateSum, PLAIN_LAYOUT, strayNames, type Values, withSums } from '../testing.ts';
import { LINK_IDS } from './ids.ts';
import { linkSums } from './link.ts';

const MBIT = 1e6 / 8;
const CELLULAR = { ...PLAIN_LAYOUT, modem: 'cellular' } as const;

/** A vehicle on open ground with aerials like those of the tables, all decibels plain. */
const OPEN: Values = {
  'modem.transmitPower': 20,
  'modem.frequency': 2.437e9,
  'modem.bandwidth': 20e6,
  'modem.noiseFigure': 10,
  'aerial.gain': 0,
  'aerial.cableLoss': 0,
  'at.aerial.height': 0.3,
  'link.basePower': 40,
  'link.baseGain': 2,
  'link.baseHeight': 1.5,
  'link.distance': 40,
  'link.walls': 0,
  'link.wallLoss': 6,
  'link.vegetationLoss': 0,
  'link.share': 1,
  'link.marginWanted': 10,
  'link.roundTrip': 0.08,
  'link.loss': 0.0001,
  'link.uplinkRate': 1000 * MBIT,
  'picture.rateNeeded': 1 * MBIT,
};

const link = (changes: Values): Values => withSums(linkSums, { ...OPEN, ...changes });

describe('the budget', () => {
  it('gives the signal, noise and ratio of a published simulation at 50 m and 5.18 GHz', () => {
    // ns-3 wifi testing chapter: 1 dBm over 50 m at 5.18 GHz, 20 MHz, noise figure 7 dB. Aerials high: no ground.
    const high: Values = { 'at.aerial.height': 10, 'link.baseHeight': 10, 'link.baseGain': 0 };
    const at = { ...high, 'modem.frequency': 5.18e9, 'link.distance': 50, 'modem.noiseFigure': 7 };
    const weak = link({ ...at, 'modem.transmitPower': 1 });
    expect(weak['link.picturesReceived']).toBeCloseTo(-79.71, 1);
    expect(weak['link.noise']).toBeCloseTo(-93.97, 1);
    expect(weak['link.snr']).toBeCloseTo(14.25, 1);
    expect(link({ ...at, 'modem.transmitPower': 16 })['link.snr']).toBeCloseTo(29.27, 1);
  });

  it('beyond all hearing stays a number, so that what fails is told to fail', () => {
    const far = link({ 'link.distance': 50_000, 'link.walls': 20 });
    for (const id of ['link.picturesReceived', 'link.commandsReceived'] as const) expect(far[id]).toBe(-150);
    for (const id of ['link.marginPictures', 'link.marginCommands'] as const) expect(far[id]).toBeLessThan(0);
    expect(far['link.throughput']).toBe(0);
    expect(far['link.reach']).toBeLessThan(50_000);
  });

  it('gives the power of the published two-ray vectors, and the fourth-power law with it', () => {
    // ns-3 two-ray test vectors: 17.0206 dBm at a wavelength of 0.125 m.
    // The frequency is none a radio may use freely, so no limit is asked for.
    const at: Values = {
      'modem.transmitPower': 17.0206,
      'modem.frequency': 2398339664,
      'link.baseGain': 0,
      'link.eirpLimit': 20,
    };
    const watts = (distance: number, rover: number) => {
      const values = link({ ...at, 'link.distance': distance, 'link.baseHeight': 1.5, 'at.aerial.height': rover });
      return 10 ** ((values['link.picturesReceived'] as number) / 10) / 1000;
    };
    expect(watts(500, 1.5) / 4.07891862e-12).toBeCloseTo(1, 4);
    expect(watts(1000, 5.5) / 3.42742467375e-12).toBeCloseTo(1, 4);
    expect(watts(2000, 1.5) / 1.593327585938e-14).toBeCloseTo(1, 4);
  });

  it('tells both directions apart, as a planning handbook does', () => {
    // Wireless Networking in the Developing World: 100 mW with 10 dBi to 30 mW with 14 dBi, 2 dB of cable, 114 dB.
    const received = withSums(linkSums, {
      'link.pathLoss': 114,
      'link.extraLoss': 0,
      'link.basePower': 20,
      'link.baseGain': 8,
      'modem.transmitPower': 14.77,
      'aerial.gain': 14,
      'aerial.cableLoss': 2,
    });
    expect(received['link.commandsReceived']).toBeCloseTo(-74, 1);
    expect(received['link.picturesReceived']).toBeCloseTo(-79.2, 1);
  });

  it('counts the cable of the vehicle in both directions, and walls one by one', () => {
    const plain = link({});
    const worse = link({ 'aerial.cableLoss': 1.5, 'link.walls': 2, 'link.wallLoss': 4, 'link.vegetationLoss': 3 });
    for (const id of ['link.picturesReceived', 'link.commandsReceived'] as const) {
      expect((plain[id] as number) - (worse[id] as number)).toBeCloseTo(1.5 + 2 * 4 + 3, 9);
    }
  });
});

describe('what is allowed', () => {
  it('is 100 mW at 2.4 GHz and 25 mW at 5.8 GHz, the least of the published limits', () => {
    // ETSI EN 300 328; short-range devices 25 mW: 20 and 14 dBm.
    expect(evaluateSum(linkSums['link.eirpLimit'], { 'modem.frequency': 2.412e9 })).toBe(20);
    expect(evaluateSum(linkSums['link.eirpLimit'], { 'modem.frequency': 5.8e9 })).toBe(14);
  });

  it('is left open, and says so, in a band that is not listed', () => {
    const ask = () => evaluateSum(linkSums['link.eirpLimit'], { 'modem.frequency': 868e6 });
    expect(ask).toThrow(OutOfRange);
    expect(ask).toThrow(/868000000.*2400 to 2483.5 MHz/);
  });
});

describe('what it carries', () => {
  /** Air rate at a signal, in the receiver the printed table is for (noise figure 10 dB). */
  const rate = (signal: number, width: number) => {
    const noise = -173.975 + 10 * Math.log10(width) + 10;
    const values: Values = { 'link.snr': signal - noise, 'modem.bandwidth': width };
    return evaluateSum(linkSums['link.airRate'], values) / MBIT;
  };

  it('is the printed rate at the printed sensitivity, in each width', () => {
    // IEEE Std 802.11-2016, tables 19-23 and 21-25: sensitivity [dBm] and rate [Mbit/s], long guard interval.
    const printed = [
      [20e6, -82, 6.5],
      [20e6, -77, 19.5],
      [20e6, -74, 26],
      [20e6, -66, 52],
      [20e6, -64, 65],
      [40e6, -79, 13.5],
      [40e6, -71, 54],
      [40e6, -61, 135],
    ] as const;
    for (const [width, sensitivity, expected] of printed) {
      expect(rate(sensitivity + 0.1, width)).toBeCloseTo(expected, 6);
      expect(rate(sensitivity - 0.1, width)).toBeLessThan(expected);
    }
  });

  it('is nothing below the slowest modulation, and a quarter in a quarter of the width', () => {
    expect(rate(-82.1, 20e6)).toBe(0);
    const dark = link({ 'link.snr': 0 });
    expect(dark['link.throughput']).toBe(0);
    const [narrow, wide] = [5e6, 20e6].map((width) =>
      evaluateSum(linkSums['link.airRate'], { 'link.snr': 40, 'modem.bandwidth': width }),
    );
    expect(narrow).toBeCloseTo((wide as number) / 4, 6);
  });

  it('never falls as the signal grows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -120, max: 0, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (s, up) => {
          expect(rate(s + up, 20e6)).toBeGreaterThanOrEqual(rate(s, 20e6));
        },
      ),
    );
  });

  it('is bounded by the thinnest of air, uplink and a stream that loses packets', () => {
    const ways = { 'link.airRate': 20 * MBIT, 'link.share': 0.5, 'link.tcpRate': 8 * MBIT } as const;
    const through = (uplink: number, more: Values = {}) =>
      evaluateSum(linkSums['link.throughput'], { ...ways, 'link.uplinkRate': uplink * MBIT, ...more }) / MBIT;
    expect(through(3)).toBeCloseTo(3, 9);
    expect(through(30)).toBeCloseTo(8, 9);
    expect(through(30, { 'link.tcpRate': 80 * MBIT })).toBeCloseTo(10, 9);
  });

  it('agrees with a measured stream: 1272 kbit/s at 1 % loss, 80 ms and segments of 1348 B, here scaled to 1448 B', () => {
    // Bulk transfer measured with a usual congestion control over an emulated path.
    const ours = evaluateSum(linkSums['link.tcpRate'], { 'link.roundTrip': 0.08, 'link.loss': 0.01 });
    expect((ours * 8) / (1272e3 * (1448 / 1348))).toBeCloseTo(1, 1);
  });
});

describe('the margins', () => {
  it('want what the printed tables of fading and shadowing add up to', () => {
    // Rayleigh 12.90 dB at 95 % and 19.98 dB at 99 %; shadowing 1.6449 and 2.3263 times its spread.
    const wanted = (sigma: number, availability: number) =>
      evaluateSum(linkSums['link.marginWanted'], { 'link.shadowing': sigma, 'link.availability': availability });
    expect(wanted(5, 0.95)).toBeCloseTo(12.9 + 5 * 1.6449, 2);
    expect(wanted(7, 0.99)).toBeCloseTo(19.98 + 7 * 2.3263, 2);
  });

  it('of the pictures are counted over the modulation that carries them', () => {
    // IEEE Std 802.11-2016, table 19-23: −82, −74 and −64 dBm carry 6.5, 26 and 65 Mbit/s in 20 MHz.
    const margin = (rate: number, share: number) =>
      evaluateSum(linkSums['link.marginPictures'], {
        'link.snr': 40,
        'picture.rateNeeded': rate * MBIT,
        'link.share': share,
        'modem.bandwidth': 20e6,
      });
    const lowest = margin(1, 0.5);
    expect(margin(20, 1)).toBeCloseTo(lowest - 8, 9);
    expect(margin(10, 0.5)).toBeCloseTo(lowest - 8, 9);
    expect(margin(60, 1)).toBeCloseTo(lowest - 18, 9);
    expect(margin(500, 1)).toBeCloseTo(lowest - 18, 9);
  });

  it('of a quieter receiver grow by as much as it is quieter', () => {
    const [noisy, quiet] = [10, 6].map((figure) => link({ 'modem.noiseFigure': figure }));
    for (const id of ['link.marginPictures', 'link.marginCommands'] as const) {
      expect((quiet?.[id] as number) - (noisy?.[id] as number)).toBeCloseTo(4, 9);
    }
  });

  it('of the commands shrink with the transmitter of the base alone', () => {
    const [phone, point] = [8, 20].map((power) => link({ 'link.basePower': power }));
    expect((point?.['link.marginCommands'] as number) - (phone?.['link.marginCommands'] as number)).toBeCloseTo(12, 9);
    expect(point?.['link.marginPictures']).toBe(phone?.['link.marginPictures']);
  });
});

describe('the reach', () => {
  it('is that of a table worked with 10 dB of margin: 150 m, 95 m and 53 m at 2.4 GHz, 27 m at 5.5 GHz', () => {
    // EIRP 20 dBm, receiver 2 dBi, aerials 1.5 and 0.3 m high; losses of 94, 86 and 76 dB to spend.
    const reach = (rate: number, frequency: number) =>
      link({ 'picture.rateNeeded': rate * MBIT, 'modem.frequency': frequency })['link.reach'] as number;
    expect(reach(6, 2.437e9)).toBeCloseTo(150, -1);
    expect(reach(25, 2.437e9)).toBeCloseTo(95, -0.5);
    expect(reach(64, 2.437e9)).toBeCloseTo(53, -0.5);
    expect(reach(64, 5.5e9)).toBeCloseTo(27, -0.5);
  });

  it('is where a search finds the loss that is left to spend', () => {
    const metres = fc.double({ min: 2, max: 400, noNaN: true });
    const height = fc.double({ min: 0.1, max: 4, noNaN: true });
    const decibels = fc.double({ min: -10, max: 20, noNaN: true });
    fc.assert(
      fc.property(metres, height, height, decibels, decibels, (distance, rover, base, power, basePower) => {
        const values = link({
          'link.distance': distance,
          'at.aerial.height': rover,
          'link.baseHeight': base,
          'modem.transmitPower': power,
          'link.basePower': basePower,
        });
        const loss = (d: number) => evaluateSum(linkSums['link.pathLoss'], { ...values, 'link.distance': d });
        const left = Math.min(values['link.marginPictures'] as number, values['link.marginCommands'] as number) - 10;
        const budget = (values['link.pathLoss'] as number) + left;
        let [near, far] = [1e-3, 1e6];
        for (let i = 0; i < 80; i++) {
          const middle = Math.sqrt(near * far);
          if (loss(middle) < budget) near = middle;
          else far = middle;
        }
        expect((values['link.reach'] as number) / near).toBeCloseTo(1, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('grows with the root of the height of either aerial on open ground', () => {
    const far = { 'link.distance': 100, 'link.marginWanted': 10 } as const;
    const [low, high] = [0.2, 0.4].map(
      (height) => link({ ...far, 'at.aerial.height': height })['link.reach'] as number,
    );
    expect((high as number) / (low as number)).toBeCloseTo(Math.SQRT2, 6);
  });
});

describe('a cellular modem', () => {
  it('has no budget of its own: only what its uplink carries', () => {
    const meant = LINK_IDS.filter((id) => linkSums[id].when?.(CELLULAR, () => true) !== false);
    expect(meant).toEqual(['link.tcpRate', 'link.throughput']);
    expect(evaluateSum(linkSums['link.throughput'], { 'link.uplinkRate': 4 * MBIT }, CELLULAR)).toBe(4 * MBIT);
  });
});

it('every formula of the link shows what it uses, and nothing else', () => {
  for (const id of LINK_IDS) expect(strayNames(linkSums[id]), id).toEqual([]);
});
