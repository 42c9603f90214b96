/** Findings about the drive. */
import { findings } from '../finding.ts';

const WHEELS =
  'Keep fingers, hair and cords away from wheels and gears that are driven; chock the body, wheels in the air.';

export const driveFindings = findings({
  'climbs-slope': {
    title: 'It climbs the steepest slope of the service',
    subject: 'drive',
    unit: '°',
    sense: 'at least',
    need: 'want.slope',
    has: 'drive.slope',
    remedy:
      'See which limit comes first. Torque: raise the duty ceiling where motor and gears bear it, gear lower, or shed mass. Grip: softer tyres, more weight on the driven wheels, or stay off it when wet. Bridge: one of more continuous current, or more channels.',
    caution: 'A vehicle that slips or stalls on a slope comes back down it: clear the foot of the slope while trying.',
  },
  'climb-speed': {
    title: 'It still moves at half the wanted speed on the steepest climb',
    subject: 'drive',
    unit: 'm/s',
    sense: 'at least',
    need: 'drive.speedClimbWanted',
    has: 'drive.speedClimb',
    remedy:
      'A motor near its stall turns its power into heat. Gear lower, raise the duty ceiling where motor and gears bear it, fit a pack of lower resistance, or shed mass.',
  },
  'climb-duty': {
    title: 'The duty ceiling leaves the full wanted speed on the steepest climb',
    subject: 'drive',
    unit: '%',
    sense: 'at most',
    need: 'duty.applied',
    has: 'drive.dutyClimb',
    remedy: 'Nothing need be done where a slower climb will do. Otherwise as for the speed of the climb.',
    informs: true,
  },
  'top-speed': {
    title: 'It reaches the wanted speed on the level',
    subject: 'drive',
    unit: 'm/s',
    sense: 'at least',
    need: 'want.speed',
    has: 'drive.topSpeed',
    remedy: 'Raise the duty ceiling where the motor’s rating bears it, fit a pack of more cells, or want less speed.',
  },
  'stall-torque': {
    title: 'A stalled motor pulls no harder than on the toy’s own pack',
    subject: 'drive',
    unit: 'mN·m',
    sense: 'at most',
    need: 'drive.toyStallTorque',
    has: 'drive.stallTorque',
    remedy:
      'The small old pack held the current down by its own resistance; a stiff new one does not. Ramp the start, let the drive cut a stall soon, or lower the duty ceiling.',
    informs: true,
  },
  'gear-force': {
    title: 'The gears see no more force than on the toy’s own pack',
    subject: 'drive',
    unit: 'N',
    sense: 'at most',
    need: 'drive.toothForceToy',
    has: 'drive.toothForce',
    remedy: 'Beyond it the gears are on new ground: what they bear is then a matter of their plastic.',
    informs: true,
  },
  'gear-stress': {
    title: 'The plastic of the last pinion bears the stress of a stall',
    subject: 'drive',
    unit: 'MPa',
    sense: 'at most',
    need: 'gear.strength',
    has: 'drive.toothStress',
    remedy: 'Measure module, face width and teeth of the last pair first: the stress follows them closely.',
    informs: true,
  },
  'gear-bears': {
    title: 'The gears bear a stall, by the toy’s own record or by their plastic',
    subject: 'drive',
    unit: 'N',
    sense: 'at most',
    need: 'drive.toothForceBorne',
    has: 'drive.toothForce',
    remedy:
      'Lower the duty ceiling, ramp the start and let the drive cut a stall soon; or fit a metal last pinion. Stripped teeth come from starts against an obstacle.',
    caution: WHEELS,
  },
  'skid-turn': {
    title: 'Each side pushes hard enough to turn on the spot',
    subject: 'drive',
    unit: 'N',
    sense: 'at least',
    need: 'drive.skidForce',
    has: 'drive.skidForceStall',
    remedy:
      'Turning by skidding can ask for more than climbing does. Fit harder or narrower tyres, a shorter wheelbase, a castor, a lower gear, or turn in a bow.',
  },
  'skid-bridge': {
    title: 'Turning on the spot does not overload the bridge',
    subject: 'drive',
    unit: 'A',
    sense: 'at most',
    need: 'bridge.currentContinuous',
    has: 'drive.skidChannel',
    remedy:
      'Drivers turn on the spot again and again. Fit a bridge of more continuous current, one channel per motor, or tyres that skid more easily.',
  },
  'constants-agree': {
    title: 'The measured motor constants agree',
    subject: 'drive',
    unit: '%',
    sense: 'at most',
    need: 'drive.constantGapMost',
    has: 'drive.constantGap',
    remedy:
      'Repeat the test that is easier to get wrong: motor off the gears, cold, its voltage read at its own terminals. A gap that stays is the motor’s: trust speed from the no-load test and pull from the stall test.',
    informs: true,
  },
});
