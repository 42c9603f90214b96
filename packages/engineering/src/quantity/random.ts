/**
 * Random numbers from a seed. One published generator, and a stream of its own for every purpose and member, so that
 * a new draw in one part of the program moves no number in another.
 *
 * Generator: xoshiro128** 1.1, Blackman & Vigna, Scrambled linear pseudorandom number generators, ACM Trans. Math.
 * Softw. 47 (2021), 36. It works on 32-bit words, which JavaScript multiplies exactly.
 * Seeding: SplitMix64, Steele, Lea & Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.
 */
import { normalQuantile } from './normal.ts';

const TWO_32 = 2 ** 32;
const TWO_53 = 2 ** 53;

/** The generator, from four words that are not all zero. */
export class Stream {
  #a: number;
  #b: number;
  #c: number;
  #d: number;

  constructor(a: number, b: number, c: number, d: number) {
    if ((a | b | c | d) === 0) throw new RangeError('A stream cannot start from zero alone.');
    this.#a = a | 0;
    this.#b = b | 0;
    this.#c = c | 0;
    this.#d = d | 0;
  }

  /** A whole number from 0 to 2³² − 1. */
  word(): number {
    const b = this.#b;
    const turned = Math.imul(b, 5);
    const out = Math.imul((turned << 7) | (turned >>> 25), 9) >>> 0;
    this.#c ^= this.#a;
    this.#d ^= b;
    this.#b = b ^ this.#c;
    this.#a ^= this.#d;
    this.#c ^= b << 9;
    this.#d = (this.#d << 11) | (this.#d >>> 21);
    return out;
  }

  /** A number from 0 up to but not including 1, with 53 random bits. */
  uniform(): number {
    const high = this.word() >>> 5;
    return (high * 2 ** 26 + (this.word() >>> 6)) / TWO_53;
  }

  /** A number between 0 and 1, neither of them, with 32 random bits. */
  inside(): number {
    return (this.word() + 0.5) / TWO_32;
  }

  /** A whole number from 0 up to but not including n; for n up to a million even to one part in four thousand. */
  below(n: number): number {
    return Math.floor((this.word() / TWO_32) * n);
  }

  /** A standard normal number. */
  normal(): number {
    const high = this.word() >>> 5;
    return normalQuantile((high * 2 ** 26 + (this.word() >>> 6) + 0.5) / TWO_53);
  }
}

/** SplitMix64 on two 32-bit halves. */
export class SplitMix64 {
  #stateHigh: number;
  #stateLow: number;
  /** The halves of the newest output. */
  high = 0;
  low = 0;

  constructor(high: number, low: number) {
    this.#stateHigh = high >>> 0;
    this.#stateLow = low >>> 0;
  }

  next(): this {
    const low = this.#stateLow + 0x7f4a7c15;
    this.#stateHigh = (this.#stateHigh + 0x9e3779b9 + (low >= TWO_32 ? 1 : 0)) >>> 0;
    this.#stateLow = low >>> 0;
    this.high = this.#stateHigh;
    this.low = this.#stateLow;
    this.#foldAndMultiply(30, 0xbf58476d, 0x1ce4e5b9);
    this.#foldAndMultiply(27, 0x94d049bb, 0x133111eb);
    this.#fold(31);
    return this;
  }

  #fold(bits: number): void {
    this.low = (this.low ^ ((this.low >>> bits) | (this.high << (32 - bits)))) >>> 0;
    this.high = (this.high ^ (this.high >>> bits)) >>> 0;
  }

  /** z = (z xor z >> bits) · factor, modulo 2⁶⁴. */
  #foldAndMultiply(bits: number, high: number, low: number): void {
    this.#fold(bits);
    const crossed = Math.imul(this.high, low) + Math.imul(this.low, high);
    this.high = (upperHalf(this.low, low) + crossed) >>> 0;
    this.low = Math.imul(this.low, low) >>> 0;
  }
}

/** The upper 32 bits of the product of two 32-bit words. */
function upperHalf(a: number, b: number): number {
  const [aHigh, aLow] = [a >>> 16, a & 0xffff];
  const [bHigh, bLow] = [b >>> 16, b & 0xffff];
  const middle = aHigh * bLow + ((aLow * bLow) >>> 16);
  const carry = (middle & 0xffff) + aLow * bHigh;
  return aHigh * bHigh + Math.floor(middle / 65536) + Math.floor(carry / 65536);
}

/**
 * The stream of a purpose and a member. The letters of the purpose and the member are folded, one after another,
 * into a SplitMix64 state that began as the seed; the next four words start the generator.
 */
export function stream(seed: number, purpose: string, member = 0): Stream {
  for (const [name, value] of Object.entries({ seed, member })) {
    if (!Number.isSafeInteger(value) || value < 0) {
      throw new RangeError(`The ${name} must be a whole number from 0 to 2^53 - 1, not ${value}.`);
    }
  }
  let mixed = new SplitMix64(Math.floor(seed / TWO_32), seed >>> 0).next();
  for (let i = 0; i < purpose.length; i++) mixed = new SplitMix64(mixed.high, mixed.low ^ purpose.charCodeAt(i)).next();
  // The length tells the letters of the purpose from the member that follows them.
  mixed = new SplitMix64(mixed.high ^ purpose.length, mixed.low).next();
  mixed = new SplitMix64(mixed.high ^ Math.floor(member / TWO_32), mixed.low ^ (member >>> 0));
  const { high: a, low: b } = mixed.next();
  const { high: c, low: d } = mixed.next();
  return new Stream(a, b, c, d);
}
