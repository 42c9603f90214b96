/** Bench readings and fits: what they name must be there, and correlations must be those of some fit. */
import { matrixFault } from '../quantity/correlate.ts';
import { factsOf, INPUT_IDS, type InputId, quantityOf } from './facts/quantities.ts';
import { type Fault, fault } from './faults.ts';
import { readQuantity } from './field.ts';
import { pointer } from './locate.ts';
import { perhaps } from './near.ts';
import type { Dossier } from './schema/dossier.ts';

const AN_ID = 'the id of a quantity, such as motor.resistance or axle.2.load';

/** Readings of what is no quantity, and values that are none of that quantity. */
export function readings({ readings = [] }: Dossier): Fault[] {
  return readings.flatMap(({ of, value }, i) => {
    const quantity = quantityOf(of);
    if (quantity === undefined) {
      const at = pointer(['readings', i, 'of']);
      return [fault('DOSSIER_VALUE', at, `"${of}"`, AN_ID, perhaps(of, INPUT_IDS))];
    }
    const reading = readQuantity(value, factsOf(quantity));
    if (reading.ok) return [];
    const { code, accepted, hint } = reading.fault;
    return [fault(code, pointer(['readings', i, 'value']), `"${value}"`, accepted.join(', '), hint)];
  });
}

/**
 * Fits that cannot be drawn from.
 * @param inputs the inputs of this vehicle: a correlation with something it has not means nothing
 */
export function fits({ fits = [] }: Dossier, inputs: ReadonlyMap<InputId, unknown>): Fault[] {
  const tied = new Set<string>();
  return fits.flatMap(({ quantities, correlation }, i) => {
    const faults = quantities.flatMap((id, k) => {
      const at = pointer(['fits', i, 'quantities', k]);
      if (tied.has(id)) {
        const todo = 'Values stand as the newest fit left them: keep only that one.';
        return [fault('FIT_INVALID', at, `"${id}" a second time`, 'each quantity in one fit, once', todo)];
      }
      tied.add(id);
      if (inputs.has(id as InputId)) return [];
      const known = [...inputs.keys()];
      const accepted = quantityOf(id) === undefined ? AN_ID : 'a quantity that this vehicle states or assumes';
      return [fault('FIT_INVALID', at, `"${id}"`, accepted, perhaps(id, known))];
    });
    const wrong = matrixFault({ ids: quantities, matrix: correlation });
    if (wrong === undefined) return faults;
    const n = quantities.length;
    const accepted = `${n} × ${n} correlations, symmetric, ones on the diagonal, not contradicting one another`;
    return [...faults, fault('FIT_INVALID', pointer(['fits', i, 'correlation']), `a matrix that ${wrong}`, accepted)];
  });
}
