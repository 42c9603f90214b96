/**
 * The ids of all sums, by subject, in reading order. A misspelt input does not compile, because these ids are a
 * literal union; a sum without a definition does not compile either.
 */

export const MASS_IDS = [
  'mass.wiring',
  'mass.added',
  'mass.total',
  'mass.ratio',
  'balance.wheelbase',
  'balance.track',
  'balance.toyCentreBehind',
  'balance.centreBehind',
  'balance.centreHeight',
  'balance.toyLoad.1',
  'balance.toyLoad.2',
  'balance.toyLoad.3',
  'balance.toyLoad.4',
  'balance.load.1',
  'balance.load.2',
  'balance.load.3',
  'balance.load.4',
  'balance.loadGrowth',
  'balance.drivenShare',
  'balance.springUsed',
  'balance.springLeft',
  'balance.clearance',
] as const;

export const DRIVE_IDS = [
  'drive.constant',
  'drive.constantGap',
  'drive.resistance',
  'drive.noLoadCurrent',
  'drive.ratio',
  'drive.toyCurrent',
  'drive.toyStallCurrent',
  'drive.toyStallTorque',
  'drive.stallCurrent',
  'drive.stallTorque',
  'drive.wheelForceStall',
  'drive.forceLevel',
  'drive.forceClimb',
  'drive.torqueCruise',
  'drive.torqueClimb',
  'drive.currentCruise',
  'drive.currentClimb',
  'drive.voltageCruise',
  'drive.dutyCruise',
  'drive.dutyClimb',
  'drive.powerCruise',
  'drive.powerClimb',
  'drive.topSpeed',
  'drive.speedClimb',
  'drive.torqueSlope',
  'drive.gripSlope',
  'drive.bridgeSlope',
  'drive.slope',
  'drive.toothForce',
  'drive.toothForceToy',
  'drive.toothStress',
  'drive.skidForce',
  'drive.skidForceStall',
  'drive.skidCurrent',
  'drive.reversingCurrent',
] as const;

export const DUTY_IDS = [
  'bridge.threshold',
  'bridge.slope',
  'duty.ceiling',
  'duty.applied',
  'duty.motorVoltage',
  'bridge.dropCruise',
  'bridge.dropClimb',
  'bridge.dropStall',
  'bridge.channelCruise',
  'bridge.channelClimb',
  'bridge.channelStall',
  'bridge.ripple',
  'bridge.ripplePeak',
  'bridge.lossClimb',
  'bridge.lossStall',
  'bridge.junctionClimb',
  'bridge.junctionStall',
  'bridge.supplyLow',
] as const;

export const PACK_IDS = [
  'pack.full',
  'pack.nominal',
  'pack.restReserve',
  'pack.cutOff',
  'pack.realCapacity',
  'pack.resistance',
  'pack.resistanceCold',
  'pack.toyFull',
  'pack.toyResistance',
  'pack.currentStand',
  'pack.currentCruise',
  'pack.currentClimb',
  'pack.currentMean',
  'pack.currentStall',
  'pack.rateClimb',
  'pack.rateStall',
  'pack.voltageClimb',
  'pack.usableShare',
  'pack.energy',
  'pack.power',
  'pack.runTime',
  'pack.standTime',
  'pack.distance',
  'pack.usableWanted',
  'pack.chargerNeed',
  'pack.chargerFits',
  'pack.chargeCurrent',
  'pack.chargeRate',
  'pack.chargeRateMax',
  'pack.chargeTime',
  'pack.dayShare',
  'pack.short',
  'pack.life',
] as const;

export const SUPPLY_IDS = [
  'supply.servoRun',
  'supply.servoStall',
  'supply.loadMean',
  'supply.steeringBusy',
  'supply.loadBusy',
  'supply.loadPeak',
  'supply.currentPeak',
  'supply.currentRated',
  'supply.inputPower',
  'supply.inputPeakPower',
  'supply.inputNeeded',
  'supply.inputStall',
  'supply.inputReversal',
  'supply.collapsePower',
  'supply.boardVoltage',
  'supply.boardVoltageStall',
  'supply.heat',
  'supply.holdUp',
] as const;

export const WIRING_IDS = [
  'wiring.pack.resistance',
  'wiring.bridge.resistance',
  'wiring.motor.resistance',
  'wiring.converter.resistance',
  'wiring.board.resistance',
  'wiring.pack.current',
  'wiring.bridge.current',
  'wiring.motor.current',
  'wiring.converter.current',
  'wiring.board.current',
  'wiring.pack.rise',
  'wiring.bridge.rise',
  'wiring.motor.rise',
  'wiring.converter.rise',
  'wiring.board.rise',
  'wiring.hottest',
  'wiring.contactUse',
  'wiring.weakest',
  'wiring.dropClimb',
  'wiring.dropShare',
  'fuse.needed',
  'fuse.stallTime',
  'fuse.shortTime',
  'fuse.wireTime',
  'fuse.shortCurrent',
  'fuse.startEnergy',
  'fuse.startShare',
] as const;

export const HEAT_IDS = [
  'heat.windingCruise',
  'heat.windingClimb',
  'heat.stallRate',
  'heat.windingStall',
  'heat.steerCurrent',
  'heat.steerFull',
  'heat.steerHeld',
  'heat.boxPower',
  'heat.sunPower',
  'heat.boxWall',
  'heat.boxAir',
  'heat.localAir',
  'heat.board',
] as const;

export const STABILITY_IDS = [
  'tip.noseUp',
  'tip.noseDown',
  'tip.side',
  'tip.factor',
  'tip.cornerSpeed',
  'tip.slideSpeed',
  'tip.sideTurning',
  'tip.braking',
  'clear.approach',
  'clear.departure',
  'clear.breakover',
  'step.limit',
  'turn.radius',
  'soft.sinkage',
  'soft.resistance',
] as const;

export const LINK_IDS = [
  'link.eirpVehicle',
  'link.eirpBase',
  'link.eirpLimit',
  'link.pathLoss',
  'link.extraLoss',
  'link.picturesReceived',
  'link.commandsReceived',
  'link.noise',
  'link.snr',
  'link.airRate',
  'link.tcpRate',
  'link.throughput',
  'link.marginWanted',
  'link.marginPictures',
  'link.marginCommands',
  'link.reach',
] as const;

export const PICTURE_IDS = [
  'picture.focal',
  'picture.bytes',
  'picture.rateNeeded',
  'picture.sendTime',
  'picture.spacing',
  'picture.age',
  'picture.delay',
  'picture.sightObstacle',
  'picture.sightEdge',
  'picture.sightSteered',
  'picture.nearGround',
  'picture.blind',
  'picture.clearObstacle',
  'picture.clearEdge',
  'picture.speedObstacle',
  'picture.speedEdge',
  'picture.speedWalker',
  'picture.speedLimit',
  'picture.blur',
  'picture.dataHour',
  'picture.keptBytes',
] as const;

export const SAFETY_IDS = [
  'safe.shortedForce',
  'safe.deceleration',
  'safe.descentDeceleration',
  'safe.speedCap',
  'safe.stopping',
  'safe.energy',
  'safe.gravityForce',
  'safe.creep',
  'safe.slideSlope',
] as const;

/** Subjects in reading order, each with its sums. */
export const SUBJECTS = {
  'mass and balance': MASS_IDS,
  drive: DRIVE_IDS,
  'duty and bridge': DUTY_IDS,
  'pack and charging': PACK_IDS,
  '5 V supply': SUPPLY_IDS,
  'wiring and fuse': WIRING_IDS,
  heat: HEAT_IDS,
  'stability and obstacles': STABILITY_IDS,
  link: LINK_IDS,
  'picture and sight': PICTURE_IDS,
  safety: SAFETY_IDS,
} as const;

export type Subject = keyof typeof SUBJECTS;
export type SumIdOf<S extends Subject> = (typeof SUBJECTS)[S][number];
export type SumId = SumIdOf<Subject>;

export const SUM_IDS: readonly SumId[] = Object.values(SUBJECTS).flat();

const KNOWN: ReadonlySet<string> = new Set(SUM_IDS);

/** Tells sums from inputs. */
export function isSumId(ref: string): ref is SumId {
  return KNOWN.has(ref);
}

/** The subject a sum belongs to. */
export function subjectOf(id: SumId): Subject {
  const entry = Object.entries(SUBJECTS).find(([, ids]) => (ids as readonly string[]).includes(id));
  return (entry as [Subject, unknown])[0];
}
