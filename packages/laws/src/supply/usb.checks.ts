import { checkLaw, checkSubject } from '../check.ts';
import { BOARD_SUPPLIES, USB_SOURCES, unitLoadCurrent } from './usb.ts';

const SPEC = 'USB 2.0 specification, section 7.2, as quoted in an engineering discussion';
const listed = (id: string): number => USB_SOURCES.find((source) => source.id === id)?.current.value ?? Number.NaN;

export const usbChecks = [
  checkLaw(unitLoadCurrent, [
    {
      case: 'five unit loads of USB 2.0',
      source: SPEC,
      kind: 'published',
      args: { loads: 5, unit: 0.1 },
      expected: 0.5,
      allowed: 1e-9,
    },
    {
      case: 'six unit loads of USB 3',
      source: 'USB power pages (charging-specification summaries)',
      kind: 'published',
      args: { loads: 6, unit: 0.15 },
      expected: 0.9,
      allowed: 1e-9,
    },
  ]),
  checkSubject('USB source table', [
    {
      case: 'high-power port against five unit loads',
      source: SPEC,
      kind: 'published',
      expected: 0.5,
      allowed: 1e-9,
      ours: () => listed('usb2-high-power'),
    },
    {
      case: 'USB 3 port against six unit loads of 150 mA',
      source: SPEC,
      kind: 'published',
      expected: 0.9,
      allowed: 1e-9,
      ours: () => listed('usb3'),
    },
  ]),
  checkSubject('board supply table', [
    {
      case: 'under-voltage flag against the detector chip, 4.6 V ± 1.5 %',
      source: 'project notes naming the detector chip of single-board computers',
      kind: 'published',
      expected: 4.6,
      allowed: 0.015,
      ours: () => BOARD_SUPPLIES[0]?.underVoltage?.value ?? Number.NaN,
    },
  ]),
];
