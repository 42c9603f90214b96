/**
 * Goal: what a person writes is read as meant or refused with a way out, and printing loses nothing.
 * Method: cases by hand for the grammar, properties for round trips, dimensions and hostile texts.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, makeQuantity, parseQuantity } from './quantity.ts';
import type { Limits, Quantity, Written } from './shapes.ts';
import { SINGLE_UNITS, sameDimension, toSi, unitOf } from './units.ts';

function read(text: string, dimension: string, limits?: Limits): Quantity {
  const reading = parseQuantity(text, dimension, limits);
  if (!reading.ok) throw new Error(`${reading.fault.code}: ${reading.fault.hint}`);
  return reading.quantity;
}

function faultOf(text: string, dimension: string, limits?: Limits) {
  const reading = parseQuantity(text, dimension, limits);
  if (reading.ok) throw new Error(`'${text}' was read as ${reading.quantity.value}.`);
  return reading.fault;
}

describe('reading a quantity', () => {
  it.each([
    ['1.62 kg ± 5 g', 'g', 1.62, 0.005, 'normal'],
    ['0.9 Ω ± 15 %', 'Ω', 0.9, 0.135, 'normal'],
    ['0.9 ohm +- 15%', 'Ω', 0.9, 0.135, 'normal'],
    ['7.4 ± 0.1 V', 'V', 7.4, 0.1, 'normal'],
    ['7.4V', 'mV', 7.4, 0, 'exact'],
    ['7.4 V ± 0 V', 'V', 7.4, 0, 'exact'],
    ['3000 mAh', 'C', 10_800, 0, 'exact'],
    ['36 km/h', 'm/s', 10, 0, 'exact'],
    ['-12 dBm ± 2 dB', 'dBm', -12, 2, 'normal'],
    ['2 dBi', 'dB', 2, 0, 'exact'],
    ['8 Mbit/s', 'B/s', 1e6, 0, 'exact'],
    ['12', '1', 12, 0, 'exact'],
    ['85 %', '1', 0.85, 0, 'exact'],
    ['85 % ± 5 %', '1', 0.85, 0.05, 'normal'],
    ['0.5 ± 10 %', '1', 0.5, 0.05, 'normal'],
    ['50 ± 5 %', '%', 0.5, 0.05, 'normal'],
    ['1\u202F000\u00A0m', 'm', 1000, 0, 'exact'],
    ['100.021 47 g', 'kg', 0.10002147, 0, 'exact'],
    ['\u22123 m', 'm', -3, 0, 'exact'],
    ['1.5e3 V', 'V', 1500, 0, 'exact'],
    ['.5 V', 'V', 0.5, 0, 'exact'],
    ['5 1/K', '1/K', 5, 0, 'exact'],
    ['800 mA … 1.2 A', 'A', 1, 0.2, 'rectangular'],
    ['3...5 V', 'V', 4, 1, 'rectangular'],
    ['5 … 10 %', '1', 0.075, 0.025, 'rectangular'],
    ['-10 ... 30 °C', '°C', 283.15, 20, 'rectangular'],
  ] as const)('takes %s as a quantity in %s', (text, dimension, value, doubt, spread) => {
    const quantity = read(text, dimension);
    expect(quantity.value).toBeCloseTo(value, 12);
    expect(quantity.doubt).toBeCloseTo(doubt, 12);
    expect(quantity).toMatchObject({ spread, text });
  });

  it('takes the doubt of a temperature as a difference, in K or in °C', () => {
    const inKelvin = read('23 °C ± 2 K', '°C');
    expect(inKelvin.value).toBe(296.15);
    expect(inKelvin.doubt).toBe(2);
    expect(read('23 °C ± 2 °C', '°C').doubt).toBe(2);
    expect(read('23 ± 2 °C', '°C').doubt).toBe(2);
    expect(read('296.15 K ± 2 °C', '°C').doubt).toBe(2);
  });

  it('takes a quantity above zero with a wide doubt as log-normal, and no other', () => {
    expect(read('0.9 Ω ± 31 %', 'Ω', { above: 0 }).spread).toBe('lognormal');
    expect(read('0.9 Ω ± 30 %', 'Ω', { above: 0 }).spread).toBe('normal');
    expect(read('2° ± 3°', '°').spread).toBe('normal');
    expect(read('2° ± 3°', '°', { from: 0 }).spread).toBe('normal');
    expect(read('0.1 … 5 Ω', 'Ω', { above: 0 }).spread).toBe('rectangular');
  });
});

describe('refusing a text', () => {
  it.each([
    ['', 'V', 'QUANTITY_EMPTY', '3.2 V'],
    ['3,2 A', 'A', 'QUANTITY_COMMA', 'Write a decimal point: 3.2 A.'],
    ['1,000 m', 'm', 'QUANTITY_COMMA', '1000 m'],
    ['V', 'V', 'QUANTITY_NUMBER_MISSING', '3.2 V'],
    ['± 5 V', 'V', 'QUANTITY_NUMBER_MISSING', 'number first'],
    ['5', 'V', 'QUANTITY_UNIT_MISSING', '5 V'],
    ['50', '%', 'QUANTITY_UNIT_MISSING', '50 %'],
    ['5 % … 10', '1', 'QUANTITY_UNIT_MISSING', '10 %'],
    ['6.2 A ± 5', 'A', 'QUANTITY_UNIT_MISSING', '± 5 % or ± 5 A'],
    ['23 °C ± 2', '°C', 'QUANTITY_UNIT_MISSING', '± 2 K'],
    ['-12 dBm ± 2', 'dBm', 'QUANTITY_UNIT_MISSING', '± 2 dB'],
    ['23 ± 2 K', '°C', 'QUANTITY_UNIT_MISSING', '23 °C'],
    ['5 volts', 'V', 'QUANTITY_UNIT_UNKNOWN', 'V is meant'],
    ['5 mhz', 'Hz', 'QUANTITY_UNIT_UNKNOWN', 'MHz'],
    ['12 kmh', 'm/s', 'QUANTITY_UNIT_UNKNOWN', 'km/h'],
    ['5 mAmp', 'A', 'QUANTITY_UNIT_UNKNOWN', 'mA'],
    ['0.4 W/m·K', 'W/(m·K)', 'QUANTITY_UNIT_UNKNOWN', 'W/(m·K)'],
    ['5 A', 'V', 'QUANTITY_DIMENSION', 'mV'],
    ['2 kg·cm', 'N·m', 'QUANTITY_DIMENSION', '2 kgf·cm'],
    ['5 kg', 'N', 'QUANTITY_DIMENSION', '5 kgf'],
    ['5 °C', 'K', 'QUANTITY_DIMENSION', '5 K'],
    ['25 C', '°C', 'QUANTITY_DIMENSION', '25 °C'],
    ['50 Hz', 'rad/s', 'QUANTITY_DIMENSION', 'rpm'],
    ['5 V ± -1 V', 'V', 'QUANTITY_DOUBT_NEGATIVE', 'without a sign'],
    ['5 V ± 1 A', 'V', 'QUANTITY_DOUBT_UNIT', '%, V'],
    ['23 °C ± 5 %', '°C', 'QUANTITY_DOUBT_UNIT', 'K or °C'],
    ['23 dBm ± 5 %', 'dBm', 'QUANTITY_DOUBT_UNIT', 'dB'],
    ['5 K ± 1 °C', 'K', 'QUANTITY_DOUBT_UNIT', 'K'],
    ['5 … 3 V', 'V', 'QUANTITY_RANGE_REVERSED', '3 … 5 V'],
    ['1 … 2 … 3 V', 'V', 'QUANTITY_FORM', 'not several'],
    ['1 ± 2 ± 3 V', 'V', 'QUANTITY_FORM', 'not several'],
    ['3-5 V', 'V', 'QUANTITY_FORM', '3 … 5 V'],
    ['NaN V', 'V', 'QUANTITY_NUMBER', 'decimal digits'],
    ['-Infinity V', 'V', 'QUANTITY_NUMBER', 'decimal digits'],
    ['0x1F V', 'V', 'QUANTITY_NUMBER', 'decimal digits'],
    ['1e999 V', 'V', 'QUANTITY_NUMBER', 'smaller'],
    ['1e308 kV', 'V', 'QUANTITY_NUMBER', 'smaller'],
    ['1 2 V', 'V', 'QUANTITY_NUMBER', 'one number'],
    ['5. V', 'V', 'QUANTITY_NUMBER', 'one number'],
    [`5 ${'V'.repeat(300)}`, 'V', 'QUANTITY_TOO_LONG', '3.2 V'],
  ] as const)("answers '%s' for %s with %s", (text, dimension, code, hint) => {
    const fault = faultOf(text, dimension);
    expect(fault.code).toBe(code);
    expect(fault.hint).toContain(hint);
    expect(fault.accepted.length).toBeGreaterThan(0);
  });

  it('says what a value may be when it is outside its limits', () => {
    const fault = faultOf('0 Ω', 'Ω', { above: 0, to: 10 });
    expect(fault).toMatchObject({ code: 'QUANTITY_LIMITS', found: '0 Ω' });
    expect(fault.hint).toContain('above 0 Ω and up to 10');
    expect(faultOf('-5 … 5 %', '%', { from: 0 }).code).toBe('QUANTITY_LIMITS');
    expect(read('0 … 5 %', '%', { from: 0 }).value).toBeCloseTo(0.025, 15);
  });

  it('calls an unknown dimension a mistake of the program, not of the writer', () => {
    expect(() => parseQuantity('5 V', 'volts')).toThrow(RangeError);
  });

  it('catches every wrong dimension', () => {
    const unit = fc.constantFrom(...SINGLE_UNITS.filter(({ text }) => text !== '1'));
    fc.assert(
      fc.property(unit, unit, fc.double({ min: 0.1, max: 9, noNaN: true }), (a, b, amount) => {
        fc.pre(!sameDimension(a, b));
        expect(faultOf(`${amount} ${a.text}`, b.text).code).toBe('QUANTITY_DIMENSION');
        const doubt = parseQuantity(`5 ${b.text} ± ${amount} ${a.text}`, b.text);
        const allowed = a.text === '%' || (b.text === 'dBm' && (a.text === 'dB' || a.text === 'dBi'));
        if (!allowed) expect(doubt).toMatchObject({ ok: false, fault: { code: 'QUANTITY_DOUBT_UNIT' } });
      }),
      { numRuns: 500 },
    );
  });

  const scraps = [
    '5',
    '0.1',
    '-',
    '+',
    '.',
    '±',
    '+-',
    '…',
    '...',
    'V',
    'm',
    '°C',
    '%',
    '/',
    '(',
    ')',
    '·',
    '^',
    '²',
    'e9',
    ' ',
    ',',
    '1',
  ];
  const piece = fc.constantFrom('5', '-0.1', '12 000', '1e-7', '.5', '3.', '');
  const units: Readonly<Record<string, readonly string[]>> = {
    V: ['V', ' mV', ' %', ''],
    '1': [' %', ''],
    '°C': [' °C', ' K', ''],
    '%': [' %', '%', ''],
    'm/s': [' km/h', 'm/s', ' %', ''],
    dBm: [' dBm', 'dB', ''],
  };
  const joint = fc.constantFrom('±', ' ± ', '+-', '…', ' ... ', '', ' ');
  const nearly = (dimension: string) => {
    const unit = fc.constantFrom(...(units[dimension] ?? []));
    return fc.tuple(piece, unit, joint, piece, unit).map((parts) => parts.join(''));
  };
  const hostile = fc.constantFrom(...Object.keys(units)).chain((dimension) =>
    fc.tuple(
      fc.oneof(
        fc.string({ maxLength: 250 }),
        fc.string({ unit: 'binary', maxLength: 60 }),
        fc.array(fc.constantFrom(...scraps), { maxLength: 14 }).map((parts) => parts.join('')),
        nearly(dimension),
      ),
      fc.constant(dimension),
    ),
  );

  it('never throws, and what it reads is finite and prints back to itself', () => {
    let readable = 0;
    fc.assert(
      fc.property(hostile, ([text, dimension]) => {
        const reading = parseQuantity(text, dimension);
        if (!reading.ok) {
          expect(reading.fault.hint).toMatch(/[.!]$/);
          return;
        }
        readable++;
        const { quantity } = reading;
        expect(Number.isFinite(quantity.value) && quantity.doubt >= 0).toBe(true);
        expect(read(formatQuantity(quantity), dimension)).toEqual({ ...quantity, text: formatQuantity(quantity) });
      }),
      { numRuns: 3000 },
    );
    expect(readable).toBeGreaterThan(100);
  });
});

describe('printing a quantity', () => {
  const number = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e140, max: 1e140 }).map((x) => x + 0);
  const unit = fc.constantFrom(
    'V',
    'mΩ',
    'km/h',
    'rpm',
    '°',
    '°C',
    '%',
    '1',
    'kgf·cm',
    'J/(kg·K)',
    '1/K',
    'dBm',
    'Mbit/s',
  );
  const written: fc.Arbitrary<Written> = fc.oneof(
    fc.record({ form: fc.constant('exact' as const), number, unit }),
    fc
      .record({
        form: fc.constant('doubt' as const),
        number,
        unit,
        doubt: number.map(Math.abs),
        relative: fc.boolean(),
      })
      .map(({ relative, ...rest }) => {
        const onScale = rest.unit === '°C' || rest.unit === 'dBm';
        const other = rest.unit === 'dBm' ? 'dB' : rest.unit === '°C' ? 'K' : '%';
        return { ...rest, doubtUnit: relative || onScale ? other : rest.unit };
      }),
    fc.record({ form: fc.constant('range' as const), a: number, b: number, unit }).map(({ form, a, b, unit }) => ({
      form,
      from: Math.min(a, b),
      fromUnit: unit,
      to: Math.max(a, b),
      unit,
    })),
  );

  it('loses no bit of value, doubt, spread or unit', () => {
    fc.assert(
      fc.property(written, fc.boolean(), (wanted, positive) => {
        const limits = positive ? { above: 0 } : {};
        const amounts = wanted.form === 'range' ? [wanted.from] : [wanted.number];
        fc.pre(!positive || amounts.every((amount) => toSi(unitOf(wanted.unit), amount) > 0));
        const made = makeQuantity(wanted, limits);
        const back = read(formatQuantity(made), made.unit, limits);
        expect(back.written).toEqual(wanted);
        expect(back).toEqual({ ...made, text: formatQuantity(made) });
        expect(Object.is(back.value, made.value) && Object.is(back.doubt, made.doubt)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps the unit of each end of a range and of the doubt', () => {
    for (const [text, dimension] of [
      ['800 mA … 1.2 A', 'A'],
      ['1.62 kg ± 5 g', 'kg'],
      ['12° ± 0.01 rad', 'rad'],
      ['20 … 30 °C', '°C'],
    ] as const) {
      expect(formatQuantity(read(text, dimension))).toBe(text);
    }
  });

  it('refuses to make what could not be read', () => {
    expect(() => makeQuantity({ form: 'exact', number: Number.NaN, unit: 'V' })).toThrow(RangeError);
    expect(() => makeQuantity({ form: 'doubt', number: 1, unit: 'V', doubt: -1, doubtUnit: 'V' })).toThrow(RangeError);
    const mixed = { form: 'range', from: 0.05, fromUnit: '1', to: 10, unit: '%' } as const;
    expect(() => makeQuantity(mixed)).toThrow('per cent');
    expect(() => makeQuantity({ form: 'range', from: 2, fromUnit: 'V', to: 1, unit: 'V' })).toThrow(RangeError);
  });
});
