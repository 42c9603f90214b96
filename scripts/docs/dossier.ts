/** How a dossier is written: every key of the file with what may stand there. */
import {
  CHEMISTRIES,
  inUnit,
  PART_KINDS,
  type PartKind,
  QUANTITIES,
  type QuantityFacts,
  type QuantityId,
} from '@longrein/engineering';
import { SURFACES } from '@longrein/laws';
import { PLAIN_LAYOUT } from '../../packages/engineering/src/reckoning/testing.ts';
import type { Page } from '../tree.ts';
import { BEHAVIOUR_INTRO, DOSSIER_INTRO, PARTS_INTRO, QUANTITY_INTRO, SURFACES_INTRO } from './dossier-intro.ts';
import { CHOICES, PLACES, type Place } from './dossier-places.ts';
import { capital, cell, code, GENERATED, page, slug, table } from './markdown.ts';
import { shown as shownNumber } from './numbers.ts';
import { dossierKeys, type Key, type Node } from './schemas.ts';

const ALL: Readonly<Record<string, QuantityFacts>> = QUANTITIES;
const LIMIT_DIGITS = 4;
/** Keys of every part, shown once. */
const EVERY_PART: readonly string[] = ['kind', 'id', 'title', 'remark', 'cost'];

/** @throws Error where a quantity has no place on the page or a key no explanation */
export function dossier(): Page[] {
  const shown = new Set<QuantityId>();
  const places = PLACES.flatMap((place) => placeBlocks(place, shown));
  const parts = PART_KINDS.flatMap((kind) => [`### ${capital(kind)}`, partTable(kind, shown)]);
  // Places and runs are alike for every part and run; the page shows one of each.
  const missing = Object.keys(ALL).filter((id) => !shown.has(id as QuantityId) && !/^(?:at|run)\./.test(id));
  if (missing.length > 0) throw new Error(`no place of the page shows ${missing.join(', ')}`);
  const text = page(
    '# The dossier',
    GENERATED,
    DOSSIER_INTRO,
    '## Quantities',
    QUANTITY_INTRO,
    '## Reading the tables',
    BEHAVIOUR_INTRO,
    '## Contents',
    [...PLACES.map(({ heading }) => heading), 'Parts'].map((heading) => `- [${heading}](#${slug(heading)})`),
    ...places,
    '## Parts',
    PARTS_INTRO,
    choiceTable(
      dossierKeys('/conversion/parts/pack').filter(({ name }) => EVERY_PART.includes(name)),
      '/parts/',
    ),
    ...parts,
  );
  return [{ path: 'docs/dossier.md', text }];
}

function placeBlocks(place: Place, shown: Set<QuantityId>): (string | readonly string[])[] {
  const { heading, at, look, prefix, says } = place;
  const keys = dossierKeys(look ?? at);
  const choices = keys.filter((key) => idOf(prefix, key) === undefined);
  const quantities = keys.filter((key) => idOf(prefix, key) !== undefined);
  return [
    `## ${heading}`,
    `${code(at)}. ${says}`,
    ...(choices.length > 0 ? [choiceTable(choices, at === '/' ? '/' : `${at}/`)] : []),
    ...(quantities.length > 0 ? [quantityTable(quantities, prefix, shown)] : []),
    ...(at === '/service/surfaces/*' ? [SURFACES_INTRO, surfaceTable()] : []),
  ];
}

/** The id of the quantity a key holds, if it holds one. */
function idOf(prefix: string, { name }: Key): QuantityId | undefined {
  const tail = name === 'cameraPitch' ? 'pitch' : name;
  const id = `${prefix}.${tail}`;
  return Object.hasOwn(ALL, id) ? (id as QuantityId) : undefined;
}

const keyCell = ({ name, required }: Key): string => (required ? `**${code(name)}**` : code(name));

function choiceTable(keys: readonly Key[], at: string): string[] {
  return table(
    ['Key', 'What stands there', 'Meaning'],
    keys.map((key) => {
      const part = at === '/conversion/parts/';
      const means = part ? `the ${key.name}` : CHOICES[at + key.name];
      if (means === undefined) throw new Error(`nothing explains the key ${at}${key.name}`);
      const stands = part
        ? 'an id or a part'
        : key.name === 'kind' && at === '/parts/'
          ? 'a kind below'
          : kindOf(key.node);
      return [keyCell(key), cell(stands), cell(means)];
    }),
  );
}

/** What a key that holds no quantity accepts, in words. */
function kindOf(node: Node): string {
  const rivals = node.anyOf ?? node.oneOf;
  if (node.const !== undefined) return JSON.stringify(node.const);
  if (node.enum) return node.enum.map((value) => code(String(value))).join(', ');
  if (node.format === 'date') return 'a date, `2025-01-31`';
  if (node.type === 'array') return 'a list';
  if (node.type === 'boolean') return '`true` or `false`';
  if (node.type === 'integer') return `a whole number, ${node.minimum} to ${node.maximum}`;
  if (node.type === 'number') return 'a number';
  if (node.type === 'string') return 'a text';
  if (rivals?.some((rival) => rival.type === 'string')) return 'an id or a part';
  if (rivals?.every((rival) => rival.properties?.kind !== undefined)) {
    return rivals.map((rival) => code(String(rival.properties?.kind?.const))).join(', ');
  }
  return 'an object';
}

function quantityTable(keys: readonly Key[], prefix: string, shown: Set<QuantityId>): string[] {
  return table(
    ['Key', 'Quantity', 'Unit', 'Is', 'Limits', 'How to find out', 'If absent'],
    keys.map((key) => {
      const id = idOf(prefix, key) as QuantityId;
      shown.add(id);
      const { title, unit, is, how } = ALL[id] as QuantityFacts;
      const named = /^(?:at|run)\.pack$/.test(prefix)
        ? title.replace('pack', prefix.startsWith('at') ? 'part' : '…')
        : title;
      return [
        keyCell(key),
        cell(named),
        unit,
        is,
        cell(limits(ALL[id] as QuantityFacts)),
        cell(how),
        cell(assumption(id)),
      ];
    }),
  );
}

/** What a quantity may be, in the unit of its row. */
function limits({ above, from, to, below, unit }: QuantityFacts): string {
  const ends: readonly (readonly [string, number | undefined])[] = [
    ['above', above],
    ['from', from],
    ['to', to],
    ['below', below],
  ];
  return ends
    .flatMap(([word, end]) => (end === undefined ? [] : [`${word} ${shownNumber(inUnit(end, unit), LIMIT_DIGITS)}`]))
    .join(', ');
}

/** Assumptions that follow from other quantities of the same dossier, in words. */
const FOLLOWS: Readonly<Record<string, string>> = {
  'at.pack.behind': 'midway between the axles, ± 15 % of the wheelbase',
  'at.pack.height': '60 % of the height of the toy, ± 15 % of it',
  'toy.centreBehind': 'from the axle loads; without those midway between the axles, ± 8 % of the wheelbase',
  'toy.centreHeight': '42 % of the height of the toy, ± 7 % of it (motors, gears and pack sit low)',
  'ground.rolling': 'from the surfaces: between the low and the high ends, weighted with their shares',
  'ground.rollingWorst': 'the highest of any surface',
  'ground.adhesion': 'from the surfaces: between the low and the high ends, weighted with their shares',
  'ground.adhesionWorst': 'the lowest of any surface',
  'charger.tailCurrent': 'a twentieth to a tenth of the charge current',
};

/** What assumptions are changed to where they would contradict what is stated. */
const AGREES: Readonly<Record<string, string>> = {
  'toy.removed': 'of a light toy a fifth of its mass, ± 50 %',
  'day.coldest': 'or colder, where a stated temperature is',
  'day.hottest': 'or hotter, where a stated temperature is',
  'day.usual': 'between the coldest and the hottest',
};

function assumption(id: QuantityId): string {
  const agrees = AGREES[id];
  return agrees === undefined ? usual(id) : `${usual(id)}; ${agrees}`;
}

function usual(id: QuantityId): string {
  const follows = FOLLOWS[id];
  if (follows !== undefined) return follows;
  const { otherwise } = ALL[id] as QuantityFacts;
  if (otherwise === undefined) return '–';
  if (typeof otherwise !== 'function') return `${otherwise.text}: ${otherwise.because}`;
  const rivals = TRAITS.map((traits) => otherwise(traits)).filter((found) => found !== undefined);
  const [first] = rivals;
  const reasons = new Set(rivals.map(({ because }) => because));
  const texts = new Set(rivals.map(({ text }) => text));
  // One reason with many texts is an assumption that goes with a count or a voltage of the toy: its doubt is the same.
  if (first && reasons.size === 1 && texts.size > 1)
    return `${first.because}, ${first.text.slice(first.text.indexOf('±'))}`;
  return [...new Set(rivals.map(({ text, because }) => `${text}: ${because}`))].join('; ');
}

/** Vehicles of every kind an assumption may depend on. */
const TRAITS = CHEMISTRIES.flatMap((chemistry) =>
  (['bipolar', 'mosfet'] as const).flatMap((bridge) =>
    (['ferrite', 'neodymium'] as const).map((magnet) => ({
      ...PLAIN_LAYOUT,
      chemistry,
      toyChemistry: chemistry,
      bridge,
      magnet,
    })),
  ),
);

function surfaceTable(): string[] {
  const band = ({ low, high }: { readonly low: number; readonly high: number }): string => `${low} … ${high}`;
  return table(
    ['Surface', 'Rolling resistance', 'Adhesion'],
    Object.entries(SURFACES).map(([name, { rolling, adhesion }]) => [code(name), band(rolling), band(adhesion)]),
  );
}

function partTable(kind: PartKind, shown: Set<QuantityId>): string[] {
  const run = kind === 'wire' || kind === 'connector' ? '/conversion/wiring/pack' : '/conversion/parts';
  const keys = dossierKeys(`${run}/${kind}`).filter(({ name }) => !EVERY_PART.includes(name));
  const choices = keys.filter((key) => idOf(kind, key) === undefined);
  const quantities = keys.filter((key) => idOf(kind, key) !== undefined);
  return [
    ...(choices.length > 0 ? [...choiceTable(choices, '/parts/'), ''] : []),
    ...quantityTable(quantities, kind, shown),
  ];
}
