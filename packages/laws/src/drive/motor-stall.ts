/** The winding of a stalled motor, second by second. */
import { COPPER_COEFFICIENT } from '../conductors/wire.ts';
import { COPPER_REFERENCE } from '../constants.ts';
import { law } from '../law.ts';

/** Integral of e^(λs) for s from 0 to t. */
const growth = (rate: number, time: number): number => (rate === 0 ? time : Math.expm1(rate * time) / rate);

/**
 * First state of x' = A·x + (drive, 0) at a time, for a two-body chain, whose eigenvalues are always real and apart.
 * Lagrange's formula for a function of a 2 × 2 matrix.
 */
function firstBody(
  a: readonly [number, number, number, number],
  start: readonly [number, number],
  drive: number,
  time: number,
): number {
  const [a11, a12, a21, a22] = a;
  const mean = (a11 + a22) / 2;
  const apart = Math.sqrt(((a11 - a22) / 2) ** 2 + a12 * a21);
  const part = (rate: number, other: number): number => {
    const fromStart = (a11 - other) * start[0] + a12 * start[1];
    return Math.exp(rate * time) * fromStart + growth(rate, time) * (a11 - other) * drive;
  };
  const [fast, slow] = [mean - apart, mean + apart];
  return (part(slow, fast) - part(fast, slow)) / (slow - fast);
}

/** Winding temperature after some time at a constant current, from any start. */
export const windingAfterStall = law(
  {
    id: 'winding-after-stall',
    title: 'Winding temperature during a stall',
    equation:
      'Cw·dTw/dt = I²·R20·(1 + α(Tw − 293.15 K)) − (Tw − Tc)/R1, Cc·dTc/dt = (Tw − Tc)/R1 − (Tc − Ta)/R2, Tw(0) = Tw0, Tc(0) = Tc0, solved for Tw(t)',
    args: {
      current: { symbol: 'I', is: 'motor current, held constant', unit: 'A', from: 0 },
      resistance20: { symbol: 'R20', is: 'winding resistance at 20 °C', unit: 'Ω', above: 0 },
      windingCapacity: { symbol: 'Cw', is: 'heat capacity of the winding', unit: 'J/K', above: 0 },
      canCapacity: { symbol: 'Cc', is: 'heat capacity of can, magnets and iron', unit: 'J/K', above: 0 },
      windingToCan: { symbol: 'R1', is: 'thermal resistance winding to can', unit: 'K/W', above: 0 },
      canToAir: { symbol: 'R2', is: 'thermal resistance can to air', unit: 'K/W', above: 0 },
      windingStart: { symbol: 'Tw0', is: 'winding temperature at the start', unit: 'K', from: 233, to: 473 },
      canStart: { symbol: 'Tc0', is: 'can temperature at the start', unit: 'K', from: 233, to: 473 },
      ambient: { symbol: 'Ta', is: 'air temperature', unit: 'K', from: 233, to: 373 },
      time: { symbol: 't', is: 'duration', unit: 's', from: 0 },
    },
    gives: { symbol: 'Tw', is: 'winding temperature after t', unit: 'K' },
    validFor:
      'constant current, also where it runs away; above the insulation limit the figure only says that it burns',
    leavesOut: 'the fall of current as the winding warms at constant voltage (safe side), friction and iron heat',
    source:
      'two-body model of motor makers’ data sheets (Rth1, Rth2, τw1, τw2) with the resistance of copper at its own temperature',
  },
  ({
    current,
    resistance20,
    windingCapacity,
    canCapacity,
    windingToCan,
    canToAir,
    windingStart,
    canStart,
    ambient,
    time,
  }) => {
    const heat = current ** 2 * resistance20;
    const chain = [
      (heat * COPPER_COEFFICIENT - 1 / windingToCan) / windingCapacity,
      1 / (windingToCan * windingCapacity),
      1 / (windingToCan * canCapacity),
      -(1 / windingToCan + 1 / canToAir) / canCapacity,
    ] as const;
    const drive = (heat * (1 + COPPER_COEFFICIENT * (ambient - COPPER_REFERENCE))) / windingCapacity;
    return ambient + firstBody(chain, [windingStart - ambient, canStart - ambient], drive, time);
  },
);
