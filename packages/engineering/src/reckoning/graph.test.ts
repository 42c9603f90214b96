/**
 * Goal: the graph of sums takes the routes it says, names what is missing down to what would have to be stated, and
 * never runs in a circle; the tables of sums and findings hold together for any vehicle.
 * Method: planted graphs worked out by hand; the house's own tables against an independent sorting of the graph.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { QUANTITIES } from '../dossier/facts/quantities.ts';
import { sameDimension, unitOf } from '../quantity/units.ts';
import { FINDINGS } from './findings/all.ts';
import { graphOf, refuseCycles, waysToKnow } from './graph.ts';
import { refTitle } from './names.ts';
import { constant, plantedSums, plantedVehicle, vehicleOf } from './planted.fixture.ts';
import { type Ref, route, type Sum, sum, sumByRoutes } from './sum.ts';
import { SUMS } from './sums/all.ts';
import { isSumId, SUBJECTS, SUM_IDS, subjectOf } from './sums/ids.ts';
import { PLAIN_LAYOUT, strayNames } from './testing.ts';

const ROOT = new URL('../../../../', import.meta.url);
const FOLDERS = [new URL('examples/reedmere/', ROOT), new URL('tests/fixtures/vehicles/', ROOT)];
const VEHICLES = FOLDERS.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => ({ name, vehicle: vehicleOf(readFileSync(new URL(name, folder), 'utf8')) })),
);

/** Abbreviations, units and materials that are written with capitals. */
const TRADE = /^(?:[IVACWK]|I²t|PLA|PETG|ABS|USB|MOSFETs?|GHz|Wh|AWG)$/;

const about = { title: 'planted', unit: '1' };
/** A sum that is the first of what it uses. */
const on = (...refs: Ref[]): Sum =>
  sum(about, {
    uses: Object.fromEntries(refs.map((ref, i) => [`x${i}`, ref])),
    formula: refs.map((_, i) => `{x${i}}`).join(' + '),
    laws: [],
    value: (x) => Object.values(x).reduce((total: number, value) => total + (value as number), 0),
  });
const rivals = (...uses: Readonly<Record<string, Ref>>[]): Sum =>
  sumByRoutes(
    about,
    ...uses.map((used, i) =>
      route({
        name: `route ${i}`,
        uses: used,
        formula: Object.keys(used)
          .map((n) => `{${n}}`)
          .join(' + '),
        laws: [],
        value: () => i,
      }),
    ),
  );
const edges = (of: Sum): readonly Ref[] => of.routes.flatMap(({ uses }) => Object.values(uses));

describe('a circle of sums', () => {
  const circle = plantedSums({
    'mass.wiring': on('mass.added'),
    'mass.added': on('mass.total'),
    'mass.total': on('mass.ratio'),
    'mass.ratio': on('mass.added'),
  });

  it('is refused with its path printed, without what merely leads to it', () => {
    expect(() => refuseCycles(circle)).toThrow('sums in a circle: mass.added → mass.total → mass.ratio → mass.added');
    expect(() => graphOf(circle, plantedVehicle({}))).toThrow('mass.added → mass.total → mass.ratio → mass.added');
  });

  it('is refused before any vehicle is known even when only a rival route closes it', () => {
    const hidden = plantedSums({
      'mass.added': rivals({ known: 'toy.mass' }, { back: 'mass.total' }),
      'mass.total': on('mass.added'),
    });
    expect(graphOf(hidden, plantedVehicle({ 'toy.mass': '1 kg' })).order).toEqual(['mass.added', 'mass.total']);
    expect(() => refuseCycles(hidden)).toThrow('sums in a circle: mass.added → mass.total → mass.added');
  });

  it('of one sum with itself is a circle too', () => {
    expect(() => refuseCycles(plantedSums({ 'mass.total': on('mass.total') }))).toThrow('mass.total → mass.total');
  });
});

describe('a sum with several routes', () => {
  const sums = plantedSums({ 'mass.total': rivals({ a: 'toy.mass' }, { b: 'toy.length' }, { c: 'toy.width' }) });
  const taken = (inputs: Parameters<typeof plantedVehicle>[0]) => {
    const standing = graphOf(sums, plantedVehicle(inputs)).standing.get('mass.total');
    return standing?.kind === 'takes' ? standing.route.name : standing?.kind;
  };

  it('takes the first whose refs are all known, whatever later ones know', () => {
    expect(taken({ 'toy.mass': '1 kg', 'toy.length': '1 m', 'toy.width': '1 m' })).toBe('route 0');
    expect(taken({ 'toy.length': '1 m', 'toy.width': '1 m' })).toBe('route 1');
    expect(taken({ 'toy.width': '1 m' })).toBe('route 2');
    expect(taken({ 'toy.height': '1 m' })).toBe('lacks');
  });

  it('passes over a route that says it does not apply, and can tell stated from assumed', () => {
    const fussy = plantedSums({
      'mass.total': sumByRoutes(
        about,
        route({
          name: 'stated',
          when: (_, __, stated) => stated('toy.mass'),
          uses: { a: 'toy.mass' },
          formula: '{a}',
          laws: [],
          value: ({ a }) => a,
        }),
        route({ name: 'any', uses: { a: 'toy.mass' }, formula: '{a}', laws: [], value: ({ a }) => a }),
      ),
    });
    const name = (origin: 'measured' | 'assumed') => {
      const vehicle = plantedVehicle({ 'toy.mass': { text: '1 kg', origin } });
      const standing = graphOf(fussy, vehicle).standing.get('mass.total');
      return standing?.kind === 'takes' && standing.route.name;
    };
    expect([name('measured'), name('assumed')]).toEqual(['stated', 'any']);
  });

  it('does not apply where it says so, and then nothing that rests on it can be worked out', () => {
    const never = plantedSums({
      'mass.total': { ...on('toy.mass'), when: () => false },
      'mass.ratio': on('mass.total'),
    });
    const { standing, order } = graphOf(never, plantedVehicle({ 'toy.mass': '1 kg' }));
    expect(standing.get('mass.total')).toEqual({ kind: 'does not apply' });
    expect(standing.get('mass.ratio')).toEqual({ kind: 'lacks', ways: [['mass.total']] });
    expect(order).toEqual([]);
  });
});

describe('what is missing', () => {
  const sums = plantedSums({
    'mass.wiring': on('toy.mass', 'toy.length'),
    'mass.added': on('mass.wiring', 'toy.width'),
    'mass.total': rivals({ a: 'mass.added' }, { b: 'toy.height' }),
    'mass.ratio': on('mass.total', 'mass.wiring'),
    'mass.ratioMax': constant(1),
  });
  const ways = (inputs: Parameters<typeof plantedVehicle>[0], ref: Ref) =>
    waysToKnow(graphOf(sums, plantedVehicle(inputs)), ref);

  it('is named down to the inputs that would have to be stated, one list a way', () => {
    expect(ways({}, 'mass.added')).toEqual([['toy.mass', 'toy.length', 'toy.width']]);
    expect(ways({ 'toy.mass': '1 kg' }, 'mass.added')).toEqual([['toy.length', 'toy.width']]);
    expect(ways({ 'toy.mass': '1 kg', 'toy.length': '1 m' }, 'mass.total')).toEqual([['toy.width'], ['toy.height']]);
  });

  it('leaves out a way that asks for all that another one asks for, and more', () => {
    expect(ways({ 'toy.width': '1 m' }, 'mass.ratio')).toEqual([['toy.mass', 'toy.length']]);
  });

  it('is nothing where the sum is known', () => {
    expect(ways({}, 'mass.ratioMax')).toEqual([[]]);
  });

  it('has a name for axles and wire runs as well', () => {
    expect(refTitle('axle.2.load')).toMatch(/^[^.]+ \(axle\.2\.load\)$/);
    expect(refTitle('run.pack.contactResistance')).toMatch(/^[^.]+ \(run\.pack\.contactResistance\)$/);
    expect(refTitle('run.board.area')).toContain(QUANTITIES['wire.area'].title);
  });
});

describe('the sums of the house', () => {
  it('are defined for every id, and only for those', () => {
    expect(Object.keys(SUMS).sort()).toEqual([...SUM_IDS].sort());
    expect(new Set(SUM_IDS).size).toBe(SUM_IDS.length);
    expect(SUM_IDS.length).toBeGreaterThanOrEqual(120);
    for (const id of SUM_IDS) expect(SUBJECTS[subjectOf(id)] as readonly string[]).toContain(id);
  });

  it('have a title, a unit that is one, and at least one route', () => {
    for (const [id, { title, unit, routes }] of Object.entries(SUMS)) {
      expect(title.length, id).toBeGreaterThan(5);
      expect(() => unitOf(unit), id).not.toThrow();
      expect(routes.length, id).toBeGreaterThan(0);
    }
  });

  it('can be put in one order in which each stands after all it could use, whatever routes are taken', () => {
    // Kahn (1962): take away whatever rests on nothing that is left; a circle would stay.
    const left = new Set(SUM_IDS);
    for (let before = -1; left.size !== before; ) {
      before = left.size;
      for (const id of left) if (!edges(SUMS[id]).some((ref) => isSumId(ref) && left.has(ref))) left.delete(id);
    }
    expect([...left]).toEqual([]);
    expect(() => refuseCycles(SUMS)).not.toThrow();
  });

  it('use only sums and inputs there are', () => {
    const strange = SUM_IDS.flatMap((id) => edges(SUMS[id])).filter((ref) => !isSumId(ref) && refTitle(ref) === ref);
    expect(strange).toEqual([]);
  });

  it.each([
    { name: 'a plain layout', layout: PLAIN_LAYOUT },
    ...VEHICLES.map(({ name, vehicle }) => ({ name, layout: vehicle.layout })),
  ])('show in each formula exactly the names their route uses or takes: $name', ({ layout }) => {
    const stray = SUM_IDS.flatMap((id) => strayNames(SUMS[id], layout).map((name) => `${id}: ${name}`));
    expect(stray).toEqual([]);
  });

  it('tell rival routes apart by name', () => {
    for (const [id, { routes }] of Object.entries(SUMS)) {
      if (routes.length === 1) continue;
      const names = routes.map(({ name }) => name);
      expect(names, id).not.toContain(undefined);
      expect(new Set(names).size, `${id}: ${names.join(', ')}`).toBe(names.length);
    }
  });

  it.each(VEHICLES)('stand each after all it uses, and lack only what could be stated: $name', ({ vehicle }) => {
    const graph = graphOf(SUMS, vehicle);
    expect(graph.standing.size).toBe(SUM_IDS.length);
    graph.order.forEach((id, place) => {
      const standing = graph.standing.get(id);
      const uses = standing?.kind === 'takes' ? Object.values(standing.route.uses) : [];
      for (const ref of uses) {
        if (isSumId(ref)) expect(graph.order.indexOf(ref), `${id} uses ${ref}`).toBeLessThan(place);
        else expect(vehicle.inputs.has(ref), `${id} uses ${ref}`).toBe(true);
      }
    });
    const hopeless = SUM_IDS.flatMap((id) =>
      graph.standing.get(id)?.kind === 'lacks'
        ? waysToKnow(graph, id)
            .filter((way) => way.some(isSumId))
            .map((way) => `${id} needs ${way.join(' and ')}`)
        : [],
    );
    expect(hopeless).toEqual([]);
  });
});

describe('the findings of the house', () => {
  const all = Object.entries(FINDINGS);

  it('are at least 45, each with an id in kebab case', () => {
    expect(all.length).toBeGreaterThanOrEqual(45);
    for (const [id] of all) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it('compare two things there are, of one dimension, and show them in a unit of it', () => {
    const unit = (ref: Ref) => (isSumId(ref) ? SUMS[ref].unit : QUANTITIES[ref as keyof typeof QUANTITIES]?.unit);
    for (const [id, finding] of all) {
      for (const ref of [finding.need, finding.has]) {
        const shown = unit(ref);
        expect(shown, `${id}: ${ref}`).toBeDefined();
        expect(sameDimension(unitOf(shown ?? ''), unitOf(finding.unit)), `${id}: ${ref} in ${shown}`).toBe(true);
      }
    }
  });

  it('claim something in a sentence without a full stop, and come with a remedy in whole sentences', () => {
    for (const [id, { title, remedy, caution }] of all) {
      expect(title, id).toMatch(/^\p{Lu}.*[\p{L}\p{N})]$/u);
      expect(remedy, id).toMatch(/^\p{Lu}.{15,}\.$/u);
      if (caution !== undefined) expect(caution, id).toMatch(/^\p{Lu}.{15,}\.$/u);
    }
  });

  it('have different titles', () => {
    expect(new Set(all.map(([, { title }]) => title)).size).toBe(all.length);
  });

  it('name no maker and no product: inside a sentence only terms of the trade have a capital', () => {
    const named = (text: string) =>
      text
        .split(/[.:;?!]\s+/)
        .flatMap((sentence) => sentence.split(/[\s/(),’'‑-]+/).slice(1))
        .map((word) => word.replace(/[.:;]$/, ''))
        .filter((word) => /^\p{Lu}/u.test(word) && !TRADE.test(word));
    expect(named('Fit a Wonderpack of 9 V. Then drive.')).toEqual(['Wonderpack']);
    const all = Object.entries(FINDINGS).flatMap(([id, { title, remedy, caution = '' }]) =>
      [title, remedy, caution].flatMap(named).map((word) => `${id}: ${word}`),
    );
    expect(all).toEqual([]);
  });
});
