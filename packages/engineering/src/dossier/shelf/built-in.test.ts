/** The built-in shelf can be read, named and chosen from. */
import { CHEMISTRIES, CHEMISTRY_FACTS } from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import { readShelfFile } from '../read.ts';
import { PART_KINDS, PART_SCHEMAS, type PartKind } from '../schema/parts.ts';
import { BUILT_IN_PARTS, builtInShelf } from './built-in.ts';
import { partsOf } from './shelf.ts';

/** What a maker needs to find, as least counts of kinds. */
const LEAST: Readonly<Record<PartKind, number>> = {
  pack: 12,
  converter: 6,
  bridge: 6,
  computer: 5,
  camera: 4,
  modem: 3,
  aerial: 4,
  servo: 4,
  fuse: 8,
  wire: 10,
  connector: 4,
  charger: 4,
  enclosure: 3,
};

describe('the built-in shelf', () => {
  it.each(BUILT_IN_PARTS.map((part) => [part.id, part] as const))('%s is read without fault', (_id, part) => {
    const read = PART_SCHEMAS[part.kind].safeParse(part);
    expect(read.error?.issues ?? []).toEqual([]);
  });

  it('is read the same from a file a user could write', () => {
    const reading = readShelfFile(JSON.stringify({ format: 1, parts: BUILT_IN_PARTS }));
    expect(reading.ok ? reading.value : reading.faults).toEqual(builtInShelf().parts);
  });

  it('holds every part under an id of its own', () => {
    expect(builtInShelf().parts).toHaveLength(BUILT_IN_PARTS.length);
    expect(new Set(BUILT_IN_PARTS.map((part) => part.title)).size).toBe(BUILT_IN_PARTS.length);
  });

  it.each(PART_KINDS)('holds enough of kind %s to choose from', (kind) => {
    expect(partsOf(builtInShelf(), kind).length).toBeGreaterThanOrEqual(LEAST[kind]);
  });

  it('says of every part what it costs and what to beware of', () => {
    for (const { id, cost, remark } of builtInShelf().parts) {
      expect(cost, id).toBeDefined();
      expect(remark, id).toMatch(/^[A-Z].{20,}[.]$/);
    }
  });

  it('holds packs of every chemistry and of one to eight cells', () => {
    const packs = partsOf(builtInShelf(), 'pack');
    expect(new Set(packs.map((pack) => pack.chemistry))).toEqual(new Set(CHEMISTRIES));
    expect([...new Set(packs.map((pack) => pack.cells))].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('holds bridges of both kinds, of one and two channels, from 1 to 30 A', () => {
    const bridges = partsOf(builtInShelf(), 'bridge');
    expect(bridges.filter((bridge) => bridge.type === 'bipolar').length).toBeGreaterThanOrEqual(2);
    expect(bridges.filter((bridge) => bridge.type === 'mosfet').length).toBeGreaterThanOrEqual(4);
    expect(new Set(bridges.map((bridge) => bridge.channels))).toEqual(new Set([1, 2]));
    const currents = bridges.map((bridge) => bridge.currentContinuous.quantity.value);
    expect(Math.min(...currents)).toBeLessThanOrEqual(1.2);
    expect(Math.max(...currents)).toBe(30);
  });

  it('holds a charger for every pack that may be charged, and none for one that may not', () => {
    const chargers = partsOf(builtInShelf(), 'charger');
    for (const pack of partsOf(builtInShelf(), 'pack')) {
      const fitting = chargers.filter((c) => c.chemistries.includes(pack.chemistry) && c.cellsMax >= pack.cells);
      const rechargeable = CHEMISTRY_FACTS[pack.chemistry].charge !== undefined;
      expect(fitting.length > 0, pack.id).toBe(rechargeable);
    }
  });
});
