/** What is assumed where nobody stated it: by the facts of each quantity, and in agreement with what was stated. */
import { inUnit } from '../quantity/units.ts';
import { agreeing } from './agreeing.ts';
import type { Collector } from './collector.ts';
import { PLACED } from './facts/build.ts';
import type { QuantityFacts } from './facts/facts.ts';
import { type InputId, QUANTITIES, type QuantityId } from './facts/quantities.ts';
import type { Dossier } from './schema/dossier.ts';
import type { Layout } from './vehicle.ts';

/** Metres as a text in whole millimetres. */
const mm = (metres: number) => `${inUnit(metres, 'mm').toFixed(0)} mm`;

/** Assumes every quantity that is not there, has a usual value and means something for this vehicle. */
export function assumeTheRest(collector: Collector, dossier: Dossier, layout: Layout): void {
  assumePlaces(collector, dossier, layout);
  for (const [id, assumption] of agreeing(collector.inputs, dossier)) collector.assume(id, assumption);
  for (const [id, facts] of Object.entries(QUANTITIES) as [QuantityId, QuantityFacts][]) {
    const assumption = typeof facts.otherwise === 'function' ? facts.otherwise(layout) : facts.otherwise;
    if (assumption && applies(id as InputId, layout)) collector.assume(id as QuantityId & InputId, assumption);
  }
}

function assumePlaces(collector: Collector, { donor }: Dossier, layout: Layout): void {
  const wheelbase = donor.axles.at(-1)?.position?.quantity.value ?? 0;
  const height = donor.body.height.quantity.value;
  for (const placed of PLACED) {
    if (!applies(`at.${placed}.behind`, layout)) continue;
    collector.assume(`at.${placed}.behind`, {
      text: `${mm(wheelbase / 2)} ± ${mm(Math.max(wheelbase * 0.15, 0.005))}`,
      because: 'place not stated: taken as midway between the axles',
    });
    collector.assume(`at.${placed}.height`, {
      text: `${mm(height * 0.6)} ± ${mm(height * 0.15)}`,
      because: 'place not stated: taken as a little over half the height of the toy',
    });
  }
  if (layout.axles.length > 1 && !donor.axles.every((axle) => axle.load)) {
    collector.assume('toy.centreBehind', {
      text: `${mm(wheelbase * 0.5)} ± ${mm(wheelbase * 0.08)}`,
      because: 'neither axle loads nor the mass centre stated: taken as midway between the axles',
    });
  }
  collector.assume('toy.centreHeight', {
    text: `${mm(height * 0.42)} ± ${mm(height * 0.07)}`,
    because: 'not measured: motors, gears and pack sit low in toys of this kind',
  });
}

/** Does an input mean anything for a vehicle with this equipment? */
export function applies(id: InputId, layout: Layout): boolean {
  const axle = /^axle\.(\d)\.(\w+)$/.exec(id);
  if (axle) {
    const [number, what = ''] = [Number(axle[1]), axle[2]];
    const sprung = layout.axles[number - 1]?.sprung === true;
    return (
      number <= layout.axles.length && (sprung || !what.startsWith('spring')) && !(number === 1 && what === 'position')
    );
  }
  if (/^(?:steer\.(?:resistance|windingMass|toAir)|set\.hold)/.test(id)) return layout.steering === 'on-off';
  if (id === 'steer.angle') return layout.steering !== 'skid';
  if (/^(?:servo|at\.servo)\./.test(id)) return layout.steering === 'servo';
  if (/^(?:enclosure|at\.enclosure)\./.test(id)) return layout.enclosure;
  if (id.startsWith('bridge.drop')) return layout.bridge === 'bipolar';
  if (id === 'bridge.onResistance') return layout.bridge === 'mosfet';
  if (id.startsWith('pack.trip')) return layout.protected;
  return !/^(?:wire|connector)\./.test(id);
}
