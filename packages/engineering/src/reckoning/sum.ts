/**
 * What a sum is: a derived quantity that can show its working. A sum has one or more routes, rivals in order of
 * preference; the first that applies to the vehicle is taken, and `explain` says which.
 */
import type { AnyLaw } from '@longrein/laws';
import type { InputId } from '../dossier/facts/quantities.ts';
import type { Layout } from '../dossier/resolve.ts';
import type { SumId } from './sums/ids.ts';

/** What a sum or finding may use: another sum or an input. */
export type Ref = SumId | InputId;

/** A tabulated figure that goes into a sum, with its source. */
export interface Constant {
  readonly value: number;
  /** SI. */
  readonly unit: string;
  readonly is: string;
  readonly source: string;
}

/** Tells what is known of an input. */
export type Known = (id: InputId) => boolean;

/** One way to work a sum out. */
export interface Route {
  /** Name of the route, where a sum has several: 'measured', 'from the run time'. */
  readonly name?: string;
  /** Does the route apply? `has` tells whether an input was stated or assumed, `stated` whether somebody stated it. */
  readonly when?: (layout: Layout, has: Known, stated: Known) => boolean;
  /** Names used in `formula` and `value`, and what each stands for. */
  readonly uses: Readonly<Record<string, Ref>>;
  /** Tabulated figures, which may depend on the layout. */
  readonly takes?: (layout: Layout) => Readonly<Record<string, Constant>>;
  /** In words a maker can check by hand; every used name stands in braces: '{mass} · g'. */
  readonly formula: string;
  /** The laws it rests on; empty for plain bookkeeping. */
  readonly laws: readonly AnyLaw[];
  readonly value: (x: Readonly<Record<string, number>>, layout: Layout) => number;
}

/** A derived quantity. */
export interface Sum {
  readonly title: string;
  /** Unit it is shown in; values are SI. */
  readonly unit: string;
  /** Does it mean anything for this vehicle? Absent: always. `stated` tells whether somebody stated an input. */
  readonly when?: (layout: Layout, stated: Known) => boolean;
  /** What the reader must know before trusting it. */
  readonly caveat?: string;
  readonly routes: readonly Route[];
}

/** The sums of a subject, one for each of its ids. */
export type SumsOf<Id extends SumId> = { readonly [K in Id]: Sum };

interface TypedRoute<U extends Readonly<Record<string, Ref>>, C extends string> {
  readonly name?: string;
  readonly when?: Route['when'];
  readonly uses: U;
  readonly takes?: (layout: Layout) => Readonly<Record<C, Constant>>;
  readonly formula: string;
  readonly laws: readonly AnyLaw[];
  readonly value: (x: { readonly [K in keyof U | C]: number }, layout: Layout) => number;
}

/** Makes a route; the compiler checks that `value` reads only what is used or taken. */
export function route<const U extends Readonly<Record<string, Ref>>, C extends string = never>(
  typed: TypedRoute<U, C>,
): Route {
  return typed as unknown as Route;
}

/** What a sum is about, apart from how it is worked out. */
type About = Omit<Sum, 'routes'>;

/** Makes a sum with a single route. */
export function sum<const U extends Readonly<Record<string, Ref>>, C extends string = never>(
  about: About,
  only: TypedRoute<U, C>,
): Sum {
  return { ...about, routes: [route(only)] };
}

/** Makes a sum with rival routes, best first. */
export function sumByRoutes(about: About, ...routes: readonly Route[]): Sum {
  return { ...about, routes };
}
