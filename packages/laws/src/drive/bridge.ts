/** Losses of the bridge that drives a motor, and how hot its junctions get. */
import { ROOM } from '../constants.ts';
import { law, OutOfRange } from '../law.ts';

/** Rise of the on-resistance of a MOSFET per kelvin above 25 °C [1/K]; from memory, makers' curves give 0.003 to 0.006. */
export const MOSFET_COEFFICIENT = 0.004;

/** Drop of both switches of a classic bipolar bridge at two currents [V at A]. */
export interface BipolarDrop {
  readonly currentLow: number;
  readonly dropLow: number;
  readonly currentHigh: number;
  readonly dropHigh: number;
  readonly source: string;
}

const BIPOLAR_SHEET = 'STMicroelectronics, L298 data sheet, January 2000: VCEsat of both switches';

/** Typical and largest drop of the classic dual bipolar bridge. */
export const BIPOLAR_BRIDGE: Readonly<Record<'typical' | 'maximum', BipolarDrop>> = {
  typical: {
    currentLow: 1,
    dropLow: 2.55,
    currentHigh: 2,
    dropHigh: 3.7,
    source: `${BIPOLAR_SHEET}, sum of the typical values`,
  },
  maximum: {
    currentLow: 1,
    dropLow: 3.2,
    currentHigh: 2,
    dropHigh: 4.9,
    source: `${BIPOLAR_SHEET}, total drop, largest`,
  },
};

const CURRENT = { symbol: 'I', is: 'motor current', unit: 'A', from: 0 } as const;
const RMS = { symbol: 'I', is: 'motor current, root mean square', unit: 'A', from: 0 } as const;
const RTH = { symbol: 'Rth', is: 'thermal resistance junction to air', unit: 'K/W', above: 0 } as const;
const AMBIENT = { symbol: 'Ta', is: 'air temperature', unit: 'K', from: 233, to: 398 } as const;
const BIPOLAR_SOURCE = 'straight line between two data-sheet currents; common practice, no source';
/** How far past its second current the straight line is trusted: the short-time rating of the classic part. */
const PAST = 1.5;

/** Voltage lost in a bipolar bridge, by a straight line through two points of its data sheet. */
export const bipolarBridgeDrop = law(
  {
    id: 'bipolar-bridge-drop',
    title: 'Voltage lost in a bipolar bridge',
    equation: 'Vb = V1 + (V2 − V1)·(I − I1)/(I2 − I1)',
    args: {
      current: CURRENT,
      currentLow: { symbol: 'I1', is: 'first current of the data sheet', unit: 'A', above: 0 },
      dropLow: { symbol: 'V1', is: 'drop of both switches at the first current', unit: 'V', above: 0 },
      currentHigh: { symbol: 'I2', is: 'second current of the data sheet', unit: 'A', above: 0 },
      dropHigh: { symbol: 'V2', is: 'drop of both switches at the second current', unit: 'V', above: 0 },
    },
    gives: { symbol: 'Vb', is: 'voltage lost, both switches', unit: 'V' },
    validFor: 'up to one and a half times the second current; near zero current it reads the threshold',
    leavesOut: 'temperature of the junction',
    source: BIPOLAR_SOURCE,
  },
  ({ current, currentLow, dropLow, currentHigh, dropHigh }) => {
    const most = PAST * currentHigh;
    if (current > most) throw new OutOfRange('bipolar-bridge-drop', 'I', current, `to ${most} A`, BIPOLAR_SOURCE);
    return dropLow + ((dropHigh - dropLow) * (current - currentLow)) / (currentHigh - currentLow);
  },
);

/** On-resistance of a warm MOSFET. */
export const mosfetResistance = law(
  {
    id: 'mosfet-resistance',
    title: 'On-resistance of a warm MOSFET',
    equation: 'Rds = R25·(1 + a·(Tj − 298.15 K)), a = 0.004 /K',
    args: {
      resistance25: { symbol: 'R25', is: 'on-resistance at 25 °C', unit: 'Ω', above: 0 },
      junction: { symbol: 'Tj', is: 'junction temperature', unit: 'K', from: 233, to: 448 },
    },
    gives: { symbol: 'Rds', is: 'on-resistance at Tj', unit: 'Ω' },
    validFor: 'fully driven gate',
    leavesOut: 'low gate voltage, which can double it',
    source: 'makers’ curves of normalised on-resistance; coefficient from memory',
  },
  ({ resistance25, junction }) => resistance25 * (1 + MOSFET_COEFFICIENT * (junction - ROOM)),
);

/** Heat of conduction in a resistive bridge. */
export const mosfetConductionLoss = law(
  {
    id: 'mosfet-conduction-loss',
    title: 'Conduction loss of a MOSFET bridge',
    equation: 'P = I²·(Rh + Rl)',
    args: {
      current: RMS,
      highSwitch: { symbol: 'Rh', is: 'on-resistance of the upper switch, at its temperature', unit: 'Ω', from: 0 },
      lowSwitch: { symbol: 'Rl', is: 'on-resistance of the lower switch, at its temperature', unit: 'Ω', from: 0 },
    },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'one motor; two motors on one chip add',
    leavesOut: 'switching, dead time, quiescent current',
    source: 'Texas Instruments, DRV8835 data sheet SLVSB18G (2016), section 10.3',
  },
  ({ current, highSwitch, lowSwitch }) => current ** 2 * (highSwitch + lowSwitch),
);

/** Heat of switching edges. */
export const switchingLoss = law(
  {
    id: 'switching-loss',
    title: 'Switching loss',
    equation: 'P = n·V·I·t·f/2',
    args: {
      voltage: { symbol: 'V', is: 'supply voltage', unit: 'V', from: 0 },
      current: CURRENT,
      edgeTime: { symbol: 't', is: 'rise or fall time of one edge', unit: 's', from: 0 },
      frequency: { symbol: 'f', is: 'pulse frequency', unit: 'Hz', from: 0 },
      edges: { symbol: 'n', is: 'edges per period, two for each switched leg', unit: '1', from: 0 },
    },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'hard switching of an inductive load',
    leavesOut: 'charging of the output capacitance, recovery of the diode',
    source: 'Texas Instruments, DRV8428E data sheet SLOSE51A (2020), power dissipation; SLVA504A (2012), section 2.1.1',
  },
  ({ voltage, current, edgeTime, frequency, edges }) => (edges * voltage * current * edgeTime * frequency) / 2,
);

/** Heat of the diode that carries the current in the dead times. */
export const deadTimeLoss = law(
  {
    id: 'dead-time-loss',
    title: 'Diode loss in the dead time',
    equation: 'P = 2·Vd·I·td·f',
    args: {
      diodeDrop: { symbol: 'Vd', is: 'forward drop of the body diode', unit: 'V', from: 0 },
      current: CURRENT,
      deadTime: { symbol: 'td', is: 'dead time at each edge', unit: 's', from: 0 },
      frequency: { symbol: 'f', is: 'pulse frequency', unit: 'Hz', from: 0 },
    },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'two dead times per period, current continuous',
    leavesOut: 'recovery of the diode',
    source: 'Texas Instruments, application report SLVA504A (2012, rev. 2021), section 2.1.1',
  },
  ({ diodeDrop, current, deadTime, frequency }) => 2 * diodeDrop * current * deadTime * frequency,
);

/** Heat of the bridge's own supply current. */
export const quiescentLoss = law(
  {
    id: 'quiescent-loss',
    title: 'Quiescent loss of a bridge',
    equation: 'P = V·Iq',
    args: {
      voltage: { symbol: 'V', is: 'supply voltage', unit: 'V', from: 0 },
      quiescent: { symbol: 'Iq', is: 'quiescent current', unit: 'A', from: 0 },
    },
    gives: { symbol: 'P', is: 'heat', unit: 'W' },
    validFor: 'bridge awake',
    leavesOut: 'sleep, gate charge',
    source: 'Texas Instruments, DRV8428E data sheet SLOSE51A (2020), power dissipation',
  },
  ({ voltage, quiescent }) => voltage * quiescent,
);

const FEEDBACK =
  'makers’ thermal examples with the on-resistance taken at the junction temperature, solved in closed form';

/** Junction temperature of a resistive bridge whose resistance rises with its own heat. */
export const mosfetJunction = law(
  {
    id: 'mosfet-junction',
    title: 'Junction temperature of a MOSFET bridge',
    equation: 'Tj = Ta + P·(1 + a·(Ta − 298.15 K))/(1 − a·P), P = Rth·R25·I²',
    args: {
      current: RMS,
      resistance25: { symbol: 'R25', is: 'on-resistance of the path at 25 °C', unit: 'Ω', above: 0 },
      thermalResistance: RTH,
      ambient: AMBIENT,
    },
    gives: { symbol: 'Tj', is: 'junction temperature', unit: 'K' },
    validFor: 'conduction loss alone; refuses where it would run away (a·P ≥ 1)',
    leavesOut: 'switching and quiescent loss, thermal shutdown',
    source: FEEDBACK,
  },
  ({ current, resistance25, thermalResistance, ambient }) => {
    const cold = thermalResistance * resistance25 * current ** 2;
    const gain = MOSFET_COEFFICIENT * cold;
    if (gain >= 1) {
      throw new OutOfRange(
        'mosfet-junction',
        'I',
        current,
        `below ${current / Math.sqrt(gain)} A, where it runs away`,
        FEEDBACK,
      );
    }
    return ambient + (cold * (1 + MOSFET_COEFFICIENT * (ambient - ROOM))) / (1 - gain);
  },
);
