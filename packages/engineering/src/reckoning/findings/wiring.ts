/** Findings about wires, contacts and the fuse. */
import { findings } from '../finding.ts';

const SHORT =
  'A shorted pack can weld, burn and throw molten metal: fit the fuse at the pack’s plug before anything else, and never work on live leads.';

export const wiringFindings = findings({
  'wire-insulation': {
    title: 'No wire grows hotter than its insulation bears',
    subject: 'wiring and fuse',
    unit: 'K',
    sense: 'at least',
    need: 'wiring.spareWanted',
    has: 'wiring.insulationSpare',
    remedy:
      'Use a thicker wire or one with silicone insulation on the run named by the explanation, and do not bundle it.',
  },
  'wire-ampacity': {
    title: 'No wire carries more than its handbook current',
    subject: 'wiring and fuse',
    unit: '%',
    sense: 'at most',
    need: 'wiring.wholeUse',
    has: 'wiring.ampacityUse',
    remedy: 'Use a thicker wire on that run.',
  },
  'contact-current': {
    title: 'No connector carries more than its rating',
    subject: 'wiring and fuse',
    unit: '%',
    sense: 'at most',
    need: 'wiring.wholeUse',
    has: 'wiring.contactUse',
    remedy: 'Use a connector of a higher continuous rating on that run: small contacts heat, soften and let go.',
  },
  'wire-drop': {
    title: 'The wiring loses little of the pack’s voltage',
    subject: 'wiring and fuse',
    unit: '%',
    sense: 'at most',
    need: 'wiring.dropMax',
    has: 'wiring.dropShare',
    remedy: 'Shorten or thicken the pack, bridge and motor runs, and use fewer contacts.',
  },
  'fuse-bears-climb': {
    title: 'The fuse bears the steepest climb',
    subject: 'wiring and fuse',
    unit: 'A',
    sense: 'at least',
    need: 'fuse.needed',
    has: 'fuse.rating',
    remedy: 'Fit the next larger made size, if every wire behind it allows that.',
    caution: SHORT,
  },
  'fuse-bears-start': {
    title: 'The fuse bears ten thousand starts',
    subject: 'wiring and fuse',
    unit: '%',
    sense: 'at most',
    need: 'fuse.startShareMax',
    has: 'fuse.startShare',
    remedy: 'Ramp the start in the drive settings, lower the duty ceiling, or fit a fuse of larger melting I²t.',
  },
  'fuse-opens-on-stall': {
    title: 'The fuse opens on a lasting stall',
    subject: 'wiring and fuse',
    unit: 's',
    sense: 'at most',
    need: 'fuse.stallTimeMax',
    has: 'fuse.stallTime',
    remedy:
      'Fit a smaller fuse, or rely on the drive’s own stall cut-out and write that down: the fuse then guards against shorts only.',
    caution: SHORT,
  },
  'fuse-opens-on-short': {
    title: 'A short gives enough current to open the fuse surely',
    subject: 'wiring and fuse',
    unit: '1',
    sense: 'at least',
    need: 'fuse.shortShareWanted',
    has: 'fuse.shortShare',
    remedy:
      'Fit a smaller fuse: this pack cannot blow a large one quickly, and the wires would bear the fault meanwhile.',
    caution: SHORT,
  },
  'fuse-breaks-short': {
    title: 'The fuse can break the pack’s short-circuit current',
    subject: 'wiring and fuse',
    unit: 'A',
    sense: 'at least',
    need: 'fuse.shortCurrent',
    has: 'fuse.breaking',
    remedy:
      'Fit a blade fuse of a breaking capacity above the short-circuit current; small glass fuses cannot break a stiff pack.',
    caution: SHORT,
  },
  'fuse-protects-wire': {
    title: 'On a short the fuse opens before the weakest wire reaches its limit',
    subject: 'wiring and fuse',
    unit: 's',
    sense: 'at least',
    need: 'fuse.shortTime',
    has: 'fuse.wireTime',
    remedy: 'Thicken the thinnest wire behind the fuse, fit a smaller fuse, or give the thin branch a fuse of its own.',
    caution: SHORT,
  },
  'fuse-below-wire': {
    title: 'The fuse is rated no higher than the weakest wire behind it',
    subject: 'wiring and fuse',
    unit: 'A',
    sense: 'at least',
    need: 'fuse.rating',
    has: 'wiring.weakest',
    remedy: 'Fit a smaller fuse, thicken that wire, or give the thin branch a fuse of its own.',
    caution: SHORT,
  },
});
