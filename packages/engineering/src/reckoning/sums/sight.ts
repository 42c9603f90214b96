/**
 * Sums of the sight limit in its steady form: how far ahead what matters can be made out, and how fast one may drive
 * to stop within it.
 */
import {
  blindForeground,
  dropSight,
  nearEdge,
  obstacleSight,
  personLimitSpeed,
  sightLimitSpeed,
  steeredSight,
} from '@longrein/laws';
import { type SumsOf, sum } from '../sum.ts';

type SeenId =
  | 'picture.sightObstacle'
  | 'picture.sightEdge'
  | 'picture.sightWalker'
  | 'picture.sightSteered'
  | 'picture.nearGround'
  | 'picture.overhang'
  | 'picture.blind'
  | 'picture.clearObstacle'
  | 'picture.clearEdge'
  | 'picture.clearWalker';

type SpeedId = 'picture.speedObstacle' | 'picture.speedEdge' | 'picture.speedWalker' | 'picture.speedLimit';

export type SightId = SeenId | SpeedId;

/** Stands for 'sees no ground' [m]. */
const NO_GROUND = 1000;
/** A lower edge less than this below the horizon sees none either [rad]. */
const LEVEL = 1e-6;

const seen: SumsOf<SeenId> = {
  'picture.sightObstacle': sum(
    {
      title: 'distance in which the smallest obstacle can be made out',
      unit: 'm',
      caveat: 'In good light, against ground of another brightness. Blur, haze and a dirty lens cut it shorter.',
    },
    {
      uses: { focal: 'picture.focal', size: 'near.obstacle', pixels: 'picture.pixelsWanted' },
      formula: '{focal} · {size} / {pixels}',
      laws: [obstacleSight],
      value: ({ focal, size, pixels }) => obstacleSight({ focalPixels: focal, size, pixels }),
    },
  ),
  'picture.sightEdge': sum(
    {
      title: 'distance in which the edge of a drop can be made out',
      unit: 'm',
      caveat:
        'Twice the pixels see it only 1.4 times as far; a higher camera does as much. Grass at the edge hides it.',
    },
    {
      uses: {
        focal: 'picture.focal',
        camera: 'at.camera.height',
        band: 'near.dropWidth',
        rows: 'picture.pixelsEdge',
      },
      formula: '(√({band}² + 4 · {focal} · {camera} · {band} / {rows}) − {band}) / 2',
      laws: [dropSight],
      value: ({ focal, camera, band, rows }) =>
        dropSight({ focalPixels: focal, height: camera, gap: band, pixels: rows }),
    },
  ),
  'picture.sightWalker': sum(
    {
      title: 'distance in which a walking person can be made out',
      unit: 'm',
      caveat: 'Somebody in the open, ahead. A person who steps out from a corner or from aside is seen only then.',
    },
    {
      uses: { focal: 'picture.focal', pixels: 'picture.pixelsWanted' },
      takes: () => ({
        breadth: {
          value: 0.3,
          unit: 'm',
          is: 'breadth of a child seen from in front',
          source: 'common practice, no source',
        },
      }),
      formula: '{focal} · {breadth} / {pixels}',
      laws: [obstacleSight],
      value: ({ focal, breadth, pixels }) => obstacleSight({ focalPixels: focal, size: breadth, pixels }),
    },
  ),
  'picture.sightSteered': sum(
    {
      title: 'way ahead that stays in view in the tightest turn',
      unit: 'm',
      caveat: 'From the camera, which looks straight ahead: what lies round the bend is not in the picture.',
    },
    {
      uses: {
        radius: 'want.cornerRadius',
        view: 'picture.view',
        obstacle: 'picture.sightObstacle',
        edge: 'picture.sightEdge',
      },
      formula:
        '{radius} · lesser of {view} and 2 · asin(lesser of 1 and the greater of {obstacle} and {edge} / (2 · {radius}))',
      laws: [steeredSight],
      value: ({ radius, view, obstacle, edge }) => steeredSight({ radius, view, sight: Math.max(obstacle, edge) }),
    },
  ),
  'picture.nearGround': sum(
    {
      title: 'nearest ground in the picture, ahead of the camera',
      unit: 'm',
      caveat:
        'On level ground. Negative where the camera sees behind its own foot. A kilometre stands for a camera that looks over the ground altogether.',
    },
    {
      uses: { height: 'at.camera.height', pitch: 'camera.pitch', view: 'picture.viewUp' },
      formula: '{height} / tan({pitch} + {view} / 2)',
      laws: [nearEdge],
      // The law takes no camera that looks up; one as much narrower, held level, has the same lower edge.
      value: ({ height, pitch, view }) =>
        pitch + view / 2 <= LEVEL
          ? NO_GROUND
          : Math.min(NO_GROUND, nearEdge({ height, pitch: Math.max(0, pitch), view: view + 2 * Math.min(0, pitch) })),
    },
  ),
  'picture.overhang': sum(
    { title: 'distance from the camera forward to the bumper', unit: 'm' },
    {
      uses: { behind: 'at.camera.behind', overhang: 'toy.frontOverhang' },
      formula: '{behind} + {overhang}',
      laws: [],
      value: ({ behind, overhang }) => behind + overhang,
    },
  ),
  'picture.blind': sum(
    {
      title: 'ground ahead of the bumper that is below the picture',
      unit: 'm',
      caveat: 'The nose of the vehicle may hide more.',
    },
    {
      uses: { near: 'picture.nearGround', overhang: 'picture.overhang' },
      formula: '{near} − {overhang}, not less than 0',
      laws: [blindForeground],
      value: ({ near, overhang }) => blindForeground({ nearEdge: near, overhang }),
    },
  ),
  'picture.clearObstacle': sum(
    { title: 'clear way ahead of the bumper as to obstacles', unit: 'm' },
    {
      uses: { sight: 'picture.sightObstacle', steered: 'picture.sightSteered', overhang: 'picture.overhang' },
      formula: 'lesser of {sight} and {steered}, − {overhang}, not less than 0',
      laws: [],
      value: ({ sight, steered, overhang }) => Math.max(0, Math.min(sight, steered) - overhang),
    },
  ),
  'picture.clearEdge': sum(
    { title: 'clear way ahead of the bumper as to edges of drops', unit: 'm' },
    {
      uses: { sight: 'picture.sightEdge', steered: 'picture.sightSteered', overhang: 'picture.overhang' },
      formula: 'lesser of {sight} and {steered}, − {overhang}, not less than 0',
      laws: [],
      value: ({ sight, steered, overhang }) => Math.max(0, Math.min(sight, steered) - overhang),
    },
  ),
  'picture.clearWalker': sum(
    { title: 'clear way ahead of the bumper as to people', unit: 'm', caveat: 'Driving straight on.' },
    {
      uses: { sight: 'picture.sightWalker', overhang: 'picture.overhang' },
      formula: '{sight} − {overhang}, not less than 0',
      laws: [],
      value: ({ sight, overhang }) => Math.max(0, sight - overhang),
    },
  ),
};

const STOPS_NEVER =
  'Braking is taken downhill on the steepest slope. 0 where nothing is seen or it does not stop there.';

const speeds: SumsOf<SpeedId> = {
  'picture.speedObstacle': sum(
    { title: 'greatest speed that stops before an obstacle seen', unit: 'm/s', caveat: STOPS_NEVER },
    {
      uses: { sight: 'picture.clearObstacle', delay: 'picture.delay', braking: 'safe.descentDeceleration' },
      formula: '√(({braking} · {delay})² + 2 · {braking} · {sight}) − {braking} · {delay}',
      laws: [sightLimitSpeed],
      value: ({ sight, delay, braking }) => (braking > 0 ? sightLimitSpeed({ sight, delay, braking }) : 0),
    },
  ),
  'picture.speedEdge': sum(
    { title: 'greatest speed that stops before an edge seen', unit: 'm/s', caveat: STOPS_NEVER },
    {
      uses: { sight: 'picture.clearEdge', delay: 'picture.delay', braking: 'safe.descentDeceleration' },
      formula: '√(({braking} · {delay})² + 2 · {braking} · {sight}) − {braking} · {delay}',
      laws: [sightLimitSpeed],
      value: ({ sight, delay, braking }) => (braking > 0 ? sightLimitSpeed({ sight, delay, braking }) : 0),
    },
  ),
  'picture.speedWalker': sum(
    {
      title: 'greatest speed that is at rest before a person arrives',
      unit: 'm/s',
      caveat: `${STOPS_NEVER} The person walks on towards it all the while.`,
    },
    {
      uses: {
        sight: 'picture.clearWalker',
        walker: 'near.walkerSpeed',
        delay: 'picture.delay',
        braking: 'safe.descentDeceleration',
      },
      formula:
        '√(({braking} · {delay} + {walker})² + 2 · {braking} · ({sight} − {walker} · {delay})) − ({braking} · {delay} + {walker})',
      laws: [personLimitSpeed],
      value: ({ sight, walker, delay, braking }) =>
        braking > 0 ? personLimitSpeed({ sight, personSpeed: walker, delay, braking }) : 0,
    },
  ),
  'picture.speedLimit': sum(
    {
      title: 'sight limit: greatest speed the picture allows',
      unit: 'm/s',
      caveat: 'Steady driving. The guard aboard goes by the age of the picture that is really on the screen.',
    },
    {
      uses: { obstacle: 'picture.speedObstacle', edge: 'picture.speedEdge', walker: 'picture.speedWalker' },
      formula: 'least of {obstacle}, {edge} and {walker}',
      laws: [],
      value: ({ obstacle, edge, walker }) => Math.min(obstacle, edge, walker),
    },
  ),
};

export const sightSums: SumsOf<SightId> = { ...seen, ...speeds };
