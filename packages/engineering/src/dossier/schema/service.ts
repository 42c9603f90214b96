/** The schema of the service the vehicle must give, of the link, the picture and the driving. */
import * as z from 'zod';
import { field, may } from '../field.ts';

export const serviceSchema = z.strictObject({
  want: z
    .strictObject(
      may(
        'want.runTime',
        'want.moving',
        'want.speed',
        'want.slope',
        'want.sideSlope',
        'want.climbTime',
        'want.step',
        'want.payload',
        'want.cornerRadius',
        'want.life',
        'want.chargeTime',
      ),
    )
    .optional(),
  day: z.strictObject(may('day.coldest', 'day.hottest', 'day.usual', 'day.sun')).optional(),
  /** Surfaces it must serve, by name, with the share of the way on each. */
  surfaces: z
    .array(z.strictObject({ surface: z.string().min(1).max(60), share: z.number().gt(0).lte(1) }))
    .min(1)
    .max(12),
  /** Measured values override those of the surfaces. */
  ground: z
    .strictObject(may('ground.rolling', 'ground.rollingWorst', 'ground.adhesion', 'ground.adhesionWorst'))
    .optional(),
  near: z.strictObject(may('near.dropWidth', 'near.obstacle', 'near.walkerSpeed', 'near.energy')).optional(),
});

export const linkSchema = z.strictObject(
  may(
    'link.distance',
    'link.baseHeight',
    'link.basePower',
    'link.baseGain',
    'link.wallLoss',
    'link.walls',
    'link.vegetationLoss',
    'link.availability',
    'link.shadowing',
    'link.share',
    'link.loss',
    'link.roundTrip',
    'link.uplinkRate',
    'link.dataDay',
  ),
);

export const pictureSchema = z.strictObject(
  may(
    'picture.width',
    'picture.height',
    'picture.bitsPerPixel',
    'picture.interval',
    'picture.screenLag',
    'picture.pixelsWanted',
    'picture.pixelsEdge',
    'picture.kept',
    'picture.hours',
    'picture.card',
  ),
);

export const drivingSchema = z.strictObject({
  reaction: field('driving.reaction').optional(),
  actuation: field('driving.actuation').optional(),
  braking: field('driving.braking').optional(),
});
