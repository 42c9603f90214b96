/** Which axles brake and hold the vehicle, as the sums of stopping and of standing tell them apart. */
import type { Layout } from '../../dossier/resolve.ts';

export const everyAxleDriven = ({ axles }: Layout) => axles.every(({ driven }) => driven);
export const onlyRearOfTwo = ({ axles }: Layout) => axles.length === 2 && axles[0]?.driven === false;
export const onlyFrontOfTwo = ({ axles }: Layout) => axles.length === 2 && axles[1]?.driven === false;

/** What tells how the weight shifts between two axles. */
export const LEVER = {
  adhesion: 'ground.adhesionWorst',
  wheelbase: 'balance.wheelbase',
  centre: 'balance.centreBehind',
  height: 'balance.centreHeight',
} as const;
