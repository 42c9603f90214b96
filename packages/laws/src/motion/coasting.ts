/** Measuring resistance and distance with a tape and a watch. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { MASS, MASS_FACTOR, SLOPE } from './arguments.ts';
import { insist } from './refuse.ts';

const CONSTANT = { symbol: 'A', is: 'deceleration at rest', unit: 'm/s²', above: 0 } as const;
const QUADRATIC = { symbol: 'C', is: 'growth of the deceleration with v²', unit: '1/m', above: 0 } as const;
const FROM = { symbol: 'v_1', is: 'speed at the start', unit: 'm/s', above: 0 } as const;
const TO = { symbol: 'v_2', is: 'speed at the end', unit: 'm/s', from: 0 } as const;
const COAST = 'SAE J1263, Road load measurement using coastdown techniques, two-term force';

/** Deceleration of a coast to rest, from the distance and the time alone. */
export const coastDeceleration = law(
  {
    id: 'coast-deceleration',
    title: 'Deceleration of a coast to rest',
    equation: 'd = 2 · s / t²',
    args: {
      distance: { symbol: 's', is: 'distance rolled to rest', unit: 'm', above: 0 },
      time: { symbol: 't', is: 'time rolled to rest', unit: 's', above: 0 },
    },
    gives: { symbol: 'd', is: 'deceleration', unit: 'm/s²' },
    validFor: 'an even deceleration on the level; take the mean of both directions',
    leavesOut: 'air, a motor left in mesh',
    source: 'uniform deceleration, Halliday & Resnick, Fundamentals of Physics, chapter 2',
  },
  ({ distance, time }) => (2 * distance) / time ** 2,
);

/** Rolling resistance coefficient from a deceleration measured on the level. */
export const coastRolling = law(
  {
    id: 'coast-rolling',
    title: 'Rolling resistance from a coast-down',
    equation: 'f = λ · d / g',
    args: {
      deceleration: { symbol: 'd', is: 'deceleration measured', unit: 'm/s²', above: 0 },
      massFactor: MASS_FACTOR,
    },
    gives: { symbol: 'f', is: 'rolling resistance coefficient', unit: '1' },
    validFor: 'level floor, motors unplugged and out of mesh',
    leavesOut: 'gear and bearing drag: with gears in mesh it measures them as well',
    source: COAST,
  },
  ({ deceleration, massFactor }) => (massFactor * deceleration) / GRAVITY,
);

/** Time of a coast between two speeds when the air counts too. */
export const coastTime = law(
  {
    id: 'coast-time',
    title: 'Time of a coast-down',
    equation: 't = (atan(v_1 · √(C / A)) − atan(v_2 · √(C / A))) / √(A · C)',
    args: { from: FROM, to: TO, constant: CONSTANT, quadratic: QUADRATIC },
    gives: { symbol: 't', is: 'time', unit: 's' },
    validFor: 'deceleration A + C · v²',
    leavesOut: 'a term linear in speed, such as that of a shorted motor',
    source: COAST,
  },
  ({ from, to, constant, quadratic }) => {
    const q = Math.sqrt(quadratic / constant);
    return (Math.atan(from * q) - Math.atan(to * q)) / Math.sqrt(constant * quadratic);
  },
);

/** Distance of a coast between two speeds when the air counts too. */
export const coastDistance = law(
  {
    id: 'coast-distance',
    title: 'Distance of a coast-down',
    equation: 's = ln((A + C · v_1²) / (A + C · v_2²)) / (2 · C)',
    args: { from: FROM, to: TO, constant: CONSTANT, quadratic: QUADRATIC },
    gives: { symbol: 's', is: 'distance', unit: 'm' },
    validFor: 'deceleration A + C · v²',
    leavesOut: 'a term linear in speed, such as that of a shorted motor',
    source: COAST,
  },
  ({ from, to, constant, quadratic }) =>
    Math.log((constant + quadratic * from ** 2) / (constant + quadratic * to ** 2)) / (2 * quadratic),
);

/** Rolling resistance coefficient from a run down a ramp and out onto the level. */
export const rampRolling = law(
  {
    id: 'ramp-rolling',
    title: 'Rolling resistance from a ramp run-out',
    equation: 'f = z / (√(l² − z²) + s)',
    args: {
      drop: { symbol: 'z', is: 'drop of the ramp', unit: 'm', above: 0 },
      ramp: { symbol: 'l', is: 'length of the ramp along its face, above the drop', unit: 'm', above: 0 },
      run: { symbol: 's', is: 'distance rolled on the level', unit: 'm', from: 0 },
    },
    gives: { symbol: 'f', is: 'rolling resistance coefficient', unit: '1' },
    validFor: 'ramp and floor of one surface, a smooth foot, released from rest',
    leavesOut: 'air, the knock at the foot of the ramp',
    source: 'energy: the drop pays for the rolling over the whole horizontal way',
  },
  ({ drop, ramp, run }) => {
    insist(drop < ramp, 'ramp-rolling', 'z', drop, `below l = ${ramp} m`, 'a ramp drops less than its length');
    return drop / (Math.sqrt(ramp ** 2 - drop ** 2) + run);
  },
);

/** Rolling resistance coefficient from pulling the vehicle up and down one slope with a spring scale. */
export const pullRolling = law(
  {
    id: 'pull-rolling',
    title: 'Rolling resistance from pulls up and down a slope',
    equation: 'f = (F_u + F_d) / (2 · m · g · cos θ)',
    args: {
      up: { symbol: 'F_u', is: 'steady pull uphill', unit: 'N' },
      down: { symbol: 'F_d', is: 'steady pull downhill, negative when it must be held back', unit: 'N' },
      mass: MASS,
      slope: SLOPE,
    },
    gives: { symbol: 'f', is: 'rolling resistance coefficient', unit: '1' },
    validFor: 'steady speed, gears free, both pulls along the slope',
    leavesOut: 'stiction',
    source: 'half the sum of the two pulls is the rolling resistance; Wong, chapter 1',
  },
  ({ up, down, mass, slope }) => (up + down) / (2 * mass * GRAVITY * Math.cos(slope)),
);

/** Radius at which a wheel truly rolls, from a run of several turns. */
export const rollingRadius = law(
  {
    id: 'rolling-radius',
    title: 'Effective rolling radius',
    equation: 'r_e = s / (2π · n)',
    args: {
      distance: { symbol: 's', is: 'distance run', unit: 'm', above: 0 },
      turns: { symbol: 'n', is: 'turns of the wheel, ten or more', unit: '1', above: 0 },
    },
    gives: { symbol: 'r_e', is: 'effective rolling radius', unit: 'm' },
    validFor: 'straight, under load, towed rather than driven',
    leavesOut: 'slip when driven',
    source: 'ISO 8855, effective rolling radius',
  },
  ({ distance, turns }) => distance / (2 * Math.PI * turns),
);
