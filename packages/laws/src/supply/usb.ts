/** What USB sources give, what boards need, and where boards say that it is too little. */

import { law } from '../law.ts';
import type { Sourced } from './chemistries.ts';

export interface UsbSource {
  readonly id: string;
  /** Lowest voltage at the source [V]. */
  readonly voltage: Sourced;
  /** Current a device may take [A]. */
  readonly current: Sourced;
}

const USB2 = 'USB 2.0 specification, section 7.2, as quoted in an engineering discussion';

export const USB_SOURCES: readonly UsbSource[] = [
  { id: 'usb2-low-power', voltage: { value: 4.4, source: USB2 }, current: { value: 0.1, source: USB2 } },
  { id: 'usb2-high-power', voltage: { value: 4.75, source: USB2 }, current: { value: 0.5, source: USB2 } },
  {
    id: 'usb3',
    voltage: { value: 4.45, source: 'USB 3 power pages, low-power hub port' },
    current: { value: 0.9, source: 'USB power pages (charging-specification summaries)' },
  },
  {
    id: 'charging-port',
    voltage: { value: 4.75, source: 'Battery Charging 1.2, from memory' },
    current: { value: 1.5, source: 'USB power pages (charging-specification summaries)' },
  },
  {
    id: 'type-c-1.5',
    voltage: { value: 4.75, source: 'USB Type-C specification, from memory' },
    current: { value: 1.5, source: 'engineering answer quoting the USB Type-C specification, CC above 0.7 V' },
  },
  {
    id: 'type-c-3',
    voltage: { value: 4.75, source: 'USB Type-C specification, from memory' },
    current: { value: 3, source: 'engineering answer quoting the USB Type-C specification, CC above 1.31 V' },
  },
];

/** Current of a number of unit loads. */
export const unitLoadCurrent = law(
  {
    id: 'usb-unit-load-current',
    title: 'Current of USB unit loads',
    equation: 'I = n · i',
    args: {
      loads: { symbol: 'n', is: 'unit loads granted', unit: '1', from: 1, to: 6 },
      unit: { symbol: 'i', is: 'unit load: 0.1 A for USB 2.0, 0.15 A for USB 3', unit: 'A', above: 0 },
    },
    gives: { symbol: 'I', is: 'current a device may take', unit: 'A' },
    validFor: 'ports without charging detection',
    leavesOut: 'that many ports give more, and some less',
    source: USB2,
  },
  ({ loads, unit }) => loads * unit,
);

/** A board and what it asks of its supply. */
export interface BoardSupply {
  readonly id: string;
  /** Voltage at which the board flags or resets [V]; absent where it is not documented. */
  readonly underVoltage?: Sourced;
  /** Current the supply should be able to give [A]. */
  readonly recommended?: Sourced;
  /** Mean current of the bare board [A]. */
  readonly typical?: Sourced;
}

const FLAG: Sourced = {
  value: 4.63,
  source: 'project notes on the 4.63 V under-voltage flag of single-board computers',
};
const MAKER = 'documentation of the single-board computer’s maker, recommended supplies';

export const BOARD_SUPPLIES: readonly BoardSupply[] = [
  {
    id: 'small single-board computer',
    underVoltage: FLAG,
    recommended: { value: 1.2, source: MAKER },
    typical: { value: 0.1, source: MAKER },
  },
  {
    id: 'single-board computer, third generation',
    underVoltage: FLAG,
    recommended: { value: 2.5, source: MAKER },
    typical: { value: 0.5, source: MAKER },
  },
  {
    id: 'single-board computer, fourth generation',
    underVoltage: FLAG,
    recommended: { value: 3, source: MAKER },
    typical: { value: 0.6, source: MAKER },
  },
  {
    id: '3.3 V Wi-Fi microcontroller',
    underVoltage: { value: 2.43, source: 'data sheet, lowest brown-out level of 2.43 to 2.80 V, from memory' },
  },
  {
    id: '8-bit microcontroller at 5 V',
    underVoltage: { value: 4.3, source: 'data sheet, brown-out levels 1.8, 2.7 and 4.3 V, from memory' },
  },
];
