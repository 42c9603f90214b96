/** Sums of the heat of the motors: drive motors on their way and stalled, the steering motor at its stop. */
import {
  adiabaticHeatingRate,
  heldCoilTemperature,
  holdCurrent,
  holdHeat,
  lumpTemperature,
  motorContinuousCurrent,
  pwmRms,
  windingAfterStall,
  windingSteadyTemperature,
  ZERO_CELSIUS,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { type Constant, type SumsOf, sum } from '../sum.ts';

type MotorHeatId =
  | 'heat.motorResistance'
  | 'heat.motorCapacity'
  | 'heat.windingCruise'
  | 'heat.windingClimb'
  | 'heat.stallRate'
  | 'heat.windingStall'
  | 'heat.steerCurrent'
  | 'heat.steerFull'
  | 'heat.steerHeld';

/** Specific heat [J/(kg·K)]: copper from handbook tables; mixed metal of a motor as in a worked locked-rotor figure. */
const COPPER_HEAT = 385;
const CAN_HEAT = 450;
/** A can is at least this share of the motor, however the two weights were guessed. */
const CAN_LEAST = 0.5;
/** No winding of a toy outlives this [K]: figures end here, which means burnt. The laws of the winding end here too. */
const BURNT = Math.floor(ZERO_CELSIUS + 200);

const copper = (): Constant => ({
  value: COPPER_HEAT,
  unit: 'J/(kg·K)',
  is: 'specific heat of copper',
  source: 'handbook tables',
});
const can = (): Constant => ({
  value: CAN_HEAT,
  unit: 'J/(kg·K)',
  is: 'specific heat of can, magnets and iron',
  source: 'mixed metal, from memory',
});

const BURNT_SAYS = 'Shown as 200 °C where it would go beyond: burnt.';

const THERMAL = {
  resistance: 'drive.resistance',
  toCan: 'motor.windingToCan',
  toAir: 'motor.canToAir',
  air: 'day.hottest',
} as const;
const BODIES = { windingMass: 'motor.windingMass', motorMass: 'motor.canMass' } as const;

type Thermal = Readonly<Record<keyof typeof THERMAL, number>>;
type Bodies = Readonly<Record<keyof typeof BODIES | 'copper' | 'can', number>>;

/** Heat capacities of the winding and of the rest of the motor. */
function capacities({ windingMass, motorMass, copper, can }: Bodies) {
  return {
    windingCapacity: windingMass * copper,
    canCapacity: Math.max(motorMass - windingMass, CAN_LEAST * motorMass) * can,
  };
}

/** Can temperature while the winding's heat flows through it steadily: the two rises are as the two resistances. */
const steadyCan = ({ toCan, toAir, air }: Thermal, winding: number) =>
  air + ((winding - air) * toAir) / (toCan + toAir);

/** Steady winding temperature, or burnt where there is none below that. */
function steadyWinding({ resistance, toCan, toAir, air }: Thermal, current: number): number {
  const motor = { resistance20: resistance, windingToCan: toCan, canToAir: toAir, ambient: air };
  if (current >= motorContinuousCurrent({ limit: BURNT, ...motor })) return BURNT;
  return windingSteadyTemperature({ current, ...motor });
}

/** Winding after a time at a current, both bodies warm from the start on. */
function windingAfter(x: Thermal & Bodies, current: number, start: number, time: number): number {
  const { resistance, toCan, toAir, air } = x;
  const after = windingAfterStall({
    current,
    resistance20: resistance,
    ...capacities(x),
    windingToCan: toCan,
    canToAir: toAir,
    windingStart: start,
    canStart: steadyCan(x, start),
    ambient: air,
    time,
  });
  return Math.min(BURNT, after);
}

const BODY_WORDS =
  'winding {windingMass} · {copper}, can ({motorMass} − {windingMass}) · {can}, {toCan} between them, {toAir} to air at {air}';

const onOff = ({ steering }: Layout): boolean => steering === 'on-off';

const STEER = {
  full: 'pack.full',
  threshold: 'bridge.threshold',
  resistance: 'steer.resistance',
  toAir: 'steer.toAir',
  air: 'day.hottest',
} as const;

const CLUTCH_SAYS =
  'With a slip clutch the motor turns on and draws less at full drive, by how much is the clutch’s setting: the figure is then the most it can be. Without one the motor stands and draws just this.';

export const motorHeatSums: SumsOf<MotorHeatId> = {
  'heat.motorResistance': sum(
    { title: 'warming of one drive motor over the air per watt', unit: 'K/W' },
    {
      uses: { toCan: 'motor.windingToCan', toAir: 'motor.canToAir' },
      formula: '{toCan} + {toAir}',
      laws: [],
      value: ({ toCan, toAir }) => toCan + toAir,
    },
  ),
  'heat.motorCapacity': sum(
    {
      title: 'heat one drive motor takes up per kelvin',
      unit: 'J/K',
      caveat: 'Winding and can as one body, for a long look; in a stall the winding alone warms first.',
    },
    {
      uses: BODIES,
      takes: () => ({ copper: copper(), can: can() }),
      formula: '{windingMass} · {copper} + ({motorMass} − {windingMass}) · {can}',
      laws: [],
      value: (x) => {
        const { windingCapacity, canCapacity } = capacities(x);
        return windingCapacity + canCapacity;
      },
    },
  ),
  'heat.windingCruise': sum(
    {
      title: 'winding temperature, driving on the level for long, on the hottest day',
      unit: '°C',
      caveat: `Steady. ${BURNT_SAYS} Friction and iron heat are left out, and so is the cooling by the mount.`,
    },
    {
      uses: { current: 'drive.currentCruise', ripple: 'bridge.ripple', ...THERMAL },
      formula:
        '{air} + P · (1 + α · ({air} − 20 °C)) / (1 − α · P), P = ({toCan} + {toAir}) · {resistance} · ({current}² + {ripple}²/12)',
      laws: [pwmRms, windingSteadyTemperature, motorContinuousCurrent],
      value: ({ current, ripple, ...x }) => steadyWinding(x, pwmRms({ mean: current, ripple })),
    },
  ),
  'heat.windingClimb': sum(
    {
      title: 'winding temperature after the longest climb, on the hottest day',
      unit: '°C',
      caveat: `From driving-warm, winding and can as two bodies, for the time of the climb. ${BURNT_SAYS}`,
    },
    {
      uses: {
        current: 'drive.currentClimb',
        ripple: 'bridge.ripple',
        start: 'heat.windingCruise',
        time: 'want.climbTime',
        ...THERMAL,
        ...BODIES,
      },
      takes: () => ({ copper: copper(), can: can() }),
      formula: `two bodies from {start} for {time} at √({current}² + {ripple}²/12) in {resistance}: ${BODY_WORDS}`,
      laws: [pwmRms, windingAfterStall],
      value: ({ current, ripple, start, time, ...x }) =>
        windingAfter(x, pwmRms({ mean: current, ripple }), start, time),
    },
  ),
  'heat.stallRate': sum(
    {
      title: 'warming of the winding in a stall',
      unit: 'K/s',
      caveat:
        'The first seconds, before any heat leaves the copper. A locked-rotor test warms it as fast: keep it short.',
    },
    {
      uses: { current: 'drive.blockedCurrent', resistance: 'drive.resistance', windingMass: 'motor.windingMass' },
      takes: () => ({ copper: copper() }),
      formula: '{current}² · {resistance} / ({windingMass} · {copper})',
      laws: [adiabaticHeatingRate],
      value: ({ current, resistance, windingMass, copper }) =>
        adiabaticHeatingRate({ current, resistance, heatCapacity: windingMass * copper }),
    },
  ),
  'heat.windingStall': sum(
    {
      title: 'winding temperature after a stall at the end of a climb, on the hottest day',
      unit: '°C',
      caveat: `The motor blocked alone, for as long as the drive lets a stall last. The current is that of a cold winding, which a warm one draws no more: the safe side. ${BURNT_SAYS}`,
    },
    {
      uses: {
        current: 'drive.blockedCurrent',
        start: 'heat.windingClimb',
        time: 'set.stallTime',
        ...THERMAL,
        ...BODIES,
      },
      takes: () => ({ copper: copper(), can: can() }),
      formula: `two bodies from {start} for {time} at {current} in {resistance}: ${BODY_WORDS}`,
      laws: [windingAfterStall],
      value: ({ current, start, time, ...x }) => windingAfter(x, current, start, time),
    },
  ),
  'heat.steerCurrent': sum(
    {
      title: 'current of the steering motor at its stop, full drive',
      unit: 'A',
      when: onOff,
      caveat: CLUTCH_SAYS,
    },
    {
      uses: { full: 'pack.full', threshold: 'bridge.threshold', slope: 'bridge.slope', resistance: 'steer.resistance' },
      formula: '({full} − {threshold}) / ({resistance} + {slope})',
      laws: [holdCurrent],
      value: ({ full, threshold, slope, resistance }) =>
        holdCurrent({ voltage: Math.max(0, full - threshold), duty: 1, resistance: resistance + slope }),
    },
  ),
  'heat.steerFull': sum(
    {
      title: 'steering motor held at full drive for the longest hold, on the hottest day',
      unit: '°C',
      when: onOff,
      caveat: `From the air’s temperature; the winding alone takes up the heat. ${CLUTCH_SAYS}`,
    },
    {
      uses: { ...STEER, windingMass: 'steer.windingMass', time: 'set.holdTime' },
      takes: () => ({ copper: copper() }),
      formula:
        '{air} + P · {toAir} · (1 − exp(−{time} / ({toAir} · {windingMass} · {copper}))), P = ({full} − {threshold})² / {resistance}; not above the steady temperature at that voltage',
      laws: [holdHeat, lumpTemperature, heldCoilTemperature],
      value: ({ full, threshold, resistance, toAir, air, windingMass, time, copper }) => {
        const voltage = Math.max(0, full - threshold);
        const rising = lumpTemperature({
          ambient: air,
          power: holdHeat({ voltage, duty: 1, resistance, share: 1 }),
          conductance: 1 / toAir,
          initial: air,
          heatCapacity: windingMass * copper,
          time,
        });
        const steady = heldCoilTemperature({
          voltage,
          resistance20: resistance,
          thermalResistance: toAir,
          ambient: air,
        });
        return Math.min(rising, steady);
      },
    },
  ),
  'heat.steerHeld': sum(
    {
      title: 'steering motor held for ever at the holding duty, on the hottest day',
      unit: '°C',
      when: onOff,
      caveat:
        'Steady; a warm winding draws less and so protects itself a little. At the holding duty a slip clutch grips, so the motor stands with a clutch and without.',
    },
    {
      uses: { ...STEER, duty: 'set.holdDuty' },
      formula:
        '{air} + x, α · x² + (1 + α · ({air} − 20 °C)) · x = {toAir} · ({duty} · {full} − {threshold})² / {resistance}',
      laws: [heldCoilTemperature],
      value: ({ full, threshold, resistance, toAir, air, duty }) =>
        heldCoilTemperature({
          voltage: Math.max(0, duty * full - threshold),
          resistance20: resistance,
          thermalResistance: toAir,
          ambient: air,
        }),
    },
  ),
};
