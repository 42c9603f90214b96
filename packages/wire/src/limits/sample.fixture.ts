/** An invented vehicle's limits for tests: a six-wheeler of two kilograms with an on/off steering. */
import { LIMIT_FACTS, LIMIT_NAMES, type LimitName } from './limit-facts.ts';
import { MODEL_FACTS, MODEL_NAMES, type ModelName } from './model-facts.ts';
import { LIMITS_KIND, LIMITS_VERSION, type Limits, type LimitsDraft, limitOf, type Model } from './record.ts';

const LIMIT_VALUES: Readonly<Record<LimitName, number>> = {
  dutyCeiling: 0.62,
  dutyRate: 4,
  speedCap: 1.4,
  crawlSpeed: 0.15,
  reversalSpeed: 0.05,
  deceleration: 1.35,
  steepestDescent: 0.14,
  tipSideSlope: 0.55,
  cornerSpeed: 1.1,
  sideAcceleration: 3.2,
  actuationDelay: 0.08,
  reactionTime: 1.2,
  cameraLag: 0.12,
  screenLag: 0.06,
  deadManTime: 0.4,
  sightPictureWidth: 640,
  sightObstacle: 3.1,
  sightEdge: 1.6,
  sightWalker: 12.5,
  walkerSpeed: 1.6,
  blindForeground: 0.22,
  stepDistance: 0.5,
  stepTurn: 0.35,
  stallCurrent: 4.2,
  stallTime: 0.6,
  steeringHoldDuty: 0.3,
  steeringHoldTime: 8,
  packCutOff: 6.2,
  packReserve: 0.2,
  boardVoltageMin: 4.75,
  motorWindingMax: 378.15,
};

const MODEL_VALUES: Readonly<Record<Exclude<ModelName, 'openCircuit'>, number>> = {
  packCapacity: 7920,
  packResistance: 0.09,
  wiringResistance: 0.03,
  idlePower: 4.1,
  bridgeDrop: 0,
  bridgeResistance: 0.12,
  motorCount: 2,
  motorResistance: 1.9,
  motorConstant: 0.0042,
  motorNoLoadCurrent: 0.18,
  motorInductance: 0.00034,
  motorHeatCapacity: 28,
  motorHeatResistance: 14,
  gearRatio: 34,
  gearEfficiency: 0.62,
  wheelRadius: 0.055,
  wheelbase: 0.21,
  trackWidth: 0.19,
  steerAngleMax: 0.42,
  mass: 2.05,
  rotatingMass: 0.25,
  rollingCoefficient: 0.05,
  dragArea: 0.03,
};

const limits = Object.fromEntries(
  LIMIT_NAMES.map((name) => {
    const quantile = LIMIT_FACTS[name].careful === 'low' ? 0.05 : 0.95;
    return [name, limitOf(name, { value: LIMIT_VALUES[name], sum: `sample.${name}`, quantile })];
  }),
) as unknown as Limits;

const model = Object.fromEntries(
  MODEL_NAMES.map((name) => {
    const { unit } = MODEL_FACTS[name];
    if (name !== 'openCircuit') return [name, { value: MODEL_VALUES[name], unit }];
    return [
      name,
      {
        value: [
          [0, 5],
          [0.1, 6.2],
          [0.9, 6.6],
          [1, 6.9],
        ],
        unit,
      },
    ];
  }),
) as unknown as Model;

/** A draft with every limit and every parameter; a fresh one each time, free to be changed. */
export function sampleDraft(): LimitsDraft {
  return copyOf({
    kind: LIMITS_KIND,
    version: LIMITS_VERSION,
    vehicle: 'Änne, six wheels 🐜',
    dossierHash: '0123456789abcdef'.repeat(4),
    laws: { version: '2026.1', hash: 'fedcba9876543210'.repeat(4) },
    madeWith: { cases: 1000, seed: 20_260_101 },
    limits,
    model: { ...model, mass: { ...model.mass, low: 1.98, high: 2.12 } },
  });
}

function copyOf(draft: LimitsDraft): LimitsDraft {
  return JSON.parse(JSON.stringify(draft)) as LimitsDraft;
}
