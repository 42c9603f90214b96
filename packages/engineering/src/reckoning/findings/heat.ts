/** Findings about heat. */
import { findings } from '../finding.ts';

const HOT_MOTOR = 'The can of a hot motor burns fingers and melts its mount. Let it cool before touching it.';

export const heatFindings = findings({
  'winding-cruise': {
    title: 'The winding stays cool enough, driving on the level for long',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'motor.windingLimit',
    has: 'heat.windingCruise',
    remedy:
      'Gear lower or shed mass, so that the current falls; raise the pulse-width frequency where the ripple is large; let air to the can or clamp it to metal.',
    caution: HOT_MOTOR,
  },
  'winding-climb': {
    title: 'The winding bears the longest climb',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'motor.windingLimit',
    has: 'heat.windingClimb',
    remedy: 'Rest on long climbs, gear lower or shed mass: heat goes with the square of the current.',
    caution: HOT_MOTOR,
  },
  'winding-stall': {
    title: 'The winding outlives a stall at the end of the climb',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'motor.windingLimit',
    has: 'heat.windingStall',
    remedy: 'Let the drive cut a stall sooner, or lower the duty ceiling. A stalled winding warms by kelvins a second.',
    caution: HOT_MOTOR,
  },
  'steering-held': {
    title: 'The steering motor may be held at its stop at the holding duty',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'motor.windingLimit',
    has: 'heat.steerHeld',
    remedy: 'Lower the holding duty: just enough to hold is often a third. A weaker centring spring holds with less.',
    caution: HOT_MOTOR,
  },
  'steering-full': {
    title: 'The steering motor outlives full drive for the longest hold',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'motor.windingLimit',
    has: 'heat.steerFull',
    remedy:
      'Shorten the longest hold, and drop to the holding duty as soon as the stop is reached: a motor against its stop turns all of its power into heat. A slip clutch eases this and does not end it.',
    caution: HOT_MOTOR,
  },
  'steering-bridge': {
    title: 'A bridge channel bears the steering motor at its stop',
    subject: 'heat',
    unit: 'A',
    sense: 'at most',
    need: 'bridge.currentPeak',
    has: 'heat.steerCurrent',
    remedy:
      'Give the steering motor a channel of its own of a higher peak current, or a resistor in its lead: a drive takes its motor to the stop at every turn.',
    caution: HOT_MOTOR,
  },
  'board-hot': {
    title: 'The computer board streams without throttling on the hottest day',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'computer.temperatureMax',
    has: 'heat.board',
    remedy:
      'Let air through the enclosure, bond the board to a metal lid, fit a heat sink, shade or whiten the box, or send a smaller picture. A throttling board makes the picture older just when the day is busiest.',
  },
  'enclosure-soft': {
    title: 'An enclosure printed in PLA keeps its shape on the hottest day',
    subject: 'heat',
    unit: '°C',
    sense: 'at most',
    need: 'heat.wallMost',
    has: 'heat.boxWall',
    remedy: 'Print it in PETG or ABS, in a light colour, or shade it. Other plastics and metal bear more.',
    caution: 'A lithium pack inside such a box is too hot as well: keep it outside the enclosure and out of the sun.',
    informs: true,
  },
});
