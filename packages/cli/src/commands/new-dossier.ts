/** A first dossier from the answers to the questions of `longrein new`. */
import { builtInShelf, type PartOf, partsOf, type WrittenDossier } from '@longrein/engineering';

export interface Answers {
  name: string;
  mass: string;
  length: string;
  width: string;
  height: string;
  wheelDiameter: string;
  wheelbase: string;
  track: string;
  steering: string;
  clutch?: string;
  driven?: string;
  motorPer?: string;
  motorResistance?: string;
  toyChemistry: string;
  toyCells: string;
  capacity?: string;
  runTime?: string;
  topSpeed?: string;
  surface: string;
  slope: string;
  wantedTime: string;
  pack: string;
}

type Donor = WrittenDossier['donor'];
type Chemistry = Donor['pack']['chemistry'];

const HOUR = 3600;

/** A charger of the shelf that fits the pack named: the plainest, and of those the one nearest to a two-hour charge. */
function chargerFor(packId: string): string {
  const shelf = builtInShelf();
  const pack = partsOf(shelf, 'pack').find(({ id }) => id === packId);
  const gentle = (pack?.capacity.quantity.value ?? 0) / (2 * HOUR);
  const away = (charger: PartOf<'charger'>) => Math.abs(charger.current.quantity.value - gentle);
  const fitting = partsOf(shelf, 'charger')
    .filter(({ chemistries, cellsMax }) => pack && chemistries.includes(pack.chemistry) && cellsMax >= pack.cells)
    .sort((a, b) => a.chemistries.length - b.chemistries.length || a.cellsMax - b.cellsMax || away(a) - away(b));
  // A pack that cannot be charged has none; the finding on the charger then says so.
  return fitting[0]?.id ?? 'charger-multi-6s-5a';
}

/** The dossier, with a usual conversion from the shelf that the maker will change. */
export function dossierFrom(a: Answers): WrittenDossier {
  const skid = a.steering === 'skid';
  const front = skid || a.driven === 'front' || a.driven === 'all';
  const rear = skid || a.driven === 'rear' || a.driven === 'all';
  const wire = (usual: string, connector: string, gauge = 'wire-awg20-silicone') => ({
    wire: gauge,
    length: { value: usual, basis: 'estimate' as const, remark: 'a usual length; measure the run' },
    connector,
    pairs: 2,
  });
  return {
    format: 1,
    name: a.name,
    remark: 'Begun by asking for the few measurements that matter; parts and places are usual ones, to be changed.',
    donor: {
      title: a.name,
      body: {
        mass: a.mass,
        length: a.length,
        width: a.width,
        height: a.height,
        wheelDiameter: a.wheelDiameter,
        ...(a.runTime === undefined ? {} : { runTime: a.runTime }),
        ...(a.topSpeed === undefined ? {} : { topSpeed: a.topSpeed }),
      },
      axles: [
        { wheels: 2, driven: front, steered: !skid, track: a.track },
        { wheels: 2, driven: rear, position: a.wheelbase, track: a.track },
      ],
      drive: {
        motorPer: (skid ? 'side' : (a.motorPer ?? 'vehicle')) as Donor['drive']['motorPer'],
        ...(a.motorResistance === undefined ? {} : { motor: { resistance: a.motorResistance } }),
      },
      steering: skid
        ? { kind: 'skid' }
        : a.steering === 'servo'
          ? { kind: 'servo' }
          : { kind: 'on-off', clutch: a.clutch === 'yes' },
      pack: {
        chemistry: a.toyChemistry as Chemistry,
        cells: Number(a.toyCells),
        ...(a.capacity === undefined ? {} : { capacity: a.capacity }),
      },
    },
    conversion: {
      parts: {
        pack: a.pack,
        converter: 'buck-5v-3a-low-drop',
        bridge: 'bridge-mosfet-4a-dual',
        computer: 'board-quad-core-small',
        camera: 'camera-ribbon-wide',
        modem: 'modem-wlan-2g4-board',
        aerial: 'aerial-rod-2dbi',
        fuse: 'fuse-mini-5a',
        charger: chargerFor(a.pack),
        enclosure: 'enclosure-120x80x40-white',
        ...(a.steering === 'servo' ? { servo: 'servo-standard-45g' } : {}),
      },
      wiring: {
        pack: wire('0.12 m ± 20 %', 'connector-toy-8a', 'wire-awg18-silicone'),
        bridge: wire('0.10 m ± 20 %', 'connector-screw-10a'),
        motor: wire('0.15 m ± 20 %', 'connector-screw-10a'),
        converter: wire('0.08 m ± 20 %', 'connector-soldered'),
        board: wire('0.10 m ± 20 %', 'connector-pin-3a'),
      },
    },
    service: {
      want: { runTime: a.wantedTime, slope: a.slope },
      surfaces: [{ surface: a.surface, share: 1 }],
    },
  };
}
