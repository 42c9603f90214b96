/** Packs built of cells: resistance, capacity, energy, short circuit, packs side by side. */
import { law } from '../law.ts';

const CIRCUIT = 'Ohm’s and Kirchhoff’s laws, any circuit text';
const series = { symbol: 'ns', is: 'cells in series', unit: '1', from: 1 } as const;
const parallel = { symbol: 'np', is: 'strings in parallel', unit: '1', from: 1 } as const;
const cell = { symbol: 'r', is: 'resistance of one cell', unit: 'Ω', from: 0 } as const;
const leads = { symbol: 'rl', is: 'resistance of leads, tabs and connectors', unit: 'Ω', from: 0 } as const;

/** Resistance of a pack at its plug. */
export const packResistance = law(
  {
    id: 'pack-resistance',
    title: 'Resistance of a pack at its plug',
    equation: 'R = ns · r / np + rl',
    args: { cell, series, parallel, leads },
    gives: { symbol: 'R', is: 'resistance at the plug', unit: 'Ω' },
    validFor: 'like cells',
    leavesOut: 'spread between cells, temperature, age',
    source: CIRCUIT,
  },
  ({ cell, series, parallel, leads }) => (series * cell) / parallel + leads,
);

/** Capacity of strings in parallel. */
export const packCapacity = law(
  {
    id: 'pack-capacity',
    title: 'Capacity of a pack',
    equation: 'Q = np · q',
    args: { cell: { symbol: 'q', is: 'capacity of one cell', unit: 'C', above: 0 }, parallel },
    gives: { symbol: 'Q', is: 'capacity of the pack', unit: 'C' },
    validFor: 'like cells; in series the weakest cell decides',
    leavesOut: 'spread between cells',
    source: CIRCUIT,
  },
  ({ cell, parallel }) => parallel * cell,
);

/** Voltage of cells in series. */
export const packVoltage = law(
  {
    id: 'pack-voltage',
    title: 'Voltage of a pack from its cells',
    equation: 'U = ns · u',
    args: { cell: { symbol: 'u', is: 'voltage of one cell', unit: 'V', above: 0 }, series },
    gives: { symbol: 'U', is: 'voltage of the pack', unit: 'V' },
    validFor: 'balanced cells',
    leavesOut: 'imbalance',
    source: CIRCUIT,
  },
  ({ cell, series }) => series * cell,
);

/** Energy of a pack by its label: what transport rules ask for. */
export const packEnergy = law(
  {
    id: 'pack-energy',
    title: 'Energy of a pack from mean voltage and capacity',
    equation: 'E = U · Q',
    args: {
      voltage: { symbol: 'U', is: 'mean (nominal) voltage', unit: 'V', above: 0 },
      capacity: { symbol: 'Q', is: 'capacity', unit: 'C', above: 0 },
    },
    gives: { symbol: 'E', is: 'energy', unit: 'J' },
    validFor: 'slow discharge',
    leavesOut: 'loss in the internal resistance',
    source: 'watt-hour rating, UN Manual of Tests and Criteria 38.3.2.3',
  },
  ({ voltage, capacity }) => voltage * capacity,
);

/** Energy above which a pack does not travel freely by air, and above which not with a passenger at all [J]. */
export const AIR_TRAVEL = {
  free: { value: 100 * 3600, source: 'Lithium Batteries transport e-book 2024, p. 35' },
  consent: { value: 160 * 3600, source: 'airline dangerous-goods rules, 160 Wh, from memory' },
} as const;

/** Steady current into a dead short: what the fuse must be able to break. */
export const prospectiveCurrent = law(
  {
    id: 'prospective-current',
    title: 'Prospective short-circuit current of a pack',
    equation: 'Isc = ns · u / (ns · r / np + rl)',
    args: {
      cellVoltage: { symbol: 'u', is: 'rested voltage of one cell', unit: 'V', above: 0 },
      series,
      parallel,
      cell,
      leads,
    },
    gives: { symbol: 'Isc', is: 'short-circuit current', unit: 'A' },
    validFor: 'the first second, before cells heat or a protection board opens; cell and lead resistance not both zero',
    leavesOut: 'inductance, polarisation (which lowers it), the resistance of the short itself',
    source: CIRCUIT,
  },
  ({ cellVoltage, series, parallel, cell, leads }) => (series * cellVoltage) / ((series * cell) / parallel + leads),
);

/** Current that flows between two packs when their plugs are joined. */
export const equalisingCurrent = law(
  {
    id: 'equalising-current',
    title: 'Current between two packs joined in parallel',
    equation: 'I = (U1 − U2) / (R1 + R2)',
    args: {
      first: { symbol: 'U1', is: 'rested voltage of the first pack', unit: 'V', above: 0 },
      second: { symbol: 'U2', is: 'rested voltage of the second pack', unit: 'V', above: 0 },
      firstResistance: { symbol: 'R1', is: 'resistance of the first pack with its leads', unit: 'Ω', above: 0 },
      secondResistance: { symbol: 'R2', is: 'resistance of the second pack with its leads', unit: 'Ω', above: 0 },
    },
    gives: { symbol: 'I', is: 'current from the first into the second at the instant of joining', unit: 'A' },
    validFor: 'no load on the bus',
    leavesOut: 'polarisation, which lowers it within seconds',
    source: CIRCUIT,
  },
  ({ first, second, firstResistance, secondResistance }) => (first - second) / (firstResistance + secondResistance),
);

/** Current that one of two parallel packs carries under a common load. */
export const parallelShare = law(
  {
    id: 'parallel-pack-current',
    title: 'Current of one of two packs in parallel under a load',
    equation: 'I1 = (U1 − U2 + I R2) / (R1 + R2)',
    args: {
      first: { symbol: 'U1', is: 'rested voltage of this pack', unit: 'V', above: 0 },
      second: { symbol: 'U2', is: 'rested voltage of the other pack', unit: 'V', above: 0 },
      firstResistance: { symbol: 'R1', is: 'resistance of this pack with its leads', unit: 'Ω', above: 0 },
      secondResistance: { symbol: 'R2', is: 'resistance of the other pack with its leads', unit: 'Ω', above: 0 },
      load: { symbol: 'I', is: 'load current', unit: 'A' },
    },
    gives: { symbol: 'I1', is: 'current out of this pack; negative when it is charged by the other', unit: 'A' },
    validFor: 'constant load current',
    leavesOut: 'polarisation, protection boards',
    source: 'Millman’s theorem, any circuit text',
  },
  ({ first, second, firstResistance, secondResistance, load }) =>
    (first - second + load * secondResistance) / (firstResistance + secondResistance),
);
