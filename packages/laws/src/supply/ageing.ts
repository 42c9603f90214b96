/** Wear of lithium cells by cycling: a fitted law and a table rule. */
import { GAS_CONSTANT } from '../constants.ts';
import { law } from '../law.ts';
import { straightLines } from './interpolate.ts';

const HOUR = 3600;
const WANG =
  'Wang et al., Cycle-life model for graphite-LiFePO4 cells, J. Power Sources 196 (2011) 3942, generalised power law';
const WANG_RATES = [0.5, 2, 6, 10] as const;
const WANG_B = [31630, 21681, 12934, 15512] as const;
const WANG_POWER = 0.55;

/** Loss percent per Ah^0.55 at a C-rate and temperature. */
function wangSpeed(rate: number, temperature: number): number {
  const energy = 31700 - 370.3 * rate;
  return straightLines(WANG_RATES, WANG_B, rate) * Math.exp(-energy / (GAS_CONSTANT * temperature));
}

const rate = { symbol: 'c', is: 'C-rate of the discharge', unit: '1', from: 0.5, to: 10 } as const;
const temperature = { symbol: 'T', is: 'cell temperature', unit: 'K', from: 288, to: 333.2 } as const;
const WANG_VALID =
  '2 to 3 Ah lithium iron phosphate cells, 15 to 60 °C; factors between the four tested rates by straight lines';

/** Capacity lost by charge put through, lithium iron phosphate. */
export const cyclingLoss = law(
  {
    id: 'cycling-loss',
    title: 'Capacity lost by cycling, lithium iron phosphate',
    equation: 'loss = 0.01 · B(c) · exp(−(31700 − 370.3 c) / (Rgas T)) · (q / 3600 C)^0.55',
    args: {
      rate,
      temperature,
      throughput: { symbol: 'q', is: 'charge put through by discharges', unit: 'C', from: 0 },
    },
    gives: { symbol: 'loss', is: 'share of the capacity lost', unit: '1' },
    validFor: WANG_VALID,
    leavesOut: 'calendar ageing, charging in the cold, depth of discharge, cells of other sizes (scale the throughput)',
    source: WANG,
  },
  ({ rate, temperature, throughput }) => 0.01 * wangSpeed(rate, temperature) * (throughput / HOUR) ** WANG_POWER,
);

/** Charge that can be put through until a share of the capacity is lost. */
export const throughputToLoss = law(
  {
    id: 'throughput-to-loss',
    title: 'Charge throughput until a share of the capacity is lost, lithium iron phosphate',
    equation: 'q = 3600 C · (100 loss / (B(c) · exp(−(31700 − 370.3 c) / (Rgas T))))^(1 / 0.55)',
    args: {
      rate,
      temperature,
      loss: { symbol: 'loss', is: 'share of the capacity lost', unit: '1', above: 0, to: 0.5 },
    },
    gives: { symbol: 'q', is: 'charge put through by discharges', unit: 'C' },
    validFor: WANG_VALID,
    leavesOut: 'calendar ageing, charging in the cold, depth of discharge, cells of other sizes (scale the throughput)',
    source: WANG,
  },
  ({ rate, temperature, loss }) => HOUR * ((100 * loss) / wangSpeed(rate, temperature)) ** (1 / WANG_POWER),
);

/** Depth of discharge and cycles to end of life, middle of each printed range. */
export const CYCLE_TABLE = {
  depth: [0.1, 0.25, 0.5, 1],
  cycles: [4225, 2250, 1350, 400],
  source: 'battery handling sheet: 3750 to 4700, 2000 to 2500, 1200 to 1500 and 300 to 500 cycles',
} as const;

/** Cycles to end of life against depth of discharge, table rule. */
export const cycleLife = law(
  {
    id: 'cycle-life',
    title: 'Cycles to end of life against depth of discharge',
    equation: 'N = table(d), straight lines in log N against log d',
    args: { depth: { symbol: 'd', is: 'depth of each discharge', unit: '1', from: 0.1, to: 1 } },
    gives: { symbol: 'N', is: 'cycles until about 80 % of the capacity is left', unit: '1' },
    validFor: 'lithium cells of the handling sheet, room temperature; ±25 %',
    leavesOut: 'chemistry (iron phosphate lasts longer), rate, temperature, storage',
    source: CYCLE_TABLE.source,
  },
  ({ depth }) =>
    Math.exp(straightLines(CYCLE_TABLE.depth.map(Math.log), CYCLE_TABLE.cycles.map(Math.log), Math.log(depth))),
);

/** Capacity left after a number of cycles when the life is known. */
export const capacityAfterCycles = law(
  {
    id: 'capacity-after-cycles',
    title: 'Share of the capacity left after cycling, straight-line rule',
    equation: 'r = 1 − 0.2 · n / N',
    args: {
      cycles: { symbol: 'n', is: 'cycles done', unit: '1', from: 0 },
      life: { symbol: 'N', is: 'cycles to 80 % of the capacity', unit: '1', above: 0 },
    },
    gives: { symbol: 'r', is: 'capacity left over capacity when new', unit: '1' },
    validFor: 'n up to about N; many cells fall off faster after that',
    leavesOut: 'the faster first loss and the knee at the end of life',
    source:
      'end of life at 80 % of rated capacity, as in IEC 61960-3 cycle tests and cell data sheets, from memory; straight line is common practice',
  },
  ({ cycles, life }) => 1 - (0.2 * cycles) / life,
);
