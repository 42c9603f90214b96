/**
 * The closed list of parameters for the estimate that runs on the vehicle, in SI: what the step function of the
 * vehicle in time needs, as plain numbers. As with the limits, one row is one parameter.
 */

interface Described {
  /** The unit, letter by letter as it stands in the record; '1' is a plain number. */
  readonly unit: string;
  readonly meaning: string;
  /** Smallest and largest value that a record may carry; both included. */
  readonly bounds: readonly [number, number];
  /** Set where the estimate can do without: a vehicle has no such part, or it does not matter. */
  readonly optional?: true;
}

export type ModelNumberFact = Described;

/** A function of one variable, given as a list of points between which it runs straight. */
export interface ModelTableFact extends Described {
  /** What the table is a function of; its first and last point stand at these bounds. */
  readonly over: { readonly unit: string; readonly meaning: string; readonly bounds: readonly [number, number] };
}

/** One row a parameter. */
export const MODEL_FACTS = {
  packCapacity: { unit: 'C', meaning: 'charge a full pack gives', bounds: [10, 1e7] },
  packResistance: { unit: 'Ω', meaning: 'internal resistance of the pack', bounds: [0, 100] },
  openCircuit: {
    unit: 'V',
    meaning: 'voltage of the rested pack over its state of charge',
    bounds: [0, 200],
    over: { unit: '1', meaning: 'state of charge', bounds: [0, 1] },
  },
  wiringResistance: {
    unit: 'Ω',
    meaning: 'resistance of fuse, wires and connectors from pack to bridge',
    bounds: [0, 100],
    optional: true,
  },
  idlePower: { unit: 'W', meaning: 'power the pack gives while the vehicle stands, picture on', bounds: [0, 500] },
  bridgeDrop: {
    unit: 'V',
    meaning: 'part of the drop across the drive bridge that does not depend on current',
    bounds: [0, 10],
    optional: true,
  },
  bridgeResistance: {
    unit: 'Ω',
    meaning: 'part of the drop across the drive bridge that goes with current',
    bounds: [0, 100],
    optional: true,
  },
  motorCount: { unit: '1', meaning: 'drive motors, all in parallel', bounds: [1, 12] },
  motorResistance: { unit: 'Ω', meaning: 'winding resistance of one drive motor', bounds: [0.001, 1000] },
  motorConstant: { unit: 'V·s/rad', meaning: 'back-EMF of one motor per speed of rotation', bounds: [1e-5, 10] },
  motorNoLoadCurrent: { unit: 'A', meaning: 'no-load current of one motor', bounds: [0, 50] },
  motorInductance: { unit: 'H', meaning: 'winding inductance of one motor', bounds: [0, 1], optional: true },
  motorHeatCapacity: { unit: 'J/K', meaning: 'heat one motor takes up per kelvin', bounds: [0.1, 1e5], optional: true },
  motorHeatResistance: {
    unit: 'K/W',
    meaning: 'warming of one motor over its surroundings per watt, settled',
    bounds: [0.01, 1000],
    optional: true,
  },
  gearRatio: { unit: '1', meaning: 'turns of the motor for one turn of the wheel', bounds: [0.1, 5000] },
  gearEfficiency: { unit: '1', meaning: 'part of the motor power that reaches the wheel', bounds: [0.05, 1] },
  wheelRadius: { unit: 'm', meaning: 'rolling radius of a driven wheel', bounds: [0.005, 0.5] },
  wheelbase: { unit: 'm', meaning: 'distance of first and last axle', bounds: [0.02, 3], optional: true },
  trackWidth: { unit: 'm', meaning: 'distance of left and right wheel centres', bounds: [0.02, 3], optional: true },
  steerAngleMax: { unit: 'rad', meaning: 'largest steering angle', bounds: [0, 1.5], optional: true },
  mass: { unit: 'kg', meaning: 'mass of the vehicle as it drives', bounds: [0.05, 100] },
  rotatingMass: {
    unit: 'kg',
    meaning: 'mass that would store what wheels, gears and motors store in turning',
    bounds: [0, 500],
    optional: true,
  },
  rollingCoefficient: { unit: '1', meaning: 'rolling resistance over weight on the declared ground', bounds: [0, 1] },
  dragArea: { unit: 'm²', meaning: 'drag coefficient times frontal area', bounds: [0, 5], optional: true },
} as const satisfies Readonly<Record<string, ModelNumberFact | ModelTableFact>>;

export type ModelName = keyof typeof MODEL_FACTS;

/** Parameters that are a list of points instead of a number. */
export type ModelTableName = {
  [N in ModelName]: (typeof MODEL_FACTS)[N] extends { readonly over: object } ? N : never;
}[ModelName];

/** Parameters that the estimate can do without. */
export type OptionalModelName = {
  [N in ModelName]: (typeof MODEL_FACTS)[N] extends { readonly optional: true } ? N : never;
}[ModelName];

/** The unit of a parameter as a literal type. */
export type ModelUnit<N extends ModelName> = (typeof MODEL_FACTS)[N]['unit'];

/** Every name, in the order of the table. */
export const MODEL_NAMES = Object.keys(MODEL_FACTS) as readonly ModelName[];
