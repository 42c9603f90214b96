/** Findings about the 5 V supply. */
import { findings } from '../finding.ts';

const RESET = 'A board that resets while the wheels are driven leaves only the lower dead-man to stop them.';

export const supplyFindings = findings({
  'brown-out-stall': {
    title: 'A stall of the drive does not reset the board',
    subject: '5 V supply',
    unit: 'V',
    sense: 'at least',
    need: 'supply.inputNeeded',
    has: 'supply.inputStall',
    remedy:
      'More cells, a pack of lower resistance, a thicker shared run, or a converter that needs less head-room; or lower the duty ceiling and ramp the start. A step-up/step-down converter or a pack of its own for the board ends the question.',
    caution: RESET,
  },
  'brown-out-board': {
    title: 'The board keeps its voltage while the drive stalls',
    subject: '5 V supply',
    unit: 'V',
    sense: 'at least',
    need: 'computer.brownOut',
    has: 'supply.boardVoltageStall',
    remedy: 'As for the input: the converter passes a sagging input on once its head-room is gone.',
    caution: RESET,
  },
  'brown-out-reversal': {
    title: 'Reversing at full speed does not reset the board',
    subject: '5 V supply',
    unit: 'V',
    sense: 'at least',
    need: 'supply.inputNeeded',
    has: 'supply.inputReversal',
    remedy: 'Let the guard brake to rest before it reverses, which it does by default.',
    informs: true,
  },
  'board-peak': {
    title: 'The lead to the board leaves enough voltage at its peak',
    subject: '5 V supply',
    unit: 'V',
    sense: 'at least',
    need: 'computer.brownOut',
    has: 'supply.boardVoltage',
    remedy: 'Shorten or thicken the run from converter to board, use fewer contacts, or trim the converter to 5.1 V.',
  },
  'converter-current': {
    title: 'The converter bears the peak current without airflow',
    subject: '5 V supply',
    unit: 'A',
    sense: 'at least',
    need: 'supply.currentPeak',
    has: 'supply.currentRated',
    remedy: 'Fit a converter of a higher rating, or feed the servo from one of its own.',
  },
  'converter-input-high': {
    title: 'The converter stands the full pack',
    subject: '5 V supply',
    unit: 'V',
    sense: 'at most',
    need: 'converter.inputMax',
    has: 'pack.full',
    remedy: 'Fit a converter of a higher input voltage: past its limit it fails, and may put the pack on the board.',
    caution:
      'A converter that fails can burn, and the board behind it: try a new one on the bench, with the fuse in the lead.',
  },
  'converter-input-low': {
    title: 'The resting pack at the reserve feeds the converter',
    subject: '5 V supply',
    unit: 'V',
    sense: 'at least',
    need: 'supply.inputNeeded',
    has: 'pack.restReserve',
    remedy: 'More cells, or a converter that needs less head-room.',
  },
  'supply-collapse': {
    title: 'The bus can give the board’s peak power while the drive stalls',
    subject: '5 V supply',
    unit: 'W',
    sense: 'at least',
    need: 'supply.inputPeakPower',
    has: 'supply.collapsePower',
    remedy:
      'Above this power there is no voltage at which the converter settles: lower the resistance of pack and shared run.',
    caution: RESET,
  },
});
