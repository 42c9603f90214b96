/** Findings of the link: do pictures and commands arrive, do they fit, is the radio within what is usually allowed. */
import { findings } from '../finding.ts';

const RADIO_RULES =
  'Radio is regulated: the limit counts the gain of the aerial, and local rules prevail. Never raise the country setting to gain power.';

export const linkFindings = findings({
  'pictures-arrive': {
    title: 'Pictures arrive at the greatest distance, with the margin wanted against fading',
    subject: 'link',
    unit: 'dB',
    sense: 'at least',
    need: 'link.marginWanted',
    has: 'link.marginPictures',
    remedy:
      'Put the base aerial higher first: twice the height gains 6 dB on open ground, and so does twice the height of the aerial on the vehicle. Keep that aerial free of metal and pack, both aerials upright, and the base in sight. Send smaller or fewer pictures, so that a slower modulation carries them. Or bring the base nearer.',
  },
  'commands-arrive': {
    title: 'Commands arrive at the greatest distance, with the margin wanted against fading',
    subject: 'link',
    unit: 'dB',
    sense: 'at least',
    need: 'link.marginWanted',
    has: 'link.marginCommands',
    remedy:
      'A phone as a base sends more weakly than an access point, so commands die before pictures: use an access point with a better aerial, and put it higher. Gain at either aerial helps both directions.',
    caution: 'Where commands stop, only the guard aboard stops the vehicle: try it at the edge of the range.',
  },
  'link-carries-pictures': {
    title: 'The link carries the pictures at the wanted interval',
    subject: 'link',
    unit: 'Mbit/s',
    sense: 'at least',
    need: 'picture.rateNeeded',
    has: 'link.throughput',
    remedy:
      'Lower the quality before the rate falls below two pictures a second, then the width; or lengthen the interval. Where the uplink behind the base is the thin part, measure it at busy hours or take another one.',
  },
  'picture-sent-in-interval': {
    title: 'A picture is sent before the next is due',
    subject: 'link',
    unit: 'ms',
    sense: 'at most',
    need: 'picture.interval',
    has: 'picture.sendTime',
    remedy:
      'Make pictures smaller or the interval longer, and keep one picture in flight with only the newest waiting: a queue of old pictures shows the past.',
  },
  'loss-leaves-rate': {
    title: 'Packet loss leaves a stream the rate the pictures need',
    subject: 'link',
    unit: 'Mbit/s',
    sense: 'at least',
    need: 'picture.rateNeeded',
    has: 'link.tcpRate',
    remedy:
      'Use a congestion control that models the path instead of counting losses, or send pictures without repeats and let the newest win.',
    informs: true,
  },
  'vehicle-power-allowed': {
    title: 'The vehicle radiates no more than is usually allowed',
    subject: 'link',
    unit: 'dBm',
    sense: 'at most',
    need: 'link.eirpLimit',
    has: 'link.eirpVehicle',
    remedy: 'Set the transmitter lower by what is over, or fit an aerial of less gain.',
    caution: RADIO_RULES,
  },
  'base-power-allowed': {
    title: 'The base radiates no more than is usually allowed',
    subject: 'link',
    unit: 'dBm',
    sense: 'at most',
    need: 'link.eirpLimit',
    has: 'link.eirpBase',
    remedy:
      'Set the transmitter of the base lower by what is over. Gain of its aerial still helps to hear the pictures, as receiving is not limited.',
    caution: RADIO_RULES,
  },
  'reach-covers-distance': {
    title: 'The aerials stand high enough to reach the greatest distance',
    subject: 'link',
    unit: 'm',
    sense: 'at least',
    need: 'link.distance',
    has: 'link.reach',
    remedy:
      'Raise the base aerial, then the one on the vehicle: on open ground the reach grows with the root of either height. Or bound the area it is driven in to the reach.',
  },
});
