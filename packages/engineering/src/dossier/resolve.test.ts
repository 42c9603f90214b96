/**
 * Goal: nothing stated is lost on the way from a dossier to a vehicle, and each input says truly where it came from.
 * Method: every quantity of the text is looked up among the inputs by the pointer an input claims.
 */
import { describe, expect, it } from 'vitest';
import { formatQuantity, parseQuantity } from '../quantity/quantity.ts';
import { statedAsExact } from './exact.ts';
import { factsOf, type InputId, quantityOf } from './facts/quantities.ts';
import { wordFault } from './faults.ts';
import { pathOf } from './locate.ts';
import { readDossier } from './read.ts';
import { resolve, type Vehicle } from './resolve.ts';
import { valueAt } from './schema-walk.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { changed, PLAIN_TEXT } from './testing.ts';

type Change = readonly [from: string, to: string];

function vehicle(...changes: readonly Change[]): Vehicle {
  const text = changes.reduce((before, [from, to]) => changed(before, from, to), PLAIN_TEXT);
  const reading = readDossier(text, builtInShelf());
  if (!reading.ok) throw new Error(reading.faults.map(wordFault).join('\n'));
  return resolve(reading.value, builtInShelf());
}

const inputOf = (of: Vehicle, id: InputId) => {
  const input = of.inputs.get(id);
  if (input === undefined) throw new Error(`${id} is not there`);
  return input;
};

/** Pointers of every text that stands as a quantity in the plain dossier: those with a digit first, dates left out. */
function quantitiesIn(value: unknown, at: string): string[] {
  if (typeof value === 'string') return /^-?\d[^-]* ?(?:[^\d\s-]|$)/.test(value) && !/^\d{4}-/.test(value) ? [at] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => quantitiesIn(inner, `${at}/${key}`));
}

describe('every stated quantity', () => {
  const written: unknown = JSON.parse(PLAIN_TEXT);
  const of = vehicle();
  const byWhere = new Map([...of.inputs.values()].map((input) => [input.where, input]));

  it('becomes an input that points back to it', () => {
    const lost = quantitiesIn(written, '')
      .map((at) => at.replace(/\/value$/, ''))
      .filter((at) => !at.startsWith('/readings') && !byWhere.has(at));
    expect(lost).toEqual([]);
  });

  it('stands in the text where its input says, or on the shelf part it names', () => {
    for (const { where, origin, quantity, id } of of.inputs.values()) {
      if (origin === 'assumed') {
        expect(where, id).toBe('');
      } else if (where.startsWith('/')) {
        const found = valueAt(written, pathOf(where));
        const text = typeof found === 'string' ? found : valueAt(found, ['value']);
        expect(quantity.text, id).toBe(text);
      } else {
        const [, part = '', key = ''] = /^shelf: ([^/]+)\/(\w+)$/.exec(where) ?? [];
        const stated = valueAt(builtInShelf().find(part), [key, 'quantity', 'text']);
        expect(quantity.text.replace(/^\d+ × /, ''), id).toBe(stated);
      }
    }
  });

  it('has the facts of its quantity', () => {
    for (const { id, facts } of of.inputs.values()) {
      const known = factsOf(quantityOf(id) as NonNullable<ReturnType<typeof quantityOf>>);
      expect([facts.unit, facts.how, facts.is], id).toEqual([known.unit, known.how, known.is]);
    }
  });

  it('is measured on the toy and read off a part, unless the writer says otherwise', () => {
    expect(inputOf(of, 'toy.mass').origin).toBe('measured');
    expect(inputOf(of, 'toy.capacity').origin).toBe('label');
    expect(inputOf(of, 'bridge.onResistance')).toMatchObject({
      origin: 'label',
      where: '/conversion/parts/bridge/onResistance',
    });
    expect(inputOf(of, 'fuse.rating')).toMatchObject({ origin: 'label', where: 'shelf: fuse-mini-3a/rating' });
    expect(inputOf(of, 'motor.stallCurrent')).toMatchObject({ origin: 'label', remark: 'printed on the can' });
    expect(inputOf(of, 'steer.toAir')).toMatchObject({
      origin: 'assumed',
      remark: expect.stringContaining('small cans'),
    });
  });

  it('of an axle or a run says in its title of which', () => {
    expect(inputOf(of, 'axle.2.load').facts.title).toContain('(axle 2)');
    expect(inputOf(of, 'run.motor.resistancePerMetre').facts.title).toContain('(motor run)');
  });
});

describe('contacts', () => {
  it('count as often as there are pairs in the loop, and a connector holds two pairs', () => {
    const of = vehicle();
    const one = (key: 'resistance' | 'mass', id: string) =>
      valueAt(builtInShelf().find(id), [key, 'quantity', 'value']) as number;
    const value = (id: InputId) => inputOf(of, id).quantity.value;
    expect(value('run.pack.contactResistance')).toBeCloseTo(3 * one('resistance', 'connector-toy-8a'), 12);
    expect(value('run.pack.contactMass')).toBeCloseTo(2 * one('mass', 'connector-toy-8a'), 12);
    expect(value('run.converter.contactResistance')).toBeCloseTo(20 * one('resistance', 'connector-jumper-1a'), 12);
    expect(value('run.board.contactMass')).toBeCloseTo(one('mass', 'connector-jumper-1a'), 12);
  });

  it('are exactly nothing where a run has none', () => {
    const { quantity, facts } = inputOf(vehicle(), 'run.motor.contactResistance');
    expect(quantity).toMatchObject({ value: 0, doubt: 0, spread: 'exact' });
    expect(facts).toMatchObject({ from: 0, to: 0 });
    expect(facts.above).toBeUndefined();
  });

  it('are printed as what they add up to, so that the number of pairs is not lost', () => {
    for (const run of ['pack', 'bridge', 'motor', 'converter', 'board'] as const) {
      const { quantity, facts } = inputOf(vehicle(), `run.${run}.contactResistance`);
      const again = parseQuantity(formatQuantity(quantity), facts.unit);
      expect(again.ok && again.quantity.value).toBeCloseTo(quantity.value, 12);
      expect(again.ok && again.quantity.doubt).toBeCloseTo(quantity.doubt, 12);
    }
  });
});

describe('motors and channels', () => {
  const BOTH: Change = ['"driven": false, "steered"', '"driven": true, "steered"'];
  const PER = (per: string): Change => ['"motorPer": "axle"', `"motorPer": "${per}"`];

  // Counted by hand; the bridge of the plain dossier has two channels, and its on/off steering motor takes one.
  it.each([
    ['one axle, a motor per vehicle', [PER('vehicle')], 1, 1, 1],
    ['one axle, a motor per axle', [], 1, 1, 1],
    ['two axles, a motor per axle', [BOTH], 2, 1, 2],
    ['two axles, a motor per side', [BOTH, PER('side')], 2, 1, 2],
    ['one axle, a motor per wheel', [PER('wheel')], 2, 1, 2],
    ['two axles, a motor per wheel', [BOTH, PER('wheel')], 4, 1, 4],
    [
      'two axles, a motor per wheel, two boards',
      [BOTH, PER('wheel'), ['"settings"', '"bridges": 2, "settings"']],
      4,
      3,
      2,
    ],
  ] as [string, Change[], number, number, number][])('%s', (_, changes, motors, channels, motorsPerChannel) => {
    expect(vehicle(...changes).layout).toMatchObject({ motors, channels, motorsPerChannel });
  });

  it('are as many as needed on three wheels', () => {
    const { layout } = vehicle(['"wheels": 2, "driven": false', '"wheels": 1, "driven": true'], PER('wheel'));
    expect(layout).toMatchObject({ motors: 3, channels: 1, motorsPerChannel: 3 });
  });
});

describe('what is stated as exact', () => {
  it('is listed where somebody wrote a fact without a doubt, and only there', () => {
    const ids = (...changes: Change[]) => statedAsExact(vehicle(...changes)).map(({ id }) => id);
    expect(ids()).toContain('bridge.voltageMax');
    for (const id of [
      'link.distance',
      'set.dutyCeiling',
      'want.slope',
      'picture.width',
      'toy.mass',
      'day.usual',
      'want.payload',
    ]) {
      expect(ids()).not.toContain(id);
    }
    expect(ids(['"1.62 kg ± 5 g"', '"1.62 kg"'])).toContain('toy.mass');
    expect(ids(['"driven": false, "steered"', '"driven": false, "position": "0 mm", "steered"'])).not.toContain(
      'axle.1.position',
    );
  });
});
