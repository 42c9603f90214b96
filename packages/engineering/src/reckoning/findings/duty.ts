/** Findings about the duty and the bridge. */
import { findings } from '../finding.ts';

const SHORTS =
  'Work on the bridge with the pack unplugged and the wheels off the ground: a bridge that fails may leave a motor full on.';

export const dutyFindings = findings({
  'duty-ceiling': {
    title: 'The duty in force stays below what the motor’s rating allows',
    subject: 'duty and bridge',
    unit: '%',
    sense: 'at most',
    need: 'duty.ceiling',
    has: 'duty.applied',
    remedy:
      'Lower the duty ceiling in the settings, or leave it out: the reckoning then computes the greatest that is safe. A pack of fewer cells does the same.',
  },
  'motor-voltage': {
    title: 'The mean motor voltage stays within its rating at a full pack',
    subject: 'duty and bridge',
    unit: 'V',
    sense: 'at most',
    need: 'motor.ratedVoltage',
    has: 'duty.motorVoltage',
    remedy: 'Lower the duty ceiling, or fit a pack of fewer cells. Brushes and commutator wear fast above the rating.',
  },
  'bridge-continuous': {
    title: 'A bridge channel bears the climb’s current for long',
    subject: 'duty and bridge',
    unit: 'A',
    sense: 'at most',
    need: 'bridge.currentContinuous',
    has: 'bridge.channelClimb',
    remedy:
      'Fit a bridge of a higher continuous current, or give each motor a channel of its own: motors in parallel on one channel add.',
  },
  'bridge-peak': {
    title: 'A bridge channel bears the current of a stall',
    subject: 'duty and bridge',
    unit: 'A',
    sense: 'at most',
    need: 'bridge.currentPeak',
    has: 'bridge.channelBlocked',
    remedy:
      'Fit a bridge of a higher peak current or with a current limit, lower the duty ceiling, or spread the motors over more channels. Every start is a short stall.',
    caution: SHORTS,
  },
  'bridge-voltage-high': {
    title: 'The bridge stands the full pack',
    subject: 'duty and bridge',
    unit: 'V',
    sense: 'at most',
    need: 'bridge.voltageMax',
    has: 'pack.full',
    remedy:
      'Fit a bridge of a higher supply voltage, or fewer cells. Leave room as well for the spikes of long leads and of braking.',
    caution: SHORTS,
  },
  'bridge-voltage-low': {
    title: 'The bridge keeps its least supply while the drive stalls',
    subject: 'duty and bridge',
    unit: 'V',
    sense: 'at least',
    need: 'bridge.voltageMin',
    has: 'bridge.supplyLow',
    remedy:
      'A bridge short of supply drives its gates half on and burns. Fit more cells, a pack of lower resistance, a thicker shared run, or a bridge that runs from less; or lower the duty ceiling.',
    caution: SHORTS,
  },
  'bridge-hot-climb': {
    title: 'The bridge stays cool enough on the steepest climb',
    subject: 'duty and bridge',
    unit: '°C',
    sense: 'at most',
    need: 'bridge.junctionMax',
    has: 'bridge.junctionClimb',
    remedy:
      'Fit a heat sink or a bridge of less drop, take it out of the closed enclosure, or make the climb shorter. A bipolar bridge turns volts of a small pack into heat.',
    caution: 'Heat sinks and bridges burn fingers long before they fail.',
  },
  'bridge-hot-stall': {
    title: 'The bridge outlives a stall at the end of the climb',
    subject: 'duty and bridge',
    unit: '°C',
    sense: 'at most',
    need: 'bridge.junctionMax',
    has: 'bridge.junctionStall',
    remedy: 'Let the drive cut a stall sooner, lower the duty ceiling, or fit a heat sink or a bridge of less drop.',
    caution: 'Heat sinks and bridges burn fingers long before they fail.',
  },
  'bridge-ripple': {
    title: 'The motor current does not stop between pulses, driving on the level',
    subject: 'duty and bridge',
    unit: 'A',
    sense: 'at most',
    need: 'drive.rippleBorne',
    has: 'bridge.ripple',
    remedy:
      'Raise the pulse-width frequency as far as the bridge follows. Small motors have little inductance: with ripple, speed no longer follows the duty and the winding warms more.',
    informs: true,
  },
  'bridge-reversal': {
    title: 'The bridge would bear being reversed at top speed',
    subject: 'duty and bridge',
    unit: 'A',
    sense: 'at most',
    need: 'bridge.currentPeak',
    has: 'drive.reversingChannel',
    remedy: 'Let the guard brake to rest before it reverses, which it does by default.',
    informs: true,
  },
});
