/** Assumptions are written as a maker would write them and read by the same grammar. */
import { parseQuantity } from '../quantity/quantity.ts';
import type { Quantity } from '../quantity/shapes.ts';
import type { QuantityFacts } from './facts/facts.ts';

/** The quantity an assumption states. @throws Error when the text is no such quantity, which a test of all facts rules out */
export function assumed(text: string, facts: QuantityFacts): Quantity {
  const reading = parseQuantity(text, facts.unit, facts);
  if (!reading.ok) throw new Error(`assumption "${text}" for ${facts.title}: ${reading.fault.hint}`);
  return reading.quantity;
}
