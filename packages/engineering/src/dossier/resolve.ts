/**
 * From a dossier and the shelf to a vehicle: the discrete traits, and every quantity by its input id with where it
 * came from. Absent quantities get their stated assumption, which is listed with every result.
 */
import type { Quantity } from '../quantity/shapes.ts';
import { inUnit } from '../quantity/units.ts';
import { assumed } from './assumed.ts';
import { PLACED, RUNS } from './facts/build.ts';
import type { Assumption, Behaviour, QuantityFacts, Traits } from './facts/facts.ts';
import { factsOf, type InputId, QUANTITIES, type QuantityId } from './facts/quantities.ts';
import type { Basis, Stated } from './field.ts';
import { pointer } from './locate.ts';
import type { Dossier } from './schema/dossier.ts';
import type { Part, PartKind, PartOf } from './schema/parts.ts';
import type { Shelf } from './shelf/shelf.ts';
import { groundOf } from './surfaces.ts';

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
  /** Quantities that are neither stated nor assumed. */
  readonly missing: ReadonlySet<InputId>;
  readonly correlations: readonly {
    readonly ids: readonly string[];
    readonly matrix: readonly (readonly number[])[];
  }[];
}

type Node = Readonly<Record<string, unknown>>;

/** Collects stated quantities under input ids. */
class Collector {
  readonly inputs = new Map<InputId, Input>();

  /** Takes every stated quantity of an object: key `k` becomes input `prefix.k` with the facts `factsPrefix.k`. */
  take(object: unknown, prefix: string, where: string, usual: Basis, factsPrefix = prefix): void {
    for (const [key, value] of Object.entries((object ?? {}) as Node)) {
      if (isStated(value)) this.put(`${prefix}.${key}`, `${factsPrefix}.${key}`, value, `${where}/${key}`, usual);
    }
  }

  put(id: string, factsId: string, stated: Stated, where: string, usual: Basis): void {
    const facts = factsOf(factsId as QuantityId);
    this.inputs.set(id as InputId, {
      id: id as InputId,
      quantity: stated.quantity,
      facts,
      behaviour: facts.is,
      origin: stated.basis ?? usual,
      where,
      ...(stated.remark === undefined ? {} : { remark: stated.remark }),
    });
  }

  assume(id: string, factsId: string, assumption: Assumption): void {
    if (this.inputs.has(id as InputId)) return;
    const facts = factsOf(factsId as QuantityId);
    this.inputs.set(id as InputId, {
      id: id as InputId,
      quantity: assumed(assumption.text, facts),
      facts,
      behaviour: facts.is,
      origin: 'assumed',
      where: '',
      remark: assumption.because,
    });
  }
}

function isStated(value: unknown): value is Stated {
  return typeof value === 'object' && value !== null && 'quantity' in value;
}

/**
 * Resolves a dossier that was read against the same shelf.
 * @returns the vehicle; never fails, as reading has refused what cannot be resolved
 */
export function resolve(dossier: Dossier, shelf: Shelf): Vehicle {
  const parts = resolveParts(dossier, shelf);
  const layout = layoutOf(dossier, parts);
  const collector = new Collector();
  takeDonor(collector, dossier);
  takeParts(collector, dossier, parts);
  takeWiring(collector, dossier, shelf);
  takeService(collector, dossier);
  assumeTheRest(collector, dossier, layout);
  const { inputs } = collector;
  const missing = new Set(
    (Object.keys(QUANTITIES) as QuantityId[]).filter((id) => !inputs.has(id as InputId)) as InputId[],
  );
  return {
    name: dossier.name,
    invented: dossier.invented === true,
    layout,
    parts,
    inputs,
    missing,
    correlations: (dossier.fits ?? []).map(({ quantities, correlation }) => ({ ids: quantities, matrix: correlation })),
  };
}

type Parts = Vehicle['parts'];

function partAt(shelf: Shelf, part: string | Part): Part {
  if (typeof part !== 'string') return part;
  const found = shelf.find(part);
  if (found === undefined) throw new Error(`part ${part} was on the shelf when the dossier was read, and is not now`);
  return found;
}

function resolveParts(dossier: Dossier, shelf: Shelf): Parts {
  return Object.fromEntries(
    Object.entries(dossier.conversion.parts)
      .filter(([, part]) => part !== undefined)
      .map(([kind, part]) => [kind, partAt(shelf, part as string | Part)]),
  ) as Parts;
}

function layoutOf(dossier: Dossier, parts: Parts): Layout {
  const { donor, conversion, service } = dossier;
  const axles = donor.axles.map((axle) => ({
    wheels: axle.wheels,
    driven: axle.driven,
    steered: axle.steered === true,
    sprung: axle.springRate !== undefined,
  }));
  const driven = axles.filter((axle) => axle.driven);
  const motors = {
    vehicle: 1,
    axle: driven.length,
    side: 2,
    wheel: driven.reduce((sum, axle) => sum + axle.wheels, 0),
  }[donor.drive.motorPer];
  const bridgeChannels = (parts.bridge?.channels ?? 1) * (conversion.bridges ?? 1);
  const channels = Math.min(motors, bridgeChannels);
  const chemistry = parts.pack?.chemistry ?? 'lipo';
  return {
    chemistry,
    cells: parts.pack?.cells ?? 1,
    toyChemistry: donor.pack.chemistry,
    toyCells: donor.pack.cells,
    bridge: parts.bridge?.type ?? 'mosfet',
    steering: donor.steering.kind,
    magnet: donor.drive.magnet ?? 'ferrite',
    axles,
    motorPer: donor.drive.motorPer,
    motors,
    motorsPerChannel: Math.ceil(motors / channels),
    channels,
    bridges: conversion.bridges ?? 1,
    clutch: donor.steering.kind === 'on-off' && donor.steering.clutch,
    modem: parts.modem?.type ?? 'wlan',
    enclosure: parts.enclosure !== undefined,
    chargerFits:
      parts.charger?.chemistries.includes(chemistry) === true && parts.charger.cellsMax >= (parts.pack?.cells ?? 1),
    protected: parts.pack?.tripCurrent !== undefined,
    surfaces: service.surfaces,
  };
}

function takeDonor(collector: Collector, { donor }: Dossier): void {
  collector.take(donor.body, 'toy', '/donor/body', 'measured');
  collector.take(donor.pack, 'toy', '/donor/pack', 'label');
  donor.axles.forEach((axle, i) => {
    collector.take(axle, `axle.${i + 1}`, pointer(['donor', 'axles', i]), 'measured', 'axle');
  });
  collector.take(donor.drive.motor, 'motor', '/donor/drive/motor', 'measured');
  collector.take(donor.drive.gear, 'gear', '/donor/drive/gear', 'measured');
  collector.take(donor.steering, 'steer', '/donor/steering', 'measured');
}

function takeParts(collector: Collector, { conversion }: Dossier, parts: Parts): void {
  for (const [kind, part] of Object.entries(parts)) {
    const named = (conversion.parts as Node)[kind];
    const where = typeof named === 'string' ? `shelf: ${named}` : `/conversion/parts/${kind}`;
    collector.take(part, kind, where, 'label');
  }
  for (const placed of PLACED) {
    collector.take(conversion.places?.[placed], `at.${placed}`, `/conversion/places/${placed}`, 'measured');
  }
  collector.take(conversion.fixings, 'fixings', '/conversion/fixings', 'measured');
  collector.take(conversion.settings, 'set', '/conversion/settings', 'measured');
  if (conversion.cameraPitch) {
    collector.put('camera.pitch', 'camera.pitch', conversion.cameraPitch, '/conversion/cameraPitch', 'measured');
  }
}

function takeWiring(collector: Collector, { conversion }: Dossier, shelf: Shelf): void {
  for (const name of RUNS) {
    const run = conversion.wiring[name];
    const at = `/conversion/wiring/${name}`;
    const wire = partAt(shelf, run.wire as string | Part);
    const connector = partAt(shelf, run.connector as string | Part) as PartOf<'connector'>;
    collector.take(
      wire,
      `run.${name}`,
      typeof run.wire === 'string' ? `shelf: ${run.wire}` : `${at}/wire`,
      'label',
      'wire',
    );
    const from = typeof run.connector === 'string' ? `shelf: ${run.connector}` : `${at}/connector`;
    const { resistance, currentMax, mass } = connector;
    // All pairs of a run sit in one loop, so their resistances add.
    collector.put(`run.${name}.contactResistance`, 'connector.resistance', times(resistance, run.pairs), from, 'label');
    collector.put(`run.${name}.contactCurrentMax`, 'connector.currentMax', currentMax, from, 'label');
    collector.put(`run.${name}.contactMass`, 'connector.mass', times(mass, Math.ceil(run.pairs / 2)), from, 'label');
    if (run.length) collector.put(`run.${name}.length`, `run.${name}.length`, run.length, `${at}/length`, 'measured');
  }
}

/** A stated quantity taken a whole number of times: value and doubt scale together, as the pieces are alike. */
function times(stated: Stated, count: number): Stated {
  const { quantity } = stated;
  return {
    ...stated,
    quantity: {
      ...quantity,
      value: quantity.value * count,
      doubt: quantity.doubt * count,
      text: `${count} × ${quantity.text}`,
    },
  };
}

function takeService(collector: Collector, dossier: Dossier): void {
  const { service } = dossier;
  collector.take(service.want, 'want', '/service/want', 'measured');
  collector.take(service.day, 'day', '/service/day', 'measured');
  collector.take(service.near, 'near', '/service/near', 'measured');
  collector.take(service.ground, 'ground', '/service/ground', 'measured');
  collector.take(dossier.link, 'link', '/link', 'measured');
  collector.take(dossier.picture, 'picture', '/picture', 'measured');
  collector.take(dossier.driving, 'driving', '/driving', 'measured');
  for (const [id, assumption] of groundOf(service.surfaces)) collector.assume(id, id, assumption);
}

/** Metres as a text in whole millimetres, for assumptions that follow from the size of the toy. */
const mm = (metres: number) => `${inUnit(metres, 'mm').toFixed(0)} mm`;

function assumeTheRest(collector: Collector, { donor }: Dossier, layout: Layout): void {
  const wheelbase = donor.axles.at(-1)?.position?.quantity.value ?? 0;
  const height = donor.body.height.quantity.value;
  for (const placed of PLACED) {
    if (placed === 'servo' && layout.steering !== 'servo') continue;
    collector.assume(`at.${placed}.behind`, `at.${placed}.behind`, {
      text: `${mm(wheelbase / 2)} ± ${mm(Math.max(wheelbase * 0.15, 0.005))}`,
      because: 'place not stated: taken as midway between the axles',
    });
    collector.assume(`at.${placed}.height`, `at.${placed}.height`, {
      text: `${mm(height * 0.6)} ± ${mm(height * 0.15)}`,
      because: 'place not stated: taken as a little over half the height of the toy',
    });
  }
  if (layout.axles.length > 1 && !donor.axles.every((axle) => axle.load)) {
    collector.assume('toy.centreBehind', 'toy.centreBehind', {
      text: `${mm(wheelbase * 0.5)} ± ${mm(wheelbase * 0.08)}`,
      because: 'neither axle loads nor the mass centre stated: taken as midway between the axles',
    });
  }
  collector.assume('toy.centreHeight', 'toy.centreHeight', {
    text: `${mm(height * 0.42)} ± ${mm(height * 0.07)}`,
    because: 'not measured: motors, gears and pack sit low in toys of this kind',
  });
  for (const [id, facts] of Object.entries(QUANTITIES) as [QuantityId, QuantityFacts][]) {
    const assumption = typeof facts.otherwise === 'function' ? facts.otherwise(layout) : facts.otherwise;
    if (assumption && applies(id, layout)) collector.assume(id, id, assumption);
  }
}

/** Quantities of equipment that this vehicle has not are not assumed. */
function applies(id: QuantityId, layout: Layout): boolean {
  if (/^(steer\.(resistance|windingMass|toAir)|set\.hold)/.test(id)) {
    return layout.steering === 'on-off';
  }
  if (id === 'steer.angle') return layout.steering !== 'skid';
  if (id.startsWith('servo.') || id.startsWith('at.servo')) return layout.steering === 'servo';
  if (id.startsWith('enclosure.')) return layout.enclosure;
  return !/^(axle|wire|connector)\./.test(id);
}
