/** Which axle decides how high a step the vehicle climbs. */
import type { Drive } from './grade.ts';
import { stepAllDriven, stepByOwnTorque, stepByPush, stepFrontAxle, stepRearAxle } from './steps.ts';

/** The governing axle (0 is the foremost), the step, and the reason. */
export interface StepLimit {
  readonly axle: number;
  readonly step: number;
  readonly why: string;
}

/** A two-axled vehicle with equal wheels before a step. */
export interface TwoAxlesAtStep {
  readonly drive: Drive;
  readonly radius: number;
  readonly wheelbase: number;
  readonly cgBehindFront: number;
  readonly cgHeight: number;
  readonly adhesion: number;
}

/** Steps that the front and the rear axle of a two-axled vehicle climb, in this order. */
export function twoAxleSteps(vehicle: TwoAxlesAtStep): readonly [number, number] {
  const { drive, radius, wheelbase, cgBehindFront, cgHeight, adhesion } = vehicle;
  if (drive === 'all') {
    return [
      stepFrontAxle({ radius, wheelbase, cgBehindFront, adhesion }),
      stepRearAxle({ radius, wheelbase, cgBehindFront, cgHeight, adhesion }),
    ];
  }
  const alone = stepByOwnTorque({ radius, adhesion });
  const rear = cgBehindFront / wheelbase;
  const driven = drive === 'front' ? 1 - rear : rear;
  const pushed = stepByPush({ radius, push: adhesion * driven, load: 1 - driven });
  return drive === 'front' ? [alone, pushed] : [pushed, alone];
}

/** Chooses the axle that decides on a two-axled vehicle and says why. */
export function twoAxleStepLimit(vehicle: TwoAxlesAtStep): StepLimit {
  const [front, rear] = twoAxleSteps(vehicle);
  const how = { all: 'both axles driven', front: 'front axle driven', rear: 'rear axle driven' }[vehicle.drive];
  return rear < front
    ? { axle: 1, step: rear, why: `the rear axle stops at a lower step than the front (${how})` }
    : { axle: 0, step: front, why: `the front axle stops at a lower step than the rear (${how})` };
}

/**
 * Chooses the axle that decides when all of several axles drive: the one that carries most.
 * Optimistic on a stiff frame, where the lifted axle takes more than its share.
 */
export function manyAxleStepLimit(vehicle: {
  readonly radius: number;
  readonly adhesion: number;
  /** Loads of the axles, from the front; only their proportions count. */
  readonly loads: readonly number[];
}): StepLimit {
  const { radius, adhesion, loads } = vehicle;
  const total = loads.reduce((sum, load) => sum + load, 0);
  const axle = loads.indexOf(Math.max(...loads));
  const step = stepAllDriven({ radius, adhesion, share: (loads[axle] ?? 0) / total });
  return { axle, step, why: `axle ${axle + 1} of ${loads.length} carries most of the weight and stops first` };
}
