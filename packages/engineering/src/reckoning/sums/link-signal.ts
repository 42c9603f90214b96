/** Sums of the link: what either end radiates, and what of it arrives at the greatest distance. */
import {
  chooseOpenGroundLoss,
  crossoverDistance,
  freeSpaceLoss,
  noiseFloor,
  OutOfRange,
  RADIO_LIMITS,
  radiatedPower,
  receivedPower,
  signalToNoise,
  twoRayFarLoss,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type SumsOf, sum } from '../sum.ts';

/** Budget and loss mean something only where the base is ours; a cellular network arranges its own. */
export const onWlan = (layout: Layout): boolean => layout.modem === 'wlan';

type RadiatedId = 'link.eirpVehicle' | 'link.eirpBase' | 'link.eirpLimit';

const radiated: SumsOf<RadiatedId> = {
  'link.eirpVehicle': sum(
    {
      title: 'power radiated by the vehicle, aerial gain included',
      unit: 'dBm',
      when: onWlan,
      caveat: 'In the direction in which the aerial is best. A body or battery close to it takes 3 to 10 dB.',
    },
    {
      uses: { power: 'modem.transmitPower', gain: 'aerial.gain', cable: 'aerial.cableLoss' },
      formula: '{power} + {gain} − {cable}',
      laws: [radiatedPower],
      value: ({ power, gain, cable }) => radiatedPower({ power, gain, cable }),
    },
  ),
  'link.eirpBase': sum(
    { title: 'power radiated by the base, aerial gain included', unit: 'dBm', when: onWlan },
    {
      uses: { power: 'link.basePower', gain: 'link.baseGain' },
      formula: '{power} + {gain}',
      laws: [radiatedPower],
      value: ({ power, gain }) => radiatedPower({ power, gain, cable: 0 }),
    },
  ),
  'link.eirpLimit': sum(
    {
      title: 'usual limit of radiated power in the band',
      unit: 'dBm',
      when: onWlan,
      caveat:
        'The least of the limits of Europe, the United States and Japan as listed in 2022; local rules prevail. Some bands are for indoors only, or ask the radio to give way to radar.',
    },
    {
      uses: { frequency: 'modem.frequency' },
      formula: 'least limit of the licence-free bands that hold {frequency}',
      laws: [],
      value: ({ frequency }) => {
        const limits = RADIO_LIMITS.filter(({ low, high }) => frequency >= low && frequency <= high);
        if (limits.length === 0) {
          const known = '2400 to 2483.5 MHz and parts of 5150 to 5875 MHz';
          throw new OutOfRange(
            'licence-free bands',
            'frequency [Hz]',
            frequency,
            known,
            'wireless regulatory database',
          );
        }
        return Math.min(...limits.map((limit) => limit.radiated));
      },
    },
  ),
};

/** Stands for nothing at all [dBm]: below the noise of the narrowest channel, and well within the laws of the receiver. */
const NOTHING = -150;
const NOTHING_SAYS = '−150 dBm stands for nothing at all.';
const heard = (received: number): number => Math.max(NOTHING, received);

type SignalId =
  | 'link.pathLoss'
  | 'link.extraLoss'
  | 'link.picturesReceived'
  | 'link.commandsReceived'
  | 'link.noise'
  | 'link.snr';

const arriving: SumsOf<SignalId> = {
  'link.pathLoss': sum(
    {
      title: 'loss over open ground at the greatest distance',
      unit: 'dB',
      when: onWlan,
      caveat: 'A smooth middle over flat ground: nearer than the crossover the signal ripples by some 6 dB about it.',
    },
    {
      uses: {
        frequency: 'modem.frequency',
        distance: 'link.distance',
        base: 'link.baseHeight',
        aerial: 'at.aerial.height',
      },
      formula:
        'free-space loss at {frequency} over {distance}, or from the crossover on 40 · log10({distance}/1 m) − 20 · log10({base} · {aerial}/1 m²)',
      laws: [freeSpaceLoss, twoRayFarLoss, crossoverDistance],
      value: ({ frequency, distance, base, aerial }) =>
        chooseOpenGroundLoss({ frequency, distance, baseHeight: base, roverHeight: aerial }).loss,
    },
  ),
  'link.extraLoss': sum(
    { title: 'loss in walls, plants and people in the way', unit: 'dB', when: onWlan },
    {
      uses: { walls: 'link.walls', each: 'link.wallLoss', plants: 'link.vegetationLoss' },
      formula: '{walls} · {each} + {plants}',
      laws: [],
      value: ({ walls, each, plants }) => walls * each + plants,
    },
  ),
  'link.picturesReceived': sum(
    { title: 'power of the vehicle at the receiver of the base', unit: 'dBm', when: onWlan, caveat: NOTHING_SAYS },
    {
      uses: { radiated: 'link.eirpVehicle', gain: 'link.baseGain', path: 'link.pathLoss', extra: 'link.extraLoss' },
      formula: 'max(−150 dBm, {radiated} + {gain} − {path} − {extra})',
      laws: [receivedPower],
      value: ({ radiated, gain, path, extra }) =>
        heard(receivedPower({ radiated, gain, pathLoss: path, extraLoss: extra })),
    },
  ),
  'link.commandsReceived': sum(
    { title: 'power of the base at the receiver of the vehicle', unit: 'dBm', when: onWlan, caveat: NOTHING_SAYS },
    {
      uses: {
        radiated: 'link.eirpBase',
        gain: 'aerial.gain',
        path: 'link.pathLoss',
        extra: 'link.extraLoss',
        cable: 'aerial.cableLoss',
      },
      formula: 'max(−150 dBm, {radiated} + {gain} − {path} − {extra} − {cable})',
      laws: [receivedPower],
      value: ({ radiated, gain, path, extra, cable }) =>
        heard(receivedPower({ radiated, gain, pathLoss: path, extraLoss: extra + cable })),
    },
  ),
  'link.noise': sum(
    {
      title: 'noise of a receiver',
      unit: 'dBm',
      when: onWlan,
      caveat: 'The receiver of the base is taken to be like that of the vehicle. Other networks near by add to it.',
    },
    {
      uses: { width: 'modem.bandwidth', figure: 'modem.noiseFigure' },
      formula: '10 · log10(k · 290 K · {width} / 1 mW) + {figure}',
      laws: [noiseFloor],
      value: ({ width, figure }) => noiseFloor({ bandwidth: width, noiseFigure: figure }),
    },
  ),
  'link.snr': sum(
    { title: 'signal of the pictures over noise at the base', unit: 'dB', when: onWlan },
    {
      uses: { received: 'link.picturesReceived', noise: 'link.noise' },
      formula: '{received} − {noise}',
      laws: [signalToNoise],
      value: ({ received, noise }) => signalToNoise({ received, noise }),
    },
  ),
};

export const linkSignalSums: SumsOf<RadiatedId | SignalId> = { ...radiated, ...arriving };
