/** Counts and tabulated figures that many sums take: motors, cells, cell voltages. */
import { CHEMISTRY_FACTS } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import type { Constant } from '../sum.ts';

const count = (value: number, is: string, source: string): Constant => ({ value, unit: '1', is, source });

/** Drive motors of the vehicle. */
export const motorsOf = ({ motors }: Layout): Constant => count(motors, 'drive motors', 'the toy as it came');

/** Motors that share the most loaded bridge channel. */
export const sharingOf = ({ motorsPerChannel }: Layout): Constant =>
  count(motorsPerChannel, 'motors on the most loaded channel', 'the toy and the bridge fitted');

/** Bridge boards fitted. */
export const bridgesOf = ({ bridges }: Layout): Constant => count(bridges, 'bridge boards', 'the conversion');

/** Channels in use on one bridge board: they share its way out for heat, and its quiescent current. */
export const besideOf = ({ channels, bridges }: Layout): Constant =>
  count(Math.ceil(channels / bridges), 'channels in use on a bridge board', 'the toy and the bridges fitted');

/** Cells in series of the pack fitted. */
export const cellsOf = ({ cells }: Layout): Constant => count(cells, 'cells in series', 'the pack fitted');

/** Cells in series of the original pack. */
export const toyCellsOf = ({ toyCells }: Layout): Constant => count(toyCells, 'cells in series', 'the original pack');

const VOLTAGES = {
  full: 'voltage of a full cell',
  nominal: 'nominal voltage of a cell',
  cutOff: 'cut-off of a cell under load',
} as const;

/** A tabulated voltage of one cell. */
export const cellVoltageOf = (chemistry: Layout['chemistry'], which: keyof typeof VOLTAGES): Constant => ({
  ...CHEMISTRY_FACTS[chemistry][which],
  unit: 'V',
  is: VOLTAGES[which],
});
