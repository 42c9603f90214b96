/** For tests: one invented rover, whole enough for the sums of drive, duty, bridge, pack, supply and heat. */
import type { Layout } from '../dossier/resolve.ts';
import { PLAIN_LAYOUT, type Values } from './testing.ts';

const MINUTE = 60;
const AMPERE_HOUR = 3600;
const DEGREE = Math.PI / 180;

/** Rear-driven by one motor on a toy's pack of six nickel cells, now on two lithium cells. */
export const ROVER_LAYOUT: Layout = { ...PLAIN_LAYOUT, steering: 'on-off', clutch: false };

/** Sums of mass, balance and wiring as given: they belong to other subjects. */
const ELSEWHERE: Values = {
  'mass.total': 1.9,
  'balance.wheelbase': 0.21,
  'balance.track': 0.17,
  'balance.centreBehind': 0.115,
  'balance.centreHeight': 0.07,
  'balance.drivenShare': 0.55,
  'wiring.pack.resistance': 0.02,
  'wiring.bridge.resistance': 0.005,
  'wiring.motor.resistance': 0.01,
  'wiring.converter.resistance': 0.02,
  'wiring.board.resistance': 0.03,
};

const TOY: Values = {
  'toy.mass': 1.5,
  'toy.wheelDiameter': 0.085,
  'toy.capacity': 0.7 * AMPERE_HOUR,
  'toy.capacityShare': 0.85,
  'toy.runTime': 18 * MINUTE,
  'toy.cellResistance': 0.06,
  'motor.ratedVoltage': 7.2,
  'motor.resistance': 0.9,
  'motor.noLoadVoltage': 7.2,
  'motor.noLoadCurrent': 0.4,
  'motor.noLoadSpeed': 1300,
  'motor.noLoadShare': 0.1,
  'motor.averageShare': 0.22,
  'motor.inductance': 0.4e-3,
  'motor.windingMass': 0.012,
  'motor.canMass': 0.07,
  'motor.windingToCan': 5,
  'motor.canToAir': 14,
  'motor.windingLimit': 390,
  'gear.ratio': 22,
  'gear.efficiency': 0.65,
  'gear.pinionTeeth': 12,
  'gear.module': 0.8e-3,
  'gear.faceWidth': 6e-3,
  'gear.lastRatio': 3,
  'gear.strength': 35e6,
  'steer.resistance': 6,
  'steer.windingMass': 0.004,
  'steer.toAir': 30,
};

const PARTS: Values = {
  'pack.cellResistance': 0.02,
  'pack.cyclesDone': 20,
  'bridge.onResistance': 0.03,
  'bridge.currentContinuous': 5,
  'bridge.currentPeak': 15,
  'bridge.voltageMax': 24,
  'bridge.voltageMin': 4,
  'bridge.toAir': 45,
  'bridge.junctionMax': 423,
  'bridge.quiescent': 2e-3,
  'bridge.edgeTime': 200e-9,
  'bridge.timeConstant': 20,
  'converter.outputVoltage': 5.1,
  'converter.outputCurrent': 4,
  'converter.efficiency': 0.9,
  'converter.headRoom': 0.5,
  'converter.inputMin': 4.5,
  'computer.busyPower': 3,
  'computer.peakPower': 5,
  'computer.toAir': 8,
  'computer.temperatureMax': 353,
  'camera.power': 0.5,
  'modem.power': 0.4,
  'modem.burstPower': 1,
  'enclosure.length': 0.14,
  'enclosure.width': 0.1,
  'enclosure.height': 0.05,
  'enclosure.emissivity': 0.9,
  'enclosure.absorptivity': 0.4,
};

const SERVICE: Values = {
  'set.frequency': 20e3,
  'set.stallTime': 1.5,
  'set.holdDuty': 0.35,
  'set.holdTime': 3,
  'set.reserve': 0.2,
  'want.speed': 0.6,
  'want.slope': 8 * DEGREE,
  'want.climbTime': 2 * MINUTE,
  'day.usual': 291,
  'day.coldest': 278,
  'day.hottest': 303,
  'day.sun': 0,
  'ground.rolling': 0.03,
  'ground.rollingWorst': 0.06,
  'ground.adhesion': 0.6,
  'ground.adhesionWorst': 0.5,
};

export const ROVER: Values = { ...ELSEWHERE, ...TOY, ...PARTS, ...SERVICE };
