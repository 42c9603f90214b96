/** The built-in shelf by kind: the main figures of every part as they are written. */
import {
  BUILT_IN_PARTS,
  PART_KINDS,
  type PartKind,
  QUANTITIES,
  type QuantityFacts,
  type WrittenPart,
} from '@longrein/engineering';
import type { Page } from '../tree.ts';
import { capital, cell, code, GENERATED, page, slug, table } from './markdown.ts';

type Written<K extends PartKind> = Extract<WrittenPart, { readonly kind: K }>;

/** The figures a maker chooses by, most telling first; the rest is printed by `longrein shelf ID`. */
const MAIN: { readonly [K in PartKind]: readonly (keyof Written<K> & string)[] } = {
  pack: ['chemistry', 'cells', 'capacity', 'currentMax', 'cellResistance', 'mass'],
  converter: ['outputVoltage', 'outputCurrent', 'headRoom', 'inputMin', 'inputMax', 'efficiency', 'mass'],
  bridge: [
    'type',
    'channels',
    'currentContinuous',
    'currentPeak',
    'onResistance',
    'dropOneAmpere',
    'voltageMin',
    'voltageMax',
    'mass',
  ],
  computer: ['idlePower', 'busyPower', 'peakPower', 'brownOut', 'temperatureMax', 'mass'],
  camera: ['fieldOfView', 'widthPixels', 'heightPixels', 'power', 'lag', 'mass'],
  modem: ['type', 'frequency', 'bandwidth', 'transmitPower', 'power', 'burstPower', 'mass'],
  aerial: ['gain', 'cableLoss', 'mass'],
  servo: ['stallCurrent', 'runCurrent', 'torque', 'mass'],
  fuse: ['rating', 'breaking', 'meltingEnergy', 'resistance', 'mass'],
  wire: ['area', 'currentMax', 'resistancePerMetre', 'temperatureMax', 'diameter', 'massPerMetre'],
  connector: ['currentMax', 'resistance', 'mass'],
  charger: ['chemistries', 'cellsMax', 'current', 'sourcePower'],
  enclosure: ['length', 'width', 'height', 'mass'],
};

/** Heads of the columns that are choices and counts, not quantities. */
const CHOICES: Readonly<Record<string, string>> = {
  chemistry: 'chemistry',
  chemistries: 'chemistries',
  cells: 'cells in series',
  cellsMax: 'cells in series, at most',
  channels: 'channels',
  type: 'type',
};

export function shelf(): Page[] {
  const kinds = PART_KINDS.map((kind) => ({ kind, parts: BUILT_IN_PARTS.filter((part) => part.kind === kind) }));
  const text = page(
    '# The shelf',
    GENERATED,
    `The shelf holds ${BUILT_IN_PARTS.length} generic parts by their data-sheet values, without a maker's name or a catalogue number. A dossier
names a part by its id or describes its own in place; a folder of files with your own parts is given with \`--shelf\`
([how a part is written](dossier.md#parts)). A part that is much like yours is a start: replace its figures by those of the
sheet in your hand. \`longrein shelf ID\` prints all figures of a part.`,
    `Lithium packs burn when shorted, crushed, overcharged or charged below 0 °C; wire and fuse every pack before anything else,
and follow the sheet of the part you bought where it says otherwise.`,
    kinds.map(({ kind, parts }) => `- [${capital(kind)}](#${slug(kind)}): ${parts.length}`),
    ...kinds.flatMap(({ kind, parts }) => [`## ${capital(kind)}`, partTable(kind, parts)]),
  );
  return [{ path: 'docs/shelf.md', text }];
}

function partTable(kind: PartKind, parts: readonly WrittenPart[]): string[] {
  const facts: Readonly<Record<string, QuantityFacts>> = QUANTITIES;
  const keys = MAIN[kind];
  const head = keys.map((key) => cell(facts[`${kind}.${key}`]?.title ?? CHOICES[key] ?? key));
  return table(
    ['Id', 'Part', ...head, 'Remark'],
    parts.map((part) => {
      const fields = part as unknown as Readonly<Record<string, unknown>>;
      return [
        code(part.id ?? ''),
        cell(part.title),
        ...keys.map((key) => cell(written(fields[key]))),
        cell(part.remark ?? ''),
      ];
    }),
  );
}

/** A figure as it is written on the shelf; a dash where the part has none. */
function written(value: unknown): string {
  if (value === undefined) return '–';
  if (Array.isArray(value)) return value.join(', ');
  return typeof value === 'object' && value !== null && 'value' in value ? String(value.value) : String(value);
}
