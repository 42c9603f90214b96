/** Choosing a fuse: ratings, derating, what the element drops and what a short would draw. */
import { ZERO_CELSIUS } from '../constants.ts';
import { law, OutOfRange } from '../law.ts';

/** Ratings in which blade fuses are sold [A]; common practice, no source. */
export const BLADE_RATINGS = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40] as const;
/** Largest current a blade fuse can interrupt at 32 V direct [A], ISO 8820-3. */
export const BLADE_BREAKING = 1000;
/** Share of its rating a fuse should carry for long at 25 °C [1], fuse makers' guides: the 25 % derating. */
export const FUSE_DERATING = 0.75;
/** Rating over continuous current by the rival rule [1]. */
export const FUSE_MARGIN = 1.25;
/** Share of its rating a fuse should carry by the strict rule of spaceflight [1], ECSS-Q-ST-30-11C Rev. 2, 6.17. */
export const FUSE_STRICT_SHARE = 0.65;
/** Times its rating the source must be able to deliver so that a fuse opens for certain, ECSS-Q-ST-30-11C, 6.17.3. */
export const FUSE_CLEARING = 3;

const LOAD = { symbol: 'I', is: 'continuous current', unit: 'A', above: 0 } as const;

/** Smallest rating by the 25 % derating. */
export const fuseRatingByDerating = law(
  {
    id: 'fuse-rating-by-derating',
    title: 'Fuse rating by 25 % derating',
    equation: 'In = I / 0.75',
    args: { current: LOAD },
    gives: { symbol: 'In', is: 'smallest rating, before rounding up to a made size', unit: 'A' },
    validFor: 'about 25 °C; the next made rating upwards, never above the thinnest wire behind it',
    leavesOut: 'start pulses, ambient heat',
    source: 'Littelfuse, Fuseology selection guide: operate at no more than 75 % of the rating at 25 °C',
  },
  ({ current }) => current / FUSE_DERATING,
);

/** Smallest rating by the 125 % form, the more lenient rival. */
export const fuseRatingByMargin = law(
  {
    id: 'fuse-rating-by-margin',
    title: 'Fuse rating by the 125 % form',
    equation: 'In = 1.25 · I',
    args: { current: LOAD },
    gives: { symbol: 'In', is: 'smallest rating, before rounding up to a made size', unit: 'A' },
    validFor: 'about 25 °C; the next made rating upwards, never above the thinnest wire behind it',
    leavesOut: 'start pulses, ambient heat',
    source: 'common practice, no source',
  },
  ({ current }) => FUSE_MARGIN * current,
);

/** Smallest rating when the permitted share of the rating and a factor for the ambient are both given. */
export const fuseRatingByShare = law(
  {
    id: 'fuse-rating-by-share',
    title: 'Fuse rating from permitted share and ambient factor',
    equation: 'In = I / (s · f)',
    args: {
      current: LOAD,
      share: { symbol: 's', is: 'share of the rating permitted at room temperature', unit: '1', above: 0, to: 1 },
      ambientShare: { symbol: 'f', is: 'factor for the ambient temperature', unit: '1', above: 0, to: 1.2 },
    },
    gives: { symbol: 'In', is: 'smallest rating, before rounding up to a made size', unit: 'A' },
    validFor: 'any family whose sheet gives s and f',
    leavesOut: 'start pulses',
    source: 'makers’ fuse selection rules: rating = current / (derating · temperature factor)',
  },
  ({ current, share, ambientShare }) => current / (share * ambientShare),
);

/** The next blade rating made. */
export const bladeRating = law(
  {
    id: 'blade-rating',
    title: 'Next blade rating upwards',
    equation: 'Ib = the smallest of 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40 A that is at least In',
    args: { rating: { symbol: 'In', is: 'smallest rating wanted', unit: 'A', above: 0, to: 40 } },
    gives: { symbol: 'Ib', is: 'rating of a blade fuse', unit: 'A' },
    validFor: 'blade fuses of the regular and miniature kinds, 32 V direct',
    leavesOut: 'that shops seldom keep 1, 2, 4 and 35 A',
    source: 'common practice, no source',
  },
  // A rating of 10 asked for as 7.5/0.75 must not become 15 for the last digit of a division.
  ({ rating }) => BLADE_RATINGS.find((made) => made >= rating * (1 - 1e-12)) ?? Number.NaN,
);

/** Ambient derating of a large blade fuse: current carried over rating, by temperature [K]. */
export const FUSE_AMBIENT: readonly { readonly temperature: number; readonly share: number }[] = [
  { temperature: ZERO_CELSIUS + 20, share: 1 },
  { temperature: ZERO_CELSIUS + 65, share: 34 / 40 },
  { temperature: ZERO_CELSIUS + 85, share: 30 / 40 },
  { temperature: ZERO_CELSIUS + 110, share: 25 / 40 },
  { temperature: ZERO_CELSIUS + 125, share: 22 / 40 },
];

const AMBIENT_SOURCE = 'Littelfuse MAXI 299 data sheet, 40 A part: 40, 34, 30, 25, 22 A at 20, 65, 85, 110, 125 °C';

/** Share of its rating a fuse carries in warm surroundings. */
export const fuseAmbientShare = law(
  {
    id: 'fuse-ambient-share',
    title: 'Share of a fuse rating left in the warmth',
    equation: 'f = straight lines between 1, 0.85, 0.75, 0.625, 0.55 at Ta = 20, 65, 85, 110, 125 °C; 1 below 20 °C',
    args: {
      ambient: { symbol: 'Ta', is: 'temperature around the fuse', unit: 'K', from: 233, to: ZERO_CELSIUS + 125 },
    },
    gives: { symbol: 'f', is: 'share of the rating', unit: '1' },
    validFor: 'blade fuses; the cold side is left at 1 because a cold fuse opens later, not sooner',
    leavesOut: 'other families, heat from the holder',
    source: AMBIENT_SOURCE,
  },
  ({ ambient }) => {
    const above = FUSE_AMBIENT.findIndex((row) => row.temperature >= ambient);
    const [low, high] = [FUSE_AMBIENT[above - 1], FUSE_AMBIENT[above]];
    if (!high) throw new OutOfRange('fuse-ambient-share', 'Ta', ambient, 'to 125 °C', AMBIENT_SOURCE);
    if (!low) return high.share;
    return low.share + ((high.share - low.share) * (ambient - low.temperature)) / (high.temperature - low.temperature);
  },
);

/** Voltage lost in a fuse, whose element is hotter the more it carries. */
export const fuseDrop = law(
  {
    id: 'fuse-drop',
    title: 'Voltage lost in a fuse',
    equation: 'V = I · (Rc + (Vn/In − Rc) · (I/In)²)',
    args: {
      current: { symbol: 'I', is: 'current', unit: 'A', from: 0 },
      rating: { symbol: 'In', is: 'rating', unit: 'A', above: 0 },
      coldResistance: {
        symbol: 'Rc',
        is: 'cold resistance, measured below a tenth of the rating',
        unit: 'Ω',
        above: 0,
      },
      ratedDrop: { symbol: 'Vn', is: 'drop printed for the rated current', unit: 'V', above: 0 },
    },
    gives: { symbol: 'V', is: 'voltage lost', unit: 'V' },
    validFor: 'steady current up to about the rating: the extra resistance follows the heat, which follows I²',
    leavesOut: 'holder and contacts, which can lose as much again',
    source:
      'interpolation between the two figures of a data sheet (cold resistance, drop at rating); common practice, no source',
  },
  ({ current, rating, coldResistance, ratedDrop }) =>
    current * (coldResistance + (ratedDrop / rating - coldResistance) * (current / rating) ** 2),
);

/** Current a pack would drive into a short circuit. */
export const prospectiveShortCircuit = law(
  {
    id: 'prospective-short-circuit',
    title: 'Prospective short-circuit current of a pack',
    equation: 'Isc = Voc / (n · Rcell / p + Rleads)',
    args: {
      openVoltage: { symbol: 'Voc', is: 'open-circuit voltage of the pack', unit: 'V', above: 0 },
      series: { symbol: 'n', is: 'cells in series', unit: '1', from: 1 },
      parallel: { symbol: 'p', is: 'strings in parallel', unit: '1', from: 1 },
      cellResistance: { symbol: 'Rcell', is: 'internal resistance of one cell', unit: 'Ω', above: 0 },
      leadResistance: { symbol: 'Rleads', is: 'leads and connectors, out and back', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'Isc', is: 'short-circuit current', unit: 'A' },
    validFor: 'the first instant, fully charged; compare with the breaking capacity and with three times the rating',
    leavesOut: 'a protection circuit that opens first, inductance, warming cells',
    source: "Ohm's law for a source with internal resistance; clearing margin after ECSS-Q-ST-30-11C, 6.17.3",
  },
  ({ openVoltage, series, parallel, cellResistance, leadResistance }) =>
    openVoltage / ((series * cellResistance) / parallel + leadResistance),
);

/** The outcome of choosing between the two rules for a rating. */
export interface FuseChoice {
  /** Rating to fit [A]; undefined when none protects the wire and carries the load. */
  readonly rating: number | undefined;
  readonly rule: 'fuse-rating-by-derating' | 'fuse-rating-by-margin' | 'none';
  readonly why: string;
}

/**
 * Chooses the blade rating for a continuous current: the 25 % derating, unless only the 125 % form
 * stays within what the thinnest wire behind the fuse may carry.
 */
export function chooseFuse(load: { current: number; wireLimit: number }): FuseChoice {
  const most = BLADE_RATINGS[BLADE_RATINGS.length - 1] ?? 0;
  const made = (rating: number): number => (rating > most ? Number.POSITIVE_INFINITY : bladeRating({ rating }));
  const careful = made(fuseRatingByDerating({ current: load.current }));
  if (careful <= load.wireLimit) {
    return {
      rating: careful,
      rule: 'fuse-rating-by-derating',
      why: 'The 25 % derating holds and the wire carries the rating.',
    };
  }
  const lenient = made(fuseRatingByMargin({ current: load.current }));
  if (lenient <= load.wireLimit) {
    const why =
      'The 25 % derating asks for a rating above what the wire carries; the 125 % form still protects the wire.';
    return { rating: lenient, rule: 'fuse-rating-by-margin', why };
  }
  return { rating: undefined, rule: 'none', why: 'Every rating that carries the load is above what the wire carries.' };
}
