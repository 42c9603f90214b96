/** Sums of the pack: voltages, resistance, what it can give. */
import {
  cycleLife,
  packResistance,
  packVoltage,
  prospectiveCurrent,
  resistanceTemperatureFactor,
  restVoltage,
} from '@longrein/laws';
import { type SumsOf, sum } from '../sum.ts';
import { cellsOf, cellVoltageOf, toyCellsOf } from './counts.ts';

/** Growth of the resistance over the cycles that take the capacity to 80 %: about a doubling; common practice, no source. */
const RESISTANCE_GROWTH = 1;

/** The cells in series at a temperature, grown by wear. */
const resistanceAt = (title: string, caveat: string, temperature: 'day.usual' | 'day.coldest') =>
  sum(
    { title, unit: 'mΩ', caveat },
    {
      uses: { cell: 'pack.cellResistance', cycles: 'pack.cyclesDone', temperature, life: 'pack.life' },
      takes: (layout) => ({ cells: cellsOf(layout) }),
      formula: '{cells} · {cell} · (1 + {cycles}/{life}) · factor of the chemistry at {temperature}',
      laws: [packResistance, resistanceTemperatureFactor],
      value: ({ cells, cell, cycles, temperature, life }, { chemistry }) =>
        packResistance({ cell, series: cells, parallel: 1, leads: 0 }) *
        (1 + (RESISTANCE_GROWTH * cycles) / life) *
        resistanceTemperatureFactor({ chemistry, temperature }),
    },
  );

type VoltageId =
  | 'pack.full'
  | 'pack.nominal'
  | 'pack.restReserve'
  | 'pack.cutOff'
  | 'pack.realCapacity'
  | 'pack.resistance'
  | 'pack.resistanceCold'
  | 'pack.toyFull'
  | 'pack.toyResistance'
  | 'pack.short'
  | 'pack.life';

export const packVoltageSums: SumsOf<VoltageId> = {
  'pack.full': sum(
    {
      title: 'pack voltage, full',
      unit: 'V',
      caveat: 'The voltage at which charging ends; it falls a little in the first minute.',
    },
    {
      uses: {},
      takes: (layout) => ({
        cells: cellsOf(layout),
        cell: cellVoltageOf(layout.chemistry, 'full'),
      }),
      formula: '{cells} · {cell}',
      laws: [packVoltage],
      value: ({ cells, cell }) => packVoltage({ cell, series: cells }),
    },
  ),
  'pack.nominal': sum(
    { title: 'pack voltage, nominal', unit: 'V' },
    {
      uses: {},
      takes: (layout) => ({
        cells: cellsOf(layout),
        cell: cellVoltageOf(layout.chemistry, 'nominal'),
      }),
      formula: '{cells} · {cell}',
      laws: [packVoltage],
      value: ({ cells, cell }) => packVoltage({ cell, series: cells }),
    },
  ),
  'pack.restReserve': sum(
    {
      title: 'rest voltage of the pack at the reserve',
      unit: 'V',
      caveat: 'Rested; under load it is lower. On a flat chemistry it tells little about the charge left.',
    },
    {
      uses: { reserve: 'set.reserve' },
      takes: (layout) => ({ cells: cellsOf(layout) }),
      formula: '{cells} · rest voltage of a cell at {reserve} charge',
      laws: [restVoltage, packVoltage],
      value: ({ cells, reserve }, { chemistry }) => cells * restVoltage({ chemistry, charge: reserve }),
    },
  ),
  'pack.cutOff': sum(
    { title: 'voltage under load at which driving ends', unit: 'V' },
    {
      uses: {},
      takes: (layout) => ({
        cells: cellsOf(layout),
        cell: cellVoltageOf(layout.chemistry, 'cutOff'),
      }),
      formula: '{cells} · {cell}',
      laws: [packVoltage],
      value: ({ cells, cell }) => packVoltage({ cell, series: cells }),
    },
  ),
  'pack.realCapacity': sum(
    {
      title: 'charge the pack really holds',
      unit: 'mAh',
      caveat: 'At room temperature and moderate current.',
    },
    {
      uses: { printed: 'pack.capacity', share: 'pack.capacityShare' },
      formula: '{printed} · {share}',
      laws: [],
      value: ({ printed, share }) => printed * share,
    },
  ),
  'pack.resistance': resistanceAt(
    'resistance of the pack on a usual day',
    'Resistance over seconds; over minutes polarisation adds to it. Wear doubles it over its life.',
    'day.usual',
  ),
  'pack.resistanceCold': resistanceAt(
    'resistance of the pack on the coldest day',
    'A pack that has been driven is warmer.',
    'day.coldest',
  ),
  'pack.toyFull': sum(
    { title: 'voltage of the original pack, full', unit: 'V' },
    {
      uses: {},
      takes: (layout) => ({
        cells: toyCellsOf(layout),
        cell: cellVoltageOf(layout.toyChemistry, 'full'),
      }),
      formula: '{cells} · {cell}',
      laws: [packVoltage],
      value: ({ cells, cell }) => packVoltage({ cell, series: cells }),
    },
  ),
  'pack.toyResistance': sum(
    { title: 'resistance of the original pack', unit: 'mΩ', caveat: 'This resistance protected motors and gears.' },
    {
      uses: { cell: 'toy.cellResistance' },
      takes: (layout) => ({ cells: toyCellsOf(layout) }),
      formula: '{cells} · {cell}',
      laws: [packResistance],
      value: ({ cells, cell }) => packResistance({ cell, series: cells, parallel: 1, leads: 0 }),
    },
  ),
  'pack.short': sum(
    {
      title: 'short-circuit current of the pack at its plug',
      unit: 'A',
      caveat: 'What the fuse must be able to break. A short of a lithium pack burns: never try it.',
    },
    {
      uses: { cell: 'pack.cellResistance' },
      takes: (layout) => ({
        cells: cellsOf(layout),
        full: cellVoltageOf(layout.chemistry, 'full'),
        leads: { value: 0.01, unit: 'Ω', is: 'leads and plug of the pack', source: 'common practice, no source' },
      }),
      formula: '{cells} · {full} / ({cells} · {cell} + {leads})',
      laws: [prospectiveCurrent],
      value: ({ cells, full, cell, leads }) =>
        prospectiveCurrent({ cellVoltage: full, series: cells, parallel: 1, cell, leads }),
    },
  ),
  'pack.life': sum(
    {
      title: 'charge cycles until about 80 % of the capacity is left',
      unit: '1',
      caveat:
        'A handbook table for lithium cells by depth of discharge; heat and storage at full shorten it. Of other cells it only serves to tell how far they are worn.',
    },
    {
      uses: { reserve: 'set.reserve' },
      formula: 'cycles at a depth of 1 − {reserve}',
      laws: [cycleLife],
      value: ({ reserve }) => cycleLife({ depth: 1 - reserve }),
    },
  ),
};
