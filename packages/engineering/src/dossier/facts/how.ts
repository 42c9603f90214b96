/** Ways of measuring that many parts share. */

export const SHEET = 'Data sheet of the part.';
const WEIGH = 'Kitchen scale.';
export const TAPE = 'Tape or calliper.';

/** The same three facts for the mass of every kind of part. */
export const mass = (title: string) => ({ title, unit: 'g', is: 'doubt', above: 1e-5, to: 20, how: WEIGH }) as const;
