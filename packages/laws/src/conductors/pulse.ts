/** Energy let through to a fuse by a pulse, and the share of its melting energy it withstands for ever. */
import { law } from '../law.ts';

/** Shapes of a current pulse. */
export const PULSE_SHAPES = ['rectangle', 'half sine', 'triangle', 'exponential decay'] as const;
export type PulseShape = (typeof PULSE_SHAPES)[number];

/** Mean of the squared current over the pulse, as a share of the squared peak; makers' guides, table of waveforms. */
export const PULSE_FACTOR: Readonly<Record<PulseShape, number>> = {
  rectangle: 1,
  'half sine': 1 / 2,
  triangle: 1 / 3,
  'exponential decay': 1 / 2,
};

const GUIDE = 'Littelfuse, Fuseology selection guide (2017), chart 1: I²t of common pulse waveforms';
const TIME = { symbol: 't', is: 'duration; for an exponential decay its time constant', unit: 's', above: 0 } as const;
const PEAK = { symbol: 'ip', is: 'peak current', unit: 'A', above: 0 } as const;

/** Integral of squared current of one pulse. */
export const pulseEnergy = law(
  {
    id: 'pulse-energy',
    title: 'I²t of a pulse',
    equation: 'E = f(shape) · ip² · t, f = 1, 1/2, 1/3, 1/2',
    args: { peak: PEAK, time: TIME, shape: { symbol: 'shape', is: 'waveform', unit: 'name', oneOf: PULSE_SHAPES } },
    gives: { symbol: 'E', is: 'integral of the squared current', unit: 'A²·s' },
    validFor: 'one pulse on a cold fuse',
    leavesOut: 'steady current beside the pulse, heat left by an earlier pulse within 10 s',
    source: GUIDE,
  },
  ({ peak, time, shape }) => PULSE_FACTOR[shape] * peak ** 2 * time,
);

/** Integral of squared current while the current goes in a straight line from one value to another: a motor starting. */
export const rampEnergy = law(
  {
    id: 'ramp-energy',
    title: 'I²t of a sloping pulse',
    equation: 'E = (ip² + ip·ib + ib²) · t / 3',
    args: {
      peak: PEAK,
      end: { symbol: 'ib', is: 'current at the end', unit: 'A', from: 0 },
      time: { symbol: 't', is: 'duration', unit: 's', above: 0 },
    },
    gives: { symbol: 'E', is: 'integral of the squared current', unit: 'A²·s' },
    validFor: 'one pulse on a cold fuse',
    leavesOut: 'curvature of the pulse',
    source: GUIDE,
  },
  ({ peak, end, time }) => ((peak ** 2 + peak * end + end ** 2) * time) / 3,
);

/** Share of the average melting I²t that a fuse withstands a number of times. */
export const pulseShare = law(
  {
    id: 'pulse-share',
    title: 'Share of melting I²t withstood N times',
    equation: 's = 0.48 · (N/100)^(log10(0.22/0.48)/3)',
    args: { pulses: { symbol: 'N', is: 'number of pulses in the life of the fuse', unit: '1', from: 100, to: 100000 } },
    gives: { symbol: 's', is: 'pulse I²t over average melting I²t', unit: '1' },
    validFor: 'pulses at least 10 s apart; a power law through the ends of the published table',
    leavesOut: 'temperature, the scatter of melting I²t between fuses',
    source: 'Littelfuse, Fuseology selection guide (2017), chart 2: 48 % for 100 and 22 % for 100 000 pulses',
  },
  ({ pulses }) => 0.48 * (pulses / 100) ** (Math.log10(0.22 / 0.48) / 3),
);
