import { checkLaw, checkSubject } from '../check.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import {
  bladeRating,
  FUSE_STRICT_SHARE,
  fuseAmbientShare,
  fuseDrop,
  fuseRatingByDerating,
  fuseRatingByMargin,
  fuseRatingByShare,
  prospectiveShortCircuit,
} from './fuse.ts';

const GUIDE = 'Littelfuse, Fuseology selection guide: 25 % derating, from memory';
const MARGIN = 'public fuse-sizing pages: 125 % of the continuous current';
const RATINGS = 'blade fuse ratings as sold, from memory';
const ATOF = 'Littelfuse ATOF 287 data sheet, 40 A part: 1.44 mΩ cold, 96 mV at rating';
const MAXI = 'Littelfuse MAXI 299 data sheet, 40 A part: 1.4 mΩ cold, 75 mV at rating';

export const fuseChecks = [
  checkLaw(fuseRatingByDerating, [
    {
      case: '7.5 A continuous wants 10 A',
      source: GUIDE,
      kind: 'memory',
      args: { current: 7.5 },
      expected: 10,
      allowed: 1e-6,
    },
  ]),
  checkLaw(fuseRatingByMargin, [
    {
      case: '8 A continuous wants 10 A',
      source: MARGIN,
      kind: 'common practice',
      args: { current: 8 },
      expected: 10,
      allowed: 1e-6,
    },
  ]),
  checkLaw(fuseRatingByShare, [
    {
      case: '1.5 A at 40 °C with derating 0.7 and temperature factor 0.95: printed 2.255 A',
      source: 'TA-I, thin film chip fuse data sheet TCP-XXOS006H, p. 10',
      kind: 'published',
      args: { current: 1.5, share: 0.7, ambientShare: 0.95 },
      expected: 2.255,
      allowed: 0.001,
    },
    {
      case: '8 A at 65 % of the rating: 12.3 A',
      source: 'ECSS-Q-ST-30-11C Rev. 2 (2021), 6.17, load of fuses',
      kind: 'published',
      args: { current: 8, share: FUSE_STRICT_SHARE, ambientShare: 1 },
      expected: 12.3,
      allowed: 0.002,
    },
  ]),
  checkLaw(bladeRating, [
    {
      case: '10.67 A becomes 15 A',
      source: RATINGS,
      kind: 'memory',
      args: { rating: 10.67 },
      expected: 15,
      allowed: 1e-9,
    },
    { case: '9.4 A becomes 10 A', source: RATINGS, kind: 'memory', args: { rating: 9.4 }, expected: 10, allowed: 1e-9 },
    { case: '6 A becomes 7.5 A', source: RATINGS, kind: 'memory', args: { rating: 6 }, expected: 7.5, allowed: 1e-9 },
  ]),
  checkLaw(fuseAmbientShare, [
    {
      case: 'at 40 °C, where a chip fuse of another maker has the factor 0.95',
      source: 'TA-I, thin film chip fuse data sheet TCP-XXOS006H, p. 10',
      kind: 'published',
      args: { ambient: ZERO_CELSIUS + 40 },
      expected: 0.95,
      allowed: 0.02,
    },
    {
      case: 'at 110 °C: 25 A of 40 A',
      source: 'Littelfuse MAXI 299 data sheet, 40 A part, ambient derating',
      kind: 'published',
      args: { ambient: ZERO_CELSIUS + 110 },
      expected: 25 / 40,
      allowed: 1e-6,
    },
  ]),
  checkLaw(fuseDrop, [
    {
      case: 'regular blade at its rating, hot',
      source: ATOF,
      kind: 'published',
      args: { current: 40, rating: 40, coldResistance: 1.44e-3, ratedDrop: 0.096 },
      expected: 0.096,
      allowed: 1e-6,
    },
    {
      case: 'large blade at a tenth of its rating, where the cold resistance is measured',
      source: MAXI,
      kind: 'published',
      args: { current: 4, rating: 40, coldResistance: 1.4e-3, ratedDrop: 0.075 },
      expected: 4 * 1.4e-3,
      allowed: 0.005,
    },
  ]),
  checkLaw(prospectiveShortCircuit, [
    {
      case: 'three lithium cells of 5 mΩ, full, 10 mΩ of leads: 12.6 V over 25 mΩ',
      source: 'series resistance worked by hand; cell resistance of racing packs, common practice, no source',
      kind: 'common practice',
      args: { openVoltage: 12.6, series: 3, parallel: 1, cellResistance: 0.005, leadResistance: 0.01 },
      expected: 504,
      allowed: 1e-6,
    },
    {
      case: 'six nickel cells of 30 mΩ in two strings, 7.2 V, 20 mΩ of leads: 7.2 V over 110 mΩ',
      source: 'series and parallel resistance worked by hand; cell resistance, common practice, no source',
      kind: 'common practice',
      args: { openVoltage: 7.2, series: 6, parallel: 2, cellResistance: 0.03, leadResistance: 0.02 },
      expected: 65.4545,
      allowed: 1e-5,
    },
  ]),
  checkSubject('blade fuse for a load', [
    {
      case: '8 A by 25 % derating: 15 A',
      source: `${GUIDE}; ${RATINGS}`,
      kind: 'memory',
      ours: () => bladeRating({ rating: fuseRatingByDerating({ current: 8 }) }),
      expected: 15,
      allowed: 1e-9,
    },
    {
      case: '8 A by 125 %: 10 A',
      source: `${MARGIN}; ${RATINGS}`,
      kind: 'common practice',
      ours: () => bladeRating({ rating: fuseRatingByMargin({ current: 8 }) }),
      expected: 10,
      allowed: 1e-9,
    },
  ]),
];
