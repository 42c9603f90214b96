/** Where each entry of the limits record comes from: one sum, one stated quantity, or a careful default of the guard. */
import type { LimitName, ModelName } from '@longrein/wire';
import type { Ref } from './sum.ts';

/** Limits taken from a sum or from a stated quantity. */
export const LIMITS_FROM: { readonly [N in LimitName]?: Ref } = {
  dutyCeiling: 'duty.limit',
  speedCap: 'safe.speedCap',
  deceleration: 'safe.deceleration',
  steepestDescent: 'want.slope',
  tipSideSlope: 'tip.side',
  cornerSpeed: 'tip.cornerLimit',
  sideAcceleration: 'tip.sideAcceleration',
  actuationDelay: 'driving.actuation',
  reactionTime: 'driving.reaction',
  cameraLag: 'camera.lag',
  screenLag: 'picture.screenLag',
  sightPictureWidth: 'picture.width',
  sightObstacle: 'picture.clearObstacle',
  sightEdge: 'picture.clearEdge',
  sightWalker: 'picture.clearWalker',
  walkerSpeed: 'near.walkerSpeed',
  blindForeground: 'picture.blind',
  stallCurrent: 'drive.stallThreshold',
  stallTime: 'set.stallTime',
  steeringHoldDuty: 'set.holdDuty',
  steeringHoldTime: 'set.holdTime',
  packCutOff: 'pack.cutOff',
  packReserve: 'set.reserve',
  boardVoltageMin: 'computer.brownOut',
  motorWindingMax: 'motor.windingLimit',
};

/** What the record names as the origin of a limit that nothing computes. */
export const GUARD_DEFAULT = 'guard.default';

/**
 * Careful defaults of the guard, SI: chosen, not computed. A crawl of 15 cm a second lets a bystander step aside and a
 * bumper take the knock; a third of a second bridges one lost command and no more; at a tenth of a metre a second a
 * reversal costs the supply little more than a start.
 */
export const CHOSEN: { readonly [N in LimitName]?: number } = {
  crawlSpeed: 0.15,
  deadManTime: 0.3,
  reversalSpeed: 0.1,
};

/** Parameters of the model; those of several sums are their total. */
export const MODEL_FROM: { readonly [N in ModelName]?: readonly Ref[] } = {
  packCapacity: ['pack.realCapacity'],
  packResistance: ['pack.resistance'],
  // The lead from the pack with its fuse, and the lead on to the bridge.
  wiringResistance: ['wiring.pack.resistance', 'wiring.bridge.resistance'],
  idlePower: ['supply.inputPower'],
  bridgeDrop: ['bridge.threshold'],
  bridgeResistance: ['bridge.slope'],
  motorResistance: ['drive.resistance'],
  motorConstant: ['drive.constant'],
  motorNoLoadCurrent: ['drive.noLoadCurrent'],
  motorInductance: ['motor.inductance'],
  motorHeatResistance: ['heat.motorResistance'],
  motorHeatCapacity: ['heat.motorCapacity'],
  gearRatio: ['drive.ratio'],
  gearEfficiency: ['gear.efficiency'],
  wheelRadius: ['drive.wheelRadius'],
  wheelbase: ['balance.wheelbase'],
  trackWidth: ['balance.track'],
  steerAngleMax: ['steer.angle'],
  mass: ['mass.total'],
  rollingCoefficient: ['ground.rolling'],
};

/** States of charge in the open-circuit table: enough for straight lines between them to follow the curve. */
export const TABLE_POINTS = [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1] as const;
