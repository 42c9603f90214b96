/** Sizes, axles and loads of a toy that cannot all be as stated. */
import { type At, clash, lacking, notAbove, siOf } from './clash.ts';
import type { Fault } from './faults.ts';
import type { Dossier } from './schema/dossier.ts';

/** Wheels may stand out beyond roof and body by this factor: the sizes of the body are read in many ways. */
const STAND_OUT = 1.2;
/** Axle loads may miss the mass by this share: kitchen scales and blocks are not exact. */
const LOAD_SLACK = 0.3;
/** The mass centre from the axle loads may miss the balanced one by this share of the wheelbase. */
const CENTRE_SLACK = 0.25;
/** Nearest two axles may stand, in wheel diameters: staggered wheels overlap, but not with the next hub. */
const AXLES_APART = 0.5;
const WHEELS = { least: 2, most: 8 } as const;

const AXLES: At = ['donor', 'axles'];

/** Wheels, drive and places of the axles. */
export function axles({ donor }: Dossier): Fault[] {
  const faults: Fault[] = [];
  const wheels = donor.axles.reduce((sum, axle) => sum + axle.wheels, 0);
  if (wheels < WHEELS.least || wheels > WHEELS.most) {
    faults.push(
      clash(AXLES, wheels === 1 ? 'one wheel' : `${wheels} wheels`, `${WHEELS.least} to ${WHEELS.most} wheels`),
    );
  }
  if (!donor.axles.some((axle) => axle.driven)) {
    faults.push(clash(AXLES, 'no driven axle', 'at least one axle with "driven": true'));
  }
  donor.axles.forEach((axle, i) => {
    faults.push(...(i === 0 ? firstPlace(axle.position?.quantity) : place(donor, i)));
    if (axle.springTravel && !axle.springRate) {
      faults.push(lacking([...AXLES, i, 'springRate'], 'the spring rate, as the axle has spring travel'));
    }
  });
  return faults;
}

function firstPlace(position: { readonly value: number; readonly text: string } | undefined): Fault[] {
  if (position === undefined || position.value === 0) return [];
  return [clash([...AXLES, 0, 'position'], position.text, '0 mm, or nothing: places are counted from this axle')];
}

function place(donor: Dossier['donor'], i: number): Fault[] {
  const at = [...AXLES, i, 'position'];
  const stated = donor.axles[i]?.position;
  if (stated === undefined) return [lacking(at, 'the distance behind the front axle, such as "180 mm ± 2 mm"')];
  const before = donor.axles[i - 1]?.position?.quantity;
  const apart = stated.quantity.value - (i === 1 ? 0 : (before?.value ?? 0));
  if (apart <= 0) {
    const ahead = i === 1 ? '0 mm' : before?.text;
    return [
      clash(at, stated.quantity.text, `more than ${ahead}, the place of the axle before: axles stand front to rear`),
    ];
  }
  const wheel = donor.body.wheelDiameter.quantity;
  if (apart >= wheel.value * AXLES_APART) return [];
  const accepted = `at least half a wheel diameter (${wheel.text}) behind the axle before`;
  return [clash(at, stated.quantity.text, accepted)];
}

/** What sticks out of a toy further than the toy is large. */
export function sizes({ donor }: Dossier): Fault[] {
  const { body } = donor;
  const at = (key: string): At => ['donor', 'body', key];
  const height = { stated: body.height, is: 'the height of the toy' };
  const width = { stated: body.width, is: 'the width of the toy' };
  const length = { stated: body.length, is: 'the length of the toy' };
  const last = donor.axles.length - 1;
  return [
    ...notAbove(at('wheelDiameter'), body.wheelDiameter, { ...height, times: STAND_OUT }),
    ...notAbove(at('wheelWidth'), body.wheelWidth, width),
    ...notAbove(at('centreHeight'), body.centreHeight, height),
    ...notAbove(at('clearance'), body.clearance, height),
    ...notAbove(at('frontHeight'), body.frontHeight, height),
    ...notAbove(at('rearHeight'), body.rearHeight, height),
    ...notAbove(at('frontOverhang'), body.frontOverhang, length),
    ...notAbove(at('rearOverhang'), body.rearOverhang, length),
    ...notAbove([...AXLES, last, 'position'], donor.axles[last]?.position, length),
    ...donor.axles.flatMap((axle, i) => notAbove([...AXLES, i, 'track'], axle.track, { ...width, times: STAND_OUT })),
    ...wholeLength(donor),
  ];
}

/** Overhangs and wheelbase together make the length. */
function wholeLength({ body, axles }: Dossier['donor']): Fault[] {
  const [front, rear] = [siOf(body.frontOverhang), siOf(body.rearOverhang)];
  const base = siOf(axles.at(-1)?.position) ?? 0;
  if (front === undefined || rear === undefined) return [];
  if (front + base + rear <= body.length.quantity.value * STAND_OUT) return [];
  const found = `${Math.round((front + base + rear) * 1000)} mm from the foremost to the rearmost part`;
  return [clash(['donor', 'body', 'length'], found, `about ${body.length.quantity.text}, the length of the toy`)];
}

/** Masses and where they rest. */
export function loads({ donor }: Dossier): Fault[] {
  const { body, axles } = donor;
  const faults: Fault[] = [];
  const mass = body.mass.quantity;
  if (body.removed && body.removed.quantity.value >= mass.value) {
    const found = `${body.removed.quantity.text}, as much as the toy weighs`;
    faults.push(clash(['donor', 'body', 'removed'], found, `less than ${mass.text}, the mass of the toy`));
  }
  const last = axles.at(-1)?.position?.quantity;
  const base = last?.value ?? 0;
  const centre = body.centreBehind?.quantity;
  const at = ['donor', 'body', 'centreBehind'];
  if (axles.length > 1 && centre && last && centre.value > base) {
    faults.push(clash(at, `${centre.text}, behind the rear axle`, `up to ${last.text}`));
  }
  const weights = axles.map((axle) => axle.load?.quantity.value ?? Number.NaN);
  const sum = weights.reduce((a, b) => a + b, 0);
  if (Number.isNaN(sum)) return faults;
  if (Math.abs(sum / mass.value - 1) > LOAD_SLACK) {
    const found = `axle loads that add up to ${Number(sum.toPrecision(4))} kg`;
    faults.push(clash(AXLES, found, `about ${mass.text}, the mass of the toy`));
    return faults;
  }
  const fromLoads = axles.reduce((m, axle, i) => m + (weights[i] ?? 0) * (siOf(axle.position) ?? 0), 0) / sum;
  if (centre && axles.length > 1 && Math.abs(centre.value - fromLoads) > CENTRE_SLACK * base) {
    const accepted = `about ${Math.round(fromLoads * 1000)} mm, where the axle loads put it`;
    faults.push(clash(at, centre.text, accepted));
  }
  return faults;
}
