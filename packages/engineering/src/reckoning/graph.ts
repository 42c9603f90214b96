/** The graph of sums: which route each sum takes for a vehicle, what it rests on, and that it has no cycle. */
import type { Layout, Vehicle } from '../dossier/resolve.ts';
import type { Known, Ref, Route, Sum } from './sum.ts';
import { isSumId, SUM_IDS, type SumId } from './sums/ids.ts';

export type Sums = Readonly<Record<SumId, Sum>>;

/** How a sum stands for one vehicle before anything is computed. */
export type Standing =
  | { readonly kind: 'takes'; readonly route: Route }
  /** It means nothing for this vehicle, such as a steering motor on a skid-steered one. */
  | { readonly kind: 'does not apply' }
  /** It would mean something, but what it needs is not known: for each route that applies, what that one lacks. */
  | { readonly kind: 'lacks'; readonly ways: Ways };

export interface Graph {
  readonly standing: ReadonlyMap<SumId, Standing>;
  /** The sums that take a route, each after all it uses. */
  readonly order: readonly SumId[];
}

/**
 * Chooses the routes of all sums for a vehicle.
 * @throws Error naming the path where sums use one another in a circle
 */
export function graphOf(sums: Sums, vehicle: Vehicle): Graph {
  const standing = new Map<SumId, Standing>();
  const order: SumId[] = [];
  const path: SumId[] = [];
  const has: Known = (id) => vehicle.inputs.has(id);
  const stated: Known = (id) => has(id) && vehicle.inputs.get(id)?.origin !== 'assumed';

  const available = (ref: Ref): boolean => (isSumId(ref) ? visit(ref).kind === 'takes' : has(ref));

  const visit = (id: SumId): Standing => {
    const known = standing.get(id);
    if (known) return known;
    if (path.includes(id)) throw new Error(`sums in a circle: ${[...path.slice(path.indexOf(id)), id].join(' → ')}`);
    path.push(id);
    const found = stand(sums[id], vehicle.layout, { has, stated, available });
    path.pop();
    standing.set(id, found);
    if (found.kind === 'takes') order.push(id);
    return found;
  };

  for (const id of SUM_IDS) visit(id);
  return { standing, order };
}

interface KnownOf {
  readonly has: Known;
  readonly stated: Known;
  readonly available: (ref: Ref) => boolean;
}

function stand(sum: Sum, layout: Layout, { has, stated, available }: KnownOf): Standing {
  if (sum.when && !sum.when(layout, stated)) return { kind: 'does not apply' };
  const ways: (readonly Ref[])[] = [];
  for (const route of sum.routes) {
    if (route.when && !route.when(layout, has, stated)) continue;
    const lacking = [...new Set(Object.values(route.uses))].filter((ref) => !available(ref));
    if (lacking.length === 0) return { kind: 'takes', route };
    ways.push(lacking);
  }
  return { kind: 'lacks', ways };
}

/** Lists of what would have to be stated together, any one of which would do. */
export type Ways = readonly (readonly Ref[])[];

/**
 * What is not known at the bottom of a sum that lacks something: the ways to make it known, each the inputs that would
 * have to be stated together. A way that holds another one whole says nothing new and is left out.
 */
export function waysToKnow({ standing }: Pick<Graph, 'standing'>, ref: Ref): Ways {
  const known = new Map<Ref, Ways>();
  const visit = (of: Ref): Ways => {
    const before = known.get(of);
    if (before) return before;
    const found = isSumId(of) ? standing.get(of) : undefined;
    const routes = found?.kind === 'lacks' ? found.ways : [];
    const ways = found?.kind === 'takes' ? [[]] : routes.flatMap((way) => way.map(visit).reduce(together, [[]]));
    const least = ways.length === 0 ? [[of]] : leastOf(ways);
    known.set(of, least);
    return least;
  };
  return visit(ref);
}

/** Ways to know two things at once. */
function together(a: Ways, b: Ways): Ways {
  return leastOf(a.flatMap((refs) => b.map((more) => [...new Set([...refs, ...more])])));
}

/** Ways kept at each sum: a reader takes in no more, and all combinations of all routes would be thousands. */
const WAYS_MOST = 4;

/** The ways that ask for least, without those that ask for all of another and more. */
function leastOf(ways: Ways): Ways {
  const within = (small: readonly Ref[], large: readonly Ref[]) => small.every((ref) => large.includes(ref));
  const kept: (readonly Ref[])[] = [];
  for (const way of [...ways].sort((a, b) => a.length - b.length)) {
    if (kept.length < WAYS_MOST && !kept.some((other) => within(other, way))) kept.push(way);
  }
  return kept;
}

/**
 * Refuses sums that could use one another in a circle for any vehicle, whatever routes it takes.
 * @throws Error naming the path
 */
export function refuseCycles(sums: Sums): void {
  const done = new Set<SumId>();
  const visit = (id: SumId, path: readonly SumId[]): void => {
    if (path.includes(id)) throw new Error(`sums in a circle: ${[...path.slice(path.indexOf(id)), id].join(' → ')}`);
    if (done.has(id)) return;
    for (const route of sums[id].routes) {
      for (const ref of Object.values(route.uses)) if (isSumId(ref)) visit(ref, [...path, id]);
    }
    done.add(id);
  };
  for (const id of SUM_IDS) visit(id, []);
}
