/**
 * Quantities: units, doubt, cases, bands and sensitivity.
 *
 * parseQuantity(text, dimension, limits?) → QuantityReading      '1.62 kg ± 5 g', 'kg'
 * makeQuantity(written, limits?) → Quantity                      the same from numbers, such as a fit's
 * formatQuantity(quantity) → string                              reads back as exactly the same quantity
 * formatValue(si, unit, digits?) → string                        '7.42 V'
 * formatDoubted(si, doubt, unit) → string                        '7.40 ± 0.12 V'
 * inUnit(si, unit) / fromUnit(amount, unit) → number             single numbers, SI to unit and back
 * stream(seed, purpose, member?) → Stream                        uniform(), below(n), normal(), word()
 * drawCases(inputs, { cases, seed, correlations }) → Cases       N equally likely vehicles
 * quantile(values, p), band(values), mean, standardDeviation, correlation
 * classify(cases) → Classes; influences(classes, output) → Influences
 */

export { band, quantile, quantiles } from './bands.ts';
export { CASES_MAX, drawCases } from './cases.ts';
export { within } from './limits.ts';
export { normalBelow, normalQuantile } from './normal.ts';
export { formatQuantity, makeQuantity, parseQuantity } from './quantity.ts';
export { SplitMix64, Stream, stream } from './random.ts';
export { type Classes, classify, influences } from './sensitivity.ts';
export type * from './shapes.ts';
export { differenceUnit, formatDifference, formatDoubted, formatPlain, formatValue } from './show.ts';
export { correlation, mean, standardDeviation } from './summary.ts';
export { acceptedUnits } from './unit-near.ts';
export { differenceInUnit, fromUnit, inUnit, parseUnit, type Unit, type UnitReading, unitOf } from './units.ts';
