/** How statements that cannot all be true are reported. */
import { type Fault, fault } from './faults.ts';
import type { Stated } from './field.ts';
import { pointer } from './locate.ts';

export type At = readonly (string | number)[];

/** Two statements that cannot both be true; the fault stands where one of them does. */
export const clash = (at: At, found: string, accepted: string, todo?: string): Fault =>
  fault('VEHICLE_CONTRADICTION', pointer(at), found, accepted, todo);

/** Something that must be there because of something else that is. */
export const lacking = (at: At, accepted: string, todo?: string): Fault =>
  fault('DOSSIER_KEY_MISSING', pointer(at), 'nothing', accepted, todo);

/** The value of a statement, SI. */
export const siOf = (stated: Stated | undefined): number | undefined => stated?.quantity.value;

/** The lower and upper end of what is stated: of a range its ends, otherwise the value itself. */
export function endsOf({ quantity }: Stated): readonly [number, number] {
  const reach = quantity.spread === 'rectangular' ? quantity.doubt : 0;
  return [quantity.value - reach, quantity.value + reach];
}

/** A fault at `at` where what stands there is more than `times` the size of something else. */
export function notAbove(
  at: At,
  stated: Stated | undefined,
  limit: { readonly stated: Stated | undefined; readonly is: string; readonly times?: number },
): Fault[] {
  const { times = 1 } = limit;
  const [value, most] = [siOf(stated), siOf(limit.stated)];
  if (stated === undefined || value === undefined || most === undefined || value <= most * times) return [];
  const share = times === 1 ? 'no more than' : `no more than ${times} times`;
  return [clash(at, stated.quantity.text, `${share} ${limit.is}, ${limit.stated?.quantity.text}`)];
}
