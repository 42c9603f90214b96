/** How much of a stiff new pack a small old motor may see. */
import { law } from '../law.ts';

/** Largest duty at which the motor's mean voltage stays at its rated one. */
export const dutyCeiling = law(
  {
    id: 'duty-ceiling',
    title: 'Duty ceiling',
    equation: 'D = min(1, (Vr + Vb)/Vp)',
    args: {
      ratedVoltage: { symbol: 'Vr', is: 'rated motor voltage', unit: 'V', above: 0 },
      bridgeDrop: { symbol: 'Vb', is: 'bridge drop at the least current that matters', unit: 'V', from: 0 },
      packVoltage: { symbol: 'Vp', is: 'pack voltage, full', unit: 'V', above: 0 },
    },
    gives: { symbol: 'D', is: 'largest duty', unit: '1' },
    validFor: 'slow decay with continuous current; take the full pack, not the nominal one',
    leavesOut: 'root mean square heating, stall: at the same mean voltage a stiff pack gives more than the old one did',
    source: 'mean voltage of slow decay solved for the duty, any power-electronics text',
  },
  ({ ratedVoltage, bridgeDrop, packVoltage }) => Math.min(1, (ratedVoltage + bridgeDrop) / packVoltage),
);
