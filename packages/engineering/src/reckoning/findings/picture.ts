/** Findings of picture and sight: does the driver see in time what matters, and is what is kept of it within bounds. */
import { findings } from '../finding.ts';

const STRANGERS = 'Strangers drive it and people walk near it: let no cap exceed what the picture shows in time.';
const SLOWER =
  'Lower the speed cap of the place to this speed. To win sight instead: a wider picture where the link carries it, a younger picture, a higher camera, or a wider bend.';

export const pictureFindings = findings({
  'age-lets-steer': {
    title: 'Pictures are young enough to steer by without stopping to look',
    subject: 'picture and sight',
    unit: 'ms',
    sense: 'at most',
    need: 'picture.ageMax',
    has: 'picture.age',
    remedy:
      'Make pictures smaller, measure where the age comes from with the bench card, and take out queues. Where it stays old, let drivers move by steps.',
    informs: true,
  },
  'pictures-often-enough': {
    title: 'Pictures come often enough to find the way',
    subject: 'picture and sight',
    unit: 'ms',
    sense: 'at most',
    need: 'picture.spacingMax',
    has: 'picture.spacing',
    remedy: 'Send smaller pictures more often, or drive more slowly.',
    informs: true,
  },
  'edge-seen-in-time': {
    title: 'The edge of a drop is seen in time at the speed cap',
    subject: 'picture and sight',
    unit: 'm/s',
    sense: 'at least',
    need: 'safe.speedCap',
    has: 'picture.speedEdge',
    remedy: `${SLOWER} Or mark the edge, or close it off.`,
    caution: 'A fall hurts those below as well. Close off what the vehicle must never reach.',
  },
  'obstacle-seen-in-time': {
    title: 'The smallest obstacle that matters is seen in time at the speed cap',
    subject: 'picture and sight',
    unit: 'm/s',
    sense: 'at least',
    need: 'safe.speedCap',
    has: 'picture.speedObstacle',
    remedy: SLOWER,
    caution: STRANGERS,
  },
  'walker-seen-in-time': {
    title: 'A person walking towards it is seen in time at the speed cap',
    subject: 'picture and sight',
    unit: 'm/s',
    sense: 'at least',
    need: 'safe.speedCap',
    has: 'picture.speedWalker',
    remedy: `${SLOWER} Keep it away from corners and doors from which people step out.`,
    caution: STRANGERS,
  },
  'cap-within-sight': {
    title: 'The speed cap lies within the sight limit',
    subject: 'picture and sight',
    unit: 'm/s',
    sense: 'at least',
    need: 'safe.speedCap',
    has: 'picture.speedLimit',
    remedy: SLOWER,
    caution: STRANGERS,
  },
  'usual-speed-within-sight': {
    title: 'The usual driving speed lies within the sight limit',
    subject: 'picture and sight',
    unit: 'm/s',
    sense: 'at least',
    need: 'want.speed',
    has: 'picture.speedLimit',
    remedy:
      'Drive more slowly than wished, or win sight: a wider picture where the link carries it, a younger picture, a higher camera, or a wider bend.',
    caution: STRANGERS,
  },
  'foreground-covered': {
    title: 'What is seen ahead reaches past the blind ground at the bumper',
    subject: 'picture and sight',
    unit: 'm',
    sense: 'at most',
    need: 'picture.clearObstacle',
    has: 'picture.blind',
    remedy:
      'Tilt the camera further down, lower it or set it further forward; or take a lens or picture that sees further down.',
  },
  'blur-bearable': {
    title: 'Motion smears the picture by no more than an obstacle is wide on it',
    subject: 'picture and sight',
    unit: 'px',
    sense: 'at most',
    need: 'picture.pixelsWanted',
    has: 'picture.blur',
    remedy:
      'Shorten the exposure in the settings of the camera, give more light, or turn in wider bends or more slowly.',
  },
  'picture-not-enlarged': {
    title: 'The live picture is no wider than what the camera gives',
    subject: 'picture and sight',
    unit: 'px',
    sense: 'at least',
    need: 'picture.width',
    has: 'picture.widest',
    remedy: 'Set the picture no wider than the camera gives in these proportions: the pixels added show nothing.',
    informs: true,
  },
  'data-within-allowance': {
    title: 'A day of pictures stays within what the uplink may carry',
    subject: 'picture and sight',
    unit: 'GB',
    sense: 'at most',
    need: 'link.dataDay',
    has: 'picture.dataDay',
    remedy:
      'Stop the stream while nobody watches, send smaller pictures or a longer interval, or take a larger allowance. One copy to a relay serves however many watch.',
  },
  'recordings-fit': {
    title: 'The pictures kept fit the space for them',
    subject: 'picture and sight',
    unit: 'GB',
    sense: 'at most',
    need: 'picture.card',
    has: 'picture.keptBytes',
    remedy:
      'Keep pictures for fewer days, keep every few pictures only, or fit a larger card, with some 7 % left for the file system.',
    caution:
      'A camera among people records people: put up a notice, keep pictures no longer than needed, blur or keep none where local rules ask for it.',
  },
});
