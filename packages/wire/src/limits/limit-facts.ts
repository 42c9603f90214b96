/**
 * The closed list of limits that a guard may be given, in SI. The schema, its types, the JSON Schema and the
 * documentation are made from this table, so that adding a limit is adding one row.
 */

export interface LimitFact {
  /** The unit, letter by letter as it stands in the record; '1' is a plain number. */
  readonly unit: string;
  readonly meaning: string;
  /** Smallest and largest value that a record may carry; both included. */
  readonly bounds: readonly [number, number];
  /** The end of the possible vehicles at which the limit does the least harm. A limit is taken there or in the middle. */
  readonly careful: 'low' | 'high';
  /** Set where a vehicle may do without: the guard then knows that there is nothing to limit. */
  readonly optional?: true;
}

/** One row a limit. */
export const LIMIT_FACTS = {
  dutyCeiling: {
    unit: '1',
    meaning: 'largest duty cycle the drive bridge may give with a full pack',
    bounds: [0.01, 1],
    careful: 'low',
  },
  dutyRate: {
    unit: '1/s',
    meaning: 'fastest rise of the drive duty cycle',
    bounds: [0.01, 1000],
    careful: 'low',
    optional: true,
  },
  speedCap: {
    unit: 'm/s',
    meaning: 'speed not to be passed here, whatever the picture shows',
    bounds: [0, 20],
    careful: 'low',
  },
  crawlSpeed: {
    unit: 'm/s',
    meaning: 'speed allowed over ground that is not seen, in reverse for instance',
    bounds: [0, 2],
    careful: 'low',
  },
  reversalSpeed: {
    unit: 'm/s',
    meaning: 'speed below which the drive may be switched to the other direction',
    bounds: [0, 5],
    careful: 'low',
    optional: true,
  },
  deceleration: {
    unit: 'm/s²',
    meaning: 'braking on the level, brakes full on',
    bounds: [0.05, 20],
    careful: 'low',
  },
  steepestDescent: {
    unit: 'rad',
    meaning: 'steepest declared descent, taken off the braking unless tilt is sensed',
    bounds: [0, 1.2],
    careful: 'high',
  },
  tipSideSlope: {
    unit: 'rad',
    meaning: 'side slope at which the vehicle is about to tip, at rest',
    bounds: [0, 1.5707963267948966],
    careful: 'low',
  },
  cornerSpeed: {
    unit: 'm/s',
    meaning: 'highest speed on the tightest arc without tipping or sliding',
    bounds: [0, 20],
    careful: 'low',
    optional: true,
  },
  sideAcceleration: {
    unit: 'm/s²',
    meaning: 'sideways acceleration on any arc without tipping or sliding',
    bounds: [0, 20],
    careful: 'low',
    optional: true,
  },
  actuationDelay: {
    unit: 's',
    meaning: 'time from a decision of the guard to the brakes taking hold',
    bounds: [0, 2],
    careful: 'high',
  },
  reactionTime: {
    unit: 's',
    meaning: 'time a driver takes to answer what has been shown',
    bounds: [0.1, 10],
    careful: 'high',
  },
  cameraLag: {
    unit: 's',
    meaning: 'time from exposure to the picture leaving the camera, unseen by the vehicle',
    bounds: [0, 5],
    careful: 'high',
  },
  screenLag: {
    unit: 's',
    meaning: 'time from a picture being named as painted to its light leaving the screen',
    bounds: [0, 5],
    careful: 'high',
  },
  deadManTime: {
    unit: 's',
    meaning: 'time without a fresh command after which the vehicle brakes, never lengthened by a bad link',
    bounds: [0.02, 5],
    careful: 'low',
  },
  sightPictureWidth: {
    unit: 'px',
    meaning: 'picture width the sight distances hold for; obstacle and walker go with the width, an edge with its root',
    bounds: [16, 20000],
    careful: 'high',
  },
  sightObstacle: {
    unit: 'm',
    meaning: 'distance from the bumper at which an obstacle of the declared height can be made out',
    bounds: [0, 1000],
    careful: 'low',
  },
  sightEdge: {
    unit: 'm',
    meaning: 'distance from the bumper at which the edge of a drop can be made out',
    bounds: [0, 1000],
    careful: 'low',
  },
  sightWalker: {
    unit: 'm',
    meaning: 'distance from the bumper at which a person can be made out',
    bounds: [0, 1000],
    careful: 'low',
  },
  walkerSpeed: {
    unit: 'm/s',
    meaning: 'speed at which a person may come towards the vehicle; 0 where nobody can',
    bounds: [0, 12],
    careful: 'high',
  },
  blindForeground: {
    unit: 'm',
    meaning: 'ground ahead of the bumper that lies below the picture',
    bounds: [0, 100],
    careful: 'high',
  },
  stepDistance: {
    unit: 'm',
    meaning: 'longest way of one step command, from rest to rest',
    bounds: [0, 10],
    careful: 'low',
    optional: true,
  },
  stepTurn: {
    unit: 'rad',
    meaning: 'largest turn of one step command, from rest to rest',
    bounds: [0, 6.283185307179586],
    careful: 'low',
    optional: true,
  },
  stallCurrent: {
    unit: 'A',
    meaning: 'current of the drive at and above which it is taken to be stalled',
    bounds: [0.05, 500],
    careful: 'low',
  },
  stallTime: {
    unit: 's',
    meaning: 'time a stall may last before the drive is cut',
    bounds: [0.01, 60],
    careful: 'low',
  },
  steeringHoldDuty: {
    unit: '1',
    meaning: 'duty cycle that holds an on/off steering at its end',
    bounds: [0, 1],
    careful: 'low',
    optional: true,
  },
  steeringHoldTime: {
    unit: 's',
    meaning: 'time an on/off steering may be held at its end',
    bounds: [0.05, 3600],
    careful: 'low',
    optional: true,
  },
  packCutOff: {
    unit: 'V',
    meaning: 'pack voltage under load below which the drive is cut',
    bounds: [0.5, 200],
    careful: 'high',
  },
  packReserve: {
    unit: '1',
    meaning: 'part of the full charge kept for the way home and for the board',
    bounds: [0, 0.95],
    careful: 'high',
  },
  boardVoltageMin: {
    unit: 'V',
    meaning: 'supply voltage below which the computer board may restart',
    bounds: [0.5, 60],
    careful: 'high',
  },
  motorWindingMax: {
    unit: 'K',
    meaning: 'highest temperature of the motor winding',
    bounds: [290, 550],
    careful: 'low',
  },
} as const satisfies Readonly<Record<string, LimitFact>>;

export type LimitName = keyof typeof LIMIT_FACTS;

/** Limits that a vehicle may do without. */
export type OptionalLimitName = {
  [N in LimitName]: (typeof LIMIT_FACTS)[N] extends { readonly optional: true } ? N : never;
}[LimitName];

/** The unit of a limit as a literal type. */
export type LimitUnit<N extends LimitName> = (typeof LIMIT_FACTS)[N]['unit'];

/** Every name, in the order of the table. */
export const LIMIT_NAMES = Object.keys(LIMIT_FACTS) as readonly LimitName[];
