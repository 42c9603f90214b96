/**
 * The units a dossier may be written in: one row a unit, with the prefixes people really use. A prefix that is not
 * listed is refused, so that 'mHz' for 'MHz' is noticed instead of being wrong by a factor of a billion.
 */
import { GRAVITY, ZERO_CELSIUS } from '@longrein/laws';

/**
 * The bases of the dimension vectors. Besides those of the SI:
 * - rad is a base of its own, so that neither Hz nor a percentage is taken for an angle or a speed of rotation, where
 *   the mistake would be a silent factor of 2π. The price is that V·s/rad and N·m/A are two dimensions.
 * - px, B and cell are counts, so that px/m, kB and V/cell are not taken for 1/m, a number and V.
 * - dBm and dB are levels and their differences. They are kept as they are written, never turned into watts.
 */
export const BASES = ['m', 'kg', 's', 'A', 'K', 'rad', 'px', 'B', 'cell', 'dBm', 'dB'] as const;
export type Base = (typeof BASES)[number];
export type Powers = Readonly<Partial<Record<Base, number>>>;

export interface UnitRow {
  readonly symbol: string;
  /** English name, for finding what somebody meant. */
  readonly name: string;
  /** Prefixes in use, separated by spaces. */
  readonly prefixes: string;
  readonly powers: Powers;
  /** One of the unit is num/den in SI; two numbers because a division by 1000 rounds once and 0.001 twice. */
  readonly num: number;
  readonly den: number;
  /** Zero of the scale in SI, for a unit written alone. */
  readonly offset?: number;
  /** Other spellings of the symbol; they take the same prefixes. */
  readonly aliases?: readonly string[];
}

/** Decimal prefixes as numerator and denominator; 'u' stands for 'µ'. */
export const PREFIXES: Readonly<Record<string, readonly [number, number]>> = {
  p: [1, 1e12],
  n: [1, 1e9],
  µ: [1, 1e6],
  m: [1, 1e3],
  c: [1, 100],
  h: [100, 1],
  k: [1e3, 1],
  M: [1e6, 1],
  G: [1e9, 1],
  T: [1e12, 1],
};

const VOLT: Powers = { kg: 1, m: 2, s: -3, A: -1 };
const JOULE: Powers = { kg: 1, m: 2, s: -2 };
const NEWTON: Powers = { kg: 1, m: 1, s: -2 };
const COULOMB: Powers = { A: 1, s: 1 };

function row(symbol: string, name: string, prefixes: string, powers: Powers, num = 1, den = 1): UnitRow {
  return { symbol, name, prefixes, powers, num, den };
}

export const UNIT_ROWS: readonly UnitRow[] = [
  row('m', 'metre', 'n µ m c k', { m: 1 }),
  row('g', 'gram', 'm k', { kg: 1 }, 1, 1000),
  row('s', 'second', 'n µ m', { s: 1 }),
  row('min', 'minute', '', { s: 1 }, 60),
  row('h', 'hour', '', { s: 1 }, 3600),
  row('d', 'day', '', { s: 1 }, 86_400),
  // A twelfth of the Gregorian year of 365.2425 days.
  row('month', 'month', '', { s: 1 }, 2_629_746),
  row('year', 'year', '', { s: 1 }, 31_556_952),
  row('A', 'ampere', 'n µ m k', { A: 1 }),
  row('K', 'kelvin', 'm', { K: 1 }),
  { ...row('°C', 'celsius', '', { K: 1 }), offset: ZERO_CELSIUS, aliases: ['degC'] },
  row('rad', 'radian', 'm', { rad: 1 }),
  { ...row('°', 'degree', '', { rad: 1 }, Math.PI, 180), aliases: ['deg'] },
  row('rpm', 'revolutions per minute', '', { rad: 1, s: -1 }, 2 * Math.PI, 60),
  row('Hz', 'hertz', 'k M G', { s: -1 }),
  row('V', 'volt', 'µ m k', VOLT),
  { ...row('Ω', 'ohm', 'µ m k M', { ...VOLT, A: -2 }), aliases: ['ohm', 'Ohm'] },
  row('W', 'watt', 'µ m k', { kg: 1, m: 2, s: -3 }),
  row('Wh', 'watt-hour', 'm k', JOULE, 3600),
  row('J', 'joule', 'm k M', JOULE),
  row('C', 'coulomb', 'µ m k', COULOMB),
  row('Ah', 'ampere-hour', 'm', COULOMB, 3600),
  row('F', 'farad', 'p n µ m', { kg: -1, m: -2, s: 4, A: 2 }),
  row('H', 'henry', 'n µ m', { kg: 1, m: 2, s: -2, A: -2 }),
  row('N', 'newton', 'm k', NEWTON),
  row('gf', 'gram-force', 'k', NEWTON, GRAVITY, 1000),
  row('Pa', 'pascal', 'h k M G', { kg: 1, m: -1, s: -2 }),
  row('%', 'per cent', '', {}, 1, 100),
  row('px', 'pixel', 'M', { px: 1 }),
  row('B', 'byte', 'k M G T', { B: 1 }),
  row('bit', 'bit', 'k M G', { B: 1 }, 1, 8),
  row('cell', 'cell', '', { cell: 1 }),
  row('dBm', 'decibel-milliwatt', '', { dBm: 1 }),
  row('dB', 'decibel', '', { dB: 1 }),
  row('dBi', 'decibel over isotropic', '', { dB: 1 }),
];

/** Units that messages propose for a dimension that is given by a compound unit. */
export const CUSTOMARY: readonly string[] = [
  'm/s',
  'km/h',
  'm/s²',
  'rad/s',
  'rpm',
  '°/s',
  'N·m',
  'mN·m',
  'N·cm',
  'kgf·cm',
  'mm²',
  'm²',
  'm³',
  'kg·m²',
  'kg/m³',
  'N/m',
  'K/W',
  'W/K',
  'J/K',
  'J/(kg·K)',
  'W/(m·K)',
  '1/K',
  '%/K',
  'V/K',
  'Ω/m',
  'mΩ/m',
  'N·m/A',
  'V·s/rad',
  'V/rpm',
  'rpm/V',
  'V/cell',
  'mΩ/cell',
  'B/s',
  'kB/s',
  'kbit/s',
  'Mbit/s',
  'px/m',
  'px/rad',
  'px/°',
  'dB/m',
  'Wh/kg',
  'Wh/km',
  '1/h',
  '%/d',
  '%/month',
  '%/year',
];

/** Run-together spellings that mean a compound unit. */
export const RUN_TOGETHER: Readonly<Record<string, string>> = {
  Nm: 'N·m',
  mNm: 'mN·m',
  Ncm: 'N·cm',
  kgfcm: 'kgf·cm',
};
