/** For tests: works out a formula with numbers in it, as somebody with a pocket calculator would. */
import { GRAVITY } from '@longrein/laws';
import { differenceToSi, parseUnit, toSi, type Unit } from '../quantity/units.ts';

const FUNCTIONS: Readonly<Record<string, (...x: number[]) => number>> = {
  min: Math.min,
  max: Math.max,
  atan: Math.atan,
  asin: Math.asin,
  tan: Math.tan,
  sin: Math.sin,
  cos: Math.cos,
  exp: Math.exp,
  log10: Math.log10,
  '√': Math.sqrt,
};

/** A number as it is printed, SI, and by how much rounding may have moved it. */
interface Printed {
  readonly si: number;
  readonly rounding: number;
}

/** Thrown where a formula speaks in words instead of arithmetic. */
export class NotArithmetic extends Error {}

interface Result {
  readonly value: number;
  /** How far the result may be off because the printed numbers are rounded. */
  readonly allowed: number;
  readonly numbers: number;
}

/** Works a formula out, and by how much the roundings of its numbers together could move the result. */
export function byHand(formula: string): Result {
  const numbers: Printed[] = [];
  const value = new Reader(formula, numbers, -1, 0).whole();
  let allowed = 0;
  for (let k = 0; k < numbers.length; k++) {
    const [up, down] = [1, -1].map((way) => Math.abs(new Reader(formula, [], k, way).whole() - value));
    allowed += Math.max(up ?? 0, down ?? 0);
  }
  return { value, allowed, numbers: numbers.length };
}

/** Reads left to right: sums of products of powers of atoms. One number, the nudged one, is taken a rounding higher or lower. */
class Reader {
  private rest: string;
  private count = 0;
  private readonly numbers: Printed[];
  private readonly nudged: number;
  private readonly way: number;

  constructor(formula: string, numbers: Printed[], nudged: number, way: number) {
    const [, inner] = /^(.*), not (?:below|less than) 0$/.exec(formula) ?? [];
    this.rest = inner === undefined ? formula : `max(0, ${inner})`;
    this.numbers = numbers;
    this.nudged = nudged;
    this.way = way;
  }

  whole(): number {
    const value = this.sum();
    if (this.rest.trim() !== '') throw new NotArithmetic(this.rest);
    return value;
  }

  private take(pattern: RegExp): string | undefined {
    this.rest = this.rest.trimStart();
    const [found] = pattern.exec(this.rest) ?? [];
    if (found !== undefined) this.rest = this.rest.slice(found.length);
    return found;
  }

  private expect(pattern: RegExp): void {
    if (this.take(pattern) === undefined) throw new NotArithmetic(this.rest);
  }

  private sum(): number {
    let value = this.product();
    for (let sign = this.take(/^[+−]/); sign !== undefined; sign = this.take(/^[+−]/)) {
      value += (sign === '+' ? 1 : -1) * this.product();
    }
    return value;
  }

  private product(): number {
    let value = this.power();
    for (let sign = this.take(/^[·/]/); sign !== undefined; sign = this.take(/^[·/]/)) {
      const next = this.power();
      value = sign === '·' ? value * next : value / next;
    }
    return value;
  }

  private power(): number {
    const value = this.atom();
    return this.take(/^²/) ? value ** 2 : value;
  }

  private atom(): number {
    if (this.take(/^−/)) return -this.power();
    if (this.take(/^½/)) return 0.5;
    if (this.take(/^\(/)) return this.closed(/^\)/);
    if (this.take(/^\|/)) return Math.abs(this.closed(/^\|/));
    if (this.take(/^g\b/)) return GRAVITY;
    const name = this.take(/^(?:min|max|atan|asin|tan|sin|cos|exp|log10|√)/);
    if (name !== undefined) return this.call(FUNCTIONS[name] as (...x: number[]) => number);
    return this.number();
  }

  private closed(end: RegExp): number {
    const value = this.sum();
    this.expect(end);
    return value;
  }

  private call(apply: (...x: number[]) => number): number {
    if (!this.take(/^\(/)) return apply(this.power());
    const given = [this.sum()];
    while (this.take(/^,/)) given.push(this.sum());
    this.expect(/^\)/);
    return apply(...given);
  }

  private number(): number {
    const digits = this.take(/^\d+(?:\.\d+)?(?:e−?\d+)?/);
    if (digits === undefined) throw new NotArithmetic(this.rest);
    const unit = this.unit();
    const amount = Number(digits.replace('−', '-'));
    const place = 10 ** -(digits.split('e')[0]?.split('.')[1]?.length ?? 0);
    // Whole numbers of the formula itself, such as the 2 of a diameter, are exact; rounded ones carry three digits.
    const exact = !digits.includes('.') && digits.length < 3;
    const rounding = exact
      ? 0
      : differenceToSi(unit, place * 10 ** Number(digits.split('e')[1]?.replace('−', '-') ?? 0)) / 2;
    const si = toSi(unit, amount);
    this.numbers.push({ si, rounding });
    return this.count++ === this.nudged ? si + this.way * rounding : si;
  }

  /** The longest text from here that is a unit. */
  private unit(): Unit {
    const [, space = '', candidate = ''] =
      /^( ?)((?:[\p{L}°%][\p{L}\d²³·/]*)(?:\([\p{L}·²]+\))?)/u.exec(this.rest) ?? [];
    for (let length = candidate.length; length > 0; length--) {
      const reading = parseUnit(candidate.slice(0, length));
      if (!reading.ok) continue;
      this.rest = this.rest.slice(space.length + length);
      return reading.unit;
    }
    const one = parseUnit('1');
    if (!one.ok) throw new NotArithmetic('1');
    return one.unit;
  }
}
