/** The laws of packs, converters and capacitors against simulated circuits. */
import { checkLaw, checkSubject } from '../check.ts';
import { pwmMeanSlowDecay, pwmSupplyCurrent } from '../drive/pwm.ts';
import {
  collapsePower,
  collapsePowerWithStall,
  packCurrentConstantPower,
  packCurrentWithStall,
  packVoltageConstantPower,
  packVoltageWithStall,
} from '../supply/brown-out.ts';
import { capacitorVoltage, holdUpCapacitance, holdUpTime, inrushIntegral, inrushPeak } from '../supply/capacitor.ts';
import { polarisationVoltage } from '../supply/chen.ts';
import { buckDuty, buckInductorRipple, buckOutputRipple } from '../supply/converter.ts';
import { cellTwoBranch } from './cell-two-branch.circuit.ts';
import { sourceOf } from './circuit.ts';
import { holdUp } from './hold-up.circuit.ts';
import { inrush } from './inrush.circuit.ts';
import { packBridgeCapacitor } from './pack-bridge-capacitor.circuit.ts';
import { packCollapse } from './pack-collapse.circuit.ts';
import { packSlowSag } from './pack-slow-sag.circuit.ts';
import { packStallConverter } from './pack-stall-converter.circuit.ts';
import { stepDown } from './step-down.circuit.ts';

const kind = 'reference library';
const stall = packStallConverter.kept.results;
const collapse = packCollapse.kept.results;
const sag = packSlowSag.kept.results;
const pulsed = packBridgeCapacitor.kept.results;
const cell = cellTwoBranch.kept.results;
const rush = inrush.kept.results;
const hold = holdUp.kept.results;
const buck = stepDown.kept.results;
const STALL = { source: sourceOf(packStallConverter), kind } as const;
const COLLAPSE = { source: sourceOf(packCollapse), kind } as const;
const SAG = { source: sourceOf(packSlowSag), kind } as const;
const PULSED = { source: sourceOf(packBridgeCapacitor), kind } as const;
const CELL = { source: sourceOf(cellTwoBranch), kind } as const;
const RUSH = { source: sourceOf(inrush), kind } as const;
const HOLD = { source: sourceOf(holdUp), kind } as const;
const BUCK = { source: sourceOf(stepDown), kind } as const;

const PACK = { emf: 7.4, resistance: 0.15 };
const POWER = 5.5556;

const stallChecks = [
  checkLaw(packVoltageConstantPower, [
    { case: 'before the stall', ...STALL, args: { ...PACK, power: POWER }, expected: stall.before, allowed: 2e-6 },
  ]),
  checkLaw(packCurrentConstantPower, [
    {
      case: 'before the stall',
      ...STALL,
      args: { ...PACK, power: POWER },
      expected: -stall.beforeCurrent,
      allowed: 2e-5,
    },
  ]),
  checkLaw(packVoltageWithStall, [
    {
      case: 'after the stall',
      ...STALL,
      args: { ...PACK, power: POWER, motor: 1 },
      expected: stall.after,
      allowed: 2e-6,
    },
  ]),
  checkLaw(packCurrentWithStall, [
    {
      case: 'after the stall',
      ...STALL,
      args: { ...PACK, power: POWER, motor: 1 },
      expected: -stall.afterCurrent,
      allowed: 2e-6,
    },
  ]),
  // The power asked for rises by 100 W a second, so the time of the collapse tells its power.
  checkLaw(collapsePower, [
    { case: 'power at which the bus breaks', ...COLLAPSE, args: PACK, expected: 100 * collapse.alone, allowed: 5e-4 },
  ]),
  checkLaw(collapsePowerWithStall, [
    {
      case: 'power at which the bus breaks beside a stalled motor of 1 Ω',
      ...COLLAPSE,
      args: { ...PACK, motor: 1 },
      expected: 100 * collapse.shared,
      allowed: 5e-4,
    },
  ]),
];

const SLOW_PACK = { emf: 7.4, series: 0.08, slow: 0.04, capacitance: 500, power: 5, motor: 0.9 };
/** Step of the composition below [s]: far below the branch's 20 s, so that its current hardly moves within one. */
const STEP = 0.01;

/** Voltage of the slow branch after a second of converter and then some time of stall, current and branch by turns. */
function branchAfter(stalled: number): number {
  const { emf, series: resistance, slow, capacitance, power, motor } = SLOW_PACK;
  const branch = (current: number, initial: number, time: number) =>
    polarisationVoltage({ current, resistance: slow, capacitance, initial, time });
  let voltage = branch(packCurrentConstantPower({ emf, resistance, power }), 0, 1);
  for (let i = 0; i < Math.round(stalled / STEP); i++) {
    const current = packCurrentWithStall({ emf: emf - voltage, resistance, power, motor });
    voltage = branch(current, voltage, STEP);
  }
  return voltage;
}

const sinking = (stalled: number, expected: number) =>
  ({
    case: `bus ${stalled} s after the stall, polarisation and pack voltage by turns in steps of 10 ms`,
    ...SAG,
    expected,
    allowed: 1e-5,
    ours: () => {
      const { emf, series: resistance, power, motor } = SLOW_PACK;
      return packVoltageWithStall({ emf: emf - branchAfter(stalled), resistance, power, motor });
    },
  }) as const;

const sagChecks = checkSubject('slow sag after a stall, step by step', [
  // Ten milliseconds after the stall the motor's current has risen to all but e^(−16) of its end.
  sinking(0.01, sag.early),
  sinking(4, sag.at5),
  sinking(19, sag.at20),
  sinking(20, sag.at21),
  sinking(59, sag.at60),
  sinking(198, sag.late),
  {
    case: 'the slow branch itself 19 s after the stall',
    ...SAG,
    expected: sag.branch20,
    allowed: 1e-4,
    ours: () => branchAfter(19),
  },
  {
    case: 'pack current when the branch is charged: all 120 mΩ count',
    ...SAG,
    expected: -sag.lateCurrent,
    allowed: 1e-5,
    ours: () => packCurrentWithStall({ emf: 7.4, resistance: 0.12, power: 5, motor: 0.9 }),
  },
]);

/** Motor current of a pulsed leg behind a soft pack: pack, bridge and motor settled by turns. */
function pulsedMotorCurrent(): number {
  const duty = 0.6;
  let motorCurrent = 0;
  for (let i = 0; i < 30; i++) {
    const voltage = 7.4 - 0.15 * pwmSupplyCurrent({ duty, motorCurrent, quiescent: 0 });
    // One switch of 0.1 mΩ is always in the path.
    motorCurrent = (pwmMeanSlowDecay({ voltage, duty, bridgeDrop: 0 }) - 1) / 0.9001;
  }
  return motorCurrent;
}

const packOfPulses = () => pwmSupplyCurrent({ duty: 0.6, motorCurrent: pulsedMotorCurrent(), quiescent: 0 });

const pulsedChecks = checkSubject('pulsed motor behind a soft pack with a capacitor', [
  { case: 'mean motor current', ...PULSED, expected: pulsed.motor, allowed: 5e-5, ours: pulsedMotorCurrent },
  { case: 'mean pack current', ...PULSED, expected: -pulsed.pack, allowed: 2e-4, ours: packOfPulses },
  { case: 'bus', ...PULSED, expected: pulsed.bus, allowed: 5e-5, ours: () => 7.4 - 0.15 * packOfPulses() },
]);

const FAST_BRANCH = { resistance: 0.04669, capacitance: 702.7 };
const SLOW_BRANCH = { resistance: 0.04984, capacitance: 4475 };

const loaded = (time: number, expected: number) =>
  ({
    case: `terminals ${time} s after a step of 0.85 A`,
    ...CELL,
    expected,
    allowed: 1e-6,
    ours: () => {
      const step = { current: 0.85, initial: 0, time };
      const branches =
        polarisationVoltage({ ...step, ...FAST_BRANCH }) + polarisationVoltage({ ...step, ...SLOW_BRANCH });
      return 3.80342 - 0.85 * 0.07446 - branches;
    },
  }) as const;

const cellChecks = [
  checkLaw(polarisationVoltage, [
    {
      case: 'fast branch 30 s after the load fell from 0.85 to 0.2 A',
      ...CELL,
      args: { current: 0.2, ...FAST_BRANCH, initial: cell.fastLoaded, time: 30 },
      expected: cell.fastRelieved,
      allowed: 1e-4,
    },
    {
      case: 'slow branch 300 s after the load fell from 0.85 to 0.2 A',
      ...CELL,
      args: { current: 0.2, ...SLOW_BRANCH, initial: cell.slowLoaded, time: 300 },
      expected: cell.slowRelieved,
      allowed: 1e-4,
    },
  ]),
  checkSubject('cell with two branches under a step', [
    loaded(1, cell.at1),
    loaded(10, cell.at10),
    loaded(100, cell.at100),
    loaded(999, cell.at999),
  ]),
];

const PLUG = { source: 12, resistance: 0.1 };
const FILTER = { duty: 0.4, inductance: 400e-6, capacitance: 100e-6, frequency: 20e3 };

const capacitorChecks = [
  checkLaw(inrushPeak, [{ case: 'first instant', ...RUSH, args: PLUG, expected: rush.peak, allowed: 1e-5 }]),
  checkLaw(inrushIntegral, [
    {
      case: 'mean square over 1.9 ms, which is all of it, times 1.9 ms',
      ...RUSH,
      args: { ...PLUG, capacitance: 1e-3 },
      expected: rush.rms ** 2 * 1.9e-3,
      allowed: 2e-5,
    },
  ]),
  checkLaw(capacitorVoltage, [
    {
      case: 'after 100 µs',
      ...RUSH,
      args: { ...PLUG, capacitance: 1e-3, time: 100e-6 },
      expected: rush.after100,
      allowed: 1e-5,
    },
    {
      case: 'after 300 µs',
      ...RUSH,
      args: { ...PLUG, capacitance: 1e-3, time: 300e-6 },
      expected: rush.after300,
      allowed: 1e-5,
    },
  ]),
  checkLaw(holdUpTime, [
    {
      case: 'from 12 to 9 V',
      ...HOLD,
      args: { capacitance: 2.2e-3, from: 12, to: 9, power: 5 },
      expected: hold.to9,
      allowed: 1e-5,
    },
    {
      case: 'from 12 to 8 V',
      ...HOLD,
      args: { capacitance: 2.2e-3, from: 12, to: 8, power: 5 },
      expected: hold.to8,
      allowed: 1e-5,
    },
  ]),
  checkLaw(holdUpCapacitance, [
    {
      case: 'what carried 5 W from 12 to 8 V for that time',
      ...HOLD,
      args: { power: 5, time: hold.to8, from: 12, to: 8 },
      expected: 2.2e-3,
      allowed: 1e-5,
    },
  ]),
  checkLaw(buckDuty, [
    {
      case: 'ideal, at the simulated output of duty 0.4',
      ...BUCK,
      args: { output: buck.mean, input: 50, efficiency: 1 },
      expected: 0.4,
      allowed: 1e-4,
    },
  ]),
  checkLaw(buckInductorRipple, [
    {
      case: '50 V to 20 V, 400 µH, 20 kHz, peak to peak',
      ...BUCK,
      args: { input: 50, output: 20, inductance: 400e-6, frequency: 20e3 },
      expected: buck.currentMax - buck.currentMin,
      allowed: 0.003,
    },
  ]),
  checkLaw(buckOutputRipple, [
    {
      case: 'peak to peak of the output over its mean',
      ...BUCK,
      args: FILTER,
      expected: (buck.max - buck.min) / buck.mean,
      allowed: 0.006,
    },
  ]),
];

export const packCircuitChecks = [...stallChecks, sagChecks, pulsedChecks, ...cellChecks, ...capacitorChecks];
