/** Gear trains: ratio, losses, inertia, and what reaches the ground. */
import { law } from '../law.ts';

const RATIO = { symbol: 'N', is: 'motor speed over output speed', unit: '1', above: 0 } as const;
const EFFICIENCY = { symbol: 'η', is: 'efficiency of the whole train', unit: '1', above: 0, to: 1 } as const;
const TORQUE = { symbol: 'T', is: 'motor shaft torque', unit: 'N·m' } as const;
const RADIUS = { symbol: 'r', is: 'rolling radius of the wheel', unit: 'm', above: 0 } as const;
const TEXT = 'kinematics and power balance of gear trains, any machine-elements text';

/** Ratio of one pair of wheels. */
export const gearStageRatio = law(
  {
    id: 'gear-stage-ratio',
    title: 'Ratio of one gear stage',
    equation: 'N = z2/z1',
    args: {
      drivenTeeth: { symbol: 'z2', is: 'teeth of the driven wheel', unit: '1', from: 1 },
      driverTeeth: { symbol: 'z1', is: 'teeth of the driving pinion, or starts of a worm', unit: '1', from: 1 },
    },
    gives: { symbol: 'N', is: 'speed in over speed out', unit: '1' },
    validFor: 'spur, bevel, crown and worm pairs; the ratios of stages multiply',
    leavesOut: 'planetary stages, belts that slip',
    source: TEXT,
  },
  ({ drivenTeeth, driverTeeth }) => drivenTeeth / driverTeeth,
);

/** Efficiency of several like stages. */
export const gearTrainEfficiency = law(
  {
    id: 'gear-train-efficiency',
    title: 'Efficiency of a gear train',
    equation: 'η = ηs^m',
    args: {
      stageEfficiency: { symbol: 'ηs', is: 'efficiency of one stage', unit: '1', above: 0, to: 1 },
      stages: { symbol: 'm', is: 'number of stages', unit: '1', from: 0 },
    },
    gives: { symbol: 'η', is: 'efficiency of the train', unit: '1' },
    validFor: 'near rated load; at light load a train is worse than its stages multiply to',
    leavesOut: 'churning grease, bearings of the axle',
    source: TEXT,
  },
  ({ stageEfficiency, stages }) => stageEfficiency ** stages,
);

/** Efficiency of a train driven from its output side: zero means it holds by itself. */
export const backDriveEfficiency = law(
  {
    id: 'back-drive-efficiency',
    title: 'Efficiency of a train driven backwards',
    equation: 'ηb = max(0, 2 − 1/η)',
    args: { efficiency: EFFICIENCY },
    gives: { symbol: 'ηb', is: 'efficiency from output to input', unit: '1' },
    validFor: 'the same friction loss either way; at η ≤ 0.5 the train locks, as worms do',
    leavesOut: 'vibration, which makes a locking train creep',
    source: 'power screws and worm gears, self-locking at an efficiency of one half, any machine-elements text',
  },
  ({ efficiency }) => Math.max(0, 2 - 1 / efficiency),
);

/** Torque at the output of a train. */
export const gearOutputTorque = law(
  {
    id: 'gear-output-torque',
    title: 'Output torque of a gear train',
    equation: 'Tout = η·N·T',
    args: { torque: TORQUE, ratio: RATIO, efficiency: EFFICIENCY },
    gives: { symbol: 'Tout', is: 'output torque', unit: 'N·m' },
    validFor: 'steady driving',
    leavesOut: 'inertia of the wheels of the train, no-load drag',
    source: TEXT,
  },
  ({ torque, ratio, efficiency }) => efficiency * ratio * torque,
);

/** Inertia of a load as the motor feels it. */
export const reflectedInertia = law(
  {
    id: 'reflected-inertia',
    title: 'Load inertia seen by the motor',
    equation: 'J = JL/(N²·η)',
    args: {
      loadInertia: {
        symbol: 'JL',
        is: 'inertia at the output; a vehicle on wheels counts m·r²',
        unit: 'kg·m²',
        from: 0,
      },
      ratio: RATIO,
      efficiency: EFFICIENCY,
    },
    gives: { symbol: 'J', is: 'inertia seen at the motor', unit: 'kg·m²' },
    validFor: 'speeding up; when slowing down the losses help, so η moves to the numerator',
    leavesOut: 'inertia of the wheels of the train, play',
    source: TEXT,
  },
  ({ loadInertia, ratio, efficiency }) => loadInertia / (ratio ** 2 * efficiency),
);

/** Push of the driven wheels on the ground. */
export const wheelForce = law(
  {
    id: 'wheel-force',
    title: 'Driving force at the wheels',
    equation: 'F = η·N·T/r',
    args: { torque: TORQUE, ratio: RATIO, efficiency: EFFICIENCY, wheelRadius: RADIUS },
    gives: { symbol: 'F', is: 'driving force at the ground', unit: 'N' },
    validFor: 'wheels that do not slip',
    leavesOut: 'adhesion, which may be less',
    source: TEXT,
  },
  ({ torque, ratio, efficiency, wheelRadius }) => (efficiency * ratio * torque) / wheelRadius,
);

/** Road speed from motor speed. */
export const roadSpeed = law(
  {
    id: 'road-speed',
    title: 'Road speed from motor speed',
    equation: 'v = ω·r/N',
    args: { motorSpeed: { symbol: 'ω', is: 'motor speed', unit: 'rad/s' }, ratio: RATIO, wheelRadius: RADIUS },
    gives: { symbol: 'v', is: 'road speed', unit: 'm/s' },
    validFor: 'wheels that do not slip, rolling radius under load',
    leavesOut: 'slip, growth of soft tyres',
    source: TEXT,
  },
  ({ motorSpeed, ratio, wheelRadius }) => (motorSpeed * wheelRadius) / ratio,
);
