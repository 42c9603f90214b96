/** Findings about safety: stopping, holding, and what a knock would carry. */
import { findings } from '../finding.ts';

const RUNS_ON =
  'Strangers drive it near people. Local rules decide where it may run at all; keep somebody beside it who can stop it.';

export const safetyFindings = findings({
  'descent-braking': {
    title: 'It brakes well on the steepest descent, on the most slippery ground',
    subject: 'safety',
    unit: 'm/s²',
    sense: 'at least',
    need: 'safe.decelerationLeast',
    has: 'safe.descentDeceleration',
    remedy:
      'Keep it off that slope, close it when wet, drive more axles, put weight over the driven wheels, or fit tyres that grip.',
    caution: RUNS_ON,
  },
  'stops-within-clear-sight': {
    title: 'The guard stops it from the speed cap within what the driver can see to be clear',
    subject: 'safety',
    unit: 'm',
    sense: 'at most',
    need: 'picture.clearObstacle',
    has: 'safe.stopping',
    remedy: 'Lower the speed cap of the place, or see farther: a larger picture, a narrower view, a higher camera.',
    caution: RUNS_ON,
  },
  'energy-near-people': {
    title: 'It carries little energy into a knock',
    subject: 'safety',
    unit: 'J',
    sense: 'at most',
    need: 'near.energy',
    has: 'safe.energy',
    remedy: 'Lower the speed cap: half the speed is a quarter of the energy. Pad the bumper.',
    caution:
      'A knock hurts feet and ankles, and children are smaller than that. Heed local rules; let nobody lie or crawl in its way.',
  },
  'walking-pace': {
    title: 'The speed cap is no more than walking pace',
    subject: 'safety',
    unit: 'm/s',
    sense: 'at most',
    need: 'safe.walkingPace',
    has: 'safe.speedCap',
    remedy: 'Set a speed cap for the place, so that somebody on foot can always step in.',
    informs: true,
    caution: RUNS_ON,
  },
  'slope-creep': {
    title: 'With shorted motors it all but stands on the steepest slope',
    subject: 'safety',
    unit: 'mm/s',
    sense: 'at most',
    need: 'safe.creepAllowed',
    has: 'safe.creep',
    remedy:
      'A shorted motor brakes only while it turns. Park across the slope or against a stop, let the guard push back against the creep, use a bridge without diode drop, or fit a higher gear ratio.',
    caution: 'A vehicle left on a slope creeps on after the link is gone, and with a flat pack as well: chock a wheel.',
  },
  'slope-hold': {
    title: 'Held wheels do not slide on the steepest slope, on the most slippery ground',
    subject: 'safety',
    unit: '°',
    sense: 'at least',
    need: 'want.slope',
    has: 'safe.slideSlope',
    remedy: 'Keep it off that slope when it is wet, drive more axles, or fit tyres that grip.',
    caution: RUNS_ON,
  },
});
