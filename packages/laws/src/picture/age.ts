/** How old the driver's view is, and what a loop with that delay can bear. */
import { law } from '../law.ts';

const part = <S extends string, I extends string>(symbol: S, is: I) => ({ symbol, is, unit: 's', from: 0 }) as const;

/** Age of a picture when it is painted, as the sum of its parts. */
export const pictureAge = law(
  {
    id: 'picture-age',
    title: 'Age of a picture when painted',
    equation: 'D = te + tc + ta + tp + tr + td + ts',
    args: {
      exposure: part('te', 'exposure and read-out'),
      encode: part('tc', 'encoding'),
      air: part('ta', 'sending on the thinnest link, queue included'),
      propagation: part('tp', 'propagation through the network'),
      relay: part('tr', 'relay'),
      decode: part('td', 'decoding'),
      screen: part('ts', 'wait for the screen and its lag'),
    },
    gives: { symbol: 'D', is: 'age of the picture when painted', unit: 's' },
    validFor: 'one picture in flight at a time',
    leavesOut: 'variation of each part; sums of careful values are careful',
    source: 'common practice, no source; sum of the stages a picture passes',
  },
  ({ exposure, encode, air, propagation, relay, decode, screen }) =>
    exposure + encode + air + propagation + relay + decode + screen,
);

const painted = part('D', 'age of a picture when painted');
const interval = { symbol: 'T', is: 'interval between pictures', unit: 's', above: 0 } as const;

/** Mean age of what is on the screen. */
export const shownAgeMean = law(
  {
    id: 'shown-age-mean',
    title: 'Mean age of the picture on the screen',
    equation: 'A = D + T / 2',
    args: { painted, interval },
    gives: { symbol: 'A', is: 'mean age of the picture on the screen', unit: 's' },
    validFor: 'even interval, no growing queue',
    leavesOut: 'lost pictures',
    source: 'Kaul, Yates and Gruteser, Real-time status: how often should one update?, INFOCOM 2012, D/D/1',
  },
  ({ painted, interval }) => painted + interval / 2,
);

/** Greatest age of what is on the screen. */
export const shownAgeMost = law(
  {
    id: 'shown-age-most',
    title: 'Greatest age of the picture on the screen',
    equation: 'A = D + T',
    args: { painted, interval },
    gives: { symbol: 'A', is: 'age just before the next picture is painted', unit: 's' },
    validFor: 'even interval, no growing queue',
    leavesOut: 'lost pictures',
    source: 'Kaul, Yates and Gruteser, Real-time status: how often should one update?, INFOCOM 2012, D/D/1',
  },
  ({ painted, interval }) => painted + interval,
);

/** Time from exposure until the brake bites, for the steady sight limit. */
export const sightDelay = law(
  {
    id: 'sight-delay',
    title: 'Time from exposure until the brake bites',
    equation: 't = D + T + r + tu + tk',
    args: {
      painted,
      wait: part('T', 'wait for the next picture'),
      reaction: part('r', 'reaction of the driver'),
      command: part('tu', 'way of the command to the vehicle'),
      actuation: part('tk', 'time until the brake bites'),
    },
    gives: { symbol: 't', is: 'time from exposure until the brake bites', unit: 's' },
    validFor: 'steady driving; what matters may come into view just after an exposure',
    leavesOut: 'outages, which the guard bounds apart',
    source: 'common practice, no source; sum of the stages of seeing and acting',
  },
  ({ painted, wait, reaction, command, actuation }) => painted + wait + reaction + command + actuation,
);

const loopDelay = { symbol: 't', is: 'delay round the loop', unit: 's', above: 0 } as const;
const HAYES =
  'Hayes, Roots of the transcendental equation associated with a certain difference-differential equation, 1950';

/** Greatest correction rate of a delayed loop that does not overshoot. */
export const smoothLoopGain = law(
  {
    id: 'smooth-loop-gain',
    title: 'Greatest correction rate without overshoot',
    equation: 'k = 1 / (e · t)',
    args: { delay: loopDelay },
    gives: { symbol: 'k', is: 'correction rate', unit: '1/s' },
    validFor: 'steering that corrects in proportion to an error seen late',
    leavesOut: 'prediction by the driver, inertia of the vehicle',
    source: HAYES,
  },
  ({ delay }) => 1 / (Math.E * delay),
);

/** Correction rate at which a delayed loop begins to swing ever wider. */
export const stableLoopGain = law(
  {
    id: 'stable-loop-gain',
    title: 'Correction rate at which the loop becomes unstable',
    equation: 'k = π / (2 · t)',
    args: { delay: loopDelay },
    gives: { symbol: 'k', is: 'correction rate', unit: '1/s' },
    validFor: 'steering that corrects in proportion to an error seen late',
    leavesOut: 'prediction by the driver, inertia of the vehicle',
    source: HAYES,
  },
  ({ delay }) => Math.PI / (2 * delay),
);

/** Reaction times of drivers [s]; a finger on a key skips the move of the foot, a remote driver adds doubt. */
export const REACTION_TIMES = [
  { when: 'simple visual reaction, mean', time: 0.231, source: 'Woods et al., Front. Hum. Neurosci. 9:131, 2015' },
  { when: 'fully expected', time: 0.7, source: 'Green, Transportation Human Factors 2(3), 2000' },
  { when: 'unexpected but common', time: 1.25, source: 'Green, Transportation Human Factors 2(3), 2000' },
  { when: 'surprise', time: 1.5, source: 'Green, Transportation Human Factors 2(3), 2000' },
  { when: 'unexpected, 95th percentile', time: 2.0, source: 'Fambro et al., Transp. Res. Rec. 1628, 1998' },
  { when: 'road design, United States', time: 2.5, source: 'Green, Transportation Human Factors 2(3), 2000' },
] as const;

/** Speeds of people on foot [m/s]. */
export const WALKING_SPEEDS = [
  { who: 'over 60, slowest sixth', speed: 0.92, source: 'TCRP-NCHRP, Improving pedestrian safety, 2005' },
  { who: 'young, slowest sixth', speed: 1.15, source: 'TCRP-NCHRP, Improving pedestrian safety, 2005' },
  { who: 'signal timing', speed: 1.2, source: 'older norm of signal timing, quoted in studies of walking speed' },
  {
    who: 'approach to a machine',
    speed: 1.6,
    source: 'ISO 13855:2010, approach speed of a walking person, from memory',
  },
] as const;
