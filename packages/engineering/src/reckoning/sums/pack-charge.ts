/** Sums of charging. */
import {
  CHEMISTRY_FACTS,
  chargeAtSwitch,
  chargeRate,
  constantCurrentTime,
  constantVoltageTime,
  nickelChargeTime,
  restVoltage,
  restVoltageSlope,
} from '@longrein/laws';
import type { Layout } from '../../dossier/resolve.ts';
import { route, type SumsOf, sum, sumByRoutes } from '../sum.ts';

type ChargeId =
  | 'pack.chargerNeed'
  | 'pack.chargerFits'
  | 'pack.chargeCurrent'
  | 'pack.chargeRate'
  | 'pack.chargeRateMax'
  | 'pack.chargeTime'
  | 'pack.dayShare';

const rechargeable = ({ chemistry }: Layout) => CHEMISTRY_FACTS[chemistry].charge !== undefined;
const nickel = ({ chemistry }: Layout) => chemistry === 'nimh';

/** Highest usual charge rates [capacities per hour]: lithium 0.5 to 1, nickel 0.5 to 1 with a fall of voltage, lead 0.25. */
const CHARGE_RATE_MAX = { lipo: 1, nmc: 1, lfp: 1, nimh: 1, alkaline: 0, lead: 0.25 } as const;

/** The straight line that stands for the rest voltage starts here: below it the curve falls steeply. */
const LINE_FROM = 0.1;
/** Coulombic efficiency of charging nickel cells at moderate rates: 0.66 slow to 0.92 fast, from memory. */
const NICKEL_EFFICIENCY = 0.8;

export const packChargeSums: SumsOf<ChargeId> = {
  'pack.chargerNeed': sum(
    { title: 'charger that suits the pack, wanted', unit: '1' },
    { uses: {}, formula: '1', laws: [], value: () => 1 },
  ),
  'pack.chargerFits': sum(
    {
      title: 'charger suits the pack (1) or not (0)',
      unit: '1',
      caveat: 'Chemistry and cell count of the charger against those of the pack.',
    },
    {
      uses: {},
      takes: ({ chargerFits }) => ({
        fits: {
          value: chargerFits ? 1 : 0,
          unit: '1',
          is: 'chemistry and cells agree',
          source: 'charger and pack fitted',
        },
      }),
      formula: '{fits}',
      laws: [],
      value: ({ fits }) => fits,
    },
  ),
  'pack.chargeCurrent': sum(
    {
      title: 'charge current',
      unit: 'A',
      when: rechargeable,
      caveat: 'The charger’s own, or what its source can give, whichever is less.',
    },
    {
      uses: {
        charger: 'charger.current',
        source: 'charger.sourcePower',
        efficiency: 'charger.efficiency',
        voltage: 'pack.full',
      },
      formula: 'min({charger}, {source} · {efficiency} / {voltage})',
      laws: [],
      value: ({ charger, source, efficiency, voltage }) => Math.min(charger, (source * efficiency) / voltage),
    },
  ),
  'pack.chargeRate': sum(
    { title: 'C-rate of charging', unit: '1', when: rechargeable },
    {
      uses: { current: 'pack.chargeCurrent', capacity: 'pack.realCapacity' },
      formula: '{current} · 1 h / {capacity}',
      laws: [chargeRate],
      value: ({ current, capacity }) => chargeRate({ current, capacity }),
    },
  ),
  'pack.chargeRateMax': sum(
    {
      title: 'highest usual C-rate of charging',
      unit: '1',
      when: rechargeable,
      caveat: 'Nickel cells bear this only on a charger that ends by the fall of the voltage; else a tenth of it.',
    },
    {
      uses: {},
      takes: ({ chemistry }) => ({
        rate: {
          value: CHARGE_RATE_MAX[chemistry],
          unit: '1',
          is: 'highest usual charge rate of the chemistry',
          source: 'cell makers’ handling sheets, from memory',
        },
      }),
      formula: '{rate}',
      laws: [],
      value: ({ rate }) => rate,
    },
  ),
  'pack.chargeTime': sumByRoutes(
    {
      title: 'charge time from the reserve to full',
      unit: 'h',
      when: rechargeable,
      caveat: 'Constant current, then a tail. Never charge below 0 °C, unattended, or on anything that burns.',
    },
    route({
      name: 'nickel cells, constant current',
      when: nickel,
      uses: { capacity: 'pack.realCapacity', current: 'pack.chargeCurrent', reserve: 'set.reserve' },
      takes: () => ({
        efficiency: {
          value: NICKEL_EFFICIENCY,
          unit: '1',
          is: 'share of the charge that is stored',
          source: '0.66 slow to 0.92 fast, from memory',
        },
      }),
      formula: '(1 − {reserve}) · {capacity} / ({efficiency} · {current})',
      laws: [nickelChargeTime],
      value: ({ capacity, current, reserve, efficiency }) =>
        (1 - reserve) * nickelChargeTime({ capacity, efficiency, current }),
    }),
    route({
      name: 'constant current, then constant voltage',
      uses: {
        capacity: 'pack.realCapacity',
        current: 'pack.chargeCurrent',
        taper: 'charger.tailCurrent',
        resistance: 'pack.resistance',
        limit: 'pack.full',
        reserve: 'set.reserve',
      },
      takes: ({ chemistry, cells }) => {
        const slope = cells * restVoltageSlope({ chemistry, from: LINE_FROM, to: 1 });
        const source = 'rest-voltage table of the chemistry, straight line from 10 % to full';
        return {
          rise: { value: slope, unit: 'V', is: 'rise of the rest voltage from empty to full', source },
          empty: {
            value: cells * restVoltage({ chemistry, charge: LINE_FROM }) - LINE_FROM * slope,
            unit: 'V',
            is: 'rest voltage of the straight line at zero charge',
            source,
          },
        };
      },
      formula:
        'at {current} from {reserve} to the charge where {limit} is reached (line {empty} + charge · {rise}, resistance {resistance}) of {capacity}, then the tail down to {taper}',
      laws: [chargeAtSwitch, constantCurrentTime, constantVoltageTime],
      value: ({ capacity, current, taper, resistance, limit, reserve, rise, empty }) => {
        const met = chargeAtSwitch({ limit, current, resistance, emptyVoltage: empty, rise });
        const end = Math.min(1, Math.max(met, reserve));
        const steady = end > reserve ? constantCurrentTime({ start: reserve, end, capacity, current }) : 0;
        const tail = current > taper ? constantVoltageTime({ resistance, capacity, rise, current, taper }) : 0;
        return steady + tail;
      },
    }),
  ),
  'pack.dayShare': sum(
    {
      title: 'share of the day one pack can run',
      unit: '%',
      when: rechargeable,
      caveat: 'With one pack and one charger; swapping, cooling and people come on top.',
    },
    {
      uses: { run: 'pack.runTime', charge: 'pack.chargeTime' },
      formula: '{run} / ({run} + {charge})',
      laws: [],
      value: ({ run, charge }) => run / (run + charge),
    },
  ),
};
