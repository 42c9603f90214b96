/** Ways to damage a sound dossier, as arbitraries, so that a failing one shrinks to the least damage that fails. */
import fc from 'fast-check';
import { SEEDS } from './seeds.ts';

type Path = readonly (string | number)[];
interface Holder {
  [key: string]: unknown;
}

/** Something done to the value or to its text. */
type Damage =
  | { readonly on: 'value'; readonly apply: (root: unknown) => unknown }
  | { readonly on: 'text'; readonly apply: (text: string) => string };

/** Texts where a quantity stands: each is wrong in another way, absurd, or odd and right. */
export const QUANTITY_TEXTS = [
  '',
  ' ',
  'kg',
  '1.62',
  '3,2 A',
  '1,000 m',
  '3.2 A ± -1 %',
  '3.2 A ± 1 V',
  '9 … 3 V',
  '3 V … ',
  '± 3 V',
  '1 ± 2 ± 3 m',
  '0x1F V',
  'NaN V',
  '1e999 kg',
  '1e308 kg',
  '-1e308 m',
  '1e-320 V',
  '5 furlong',
  '12 Vlt',
  '0 kg',
  '0 Ω',
  '-24',
  '1e9 kg',
  '0',
  '1',
  '50 %',
  '100 %',
  '0.5',
  '7.4 V',
  '7.4 V ± 1e300 V',
  '2 A',
  '300 mA',
  '20 °C',
  '300 K',
  '20 °C ± 5 %',
  '5 dBm',
  '3 dB',
  '2 px',
  '10 px',
  '1 m',
  '0.001 mm',
  '1 m/s',
  '40 ms',
  '1e5 h',
  '12 … 24 °C',
  '10 ± 5',
  '7 V ± 400 %',
  '\u00A012\u2009000 rpm',
  '1 V\u0000',
  `${'9'.repeat(250)} V`,
  '1 V 2',
  '1-2 V',
  '1..2 V',
  '1 kg·m/s²/s',
  '٣ V',
  '1 Ω ± 0 Ω',
  '20 ± 1e-300 mm',
] as const;

/** Values of every kind for any place. */
const VALUES: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom<unknown>(...QUANTITY_TEXTS) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<unknown>(
      null,
      true,
      false,
      0,
      1,
      2,
      3,
      24,
      -1,
      0.3,
      1.5,
      1e300,
      5e-324,
      [],
      {},
      [[]],
      '',
    ),
  },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) },
  { weight: 1, arbitrary: fc.string({ maxLength: 30 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<unknown>(
      { value: '3 V' },
      { value: 3 },
      { basis: 'label' },
      { kind: 'servo' },
      { kind: 'bridge' },
    ),
  },
);

const KEYS = fc.constantFrom(
  '__proto__',
  'constructor',
  'toString',
  '',
  'mass',
  'value',
  'kind',
  'id',
  'remark',
  'quantity',
  'basis',
  '/~',
  '0',
  'k\u202E',
);

/** Paths to everything in a value. */
function paths(value: unknown, here: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [here];
  const inner = Array.isArray(value) ? value.map((item, i) => [i, item] as const) : Object.entries(value);
  return [here, ...inner.flatMap(([key, item]) => paths(item, [...here, key]))];
}

const at = (root: unknown, path: Path) =>
  path.reduce<unknown>((inner, key) => (inner as Holder | undefined)?.[key], root);

/** Sets a place to a value, also where the key is one of those the language keeps for itself. */
function put(root: unknown, path: Path, value: unknown): unknown {
  const key = path.at(-1);
  if (key === undefined) return value;
  const holder = at(root, path.slice(0, -1));
  // An earlier damage may have left nothing there that holds anything.
  if (typeof holder !== 'object' || holder === null) return root;
  Object.defineProperty(holder, key, { value, configurable: true, enumerable: true, writable: true });
  return root;
}

function drop(root: unknown, path: Path): unknown {
  const holder = at(root, path.slice(0, -1));
  const key = path.at(-1);
  if (key === undefined) return undefined;
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete (holder as Holder)[key];
  return root;
}

/** A place in a value, by a number that stays meaningful while it shrinks. */
const place = fc.nat();
const chosen = <T>(all: readonly T[], number: number): T => all[number % all.length] as T;
const onValue = (apply: (root: unknown) => unknown): Damage => ({ on: 'value', apply });
const onText = (apply: (text: string) => string): Damage => ({ on: 'text', apply });

/** Texts of a value that begin with a number, as quantities do. */
const quantities = (root: unknown) =>
  paths(root).filter((path) => {
    const value = at(root, path);
    return typeof value === 'string' && /^[-+]?\d/.test(value);
  });

const inQuantity = (number: number, change: (text: string) => string) =>
  onValue((root) => {
    const all = quantities(root);
    if (all.length === 0) return root;
    const path = chosen(all, number);
    return put(root, path, change(at(root, path) as string));
  });

const VALUE_DAMAGE: readonly fc.Arbitrary<Damage>[] = [
  place.map((p) => onValue((root) => drop(root, chosen(paths(root), p)))),
  fc
    .tuple(place, VALUES)
    .map(([p, value]) => onValue((root) => put(root, chosen(paths(root), p), structuredClone(value)))),
  fc.tuple(place, KEYS, VALUES).map(([p, key, value]) =>
    onValue((root) => {
      const objects = paths(root).filter((path) => isObject(at(root, path)));
      return objects.length === 0 ? root : put(root, [...chosen(objects, p), key], structuredClone(value));
    }),
  ),
  fc.tuple(place, place).map(([p, q]) =>
    onValue((root) => {
      const [a, b] = [chosen(paths(root), p), chosen(paths(root), q)];
      if (a.every((key, i) => b[i] === key) || b.every((key, i) => a[i] === key)) return root;
      const [first, second] = [at(root, a), at(root, b)];
      put(root, a, second);
      return put(root, b, first);
    }),
  ),
  fc
    .tuple(place, place)
    .map(([p, q]) =>
      onValue((root) => put(root, chosen(paths(root), p), structuredClone(at(root, chosen(paths(root), q))))),
    ),
  place.map((p) =>
    onValue((root) => {
      const lists = paths(root).filter((path) => Array.isArray(at(root, path)));
      const list = lists.length === 0 ? [] : (at(root, chosen(lists, p)) as unknown[]);
      if (list.length > 0) list.push(structuredClone(list[0]));
      return root;
    }),
  ),
  fc
    .tuple(place, fc.constantFrom('mm', 'kg', 'V', 'mΩ', 'A', '%', '°C', 'h', 'furlong', 'm/s', 'dBm', ''))
    .map(([p, unit]) => inQuantity(p, (text) => text.replace(/[^\d\s.…±+-][^±…]*$/, unit))),
  fc
    .tuple(place, fc.constantFrom(0, -1, 0.5, 0.9, 1.1, 2, 10, 1e3, 1e9, 1e-3, 1e300))
    .map(([p, by]) => inQuantity(p, (text) => text.replace(/^[-+]?[\d.]+/, (digits) => String(Number(digits) * by)))),
  place.map((p) => inQuantity(p, (text) => text.replace('.', ','))),
  fc.tuple(place, fc.constantFrom(...QUANTITY_TEXTS)).map(([p, text]) => inQuantity(p, () => text)),
];

/** Damage that is never mended by more of it: once in a while is enough. */
const RARE_DAMAGE: readonly fc.Arbitrary<Damage>[] = [
  fc.nat(60).map((levels) => onValue((root) => put(root, ['remark'], nested(levels)))),
  fc.nat(300).map((count) => onValue((root) => Object.assign(isObject(root) ? root : {}, unknownKeys(count)))),
  fc
    .integer({ min: -1, max: 3 })
    .map((format) => onValue((root) => put(isObject(root) ? root : {}, ['format'], format))),
];

const isObject = (value: unknown): value is Holder =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const nested = (levels: number): unknown => (levels === 0 ? 'deep' : [nested(levels - 1)]);
const unknownKeys = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`unknown${i}`, i]));

const splice = (text: string, from: number, cut: number, put: string) => {
  const start = from % (text.length + 1);
  return text.slice(0, start) + put + text.slice(start + cut);
};

const TEXT_DAMAGE: readonly fc.Arbitrary<Damage>[] = [
  place.map((p) => onText((text) => splice(text, p, text.length, ''))),
  fc.tuple(place, fc.nat(7)).map(([p, bit]) =>
    onText((text) => {
      const start = p % (text.length + 1);
      return splice(text, start, 1, String.fromCharCode((text.charCodeAt(start) || 32) ^ (1 << bit)));
    }),
  ),
  fc
    .tuple(place, fc.nat(4), fc.string({ maxLength: 4 }))
    .map(([p, cut, put]) => onText((text) => splice(text, p, cut, put))),
  fc
    .tuple(
      place,
      fc.constantFrom('"', ',', '{', '}', '[', ']', '\\u0000', '\\ud800', '\u0007', '1e999', '// c', '\uFEFF'),
    )
    .map(([p, put]) => onText((text) => splice(text, p, 0, put))),
  place.map((p) => onText((text) => doubledKey(text, p))),
  fc.constantFrom('\r\n', '\r').map((end) => onText((text) => text.replaceAll('\n', end))),
  fc.constant(onText((text) => `\uFEFF${text}`)),
];

/** Some key a second time in its object. */
function doubledKey(text: string, number: number): string {
  const keys = [...text.matchAll(/"[\w-]+": (?:"[^"]*"|\d+|true|false)/g)];
  if (keys.length === 0) return text;
  const key = chosen(keys, number);
  return `${text.slice(0, key.index)}${key[0]}, ${text.slice(key.index)}`;
}

/** Larger than any dossier; rare, as it is slow. */
const PADDED = fc.constant(onText((text) => text + ' '.repeat(2_000_000)));

const damages = fc.array(
  fc.oneof(
    { weight: 1200, arbitrary: fc.oneof(...VALUE_DAMAGE) },
    { weight: 300, arbitrary: fc.oneof(...TEXT_DAMAGE) },
    { weight: 60, arbitrary: fc.oneof(...RARE_DAMAGE) },
    { weight: 2, arbitrary: PADDED },
  ),
  { minLength: 1, maxLength: 3, size: 'small' },
);

/** A sound dossier, damaged in one to three ways. */
export const damaged: fc.Arbitrary<string> = fc.tuple(fc.constantFrom(...SEEDS), damages).map(([seed, all]) => {
  let value: unknown = JSON.parse(seed.text);
  for (const damage of all) if (damage.on === 'value') value = damage.apply(value);
  const text = JSON.stringify(value, null, 2) ?? '';
  return all.reduce((before, damage) => (damage.on === 'text' ? damage.apply(before) : before), text);
});
