import { checkLaw } from '../check.ts';
import { type FlexibleSize, flexibleWireResistance, type StrandCoating } from './flexible.ts';

const TABLE = 'IEC 60228, tables of class 5, as printed in a cable maker’s catalogue';

const row = (size: FlexibleSize, coating: StrandCoating, ohmPerKilometre: number, source: string) => ({
  case: `a kilometre of ${size} mm², ${coating}`,
  source,
  kind: 'published' as const,
  args: { size, coating, length: 1000 },
  expected: ohmPerKilometre,
  allowed: 1e-6,
});

export const flexibleChecks = [
  checkLaw(flexibleWireResistance, [
    row('0.5', 'plain', 39, TABLE),
    row('1.5', 'tinned', 13.7, TABLE),
    row('4', 'plain', 4.95, TABLE),
    row('0.22', 'plain', 96, 'cable trader’s list after DIN VDE 0295 / IEC 60228 / HD 383'),
    {
      case: '100 m of 1 mm², plain: 1.131 times the solid copper of 1/58 Ω·mm²/m, as the neighbouring sizes 0.5 and 0.75 are',
      source: 'IEC 60028 resistivity and the ratio 39.0/34.48 of IEC 60228 class 5 at 0.5 mm²',
      kind: 'published',
      args: { size: '1', coating: 'plain', length: 100 },
      expected: (100 / 58) * (39 / 34.48),
      allowed: 0.002,
    },
  ]),
];
