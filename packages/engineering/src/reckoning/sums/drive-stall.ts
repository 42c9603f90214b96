/** Sums of the drive held still: what the old pack could do, what the new one does, and what the gears bear. */
import {
  averageCurrentFromRunTime,
  copperResistance,
  gearOutputTorque,
  LEWIS_FACTORS,
  lewisBendingStress,
  lewisFormFactor,
  motorStallCurrent,
  motorTorqueAtCurrent,
  toothForce,
  wheelForce,
} from '@longrein/laws';
import { type SumsOf, sum } from '../sum.ts';
import { motorsOf, sharingOf } from './counts.ts';
import { circuitOf, climbing, OWN_WORDS, PATH, SHARED_WORDS, stalled } from './drive-circuit.ts';

type StallId =
  | 'drive.toyCurrent'
  | 'drive.toyStallCurrent'
  | 'drive.toyStallTorque'
  | 'drive.stallCurrent'
  | 'drive.blockedCurrent'
  | 'drive.stallTorque'
  | 'drive.stallThreshold'
  | 'drive.wheelForceStall'
  | 'drive.toothForce'
  | 'drive.toothForceToy'
  | 'drive.toothForceBorne'
  | 'drive.toothStress';

/** Fewest teeth the table of form factors knows. */
const FEWEST_TEETH = Math.min(...LEWIS_FACTORS.map(({ teeth }) => teeth));
/** A stalled tooth stands still: motion adds nothing to its load. */
const AT_REST = 1;

const toothForceOf = (title: string, torque: 'drive.stallTorque' | 'drive.toyStallTorque') =>
  sum(
    {
      title,
      unit: 'N',
      caveat:
        'One pair of teeth carries one motor. The loss of the last pair itself is counted as if it came before: up to a tenth more. A start through play adds a shock.',
    },
    {
      uses: {
        torque,
        ratio: 'drive.ratio',
        last: 'gear.lastRatio',
        efficiency: 'gear.efficiency',
        module: 'gear.module',
        teeth: 'gear.pinionTeeth',
      },
      formula: '2 · {torque} · {ratio} / {last} · {efficiency} / ({module} · {teeth})',
      laws: [gearOutputTorque, toothForce],
      value: ({ torque, ratio, last, efficiency, module, teeth }) =>
        toothForce({ torque: gearOutputTorque({ torque, ratio: ratio / last, efficiency }), module, teeth }),
    },
  );

export const driveStallSums: SumsOf<StallId> = {
  'drive.toyCurrent': sum(
    {
      title: 'average pack current of the toy as it came, driven hard',
      unit: 'A',
      caveat: 'What the label promises, less what labels flatter, over the time it lasted.',
    },
    {
      uses: { capacity: 'toy.capacity', share: 'toy.capacityShare', time: 'toy.runTime' },
      formula: '{capacity} · {share} / {time}',
      laws: [averageCurrentFromRunTime],
      value: ({ capacity, share, time }) => averageCurrentFromRunTime({ capacity, share, time }),
    },
  ),
  'drive.toyStallCurrent': sum(
    {
      title: 'stall current of one motor on the full original pack, all motors stalled',
      unit: 'A',
      caveat: 'The resistance of the small pack held it down. Switch and leads of the toy are left out.',
    },
    {
      uses: { full: 'pack.toyFull', resistance: 'drive.resistance', pack: 'pack.toyResistance' },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{full} / ({resistance} + {motors} · {pack})',
      laws: [motorStallCurrent],
      value: ({ full, resistance, pack, motors }) =>
        motorStallCurrent({ voltage: full, resistance: resistance + motors * pack }),
    },
  ),
  'drive.toyStallTorque': sum(
    { title: 'stall torque of one motor on the full original pack', unit: 'mN·m' },
    {
      uses: { current: 'drive.toyStallCurrent', constant: 'drive.constant', idle: 'drive.noLoadCurrent' },
      formula: '{constant} · ({current} − {idle}), not below 0',
      laws: [motorTorqueAtCurrent],
      value: ({ current, constant, idle }) =>
        Math.max(0, motorTorqueAtCurrent({ current, motorConstant: constant, noLoadCurrent: idle })),
    },
  ),
  'drive.stallCurrent': sum(
    {
      title: 'stall current of one motor, all motors stalled',
      unit: 'A',
      caveat:
        'Full pack, cold winding, mean of the pulses at the duty ceiling. One motor blocked alone draws more: see there.',
    },
    {
      uses: { full: 'pack.full', pack: 'pack.resistance', resistance: 'drive.resistance', ...PATH },
      takes: (layout) => ({ motors: motorsOf(layout), sharing: sharingOf(layout) }),
      formula: `({duty} · {full} − {threshold}) / ({resistance} + ${OWN_WORDS} + {motors} · {duty}² · (${SHARED_WORDS}))`,
      laws: [motorStallCurrent],
      value: ({ full, resistance, ...x }) => stalled(circuitOf(x, full, resistance)),
    },
  ),
  'drive.blockedCurrent': sum(
    {
      title: 'stall current of one motor blocked alone',
      unit: 'A',
      caveat:
        'Full pack, cold winding, duty ceiling, the other motors drawing nothing: the pack sags least, so this is the most a winding sees.',
    },
    {
      uses: { full: 'pack.full', pack: 'pack.resistance', resistance: 'drive.resistance', ...PATH },
      formula: `({duty} · {full} − {threshold}) / ({resistance} + {motorRun} + {slope} + {duty}² · (${SHARED_WORDS})), not below 0`,
      laws: [motorStallCurrent],
      value: ({ full, resistance, ...x }) => stalled(circuitOf({ ...x, motors: 1, sharing: 1 }, full, resistance)),
    },
  ),
  'drive.stallTorque': sum(
    { title: 'stall torque of one motor, all motors stalled', unit: 'mN·m' },
    {
      uses: { current: 'drive.stallCurrent', constant: 'drive.constant', idle: 'drive.noLoadCurrent' },
      formula: '{constant} · ({current} − {idle}), not below 0',
      laws: [motorTorqueAtCurrent],
      value: ({ current, constant, idle }) =>
        Math.max(0, motorTorqueAtCurrent({ current, motorConstant: constant, noLoadCurrent: idle })),
    },
  ),
  'drive.stallThreshold': sum(
    {
      title: 'pack current of the drive from which it counts as stalled',
      unit: 'A',
      caveat:
        'Midway between the steepest climb at full stick and the weakest stall, both at the duty ceiling: at the reserve, cold pack, hot winding. One stalled wheel among several draws less than this.',
    },
    {
      uses: {
        rest: 'pack.restReserve',
        pack: 'pack.resistanceCold',
        resistance: 'drive.resistance',
        climb: 'drive.currentClimb',
        ...PATH,
      },
      takes: (layout) => ({
        motors: motorsOf(layout),
        sharing: sharingOf(layout),
        winding: climbing().winding,
      }),
      formula: `{motors} · {duty} · ({climb} + i) / 2, i = ({duty} · {rest} − {threshold}) / ({resistance} at {winding} + ${OWN_WORDS} + {motors} · {duty}² · (${SHARED_WORDS}))`,
      laws: [copperResistance, motorStallCurrent],
      value: ({ rest, resistance, climb, winding, ...x }) => {
        const hot = copperResistance({ r20: resistance, temperature: winding });
        const weakest = stalled(circuitOf(x, rest, hot));
        return (x.motors * x.duty * (climb + weakest)) / 2;
      },
    },
  ),
  'drive.wheelForceStall': sum(
    {
      title: 'push of all driven wheels at stall',
      unit: 'N',
      caveat: 'What the motors give; the ground may take less.',
    },
    {
      uses: {
        torque: 'drive.stallTorque',
        ratio: 'drive.ratio',
        efficiency: 'gear.efficiency',
        wheel: 'toy.wheelDiameter',
      },
      takes: (layout) => ({ motors: motorsOf(layout) }),
      formula: '{motors} · {efficiency} · {ratio} · {torque} / ({wheel}/2)',
      laws: [wheelForce],
      value: ({ torque, ratio, efficiency, wheel, motors }) =>
        motors * wheelForce({ torque, ratio, efficiency, wheelRadius: wheel / 2 }),
    },
  ),
  'drive.toothForce': toothForceOf('force on the last pinion’s teeth at stall', 'drive.stallTorque'),
  'drive.toothForceToy': toothForceOf(
    'force on the last pinion’s teeth at stall, with the toy’s own pack',
    'drive.toyStallTorque',
  ),
  'drive.toothForceBorne': sum(
    {
      title: 'force the last pinion’s teeth are known or computed to bear',
      unit: 'N',
      caveat:
        'The greater of what the toy’s own pack put on them for years and what the plastic bears. Below 8 teeth no form factor is tabulated, and the toy’s own force alone counts.',
    },
    {
      uses: {
        toy: 'drive.toothForceToy',
        strength: 'gear.strength',
        width: 'gear.faceWidth',
        module: 'gear.module',
        teeth: 'gear.pinionTeeth',
      },
      formula: 'max({toy}, {strength} · {width} · {module} · Y({teeth}))',
      laws: [lewisFormFactor, lewisBendingStress],
      value: ({ toy, strength, width, module, teeth }) =>
        teeth < FEWEST_TEETH ? toy : Math.max(toy, strength * width * module * lewisFormFactor({ teeth })),
    },
  ),
  'drive.toothStress': sum(
    {
      title: 'bending stress of the last pinion’s teeth at stall',
      unit: 'MPa',
      caveat: 'One tooth carrying all at its tip. Warm plastic bears less, and the fillet concentrates the stress.',
    },
    {
      uses: {
        force: 'drive.toothForce',
        width: 'gear.faceWidth',
        module: 'gear.module',
        teeth: 'gear.pinionTeeth',
      },
      formula: '{force} / ({width} · {module} · Y({teeth}))',
      laws: [lewisFormFactor, lewisBendingStress],
      value: ({ force, width, module, teeth }) =>
        lewisBendingStress({
          force,
          module,
          faceWidth: width,
          formFactor: lewisFormFactor({ teeth }),
          velocityFactor: AT_REST,
        }),
    },
  ),
};
