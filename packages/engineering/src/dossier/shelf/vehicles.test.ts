/**
 * Every vehicle kept with the program is read and resolved without a fault, and is the odd vehicle it is kept for. The
 * traits expected here are counted by hand from what the file says the toy looks like.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { CHEMISTRIES } from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import { wordFault } from '../faults.ts';
import { readDossier } from '../read.ts';
import { type Layout, resolve, type Vehicle } from '../resolve.ts';
import type { Dossier } from '../schema/dossier.ts';
import { builtInShelf } from './built-in.ts';

const ROOT = new URL('../../../../../', import.meta.url);
const EXAMPLES = new URL('examples/reedmere/', ROOT);
const FIXTURES = new URL('tests/fixtures/vehicles/', ROOT);

const filesIn = (folder: URL) => readdirSync(folder).filter((name) => name.endsWith('.json'));

function read(folder: URL, file: string): Dossier {
  const reading = readDossier(readFileSync(new URL(file, folder), 'utf8'), builtInShelf());
  if (!reading.ok) throw new Error(`${file}\n${reading.faults.map(wordFault).join('\n')}`);
  return reading.value;
}

const vehicle = (folder: URL, name: string): Vehicle => resolve(read(folder, `${name}.json`), builtInShelf());

/** What each fixture is kept for. */
const TRAITS: Readonly<Record<string, Partial<Layout>>> = {
  'six-wheel-sprung': {
    motors: 3,
    channels: 3,
    motorsPerChannel: 1,
    steering: 'on-off',
    clutch: true,
    toyChemistry: 'lipo',
    chemistry: 'lipo',
    cells: 3,
    chargerFits: true,
    enclosure: true,
  },
  'eight-wheel': {
    motors: 4,
    channels: 4,
    motorsPerChannel: 1,
    steering: 'servo',
    magnet: 'neodymium',
    modem: 'cellular',
    chemistry: 'nmc',
    cells: 4,
  },
  'front-driven': {
    motors: 1,
    channels: 1,
    bridge: 'bipolar',
    steering: 'servo',
    chemistry: 'nimh',
    cells: 7,
    toyCells: 6,
    magnet: 'ferrite',
    enclosure: false,
  },
  'two-wheel': {
    motors: 2,
    channels: 2,
    motorPer: 'wheel',
    steering: 'skid',
    chemistry: 'lfp',
    cells: 1,
    chargerFits: true,
  },
  'three-wheel': {
    motors: 1,
    channels: 1,
    steering: 'on-off',
    clutch: false,
    chemistry: 'alkaline',
    chargerFits: false,
  },
  'wheel-motors': {
    motors: 4,
    channels: 2,
    motorsPerChannel: 2,
    motorPer: 'wheel',
    steering: 'skid',
    chemistry: 'lead',
    cells: 6,
    magnet: 'neodymium',
    bridge: 'mosfet',
  },
  'bare-minimum': { motors: 1, steering: 'on-off', clutch: false, chemistry: 'lipo', cells: 1, toyCells: 1 },
};

/** Axles of each fixture, front to rear: wheels, then d for driven, s for steered, ~ for sprung. */
const AXLES: Readonly<Record<string, string>> = {
  'six-wheel-sprung': '2ds~ 2d~ 2d~',
  'eight-wheel': '2ds 2ds 2d 2d',
  'front-driven': '2ds 2',
  'two-wheel': '2d',
  'three-wheel': '1s 2d',
  'wheel-motors': '2d 2d',
  'bare-minimum': '2s 2d',
};

const drawn = ({ axles }: Layout) =>
  axles.map((a) => `${a.wheels}${a.driven ? 'd' : ''}${a.steered ? 's' : ''}${a.sprung ? '~' : ''}`).join(' ');

describe('the vehicles kept for testing', () => {
  it('are all listed here with what they are kept for', () => {
    const names = filesIn(FIXTURES).map((file) => file.replace('.json', ''));
    expect(names.sort()).toEqual(Object.keys(TRAITS).sort());
    expect(Object.keys(AXLES).sort()).toEqual(Object.keys(TRAITS).sort());
  });

  it.each(Object.entries(TRAITS))('%s resolves into the vehicle it is kept for', (name, traits) => {
    const { layout } = vehicle(FIXTURES, name);
    expect(layout).toMatchObject(traits);
    expect(drawn(layout)).toBe(AXLES[name]);
  });

  it('run on every chemistry, as toys and as conversions', () => {
    const layouts = Object.keys(TRAITS).map((name) => vehicle(FIXTURES, name).layout);
    expect(new Set(layouts.map((layout) => layout.chemistry))).toEqual(new Set(CHEMISTRIES));
    expect(new Set(layouts.map((layout) => layout.toyChemistry))).toEqual(new Set(CHEMISTRIES));
  });

  it('keep a part described in place as it is described, and say where it stands', () => {
    const { parts, inputs } = vehicle(FIXTURES, 'front-driven');
    expect(parts.bridge?.title).toBe('bipolar board from the drawer');
    expect(inputs.get('bridge.dropOneAmpere')).toMatchObject({
      origin: 'measured',
      where: '/conversion/parts/bridge/dropOneAmpere',
    });
    expect(inputs.get('run.bridge.resistancePerMetre')?.quantity.value).toBeCloseTo(0.027, 12);
    expect(inputs.get('run.motor.resistancePerMetre')?.where).toMatch(/^shelf: wire-0mm75-flexible/);
  });

  it('leave open what is neither stated nor assumed', () => {
    const { missing } = vehicle(FIXTURES, 'bare-minimum');
    for (const id of ['motor.resistance', 'motor.noLoadSpeed', 'toy.runTime'] as const) {
      expect(missing.has(id), id).toBe(true);
    }
    expect(vehicle(FIXTURES, 'six-wheel-sprung').missing.has('motor.resistance')).toBe(false);
  });

  it('are not demonstration data', () => {
    for (const name of Object.keys(TRAITS)) expect(vehicle(FIXTURES, name).invented, name).toBe(false);
  });
});

describe('the example dossiers', () => {
  const names = filesIn(EXAMPLES).map((file) => file.replace('.json', ''));

  it('are the four of the scenario', () => {
    expect(names.sort()).toEqual(['burdock', 'sedge', 'teasel', 'teasel-second']);
  });

  it.each(names)('%s is read and resolved without a fault and says that it is invented', (name) => {
    expect(vehicle(EXAMPLES, name).invented).toBe(true);
  });

  it('show a motor per axle with a servo, one motor with snap steering, and a motor per side', () => {
    expect(vehicle(EXAMPLES, 'sedge').layout).toMatchObject({ motors: 2, motorPer: 'axle', steering: 'servo' });
    expect(vehicle(EXAMPLES, 'burdock').layout).toMatchObject({ motors: 1, steering: 'on-off', clutch: true });
    expect(vehicle(EXAMPLES, 'teasel').layout).toMatchObject({ motors: 2, motorPer: 'side', steering: 'skid' });
  });

  it('leave the motor of Burdock unmeasured and measure those of Sedge', () => {
    expect(vehicle(EXAMPLES, 'burdock').missing.has('motor.resistance')).toBe(true);
    expect(vehicle(EXAMPLES, 'sedge').inputs.get('motor.resistance')?.origin).toBe('measured');
  });

  it('convert the same toy twice as Teasel', () => {
    const [first, second] = [read(EXAMPLES, 'teasel.json'), read(EXAMPLES, 'teasel-second.json')];
    expect(second.donor).toEqual(first.donor);
    expect(second.conversion).not.toEqual(first.conversion);
  });

  it('state every fact of the toy with a doubt', () => {
    for (const name of names) {
      for (const input of vehicle(EXAMPLES, name).inputs.values()) {
        const bare = input.where.startsWith('/donor') && input.behaviour === 'doubt' && input.quantity.doubt === 0;
        expect(bare && !/lastRatio/.test(input.id), `${name} ${input.id}`).toBe(false);
      }
    }
  });
});
