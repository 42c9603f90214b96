/** The link budget: what is radiated, what arrives, what it must beat. */
import { BOLTZMANN } from '../constants.ts';
import { law } from '../law.ts';

/** Noise temperature to which noise figures refer [K]; IEEE standard definition of noise figure. */
export const NOISE_REFERENCE = 290;

const power = { symbol: 'Pt', is: 'power at the transmitter connector', unit: 'dBm', from: -60, to: 60 } as const;
const gain = { symbol: 'Gt', is: 'gain of the transmitting aerial', unit: 'dBi', from: -30, to: 60 } as const;
const cable = { symbol: 'Lt', is: 'loss of cable and connectors to the aerial', unit: 'dB', from: 0 } as const;

/** Equivalent isotropically radiated power. */
export const radiatedPower = law(
  {
    id: 'radiated-power',
    title: 'Equivalent isotropically radiated power',
    equation: 'EIRP = Pt + Gt − Lt',
    args: { power, gain, cable },
    gives: { symbol: 'EIRP', is: 'equivalent isotropically radiated power', unit: 'dBm' },
    validFor: 'the direction of greatest gain',
    leavesOut: 'mismatch, body and chassis near the aerial',
    source: 'ITU Radio Regulations, article 1.161',
  },
  ({ power, gain, cable }) => power + gain - cable,
);

/** Greatest transmitter power a limit on radiated power leaves for an aerial. */
export const powerWithinLimit = law(
  {
    id: 'power-within-limit',
    title: 'Transmitter power within a limit on radiated power',
    equation: 'Pt = EIRP − Gt + Lt',
    args: {
      limit: { symbol: 'EIRP', is: 'greatest radiated power allowed', unit: 'dBm', from: -60, to: 60 },
      gain,
      cable,
    },
    gives: { symbol: 'Pt', is: 'greatest power at the connector', unit: 'dBm' },
    validFor: 'bands whose limit counts the gain of the aerial',
    leavesOut: 'power density limits, transmit power control, radar avoidance',
    source: 'ETSI EN 300 328, radiated power including the aerial gain',
  },
  ({ limit, gain, cable }) => limit - gain + cable,
);

/** Power at the receiver connector. */
export const receivedPower = law(
  {
    id: 'received-power',
    title: 'Received power',
    equation: 'Pr = EIRP + Gr − L − Lx',
    args: {
      radiated: { symbol: 'EIRP', is: 'radiated power of the far end', unit: 'dBm', from: -60, to: 100 },
      gain: { symbol: 'Gr', is: 'gain of the receiving aerial', unit: 'dBi', from: -30, to: 60 },
      pathLoss: { symbol: 'L', is: 'loss of the path', unit: 'dB', from: 0 },
      extraLoss: { symbol: 'Lx', is: 'cable, polarisation, body, walls, foliage', unit: 'dB', from: 0 },
    },
    gives: { symbol: 'Pr', is: 'power at the receiver connector', unit: 'dBm' },
    validFor: 'median conditions',
    leavesOut: 'fading about the median; see the margins',
    source: 'Rec. ITU-R P.341, the concept of transmission loss for radio links',
  },
  ({ radiated, gain, pathLoss, extraLoss }) => radiated + gain - pathLoss - extraLoss,
);

/** Noise that a receiver adds its signal to. */
export const noiseFloor = law(
  {
    id: 'noise-floor',
    title: 'Noise floor of a receiver',
    equation: 'N = 10 · log10(k · 290 K · B / 1 mW) + NF',
    args: {
      bandwidth: { symbol: 'B', is: 'noise bandwidth', unit: 'Hz', above: 0 },
      noiseFigure: { symbol: 'NF', is: 'noise figure', unit: 'dB', from: 0, to: 40 },
    },
    gives: { symbol: 'N', is: 'noise power at the input', unit: 'dBm' },
    validFor: 'an aerial that sees about 290 K',
    leavesOut: 'interference, usually the larger part in a busy band',
    source: 'Rec. ITU-R P.372, thermal noise kTB; k exact (SI)',
  },
  ({ bandwidth, noiseFigure }) => 10 * Math.log10((BOLTZMANN * NOISE_REFERENCE * bandwidth) / 1e-3) + noiseFigure,
);

/** How far the signal stands above the noise. */
export const signalToNoise = law(
  {
    id: 'signal-to-noise',
    title: 'Signal-to-noise ratio',
    equation: 'SNR = Pr − N',
    args: {
      received: { symbol: 'Pr', is: 'power at the receiver', unit: 'dBm', from: -200, to: 60 },
      noise: { symbol: 'N', is: 'noise power at the receiver', unit: 'dBm', from: -200, to: 60 },
    },
    gives: { symbol: 'SNR', is: 'signal-to-noise ratio', unit: 'dB' },
    validFor: 'noise alone, no interference',
    leavesOut: 'interference',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., link budget',
  },
  ({ received, noise }) => received - noise,
);

/** How far the signal stands above what the receiver needs. */
export const linkMargin = law(
  {
    id: 'link-margin',
    title: 'Link margin',
    equation: 'M = Pr − S',
    args: {
      received: { symbol: 'Pr', is: 'power at the receiver', unit: 'dBm', from: -200, to: 60 },
      sensitivity: { symbol: 'S', is: 'least power for the wanted rate', unit: 'dBm', from: -200, to: 0 },
    },
    gives: { symbol: 'M', is: 'margin, to be spent on fading', unit: 'dB' },
    validFor: 'one direction; the weaker one decides',
    leavesOut: 'interference',
    source: 'Rappaport, Wireless Communications: Principles and Practice, 2nd ed., link budget',
  },
  ({ received, sensitivity }) => received - sensitivity,
);
