/** The schema of the toy as it came. */

import { CHEMISTRIES } from '@longrein/laws';
import * as z from 'zod';
import { may, need } from '../field.ts';

const bodySchema = z.strictObject({
  ...need('toy.mass', 'toy.length', 'toy.width', 'toy.height', 'toy.wheelDiameter'),
  ...may(
    'toy.removed',
    'toy.wheelWidth',
    'toy.clearance',
    'toy.frontOverhang',
    'toy.frontHeight',
    'toy.rearOverhang',
    'toy.rearHeight',
    'toy.centreBehind',
    'toy.centreHeight',
    'toy.topSpeed',
    'toy.runTime',
    'toy.chargeTime',
  ),
});

const packSchema = z.strictObject({
  chemistry: z.enum(CHEMISTRIES),
  cells: z.int().min(1).max(24),
  ...may('toy.capacity', 'toy.capacityShare', 'toy.cellResistance'),
});

const axleSchema = z.strictObject({
  wheels: z.int().min(1).max(2),
  driven: z.boolean(),
  steered: z.boolean().optional(),
  ...need('axle.track'),
  ...may('axle.position', 'axle.load', 'axle.springRate', 'axle.springTravel'),
});

/** How many wheels share a motor. */
const MOTOR_PER = ['vehicle', 'axle', 'side', 'wheel'] as const;

const driveSchema = z.strictObject({
  motorPer: z.enum(MOTOR_PER),
  magnet: z.enum(['ferrite', 'neodymium']).optional(),
  motor: z
    .strictObject(
      may(
        'motor.ratedVoltage',
        'motor.resistance',
        'motor.stallCurrent',
        'motor.stallVoltage',
        'motor.stallTorque',
        'motor.noLoadCurrent',
        'motor.noLoadSpeed',
        'motor.noLoadVoltage',
        'motor.noLoadShare',
        'motor.averageShare',
        'motor.inductance',
        'motor.windingMass',
        'motor.canMass',
        'motor.windingToCan',
        'motor.canToAir',
        'motor.windingLimit',
      ),
    )
    .optional(),
  gear: z
    .strictObject(
      may(
        'gear.ratio',
        'gear.efficiency',
        'gear.pinionTeeth',
        'gear.module',
        'gear.faceWidth',
        'gear.lastRatio',
        'gear.strength',
      ),
    )
    .optional(),
});

const steeringSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('on-off'),
    clutch: z.boolean(),
    ...may('steer.angle', 'steer.resistance', 'steer.windingMass', 'steer.toAir'),
  }),
  z.strictObject({ kind: z.literal('servo'), ...may('steer.angle') }),
  z.strictObject({ kind: z.literal('skid') }),
]);

export const donorSchema = z.strictObject({
  title: z.string().min(1).max(120),
  body: bodySchema,
  axles: z.array(axleSchema).min(1).max(4),
  drive: driveSchema,
  steering: steeringSchema,
  pack: packSchema,
});
