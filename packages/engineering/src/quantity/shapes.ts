/** The records that quantities, cases and their evaluation hand to one another. */

/**
 * How a quantity may differ from its best estimate.
 * - exact: not at all.
 * - normal: a bell curve whose standard deviation is the doubt.
 * - rectangular: anywhere between two limits, all alike; the doubt is half the distance.
 * - lognormal: above zero only; the mean is the value and the standard deviation the doubt.
 */
export type Spread = 'exact' | 'normal' | 'rectangular' | 'lognormal';

/**
 * A unit text that stands for everything of its dimension: 'V' also admits mV and kV, 'm/s' also km/h. '1' is a
 * plain number or a percentage. '°C' is a temperature on the scale (°C or K, the value is in kelvin) and 'K' a
 * difference of temperatures, for which °C is refused, because 5 °C there would be 278.15 K.
 */
export type Dimension = string;

/** What a quantity may be, in SI: `above` and `below` exclude the limit itself, `from` and `to` include it. */
export interface Limits {
  readonly above?: number;
  readonly from?: number;
  readonly to?: number;
  readonly below?: number;
}

/** A quantity in the numbers and units somebody wrote, from which it can be printed without loss. */
export type Written =
  | { readonly form: 'exact'; readonly number: number; readonly unit: string }
  | {
      readonly form: 'doubt';
      readonly number: number;
      readonly unit: string;
      /** The standard doubt (k = 1) in `doubtUnit`; '%' means per cent of the number unless `unit` is '%' too. */
      readonly doubt: number;
      readonly doubtUnit: string;
    }
  | {
      readonly form: 'range';
      readonly from: number;
      readonly fromUnit: string;
      readonly to: number;
      readonly unit: string;
    };

/** What is known of one quantity. */
export interface Quantity {
  /** The best estimate, SI (bytes for amounts of data; dB and dBm stay what they are). */
  readonly value: number;
  /** The standard doubt, k = 1, SI; half the width where the spread is rectangular; 0 where it is exact. */
  readonly doubt: number;
  readonly spread: Spread;
  /** The unit it was written in, in its plain form ('Ω' where 'ohm' was written). */
  readonly unit: string;
  /** What was written, letter by letter. */
  readonly text: string;
  readonly written: Written;
}

/** Why a text is no quantity of the dimension that is wanted. */
export type QuantityCode =
  | 'QUANTITY_EMPTY'
  | 'QUANTITY_TOO_LONG'
  | 'QUANTITY_COMMA'
  | 'QUANTITY_NUMBER'
  | 'QUANTITY_NUMBER_MISSING'
  | 'QUANTITY_UNIT_MISSING'
  | 'QUANTITY_UNIT_UNKNOWN'
  | 'QUANTITY_DIMENSION'
  | 'QUANTITY_DOUBT_NEGATIVE'
  | 'QUANTITY_DOUBT_UNIT'
  | 'QUANTITY_RANGE_REVERSED'
  | 'QUANTITY_LIMITS'
  | 'QUANTITY_FORM';

export interface QuantityFault {
  readonly code: QuantityCode;
  /** The part of the text that is at fault. */
  readonly found: string;
  /** Units, or forms, that would have been accepted there. */
  readonly accepted: readonly string[];
  /** What to write instead, as a sentence. */
  readonly hint: string;
}

export type QuantityReading =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly fault: QuantityFault };

/** doubt: one truth that nobody knows yet. variation: differs from day to day. */
export type ColumnKind = 'doubt' | 'variation';

/** An input of a reckoning that is to be drawn. */
export interface CaseInput {
  readonly id: string;
  readonly quantity: Pick<Quantity, 'value' | 'doubt' | 'spread'>;
  readonly kind: ColumnKind;
  /** Where the spread is cut off, SI. */
  readonly limits?: Limits;
}

/** Inputs that a fit has tied together: `matrix[i][j]` is the correlation of `ids[i]` with `ids[j]`. */
export interface Correlation {
  readonly ids: readonly string[];
  readonly matrix: readonly (readonly number[])[];
}

export interface CaseOptions {
  /** How many possible vehicles. */
  readonly cases: number;
  /** An integer from 0 to 2⁵³ − 1. */
  readonly seed: number;
  readonly correlations?: readonly Correlation[];
}

/** One input over all cases. */
export interface Column {
  readonly id: string;
  readonly kind: ColumnKind;
  /** `values[i]` is what possible vehicle i has, SI. */
  readonly values: Float64Array;
  /** `order[i]` is the place, from 0, of vehicle i when all are put in order of their values, where that is known. */
  readonly order?: Int32Array;
}

/** N equally likely vehicles. */
export interface Cases {
  readonly count: number;
  readonly seed: number;
  readonly columns: ReadonlyMap<string, Column>;
}

/** The middle of a distribution and the band that holds 90 % of the cases. */
export interface Band {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
  /** Cases that have a number. */
  readonly counted: number;
  /** Cases left out because they are NaN: the sum does not exist there. */
  readonly missing: number;
}

/** How much of an output's spread one input explains by itself. */
export interface Influence {
  readonly id: string;
  readonly kind: ColumnKind;
  /** First-order index: variance of the conditional mean as a share of the variance. May come out just below zero. */
  readonly index: number;
  /** Is it above the floor, that is, more than chance would give the best of as many idle inputs? */
  readonly clear: boolean;
}

/** All influences upon one output, strongest first, and how much of them is chance. */
export interface Influences {
  readonly ranked: readonly Influence[];
  /** What idle inputs would show. */
  readonly floor: {
    /** The index an idle input has on average: zero, as the estimate is corrected for its bias. */
    readonly expected: number;
    /** Standard deviation of the index of an idle input. */
    readonly deviation: number;
    /** The value that the highest of all idle inputs stays below with the chance `level`. */
    readonly high: number;
    readonly level: number;
  };
  readonly counted: number;
  readonly missing: number;
  /** False where the output is the same in all cases, or too rarely different to rank anything. */
  readonly settled: boolean;
}
