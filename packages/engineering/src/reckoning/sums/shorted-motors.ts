/** A motor whose terminals are joined brakes as long as it turns: the force of all drive motors at the wheels. */
import { brakeTorque, copperResistance, magnetConstantAt } from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import type { Ref } from '../sum.ts';
import { motorsOf, sharingOf } from './counts.ts';
import { climbing } from './drive-circuit.ts';

/** The circuit of a shorted motor: its own, the lower half of the bridge, the wires. */
export const SHORTED = {
  constant: 'drive.constant',
  resistance: 'drive.resistance',
  idle: 'drive.noLoadCurrent',
  ratio: 'drive.ratio',
  efficiency: 'gear.efficiency',
  diameter: 'toy.wheelDiameter',
  threshold: 'bridge.threshold',
  slope: 'bridge.slope',
  wire: 'wiring.motor.resistance',
} as const satisfies Record<string, Ref>;

/** What of it the layout says. */
export const ofCircuit = (layout: Layout) => ({
  motors: motorsOf(layout),
  sharing: sharingOf(layout),
  warm: climbing().winding,
  magnets: climbing().magnets,
});

/** What the circuit and the train of a shorted motor are made of. */
export type Circuit = { readonly [K in keyof typeof SHORTED | keyof ReturnType<typeof ofCircuit>]: number };

/** The circuit with magnets that are warm from driving: they are weaker, so it brakes less and creeps faster. */
export const warmed = <T extends Circuit>(x: T, { magnet }: Layout): T => ({
  ...x,
  constant: magnetConstantAt({ constant20: x.constant, temperature: x.magnets, magnet }),
});

/** Resistances of the loop the braking current runs in. */
export const loopOf = ({ resistance, warm, sharing, slope, wire }: Circuit) => ({
  resistance: copperResistance({ r20: resistance, temperature: warm }),
  pathResistance: sharing * slope + wire,
});

/** Force at the wheels of all shorted motors, warmed, at a speed. Below the threshold of the bridge no current flows. */
export function shortedForce(x: Circuit, speed: number): number {
  const turning = (2 * speed * x.ratio) / x.diameter;
  const torque = brakeTorque({
    motorConstant: x.constant,
    speed: Math.max(0, turning - x.threshold / x.constant),
    noLoadCurrent: x.idle,
    ...loopOf(x),
  });
  return (x.motors * torque * 2 * x.ratio) / (x.efficiency * x.diameter);
}

export const LOOP = 'R = {resistance} at {warm} + {sharing} · {slope} + {wire}, k = {constant} at {magnets}';
/** The braking force in words, at a speed given in words. */
export const forceAt = (speed: string) =>
  `{motors} · T · 2 · {ratio} / ({efficiency} · {diameter}), T = k² · ω / R + k · {idle}, ω = ${speed} · 2 · {ratio} / {diameter} − {threshold} / k, not below 0, ${LOOP}`;
export const SHORTED_CAVEAT =
  'Winding and magnets warm. Backwards a gear train loses at least what it loses forwards, so the forward figure is careful. A bipolar bridge brakes only above its threshold.';
