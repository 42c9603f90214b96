/** What a schema accepts, in words for messages: kept beside the schemas, as they themselves can only say yes or no. */
import * as z from 'zod';

export interface Accepts {
  /** 'a quantity such as "3.2 kg ± 5 %"'. */
  readonly accepted: string;
  /** The unit asked for, where it is a quantity. */
  readonly unit?: string;
  /** How to come by it, as a sentence. */
  readonly how?: string;
}

export const ACCEPTS = z.registry<Accepts>();
