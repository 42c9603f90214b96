import { checkLaw, checkSubject } from '../check.ts';
import { CHEMISTRY_FACTS } from './chemistries.ts';
import { meanRestVoltage, restCharge, restVoltage, restVoltageSlope } from './rest-voltage.ts';

const HOBBY = 'percentage table of hobby LiPo packs found in many public firmwares';
const CHEN2020 = 'NMC811 5 Ah, electrode fits of Chen et al. 2020 over the published lithiation window';
const CELL27 = 'Simulink example data "battery state of charge estimation", 27 Ah lithium cell at 20 °C';
const PCHIP = 'SciPy PchipInterpolator through the same points';
const FLOODED = 'note on flooded cells, 12.6, 12.4 and 12.2 V at 100, 75 and 50 %';
const MAGAZINE = 'RV magazine answer, 12.66 and 12.45 V at 100 and 75 %';

const twin = (chemistry: 'lipo' | 'nmc' | 'lfp' | 'nimh' | 'alkaline', charge: number, expected: number) =>
  ({
    case: `${chemistry} at ${charge}, between the points of the table`,
    source: PCHIP,
    kind: 'reference library',
    args: { chemistry, charge },
    expected,
    allowed: 1e-9,
  }) as const;

const nmc = (charge: number, expected: number) =>
  ({
    case: `NMC at ${charge * 100} %`,
    source: CHEN2020,
    kind: 'published',
    args: { chemistry: 'nmc', charge },
    expected,
    allowed: 0.012,
  }) as const;

const lipo = (charge: number, expected: number) =>
  ({
    case: `LiPo at ${charge * 100} %`,
    source: HOBBY,
    kind: 'common practice',
    args: { chemistry: 'lipo', charge },
    expected,
    allowed: 0.015,
  }) as const;

const lead = (charge: number, expected: number, source: string) =>
  ({
    case: `lead at ${charge * 100} %, per cell of six`,
    source,
    kind: 'published',
    args: { chemistry: 'lead', charge },
    expected: expected / 6,
    allowed: 0.011,
  }) as const;

export const restVoltageChecks = [
  checkLaw(restVoltage, [
    twin('lipo', 0.07, 3.5912904732544866),
    twin('lipo', 0.93, 4.108455037593985),
    twin('nmc', 0.15, 3.4049778745844317),
    twin('nmc', 0.75, 3.990675006526137),
    twin('lfp', 0.07, 2.884847328587383),
    twin('lfp', 0.75, 3.29219756097561),
    twin('nimh', 0.07, 1.1845634),
    twin('nimh', 0.93, 1.370845),
    twin('alkaline', 0.25, 1.24575),
    twin('alkaline', 0.93, 1.472715),
    nmc(1, 4.193),
    nmc(0.9, 4.094),
    nmc(0.7, 3.924),
    nmc(0.5, 3.708),
    nmc(0.3, 3.549),
    nmc(0.1, 3.258),
    lipo(1, 4.2),
    lipo(0.8, 4.02),
    lipo(0.5, 3.84),
    lipo(0.2, 3.73),
    {
      case: 'LiPo at 75 %, against a lithium cell of another maker',
      source: CELL27,
      kind: 'published',
      args: { chemistry: 'lipo', charge: 0.75 },
      expected: 3.93,
      allowed: 0.006,
    },
    {
      case: 'iron phosphate at 50 %, against a rest-voltage table',
      source: 'rest-voltage table for iron phosphate, from memory',
      kind: 'memory',
      args: { chemistry: 'lfp', charge: 0.5 },
      expected: 3.29,
      allowed: 0.01,
    },
    lead(1, 12.6, FLOODED),
    lead(0.75, 12.4, FLOODED),
    lead(0.5, 12.2, FLOODED),
    lead(1, 12.66, MAGAZINE),
    lead(0.75, 12.45, MAGAZINE),
    {
      case: 'NiMH at half charge: discharge points 1.39, 1.28, 1.18 V of a 7 Ah cell carried to zero current by E0 − K Q/(Q − q) q',
      source: 'Panasonic HHR650D curve points as in the ns-3 network simulator, battery presets',
      kind: 'published',
      args: { chemistry: 'nimh', charge: 0.5 },
      expected: 1.2717,
      allowed: 0.016,
    },
    {
      case: 'NiMH full, upper end of the rest voltage',
      source: 'Varta Microbattery NiMH data sheet V250H, p. 49: rest 1.25 to 1.4 V',
      kind: 'published',
      args: { chemistry: 'nimh', charge: 1 },
      expected: 1.4,
      allowed: 0.005,
    },
    {
      case: 'alkaline fresh',
      source: 'alkaline makers’ handbooks, open circuit of a fresh cell, from memory',
      kind: 'memory',
      args: { chemistry: 'alkaline', charge: 1 },
      expected: 1.58,
      allowed: 0.01,
    },
  ]),
  checkLaw(restCharge, [
    {
      case: 'NMC at 4.022 V',
      source: CHEN2020,
      kind: 'published',
      args: { chemistry: 'nmc', voltage: 4.022 },
      expected: 0.8,
      allowed: 0.03,
    },
    {
      case: 'NMC at 3.924 V',
      source: CHEN2020,
      kind: 'published',
      args: { chemistry: 'nmc', voltage: 3.924 },
      expected: 0.7,
      allowed: 0.03,
    },
    {
      case: 'LiPo at 3.87 V; the table is good for 5 % of the capacity',
      source: HOBBY,
      kind: 'common practice',
      args: { chemistry: 'lipo', voltage: 3.87 },
      expected: 0.6,
      allowed: 0.1,
    },
    {
      case: 'iron phosphate at 3.1908 V, root of the interpolant by Brent’s method',
      source: PCHIP,
      kind: 'reference library',
      args: { chemistry: 'lfp', voltage: 3.1908 },
      expected: 0.2535701139396001,
      allowed: 1e-8,
    },
  ]),
  checkLaw(restVoltageSlope, [
    {
      case: 'NMC from 10 to 50 %: (3.708 − 3.258) V / 0.4',
      source: CHEN2020,
      kind: 'published',
      args: { chemistry: 'nmc', from: 0.1, to: 0.5 },
      expected: 1.125,
      allowed: 0.02,
    },
  ]),
  checkLaw(meanRestVoltage, [
    {
      case: 'NMC over the whole charge, mean of the finely integrated fits',
      source: 'NMC811 5 Ah, electrode fits of Chen et al. 2020 by start concentrations, 18.95 Wh / 5.10 Ah',
      kind: 'published',
      args: { chemistry: 'nmc', from: 0, to: 1 },
      expected: 3.717,
      allowed: 0.002,
    },
    {
      case: 'LiPo over the whole charge, mean of the finely integrated fits',
      source: 'lithium cobalt oxide pouch, electrode fits of Ai et al. 2020, 9.32 Wh / 2.44 Ah',
      kind: 'published',
      args: { chemistry: 'lipo', from: 0, to: 1 },
      expected: 3.816,
      allowed: 0.002,
    },
    {
      case: 'iron phosphate over the whole charge against its printed nominal voltage',
      source: 'cell makers’ pages on lithium iron phosphate voltage: 3.2 V nominal',
      kind: 'published',
      args: { chemistry: 'lfp', from: 0, to: 1 },
      expected: 3.2,
      allowed: 0.005,
    },
    {
      case: 'NMC from 10 to 50 %, exact integral of the interpolant',
      source: PCHIP,
      kind: 'reference library',
      args: { chemistry: 'nmc', from: 0.1, to: 0.5 },
      expected: 3.5649307512862305,
      allowed: 1e-6,
    },
  ]),
  checkSubject('chemistry table', [
    {
      case: 'LiPo nominal voltage against the mean rested voltage of the measured fits',
      source: 'lithium cobalt oxide pouch, electrode fits of Ai et al. 2020',
      kind: 'published',
      expected: 3.816,
      allowed: 0.035,
      ours: () => CHEMISTRY_FACTS.lipo.nominal.value,
    },
    {
      case: 'highest cell voltage a protector allows against the full voltage',
      source: 'data sheet of a pouch-cell protector, 4.275 V high, as quoted in a design note',
      kind: 'published',
      expected: 4.275,
      allowed: 0.02,
      ours: () => CHEMISTRY_FACTS.lipo.full.value,
    },
  ]),
];
