import { checkLaw, checkSubject } from '../check.ts';
import {
  backDriveEfficiency,
  gearOutputTorque,
  gearStageRatio,
  gearTrainEfficiency,
  reflectedInertia,
  roadSpeed,
  wheelForce,
} from './gear.ts';

const RPM = Math.PI / 30;
/** A kilogram-force millimetre [N·m]. */
const KG_MM = 9.80665e-3;
const MICRO = 'Pololu, micro metal gearmotors data sheet, May 2018';
const GP22 = 'maxon, planetary gearhead GP 22 C, catalogue page, from memory';
const NISE = 'Nise, Control Systems Engineering, example 2.23, from memory';
const SCREWS = 'self-locking of screws and worms at an efficiency of one half, any machine-elements text';

export const gearChecks = [
  checkLaw(gearStageRatio, [
    {
      case: '38 teeth on a pinion of 10',
      source: `${MICRO}, tooth counts, from memory`,
      kind: 'memory',
      args: { drivenTeeth: 38, driverTeeth: 10 },
      expected: 3.8,
      allowed: 1e-6,
    },
  ]),
  checkSubject('ratio of a train of stages', [
    {
      case: '35/12 · 37/11 · 35/13 · 38/10 is sold as 100.37 : 1',
      source: `${MICRO}; tooth counts from memory`,
      kind: 'memory',
      ours: () =>
        [
          [35, 12],
          [37, 11],
          [35, 13],
          [38, 10],
        ].reduce((n, [driven = 1, driver = 1]) => n * gearStageRatio({ drivenTeeth: driven, driverTeeth: driver }), 1),
      expected: 100.37,
      allowed: 1e-4,
    },
  ]),
  checkLaw(gearTrainEfficiency, [
    {
      case: 'stages of 84 %: two give 70 %',
      source: GP22,
      kind: 'memory',
      args: { stageEfficiency: 0.84, stages: 2 },
      expected: 0.7,
      allowed: 0.01,
    },
    {
      case: 'stages of 84 %: three give 59 %',
      source: GP22,
      kind: 'memory',
      args: { stageEfficiency: 0.84, stages: 3 },
      expected: 0.59,
      allowed: 0.01,
    },
    {
      case: 'three spur stages of a toy, 0.87 each: 0.6 to 0.7',
      source: 'common practice, no source',
      kind: 'common practice',
      args: { stageEfficiency: 0.87, stages: 3 },
      expected: 0.65,
      allowed: 0.08,
    },
  ]),
  checkLaw(backDriveEfficiency, [
    {
      case: 'a screw of 45° lead with friction 0.1 has 0.9/1.1 either way by its own formula; equal losses are 5 % careful there',
      source:
        'power screw: tan λ/tan(λ + φ) forwards, tan(λ − φ)/tan λ backwards, worked by hand; any machine-elements text',
      kind: 'published',
      args: { efficiency: 0.9 / 1.1 },
      expected: 0.9 / 1.1,
      allowed: 0.06,
    },
    {
      case: 'a train of 80 % loses 0.25 of its output forwards and 0.25 of its input backwards',
      source: SCREWS,
      kind: 'published',
      args: { efficiency: 0.8 },
      expected: 0.75,
      allowed: 1e-6,
    },
  ]),
  checkLaw(gearOutputTorque, [
    {
      case: 'a planetary stage of 85 % and 5 : 1 after a motor of 7.0 mN·m: 29.75 mN·m by hand',
      source: 'MIT 2.007, motor information page, 2008: stage efficiency and stall torque',
      kind: 'published',
      args: { torque: 7e-3, ratio: 5, efficiency: 0.85 },
      expected: 29.75e-3,
      allowed: 0.001,
    },
  ]),
  checkLaw(reflectedInertia, [
    {
      case: 'load of 700 kg·m² through 1000 : 100 teeth: 12 kg·m² at the motor less the armature’s 5',
      source: NISE,
      kind: 'memory',
      args: { loadInertia: 700, ratio: 10, efficiency: 1 },
      expected: 12 - 5,
      allowed: 1e-6,
    },
    {
      case: 'the same load through a train of 70 %: 7/0.7 by hand',
      source: 'maxon, formulae handbook: J/(i²·η)',
      kind: 'published',
      args: { loadInertia: 700, ratio: 10, efficiency: 0.7 },
      expected: 10,
      allowed: 1e-6,
    },
  ]),
  checkLaw(wheelForce, [
    {
      case: '1.7 kg·mm at the output on a wheel of 16 mm: 0.10625 kgf, from the power 0.17 W at 100 rpm over the wheel speed',
      source: `${MICRO}: best point 100 rpm, 1.7 kg·mm, 0.17 W`,
      kind: 'published',
      args: { torque: (1.7 * KG_MM) / (100.37 * 0.6), ratio: 100.37, efficiency: 0.6, wheelRadius: 0.016 },
      expected: 0.17 / (100 * RPM * 0.016),
      allowed: 0.03,
    },
  ]),
  checkLaw(roadSpeed, [
    {
      case: 'a motor of 13 048 rpm behind 100.37 : 1 is a 130 rpm gearmotor: 32 mm wheels roll 130 · π · 32 mm a minute',
      source: `${MICRO}: no load 130 rpm`,
      kind: 'published',
      args: { motorSpeed: 13_048 * RPM, ratio: 100.37, wheelRadius: 0.016 },
      expected: (130 * Math.PI * 0.032) / 60,
      allowed: 0.001,
    },
  ]),
];
