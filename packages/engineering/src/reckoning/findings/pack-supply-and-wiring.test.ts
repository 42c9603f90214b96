/**
 * The findings of pack, supply, wiring and fuse on one invented rover that passes them all: each is shown to fail when
 * the one thing it watches is made worse, and to leave the unrelated ones alone.
 */
import { ZERO_CELSIUS } from '@longrein/laws';
import { describe, expect, it } from 'vitest';
import { RUNS } from '../../dossier/facts/build.ts';
import { factsOf, type QuantityId } from '../../dossier/facts/quantities.ts';
import type { Layout } from '../../dossier/resolve.ts';
import { unitOf } from '../../quantity/units.ts';
import { ROVER, ROVER_LAYOUT } from '../drive.fixture.ts';
import type { Finding } from '../finding.ts';
import { driveSums } from '../sums/drive.ts';
import { dutySums } from '../sums/duty.ts';
import { heatSums } from '../sums/heat.ts';
import { isSumId, type SumId } from '../sums/ids.ts';
import { packSums } from '../sums/pack.ts';
import { supplySums } from '../sums/supply.ts';
import { wiringSums } from '../sums/wiring.ts';
import { holds, type Values, withSums } from '../testing.ts';
import { packFindings } from './pack.ts';
import { supplyFindings } from './supply.ts';
import { wiringFindings } from './wiring.ts';

const AMPERE_HOUR = 3600;
const SUMS = { ...packSums, ...driveSums, ...dutySums, ...supplySums, ...heatSums, ...wiringSums };
const FINDINGS: Readonly<Record<string, Finding>> = { ...packFindings, ...supplyFindings, ...wiringFindings };
const LAYOUT: Layout = { ...ROVER_LAYOUT, protected: true };

/** Silicone wire of 18 gauge everywhere, on screw connectors. */
const RUN: Readonly<Record<string, number>> = {
  length: 0.1,
  resistancePerMetre: 0.0218,
  area: 0.823e-6,
  diameter: 2.3e-3,
  currentMax: 16,
  temperatureMax: ZERO_CELSIUS + 180,
  contactResistance: 0.003,
  contactCurrentMax: 10,
};
const WIRES = Object.fromEntries(
  RUNS.flatMap((run) => Object.entries(RUN).map(([key, value]) => [`run.${run}.${key}`, value])),
) as Values;

/** What the fixture of drive and heat leaves out, and a fuse that even a stall at the reserve opens. */
const REST: Values = {
  ...WIRES,
  'pack.capacity': 3 * AMPERE_HOUR,
  'pack.capacityShare': 0.95,
  'pack.currentMax': 15,
  'pack.tripCurrent': 25,
  'charger.current': 1,
  'charger.tailCurrent': 0.08,
  'charger.sourcePower': 15,
  'charger.efficiency': 0.85,
  'converter.inputMax': 17,
  'converter.outputCapacitance': 220e-6,
  'computer.brownOut': 4.63,
  'fuse.rating': 2.5,
  'fuse.breaking': 1000,
  'fuse.meltingEnergy': 60,
  'fuse.resistance': 0.032,
  'want.moving': 0.4,
  'want.runTime': 5400,
  'want.chargeTime': 8 * 3600,
  'want.life': 200,
  'want.slope': 0.07,
  'set.dutyCeiling': 0.8,
};
const { 'wiring.pack.resistance': _, 'wiring.bridge.resistance': __, ...DRIVE } = ROVER;

const failing = (changes: Values, layout: Layout = LAYOUT): string[] => {
  const values = withSums(SUMS, { ...DRIVE, ...REST, ...changes }, layout);
  return Object.entries(FINDINGS)
    .filter(([, finding]) => finding.when?.(layout) !== false)
    .filter(([, finding]) => !holds(finding, values))
    .map(([id]) => id);
};

describe('the invented rover', () => {
  it('passes every finding of pack, supply, wiring and fuse as it stands', () => {
    expect(failing({})).toEqual([]);
  });

  const worse: [string, Values, string[]][] = [
    ['a wish for half a day', { 'want.runTime': 43_200 }, ['pack-run-time']],
    ['a pack of few amperes', { 'pack.currentMax': 1 }, ['pack-climb-current', 'pack-stall-current']],
    ['a pack that bears the climb only', { 'pack.currentMax': 4 }, ['pack-stall-current']],
    ['a protection board that trips early', { 'pack.tripCurrent': 5 }, ['pack-trip']],
    ['a fast charger', { 'charger.current': 4, 'charger.sourcePower': 60 }, ['charge-rate']],
    ['a slow charger', { 'charger.current': 0.2, 'charger.tailCurrent': 0.02 }, ['charge-time']],
    ['a weak source', { 'charger.sourcePower': 5 }, ['charge-source']],
    ['a wish for many years', { 'want.life': 2000 }, ['pack-life']],
    ['a frosty usual day', { 'day.usual': ZERO_CELSIUS - 15 }, ['pack-usable']],
    ['a converter for one cell', { 'converter.inputMax': 6 }, ['converter-input-high']],
    ['a small converter', { 'converter.outputCurrent': 1.5 }, ['converter-current']],
    ['a converter that wants much head-room', { 'converter.headRoom': 1.5 }, ['brown-out-stall', 'brown-out-reversal']],
    ['a long thin lead to the board', { 'wiring.board.resistance': 0.5 }, ['brown-out-board', 'board-peak']],
    ['thin contacts at the motor', { 'run.motor.contactCurrentMax': 1 }, ['contact-current', 'fuse-below-contact']],
    ['a contact weaker than the fuse', { 'run.pack.contactCurrentMax': 2.4 }, ['fuse-below-contact']],
    ['a wire weaker than the fuse', { 'run.bridge.currentMax': 2.4 }, ['fuse-below-wire']],
    ['a thin motor wire', { 'run.motor.currentMax': 1.5 }, ['wire-ampacity', 'fuse-below-wire']],
    ['soft insulation', { 'run.motor.temperatureMax': ZERO_CELSIUS + 35 }, ['wire-insulation']],
    ['a long lead to the motor', { 'wiring.motor.resistance': 0.4 }, ['wire-drop', 'fuse-opens-on-stall']],
    ['a fuse for less than the climb', { 'fuse.rating': 1 }, ['fuse-bears-climb']],
    ['a fuse that melts at a start', { 'fuse.meltingEnergy': 10 }, ['fuse-bears-start']],
    ['a large fuse', { 'fuse.rating': 5 }, ['fuse-opens-on-stall']],
    ['a glass fuse', { 'fuse.breaking': 50 }, ['fuse-breaks-short']],
    [
      'a fuse as for a car',
      { 'fuse.rating': 30 },
      ['fuse-opens-on-stall', 'fuse-opens-on-short', 'fuse-protects-wire', 'fuse-below-wire', 'fuse-below-contact'],
    ],
    ['a hair of a wire', { 'run.converter.area': 0.01e-6 }, ['fuse-protects-wire']],
  ];
  it.each(worse)('fails with %s on what that touches, and on nothing else', (_name, changes, expected) => {
    expect(failing(changes).toSorted()).toEqual(expected.toSorted());
  });

  it('fails with a charger for other cells, and only there', () => {
    expect(failing({}, { ...LAYOUT, chargerFits: false })).toEqual(['charger-suits']);
  });

  it('is pulled below its cut-off by a climb on worn cells, and by a stall long before', () => {
    const [worn, worse] = [0.08, 0.4].map((cell) => failing({ 'pack.cellResistance': cell })) as [string[], string[]];
    expect(worn).toContain('pack-cut-off-stall');
    expect(worn).not.toContain('pack-cut-off');
    expect(worse).toEqual(expect.arrayContaining(['pack-cut-off', 'pack-cut-off-stall', 'supply-collapse']));
  });

  it('finds the resting pack too low for a converter that needs more than the pack has', () => {
    expect(failing({ 'converter.inputMin': 7.8 })).toEqual(expect.arrayContaining(['converter-input-low']));
  });

  it('is not asked for the life of cells whose wear nobody tabulated', () => {
    const nickel = { ...LAYOUT, chemistry: 'nimh', cells: 6 } as const;
    expect(failing({ 'want.life': 5000 }, nickel)).not.toContain('pack-life');
  });
});

describe('every finding of pack, supply, wiring and fuse', () => {
  const unit = (ref: string): string =>
    isSumId(ref)
      ? ((SUMS as Partial<Record<SumId, { unit: string }>>)[ref]?.unit ?? '')
      : factsOf(ref as QuantityId).unit;

  it('compares quantities of one dimension, and shows them in a unit of it', () => {
    for (const [id, { need, has, unit: shown }] of Object.entries(FINDINGS)) {
      for (const ref of [need, has]) expect(unitOf(unit(ref)).powers, `${id}: ${ref}`).toEqual(unitOf(shown).powers);
    }
  });

  it('of lithium, of shorts and hot wires, and of a board that resets, carries a caution', () => {
    for (const id of [
      ...['charger-suits', 'charge-rate', 'charge-time', 'pack-climb-current', 'pack-cut-off'],
      ...['wire-insulation', 'contact-current', 'wire-ampacity', 'fuse-below-wire', 'fuse-opens-on-short'],
      ...['brown-out-stall', 'brown-out-board', 'supply-collapse', 'converter-input-high'],
    ]) {
      expect(FINDINGS[id]?.caution, id).toBeDefined();
    }
  });
});
