/**
 * The figures of the shelf against figures others have published: cells and wires, fuses, silicon, radio. A part need not
 * be any one product, but it must be one that could be bought.
 */
import {
  CHEMISTRY_FACTS,
  type Chemistry,
  COPPER_RESISTIVITY,
  conductorResistance,
  FLEXIBLE_SIZES,
  FLEXIBLE_WIRE,
  wireGaugeArea,
} from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import type { Stated } from '../field.ts';
import { builtInShelf } from './built-in.ts';
import { partsOf } from './shelf.ts';

const value = (stated: Stated | undefined) => stated?.quantity.value ?? Number.NaN;
const within = (figure: number, [low, high]: readonly [number, number], id: string) => {
  expect(figure, id).toBeGreaterThanOrEqual(low);
  expect(figure, id).toBeLessThanOrEqual(high);
};

type Band = readonly [number, number];

/**
 * Resistance of a cell times its capacity [Ω·Ah]. LiPo 0.01 to 0.03 for racing packs, 0.06 to 0.1 for toys; 18650 cells
 * 12 to 60 mΩ at 2.6 to 3 Ah; LFP of Prada2013 10 mΩ at 2.3 Ah upwards; NiMH AA 25 to 50 mΩ, sub-C a quarter of it,
 * toy cells up to 100 mΩ at 0.7 Ah; alkaline 150 to 300 mΩ (all common practice, no source); lead from the 40 mΩ at
 * 7.2 Ah and 12 V of Tremblay & Dessaint 2009 and the 56 mΩ of the CSB GP1272 preset of the ns-3 simulator.
 */
const RESISTANCE_BANDS: Readonly<Record<Chemistry, Band>> = {
  lipo: [0.01, 0.1],
  nmc: [0.036, 0.18],
  lfp: [0.02, 0.12],
  nimh: [0.02, 0.1],
  alkaline: [0.25, 0.75],
  lead: [0.02, 0.07],
};

/** Energy by mass [Wh/kg] at the printed capacity, with the pack's sleeve, leads or holder: common practice, no source. */
const ENERGY_BANDS: Readonly<Record<Chemistry, Band>> = {
  lipo: [100, 190],
  nmc: [160, 260],
  lfp: [85, 130],
  nimh: [38, 95],
  alkaline: [90, 170],
  lead: [20, 45],
};

describe('packs', () => {
  const packs = partsOf(builtInShelf(), 'pack');
  const ampereHours = (pack: (typeof packs)[number]) => value(pack.capacity) / 3600;

  it.each(packs.map((pack) => [pack.id, pack] as const))('%s resists as cells of its kind do', (id, pack) => {
    within(value(pack.cellResistance) * ampereHours(pack), RESISTANCE_BANDS[pack.chemistry], id);
  });

  it.each(packs.map((pack) => [pack.id, pack] as const))('%s weighs what its energy weighs', (id, pack) => {
    const energy = ampereHours(pack) * CHEMISTRY_FACTS[pack.chemistry].nominal.value * pack.cells;
    within(energy / value(pack.mass), ENERGY_BANDS[pack.chemistry], id);
  });

  it.each(packs.map((pack) => [pack.id, pack] as const))(
    '%s keeps three quarters of its voltage at its greatest current',
    (id, pack) => {
      const sag = value(pack.currentMax) * value(pack.cellResistance);
      expect(sag, id).toBeLessThan(0.25 * CHEMISTRY_FACTS[pack.chemistry].nominal.value);
    },
  );

  it('trip above the current they bear, where a board can trip', () => {
    const guarded = packs.filter((pack) => pack.tripCurrent !== undefined);
    expect(guarded.length).toBeGreaterThan(3);
    for (const pack of guarded) expect(value(pack.tripCurrent), pack.id).toBeGreaterThan(1.2 * value(pack.currentMax));
  });
});

/** Ampere column of the wire table after the Handbook of Electronic Tables and Formulas, single wire in free air. */
const CHASSIS: Readonly<Record<number, number>> = {
  12: 41,
  14: 32,
  16: 22,
  18: 16,
  20: 11,
  22: 7,
  24: 3.5,
  26: 2.2,
  28: 1.4,
};
/** Most that the lay of the strands adds: class 5 of IEC 60228 against the solid area, 1.5 and 2.5 mm². */
const STRAND_ALLOWANCE = 1.157;
/** Density of copper, IEC 60028 [kg/m³], and the densest insulation in use, filled PVC (common practice, no source). */
const COPPER_DENSITY = 8890;
const SHEATH_DENSITY_MAX = 1500;

describe('wires', () => {
  const wires = partsOf(builtInShelf(), 'wire');
  const gauged = wires.flatMap((wire) => {
    const gauge = /^wire-awg(\d+)-/.exec(wire.id)?.[1];
    return gauge === undefined ? [] : [[wire.id, Number(gauge), wire] as const];
  });
  const metric = wires.filter((wire) => wire.id.endsWith('-flexible'));

  it('are all of a gauge or of a metric size', () => {
    expect(gauged.length + metric.length).toBe(wires.length);
  });

  it.each(gauged)('%s has the copper of its gauge and resists no less than solid wire', (id, gauge, wire) => {
    const area = wireGaugeArea({ gauge });
    expect(Math.abs(value(wire.area) / area - 1), id).toBeLessThan(0.01);
    const solid = conductorResistance({ resistivity: COPPER_RESISTIVITY, length: 1, area });
    within(value(wire.resistancePerMetre) / solid, [1, STRAND_ALLOWANCE], id);
  });

  it.each(gauged)('%s bears the current of the handbook table', (_id, gauge, wire) => {
    expect(value(wire.currentMax)).toBe(CHASSIS[gauge]);
  });

  it.each(metric.map((wire) => [wire.id, wire] as const))(
    '%s resists a little less than the standard allows',
    (id, wire) => {
      const area = value(wire.area);
      const size = FLEXIBLE_SIZES.find((name) => Math.abs(FLEXIBLE_WIRE[name].area / area - 1) < 1e-9);
      expect(size, id).toBeDefined();
      within(value(wire.resistancePerMetre) / (size ? FLEXIBLE_WIRE[size].plain : Number.NaN), [0.94, 1], id);
    },
  );

  it.each(metric.map((wire) => [wire.id, wire] as const))(
    '%s bears no more than a gauged wire of more copper',
    (id, wire) => {
      const thicker = gauged.filter(([, , other]) => value(other.area) >= value(wire.area));
      expect(value(wire.currentMax), id).toBeLessThanOrEqual(
        Math.min(...thicker.map(([, , w]) => value(w.currentMax))),
      );
    },
  );

  it.each(wires.map((wire) => [wire.id, wire] as const))(
    '%s weighs its copper and at most a dense sheath',
    (id, wire) => {
      const area = value(wire.area);
      const copper = area * COPPER_DENSITY;
      const sheath = ((Math.PI / 4) * value(wire.diameter) ** 2 - area) * SHEATH_DENSITY_MAX;
      within(value(wire.massPerMetre), [copper, copper + sheath], id);
    },
  );
});

/**
 * Time gates of miniature blade fuses [s]: open within 0.1 s at 600 % (sheet of the Littelfuse 297), not before 0.08 s at
 * 350 % and within 0.5 s (ATOF 287 and 297). At these currents heat has no time to escape, so t = I²t / I².
 */
const GATES: readonly (readonly [number, Band])[] = [
  [6, [0.02, 0.1]],
  [3.5, [0.08, 0.5]],
];

describe('fuses', () => {
  const fuses = partsOf(builtInShelf(), 'fuse').sort((a, b) => value(a.rating) - value(b.rating));
  const blades = fuses.filter((fuse) => fuse.id.startsWith('fuse-mini-'));

  it.each(blades.map((fuse) => [fuse.id, fuse] as const))('%s melts within the time gates of its kind', (id, fuse) => {
    for (const [times, gate] of GATES) within(value(fuse.meltingEnergy) / (times * value(fuse.rating)) ** 2, gate, id);
  });

  it('need more energy to melt and resist less, the larger they are', () => {
    for (const [i, fuse] of blades.entries()) {
      const smaller = blades[i - 1];
      if (!smaller) continue;
      expect(value(fuse.meltingEnergy), fuse.id).toBeGreaterThan(value(smaller.meltingEnergy));
      expect(value(fuse.resistance), fuse.id).toBeLessThan(value(smaller.resistance));
    }
  });

  it('meet the published melting energy of the 3 A miniature blade, 20 A²·s (Littelfuse 297)', () => {
    expect(value(blades.find((fuse) => value(fuse.rating) === 3)?.meltingEnergy)).toBe(20);
  });

  it('drop 50 to 110 mV cold at their rating: sheets give 58 mV at 40 A (ATOF 287), and small ratings drop more', () => {
    for (const fuse of fuses) within(value(fuse.rating) * value(fuse.resistance), [0.05, 0.11], fuse.id);
  });

  it('come in standard ratings, and blades break 1000 A (ISO 8820-3)', () => {
    const standard = [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30];
    expect(blades.map((fuse) => value(fuse.rating))).toEqual(standard);
    for (const fuse of blades) expect(value(fuse.breaking)).toBe(1000);
  });
});

describe('bridges', () => {
  const bridges = partsOf(builtInShelf(), 'bridge');
  /** On-resistance of a power transistor grows by 0.4 % a kelvin (from memory). */
  const GROWTH = 0.004;

  it.each(bridges.map((b) => [b.id, b] as const))(
    '%s bears its continuous current in a room of 25 °C, and, where bipolar, not twice it',
    (id, b) => {
      const room = 298.15;
      const junction = (current: number) => {
        const toAir = value(b.toAir);
        if (b.type === 'bipolar') {
          const slope = value(b.dropTwoAmpere) - value(b.dropOneAmpere);
          return room + toAir * current * (value(b.dropOneAmpere) + slope * (current - 1));
        }
        const cold = toAir * current ** 2 * value(b.onResistance);
        const runsAway = cold * GROWTH >= 1;
        return runsAway ? Number.POSITIVE_INFINITY : room + cold / (1 - cold * GROWTH);
      };
      const limit = b.junctionMax === undefined ? 423.15 : value(b.junctionMax);
      expect(junction(value(b.currentContinuous)), id).toBeLessThan(limit);
      if (b.type === 'bipolar') expect(junction(2 * value(b.currentContinuous)), id).toBeGreaterThan(limit);
      expect(value(b.currentPeak), id).toBeGreaterThan(value(b.currentContinuous));
    },
  );

  it('drop, where bipolar at 2 A, what the data sheet of the L298 says: 1.8 to 3.2 V at 1 A, at most 4.9 V at 2 A', () => {
    const classic = bridges.find((b) => b.id === 'bridge-bipolar-2a-dual');
    within(value(classic?.dropOneAmpere), [2.3, 2.8], 'typical 2.55 V');
    within(value(classic?.dropTwoAmpere), [3.4, 4.9], 'typical 3.7 V');
    expect(value(classic?.voltageMax)).toBe(46);
  });
});

describe('converters', () => {
  const converters = partsOf(builtInShelf(), 'converter');

  it('with a bipolar switch drop 1.16 V and more, and give 5 V from 7 V up at 80 % (LM2596 data sheet SNVS124)', () => {
    const old = converters.find((c) => c.id === 'buck-5v-3a-bipolar');
    within(value(old?.headRoom), [1.16, 2], 'head-room');
    expect(value(old?.efficiency)).toBe(0.8);
    expect(value(old?.inputMax)).toBe(40);
  });

  it('lie, as rules of the trade say: 1 to 1.5 V and more with a bipolar switch, 0.3 to 0.5 V with MOSFETs', () => {
    for (const c of converters.filter((c) => c.id.endsWith('-synchronous'))) {
      within(value(c.headRoom), [0.3, 0.5], c.id);
    }
  });

  it('keep the USB range of 4.75 to 5.25 V at their output, where they feed a 5 V board (USB 2.0)', () => {
    for (const c of converters.filter((c) => c.id.includes('5v'))) within(value(c.outputVoltage), [4.75, 5.25], c.id);
  });
});

describe('boards, radio and the rest', () => {
  const shelf = builtInShelf();

  it('flag under-voltage at 4.63 V, where they run Linux (supervisor of single-board computers)', () => {
    for (const board of partsOf(shelf, 'computer').filter((c) => !c.id.includes('microcontroller'))) {
      expect(value(board.brownOut), board.id).toBe(4.63);
    }
  });

  it('use more power busy than idle and most at the peak', () => {
    for (const board of partsOf(shelf, 'computer')) {
      expect(value(board.busyPower), board.id).toBeGreaterThan(value(board.idlePower));
      expect(value(board.peakPower), board.id).toBeGreaterThan(value(board.busyPower));
    }
  });

  it('stay below 100 mW radiated at 2.4 GHz and 200 mW at 5.2 GHz with a 2 dBi rod (EN 300 328, EN 301 893)', () => {
    const rod = partsOf(shelf, 'aerial').find((aerial) => aerial.id === 'aerial-rod-2dbi');
    const gain = value(rod?.gain) - value(rod?.cableLoss);
    for (const modem of partsOf(shelf, 'modem').filter((m) => m.type === 'wlan')) {
      const limit = value(modem.frequency) < 3e9 ? 20 : 23;
      expect(value(modem.transmitPower) + gain, modem.id).toBeLessThan(limit);
    }
  });

  it('send at 23 dBm, where cellular (3GPP power class 3, from memory), and hear with a noise figure of 5 to 10 dB', () => {
    for (const modem of partsOf(shelf, 'modem')) {
      if (modem.type === 'cellular') expect(value(modem.transmitPower), modem.id).toBe(23);
      within(value(modem.noiseFigure), [5, 10], modem.id);
    }
  });

  it('waste less than 0.6 W in a connector at its rated current, as its plastic bears no more (common practice, no source)', () => {
    for (const c of partsOf(shelf, 'connector')) {
      expect(value(c.currentMax) ** 2 * value(c.resistance), c.id).toBeLessThan(0.6);
    }
  });

  it('charge two cells at full current from the chargers’ own supplies, or the one they are made for', () => {
    for (const c of partsOf(shelf, 'charger')) {
      const full = Math.max(...c.chemistries.map((chemistry) => CHEMISTRY_FACTS[chemistry].full.value));
      const asked = (value(c.current) * full * Math.min(2, c.cellsMax)) / (value(c.efficiency) || 0.85);
      expect(value(c.sourcePower), c.id).toBeGreaterThanOrEqual(asked);
    }
  });

  it('stall servos at the currents measured and published for their sizes', () => {
    const stall = (id: string) => value(partsOf(shelf, 'servo').find((servo) => servo.id === id)?.stallCurrent);
    within(stall('servo-micro-9g'), [0.65, 0.75], 'micro servo, from memory');
    within(stall('servo-standard-45g'), [0.7, 1.1], 'standard servo, HS-422 trade article and maker’s sheet');
    within(stall('servo-metal-55g'), [1.2, 3], 'MG995 and MG996 classes, shop sheets');
  });
});
