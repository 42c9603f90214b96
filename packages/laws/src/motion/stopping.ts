/** Stopping: how far it runs on, how fast it may go for what can be seen, what it carries into a knock. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { ADHESION, DECELERATION, MASS, MASS_FACTOR, ROLLING, SLOPE, SPEED } from './arguments.ts';
import { insist } from './refuse.ts';

const REACTION = {
  symbol: 't',
  is: 'time from the event to the brake biting: picture, person, command, actuator',
  unit: 's',
  from: 0,
} as const;
const SIGHT = { symbol: 'S', is: 'sight distance', unit: 'm', from: 0 } as const;
const AASHTO = 'AASHTO, A Policy on Geometric Design of Highways and Streets, 6th ed. 2011, stopping sight distance';

/** Distance from the brake biting to rest. */
export const brakingDistance = law(
  {
    id: 'braking-distance',
    title: 'Braking distance',
    equation: 's = v² / (2 · d)',
    args: { speed: SPEED, deceleration: DECELERATION },
    gives: { symbol: 's', is: 'distance', unit: 'm' },
    validFor: 'an even deceleration',
    leavesOut: 'a brake that fades towards rest, as a shorted motor does',
    source: AASHTO,
  },
  ({ speed, deceleration }) => speed ** 2 / (2 * deceleration),
);

/** Distance from the event to rest. */
export const stoppingDistance = law(
  {
    id: 'stopping-distance',
    title: 'Stopping distance with reaction',
    equation: 's = v · t + v² / (2 · d)',
    args: { speed: SPEED, reaction: REACTION, deceleration: DECELERATION },
    gives: { symbol: 's', is: 'distance', unit: 'm' },
    validFor: 'an even deceleration; t includes the age of the picture when driven through a camera',
    leavesOut: 'drive still on during the delay',
    source: AASHTO,
  },
  ({ speed, reaction, deceleration }) => speed * reaction + speed ** 2 / (2 * deceleration),
);

/** Greatest speed that stops within what can be seen. */
export const sightSpeed = law(
  {
    id: 'sight-speed',
    title: 'Greatest speed for a sight distance',
    equation: 'v = √(d² · t² + 2 · d · S) − d · t',
    args: { sight: SIGHT, reaction: REACTION, deceleration: DECELERATION },
    gives: { symbol: 'v', is: 'speed', unit: 'm/s' },
    validFor: 'an obstacle that stands still',
    leavesOut: 'anything that moves towards the vehicle',
    source: `${AASHTO}, solved for the speed`,
  },
  ({ sight, reaction, deceleration }) =>
    Math.sqrt((deceleration * reaction) ** 2 + 2 * deceleration * sight) - deceleration * reaction,
);

/** Greatest speed that stops before a person who walks towards the vehicle. */
export const meetingSpeed = law(
  {
    id: 'meeting-speed',
    title: 'Greatest speed before somebody who approaches',
    equation: 'v = √((d · t + w)² + 2 · d · (S − w · t)) − (d · t + w)',
    args: {
      sight: SIGHT,
      reaction: REACTION,
      deceleration: DECELERATION,
      walking: { symbol: 'w', is: 'speed of the person', unit: 'm/s', from: 0 },
    },
    gives: { symbol: 'v', is: 'speed', unit: 'm/s' },
    validFor: 'a person seen farther off than he walks during the reaction, S ≥ w · t',
    leavesOut: 'a person who runs or steps out from the side',
    source: 'both ways until the vehicle rests, (v + w) · t + v² / (2 · d) + w · v / d = S, solved for the speed',
  },
  ({ sight, reaction, deceleration, walking }) => {
    const left = sight - walking * reaction;
    insist(left >= 0, 'meeting-speed', 'S', sight, `from w · t = ${walking * reaction} m`, 'too near to stop for');
    const drift = deceleration * reaction + walking;
    return Math.sqrt(drift ** 2 + 2 * deceleration * left) - drift;
  },
);

/** Deceleration that the grip of the ground allows with every wheel braked. */
export const gripDeceleration = law(
  {
    id: 'grip-deceleration',
    title: 'Deceleration limited by grip',
    equation: 'd = g · (μ · cos θ + sin θ)',
    args: { adhesion: ADHESION, slope: SLOPE },
    gives: { symbol: 'd', is: 'deceleration; negative when it slides on downhill', unit: 'm/s²' },
    validFor: 'all wheels braked; a toy with motor brakes rarely reaches it',
    leavesOut: 'load shift when only one axle brakes',
    source: `${AASHTO}, effect of grade`,
  },
  ({ adhesion, slope }) => GRAVITY * (adhesion * Math.cos(slope) + Math.sin(slope)),
);

/** Deceleration from a known braking force at the wheels, such as that of shorted motors. */
export const forceDeceleration = law(
  {
    id: 'force-deceleration',
    title: 'Deceleration from a braking force',
    equation: 'd = (F / m + g · (f · cos θ + sin θ)) / λ',
    args: {
      force: { symbol: 'F', is: 'braking force at the wheels', unit: 'N', from: 0 },
      mass: MASS,
      rolling: ROLLING,
      slope: SLOPE,
      massFactor: MASS_FACTOR,
    },
    gives: { symbol: 'd', is: 'deceleration; negative when the slope wins', unit: 'm/s²' },
    validFor: 'a force below the grip of the braked wheels',
    leavesOut: 'air; the force of a shorted motor falls with speed, so take it at the speed meant',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 3, braking performance',
  },
  ({ force, mass, rolling, slope, massFactor }) =>
    (force / mass + GRAVITY * (rolling * Math.cos(slope) + Math.sin(slope))) / massFactor,
);

/** Energy of motion: what a knock has to swallow. */
export const kineticEnergy = law(
  {
    id: 'kinetic-energy',
    title: 'Energy of motion',
    equation: 'E = m · v² / 2',
    args: { mass: MASS, speed: SPEED },
    gives: { symbol: 'E', is: 'energy', unit: 'J' },
    validFor: 'everyday speeds',
    leavesOut: 'energy of the turning wheels',
    source: 'Newtonian mechanics',
  },
  ({ mass, speed }) => (mass * speed ** 2) / 2,
);

/** Energy at the wheels for one stretch of a route, nothing won back downhill. */
export const stretchEnergy = law(
  {
    id: 'stretch-energy',
    title: 'Wheel energy of a stretch of road',
    equation: 'E = max(0, m · g · (f · x + z))',
    args: {
      mass: MASS,
      rolling: ROLLING,
      run: { symbol: 'x', is: 'horizontal length of the stretch', unit: 'm', from: 0 },
      rise: { symbol: 'z', is: 'rise of the stretch, negative downhill', unit: 'm' },
    },
    gives: { symbol: 'E', is: 'energy at the wheels', unit: 'J' },
    validFor: 'a stretch of one slope, driven slowly; downhill energy is braked away',
    leavesOut: 'air, turning, losses before the wheels, the electronics',
    source: 'Wong, Theory of Ground Vehicles, chapter 3: f · W · cos θ along the slope is f · W along the level',
  },
  ({ mass, rolling, run, rise }) => Math.max(0, mass * GRAVITY * (rolling * run + rise)),
);
