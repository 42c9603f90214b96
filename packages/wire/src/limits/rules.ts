/** What must hold between entries of a limits record, beyond the bounds of each. */
import type * as z from 'zod/mini';
import type { LimitsDraft } from './record.ts';

interface Breach {
  readonly path: readonly PropertyKey[];
  readonly accepted: string;
}

interface Rule {
  /** The rule in words, for the documentation. */
  readonly says: string;
  readonly breaches: (draft: LimitsDraft) => readonly Breach[];
}

export const LIMITS_RULES: readonly Rule[] = [
  {
    says: 'The crawl speed does not pass the speed cap.',
    breaches: ({ limits: { crawlSpeed, speedCap } }) =>
      crawlSpeed.value <= speedCap.value
        ? []
        : [{ path: ['limits', 'crawlSpeed', 'value'], accepted: `at most the speed cap, ${speedCap.value} m/s` }],
  },
  {
    says: 'An on/off steering has both a holding duty and a holding time; any other steering has neither.',
    breaches: ({ limits: { steeringHoldDuty, steeringHoldTime } }) => {
      if ((steeringHoldDuty === undefined) === (steeringHoldTime === undefined)) return [];
      const present = steeringHoldDuty === undefined ? 'steeringHoldTime' : 'steeringHoldDuty';
      return [{ path: ['limits', present], accepted: 'steeringHoldDuty and steeringHoldTime, both or neither' }];
    },
  },
  {
    says: 'The band of a parameter has both ends or neither, and the value lies in it.',
    breaches: ({ model }) => Object.entries(model).flatMap(([name, parameter]) => bandBreaches(name, parameter)),
  },
  {
    says: 'The rested voltage is given from empty to full, states of charge rise, and the voltage never falls with them.',
    breaches: ({ model: { openCircuit } }) => tableBreaches(openCircuit.value),
  },
];

/** A check of the schema library: reports every breach at its place. */
export function contradictions(payload: z.core.ParsePayload<LimitsDraft>): void {
  for (const rule of LIMITS_RULES) {
    for (const { path, accepted } of rule.breaches(payload.value)) {
      payload.issues.push({ code: 'custom', path: [...path], input: payload.value, message: accepted });
    }
  }
}

function bandBreaches(name: string, parameter: LimitsDraft['model'][keyof LimitsDraft['model']]): readonly Breach[] {
  if (parameter === undefined || typeof parameter.value !== 'number' || !('low' in parameter || 'high' in parameter)) {
    return [];
  }
  const { value, low, high } = parameter as { value: number; low?: number; high?: number };
  if (low === undefined || high === undefined) {
    const present = low === undefined ? 'high' : 'low';
    return [{ path: ['model', name, present], accepted: 'low and high, both or neither' }];
  }
  return low <= value && value <= high
    ? []
    : [{ path: ['model', name, 'value'], accepted: `a value between low, ${low}, and high, ${high}` }];
}

function tableBreaches(points: readonly (readonly [number, number])[]): readonly Breach[] {
  const breaches: Breach[] = [];
  const place = (index: number, part: 0 | 1) => ['model', 'openCircuit', 'value', index, part];
  points.forEach(([charge, volt], index) => {
    const before = points[index - 1];
    if (before === undefined) {
      if (charge !== 0) breaches.push({ path: place(index, 0), accepted: '0, the empty pack, first' });
      return;
    }
    if (charge <= before[0]) breaches.push({ path: place(index, 0), accepted: `more than ${before[0]}` });
    if (volt < before[1]) breaches.push({ path: place(index, 1), accepted: `at least ${before[1]} V` });
  });
  if (points.at(-1)?.[0] !== 1) {
    breaches.push({ path: place(points.length - 1, 0), accepted: '1, the full pack, last' });
  }
  return breaches;
}
