/** Sums of the 5 V supply: what the board side draws, what the converter needs, and what is left for the board. */
import { converterHeat, holdUpTime } from '@longrein/laws';
import { type SumsOf, sum } from '../sum.ts';
import type { SumIdOf } from './ids.ts';
import { stallSupplySums } from './supply-stall.ts';

/** Small converter boards bear about two thirds of their printed current without airflow; common practice, no source. */
const NO_AIRFLOW = 0.65;

export const supplySums: SumsOf<SumIdOf<'5 V supply'>> = {
  'supply.loadMean': sum(
    {
      title: 'power on the 5 V side, mean with the picture on',
      unit: 'W',
      caveat: 'The board streams all the time: most often the largest consumer of the day.',
    },
    {
      uses: { board: 'computer.busyPower', camera: 'camera.power', modem: 'modem.power' },
      formula: '{board} + {camera} + {modem}',
      laws: [],
      value: ({ board, camera, modem }) => board + camera + modem,
    },
  ),
  'supply.loadBusy': sum(
    { title: 'power on the 5 V side, streaming and steering', unit: 'W' },
    {
      uses: { mean: 'supply.loadMean', steering: 'supply.steeringBusy' },
      formula: '{mean} + {steering}',
      laws: [],
      value: ({ mean, steering }) => mean + steering,
    },
  ),
  'supply.steeringBusy': sum(
    {
      title: 'power of the steering servo while it moves',
      unit: 'W',
      caveat: 'Zero where no servo hangs on the 5 V side.',
    },
    {
      uses: { current: 'supply.servoRun', output: 'converter.outputVoltage' },
      formula: '{current} · {output}',
      laws: [],
      value: ({ current, output }) => current * output,
    },
  ),
  'supply.servoRun': {
    title: 'current of the steering servo while it moves',
    unit: 'A',
    routes: [
      {
        name: 'servo',
        when: ({ steering }) => steering === 'servo',
        uses: { run: 'servo.runCurrent' },
        formula: '{run}',
        laws: [],
        value: ({ run }) => run as number,
      },
      { name: 'no servo on the 5 V side', uses: {}, formula: '0', laws: [], value: () => 0 },
    ],
  },
  'supply.servoStall': {
    title: 'current of the steering servo stalled',
    unit: 'A',
    routes: [
      {
        name: 'servo',
        when: ({ steering }) => steering === 'servo',
        uses: { stall: 'servo.stallCurrent' },
        formula: '{stall}',
        laws: [],
        value: ({ stall }) => stall as number,
      },
      { name: 'no servo on the 5 V side', uses: {}, formula: '0', laws: [], value: () => 0 },
    ],
  },
  'supply.loadPeak': sum(
    {
      title: 'power on the 5 V side at its peak',
      unit: 'W',
      caveat: 'Everything at once: board, camera, a transmit burst and a stalled servo. A brown-out is a coincidence.',
    },
    {
      uses: {
        board: 'computer.peakPower',
        camera: 'camera.power',
        modem: 'modem.burstPower',
        servo: 'supply.servoStall',
        output: 'converter.outputVoltage',
      },
      formula: '{board} + {camera} + {modem} + {servo} · {output}',
      laws: [],
      value: ({ board, camera, modem, servo, output }) => board + camera + modem + servo * output,
    },
  ),
  'supply.currentPeak': sum(
    { title: 'current of the converter at the peak', unit: 'A' },
    {
      uses: { power: 'supply.loadPeak', output: 'converter.outputVoltage' },
      formula: '{power} / {output}',
      laws: [],
      value: ({ power, output }) => power / output,
    },
  ),
  'supply.currentRated': sum(
    {
      title: 'current the converter bears without airflow',
      unit: 'A',
      caveat: 'Printed currents of small modules are peaks (common practice, no source).',
    },
    {
      uses: { printed: 'converter.outputCurrent' },
      takes: () => ({
        share: {
          value: NO_AIRFLOW,
          unit: '1',
          is: 'share borne without airflow',
          source: 'common practice, no source',
        },
      }),
      formula: '{share} · {printed}',
      laws: [],
      value: ({ share, printed }) => share * printed,
    },
  ),
  'supply.inputPower': sum(
    { title: 'power the converter draws, mean', unit: 'W' },
    {
      uses: { load: 'supply.loadMean', efficiency: 'converter.efficiency' },
      formula: '{load} / {efficiency}',
      laws: [],
      value: ({ load, efficiency }) => load / efficiency,
    },
  ),
  'supply.inputPeakPower': sum(
    { title: 'power the converter draws at the peak', unit: 'W' },
    {
      uses: { load: 'supply.loadPeak', efficiency: 'converter.efficiency' },
      formula: '{load} / {efficiency}',
      laws: [],
      value: ({ load, efficiency }) => load / efficiency,
    },
  ),
  'supply.inputNeeded': sum(
    {
      title: 'voltage the converter needs at the branching point',
      unit: 'V',
      caveat: 'The greater of its least input and its output plus head-room, plus the drop of its own run.',
    },
    {
      uses: {
        least: 'converter.inputMin',
        output: 'converter.outputVoltage',
        headRoom: 'converter.headRoom',
        power: 'supply.inputPeakPower',
        run: 'wiring.converter.resistance',
      },
      formula: 'V + {run} · {power} / V, V = max({least}, {output} + {headRoom})',
      laws: [],
      value: ({ least, output, headRoom, power, run }) => {
        const atConverter = Math.max(least, output + headRoom);
        return atConverter + (run * power) / atConverter;
      },
    },
  ),
  ...stallSupplySums,
  'supply.boardVoltage': sum(
    { title: 'voltage at the board at its peak', unit: 'V' },
    {
      uses: { output: 'converter.outputVoltage', current: 'supply.currentPeak', run: 'wiring.board.resistance' },
      formula: '{output} − {current} · {run}',
      laws: [],
      value: ({ output, current, run }) => output - current * run,
    },
  ),
  'supply.boardVoltageStall': sum(
    {
      title: 'voltage at the board while the drive stalls',
      unit: 'V',
      caveat: 'A step-down converter that runs out of head-room passes the sagging input on, less its head-room.',
    },
    {
      uses: {
        input: 'supply.inputStall',
        power: 'supply.inputPeakPower',
        converterRun: 'wiring.converter.resistance',
        headRoom: 'converter.headRoom',
        least: 'converter.inputMin',
        output: 'converter.outputVoltage',
        current: 'supply.currentPeak',
        run: 'wiring.board.resistance',
      },
      formula:
        'min({output}, {input} − {converterRun} · {power}/{input} − {headRoom}) − {current} · {run}; 0 below the least input {least}',
      laws: [],
      value: ({ input, power, converterRun, headRoom, least, output, current, run }) => {
        const atConverter = input > 0 ? input - (converterRun * power) / input : 0;
        if (atConverter < least) return 0;
        return Math.max(0, Math.min(output, atConverter - headRoom) - current * run);
      },
    },
  ),
  'supply.heat': sum(
    { title: 'heat in the converter, streaming', unit: 'W' },
    {
      uses: { power: 'supply.loadBusy', output: 'converter.outputVoltage', efficiency: 'converter.efficiency' },
      formula: '{power} · (1/{efficiency} − 1), at {output}',
      laws: [converterHeat],
      value: ({ power, output, efficiency }) => converterHeat({ output, current: power / output, efficiency }),
    },
  ),
  'supply.holdUp': sum(
    {
      title: 'time the capacitors on the 5 V side carry the peak load',
      unit: 'us',
      caveat: 'A stall lasts thousands of times longer: capacitors help against pulses, not against a stall.',
    },
    {
      uses: {
        capacitance: 'converter.outputCapacitance',
        from: 'supply.boardVoltage',
        to: 'computer.brownOut',
        power: 'supply.loadPeak',
      },
      formula: '{capacitance} · ({from}² − {to}²) / (2 · {power}); 0 where the board is below its limit already',
      laws: [holdUpTime],
      value: ({ capacitance, from, to, power }) => (from > to ? holdUpTime({ capacitance, from, to, power }) : 0),
    },
  ),
};
