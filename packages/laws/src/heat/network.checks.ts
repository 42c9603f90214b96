import { checkLaw, checkSubject } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  filmThermalResistance,
  partTemperature,
  powerAtTemperatureLimit,
  wallThermalResistance,
  wallTransmittance,
} from './network.ts';

const WINDOW = 'Cengel, Heat Transfer, Example 3-2 (single-pane window 0.8 × 1.5 m), from memory';
const pane = { thickness: 0.008, conductivity: 0.78, area: 1.2 };

const junction = (surroundings: number, power: number, resistance: number, expected: number, source: string) =>
  ({
    case: `${power} W, ${resistance} K/W above ${surroundings} °C`,
    source,
    kind: 'published',
    args: { surroundings: ZERO_CELSIUS + surroundings, power, resistance },
    expected: ZERO_CELSIUS + expected,
    allowed: 5e-4,
  }) as const;

export const networkChecks = [
  checkLaw(wallThermalResistance, [
    {
      case: 'pane of 8 mm, 0.78 W/(m·K)',
      source: WINDOW,
      kind: 'memory',
      args: pane,
      expected: 0.00855,
      allowed: 0.001,
    },
  ]),
  checkLaw(filmThermalResistance, [
    {
      case: 'inner film, 10 W/(m²·K)',
      source: WINDOW,
      kind: 'memory',
      args: { coefficient: 10, area: 1.2 },
      expected: 0.08333,
      allowed: 0.001,
    },
    {
      case: 'outer film, 40 W/(m²·K)',
      source: WINDOW,
      kind: 'memory',
      args: { coefficient: 40, area: 1.2 },
      expected: 0.02083,
      allowed: 0.001,
    },
  ]),
  checkLaw(wallTransmittance, [
    {
      case: '266 W over 30 K and 1.2 m²',
      source: WINDOW,
      kind: 'memory',
      args: { inside: 10, thickness: 0.008, conductivity: 0.78, outside: 40 },
      expected: 266 / (30 * 1.2),
      allowed: 0.002,
    },
    {
      case: 'glass of 20 mm between films of 100: 1/(0.01 + 0.02564 + 0.01), worked by hand',
      source: 'sum of thermal resistances, ISO 6946',
      kind: 'published',
      args: { inside: 100, thickness: 0.02, conductivity: 0.78, outside: 100 },
      expected: 21.91,
      allowed: 0.001,
    },
  ]),
  checkLaw(partTemperature, [
    junction(35, 0.64, 47, 65, 'TI DRV8835 data sheet SLVSB18G, section 10.3'),
    junction(25, 0.964, 25, 49.1, 'Toshiba TB67S249FTG application note, 2018, p. 24'),
    junction(40, 4.14, 35, 184.9, 'web worked example of motor-driver power'),
  ]),
  checkLaw(powerAtTemperatureLimit, [
    {
      case: 'bipolar dual bridge: 150 °C junction (from memory), case at 75 °C, 3 K/W: 25 W',
      source: 'ST L298 data sheet, January 2000, absolute maximum ratings and thermal data',
      kind: 'published',
      args: { limit: ZERO_CELSIUS + 150, surroundings: ZERO_CELSIUS + 75, resistance: 3 },
      expected: 25,
      allowed: 1e-6,
    },
  ]),
  checkSubject('heat through a window', [
    {
      case: 'three resistances in series, 20 °C inside, −10 °C outside',
      source: WINDOW,
      kind: 'memory',
      expected: 266,
      allowed: 0.002,
      ours: () => {
        const films = [10, 40].map((coefficient) => filmThermalResistance({ coefficient, area: 1.2 }));
        return 30 / films.reduce((sum, film) => sum + film, wallThermalResistance(pane));
      },
    },
  ]),
];
