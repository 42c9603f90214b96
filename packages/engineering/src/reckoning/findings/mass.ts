/** Findings about mass and balance. */
import type { Layout } from '../../dossier/resolve.ts';
import { findings } from '../finding.ts';

const partlyDriven = ({ axles }: Layout) => axles.some(({ driven }) => !driven);

export const massFindings = findings({
  'mass-ratio': {
    title: 'It weighs little more than the toy did',
    subject: 'mass and balance',
    unit: '1',
    sense: 'at most',
    need: 'mass.ratioMax',
    has: 'mass.ratio',
    remedy:
      'Added mass costs thrice: rolling, climbing, springs. Take out what the toy no longer needs, and weigh the pack against the run time it buys.',
    informs: true,
  },
  'axle-load-growth': {
    title: 'No axle carries much more than in the toy as it came',
    subject: 'mass and balance',
    unit: '1',
    sense: 'at most',
    need: 'balance.growthMax',
    has: 'balance.loadGrowth',
    remedy: 'Move the pack, the heaviest part, towards the axle that has gained least, or fit a lighter one.',
  },
  'crest-load-growth': {
    title: 'On a crest no inner axle carries more than twice its usual load',
    subject: 'mass and balance',
    unit: '1',
    sense: 'at most',
    need: 'balance.crestGrowthMax',
    has: 'balance.crestGrowth',
    remedy: 'Softer springs on the inner axles share the load better; over high edges drive one wheel at a time.',
    informs: true,
  },
  'driven-weight': {
    title: 'The driven axles carry the weight that the steepest slope asks of them',
    subject: 'mass and balance',
    unit: '%',
    sense: 'at least',
    need: 'balance.drivenNeeded',
    has: 'balance.drivenShare',
    when: partlyDriven,
    remedy: 'Put the pack over the driven axle.',
    informs: true,
  },
  'spring-travel': {
    title: 'The springs stay off their stops under the added mass',
    subject: 'mass and balance',
    unit: 'mm',
    sense: 'at least',
    need: 'balance.springLeftNeeded',
    has: 'balance.springLeft',
    remedy: 'Fit stiffer springs or spacers under them, or move mass to the axle whose springs have travel left.',
  },
  'ground-clearance': {
    title: 'The highest step passes under the belly',
    subject: 'mass and balance',
    unit: 'mm',
    sense: 'at least',
    need: 'want.step',
    has: 'balance.clearance',
    remedy: 'Raise the body with spacers or stiffer springs, fit larger wheels, move what hangs lowest, or lay ramps.',
  },
});
