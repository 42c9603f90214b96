/** What the ground asks for and what it gives: resistance to rolling, pull of the slope, grip, air. */
import { GRAVITY } from '../constants.ts';
import { law } from '../law.ts';
import { ADHESION, MASS, MASS_FACTOR, ROLLING, SLOPE, WHEEL_RADIUS } from './arguments.ts';

/** Force that rolling costs on firm ground. */
export const rollingResistance = law(
  {
    id: 'rolling-resistance',
    title: 'Rolling resistance',
    equation: 'F = f · m · g · cos θ',
    args: { rolling: ROLLING, mass: MASS, slope: SLOPE },
    gives: { symbol: 'F', is: 'force against the motion', unit: 'N' },
    validFor: 'firm ground and speeds below about 5 m/s',
    leavesOut: 'growth of f with speed, with smaller wheels and on soft ground',
    source: 'Wong, Theory of Ground Vehicles, chapter 1',
  },
  ({ rolling, mass, slope }) => rolling * mass * GRAVITY * Math.cos(slope),
);

/** Part of the weight that pulls downhill. */
export const gradeForce = law(
  {
    id: 'grade-force',
    title: 'Pull of the slope',
    equation: 'F = m · g · sin θ',
    args: { mass: MASS, slope: SLOPE },
    gives: { symbol: 'F', is: 'force against the motion, negative downhill', unit: 'N' },
    validFor: 'any even slope',
    leavesOut: 'unevenness, springs',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2',
  },
  ({ mass, slope }) => mass * GRAVITY * Math.sin(slope),
);

/** Greatest pull the driven wheels can put on the ground. */
export const tractionLimit = law(
  {
    id: 'traction-limit',
    title: 'Traction limit',
    equation: 'F = μ · m_d · g · cos θ',
    args: {
      adhesion: ADHESION,
      drivenMass: { symbol: 'm_d', is: 'part of the mass that rests on driven wheels', unit: 'kg', above: 0 },
      slope: SLOPE,
    },
    gives: { symbol: 'F', is: 'greatest pull of the driven wheels', unit: 'N' },
    validFor: 'firm ground, dry friction',
    leavesOut: 'load shift between the axles: see the axle loads',
    source: 'Wong, Theory of Ground Vehicles, chapter 1, road adhesion',
  },
  ({ adhesion, drivenMass, slope }) => adhesion * drivenMass * GRAVITY * Math.cos(slope),
);

/** Force that steady driving needs: rolling and slope together. */
export const roadLoad = law(
  {
    id: 'road-load',
    title: 'Road load at steady speed',
    equation: 'F = m · g · (f · cos θ + sin θ)',
    args: { rolling: ROLLING, mass: MASS, slope: SLOPE },
    gives: { symbol: 'F', is: 'pull needed at the wheels, negative when the slope drives', unit: 'N' },
    validFor: 'firm ground, steady speed below about 5 m/s',
    leavesOut: 'air, acceleration, turning',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, road loads',
  },
  ({ rolling, mass, slope }) => mass * GRAVITY * (rolling * Math.cos(slope) + Math.sin(slope)),
);

/** Force at the wheels for the road, the air and the acceleration asked for. */
export const tractiveEffort = law(
  {
    id: 'tractive-effort',
    title: 'Total tractive effort',
    equation: 'F = F_r + F_w + λ · m · a',
    args: {
      road: { symbol: 'F_r', is: 'road load', unit: 'N' },
      wind: { symbol: 'F_w', is: 'force of the air against the motion', unit: 'N' },
      massFactor: MASS_FACTOR,
      mass: MASS,
      acceleration: { symbol: 'a', is: 'acceleration forward', unit: 'm/s²' },
    },
    gives: { symbol: 'F', is: 'pull needed at the wheels', unit: 'N' },
    validFor: 'straight driving',
    leavesOut: 'turning resistance, losses inside the gears',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2',
  },
  ({ road, wind, massFactor, mass, acceleration }) => road + wind + massFactor * mass * acceleration,
);

/** How much heavier the vehicle feels to its motors because wheels and rotors must be spun up too. */
export const massFactor = law(
  {
    id: 'mass-factor',
    title: 'Mass factor of turning parts',
    equation: 'λ = 1 + (J_w + J_m · N²) / (m · r²)',
    args: {
      wheels: { symbol: 'J_w', is: 'moment of inertia of all wheels together', unit: 'kg·m²', from: 0 },
      rotors: { symbol: 'J_m', is: 'moment of inertia of all motor rotors in mesh together', unit: 'kg·m²', from: 0 },
      ratio: { symbol: 'N', is: 'gear ratio, motor turns per wheel turn', unit: '1', above: 0 },
      mass: MASS,
      radius: WHEEL_RADIUS,
    },
    gives: { symbol: 'λ', is: 'mass factor', unit: '1' },
    validFor: 'wheels that roll without slip',
    leavesOut: 'inertia of the gears between motor and wheel',
    source: 'Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, effective inertia',
  },
  ({ wheels, rotors, ratio, mass, radius }) => 1 + (wheels + rotors * ratio ** 2) / (mass * radius ** 2),
);

/** Force of moving air on a body. */
export const airForce = law(
  {
    id: 'air-force',
    title: 'Force of the air',
    equation: 'F = ½ · ρ · c_w · A · v²',
    args: {
      density: { symbol: 'ρ', is: 'density of the air', unit: 'kg/m³', from: 0.9, to: 1.5 },
      drag: { symbol: 'c_w', is: 'drag coefficient', unit: '1', above: 0, to: 2.5 },
      area: { symbol: 'A', is: 'area seen by the wind', unit: 'm²', above: 0 },
      speed: { symbol: 'v', is: 'speed of the air past the body', unit: 'm/s', from: 0, to: 60 },
    },
    gives: { symbol: 'F', is: 'force along the wind', unit: 'N' },
    validFor: 'blunt bodies in a steady wind',
    leavesOut: 'gusts, lift, the slower air close to the ground',
    source: 'EN 1991-1-4, equation (4.10), basic velocity pressure',
  },
  ({ density, drag, area, speed }) => 0.5 * density * drag * area * speed ** 2,
);
