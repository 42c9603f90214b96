/** How axles share a load: by the lever where there are two, by their springs where there are more. */
import { type AnyLaw, equalSpringLoad, frontAxleLoad, OutOfRange, rearAxleLoad, sprungAxleLoads } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import type { Ref, Route } from '../sum.ts';
import { AXLES, type AxleNumber, eachAxle, names, onlyFor, perAxle, placesOf } from './axle-routes.ts';

/** Loads shared by equal springs do not depend on their rate, so any rate serves [N/m]. */
const ANY_RATE = 1000;

/** Has every axle a spring of a known rate? */
export const allSprung = ({ axles }: Layout) => axles.every(({ sprung }) => sprung);

/** Load of one of two axles, by the lever. Beyond the axles there is no balance to speak of: it tips. */
export function leverLoad(axle: AxleNumber, mass: number, wheelbase: number, centre: number): number {
  if (!(centre > 0 && centre < wheelbase)) {
    throw new OutOfRange('axle-loads', 'a', centre, 'a mass centre between the axles', 'it tips over on the level');
  }
  const standing = { mass, wheelbase, cgBehindFront: centre, cgHeight: 1, slope: 0, acceleration: 0 };
  return axle === 1 ? frontAxleLoad(standing) : rearAxleLoad(standing);
}

/** Loads of sprung axles on the level; `lifted` raises the ground under one of them. */
export function springLoads(
  places: readonly number[],
  rates: readonly number[],
  mass: number,
  centre: number,
  lifted?: { readonly axle: number; readonly by: number },
): readonly number[] {
  const axles = places.map((position, i) => ({
    position,
    rate: rates[i] as number,
    ground: lifted?.axle === i ? lifted.by : 0,
  }));
  return sprungAxleLoads({ axles, mass, cgBehindFront: centre, cgHeight: 0, slope: 0 });
}

/** What the routes of three and four axles need to know of springs: their rates, or that they are taken as equal. */
export interface Springs {
  readonly name: string;
  readonly fits: (layout: Layout) => boolean;
  readonly uses: Readonly<Record<`rate${AxleNumber}`, Ref>>;
  readonly formula: string;
  /** The law behind it, where it is a published one: unequal springs are worked out as a system of equations. */
  readonly laws: readonly AnyLaw[];
  readonly rates: (x: { readonly [K in `rate${AxleNumber}`]: number }) => readonly number[];
}

function springsOf(axles: readonly AxleNumber[]): readonly Springs[] {
  return [
    {
      name: `${axles.length} axles on springs of known rate`,
      fits: allSprung,
      uses: perAxle('rate', axles, (axle) => `axle.${axle}.springRate`),
      formula: `springs of ${names('rate', axles)} at ${placesOf(axles)}`,
      laws: [],
      rates: (x) => eachAxle(x, 'rate', axles),
    },
    {
      name: `${axles.length} axles, taken as equally sprung`,
      fits: (layout) => !allSprung(layout),
      uses: perAxle('rate', [], () => 'toy.mass'),
      formula: `equal springs at ${placesOf(axles)}`,
      laws: [equalSpringLoad],
      rates: () => axles.map(() => ANY_RATE),
    },
  ];
}

/** One route for three and four axles, and for known and equal springs. */
export function bySprings(make: (axles: readonly AxleNumber[], springs: Springs) => Route): Route[] {
  return [AXLES.slice(0, 3), AXLES.slice(0, 4)].flatMap((axles) =>
    springsOf(axles).map((springs) =>
      onlyFor(
        { name: springs.name, ...make(axles, springs) },
        (layout) => layout.axles.length === axles.length && springs.fits(layout),
      ),
    ),
  );
}
