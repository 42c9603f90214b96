/** Margins and rules of thumb of the trade for small vehicles; none has a source, so each says what it is. */

/** A rule of thumb: a pure number, what it is applied to, and its standing. */
export interface RuleOfThumb {
  readonly value: number;
  readonly of: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

/** Defaults to design by until something better is measured. */
export const MOTION_PRACTICE = {
  designSlope: { value: 0.5, of: 'the slope that grip allows', source: PRACTICE },
  tipMargin: { value: 0.6, of: 'the static tip angle that may be used', source: PRACTICE },
  stepWithoutSuspension: { value: 1 / 3, of: 'the wheel diameter, all wheels driven, at best', source: PRACTICE },
  groundClearance: { value: 0.25, of: 'the wheel diameter, at least', source: PRACTICE },
  travelPerDelay: { value: 1, of: 'the vehicle length, driven within one glass-to-glass delay', source: PRACTICE },
} as const satisfies Readonly<Record<string, RuleOfThumb>>;
