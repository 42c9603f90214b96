/** Levels and lengths every radio sum starts from: the decibel milliwatt and the wavelength. */
import { LIGHT_SPEED } from '../constants.ts';
import { law } from '../law.ts';

/** Power as a level against one milliwatt. */
export const dbmFromWatts = law(
  {
    id: 'dbm-from-watts',
    title: 'Power as a level in dBm',
    equation: 'L = 10 · log10(P / 1 mW)',
    args: { power: { symbol: 'P', is: 'power', unit: 'W', above: 0 } },
    gives: { symbol: 'L', is: 'level against one milliwatt', unit: 'dBm' },
    validFor: 'any power above zero',
    leavesOut: 'nothing; it is a definition',
    source: 'Rec. ITU-R V.574, use of the decibel in telecommunications',
  },
  ({ power }) => 10 * Math.log10(power / 1e-3),
);

/** Level against one milliwatt as power. */
export const wattsFromDbm = law(
  {
    id: 'watts-from-dbm',
    title: 'Level in dBm as power',
    equation: 'P = 1 mW · 10^(L/10)',
    args: { level: { symbol: 'L', is: 'level against one milliwatt', unit: 'dBm', from: -300, to: 150 } },
    gives: { symbol: 'P', is: 'power', unit: 'W' },
    validFor: 'any level met in radio work',
    leavesOut: 'nothing; it is a definition',
    source: 'Rec. ITU-R V.574, use of the decibel in telecommunications',
  },
  ({ level }) => 1e-3 * 10 ** (level / 10),
);

/** Wavelength in air from the frequency. */
export const wavelength = law(
  {
    id: 'wavelength',
    title: 'Wavelength',
    equation: 'λ = c / f, c = 299 792 458 m/s',
    args: { frequency: { symbol: 'f', is: 'carrier frequency', unit: 'Hz', above: 0 } },
    gives: { symbol: 'λ', is: 'wavelength', unit: 'm' },
    validFor: 'vacuum, and air to three parts in ten thousand',
    leavesOut: 'refractive index of air and of materials',
    source: 'SI Brochure, 9th edition, definition of the metre',
  },
  ({ frequency }) => LIGHT_SPEED / frequency,
);
