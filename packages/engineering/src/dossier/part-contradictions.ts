/** Parts that are not on the shelf, and parts whose own figures cannot all be true. */
import { type At, clash, notAbove } from './clash.ts';
import { RUNS } from './facts/build.ts';
import { type Fault, fault } from './faults.ts';
import type { Stated } from './field.ts';
import { pointer } from './locate.ts';
import { perhaps } from './near.ts';
import type { Dossier } from './schema/dossier.ts';
import { aKind, PART_KINDS, type Part, type PartKind } from './schema/parts.ts';
import type { Shelf } from './shelf/shelf.ts';

/** Figures of a part of which the first is never more than the second. */
const ORDER: { readonly [K in PartKind]?: readonly (readonly [string, string, string])[] } = {
  converter: [['inputMin', 'inputMax', 'the highest input voltage']],
  bridge: [
    ['voltageMin', 'voltageMax', 'the highest supply voltage'],
    ['currentContinuous', 'currentPeak', 'the peak current'],
    ['dropOneAmpere', 'dropTwoAmpere', 'the drop at 2 A'],
  ],
  computer: [
    ['idlePower', 'busyPower', 'the power while streaming'],
    ['busyPower', 'peakPower', 'the peak power'],
  ],
  modem: [['power', 'burstPower', 'the power in a burst']],
  servo: [
    ['idleCurrent', 'runCurrent', 'the current while it moves'],
    ['runCurrent', 'stallCurrent', 'the stall current'],
  ],
  charger: [['tailCurrent', 'current', 'the charge current']],
};

interface Placed {
  readonly at: At;
  readonly part: string | Part | undefined;
  readonly kind: PartKind;
}

/** Every place of a dossier where a part stands. */
function placesOf({ conversion }: Dossier): Placed[] {
  const { parts, wiring } = conversion;
  return [
    ...PART_KINDS.filter((kind) => kind in parts).map((kind) => ({
      at: ['conversion', 'parts', kind],
      part: parts[kind as keyof typeof parts] as string | Part | undefined,
      kind,
    })),
    ...RUNS.flatMap((run) =>
      (['wire', 'connector'] as const).map((kind) => ({
        at: ['conversion', 'wiring', run, kind],
        part: wiring[run][kind] as string | Part,
        kind,
      })),
    ),
  ];
}

/** Ids that name no part of the shelf, or one of another kind. */
export function partsOnShelf(d: Dossier, shelf: Shelf): Fault[] {
  return placesOf(d).flatMap(({ at, part, kind }) => {
    if (typeof part !== 'string') return [];
    const found = shelf.find(part);
    if (found?.kind === kind) return [];
    const ids = shelf.parts.filter((other) => other.kind === kind).map((other) => other.id);
    const accepted = ids.length === 0 ? `${aKind(kind)} described in place: { … }` : ids.join(', ');
    return found === undefined
      ? [fault('PART_UNKNOWN', pointer(at), `"${part}"`, accepted, perhaps(part, ids))]
      : [fault('PART_KIND', pointer(at), `"${part}", which is ${aKind(found.kind)}`, accepted)];
  });
}

/** Contradictions within the parts that are described in place. */
export function partsAgree(d: Dossier): Fault[] {
  return placesOf(d).flatMap(({ at, part }) =>
    part === undefined || typeof part === 'string' ? [] : partAgrees(part, at),
  );
}

/** Contradictions within one part. */
export function partAgrees(part: Part, at: At): Fault[] {
  const figures = part as unknown as Readonly<Record<string, Stated | undefined>>;
  const faults = (ORDER[part.kind] ?? []).flatMap(([less, more, is]) =>
    notAbove([...at, less], figures[less], { stated: figures[more], is }),
  );
  if (part.kind !== 'wire') return faults;
  const { area, diameter } = part;
  if (area.quantity.value <= (Math.PI / 4) * diameter.quantity.value ** 2) return faults;
  const accepted = `no more copper than fits into ${diameter.quantity.text}, the diameter over the insulation`;
  return [...faults, clash([...at, 'area'], area.quantity.text, accepted)];
}
