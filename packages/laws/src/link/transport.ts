/** What loss and delay leave of a stream, and how long a silent path stays open. */
import { law } from '../law.ts';

/** Mathis constant with one acknowledgement for each segment, √(3/2); Mathis et al. 1997. */
export const ACK_EVERY_SEGMENT = Math.sqrt(1.5);
/** Mathis constant with delayed acknowledgements; Mathis et al. 1997. */
export const ACK_DELAYED = 0.93;

const segment = { symbol: 'MSS', is: 'payload of one segment', unit: 'B', from: 1 } as const;
const roundTrip = { symbol: 'RTT', is: 'round-trip time, queues included', unit: 's', above: 0 } as const;
const loss = { symbol: 'p', is: 'share of segments lost at random', unit: '1', above: 0, to: 0.3 } as const;

/** Bound on a loss-steered TCP stream. */
export const lossBoundRate = law(
  {
    id: 'loss-bound-rate',
    title: 'TCP throughput under loss, square-root bound',
    equation: 'R = 8 · MSS · C / (RTT · √p)',
    args: {
      segment,
      roundTrip,
      loss,
      constant: { symbol: 'C', is: 'constant for the way of acknowledging', unit: '1', from: 0.5, to: 1.5 },
    },
    gives: { symbol: 'R', is: 'throughput', unit: 'bit/s' },
    validFor: 'congestion control that halves on loss; small loss, below about 2 %',
    leavesOut: 'retransmission time-outs, which rule above 2 %; control that models the path instead of counting loss',
    source: 'Mathis, Semke, Mahdavi and Ott, The macroscopic behavior of the TCP congestion avoidance algorithm, 1997',
  },
  ({ segment, roundTrip, loss, constant }) => (8 * segment * constant) / (roundTrip * Math.sqrt(loss)),
);

/** Loss-steered TCP stream with time-outs counted. */
export const lossTimeoutRate = law(
  {
    id: 'loss-timeout-rate',
    title: 'TCP throughput under loss, with time-outs',
    equation: 'R = 8·MSS / (RTT·√(1.33·p) + RTO·p·(1 + 32·p²)·min(1, 3·√(0.75·p)))',
    args: {
      segment,
      roundTrip,
      timeout: { symbol: 'RTO', is: 'retransmission time-out', unit: 's', above: 0 },
      loss,
    },
    gives: { symbol: 'R', is: 'throughput', unit: 'bit/s' },
    validFor: 'congestion control that halves on loss, delayed acknowledgements',
    leavesOut: 'selective acknowledgements, which lose up to a third less; window limits; control that models the path',
    source: 'RFC 3819, section 8.5, after Padhye, Firoiu, Towsley and Kurose 1998',
  },
  ({ segment, roundTrip, timeout, loss }) => {
    const steady = roundTrip * Math.sqrt(1.33 * loss);
    const stalls = timeout * loss * (1 + 32 * loss * loss) * Math.min(1, 3 * Math.sqrt(0.75 * loss));
    return (8 * segment) / (steady + stalls);
  },
);

/** Bytes in flight that keep a path busy. */
export const bandwidthDelay = law(
  {
    id: 'bandwidth-delay',
    title: 'Bandwidth-delay product',
    equation: 'b = R · RTT / 8',
    args: { rate: { symbol: 'R', is: 'throughput of the path', unit: 'bit/s', above: 0 }, roundTrip },
    gives: { symbol: 'b', is: 'bytes in flight that fill the path', unit: 'B' },
    validFor: 'round-trip time without queues',
    leavesOut: 'variation of the rate',
    source: 'RFC 7323, section 1.1, bandwidth-delay product',
  },
  ({ rate, roundTrip }) => (rate * roundTrip) / 8,
);

/** Chance that a picture sent in pieces without repair arrives whole. */
export const wholePictureChance = law(
  {
    id: 'whole-picture-chance',
    title: 'Chance that all pieces arrive',
    equation: 'P = (1 − p)^k',
    args: {
      loss: { symbol: 'p', is: 'share of packets lost, independent', unit: '1', from: 0, below: 1 },
      pieces: { symbol: 'k', is: 'packets the picture is cut into', unit: '1', from: 1 },
    },
    gives: { symbol: 'P', is: 'chance that the picture is whole', unit: '1' },
    validFor: 'independent loss; bursts lose fewer pictures for the same share',
    leavesOut: 'repair, reordering',
    source: 'Feller, An Introduction to Probability Theory and Its Applications, volume 1, independent trials',
  },
  ({ loss, pieces }) => (1 - loss) ** pieces,
);

/** How often to send so that an address mapping outlives lost keep-alives. */
export const keepAliveInterval = law(
  {
    id: 'keep-alive-interval',
    title: 'Keep-alive interval',
    equation: 'T = Tm / (n + 1)',
    args: {
      mapping: { symbol: 'Tm', is: 'silence after which the mapping is forgotten', unit: 's', above: 0 },
      misses: { symbol: 'n', is: 'keep-alives in a row that may be lost', unit: '1', from: 0 },
    },
    gives: { symbol: 'T', is: 'interval between keep-alives', unit: 's' },
    validFor: 'address translators that restart their clock at each outgoing packet',
    leavesOut: 'translators that forget under load',
    source: 'common practice, no source; time-outs of mappings in RFC 4787, REQ-5',
  },
  ({ mapping, misses }) => mapping / (misses + 1),
);
