/**
 * Wires. Gauged wire: area by gauge, resistance a few per cent above the solid conductor for the lay of the strands,
 * current of a single wire in free air after the handbook table (a rise of 10 to 60 K). Metric wire: resistance a little
 * below the largest that class 5 of the standard allows.
 */
import type { WrittenPart } from '../schema/parts.ts';

interface Row {
  readonly size: string;
  readonly resistance: string;
  readonly area: string;
  readonly diameter: string;
  readonly current: string;
  readonly mass: string;
}

type Sheath = 'silicone' | 'pvc';

const SHEATHS: Readonly<Record<Sheath, { readonly name: string; readonly limit: string; readonly remark: string }>> = {
  silicone: {
    name: 'silicone',
    limit: '180 °C',
    remark:
      'Soft and heat-proof; a sharp edge cuts it. The current warms the copper by tens of kelvin: drop decides first.',
  },
  pvc: {
    name: 'PVC',
    limit: '80 °C',
    remark:
      'Stiffens in the cold and softens near hot motors. The current is for a single wire in free air, not a bundle.',
  },
};

const gauged = (sheath: Sheath, row: Row) =>
  ({
    kind: 'wire',
    id: `wire-awg${row.size}-${sheath}`,
    title: `stranded wire AWG ${row.size}, ${SHEATHS[sheath].name}`,
    cost: 1,
    resistancePerMetre: `${row.resistance} ± 3 %`,
    area: `${row.area} ± 2 %`,
    diameter: `${row.diameter} ± 5 %`,
    currentMax: `${row.current} ± 10 %`,
    temperatureMax: SHEATHS[sheath].limit,
    massPerMetre: `${row.mass} ± 8 %`,
    remark: SHEATHS[sheath].remark,
  }) satisfies WrittenPart;

const metric = (row: Row) =>
  ({
    kind: 'wire',
    id: `wire-${row.size.replace('.', 'mm')}-flexible`,
    title: `flexible wire ${row.size} mm², PVC`,
    cost: 1,
    resistancePerMetre: `${row.resistance} ± 2.5 %`,
    area: row.area,
    diameter: `${row.diameter} ± 5 %`,
    currentMax: `${row.current} ± 10 %`,
    temperatureMax: '70 °C',
    massPerMetre: `${row.mass} ± 8 %`,
    remark: 'The nominal area flatters by 13 to 22 %: never compute the resistance from it. Cheap reels are worse.',
  }) satisfies WrittenPart;

const row = (size: string, resistance: string, area: string, diameter: string, current: string, mass: string): Row => ({
  size,
  resistance,
  area,
  diameter,
  current,
  mass,
});

export const WIRES = [
  gauged('silicone', row('12', '5.42 mΩ/m', '3.31 mm²', '4.5 mm', '41 A', '43 g/m')),
  gauged('silicone', row('14', '8.62 mΩ/m', '2.08 mm²', '3.5 mm', '32 A', '26 g/m')),
  gauged('silicone', row('16', '13.7 mΩ/m', '1.31 mm²', '3.0 mm', '22 A', '18 g/m')),
  gauged('silicone', row('18', '21.8 mΩ/m', '0.823 mm²', '2.3 mm', '16 A', '11 g/m')),
  gauged('silicone', row('20', '34.6 mΩ/m', '0.518 mm²', '1.8 mm', '11 A', '6.8 g/m')),
  gauged('silicone', row('22', '55.1 mΩ/m', '0.326 mm²', '1.7 mm', '7 A', '5.1 g/m')),
  gauged('silicone', row('24', '87.6 mΩ/m', '0.205 mm²', '1.6 mm', '3.5 A', '3.9 g/m')),
  gauged('silicone', row('26', '139 mΩ/m', '0.129 mm²', '1.5 mm', '2.2 A', '3.0 g/m')),
  gauged('silicone', row('28', '221 mΩ/m', '0.081 mm²', '1.2 mm', '1.4 A', '1.9 g/m')),
  gauged('pvc', row('18', '21.8 mΩ/m', '0.823 mm²', '2.1 mm', '16 A', '10.6 g/m')),
  gauged('pvc', row('20', '34.6 mΩ/m', '0.518 mm²', '1.8 mm', '11 A', '7.2 g/m')),
  gauged('pvc', row('22', '55.1 mΩ/m', '0.326 mm²', '1.6 mm', '7 A', '5.1 g/m')),
  gauged('pvc', row('24', '87.6 mΩ/m', '0.205 mm²', '1.4 mm', '3.5 A', '3.6 g/m')),
  gauged('pvc', row('26', '139 mΩ/m', '0.129 mm²', '1.3 mm', '2.2 A', '2.7 g/m')),
  gauged('pvc', row('28', '221 mΩ/m', '0.081 mm²', '1.1 mm', '1.4 A', '1.9 g/m')),
  metric(row('0.14', '130 mΩ/m', '0.14 mm²', '1.1 mm', '2 A', '2.3 g/m')),
  metric(row('0.25', '74 mΩ/m', '0.25 mm²', '1.3 mm', '4 A', '3.6 g/m')),
  metric(row('0.5', '37.8 mΩ/m', '0.5 mm²', '2.1 mm', '9 A', '8.3 g/m')),
  metric(row('0.75', '25.2 mΩ/m', '0.75 mm²', '2.4 mm', '12 A', '11.6 g/m')),
  metric(row('1.5', '12.9 mΩ/m', '1.5 mm²', '3.0 mm', '20 A', '20 g/m')),
  metric(row('2.5', '7.75 mΩ/m', '2.5 mm²', '3.6 mm', '28 A', '32 g/m')),
] satisfies readonly WrittenPart[];
