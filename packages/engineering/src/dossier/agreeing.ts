/**
 * Assumptions that depend on what was stated: a hottest day that is not cooler than the stated usual one, a worst ground
 * that is not better than the stated usual one, less taken out of a light toy.
 */
import type { Quantity } from '../quantity/shapes.ts';
import { assumed } from './assumed.ts';
import { endsOf } from './clash.ts';
import type { Assumption } from './facts/facts.ts';
import { factsOf, type InputId, type QuantityId } from './facts/quantities.ts';
import type { Dossier } from './schema/dossier.ts';
import { groundOf } from './surfaces.ts';
import type { Input } from './vehicle.ts';

type Inputs = ReadonlyMap<InputId, Input>;
type Assumed = [QuantityId & InputId, Assumption];

/** Assumptions for whichever of these quantities is not among the inputs. */
export function agreeing(inputs: Inputs, dossier: Dossier): Assumed[] {
  return [...ground(inputs, dossier), ...day(inputs), ...removed(dossier), ...tail(inputs)];
}

/** An end of what is stated, as a number in SI and as a text that reads as exactly that number. */
interface End {
  readonly value: number;
  readonly text: string;
}

function ends(quantity: Quantity): readonly [End, End] {
  const [low, high] = endsOf({ quantity });
  const { written } = quantity;
  const amount = (number: number, unit: string) => (unit === '1' ? `${number}` : `${number} ${unit}`);
  if (written.form !== 'range') {
    const end = { value: quantity.value, text: amount(written.number, written.unit) };
    return [end, end];
  }
  return [
    { value: low, text: amount(written.from, written.fromUnit) },
    { value: high, text: amount(written.to, written.unit) },
  ];
}

const least = (...all: readonly (End | undefined)[]) =>
  all.filter((end) => end !== undefined).reduce((a, b) => (b.value < a.value ? b : a));
const most = (...all: readonly (End | undefined)[]) =>
  all.filter((end) => end !== undefined).reduce((a, b) => (b.value > a.value ? b : a));

/** What the facts assume, as ends. */
function usually(id: QuantityId): readonly [End, End] {
  const { otherwise } = factsOf(id);
  if (otherwise === undefined || typeof otherwise === 'function') throw new Error(`${id} has no plain assumption`);
  return ends(assumed(otherwise.text, factsOf(id)));
}

function day(inputs: Inputs): Assumed[] {
  const stated = (id: InputId) => {
    const input = inputs.get(id);
    return input ? ends(input.quantity) : undefined;
  };
  const [usual, cold, hot] = [stated('day.usual'), stated('day.coldest'), stated('day.hottest')];
  const [low] = cold ?? [least(usually('day.coldest')[0], usual?.[0], hot?.[0])];
  const [, high] = hot ?? [undefined, most(usually('day.hottest')[1], usual?.[1], cold?.[1])];
  const between = usually('day.usual');
  const [from, to] = [most(between[0], low), least(between[1], high)];
  const range = from.value <= to.value ? ([from, to] as const) : ([low, high] as const);
  const because = 'not stated: taken so that it agrees with the temperatures that are';
  return [
    ['day.coldest', changed('day.coldest', [low, low], because)],
    ['day.hottest', changed('day.hottest', [high, high], because)],
    ['day.usual', changed('day.usual', range, because)],
  ];
}

const rangeText = (from: End, to: End) => (from.value === to.value ? to.text : `${from.text} … ${to.text}`);

/** The assumption of the facts where nothing had to be changed, so that it keeps its reason. */
function changed(id: QuantityId, [from, to]: readonly [End, End], because: string): Assumption {
  const { otherwise } = factsOf(id);
  const [low, high] = usually(id);
  if (typeof otherwise === 'object' && low.value === from.value && high.value === to.value) return otherwise;
  return { text: rangeText(from, to), because };
}

/** By the table of surfaces; where measured values stand for one end, the other is not assumed beyond it. */
function ground(inputs: Inputs, { service }: Dossier): Assumed[] {
  const stated = (id: InputId) => {
    const input = inputs.get(id);
    return input ? ends(input.quantity) : undefined;
  };
  const because = 'as far as the table of surfaces goes without contradicting what is measured';
  return groundOf(service.surfaces).map(([id, table]): Assumed => {
    const [low, high] = ends(assumed(table.text, factsOf(id)));
    const text = {
      'ground.rolling': () => {
        const worst = stated('ground.rollingWorst')?.[1];
        return rangeText(least(low, worst), least(high, worst));
      },
      'ground.rollingWorst': () => most(high, stated('ground.rolling')?.[1]).text,
      'ground.adhesion': () => {
        const worst = stated('ground.adhesionWorst')?.[0];
        return rangeText(most(low, worst), most(high, worst));
      },
      'ground.adhesionWorst': () => least(low, stated('ground.adhesion')?.[0]).text,
    }[id]();
    const same = text === rangeText(low, high);
    return [id, same ? table : { text, because }];
  });
}

/** Of a light toy the usual 100 g would be most of it. */
function removed({ donor }: Dossier): Assumed[] {
  const mass = donor.body.mass.quantity.value;
  const [, usual] = usually('toy.removed');
  if (usual.value <= mass * 0.3) return [];
  const text = `${(mass * 0.2).toPrecision(2)} kg ± 50 %`;
  return [['toy.removed', { text, because: 'a fifth of a light toy: the original pack and its electronics come out' }]];
}

/** Least current a charger stops at; the facts admit no less [A]. */
const TAIL_LEAST = 0.0011;

function tail(inputs: Inputs): Assumed[] {
  const current = inputs.get('charger.current')?.quantity.value;
  if (current === undefined) return [];
  const [from, to] = [current / 20, current / 10].map((x) => Math.max(x, TAIL_LEAST).toPrecision(3));
  const because = 'a tenth to a twentieth of the charge current is usual (common practice, no source)';
  return [['charger.tailCurrent', { text: `${from} … ${to} A`, because }]];
}
