/** The sight limit: no faster than one can stop in what the picture shows. */
import { law } from '../law.ts';

const speed = { symbol: 'v', is: 'speed', unit: 'm/s', from: 0 } as const;
const delay = { symbol: 't', is: 'time from exposure until the brake bites', unit: 's', from: 0 } as const;
const braking = { symbol: 'a', is: 'braking, less what the steepest descent takes', unit: 'm/s²', above: 0 } as const;
const sight = { symbol: 'd', is: 'distance in which what matters can be made out', unit: 'm', from: 0 } as const;
const personSpeed = { symbol: 'w', is: 'speed of a person towards the rover', unit: 'm/s', from: 0 } as const;

const STOPPING = 'AASHTO, A Policy on Geometric Design of Highways and Streets, 6th ed., stopping sight distance';
const SEPARATION = 'ISO/TS 15066:2016, 5.5.4, speed and separation monitoring, from memory';

/** Way driven before the driver's view and hand have any effect. */
export const blindDistance = law(
  {
    id: 'blind-distance',
    title: 'Way driven blind',
    equation: 'b = v · t',
    args: { speed, delay },
    gives: { symbol: 'b', is: 'way driven on the old picture', unit: 'm' },
    validFor: 'steady speed',
    leavesOut: 'braking',
    source: STOPPING,
  },
  ({ speed, delay }) => speed * delay,
);

/** Sight needed to stop before something that stands. */
export const sightNeeded = law(
  {
    id: 'sight-needed',
    title: 'Sight needed to stop',
    equation: 'd = v · t + v² / (2 · a)',
    args: { speed, delay, braking },
    gives: { symbol: 'd', is: 'sight needed', unit: 'm' },
    validFor: 'steady speed until the brake bites, even braking after',
    leavesOut: 'things that move; see the sight needed for a person',
    source: STOPPING,
  },
  ({ speed, delay, braking }) => speed * delay + (speed * speed) / (2 * braking),
);

/** Greatest speed that stops within the sight. */
export const sightLimitSpeed = law(
  {
    id: 'sight-limit-speed',
    title: 'Sight limit',
    equation: 'v = √((a · t)² + 2 · a · d) − a · t',
    args: { sight, delay, braking },
    gives: { symbol: 'v', is: 'greatest speed that stops within the sight', unit: 'm/s' },
    validFor: 'steady speed until the brake bites, even braking after',
    leavesOut: 'things that move; see the limit for a person',
    source: `${STOPPING}, solved for speed`,
  },
  ({ sight, delay, braking }) => {
    const early = braking * delay;
    // The difference of nearly equal numbers is avoided: a long delay would eat the digits.
    return sight === 0 ? 0 : (2 * braking * sight) / (Math.sqrt(early * early + 2 * braking * sight) + early);
  },
);

/** Sight needed to be at rest when a walking person meets the rover. */
export const personSightNeeded = law(
  {
    id: 'person-sight-needed',
    title: 'Sight needed for an approaching person',
    equation: 'd = (v + w) · t + v² / (2 · a) + w · v / a',
    args: { speed, personSpeed, delay, braking },
    gives: { symbol: 'd', is: 'sight needed', unit: 'm' },
    validFor: 'person who walks straight on at a steady pace until the rover rests',
    leavesOut: 'the length of arms and bumpers; a person coming from aside, out of the view',
    source: SEPARATION,
  },
  ({ speed, personSpeed, delay, braking }) =>
    (speed + personSpeed) * delay + (speed * speed) / (2 * braking) + (personSpeed * speed) / braking,
);

/** Greatest speed that is at rest before an approaching person arrives. */
export const personLimitSpeed = law(
  {
    id: 'person-limit-speed',
    title: 'Sight limit for an approaching person',
    equation: 'v = √((a·t + w)² + 2·a·(d − w·t)) − (a·t + w), zero when d ≤ w·t',
    args: { sight, personSpeed, delay, braking },
    gives: { symbol: 'v', is: 'greatest speed; zero when the person arrives within the delay', unit: 'm/s' },
    validFor: 'person who walks straight on at a steady pace until the rover rests',
    leavesOut: 'a person coming from aside, out of the view',
    source: `${SEPARATION}, solved for speed`,
  },
  ({ sight, personSpeed, delay, braking }) => {
    const left = sight - personSpeed * delay;
    if (left <= 0) return 0;
    const early = braking * delay + personSpeed;
    return (2 * braking * left) / (Math.sqrt(early * early + 2 * braking * left) + early);
  },
);

/** Length of the steered arc that lies inside the view and the sight. */
export const steeredSight = law(
  {
    id: 'steered-sight',
    title: 'Sight along a turn',
    equation: 's = R · min(V, 2 · asin(min(1, d / (2 · R))))',
    args: {
      radius: { symbol: 'R', is: 'radius of the turn', unit: 'm', above: 0 },
      view: { symbol: 'V', is: 'horizontal field of view', unit: 'rad', above: 0, to: Math.PI },
      sight,
    },
    gives: { symbol: 's', is: 'length of the path ahead that is in view and made out', unit: 'm' },
    validFor: 'camera looking along the path at its start; bearing of a point of the arc is half its turn',
    leavesOut: 'a camera ahead of the turning axle, the width of the vehicle',
    source: 'Euclid, Elements, III.32, angle between tangent and chord',
  },
  ({ radius, view, sight }) => radius * Math.min(view, 2 * Math.asin(Math.min(1, sight / (2 * radius)))),
);

/** Mean speed of a driver who moves a step, then waits to see. */
export const moveAndWaitSpeed = law(
  {
    id: 'move-and-wait-speed',
    title: 'Mean speed of moving and waiting',
    equation: 'vm = x / (x / v + t + r)',
    args: {
      step: { symbol: 'x', is: 'length of a step', unit: 'm', above: 0 },
      speed: { symbol: 'v', is: 'speed within a step', unit: 'm/s', above: 0 },
      delay: { symbol: 't', is: 'delay round the loop', unit: 's', from: 0 },
      reaction: { symbol: 'r', is: 'time to look and decide', unit: 's', from: 0 },
    },
    gives: { symbol: 'vm', is: 'mean speed', unit: 'm/s' },
    validFor: 'delays of about a second and more, where people drive so of their own accord',
    leavesOut: 'starting and stopping within the step',
    source: 'Ferrell, Remote manipulation with transmission delay, IEEE Trans. Human Factors in Electronics, 1965',
  },
  ({ step, speed, delay, reaction }) => step / (step / speed + delay + reaction),
);
