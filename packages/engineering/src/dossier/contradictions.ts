/** Statements of a dossier that cannot all be true, and parts that are not on the shelf. */
import { type Fault, fault } from './faults.ts';
import { pointer } from './locate.ts';
import type { Dossier } from './schema/dossier.ts';
import type { PartKind } from './schema/parts.ts';
import type { Shelf } from './shelf/shelf.ts';
import { refusalOf, SURFACE_NAMES } from './surfaces.ts';

/** Shares of the way on the surfaces may miss 1 by this much: they are rounded by hand. */
const SHARE_SLACK = 0.011;
/** Axle loads may miss the mass by this share: kitchen scales and blocks are not exact. */
const LOAD_SLACK = 0.3;

/** Every contradiction of a dossier. */
export function contradictions(d: Dossier, shelf: Shelf): Fault[] {
  return [
    ...axles(d),
    ...steering(d),
    ...motor(d),
    ...masses(d),
    ...surfaces(d),
    ...partsOnShelf(d, shelf),
    ...fits(d),
  ];
}

const clash = (path: (string | number)[], found: string, accepted: string, todo?: string) =>
  fault('VEHICLE_CONTRADICTION', pointer(path), found, accepted, todo);

function axles(d: Dossier): Fault[] {
  const { axles } = d.donor;
  const at = ['donor', 'axles'];
  const faults: Fault[] = [];
  const wheels = axles.reduce((sum, axle) => sum + axle.wheels, 0);
  if (wheels < 2 || wheels > 8) faults.push(clash(at, `${wheels} wheels`, '2 to 8 wheels'));
  if (!axles.some((axle) => axle.driven)) faults.push(clash(at, 'no driven axle', 'at least one driven axle'));
  axles.forEach((axle, i) => {
    const here = axle.position?.quantity.value;
    if (i === 0) {
      if (here !== undefined && here !== 0) {
        faults.push(clash([...at, 0, 'position'], String(here), '0 mm, or nothing: positions count from this axle'));
      }
      return;
    }
    const before = i === 1 ? 0 : (axles[i - 1]?.position?.quantity.value ?? 0);
    if (here === undefined) {
      faults.push(
        fault('DOSSIER_KEY_MISSING', pointer([...at, i, 'position']), 'nothing', 'a distance behind the front axle'),
      );
    } else if (here <= before) {
      faults.push(clash([...at, i, 'position'], `${here} m`, `more than ${before} m: axles stand front to rear`));
    }
  });
  return faults;
}

function steering(d: Dossier): Fault[] {
  const { steering, axles, drive } = d.donor;
  const at = ['donor', 'steering', 'kind'];
  const steered = axles.some((axle) => axle.steered);
  if (steering.kind === 'skid') {
    const faults: Fault[] = [];
    if (steered) faults.push(clash(at, 'skid steering with a steered axle', 'no steered axle'));
    if (drive.motorPer !== 'side' && drive.motorPer !== 'wheel') {
      faults.push(
        clash(['donor', 'drive', 'motorPer'], `one motor per ${drive.motorPer}`, 'a motor per side or wheel'),
      );
    }
    return faults;
  }
  const faults: Fault[] = [];
  if (!steered) faults.push(clash(at, `${steering.kind} steering without a steered axle`, 'a steered axle'));
  if (steering.kind === 'servo' && d.conversion.parts.servo === undefined) {
    faults.push(
      fault('DOSSIER_KEY_MISSING', '/conversion/parts/servo', 'nothing', 'a servo, as the steering is by servo'),
    );
  }
  return faults;
}

function motor(d: Dossier): Fault[] {
  const m = d.donor.drive.motor ?? {};
  const at = ['donor', 'drive', 'motor'];
  const faults: Fault[] = [];
  if (m.stallCurrent && !m.stallVoltage) {
    faults.push(
      fault(
        'DOSSIER_KEY_MISSING',
        pointer([...at, 'stallVoltage']),
        'nothing',
        'the voltage the stall current was read at',
        'Write the voltage at the motor; stall currents are often read at half voltage.',
      ),
    );
  }
  if (m.stallCurrent && m.noLoadCurrent && m.noLoadCurrent.quantity.value >= m.stallCurrent.quantity.value) {
    faults.push(clash([...at, 'noLoadCurrent'], 'a no-load current not below the stall current', 'a smaller one'));
  }
  return faults;
}

function masses(d: Dossier): Fault[] {
  const { body, axles } = d.donor;
  const faults: Fault[] = [];
  if (body.removed && body.removed.quantity.value >= body.mass.quantity.value) {
    faults.push(clash(['donor', 'body', 'removed'], 'as much as the toy weighs', 'less than the mass of the toy'));
  }
  const loads = axles.map((axle) => axle.load?.quantity.value);
  if (loads.every((load) => load !== undefined)) {
    const sum = loads.reduce((a, b) => a + b, 0);
    const mass = body.mass.quantity.value;
    if (Math.abs(sum / mass - 1) > LOAD_SLACK) {
      faults.push(
        clash(
          ['donor', 'axles'],
          `axle loads that add up to ${sum.toFixed(3)} kg`,
          `about ${mass} kg, the mass of the toy`,
        ),
      );
    }
  }
  const last = axles.at(-1)?.position?.quantity.value ?? 0;
  const centre = body.centreBehind?.quantity.value;
  if (axles.length > 1 && centre !== undefined && centre > last) {
    faults.push(clash(['donor', 'body', 'centreBehind'], 'a mass centre behind the rear axle', `up to ${last} m`));
  }
  return faults;
}

function surfaces(d: Dossier): Fault[] {
  const { surfaces } = d.service;
  const unknown = surfaces.flatMap(({ surface }, i) =>
    SURFACE_NAMES.includes(surface)
      ? []
      : [
          fault(
            'DOSSIER_VALUE',
            pointer(['service', 'surfaces', i, 'surface']),
            `"${surface}"`,
            SURFACE_NAMES.join(', '),
            refusalOf(surface)
              ? `Refused: ${refusalOf(surface)}.`
              : 'Use one of these, or the nearest with measured values under "ground".',
          ),
        ],
  );
  const sum = surfaces.reduce((total, { share }) => total + share, 0);
  return Math.abs(sum - 1) > SHARE_SLACK
    ? [...unknown, clash(['service', 'surfaces'], `shares that add up to ${sum}`, 'shares that add up to 1')]
    : unknown;
}

function partsOnShelf(d: Dossier, shelf: Shelf): Fault[] {
  const { parts, wiring } = d.conversion;
  const named: [(string | number)[], unknown, PartKind][] = [
    ...Object.entries(parts).map(([kind, part]): [string[], unknown, PartKind] => [
      ['conversion', 'parts', kind],
      part,
      kind as PartKind,
    ]),
    ...Object.entries(wiring).flatMap(([run, { wire, connector }]): [string[], unknown, PartKind][] => [
      [['conversion', 'wiring', run, 'wire'], wire, 'wire'],
      [['conversion', 'wiring', run, 'connector'], connector, 'connector'],
    ]),
  ];
  return named.flatMap(([path, part, kind]) => {
    if (typeof part !== 'string') return [];
    const found = shelf.find(part);
    if (found === undefined) {
      const near = shelf.parts.filter((p) => p.kind === kind).map((p) => p.id);
      return [fault('PART_UNKNOWN', pointer(path), `"${part}"`, near.join(', '))];
    }
    return found.kind === kind ? [] : [fault('PART_KIND', pointer(path), `a ${found.kind}`, `a ${kind}`)];
  });
}

function fits(d: Dossier): Fault[] {
  return (d.fits ?? []).flatMap((fit, i) => {
    const n = fit.quantities.length;
    const m = fit.correlation;
    const square = m.length === n && m.every((row) => row.length === n);
    const honest =
      square && m.every((row, a) => row.every((r, b) => (a === b ? r === 1 : Math.abs(r - (m[b]?.[a] ?? 2)) < 1e-9)));
    return honest
      ? []
      : [
          fault(
            'FIT_INVALID',
            pointer(['fits', i, 'correlation']),
            `${m.length} rows`,
            `${n} × ${n}, symmetric, ones on the diagonal`,
          ),
        ];
  });
}
