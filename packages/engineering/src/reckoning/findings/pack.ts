/** Findings about the pack and charging. */
import type { Layout } from '../../dossier/resolve.ts';
import { findings } from '../finding.ts';

/** Cells whose life by depth of discharge is tabulated. */
const LITHIUM_CELLS: ReadonlySet<Layout['chemistry']> = new Set(['lipo', 'nmc', 'lfp']);

const LITHIUM =
  'Lithium packs burn when shorted, crushed, overcharged or charged below 0 °C; charge them attended, on a surface that does not burn.';

export const packFindings = findings({
  'pack-run-time': {
    title: 'It runs as long as wanted',
    subject: 'pack and charging',
    unit: 'min',
    sense: 'at least',
    need: 'want.runTime',
    has: 'pack.runTime',
    remedy:
      'Fit a pack of more charge, switch the computer board to a thriftier one, or let the picture rest while nobody drives: standing with the picture on often takes more than driving.',
  },
  'pack-climb-current': {
    title: 'The pack gives the climb’s current without strain',
    subject: 'pack and charging',
    unit: 'A',
    sense: 'at most',
    need: 'pack.currentMax',
    has: 'pack.currentClimb',
    remedy:
      'Fit a pack of a higher continuous current, or lower the duty ceiling. Halve the C figure on a hobby label.',
    caution: LITHIUM,
  },
  'pack-stall-current': {
    title: 'The pack bears the current of a stall without strain',
    subject: 'pack and charging',
    unit: 'A',
    sense: 'at most',
    need: 'pack.currentMax',
    has: 'pack.currentStall',
    remedy:
      'For a second or two most packs bear more than they do for long; strangers stall a drive all day. Let the drive cut a stall soon, ramp the start, or fit a pack of a higher current.',
    caution: LITHIUM,
    informs: true,
  },
  'pack-trip': {
    title: 'A stall does not trip the pack’s protection board',
    subject: 'pack and charging',
    unit: 'A',
    sense: 'at most',
    need: 'pack.tripCurrent',
    has: 'pack.currentStall',
    when: ({ protected: isProtected }) => isProtected,
    remedy:
      'A tripped board latches: the vehicle is dead until somebody unplugs it. Lower the duty ceiling, ramp the start, or fit a pack whose board trips later.',
  },
  'pack-cut-off': {
    title: 'The climb does not pull the pack below its cut-off, at the reserve on the coldest day',
    subject: 'pack and charging',
    unit: 'V',
    sense: 'at least',
    need: 'pack.cutOff',
    has: 'pack.voltageClimb',
    remedy: 'Keep a larger reserve, fit a pack of lower resistance, or do not climb steeply on the last of the charge.',
    caution: LITHIUM,
  },
  'pack-cut-off-stall': {
    title: 'A stall does not pull the pack below its cut-off, at the reserve on the coldest day',
    subject: 'pack and charging',
    unit: 'V',
    sense: 'at least',
    need: 'pack.cutOff',
    has: 'supply.inputStall',
    remedy:
      'A stall on the last of the charge then counts as an empty pack: driving ends, and a protection board may latch. Keep a larger reserve, fit a pack of lower resistance, or lower the duty ceiling.',
    caution: LITHIUM,
    informs: true,
  },
  'pack-usable': {
    title: 'Most of the charge can be used',
    subject: 'pack and charging',
    unit: '%',
    sense: 'at least',
    need: 'pack.usableWanted',
    has: 'pack.usableShare',
    remedy:
      'Where the climb ends the run before the reserve does, fit a pack of lower resistance or lower the duty ceiling. Cold takes its share of any pack, and a fast discharge of a lead or alkaline one: keep it warm, or take a larger one.',
    informs: true,
  },
  'charger-suits': {
    title: 'The charger suits the pack’s chemistry and cells',
    subject: 'pack and charging',
    unit: '1',
    sense: 'at least',
    need: 'pack.chargerNeed',
    has: 'pack.chargerFits',
    remedy:
      'Choose a charger made for this chemistry and at least this number of cells. Alkaline cells must never be charged: fit a pack that can be.',
    caution: `A charger for another chemistry can set a pack on fire. ${LITHIUM}`,
  },
  'charge-rate': {
    title: 'The pack is charged no faster than its chemistry bears',
    subject: 'pack and charging',
    unit: '1',
    sense: 'at most',
    need: 'pack.chargeRateMax',
    has: 'pack.chargeRate',
    remedy: 'Set a lower charge current or fit a larger pack.',
    caution: LITHIUM,
  },
  'charge-time': {
    title: 'The pack is full again in the time wanted',
    subject: 'pack and charging',
    unit: 'h',
    sense: 'at most',
    need: 'want.chargeTime',
    has: 'pack.chargeTime',
    remedy: 'Use a stronger charger or source, within the charge rate of the cells, or own a second pack.',
    caution: LITHIUM,
  },
  'charge-source': {
    title: 'The charger’s source feeds it in full',
    subject: 'pack and charging',
    unit: 'A',
    sense: 'at least',
    need: 'charger.current',
    has: 'pack.chargeCurrent',
    remedy: 'A weaker source only makes charging longer. For full speed use one of more power.',
    informs: true,
  },
  'pack-life': {
    title: 'A pack lasts the charge cycles wanted',
    subject: 'pack and charging',
    unit: '1',
    sense: 'at least',
    need: 'want.life',
    has: 'pack.life',
    when: ({ chemistry }) => LITHIUM_CELLS.has(chemistry),
    remedy: 'Keep a larger reserve: shallow cycles wear a pack less. Store it half full and cool.',
  },
});
