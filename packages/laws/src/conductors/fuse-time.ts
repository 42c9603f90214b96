/** How long a blade fuse takes to open: between its published gates, and by melting energy where heat cannot escape. */
import { law, OutOfRange } from '../law.ts';

/** Families of blade fuse. */
export const FUSE_FAMILIES = ['blade', 'large blade'] as const;
export type FuseFamily = (typeof FUSE_FAMILIES)[number];

/** One time gate: at this multiple of the rating the fuse opens between the two times. */
export interface FuseGate {
  /** Current over rating. */
  readonly share: number;
  readonly fastest: number;
  readonly slowest: number;
  readonly source: string;
}

/** 100 h, the time a fuse must carry its first gate [s]. */
export const FUSE_CARRIES = 360_000;
const NEVER = Number.POSITIVE_INFINITY;
const ISO = 'ISO 8820-3, types C and F, from memory';
const REGULAR = 'Littelfuse ATOF 287 data sheet';
const LARGE = 'Littelfuse MAXI 299 data sheet';

/** Time gates by family, currents rising. */
export const FUSE_GATES: Readonly<Record<FuseFamily, readonly FuseGate[]>> = {
  blade: [
    { share: 1.1, fastest: FUSE_CARRIES, slowest: NEVER, source: ISO },
    { share: 1.35, fastest: 0.75, slowest: 600, source: REGULAR },
    { share: 1.6, fastest: 0.25, slowest: 50, source: REGULAR },
    { share: 2, fastest: 0.15, slowest: 5, source: REGULAR },
    { share: 3.5, fastest: 0.08, slowest: 0.5, source: REGULAR },
    { share: 6, fastest: 0.03, slowest: 0.15, source: `${REGULAR} (slowest); ${ISO} (fastest)` },
  ],
  'large blade': [
    { share: 1, fastest: FUSE_CARRIES, slowest: NEVER, source: LARGE },
    { share: 1.35, fastest: 60, slowest: 1800, source: LARGE },
    { share: 2, fastest: 2, slowest: 50, source: LARGE },
    { share: 3.5, fastest: 0.2, slowest: 7, source: LARGE },
    { share: 6, fastest: 0.04, slowest: 1, source: LARGE },
  ],
};

/** Middle of a gate on a logarithmic scale; the first gate, which has no upper end, counts as its lower. */
const middle = (gate: FuseGate): number =>
  gate.slowest === NEVER ? gate.fastest : Math.sqrt(gate.fastest * gate.slowest);

/** Straight lines between the gates on logarithmic scales; constant I²t above the last; never below the first. */
function timeThrough(gates: readonly FuseGate[], share: number, of: (gate: FuseGate) => number): number {
  const at = gates.findIndex((gate) => gate.share >= share);
  const last = gates[gates.length - 1];
  if (at === -1) return last ? of(last) * (last.share / share) ** 2 : NEVER;
  const [low, high] = [gates[at - 1], gates[at]];
  if (!high) return NEVER;
  if (share === high.share) return of(high);
  if (!low || of(low) === NEVER) return NEVER;
  const along = Math.log(share / low.share) / Math.log(high.share / low.share);
  return of(low) * (of(high) / of(low)) ** along;
}

const SHARED = {
  args: {
    family: { symbol: 'family', is: 'fuse family', unit: 'name', oneOf: FUSE_FAMILIES },
    share: { symbol: 'm', is: 'current over rating', unit: '1', from: 0, to: 100 },
  },
  validFor: 'about 23 °C, direct current; at or below the first gate the fuse carries for ever (infinity)',
  leavesOut: 'ambient temperature, heat left by earlier current, arcing near the breaking capacity',
  source:
    'gates of ISO 8820-3 (types C and F) and of makers’ sheets; straight lines on logarithmic scales between them',
} as const;

/** Most likely opening time. */
export const fuseOpeningTime = law(
  {
    id: 'fuse-opening-time',
    title: 'Opening time of a blade fuse',
    equation: 'log t = straight lines in log m through √(fastest·slowest) of each gate of the family; t ∝ 1/m² above 6',
    gives: { symbol: 't', is: 'opening time', unit: 's' },
    ...SHARED,
  },
  ({ family, share }) => {
    const carried = share <= (FUSE_GATES[family][0]?.share ?? 0);
    return carried ? NEVER : timeThrough(FUSE_GATES[family], share, middle);
  },
);

/** Shortest time after which a good fuse may open: a load must be over by then. */
export const fuseFastestOpening = law(
  {
    id: 'fuse-fastest-opening',
    title: 'Earliest opening of a blade fuse',
    equation: 'log t = straight lines in log m through the lower ends of the gates of the family; t ∝ 1/m² above 6',
    gives: { symbol: 't', is: 'earliest opening time', unit: 's' },
    ...SHARED,
  },
  ({ family, share }) => timeThrough(FUSE_GATES[family], share, (gate) => gate.fastest),
);

/** Longest time a good fuse may take: the wire behind it must stand the current that long. */
export const fuseSlowestOpening = law(
  {
    id: 'fuse-slowest-opening',
    title: 'Latest opening of a blade fuse',
    equation: 'log t = straight lines in log m through the upper ends of the gates of the family; t ∝ 1/m² above 6',
    gives: { symbol: 't', is: 'latest opening time', unit: 's' },
    ...SHARED,
  },
  ({ family, share }) => timeThrough(FUSE_GATES[family], share, (gate) => gate.slowest),
);

const ADIABATIC_SOURCE = 'melting I²t of data sheets: t = I²t/I² while no heat leaves the element';

/** Opening time from the melting energy, where the current is so large that no heat leaves the element. */
export const fuseAdiabaticTime = law(
  {
    id: 'fuse-adiabatic-time',
    title: 'Opening time from melting I²t',
    equation: 't = E / I², only for I ≥ 2 · In',
    args: {
      meltingEnergy: { symbol: 'E', is: 'melting I²t of the data sheet', unit: 'A²·s', above: 0 },
      current: { symbol: 'I', is: 'current', unit: 'A', above: 0 },
      rating: { symbol: 'In', is: 'rating', unit: 'A', above: 0 },
    },
    gives: { symbol: 't', is: 'time to melt', unit: 's' },
    validFor: 'currents of at least twice the rating; below that heat escapes and the law is wrong, so it refuses',
    leavesOut: 'arcing after melting, warmth from before',
    source: ADIABATIC_SOURCE,
  },
  ({ meltingEnergy, current, rating }) => {
    if (current < 2 * rating) {
      throw new OutOfRange(
        'fuse-adiabatic-time',
        'I',
        current,
        `from ${2 * rating} A, twice the rating`,
        ADIABATIC_SOURCE,
      );
    }
    return meltingEnergy / current ** 2;
  },
);
