/** Load and bending stress of a gear tooth: the part of a toy that strips when the new pack is stiffer than the old. */
import { law, OutOfRange } from '../law.ts';

/** Lewis form factor of 20° full-depth teeth by number of teeth. */
export const LEWIS_FACTORS: readonly { readonly teeth: number; readonly factor: number; readonly source: string }[] =
  (() => {
    const equation = "Lewis's equation for 20° full depth, Y = π·(0.154 − 0.912/z)";
    const small = 'Lewis factors of older machine-design tables, from memory';
    const table = "Budynas and Nisbett, Shigley's Mechanical Engineering Design, Table 14-2, from memory";
    const rows: [number, number, string][] = [
      [8, Math.PI * (0.154 - 0.912 / 8), equation],
      [9, Math.PI * (0.154 - 0.912 / 9), equation],
      [10, 0.201, small],
      [11, 0.226, small],
      [12, 0.245, table],
      [13, 0.261, table],
      [14, 0.277, table],
      [15, 0.29, table],
      [16, 0.296, table],
      [17, 0.303, table],
      [18, 0.309, table],
      [19, 0.314, table],
      [20, 0.322, table],
      [21, 0.328, table],
      [22, 0.331, table],
      [24, 0.337, table],
      [26, 0.346, table],
      [28, 0.353, table],
      [30, 0.359, table],
      [34, 0.371, table],
      [38, 0.384, table],
      [43, 0.397, table],
      [50, 0.409, table],
      [60, 0.422, table],
      [75, 0.435, table],
      [100, 0.447, table],
      [150, 0.46, table],
      [300, 0.472, table],
    ];
    return rows.map(([teeth, factor, source]) => ({ teeth, factor, source }));
  })();

/** Pull on a tooth along the pitch circle. */
export const toothForce = law(
  {
    id: 'tooth-force',
    title: 'Tangential force on a gear tooth',
    equation: 'Wt = 2·T/(m·z)',
    args: {
      torque: { symbol: 'T', is: 'torque on the gear', unit: 'N·m' },
      module: { symbol: 'm', is: 'module', unit: 'm', above: 0 },
      teeth: { symbol: 'z', is: 'number of teeth', unit: '1', from: 5 },
    },
    gives: { symbol: 'Wt', is: 'tangential force', unit: 'N' },
    validFor: 'spur teeth; one pair carries all. The last pinion of a train is the one loaded most',
    leavesOut: 'the radial part of the force, shocks',
    source: "Budynas and Nisbett, Shigley's Mechanical Engineering Design, force analysis of spur gearing",
  },
  ({ torque, module, teeth }) => (2 * torque) / (module * teeth),
);

const TABLE =
  "Budynas and Nisbett, Shigley's Mechanical Engineering Design, Table 14-2; below 10 teeth Lewis's equation";

/** Form factor of a tooth, between the rows of the table by straight lines. */
export const lewisFormFactor = law(
  {
    id: 'lewis-form-factor',
    title: 'Lewis form factor',
    equation: 'Y(z) from the table of 20° full-depth teeth',
    args: { teeth: { symbol: 'z', is: 'number of teeth', unit: '1', from: 8, to: 300 } },
    gives: { symbol: 'Y', is: 'form factor', unit: '1' },
    validFor: '20° full-depth involute teeth without profile shift',
    leavesOut: 'profile shift, which toy pinions often have and which makes them stronger; stubby moulded teeth',
    source: TABLE,
  },
  ({ teeth }) => {
    const at = LEWIS_FACTORS.findIndex((row) => row.teeth >= teeth);
    const [low, high] = [LEWIS_FACTORS[at - 1], LEWIS_FACTORS[at]];
    if (!high) throw new OutOfRange('lewis-form-factor', 'z', teeth, 'from 8 to 300', TABLE);
    if (!low) return high.factor;
    return low.factor + ((high.factor - low.factor) * (teeth - low.teeth)) / (high.teeth - low.teeth);
  },
);

/** How much motion adds to the load of a cut or moulded tooth. */
export const barthFactor = law(
  {
    id: 'barth-factor',
    title: 'Velocity factor of cut teeth',
    equation: 'Kv = (6.1 + v)/6.1',
    args: { pitchSpeed: { symbol: 'v', is: 'speed at the pitch circle', unit: 'm/s', from: 0, to: 10 } },
    gives: { symbol: 'Kv', is: 'velocity factor, at least 1', unit: '1' },
    validFor: 'cut or milled profiles; 1 at stall',
    leavesOut: 'shock of a start through play',
    source: "Barth's equation, Budynas and Nisbett, Shigley's Mechanical Engineering Design, eq. 14-6b",
  },
  ({ pitchSpeed }) => (6.1 + pitchSpeed) / 6.1,
);

/** Bending stress at the root of a tooth. */
export const lewisBendingStress = law(
  {
    id: 'lewis-bending-stress',
    title: 'Bending stress of a gear tooth',
    equation: 'σ = Kv·Wt/(b·m·Y)',
    args: {
      force: { symbol: 'Wt', is: 'tangential force', unit: 'N', from: 0 },
      module: { symbol: 'm', is: 'module', unit: 'm', above: 0 },
      faceWidth: { symbol: 'b', is: 'face width', unit: 'm', above: 0 },
      formFactor: { symbol: 'Y', is: 'Lewis form factor', unit: '1', above: 0, to: 0.5 },
      velocityFactor: { symbol: 'Kv', is: 'velocity factor', unit: '1', from: 1 },
    },
    gives: { symbol: 'σ', is: 'bending stress at the root', unit: 'Pa' },
    validFor: 'one tooth carrying all at its tip; compare with the strength of the tooth material',
    leavesOut: 'stress concentration at the fillet, fatigue, softening of plastics with heat',
    source: "Lewis equation, Budynas and Nisbett, Shigley's Mechanical Engineering Design, eq. 14-8",
  },
  ({ force, module, faceWidth, formFactor, velocityFactor }) =>
    (velocityFactor * force) / (faceWidth * module * formFactor),
);
