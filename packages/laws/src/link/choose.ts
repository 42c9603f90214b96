/** Choosing among rival laws of loss, with the reason. */
import { foliageLoss, foliageLossEarly, woodlandLoss } from './obstacles.ts';
import { crossoverDistance, freeSpaceLoss, twoRayFarLoss } from './path.ts';

/** A loss with the law it came from and why that one. */
export interface ChosenLoss {
  readonly law: string;
  /** Loss [dB]. */
  readonly loss: number;
  readonly why: string;
}

/**
 * Median loss over open flat ground: the greater of free space and the far two-ray form. The exact sum ripples about it
 * nearer than the crossover and cannot be relied on where ground is not a mirror.
 */
export function chooseOpenGroundLoss(at: {
  readonly frequency: number;
  readonly distance: number;
  readonly baseHeight: number;
  readonly roverHeight: number;
}): ChosenLoss {
  const crossover = crossoverDistance(at);
  const near = at.distance <= crossover;
  const chosen = near ? freeSpaceLoss : twoRayFarLoss;
  const side = near ? 'within' : 'beyond';
  const why = `${at.distance} m is ${side} the crossover at ${crossover.toFixed(1)} m`;
  return { law: chosen.facts.id, loss: near ? freeSpaceLoss(at) : twoRayFarLoss(at), why };
}

/** Lowest and highest foliage loss the published laws give; they differ by a factor of two to four below 10 m. */
export interface FoliageBand {
  readonly lowest: ChosenLoss;
  readonly highest: ChosenLoss;
}

/** Loss per metre and greatest loss of a mixed wood at 2.4 GHz; Rec. ITU-R P.833-10, from memory. */
export const MIXED_WOOD = { specific: 0.3, most: 32.7 } as const;

/** The band between the foliage laws: the honest answer is a band, not a number. */
export function foliageBand(frequency: number, depth: number): FoliageBand {
  const rivals: ChosenLoss[] = [
    { law: foliageLoss.facts.id, loss: foliageLoss({ frequency, depth }), why: 'modified exponential decay' },
    { law: foliageLossEarly.facts.id, loss: foliageLossEarly({ frequency, depth }), why: 'early ITU form' },
    { law: woodlandLoss.facts.id, loss: woodlandLoss({ depth, ...MIXED_WOOD }), why: 'levels off in a wood' },
  ];
  rivals.sort((a, b) => a.loss - b.loss);
  const [lowest, , highest] = rivals as [ChosenLoss, ChosenLoss, ChosenLoss];
  return { lowest, highest };
}
