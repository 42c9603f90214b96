/**
 * What a law is: one published relation, its facts stated once as data, and the arithmetic.
 * The facts feed range checks, `explain`, the documentation and the book of checks.
 */

/** One argument of a law. `unit` is SI, '1' for a pure number, 'name' for one of `oneOf`. */
export interface Argument {
  readonly symbol: string;
  readonly is: string;
  readonly unit: string;
  /** Inclusive bounds of validity. */
  readonly from?: number;
  readonly to?: number;
  /** Exclusive bounds of validity. */
  readonly above?: number;
  readonly below?: number;
  /** For `unit: 'name'`: the accepted names. */
  readonly oneOf?: readonly string[];
}

/** What a law gives back. */
export interface Given {
  readonly symbol: string;
  readonly is: string;
  readonly unit: string;
}

/** The arguments of a law, by name, in the order of its signature. */
export type Arguments = Readonly<Record<string, Argument>>;

/** The values a law takes: a number, or one of the accepted names. */
export type Values<S extends Arguments> = {
  readonly [K in keyof S]: S[K] extends { readonly oneOf: readonly (infer N extends string)[] } ? N : number;
};

/** The facts of a law, stated once. Every text is non-empty; a house test refuses otherwise. */
export interface LawFacts<S extends Arguments = Arguments> {
  /** Kebab-case, unique in the house. */
  readonly id: string;
  readonly title: string;
  /** The equation in the symbols below, checkable by hand. */
  readonly equation: string;
  readonly args: S;
  readonly gives: Given;
  /** Where the law may be used, beyond the bounds of its arguments. */
  readonly validFor: string;
  /** What it leaves out. */
  readonly leavesOut: string;
  /** Title, edition, equation or table. A rule of the trade says 'common practice, no source'. */
  readonly source: string;
}

/** A law: call it with named SI arguments; its facts hang on it. */
export interface Law<S extends Arguments = Arguments> {
  (args: Values<S>): number;
  readonly facts: LawFacts<S>;
  /** The arithmetic without the range check, for kernels and for tests of the signature. */
  readonly bare: (args: Values<S>) => number;
}

/** A law whose arguments are not known to the compiler: for lists of laws. */
export interface AnyLaw {
  // biome-ignore lint/suspicious/noExplicitAny: the arguments differ from law to law; lists only need the facts
  (args: any): number;
  readonly facts: LawFacts;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  readonly bare: (args: any) => number;
}

/** Thrown when an argument lies outside the range a law is valid for. Never clamps in silence. */
export class OutOfRange extends Error {
  readonly code = 'OUT_OF_RANGE';
  readonly law: string;
  readonly argument: string;
  readonly found: number | string;
  readonly accepted: string;
  constructor(law: string, argument: string, found: number | string, accepted: string, source: string) {
    super(`${law}: ${argument} is ${found}; accepted: ${accepted} (${source})`);
    this.name = 'OutOfRange';
    this.law = law;
    this.argument = argument;
    this.found = found;
    this.accepted = accepted;
  }
}

/** Says which values an argument accepts, for errors and documentation. */
export function acceptedRange(argument: Argument): string {
  if (argument.oneOf) return argument.oneOf.join(', ');
  const parts: string[] = [];
  if (argument.above !== undefined) parts.push(`above ${argument.above}`);
  if (argument.from !== undefined) parts.push(`from ${argument.from}`);
  if (argument.to !== undefined) parts.push(`to ${argument.to}`);
  if (argument.below !== undefined) parts.push(`below ${argument.below}`);
  const range = parts.length === 0 ? 'any finite number' : parts.join(' ');
  return argument.unit === '1' ? range : `${range} ${argument.unit}`;
}

function inRange(value: number | string, a: Argument): boolean {
  if (a.oneOf) return a.oneOf.includes(value as string);
  const x = value as number;
  return (
    Number.isFinite(x) &&
    (a.from === undefined || x >= a.from) &&
    (a.to === undefined || x <= a.to) &&
    (a.above === undefined || x > a.above) &&
    (a.below === undefined || x < a.below)
  );
}

/** The next double above x: the least number that is still greater. */
function nextAbove(x: number): number {
  if (x === 0) return Number.MIN_VALUE;
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, x);
  view.setBigInt64(0, view.getBigInt64(0) + (x > 0 ? 1n : -1n));
  return view.getFloat64(0);
}

/** The least number an argument accepts; NaN, which accepts no number, where it takes a name. */
function least({ oneOf, from = -Number.MAX_VALUE, above }: Argument): number {
  if (oneOf) return Number.NaN;
  return above === undefined ? from : Math.max(from, nextAbove(above));
}

/** The greatest number an argument accepts; NaN where it takes a name. */
function most({ oneOf, to = Number.MAX_VALUE, below }: Argument): number {
  if (oneOf) return Number.NaN;
  return below === undefined ? to : Math.min(to, -nextAbove(-below));
}

/**
 * Makes a law from its facts and its arithmetic.
 * @param facts  the facts, see {@link LawFacts}
 * @param bare   the arithmetic on named SI arguments; it destructures exactly the names in `facts.args`
 * @returns      a function that checks the range of every argument, then computes
 * @throws       (when called) {@link OutOfRange}, naming the argument, the value and what is accepted
 */
export function law<const S extends Arguments>(facts: LawFacts<S>, bare: (args: Values<S>) => number): Law<S> {
  const names = Object.keys(facts.args);
  const bounds = names.map((name) => facts.args[name] as Argument);
  // Sums call laws millions of times: two flat bounds decide at once; only what they refuse, and names, is looked at again.
  const lows = Float64Array.from(bounds, least);
  const highs = Float64Array.from(bounds, most);
  const checked = (args: Values<S>): number => {
    for (let i = 0; i < names.length; i++) {
      const value = args[names[i] as keyof S] as number | string;
      if (typeof value === 'number' && value >= (lows[i] as number) && value <= (highs[i] as number)) continue;
      const bound = bounds[i] as Argument;
      if (!inRange(value, bound)) {
        throw new OutOfRange(facts.id, bound.symbol, value, acceptedRange(bound), facts.source);
      }
    }
    return bare(args);
  };
  return Object.assign(checked, { facts, bare });
}

/** Tells laws from the tables and helpers exported beside them. */
export function isLaw(value: unknown): value is AnyLaw {
  return typeof value === 'function' && 'facts' in value && 'bare' in value;
}
