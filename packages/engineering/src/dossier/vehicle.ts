/** What a dossier becomes: the discrete traits of a vehicle, and every quantity by its input id with where it came from. */
import type { Quantity } from '../quantity/shapes.ts';
import type { Behaviour, QuantityFacts, Traits } from './facts/facts.ts';
import type { InputId } from './facts/quantities.ts';
import type { Basis } from './field.ts';
import type { PartKind, PartOf } from './schema/parts.ts';

/** Where a value comes from: as stated, or an assumption of ours. */
export type Origin = Basis | 'assumed';

/** One input of the reckoning. */
export interface Input {
  readonly id: InputId;
  readonly quantity: Quantity;
  readonly facts: QuantityFacts;
  readonly behaviour: Behaviour;
  readonly origin: Origin;
  /** JSON pointer into the dossier, or the id of the shelf part it was read from. */
  readonly where: string;
  /** Remark of the writer, or why it was assumed. */
  readonly remark?: string;
}

/** The discrete facts of a vehicle that decide which sums apply. */
export interface Layout extends Traits {
  readonly axles: readonly {
    readonly wheels: number;
    readonly driven: boolean;
    readonly steered: boolean;
    readonly sprung: boolean;
  }[];
  readonly motorPer: 'vehicle' | 'axle' | 'side' | 'wheel';
  readonly motors: number;
  /** Motors that share the most loaded bridge channel. */
  readonly motorsPerChannel: number;
  /** Bridge channels in use. */
  readonly channels: number;
  /** Bridge boards fitted. */
  readonly bridges: number;
  readonly clutch: boolean;
  readonly modem: 'wlan' | 'cellular';
  readonly enclosure: boolean;
  readonly chargerFits: boolean;
  /** Has the pack a protection board whose trip current is known? */
  readonly protected: boolean;
  readonly surfaces: readonly { readonly surface: string; readonly share: number }[];
}

/** A vehicle ready to be reckoned. */
export interface Vehicle {
  readonly name: string;
  readonly invented: boolean;
  readonly layout: Layout;
  readonly parts: { readonly [K in PartKind]?: PartOf<K> };
  readonly inputs: ReadonlyMap<InputId, Input>;
  /** Quantities that would mean something for this vehicle and are neither stated nor assumed. */
  readonly missing: ReadonlySet<InputId>;
  readonly correlations: readonly {
    readonly ids: readonly string[];
    readonly matrix: readonly (readonly number[])[];
  }[];
}
