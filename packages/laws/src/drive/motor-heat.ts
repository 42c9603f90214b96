/** A motor warming: magnets weaken, copper resists more, heat goes from winding to can to air. */
import { COPPER_COEFFICIENT } from '../conductors/wire.ts';
import { COPPER_REFERENCE, ZERO_CELSIUS } from '../constants.ts';
import { law, OutOfRange } from '../law.ts';

/** Kinds of motor magnet. */
export const MAGNETS = ['ferrite', 'neodymium', 'samarium-cobalt', 'alnico'] as const;
export type Magnet = (typeof MAGNETS)[number];

/** Reversible loss of magnet strength [1/K], relative to 20 °C. */
export const MAGNET_COEFFICIENT: Readonly<Record<Magnet, { readonly perKelvin: number; readonly source: string }>> = {
  ferrite: { perKelvin: -0.002, source: 'from memory: hard ferrite, about −0.20 %/K' },
  neodymium: { perKelvin: -0.0011, source: 'Advanced Magnets, temperature coefficients: −0.09 to −0.12 %/K' },
  'samarium-cobalt': { perKelvin: -0.0004, source: 'Advanced Magnets, temperature coefficients: −0.03 to −0.05 %/K' },
  alnico: { perKelvin: -0.0002, source: 'magnet material selection article: −0.02 %/K' },
};

const AMBIENT = { symbol: 'Ta', is: 'air temperature', unit: 'K', from: 233, to: 373 } as const;
const R20 = { symbol: 'R20', is: 'winding resistance at 20 °C', unit: 'Ω', above: 0 } as const;
const INNER = { symbol: 'R1', is: 'thermal resistance winding to can', unit: 'K/W', above: 0 } as const;
const OUTER = { symbol: 'R2', is: 'thermal resistance can to air', unit: 'K/W', above: 0 } as const;
const CURRENT = { symbol: 'I', is: 'motor current, root mean square', unit: 'A', from: 0 } as const;
const TWO_BODY =
  'two-body model of motor makers’ data sheets (Rth1, Rth2, τw1, τw2) with the resistance of copper at its own temperature';

/** Motor constant at a magnet temperature. */
export const magnetConstantAt = law(
  {
    id: 'magnet-constant-at',
    title: 'Motor constant with warm magnets',
    equation: 'k = k20·(1 + β(magnet)·(T − 293.15 K)), β = −0.0020, −0.0011, −0.0004, −0.0002 /K',
    args: {
      constant20: { symbol: 'k20', is: 'motor constant at 20 °C', unit: 'V·s/rad', above: 0 },
      temperature: { symbol: 'T', is: 'magnet temperature', unit: 'K', from: 233, to: ZERO_CELSIUS + 150 },
      magnet: { symbol: 'magnet', is: 'magnet material', unit: 'name', oneOf: MAGNETS },
    },
    gives: { symbol: 'k', is: 'motor constant at T', unit: 'V·s/rad' },
    validFor: 'reversible change only: the constant follows the remanence',
    leavesOut: 'lasting loss from heat or from stall current, grades of one material',
    source: 'magnet makers’ reversible temperature coefficients of remanence, see MAGNET_COEFFICIENT',
  },
  ({ constant20, temperature, magnet }) =>
    constant20 * (1 + MAGNET_COEFFICIENT[magnet].perKelvin * (temperature - COPPER_REFERENCE)),
);

/** Heat-holding capacity of a winding or can from its thermal time constant. */
export const heatCapacityFromTimeConstant = law(
  {
    id: 'heat-capacity-from-time-constant',
    title: 'Heat capacity from a thermal time constant',
    equation: 'C = τ/Rth',
    args: {
      timeConstant: { symbol: 'τ', is: 'thermal time constant', unit: 's', above: 0 },
      thermalResistance: { symbol: 'Rth', is: 'thermal resistance of the same step', unit: 'K/W', above: 0 },
    },
    gives: { symbol: 'C', is: 'heat capacity', unit: 'J/K' },
    validFor: 'one body giving heat through one resistance',
    leavesOut: 'the other body: for a winding, the can counts as fixed',
    source: 'first-order lumped heating, any heat-transfer text',
  },
  ({ timeConstant, thermalResistance }) => timeConstant / thermalResistance,
);

/** Rate of warming while no heat has left yet: the first seconds of a stall. */
export const adiabaticHeatingRate = law(
  {
    id: 'adiabatic-heating-rate',
    title: 'Warming without cooling',
    equation: 'dT/dt = I²·R/C',
    args: {
      current: CURRENT,
      resistance: { symbol: 'R', is: 'winding resistance at its temperature', unit: 'Ω', above: 0 },
      heatCapacity: { symbol: 'C', is: 'heat capacity of what the heat reaches', unit: 'J/K', above: 0 },
    },
    gives: { symbol: 'dT/dt', is: 'rate of warming', unit: 'K/s' },
    validFor: 'times well below the thermal time constant of the part',
    leavesOut: 'cooling, rising resistance; an upper bound on the rise at constant voltage',
    source: "Joule's law and the definition of heat capacity",
  },
  ({ current, resistance, heatCapacity }) => (current ** 2 * resistance) / heatCapacity,
);

const runaway = (id: string, current: number, gain: number): void => {
  if (gain < 1) return;
  const most = current / Math.sqrt(gain);
  throw new OutOfRange(id, 'I', current, `below ${most} A, where warming copper runs away`, TWO_BODY);
};

/** Winding temperature after a long time at a constant current, with copper's own feedback. */
export const windingSteadyTemperature = law(
  {
    id: 'winding-steady-temperature',
    title: 'Steady winding temperature at a current',
    equation: 'T = Ta + P·(1 + α(Ta − 293.15 K))/(1 − α·P), P = (R1 + R2)·R20·I²',
    args: { current: CURRENT, resistance20: R20, windingToCan: INNER, canToAir: OUTER, ambient: AMBIENT },
    gives: { symbol: 'T', is: 'winding temperature', unit: 'K' },
    validFor: 'constant current for several can time constants; refuses where it would run away (α·P ≥ 1)',
    leavesOut: 'iron and friction heat, mounting that cools, a closed compartment that warms',
    source: TWO_BODY,
  },
  ({ current, resistance20, windingToCan, canToAir, ambient }) => {
    const cold = (windingToCan + canToAir) * resistance20 * current ** 2;
    runaway('winding-steady-temperature', current, COPPER_COEFFICIENT * cold);
    return ambient + (cold * (1 + COPPER_COEFFICIENT * (ambient - COPPER_REFERENCE))) / (1 - COPPER_COEFFICIENT * cold);
  },
);

/** Current that a winding bears for ever within its temperature limit. */
export const motorContinuousCurrent = law(
  {
    id: 'motor-continuous-current',
    title: 'Continuous current of a motor',
    equation: 'I = √((T − Ta)/((R1 + R2)·R20·(1 + α(T − 293.15 K))))',
    args: {
      limit: { symbol: 'T', is: 'permitted winding temperature', unit: 'K', from: 253, to: 473 },
      resistance20: R20,
      windingToCan: INNER,
      canToAir: OUTER,
      ambient: AMBIENT,
    },
    gives: { symbol: 'I', is: 'motor current, root mean square', unit: 'A' },
    validFor: 'a limit above the ambient, heat from the winding alone',
    leavesOut: 'iron and friction heat, brush wear, which often limits first',
    source: TWO_BODY,
  },
  ({ limit, resistance20, windingToCan, canToAir, ambient }) => {
    if (limit < ambient)
      throw new OutOfRange('motor-continuous-current', 'T', limit, `from Ta = ${ambient} K`, TWO_BODY);
    const hot = resistance20 * (1 + COPPER_COEFFICIENT * (limit - COPPER_REFERENCE));
    return Math.sqrt((limit - ambient) / ((windingToCan + canToAir) * hot));
  },
);

/** Mean winding temperature from its resistance cold and hot. */
export const windingTemperatureByResistance = law(
  {
    id: 'winding-temperature-by-resistance',
    title: 'Winding temperature by the resistance method',
    equation: 'T2 = (Rh/Rc)·(T1 − 38.65 K) + 38.65 K: the line of copper meets zero at −234.5 °C, which is 38.65 K',
    args: {
      cold: { symbol: 'Rc', is: 'resistance before', unit: 'Ω', above: 0 },
      hot: { symbol: 'Rh', is: 'resistance after, leads subtracted in both', unit: 'Ω', above: 0 },
      before: {
        symbol: 'T1',
        is: 'temperature before, winding at rest with its surroundings',
        unit: 'K',
        from: 223,
        to: 423,
      },
    },
    gives: { symbol: 'T2', is: 'mean winding temperature after', unit: 'K' },
    validFor: 'copper, measured at once after switching off; a brushed motor at the same rotor angle',
    leavesOut: 'hot spots, which lie above the mean; brush contact',
    source: 'IEC 60034-1, measurement of winding temperature by resistance; IEC 60228 constant 234.5 for copper',
  },
  ({ cold, hot, before }) => {
    const zero = ZERO_CELSIUS - 234.5;
    return (hot / cold) * (before - zero) + zero;
  },
);
