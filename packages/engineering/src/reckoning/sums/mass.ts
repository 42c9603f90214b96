/** Sums of mass: what is added, where it sits, what the vehicle weighs now. */
import { RUNS, type Run } from '../../dossier/facts/build.ts';
import type { Layout } from '../../dossier/resolve.ts';
import { type Constant, type Ref, type Route, route, type SumsOf, sum, sumByRoutes } from '../sum.ts';
import { balanceSums } from './balance.ts';
import type { SumIdOf } from './ids.ts';
import { named } from './practice.ts';

/** From about a third more mass on a toy drives noticeably differently; common practice, no source. */
const RATIO_MAX = 1.3;

type OnBoard =
  | 'pack'
  | 'fuse'
  | 'converter'
  | 'bridge'
  | 'computer'
  | 'camera'
  | 'modem'
  | 'aerial'
  | 'servo'
  | 'enclosure'
  | 'fixings'
  | 'wiring'
  | 'payload';

const ON_BOARD: readonly OnBoard[] = [
  'pack',
  'fuse',
  'converter',
  'bridge',
  'computer',
  'camera',
  'modem',
  'aerial',
  'servo',
  'enclosure',
  'fixings',
  'wiring',
  'payload',
];

function massRef(part: OnBoard): Ref {
  if (part === 'wiring') return 'mass.wiring';
  return part === 'payload' ? 'want.payload' : `${part}.mass`;
}

/** The fuse sits at the pack, as it must; the wiring is taken where its currents meet, at the bridge. */
function placeOf(part: OnBoard): Exclude<OnBoard, 'fuse' | 'wiring'> {
  if (part === 'fuse') return 'pack';
  return part === 'wiring' ? 'bridge' : part;
}

/** The mass of a part as it stands in a formula; a vehicle may carry several bridge boards. */
const term = (part: OnBoard): string => (part === 'bridge' ? '{bridges} · {bridge}' : `{${part}}`);

const bridges = (layout: Layout): Constant => ({
  value: layout.bridges,
  unit: '1',
  is: 'bridge boards fitted',
  source: 'the conversion',
});

/** One route for each equipment: a servo and an enclosure are carried by some vehicles only. */
function byEquipment(make: (parts: readonly OnBoard[]) => Route): Route[] {
  return [true, false].flatMap((servo) =>
    [true, false].map((enclosure) => {
      const parts = ON_BOARD.filter((part) => (part !== 'servo' || servo) && (part !== 'enclosure' || enclosure));
      return {
        name: `${servo ? 'with' : 'without'} servo, ${enclosure ? 'with' : 'without'} enclosure`,
        ...make(parts),
        when: (layout: Layout) => (layout.steering === 'servo') === servo && layout.enclosure === enclosure,
      };
    }),
  );
}

const massesOf = (parts: readonly OnBoard[]) =>
  Object.fromEntries(parts.map((part) => [part, massRef(part)])) as Record<OnBoard, Ref>;

const ofRuns = <const S extends string>(suffix: S, key: 'length' | 'massPerMetre' | 'contactMass') =>
  Object.fromEntries(RUNS.map((run) => [`${run}${suffix}`, `run.${run}.${key}`])) as Record<`${Run}${S}`, Ref>;

const moment = (title: string, way: 'behind' | 'height') =>
  sumByRoutes(
    {
      title,
      unit: 'kg·m',
      caveat: 'The fuse is taken at the place of the pack, the wiring at the place of the bridge; payload included.',
    },
    ...byEquipment((parts) =>
      route({
        uses: {
          ...massesOf(parts),
          ...(Object.fromEntries(parts.map((part) => [`${placeOf(part)}At`, `at.${placeOf(part)}.${way}`])) as Record<
            `${ReturnType<typeof placeOf>}At`,
            Ref
          >),
        },
        takes: (layout) => ({ bridges: bridges(layout) }),
        formula: parts.map((part) => `${term(part)} · {${placeOf(part)}At}`).join(' + '),
        laws: [],
        value: (x) =>
          parts.reduce(
            (total, part) => total + (part === 'bridge' ? x.bridges : 1) * x[part] * x[`${placeOf(part)}At`],
            0,
          ),
      }),
    ),
  );

export const massSums: SumsOf<SumIdOf<'mass and balance'>> = {
  'mass.wiring': sum(
    {
      title: 'mass of wires and connectors',
      unit: 'g',
      caveat: 'The motor run is counted once for each drive motor. Servo and camera leads count with their parts.',
    },
    {
      uses: {
        ...ofRuns('Length', 'length'),
        ...ofRuns('Wire', 'massPerMetre'),
        ...ofRuns('Contacts', 'contactMass'),
      },
      takes: (layout) => ({
        motors: { value: layout.motors, unit: '1', is: 'drive motors', source: 'the toy as it came' },
      }),
      formula: RUNS.map(
        (run) => `${run === 'motor' ? '{motors} · ' : ''}(2 · {${run}Length} · {${run}Wire} + {${run}Contacts})`,
      ).join(' + '),
      laws: [],
      value: (x) =>
        RUNS.reduce(
          (total, run) =>
            total + (run === 'motor' ? x.motors : 1) * (2 * x[`${run}Length`] * x[`${run}Wire`] + x[`${run}Contacts`]),
          0,
        ),
    },
  ),
  'mass.added': sumByRoutes(
    { title: 'mass of what the conversion adds', unit: 'g', caveat: 'Without payload; the charger stays at home.' },
    ...byEquipment((carried) => {
      const parts = carried.filter((part) => part !== 'payload');
      return route({
        uses: massesOf(parts),
        takes: (layout) => ({ bridges: bridges(layout) }),
        formula: parts.map(term).join(' + '),
        laws: [],
        value: (x) => parts.reduce((total, part) => total + (part === 'bridge' ? x.bridges : 1) * x[part], 0),
      });
    }),
  ),
  'mass.total': sum(
    { title: 'mass of the vehicle as it drives', unit: 'kg' },
    {
      uses: { toy: 'toy.mass', removed: 'toy.removed', added: 'mass.added', payload: 'want.payload' },
      formula: '{toy} − {removed} + {added} + {payload}',
      laws: [],
      value: ({ toy, removed, added, payload }) => toy - removed + added + payload,
    },
  ),
  'mass.ratio': sum(
    { title: 'mass as it drives, over the mass of the toy', unit: '1' },
    {
      uses: { total: 'mass.total', toy: 'toy.mass' },
      formula: '{total} / {toy}',
      laws: [],
      value: ({ total, toy }) => total / toy,
    },
  ),
  'mass.ratioMax': named(
    'mass over that of the toy from which it drives noticeably worse',
    '1',
    RATIO_MAX,
    'a third more mass',
  ),
  'mass.momentBehind': moment('moment of the added masses about the front axle, seen from the side', 'behind'),
  'mass.momentHeight': moment('moment of the added masses about the ground', 'height'),
  ...balanceSums,
};
