/** A single wire warming itself in still air. */
import { COPPER_REFERENCE, ZERO_CELSIUS } from '../constants.ts';
import { stillAirCoefficient } from '../heat/convection.ts';
import { radiatedHeat } from '../heat/radiation.ts';
import { law, OutOfRange } from '../law.ts';
import { COPPER_COEFFICIENT } from './wire.ts';

/** Thermal conductivity of soft wire insulation [W/(m·K)]: PVC and silicone 0.15–0.25, common practice, no source. */
export const INSULATION_CONDUCTIVITY = 0.17;
/** Emissivity of insulated wire [1], common practice, no source. */
export const INSULATION_EMISSIVITY = 0.9;
/** Hottest conductor the laws of this file answer for [K]: silicone insulation, 200 °C. */
const HOTTEST = ZERO_CELSIUS + 200;

/** Heat leaving a metre of horizontal cylinder [W/m]. */
function cylinderLoss(surface: number, ambient: number, diameter: number): number {
  const around = Math.PI * diameter;
  const film = stillAirCoefficient({ surface: 'cylinder', length: diameter, temperature: surface, ambient });
  const radiation = { emissivity: INSULATION_EMISSIVITY, area: around, surface, surroundings: ambient };
  return around * film * (surface - ambient) + radiatedHeat(radiation);
}

/** Root of a rising function between two ends: false position, with the Illinois rule so that no end sticks. */
function rootOfRising(f: (x: number) => number, low: number, high: number): number {
  let [a, b, fa, fb, x] = [low, high, f(low), f(high), low];
  let moved: 'a' | 'b' | undefined;
  for (let i = 0; i < 100 && fa < 0 && fb > 0; i++) {
    const next = a - (fa * (b - a)) / (fb - fa);
    if (Math.abs(next - x) < 1e-10) return next;
    x = next;
    const fx = f(x);
    const end = fx < 0 ? 'a' : 'b';
    if (end === 'a') [a, fa, fb] = [x, fx, moved === 'a' ? fb / 2 : fb];
    else [b, fb, fa] = [x, fx, moved === 'b' ? fa / 2 : fa];
    moved = end;
  }
  return fa >= 0 ? a : b;
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
  const loss = (t: number): number => cylinderLoss(t, ambient, outerDiameter);
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
    if (ambient + rise > HOTTEST) {
      throw new OutOfRange(
        'wire-current-for-rise',
        'ΔT',
        rise,
        `to ${HOTTEST - ambient} K (copper at 200 °C)`,
        HEAT_SOURCE,
      );
    }
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
    return current === 0
      ? 0
      : rootOfRising((rise) => currentHolding(rise, wire) ** 2 - current ** 2, 0, HOTTEST - ambient);
  },
);
