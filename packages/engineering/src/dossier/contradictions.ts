/** Statements of a dossier that cannot all be true, and parts that are not on the shelf. */
import { type At, clash, endsOf, lacking, siOf } from './clash.ts';
import type { Fault } from './faults.ts';
import { fault } from './faults.ts';
import { readings } from './fits.ts';
import { pointer } from './locate.ts';
import { perhaps } from './near.ts';
import { partsAgree, partsOnShelf } from './part-contradictions.ts';
import type { Dossier } from './schema/dossier.ts';
import type { Shelf } from './shelf/shelf.ts';
import { refusalOf, SURFACE_NAMES } from './surfaces.ts';
import { axles, loads, sizes } from './toy-contradictions.ts';

/** Shares of the way on the surfaces may miss 1 by this much: they are rounded by hand. */
const SHARE_SLACK = 0.011;
/** Sides of a vehicle that steers by their difference. */
const SIDES = 2;

/** Every contradiction of a dossier. */
export function contradictions(d: Dossier, shelf: Shelf): Fault[] {
  return [
    ...axles(d),
    ...sizes(d),
    ...loads(d),
    ...steering(d),
    ...motor(d),
    ...weather(d),
    ...ground(d),
    ...surfaces(d),
    ...partsOnShelf(d, shelf),
    ...channels(d, shelf),
    ...partsAgree(d),
    ...readings(d),
  ];
}

const STEERING: At = ['donor', 'steering', 'kind'];

function steering(d: Dossier): Fault[] {
  const { steering, axles, drive } = d.donor;
  const steered = axles.some((axle) => axle.steered);
  const faults: Fault[] = [];
  if (drive.motorPer === 'side' || steering.kind === 'skid') {
    axles.forEach((axle, i) => {
      if (!axle.driven || axle.wheels === SIDES) return;
      faults.push(clash(['donor', 'axles', i, 'wheels'], `${axle.wheels}`, '2 wheels: the sides are driven apart'));
    });
  }
  if (steering.kind === 'skid') {
    if (steered) faults.push(clash(STEERING, 'skid steering with a steered axle', 'no steered axle'));
    if (drive.motorPer !== 'side' && drive.motorPer !== 'wheel') {
      const at = ['donor', 'drive', 'motorPer'];
      faults.push(clash(at, `a motor per ${drive.motorPer}, with skid steering`, 'side or wheel'));
    }
    return faults;
  }
  if (!steered) faults.push(clash(STEERING, `${steering.kind} steering without a steered axle`, 'a steered axle'));
  else if (axles.length === 1) {
    faults.push(
      clash(STEERING, `${steering.kind} steering on a single axle`, 'skid, or a second axle to steer against'),
    );
  }
  if (steering.kind === 'servo' && d.conversion.parts.servo === undefined) {
    faults.push(lacking(['conversion', 'parts', 'servo'], 'a servo, as the steering is by servo'));
  }
  return faults;
}

/** What the two channels that a vehicle needs at the least are for, by its steering. */
const TWO_CHANNELS = {
  skid: 'two channels, one for each side',
  'on-off': 'two channels, one for the drive and one for the steering motor',
  servo: undefined,
} as const;

/** Sides that are driven apart, and a steering motor beside the drive, each need a bridge channel of their own. */
function channels(d: Dossier, shelf: Shelf): Fault[] {
  const needed = TWO_CHANNELS[d.donor.steering.kind];
  const { bridge } = d.conversion.parts;
  const board = typeof bridge === 'string' ? shelf.find(bridge) : bridge;
  if (needed === undefined || board?.kind !== 'bridge') return [];
  if (board.channels * (d.conversion.bridges ?? 1) >= 2) return [];
  const todo = 'Take a bridge with two channels, or fit two boards and write "bridges": 2.';
  return [clash(['conversion', 'parts', 'bridge'], 'a bridge with one channel', needed, todo)];
}

function motor(d: Dossier): Fault[] {
  const m = d.donor.drive.motor ?? {};
  const at = (key: string) => ['donor', 'drive', 'motor', key];
  const faults: Fault[] = [];
  if (m.stallCurrent && !m.stallVoltage) {
    const todo = 'Write the voltage at the motor; stall currents are often read at half voltage.';
    faults.push(lacking(at('stallVoltage'), 'the voltage the stall current was read at', todo));
  }
  if (!m.stallCurrent && (m.stallVoltage || m.stallTorque)) {
    const todo = 'Write the current of that test, or leave its voltage and torque out.';
    faults.push(lacking(at('stallCurrent'), 'the current read at the same time', todo));
  }
  if (m.noLoadVoltage && !m.noLoadSpeed) {
    const todo = 'Write the speed of that test, or leave its voltage out.';
    faults.push(lacking(at('noLoadSpeed'), 'the speed at that voltage', todo));
  }
  const [idle, stall] = [siOf(m.noLoadCurrent), siOf(m.stallCurrent)];
  if (idle !== undefined && stall !== undefined && idle >= stall) {
    const found = `${m.noLoadCurrent?.quantity.text}, not below the stall current`;
    faults.push(clash(at('noLoadCurrent'), found, `less than ${m.stallCurrent?.quantity.text}`));
  }
  return faults;
}

function weather({ service }: Dossier): Fault[] {
  const { coldest, hottest, usual } = service.day ?? {};
  const [low, high] = [siOf(coldest), siOf(hottest)];
  const at = (key: string) => ['service', 'day', key];
  if (low !== undefined && high !== undefined && low > high) {
    const found = `${coldest?.quantity.text}, above the hottest`;
    return [clash(at('coldest'), found, `no more than ${hottest?.quantity.text}`)];
  }
  if (usual === undefined) return [];
  const [from, to] = endsOf(usual);
  const faults: Fault[] = [];
  if (low !== undefined && from < low) {
    faults.push(clash(at('usual'), usual.quantity.text, `nothing below the coldest, ${coldest?.quantity.text}`));
  }
  if (high !== undefined && to > high) {
    faults.push(clash(at('usual'), usual.quantity.text, `nothing above the hottest, ${hottest?.quantity.text}`));
  }
  return faults;
}

/** The worst ground must not be better than the usual one. */
function ground({ service }: Dossier): Fault[] {
  const { rolling, rollingWorst, adhesion, adhesionWorst } = service.ground ?? {};
  const at = (key: string) => ['service', 'ground', key];
  const faults: Fault[] = [];
  if (rolling && rollingWorst && rollingWorst.quantity.value < rolling.quantity.value) {
    const found = `${rollingWorst.quantity.text}, less than on the usual ground`;
    faults.push(clash(at('rollingWorst'), found, `at least ${rolling.quantity.text}`));
  }
  if (adhesion && adhesionWorst && adhesionWorst.quantity.value > adhesion.quantity.value) {
    const found = `${adhesionWorst.quantity.text}, more than on the usual ground`;
    faults.push(clash(at('adhesionWorst'), found, `no more than ${adhesion.quantity.text}`));
  }
  return faults;
}

function surfaces({ service }: Dossier): Fault[] {
  const faults = service.surfaces.flatMap(({ surface }, i) => {
    if (SURFACE_NAMES.includes(surface)) return [];
    const refusal = refusalOf(surface);
    const todo =
      refusal === undefined
        ? (perhaps(surface, SURFACE_NAMES) ?? 'Use the nearest, with measured values under "ground".')
        : `Refused: ${refusal}.`;
    const at = pointer(['service', 'surfaces', i, 'surface']);
    return [fault('DOSSIER_VALUE', at, `"${surface}"`, SURFACE_NAMES.join('; '), todo)];
  });
  const sum = service.surfaces.reduce((total, { share }) => total + share, 0);
  if (Math.abs(sum - 1) <= SHARE_SLACK) return faults;
  const found = `shares that add up to ${Number(sum.toPrecision(4))}`;
  return [...faults, clash(['service', 'surfaces'], found, 'shares of the way that add up to 1')];
}
