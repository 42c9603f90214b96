/**
 * From a dossier and the shelf to a vehicle: the discrete traits, and every quantity by its input id with where it
 * came from. Absent quantities get their stated assumption, which is listed with every result.
 */
import { applies, assumeTheRest } from './assumptions.ts';
import { Collector, times } from './collector.ts';
import { PLACED, RUNS, type Run } from './facts/build.ts';
import { factsOf, INPUT_IDS, type QuantityId } from './facts/quantities.ts';
import { pointer } from './locate.ts';
import type { Dossier } from './schema/dossier.ts';
import type { Part, PartOf } from './schema/parts.ts';
import type { Shelf } from './shelf/shelf.ts';
import type { Layout, Vehicle } from './vehicle.ts';

export type { Input, Layout, Origin, Vehicle } from './vehicle.ts';

type Node = Readonly<Record<string, unknown>>;

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
  const missing = new Set(INPUT_IDS.filter((id) => !inputs.has(id) && applies(id, layout)));
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
  // The motor of an on/off steering takes a channel for itself.
  const steering = donor.steering.kind === 'on-off' ? 1 : 0;
  const channels = Math.min(motors, Math.max(1, bridgeChannels - steering));
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
  collector.take(donor.body, { prefix: 'toy', where: '/donor/body', usual: 'measured' });
  collector.take(donor.pack, { prefix: 'toy', where: '/donor/pack', usual: 'label' });
  donor.axles.forEach((axle, i) => {
    collector.take(axle, {
      prefix: `axle.${i + 1}`,
      where: pointer(['donor', 'axles', i]),
      usual: 'measured',
      factsPrefix: 'axle',
      of: `axle ${i + 1}`,
    });
  });
  collector.take(donor.drive.motor, { prefix: 'motor', where: '/donor/drive/motor', usual: 'measured' });
  collector.take(donor.drive.gear, { prefix: 'gear', where: '/donor/drive/gear', usual: 'measured' });
  collector.take(donor.steering, { prefix: 'steer', where: '/donor/steering', usual: 'measured' });
}

/** Where a part is described: in the dossier, or on the shelf. */
const placeOf = (named: unknown, at: string) => (typeof named === 'string' ? `shelf: ${named}` : at);

function takeParts(collector: Collector, { conversion }: Dossier, parts: Parts): void {
  for (const [kind, part] of Object.entries(parts)) {
    const where = placeOf((conversion.parts as Node)[kind], `/conversion/parts/${kind}`);
    collector.take(part, { prefix: kind, where, usual: 'label' });
  }
  for (const placed of PLACED) {
    const where = `/conversion/places/${placed}`;
    collector.take(conversion.places?.[placed], { prefix: `at.${placed}`, where, usual: 'measured' });
  }
  collector.take(conversion.fixings, { prefix: 'fixings', where: '/conversion/fixings', usual: 'measured' });
  collector.take(conversion.settings, { prefix: 'set', where: '/conversion/settings', usual: 'measured' });
  if (conversion.cameraPitch) {
    const facts = factsOf('camera.pitch');
    collector.put('camera.pitch', facts, conversion.cameraPitch, '/conversion/cameraPitch', 'measured');
  }
}

function takeWiring(collector: Collector, { conversion }: Dossier, shelf: Shelf): void {
  for (const name of RUNS) {
    const run = conversion.wiring[name];
    const at = `/conversion/wiring/${name}`;
    const wire = partAt(shelf, run.wire as string | Part);
    const where = placeOf(run.wire, `${at}/wire`);
    collector.take(wire, { prefix: `run.${name}`, where, usual: 'label', factsPrefix: 'wire', of: `${name} run` });
    takeContacts(collector, name, run, shelf);
    if (run.length) {
      const id = `run.${name}.length` as const;
      collector.put(id, factsOf(id), run.length, `${at}/length`, 'measured');
    }
  }
}

type WiringRun = Dossier['conversion']['wiring'][Run];

/** The contacts of a run together: all pairs sit in one loop, so resistances add; a connector holds two of them. */
function takeContacts(collector: Collector, name: Run, run: WiringRun, shelf: Shelf): void {
  const { resistance, currentMax, mass } = partAt(shelf, run.connector as string | Part) as PartOf<'connector'>;
  const from = placeOf(run.connector, `/conversion/wiring/${name}/connector`);
  const titled = (id: QuantityId, title: string) => ({ ...factsOf(id), title: `${title} (${name} run)` });
  const all = times(resistance, titled('connector.resistance', 'resistance of all contacts'), run.pairs);
  collector.put(`run.${name}.contactResistance`, all.facts, all.stated, `${from}/resistance`, 'label');
  const bears = titled('connector.currentMax', factsOf('connector.currentMax').title);
  collector.put(`run.${name}.contactCurrentMax`, bears, currentMax, `${from}/currentMax`, 'label');
  const weigh = times(mass, titled('connector.mass', 'mass of all connectors'), Math.ceil(run.pairs / 2));
  collector.put(`run.${name}.contactMass`, weigh.facts, weigh.stated, `${from}/mass`, 'label');
}

function takeService(collector: Collector, { service, link, picture, driving }: Dossier): void {
  const usual = 'measured';
  collector.take(service.want, { prefix: 'want', where: '/service/want', usual });
  collector.take(service.day, { prefix: 'day', where: '/service/day', usual });
  collector.take(service.near, { prefix: 'near', where: '/service/near', usual });
  collector.take(service.ground, { prefix: 'ground', where: '/service/ground', usual });
  collector.take(link, { prefix: 'link', where: '/link', usual });
  collector.take(picture, { prefix: 'picture', where: '/picture', usual });
  collector.take(driving, { prefix: 'driving', where: '/driving', usual });
}
