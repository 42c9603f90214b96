/** Printed plastics: where they soften, and how warm a loaded part may get. */
import { ZERO_CELSIUS } from '../constants.ts';
import { law } from '../law.ts';

export const PLASTICS = ['PLA', 'PETG', 'ABS'] as const;
export type Plastic = (typeof PLASTICS)[number];

export interface PlasticFacts {
  /** Glass transition by differential scanning calorimetry [K]. */
  readonly glass: number;
  /** Heat deflection at 0.455 MPa [K]. */
  readonly deflection: number;
  /** Vicat softening [K]; absent where no sheet gave one. */
  readonly vicat?: number;
  /** Thermal conductivity of the solid [W/(m·K)]. */
  readonly conductivity: number;
  readonly source: string;
  readonly conductivitySource: string;
}

const SHEET = 'filament glass-transition page quoting a maker’s material sheets';
const TABLES = 'material tables, from memory';

export const PLASTIC_FACTS: Readonly<Record<Plastic, PlasticFacts>> = {
  PLA: {
    glass: ZERO_CELSIUS + 59.1,
    deflection: ZERO_CELSIUS + 58.8,
    vicat: ZERO_CELSIUS + 64.5,
    conductivity: 0.13,
    source: SHEET,
    conductivitySource: TABLES,
  },
  PETG: {
    glass: ZERO_CELSIUS + 77.4,
    deflection: ZERO_CELSIUS + 76.2,
    vicat: ZERO_CELSIUS + 82.9,
    conductivity: 0.2,
    source: SHEET,
    conductivitySource: TABLES,
  },
  ABS: {
    glass: ZERO_CELSIUS + 100,
    deflection: ZERO_CELSIUS + 90,
    conductivity: 0.18,
    source: `${SHEET} (100 to 105 °C, the lower end); deflection from a print service’s table`,
    conductivitySource: TABLES,
  },
};

/** Kelvin kept below the glass transition. */
const KEEP_BELOW = 10;

/** Warmest a loaded printed part should get. */
export const printedPartLimit = law(
  {
    id: 'printed-part-limit',
    title: 'Highest temperature of a loaded printed part',
    equation: 'T = Tg[plastic] − 10 K',
    args: { plastic: { symbol: 'plastic', is: 'plastic of the part', unit: 'name', oneOf: PLASTICS } },
    gives: { symbol: 'T', is: 'temperature not to be exceeded', unit: 'K' },
    validFor: 'parts under load for hours',
    leavesOut: 'creep over months, layer adhesion, annealed parts (which stand more)',
    source: 'common practice, no source: 10 K below the glass transition under load',
  },
  ({ plastic }) => PLASTIC_FACTS[plastic].glass - KEEP_BELOW,
);
