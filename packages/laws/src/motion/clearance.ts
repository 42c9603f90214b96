/** What touches the ground besides the tyres: overhangs, belly, and springs pressed down by added mass. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { WHEEL_RADIUS, WHEELBASE } from './arguments.ts';
import { insist } from './refuse.ts';

/** Angle above the ground of the line that touches a tyre and passes a hard point outside it. */
function tangentAngle(id: string, radius: number, ahead: number, height: number): number {
  const away = Math.hypot(ahead, height - radius);
  insist(ahead > 0 && away >= radius, id, 'x', ahead, 'a point outside the tyre', 'no line touches the tyre');
  return Math.atan2(height - radius, ahead) + Math.asin(radius / away);
}

/** Approach or departure angle of a hard point beyond a wheel. */
export const overhangAngle = law(
  {
    id: 'overhang-angle',
    title: 'Approach or departure angle',
    equation: 'ψ = atan2(z − r, x) + asin(r / √(x² + (z − r)²))',
    args: {
      radius: WHEEL_RADIUS,
      ahead: { symbol: 'x', is: 'hard point beyond the wheel centre', unit: 'm', above: 0 },
      height: { symbol: 'z', is: 'hard point above the ground', unit: 'm', from: 0 },
    },
    gives: { symbol: 'ψ', is: 'angle', unit: 'rad' },
    validFor: 'a hard point outside the tyre circle',
    leavesOut: 'springs that give when the nose meets the ramp',
    source: 'ISO 612:1978, approach and departure angle',
  },
  ({ radius, ahead, height }) => tangentAngle('overhang-angle', radius, ahead, height),
);

/** Sharpest ridge the vehicle straddles without touching a belly point. */
export const breakoverAngle = law(
  {
    id: 'breakover-angle',
    title: 'Breakover angle',
    equation: 'ψ = Σ over both axles of atan2(c − r, x) + asin(r / √(x² + (c − r)²)), x = e and L − e',
    args: {
      radius: WHEEL_RADIUS,
      wheelbase: WHEELBASE,
      behindFront: { symbol: 'e', is: 'belly point behind the front axle', unit: 'm', above: 0 },
      clearance: { symbol: 'c', is: 'belly point above the ground', unit: 'm', from: 0 },
    },
    gives: { symbol: 'ψ', is: 'angle between the two ramp faces and a straight line', unit: 'rad' },
    validFor: 'equal wheels, a belly point between the axles outside both tyres',
    leavesOut: 'springs',
    source: 'ISO 612:1978, ramp angle; SAE J689, ramp breakover angle',
  },
  ({ radius, wheelbase, behindFront, clearance }) =>
    tangentAngle('breakover-angle', radius, behindFront, clearance) +
    tangentAngle('breakover-angle', radius, wheelbase - behindFront, clearance),
);

/** Clearance left under the middle of the belly on top of a round crest. */
export const crestClearance = law(
  {
    id: 'crest-clearance',
    title: 'Clearance over a round crest',
    equation: 'g = √((R + r)² − (L / 2)²) − (r − c) − R',
    args: {
      crest: { symbol: 'R', is: 'radius of the crest', unit: 'm', above: 0 },
      radius: WHEEL_RADIUS,
      wheelbase: WHEELBASE,
      clearance: { symbol: 'c', is: 'belly above level ground, half way between the axles', unit: 'm', from: 0 },
    },
    gives: { symbol: 'g', is: 'gap left; negative when it grounds', unit: 'm' },
    validFor: 'equal wheels, both on the crest',
    leavesOut: 'springs, axles between the outer two',
    source: 'chord geometry of the axle line, ISO 612:1978, ground clearance',
  },
  ({ crest, radius, wheelbase, clearance }) => {
    insist(
      wheelbase < 2 * (crest + radius),
      'crest-clearance',
      'L',
      wheelbase,
      'below 2 · (R + r)',
      'wheels beyond it',
    );
    return Math.sqrt((crest + radius) ** 2 - (wheelbase / 2) ** 2) - (radius - clearance) - crest;
  },
);

/** How far added mass presses the springs down, and the clearance that goes with it. */
export const springTravel = law(
  {
    id: 'spring-travel',
    title: 'Spring travel used by added mass',
    equation: 'Δz = Δm · g / (n · k)',
    args: {
      added: { symbol: 'Δm', is: 'mass carried by these springs', unit: 'kg', from: 0 },
      springs: { symbol: 'n', is: 'number of springs that share it', unit: '1', from: 1, to: 24 },
      rate: { symbol: 'k', is: 'rate of one spring, at the wheel', unit: 'N/m', above: 0 },
    },
    gives: { symbol: 'Δz', is: 'travel used', unit: 'm' },
    validFor: 'springs that share the mass evenly and have not bottomed out',
    leavesOut: 'preload, friction, the bump stop',
    source: "Hooke's law; Shigley, Mechanical Engineering Design, chapter 4",
  },
  ({ added, springs, rate }) => (added * GRAVITY) / (springs * rate),
);

/** Rate of a spring as the wheel feels it through the suspension lever. */
export const wheelRate = law(
  {
    id: 'wheel-rate',
    title: 'Wheel rate',
    equation: 'k_w = k · i²',
    args: {
      rate: { symbol: 'k', is: 'rate of the spring', unit: 'N/m', above: 0 },
      motionRatio: { symbol: 'i', is: 'spring travel over wheel travel', unit: '1', above: 0, to: 2 },
    },
    gives: { symbol: 'k_w', is: 'rate at the wheel', unit: 'N/m' },
    validFor: 'small travel, where the lever ratio stays the same',
    leavesOut: 'give of the tyre',
    source: 'Milliken & Milliken, Race Car Vehicle Dynamics, chapter 16, installation ratio',
  },
  ({ rate, motionRatio }) => rate * motionRatio ** 2,
);

/** Rate of a helical spring from its wire and coil. */
export const helicalSpringRate = law(
  {
    id: 'helical-spring-rate',
    title: 'Rate of a helical spring',
    equation: 'k = d⁴ · G / (8 · D³ · N)',
    args: {
      wire: { symbol: 'd', is: 'wire diameter', unit: 'm', above: 0 },
      shear: { symbol: 'G', is: 'shear modulus of the wire', unit: 'Pa', above: 0 },
      coil: { symbol: 'D', is: 'mean coil diameter', unit: 'm', above: 0 },
      turns: { symbol: 'N', is: 'active turns', unit: '1', above: 0 },
    },
    gives: { symbol: 'k', is: 'spring rate', unit: 'N/m' },
    validFor: 'round wire, coil at least four wires wide',
    leavesOut: 'coils touching, friction at the seats',
    source: 'Shigley, Mechanical Engineering Design, equation (10-9)',
  },
  ({ wire, shear, coil, turns }) => (wire ** 4 * shear) / (8 * coil ** 3 * turns),
);

/** Frequency at which the body bounces on its springs, which is also how the picture shakes. */
export const bounceFrequency = law(
  {
    id: 'bounce-frequency',
    title: 'Bounce frequency from the static sag',
    equation: 'f = √(g / δ) / (2π)',
    args: { sag: { symbol: 'δ', is: 'sag of the springs under the body alone', unit: 'm', above: 0 } },
    gives: { symbol: 'f', is: 'frequency', unit: 'Hz' },
    validFor: 'straight spring characteristic, little damping',
    leavesOut: 'pitch, tyres, damping',
    source: "Harris' Shock and Vibration Handbook, natural frequency from static deflection",
  },
  ({ sag }) => Math.sqrt(GRAVITY / sag) / (2 * Math.PI),
);
