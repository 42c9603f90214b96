/** Sums of the shared supply while the drive stalls or is reversed: what is left for converter and bridge. */
import { collapsePowerWithStall, copperResistance, packVoltageWithStall } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type Route, route, type Sum, type SumsOf, sumByRoutes } from '../sum.ts';
import { motorsOf, sharingOf } from './counts.ts';

type StallSupplyId = 'supply.inputStall' | 'supply.inputReversal' | 'supply.collapsePower';

/** What hangs on the shared bus beside the converter, as a conductance and a current that does not depend on the voltage. */
interface Load {
  /** [S] */
  readonly conductance: number;
  /** Current by which the load falls short of conductance · voltage [A]: thresholds lower it, a reversed back-EMF raises it. */
  readonly short: number;
}

interface Bus {
  readonly rest: number;
  /** Resistance of pack and its run. */
  readonly source: number;
  /** Power the converter takes at any voltage. */
  readonly power: number;
}

/** A bus must have some load for the laws: this much changes no voltage [S]. */
const HARDLY_ANY = 1e-9;

/**
 * In the on-part of a pulse the bus sees the whole motor current, without help from bus capacitors: the careful
 * reading. The mean voltage of a pulse drives each motor, R·i = D·V − Vd + E, so n of them draw n·(D·V − Vd + E)/R.
 * On the coldest day: a cold winding draws more.
 */
function driveLoad(x: SharedValues, reversed: number): Load {
  const fixed = x.threshold - reversed;
  // A bridge that eats the whole pulse lets nothing through; it does not feed the bus.
  if (x.duty * x.rest <= fixed) return { conductance: 0, short: 0 };
  // The bridge run carries all motors, a channel those it drives; both look larger from the single motor.
  const path = x.motorRun + x.motors * x.bridgeRun + x.sharing * x.slope;
  const all = x.motors / (copperResistance({ r20: x.winding, temperature: x.coldest }) + path);
  return { conductance: x.duty * all, short: fixed * all };
}

/** An on/off steering motor at its stop, full drive: strangers steer into the obstacle that stalls them. */
function steeringLoad(x: SharedValues & Steering): Load {
  const conductance = 1 / (copperResistance({ r20: x.steering, temperature: x.coldest }) + x.slope);
  return { conductance, short: x.threshold * conductance };
}

/** The pack as the converter sees it through the loads, by Kirchhoff's current law at the bus. */
function seen({ rest, source }: Bus, loads: readonly Load[]) {
  const total = (of: keyof Load) => loads.reduce((all, load) => all + load[of], 0);
  return {
    emf: rest + source * total('short'),
    resistance: source,
    motor: 1 / Math.max(HARDLY_ANY, total('conductance')),
  };
}

/** Voltage of the bus; 0 where it collapses. */
function busVoltage(bus: Bus, loads: readonly Load[]): number {
  const as = seen(bus, loads);
  if (as.emf <= 0) return 0;
  return bus.power >= collapsePowerWithStall(as) ? 0 : packVoltageWithStall({ ...as, power: bus.power });
}

function mostPower(bus: Bus, loads: readonly Load[]): number {
  const as = seen(bus, loads);
  return as.emf > 0 ? collapsePowerWithStall(as) : 0;
}

const SHARED = {
  rest: 'pack.restReserve',
  pack: 'pack.resistanceCold',
  lead: 'wiring.pack.resistance',
  power: 'supply.inputPeakPower',
  winding: 'drive.resistance',
  coldest: 'day.coldest',
  bridgeRun: 'wiring.bridge.resistance',
  motorRun: 'wiring.motor.resistance',
  threshold: 'bridge.threshold',
  slope: 'bridge.slope',
  duty: 'duty.applied',
} as const;
const STEERING = { steering: 'steer.resistance' } as const;
const MOVING = {
  speed: 'drive.topSpeed',
  constant: 'drive.constant',
  ratio: 'drive.ratio',
  wheel: 'toy.wheelDiameter',
} as const;

type SharedValues = Readonly<Record<keyof typeof SHARED | 'motors' | 'sharing', number>>;
type Steering = Readonly<Record<keyof typeof STEERING, number>>;
type Moving = Readonly<Record<keyof typeof MOVING, number>>;

const counts = (layout: Layout) => ({ motors: motorsOf(layout), sharing: sharingOf(layout) });
const busOf = ({ rest, pack, lead, power }: SharedValues): Bus => ({ rest, source: pack + lead, power });
const backEmf = ({ speed, constant, ratio, wheel }: Moving) => (constant * speed * 2 * ratio) / wheel;

const LAWS = [packVoltageWithStall, collapsePowerWithStall, copperResistance];

/** The loads in words: G what they draw per volt, J by how much less. */
const DRIVE =
  'R = {pack} + {lead}, r = {winding} at {coldest} + {motorRun} + {motors} · {bridgeRun} + {sharing} · {slope}';
const STEER = 's = {steering} at {coldest} + {slope}';
const WORDS = {
  plain: `G = {motors} · {duty} / r, J = {motors} · {threshold} / r, ${DRIVE}`,
  steered: `G = {motors} · {duty} / r + 1 / s, J = {motors} · {threshold} / r + {threshold} / s, ${DRIVE}, ${STEER}`,
};
const REVERSED = 'U = {constant} · {speed} · 2 · {ratio} / {wheel}';
const REVERSED_WORDS = {
  plain: `G = {motors} · {duty} / r, J = {motors} · ({threshold} − U) / r, ${REVERSED}, ${DRIVE}`,
  steered: `G = {motors} · {duty} / r + 1 / s, J = {motors} · ({threshold} − U) / r + {threshold} / s, ${REVERSED}, ${DRIVE}, ${STEER}`,
};

const onOff = ({ steering }: Layout): boolean => steering === 'on-off';
const HELD = 'drive and on/off steering at its stop';
const ALONE = 'drive';

const VOLTAGE = 'V in ({rest} − V) / R = G · V − J + {power} / V';
const MOST = 'E² / (4 · R · (1 + R · G)), E = {rest} + R · J';

/** Two routes for a vehicle: with a steering motor on the pack, and without. */
const stalled = (
  about: Omit<Sum, 'routes'>,
  words: string,
  answer: (bus: Bus, loads: readonly Load[]) => number,
): Sum =>
  sumByRoutes(
    about,
    route({
      name: HELD,
      when: onOff,
      uses: { ...SHARED, ...STEERING },
      takes: counts,
      formula: `${words}, ${WORDS.steered}`,
      laws: LAWS,
      value: (x) => answer(busOf(x), [driveLoad(x, 0), steeringLoad(x)]),
    }),
    route({
      name: ALONE,
      when: (layout) => !onOff(layout),
      uses: SHARED,
      takes: counts,
      formula: `${words}, ${WORDS.plain}`,
      laws: LAWS,
      value: (x) => answer(busOf(x), [driveLoad(x, 0)]),
    }),
  );

const reversals: readonly Route[] = [
  route({
    name: HELD,
    when: onOff,
    uses: { ...SHARED, ...MOVING, ...STEERING },
    takes: counts,
    formula: `${VOLTAGE}, ${REVERSED_WORDS.steered}`,
    laws: LAWS,
    value: (x) => busVoltage(busOf(x), [driveLoad(x, backEmf(x)), steeringLoad(x)]),
  }),
  route({
    name: ALONE,
    when: (layout) => !onOff(layout),
    uses: { ...SHARED, ...MOVING },
    takes: counts,
    formula: `${VOLTAGE}, ${REVERSED_WORDS.plain}`,
    laws: LAWS,
    value: (x) => busVoltage(busOf(x), [driveLoad(x, backEmf(x))]),
  }),
];

export const stallSupplySums: SumsOf<StallSupplyId> = {
  'supply.inputStall': stalled(
    {
      title: 'voltage at the branching point while the drive stalls',
      unit: 'V',
      caveat:
        'All drive motors stalled, an on/off steering motor at its stop, cold pack at the reserve, the board at its peak; the higher of the two voltages that fit. 0 V means that none does: the supply collapses.',
    },
    VOLTAGE,
    busVoltage,
  ),
  'supply.inputReversal': sumByRoutes(
    {
      title: 'voltage at the branching point when reversed at full speed',
      unit: 'V',
      caveat:
        'The back-EMF U then adds to the supply: near twice the stall current. The guard brakes before it reverses; this is what happens without it.',
    },
    ...reversals,
  ),
  'supply.collapsePower': stalled(
    {
      title: 'power at which the bus collapses while the drive stalls',
      unit: 'W',
      caveat: 'Compared with what the converter takes at its peak.',
    },
    `${MOST}, against {power}`,
    mostPower,
  ),
};
