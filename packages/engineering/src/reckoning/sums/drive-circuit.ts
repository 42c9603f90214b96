/** What the sums of the drive share: motors alike, behind a bridge and leads, on one pack. Currents are means over a pulse. */
import { ZERO_CELSIUS } from '@longrein/laws';

const PRACTICE = 'common practice, no source';

const warm = (windingCelsius: number, magnetsCelsius: number, is: string) => ({
  winding: { value: ZERO_CELSIUS + windingCelsius, unit: '°C', is: `winding, ${is}`, source: PRACTICE },
  magnets: { value: ZERO_CELSIUS + magnetsCelsius, unit: '°C', is: `magnets, ${is}`, source: PRACTICE },
});

/**
 * Temperatures at which the motor's figures are taken. They are fixed, so that currents do not wait for the heat they
 * cause; what the heat really comes to is a sum of its own.
 */
export const cruising = () => warm(50, 40, 'driving on the level');
export const climbing = () => warm(80, 60, 'working hard on a climb');

/** Pack, leads and bridge as one motor's circuit at a duty. */
export interface Circuit {
  /** Rest voltage of the pack. */
  readonly rest: number;
  /** Resistance all motors share: pack, its run, the run to the bridge. */
  readonly shared: number;
  /** Resistance of one motor's own path: winding, its run, its share of the bridge. */
  readonly own: number;
  readonly threshold: number;
  readonly duty: number;
  readonly motors: number;
}

/** The inputs of a circuit by the names the formulas show. */
export interface CircuitValues {
  readonly pack: number;
  readonly packRun: number;
  readonly bridgeRun: number;
  readonly motorRun: number;
  readonly threshold: number;
  readonly slope: number;
  readonly duty: number;
  readonly motors: number;
  readonly sharing: number;
}

/** Refs of a circuit, but for the pack, which is taken on a usual or on the coldest day. */
export const PATH = {
  packRun: 'wiring.pack.resistance',
  bridgeRun: 'wiring.bridge.resistance',
  motorRun: 'wiring.motor.resistance',
  threshold: 'bridge.threshold',
  slope: 'bridge.slope',
  duty: 'duty.applied',
} as const;

/** Parts of the formulas, so that each shows the same circuit in the same words. */
export const SHARED_WORDS = '{pack} + {packRun} + {bridgeRun}';
export const OWN_WORDS = '{motorRun} + {sharing} · {slope}';

export function circuitOf(x: CircuitValues, rest: number, winding: number): Circuit {
  return {
    rest,
    shared: x.pack + x.packRun + x.bridgeRun,
    own: winding + x.motorRun + x.sharing * x.slope,
    threshold: x.threshold,
    duty: x.duty,
    motors: x.motors,
  };
}

/**
 * Current of each motor with all of them stalled: D·(E − Rs·n·D·i) − Vd = R·i, solved for i. The pack sees the mean
 * n·D·i, which a capacitor at the bridge makes true for its leads as well; 0 where the bridge lets nothing through.
 */
export function stalled({ rest, shared, own, threshold, duty, motors }: Circuit): number {
  return Math.max(0, duty * rest - threshold) / (own + duty ** 2 * motors * shared);
}

/** Voltage left for the back-EMF at a motor current; negative where the circuit cannot give that current. */
export function emfLeft({ rest, shared, own, threshold, duty, motors }: Circuit, current: number): number {
  return duty * (rest - shared * motors * duty * current) - threshold - own * current;
}

/**
 * Duty at which a motor gets a voltage and a current: the smaller root of D·(E − Rs·n·D·i) = V. Above 1, or without a
 * root, what it would take with the pack loaded by the whole motor current, which is then above 1 as well:
 * (V + Rs·n·i)/E is 1 at the edge, and n·i·Rs + E²/(4·n·i·Rs) is never less than E.
 */
export function dutyFor(c: Pick<Circuit, 'rest' | 'shared' | 'motors'>, voltage: number, current: number): number {
  const sag = c.shared * c.motors * current;
  const root = c.rest ** 2 - 4 * sag * voltage;
  // This form of the root keeps its digits when the sag is small.
  const duty = root >= 0 ? (2 * voltage) / (c.rest + Math.sqrt(root)) : Number.POSITIVE_INFINITY;
  return duty <= 1 ? duty : (voltage + sag) / c.rest;
}
