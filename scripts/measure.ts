/** Numbers read off simulated waves, whose instants are unevenly spaced and joined by straight lines. */
import type { Measure } from '../packages/laws/src/circuits/circuit.ts';

/** Waves of one run by name; 'time' is one of them. */
export type Waves = ReadonlyMap<string, readonly number[]>;

/** A wave with its instants, both of one length and at least two. */
interface Wave {
  readonly time: readonly number[];
  readonly value: readonly number[];
}

/**
 * Reads one number off a run.
 * @throws  when a signal is not there, the window is not simulated, or the level is never crossed
 */
export function measure(waves: Waves, what: Measure): number {
  const time = named(waves, 'time');
  const first = named(waves, what.of);
  const second = what.minus === undefined ? undefined : named(waves, what.minus);
  const value = second ? first.map((x, i) => x - at(second, i)) : first;
  const wave = { time, value };
  if (what.take === 'value') return valueAt(wave, what.at);
  if (what.take === 'crossing') return crossing(wave, what.level, what.from);
  return over(window(wave, what.from, what.to), what.take);
}

function named(waves: Waves, name: string): readonly number[] {
  const found = waves.get(name);
  if (!found) throw new Error(`No signal ${name}; there are ${[...waves.keys()].join(', ')}`);
  return found;
}

function at(list: readonly number[], index: number): number {
  const found = list[index];
  if (found === undefined) throw new Error(`No point ${index} in a wave of ${list.length}`);
  return found;
}

/** Value at a time, on the straight line between the instants around it. */
function valueAt({ time, value }: Wave, when: number): number {
  const after = time.findIndex((t) => t >= when);
  if (after === 0 && at(time, 0) === when) return at(value, 0);
  if (after <= 0) throw new Error(`${when} s is not among the simulated times up to ${time.at(-1)} s`);
  const [t0, t1] = [at(time, after - 1), at(time, after)];
  const [v0, v1] = [at(value, after - 1), at(value, after)];
  return v0 + ((v1 - v0) * (when - t0)) / (t1 - t0);
}

function crossing({ time, value }: Wave, level: number, from: number): number {
  for (let i = 1; i < time.length; i++) {
    const [v0, v1] = [at(value, i - 1) - level, at(value, i) - level];
    if (at(time, i - 1) < from || v0 === v1 || v0 * v1 > 0) continue;
    return at(time, i - 1) + ((at(time, i) - at(time, i - 1)) * v0) / (v0 - v1);
  }
  throw new Error(`The signal does not cross ${level} after ${from} s`);
}

/** The wave between two times, with points at both. */
function window(wave: Wave, from: number, to: number): Wave {
  const time = [from];
  const value = [valueAt(wave, from)];
  wave.time.forEach((t, i) => {
    if (t <= from || t >= to) return;
    time.push(t);
    value.push(at(wave.value, i));
  });
  return { time: [...time, to], value: [...value, valueAt(wave, to)] };
}

function over({ time, value }: Wave, take: 'mean' | 'rms' | 'min' | 'max'): number {
  if (take === 'min') return value.reduce((least, x) => Math.min(least, x));
  if (take === 'max') return value.reduce((most, x) => Math.max(most, x));
  let sum = 0;
  for (let i = 1; i < time.length; i++) {
    const [a, b] = [at(value, i - 1), at(value, i)];
    sum += (at(time, i) - at(time, i - 1)) * (take === 'mean' ? (a + b) / 2 : (a * a + a * b + b * b) / 3);
  }
  const mean = sum / (at(time, time.length - 1) - at(time, 0));
  return take === 'mean' ? mean : Math.sqrt(mean);
}
