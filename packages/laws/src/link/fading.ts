/** Margins and rates of fading: how much spare signal a wanted availability needs, and how fades come and go. */
import { LIGHT_SPEED } from '../constants.ts';
import { law } from '../law.ts';
import { normalQuantile } from './normal.ts';

const availability = {
  symbol: 'A',
  is: 'share of time or places that must be served',
  unit: '1',
  above: 0,
  below: 1,
} as const;

/** Margin against shadowing that is log-normal about the median. */
export const shadowingMargin = law(
  {
    id: 'shadowing-margin',
    title: 'Margin against shadowing',
    equation: 'M = σ · z(A)',
    args: {
      sigma: { symbol: 'σ', is: 'spread of the loss about its median', unit: 'dB', from: 0 },
      availability,
    },
    gives: { symbol: 'M', is: 'margin above the median', unit: 'dB' },
    validFor: 'loss that is normal in decibels',
    leavesOut: 'fast fading; add its margin apart',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., log-normal shadowing',
  },
  ({ sigma, availability }) => sigma * normalQuantile({ probability: availability }),
);

/** Margin against fast fading without a line of sight, below the mean power. */
export const rayleighMargin = law(
  {
    id: 'rayleigh-margin',
    title: 'Margin against Rayleigh fading',
    equation: 'M = −10 · log10(−ln A)',
    args: { availability },
    gives: { symbol: 'M', is: 'margin below the mean power', unit: 'dB' },
    validFor: 'many waves, none dominant, one aerial',
    leavesOut: 'a dominant wave, which shrinks the margin; diversity',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., Rayleigh fading distribution',
  },
  ({ availability }) => -10 * Math.log10(-Math.log(availability)),
);

/** Greatest Doppler shift of a moving aerial. */
export const dopplerShift = law(
  {
    id: 'doppler-shift',
    title: 'Greatest Doppler shift',
    equation: 'fd = v · f / c',
    args: {
      speed: { symbol: 'v', is: 'speed of the rover', unit: 'm/s', from: 0, to: 100 },
      frequency: { symbol: 'f', is: 'carrier frequency', unit: 'Hz', above: 0 },
    },
    gives: { symbol: 'fd', is: 'greatest Doppler shift', unit: 'Hz' },
    validFor: 'speeds far below that of light',
    leavesOut: 'movement of people and leaves, which also shifts',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., Doppler shift',
  },
  ({ speed, frequency }) => (speed * frequency) / LIGHT_SPEED,
);

const shift = { symbol: 'fd', is: 'greatest Doppler shift', unit: 'Hz', above: 0 } as const;
const level = { symbol: 'ρ', is: 'threshold as a share of the rms amplitude', unit: '1', above: 0 } as const;

/** How often the envelope sinks through a level. */
export const fadeRate = law(
  {
    id: 'fade-rate',
    title: 'Rate of fades through a level',
    equation: 'N = √(2π) · fd · ρ · e^(−ρ²)',
    args: { shift, level },
    gives: { symbol: 'N', is: 'downward crossings each second', unit: '1/s' },
    validFor: 'Rayleigh fading, waves from all sides, vertical aerial',
    leavesOut: 'a dominant wave, which makes fades rarer',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., level crossing rate',
  },
  ({ shift, level }) => Math.sqrt(2 * Math.PI) * shift * level * Math.exp(-level * level),
);

/** How long a fade below a level lasts on average. */
export const fadeDuration = law(
  {
    id: 'fade-duration',
    title: 'Mean duration of a fade',
    equation: 'τ = (e^(ρ²) − 1) / (ρ · fd · √(2π))',
    args: { shift, level },
    gives: { symbol: 'τ', is: 'mean time below the level', unit: 's' },
    validFor: 'Rayleigh fading while moving; a standing rover can stay in a null for ever',
    leavesOut: 'a dominant wave',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., average fade duration',
  },
  ({ shift, level }) => Math.expm1(level * level) / (level * shift * Math.sqrt(2 * Math.PI)),
);
