/** Measured facts that were written without any doubt. */
import type { Input, Vehicle } from './vehicle.ts';

/**
 * Quantities that have one true value, were stated by somebody, and are taken as exact because no doubt was written.
 * Chosen and worst values are what they are, and nothing at all is exactly nothing: they are left out.
 */
export function statedAsExact(vehicle: Vehicle): Input[] {
  return [...vehicle.inputs.values()].filter(
    ({ behaviour, origin, quantity }) =>
      behaviour === 'doubt' && origin !== 'assumed' && quantity.doubt === 0 && quantity.value !== 0,
  );
}
