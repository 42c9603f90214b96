/**
 * Goal: margins, rates and waiting times are what their definitions say.
 * Method: numerical integration, a simulated queue with a fixed sequence of draws, and order in the tables.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '../law.ts';
import { powerWithinLimit, radiatedPower } from './budget.ts';
import { fadeDuration, fadeRate, rayleighMargin } from './fading.ts';
import { RADIO_LIMITS, radioLimitAt } from './limits.ts';
import { CHANNEL_WIDTHS, chooseModulation, MODULATIONS, modulationRate } from './modulation.ts';
import { normalQuantile } from './normal.ts';
import { ageEqualQueue, ageNewestWins, ageRandomQueue, queueWait } from './queue.ts';
import { CELLULAR_RATES, shannonRate } from './rates.ts';
import { lossBoundRate, lossTimeoutRate } from './transport.ts';

/** Uniform draws from a fixed sequence, so that the simulated queues are the same on every run. */
function draws(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
}

interface Simulated {
  readonly wait: number;
  readonly age: number;
}

/** Serves random arrivals in order with mean sending time 1; integrates the age of the newest delivered. */
function simulateQueue(load: number, randomService: boolean, arrivals: number): Simulated {
  const arriving = draws(20240607);
  const serving = draws(777);
  let now = 0;
  let free = 0;
  let waited = 0;
  let area = 0;
  let newest = 0;
  let last = 0;
  for (let i = 0; i < arrivals; i++) {
    now += -Math.log(arriving()) / load;
    const start = Math.max(now, free);
    waited += start - now;
    free = start + (randomService ? -Math.log(serving()) : 1);
    area += ((free - newest) ** 2 - (last - newest) ** 2) / 2;
    last = free;
    newest = now;
  }
  return { wait: waited / arrivals, age: area / last };
}

/** The newest arrival displaces what is being sent; sending times random with mean 1. */
function simulateNewestWins(load: number, arrivals: number): number {
  const arriving = draws(4242);
  const serving = draws(99);
  let now = 0;
  let area = 0;
  let newest = 0;
  let last = 0;
  for (let i = 0; i < arrivals; i++) {
    const next = now + -Math.log(arriving()) / load;
    const done = now + -Math.log(serving());
    if (done < next) {
      area += ((done - newest) ** 2 - (last - newest) ** 2) / 2;
      last = done;
      newest = now;
    }
    now = next;
  }
  return area / last;
}

describe('the normal quantile', () => {
  it('is undone by integrating the bell curve', () => {
    for (const probability of [0.55, 0.7, 0.9, 0.95, 0.99, 0.999, 0.999999]) {
      const z = normalQuantile({ probability });
      const steps = 20000;
      let area = 0;
      for (let i = 0; i < steps; i++) area += Math.exp(-(((z * (i + 0.5)) / steps) ** 2) / 2) * (z / steps);
      expect(0.5 + area / Math.sqrt(2 * Math.PI)).toBeCloseTo(probability, 9);
    }
  });

  it('is odd about one half and refuses certainty', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 0.5, noNaN: true }), (probability) => {
        const below = normalQuantile({ probability });
        expect(normalQuantile({ probability: 1 - probability })).toBeCloseTo(-below, 6);
      }),
    );
    expect(() => normalQuantile({ probability: 1 })).toThrow(OutOfRange);
  });
});

describe('fading', () => {
  it('is below a level for the share of time that rate and duration make', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 2, noNaN: true }), (level) => {
        const share = fadeRate({ shift: 20, level }) * fadeDuration({ shift: 20, level });
        expect(share).toBeCloseTo(1 - Math.exp(-level * level), 9);
        const margin = rayleighMargin({ availability: 1 - share });
        expect(margin).toBeCloseTo(-20 * Math.log10(level), 6);
      }),
    );
  });
});

describe('modulations', () => {
  it('ask for more signal the faster they are, and 3 dB more for twice the width', () => {
    for (const width of CHANNEL_WIDTHS) {
      const offered = MODULATIONS.filter((m) => m.sensitivity[width] !== undefined);
      for (let i = 1; i < offered.length; i++) {
        const [slow, fast] = [offered[i - 1], offered[i]];
        if (!slow || !fast) throw new Error('the table has a hole');
        expect(modulationRate(fast, width)).toBeGreaterThan(modulationRate(slow, width));
        expect(fast.sensitivity[width] ?? 0).toBeGreaterThan(slow.sensitivity[width] ?? 0);
      }
    }
    const first = MODULATIONS[0]?.sensitivity;
    expect((first?.['40 MHz'] ?? 0) - (first?.['20 MHz'] ?? 0)).toBe(3);
  });

  it('stay below the Shannon bound of the signal they need over a perfect receiver', () => {
    const quietest = -100.97;
    for (const modulation of MODULATIONS.slice(0, 8)) {
      const snr = (modulation.sensitivity['20 MHz'] ?? 0) - quietest;
      expect(modulationRate(modulation, '20 MHz')).toBeLessThan(shannonRate({ bandwidth: 20e6, snr }));
    }
  });

  it('are chosen by what the signal meets, and none when it meets none', () => {
    expect(chooseModulation(-83, '20 MHz')).toBeUndefined();
    expect(chooseModulation(-82, '20 MHz')?.modulation.index).toBe(0);
    expect(chooseModulation(-30, '20 MHz')?.modulation.index).toBe(7);
    expect(chooseModulation(-30, '20 MHz', 9)?.modulation.index).toBe(8);
    expect(chooseModulation(-30, '80 MHz', 9)?.modulation.index).toBe(9);
    expect(chooseModulation(-71, '20 MHz')?.why).toContain('3.0 dB above');
  });
});

describe('limits of radiated power', () => {
  it('are met exactly by the power left for an aerial', () => {
    fc.assert(
      fc.property(fc.constantFrom(...RADIO_LIMITS), fc.double({ min: -2, max: 24, noNaN: true }), (limit, gain) => {
        const power = powerWithinLimit({ limit: limit.radiated, gain, cable: 0.5 });
        expect(radiatedPower({ power, gain, cable: 0.5 })).toBeCloseTo(limit.radiated, 9);
      }),
    );
  });

  it('are found by region and frequency, and absent where no band is known', () => {
    expect(radioLimitAt('Europe', 2.437e9)?.radiated).toBe(20);
    expect(radioLimitAt('United States', 2.437e9)?.radiated).toBe(36);
    expect(radioLimitAt('Japan', 5.18e9)).toBeUndefined();
    for (const limit of RADIO_LIMITS) expect(limit.low).toBeLessThan(limit.high);
  });
});

describe('streams', () => {
  it('under loss are slower when time-outs are counted', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 0.1, noNaN: true }), (loss) => {
        const at = { segment: 1400, roundTrip: 0.08, loss };
        expect(lossTimeoutRate({ ...at, timeout: 0.3 })).toBeLessThan(lossBoundRate({ ...at, constant: 0.93 }));
      }),
    );
  });

  it('of every cellular network are no thicker up than down', () => {
    for (const rate of CELLULAR_RATES) expect(rate.up).toBeLessThanOrEqual(rate.down);
  });
});

describe('queues', () => {
  it('wait and age as a simulated queue does, random sending times', () => {
    const { wait, age } = simulateQueue(0.6, true, 400000);
    expect(wait / queueWait({ service: 1, load: 0.6, variation: 1 })).toBeCloseTo(1, 1.3);
    expect(age / ageRandomQueue({ service: 1, load: 0.6 })).toBeCloseTo(1, 1.6);
  });

  it('wait and age as a simulated queue does, equal sending times', () => {
    const { wait, age } = simulateQueue(0.6, false, 400000);
    expect(wait / queueWait({ service: 1, load: 0.6, variation: 0 })).toBeCloseTo(1, 1.6);
    expect(age / ageEqualQueue({ service: 1, load: 0.6 })).toBeCloseTo(1, 1.6);
  });

  it('where the newest wins age as the simulation does, also when overloaded', () => {
    for (const load of [0.5, 0.9, 2]) {
      expect(simulateNewestWins(load, 400000) / ageNewestWins({ service: 1, load })).toBeCloseTo(1, 1.6);
    }
  });

  it('are freshest near the published loads of 0.53 and 0.63', () => {
    for (const [law, best] of [
      [ageRandomQueue, 0.53],
      [ageEqualQueue, 0.625],
    ] as const) {
      const here = law({ service: 1, load: best });
      expect(law({ service: 1, load: best - 0.02 })).toBeGreaterThan(here);
      expect(law({ service: 1, load: best + 0.02 })).toBeGreaterThan(here);
    }
  });
});
