/** A single wire warming itself in still air. */
import { COPPER_REFERENCE, GRAVITY, STEFAN_BOLTZMANN, ZERO_CELSIUS } from '../constants.ts';
import { law, OutOfRange } from '../law.ts';
import { COPPER_COEFFICIENT } from './wire.ts';

/** Thermal conductivity of soft wire insulation [W/(m·K)]: PVC and silicone 0.15–0.25, common practice, no source. */
export const INSULATION_CONDUCTIVITY = 0.17;
/** Emissivity of insulated wire [1], common practice, no source. */
export const INSULATION_EMISSIVITY = 0.9;
/** Hottest conductor the laws of this file answer for [K]: silicone insulation, 200 °C. */
const HOTTEST = ZERO_CELSIUS + 200;
/** Gas constant of dry air [J/(kg·K)] and its specific heat [J/(kg·K)]. */
const AIR_CONSTANT = 287.05;
const AIR_HEAT = 1007;
const SEA_LEVEL = 101325;

/** One property of air by Sutherland's formula about 0 °C. */
const sutherland = (at0: number, s: number, t: number): number =>
  at0 * (t / ZERO_CELSIUS) ** 1.5 * ((ZERO_CELSIUS + s) / (t + s));

/** Heat leaving a metre of horizontal cylinder [W/m]: Churchill and Chu 1975 for convection, grey radiation. */
function cylinderLoss(surface: number, ambient: number, diameter: number, emissivity: number): number {
  const film = (surface + ambient) / 2;
  const viscosity = sutherland(1.716e-5, 110.4, film);
  const conductivity = sutherland(0.0241, 194, film);
  const kinematic = (viscosity * AIR_CONSTANT * film) / SEA_LEVEL;
  const prandtl = (viscosity * AIR_HEAT) / conductivity;
  const rayleigh = (GRAVITY * (surface - ambient) * diameter ** 3 * prandtl) / (film * kinematic ** 2);
  const nusselt = (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
  const convection = Math.PI * conductivity * nusselt * (surface - ambient);
  return convection + Math.PI * diameter * emissivity * STEFAN_BOLTZMANN * (surface ** 4 - ambient ** 4);
}

/** Root of a rising function between two ends, by halving. */
function rootOfRising(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

interface WireInAir {
  readonly ambient: number;
  readonly resistancePerMetre: number;
  readonly conductorDiameter: number;
  readonly outerDiameter: number;
}

/** Current that holds the conductor `rise` above the air. */
function currentHolding(rise: number, wire: WireInAir): number {
  const { ambient, conductorDiameter, outerDiameter } = wire;
  const conductor = ambient + rise;
  const wall = Math.log(outerDiameter / conductorDiameter) / (2 * Math.PI * INSULATION_CONDUCTIVITY);
  const loss = (t: number): number => cylinderLoss(t, ambient, outerDiameter, INSULATION_EMISSIVITY);
  const surface = rootOfRising((t) => t + wall * loss(t) - conductor, ambient, conductor);
  const resistance = wire.resistancePerMetre * (1 + COPPER_COEFFICIENT * (conductor - COPPER_REFERENCE));
  return Math.sqrt(loss(surface) / resistance);
}

const WIRE_ARGS = {
  ambient: { symbol: 'Ta', is: 'air temperature', unit: 'K', from: 233, to: 373 },
  resistancePerMetre: { symbol: "r'20", is: 'resistance per metre at 20 °C', unit: 'Ω/m', above: 0 },
  conductorDiameter: { symbol: 'd', is: 'diameter of the copper', unit: 'm', above: 0 },
  outerDiameter: { symbol: 'D', is: 'diameter over the insulation', unit: 'm', above: 0, to: 0.02 },
} as const;

const HEAT_SOURCE =
  'Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049, horizontal cylinder; conduction through a cylinder wall';

const refuseThin = (id: string, conductor: number, outer: number): void => {
  if (outer < conductor) throw new OutOfRange(id, 'D', outer, `at least d = ${conductor} m`, HEAT_SOURCE);
};

/** Steady current that warms a single wire by a given rise. */
export const wireCurrentForRise = law(
  {
    id: 'wire-current-for-rise',
    title: 'Current that warms a wire by a given rise',
    equation:
      "I = √(q(ΔT)/(r'20·(1 + α(Ta + ΔT − 293.15 K)))), q through the wall of d and D and off its surface to the air",
    args: {
      rise: { symbol: 'ΔT', is: 'rise of the copper above the air', unit: 'K', above: 0, to: 240 },
      ...WIRE_ARGS,
    },
    gives: { symbol: 'I', is: 'steady current, root mean square', unit: 'A' },
    validFor: 'one horizontal wire in still air, long against its connectors, insulation 0.17 W/(m·K), emissivity 0.9',
    leavesOut: 'bundles, tubes and closed boxes (warmer), wind and cold terminals (cooler)',
    source: HEAT_SOURCE,
  },
  ({ rise, ambient, resistancePerMetre, conductorDiameter, outerDiameter }) => {
    refuseThin('wire-current-for-rise', conductorDiameter, outerDiameter);
    return currentHolding(rise, { ambient, resistancePerMetre, conductorDiameter, outerDiameter });
  },
);

/** Steady rise of the copper of a single wire above the air; refuses a current that would pass 200 °C. */
export const wireRise = law(
  {
    id: 'wire-rise',
    title: 'Warming of a single wire',
    equation:
      "I²·r'20·(1 + α(Ta + ΔT − 293.15 K)) = q(ΔT), q through the wall of d and D and off its surface to the air",
    args: { current: { symbol: 'I', is: 'steady current, root mean square', unit: 'A', from: 0 }, ...WIRE_ARGS },
    gives: { symbol: 'ΔT', is: 'rise of the copper above the air', unit: 'K' },
    validFor: 'one horizontal wire in still air, copper at most 200 °C, insulation 0.17 W/(m·K), emissivity 0.9',
    leavesOut: 'bundles, tubes and closed boxes (warmer), wind and cold terminals (cooler)',
    source: HEAT_SOURCE,
  },
  ({ current, ambient, resistancePerMetre, conductorDiameter, outerDiameter }) => {
    refuseThin('wire-rise', conductorDiameter, outerDiameter);
    const wire = { ambient, resistancePerMetre, conductorDiameter, outerDiameter };
    const most = currentHolding(HOTTEST - ambient, wire);
    if (current > most) throw new OutOfRange('wire-rise', 'I', current, `to ${most} A (copper at 200 °C)`, HEAT_SOURCE);
    return current === 0 ? 0 : rootOfRising((rise) => currentHolding(rise, wire) - current, 0, HOTTEST - ambient);
  },
);
