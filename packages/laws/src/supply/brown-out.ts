/** The coincidence that resets the board: a converter's constant power, a stalled motor and a soft pack on one bus. */
import { law, OutOfRange } from '../law.ts';

const QUADRATIC =
  'Kirchhoff’s laws with a constant-power load: the larger root of V² − E V + R P = 0; as in notes on constant-power loads (Middlebrook 1976 for their stability)';
const emf = { symbol: 'E', is: 'rested voltage of the pack', unit: 'V', above: 0 } as const;
const resistance = { symbol: 'R', is: 'resistance of pack and shared leads', unit: 'Ω', above: 0 } as const;
const power = {
  symbol: 'P',
  is: 'constant power drawn (converter output over efficiency)',
  unit: 'W',
  from: 0,
} as const;
const motor = {
  symbol: 'Rm',
  is: 'resistance of the stalled motors with bridge and leads',
  unit: 'Ω',
  above: 0,
} as const;
const LEAVES = 'bus capacitance (see hold-up-time), motor inductance, slow polarisation, under-voltage lock-out';

/** Bus voltage under a constant-power load; refuses a power the source cannot give. */
function busVoltage(id: string, emf: number, resistance: number, power: number): number {
  const rest = emf * emf - 4 * resistance * power;
  if (rest < 0) {
    const accepted = `up to ${emf ** 2 / (4 * resistance)} W, above which the bus collapses`;
    throw new OutOfRange(id, 'P', power, accepted, QUADRATIC);
  }
  return (emf + Math.sqrt(rest)) / 2;
}

/** Pack and bus voltage with a converter that draws constant power. */
export const packVoltageConstantPower = law(
  {
    id: 'pack-voltage-constant-power',
    title: 'Pack voltage under a constant-power load',
    equation: 'V = (E + √(E² − 4 R P)) / 2',
    args: { emf, resistance, power },
    gives: { symbol: 'V', is: 'voltage at the converter', unit: 'V' },
    validFor: 'P up to E²/4R; above, there is no steady state and the law throws',
    leavesOut: LEAVES,
    source: QUADRATIC,
  },
  ({ emf, resistance, power }) => busVoltage('pack-voltage-constant-power', emf, resistance, power),
);

/** Pack current with a converter that draws constant power. */
export const packCurrentConstantPower = law(
  {
    id: 'pack-current-constant-power',
    title: 'Pack current under a constant-power load',
    equation: 'I = (E − √(E² − 4 R P)) / (2 R)',
    args: { emf, resistance, power },
    gives: { symbol: 'I', is: 'pack current', unit: 'A' },
    validFor: 'P up to E²/4R; above, there is no steady state and the law throws',
    leavesOut: LEAVES,
    source: QUADRATIC,
  },
  ({ emf, resistance, power }) =>
    (emf - busVoltage('pack-current-constant-power', emf, resistance, power)) / resistance,
);

/** Largest constant power a source can feed: above it the bus collapses. */
export const collapsePower = law(
  {
    id: 'collapse-power',
    title: 'Largest constant power a source can feed',
    equation: 'Pmax = E² / (4 R)',
    args: { emf, resistance },
    gives: { symbol: 'Pmax', is: 'power at which the bus collapses', unit: 'W' },
    validFor: 'steady state; the bus then stands at half the rested voltage',
    leavesOut: 'under-voltage lock-out, which acts sooner',
    source: 'maximum power theorem (Jacobi), any circuit text',
  },
  ({ emf, resistance }) => (emf * emf) / (4 * resistance),
);

/** Bus voltage while a motor is stalled beside the converter. */
export const packVoltageWithStall = law(
  {
    id: 'pack-voltage-with-stall',
    title: 'Pack voltage with a converter and a stalled motor',
    equation: 'V = (E + √(E² − 4 a R P)) / (2 a), a = 1 + R / Rm',
    args: { emf, resistance, power, motor },
    gives: { symbol: 'V', is: 'voltage of the shared bus', unit: 'V' },
    validFor: 'full duty, P up to collapse-power-with-stall; above, the law throws',
    leavesOut: LEAVES,
    source: QUADRATIC,
  },
  ({ emf, resistance, power, motor }) => {
    const share = motor / (motor + resistance);
    return busVoltage('pack-voltage-with-stall', emf * share, resistance * share, power);
  },
);

/** Pack current while a motor is stalled beside the converter. */
export const packCurrentWithStall = law(
  {
    id: 'pack-current-with-stall',
    title: 'Pack current with a converter and a stalled motor',
    equation: 'I = (E − V) / R, V = (E + √(E² − 4 a R P)) / (2 a), a = 1 + R / Rm',
    args: { emf, resistance, power, motor },
    gives: { symbol: 'I', is: 'pack current', unit: 'A' },
    validFor: 'full duty, P up to collapse-power-with-stall; above, the law throws',
    leavesOut: LEAVES,
    source: QUADRATIC,
  },
  ({ emf, resistance, power, motor }) => {
    const share = motor / (motor + resistance);
    return (emf - busVoltage('pack-current-with-stall', emf * share, resistance * share, power)) / resistance;
  },
);

/** Largest converter power while a motor is stalled beside it. */
export const collapsePowerWithStall = law(
  {
    id: 'collapse-power-with-stall',
    title: 'Largest constant power beside a stalled motor',
    equation: 'Pmax = E² / (4 R (1 + R / Rm))',
    args: { emf, resistance, motor },
    gives: { symbol: 'Pmax', is: 'power at which the bus collapses', unit: 'W' },
    validFor: 'steady state, full duty',
    leavesOut: 'under-voltage lock-out, which acts sooner',
    source: 'Thévenin’s theorem and the maximum power theorem, any circuit text',
  },
  ({ emf, resistance, motor }) => (emf * emf) / (4 * resistance * (1 + resistance / motor)),
);

/** Magnitude of the negative input resistance of a converter: the source must stay below it to be stable. */
export const converterInputResistance = law(
  {
    id: 'converter-input-resistance',
    title: 'Small-signal input resistance of a constant-power converter',
    equation: 'r = V² / P (negative in sign)',
    args: {
      voltage: { symbol: 'V', is: 'input voltage', unit: 'V', above: 0 },
      power: { symbol: 'P', is: 'input power', unit: 'W', above: 0 },
    },
    gives: { symbol: 'r', is: 'magnitude of the negative input resistance', unit: 'Ω' },
    validFor: 'frequencies below the converter’s loop bandwidth',
    leavesOut: 'input filter resonance, which asks for damping besides',
    source: 'Middlebrook, Input filter considerations in design and application of switching regulators, IEEE IAS 1976',
  },
  ({ voltage, power }) => (voltage * voltage) / power,
);

/** Resistance the whole supply loop of a board may have before its under-voltage flag. */
export const loopResistanceBudget = law(
  {
    id: 'loop-resistance-budget',
    title: 'Resistance a supply loop may have',
    equation: 'R = (Us − Ub) / I',
    args: {
      source: { symbol: 'Us', is: 'voltage at the source', unit: 'V', above: 0 },
      board: { symbol: 'Ub', is: 'lowest voltage at the board', unit: 'V', above: 0 },
      current: { symbol: 'I', is: 'peak current of the board', unit: 'A', above: 0 },
    },
    gives: { symbol: 'R', is: 'resistance of both leads and all contacts', unit: 'Ω' },
    validFor: 'steady peaks; Ub below Us',
    leavesOut: 'inductance of the leads, current of others in a shared lead',
    source: 'Ohm’s law, any circuit text',
  },
  ({ source, board, current }) => (source - board) / current,
);

/** Voltage that arrives at a board through leads and contacts. */
export const boardInputVoltage = law(
  {
    id: 'board-input-voltage',
    title: 'Voltage that arrives at a board',
    equation: 'Ub = Us − I (Rl + Rc)',
    args: {
      source: { symbol: 'Us', is: 'voltage at the source', unit: 'V', above: 0 },
      current: { symbol: 'I', is: 'current of the board', unit: 'A', from: 0 },
      leads: { symbol: 'Rl', is: 'resistance of both leads', unit: 'Ω', from: 0 },
      contacts: { symbol: 'Rc', is: 'resistance of all contacts', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'Ub', is: 'voltage at the board', unit: 'V' },
    validFor: 'steady current',
    leavesOut: 'inductance of the leads, current of others in a shared lead',
    source: 'Ohm’s law, any circuit text',
  },
  ({ source, current, leads, contacts }) => source - current * (leads + contacts),
);
