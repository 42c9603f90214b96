/** Waiting in a queue, and how old the newest thing delivered is on average. */
import { law } from '../law.ts';

const service = { symbol: 'S', is: 'mean time to send one', unit: 's', above: 0 } as const;
const load = {
  symbol: 'ρ',
  is: 'offered load: mean sending time over mean interval',
  unit: '1',
  above: 0,
  below: 1,
} as const;

/** Mean wait before sending, random arrivals in order. */
export const queueWait = law(
  {
    id: 'queue-wait',
    title: 'Mean wait in a queue',
    equation: 'W = ρ · S · (1 + c²) / (2 · (1 − ρ))',
    args: {
      service,
      load,
      variation: { symbol: 'c', is: 'spread of the sending time over its mean', unit: '1', from: 0 },
    },
    gives: { symbol: 'W', is: 'mean time before sending begins', unit: 's' },
    validFor: 'random arrivals, unlimited queue, served in order; c = 1 for M/M/1, 0 for M/D/1',
    leavesOut: 'limited buffers, bursts',
    source: 'Kleinrock, Queueing Systems, volume 1, 1975, Pollaczek–Khinchine mean-value formula',
  },
  ({ service, load, variation }) => (load * service * (1 + variation * variation)) / (2 * (1 - load)),
);

/** Mean age of the newest delivered, arrivals and sending times both random, in order. */
export const ageRandomQueue = law(
  {
    id: 'age-random-queue',
    title: 'Mean age behind a queue, M/M/1',
    equation: 'Δ = S · (1 + 1/ρ + ρ²/(1 − ρ))',
    args: { service, load },
    gives: { symbol: 'Δ', is: 'mean age of the newest delivered', unit: 's' },
    validFor: 'random arrivals, exponential sending times, served in order; freshest near ρ = 0.53',
    leavesOut: 'propagation and everything outside the queue',
    source: 'Kaul, Yates and Gruteser, Real-time status: how often should one update?, INFOCOM 2012',
  },
  ({ service, load }) => service * (1 + 1 / load + (load * load) / (1 - load)),
);

/** Mean age of the newest delivered, random arrivals, equal sending times, in order. */
export const ageEqualQueue = law(
  {
    id: 'age-equal-queue',
    title: 'Mean age behind a queue, M/D/1',
    equation: 'Δ = S · (1/(2·(1 − ρ)) + 1/2 + (1 − ρ)·e^ρ/ρ)',
    args: { service, load },
    gives: { symbol: 'Δ', is: 'mean age of the newest delivered', unit: 's' },
    validFor: 'random arrivals, equal sending times, served in order; freshest near ρ = 0.63',
    leavesOut: 'propagation and everything outside the queue',
    source: 'Kaul, Yates and Gruteser, Real-time status: how often should one update?, INFOCOM 2012',
  },
  ({ service, load }) => service * (1 / (2 * (1 - load)) + 0.5 + ((1 - load) * Math.exp(load)) / load),
);

/** Mean age when the newest displaces what is being sent. */
export const ageNewestWins = law(
  {
    id: 'age-newest-wins',
    title: 'Mean age when the newest wins',
    equation: 'Δ = S · (1 + 1/ρ)',
    args: {
      service,
      load: { symbol: 'ρ', is: 'offered load; may exceed one', unit: '1', above: 0 },
    },
    gives: { symbol: 'Δ', is: 'mean age of the newest delivered', unit: 's' },
    validFor: 'random arrivals, exponential sending times, the newest pre-empts; never gets worse with load',
    leavesOut: 'equal sending times, where pre-empting starves above ρ = 1: let the newest wait instead',
    source: 'Kaul, Yates and Gruteser, Status updates through queues, CISS 2012',
  },
  ({ service, load }) => service * (1 + 1 / load),
);
