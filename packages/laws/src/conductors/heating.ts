/** A single wire warming itself in still air. */
import { COPPER_REFERENCE, ZERO_CELSIUS } from '../constants.ts';
import { cylinderCoefficient, filmBetween, radiated } from '../heat/still-air.kernel.ts';
import { law, OutOfRange } from '../law.ts';
import { zeroOfRising } from '../root.ts';
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
  const film = cylinderCoefficient(filmBetween(surface, ambient), diameter);
  return around * film * (surface - ambient) + radiated(INSULATION_EMISSIVITY, around, surface, ambient);
}

interface WireInAir {
  readonly ambient: number;
  readonly resistancePerMetre: number;
  readonly conductorDiameter: number;
  readonly outerDiameter: number;
}

/** Rise of the copper above the surface for each watt that leaves a metre [K·m/W]. */
const wallResistance = ({ conductorDiameter, outerDiameter }: WireInAir): number =>
  Math.log(outerDiameter / conductorDiameter) / (2 * Math.PI * INSULATION_CONDUCTIVITY);

/** Current that holds the conductor `rise` above the air. */
function currentHolding(rise: number, wire: WireInAir): number {
  const { ambient, outerDiameter } = wire;
  const wall = wallResistance(wire);
  const atMost = wall * cylinderLoss(ambient + rise, ambient, outerDiameter);
  const surfaceRise = zeroOfRising(
    (x) => x + wall * cylinderLoss(ambient + x, ambient, outerDiameter) - rise,
    0,
    rise,
    -rise,
    atMost,
  );
  const resistance = wire.resistancePerMetre * (1 + COPPER_COEFFICIENT * (ambient + rise - COPPER_REFERENCE));
  return Math.sqrt(cylinderLoss(ambient + surfaceRise, ambient, outerDiameter) / resistance);
}

/**
 * Rise of the conductor that a current holds, from one unknown: the rise x of the surface. The heat q(x) that leaves it
 * puts the copper at x + wall · q(x), and equals what copper that warm makes: q = cold + warming · (x + wall · q).
 * Infinite where the surface alone would pass the hottest conductor.
 */
function riseHolding(current: number, wire: WireInAir): number {
  const { ambient, outerDiameter } = wire;
  const wall = wallResistance(wire);
  const square = current * current * wire.resistancePerMetre;
  const cold = square * (1 + COPPER_COEFFICIENT * (ambient - COPPER_REFERENCE));
  const warming = square * COPPER_COEFFICIENT;
  const cooling = 1 - warming * wall;
  const most = HOTTEST - ambient;
  const atMost = cooling * cylinderLoss(HOTTEST, ambient, outerDiameter) - cold - warming * most;
  if (atMost < 0) return Number.POSITIVE_INFINITY;
  const x = zeroOfRising(
    (x) => cooling * cylinderLoss(ambient + x, ambient, outerDiameter) - cold - warming * x,
    0,
    most,
    -cold,
    atMost,
  );
  return x + (wall * (cold + warming * x)) / cooling;
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
    const rise = riseHolding(current, wire);
    if (ambient + rise <= HOTTEST) return rise;
    const most = currentHolding(HOTTEST - ambient, wire);
    if (current > most) throw new OutOfRange('wire-rise', 'I', current, `to ${most} A (copper at 200 °C)`, HEAT_SOURCE);
    return HOTTEST - ambient;
  },
);
