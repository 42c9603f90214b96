/** Arguments that several laws of this folder share, so that one symbol keeps one meaning. */

export const VOLTAGE = { symbol: 'V', is: 'voltage at the terminals', unit: 'V', from: 0 } as const;
export const RESISTANCE = { symbol: 'R', is: 'winding resistance at its temperature', unit: 'Ω', above: 0 } as const;
export const CONSTANT = { symbol: 'k', is: 'motor constant', unit: 'V·s/rad', above: 0 } as const;
export const FREE_CURRENT = { symbol: 'I0', is: 'no-load current', unit: 'A', from: 0 } as const;
export const SUPPLY = { symbol: 'V', is: 'supply voltage at the bridge', unit: 'V', from: 0 } as const;
export const DUTY = { symbol: 'D', is: 'share of the period that is on', unit: '1', from: 0, to: 1 } as const;
export const FREQUENCY = { symbol: 'f', is: 'pulse frequency', unit: 'Hz', above: 0 } as const;
