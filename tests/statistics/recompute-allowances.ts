import { type AllowanceBasis, allowanceFactor } from '../../src/statistics/allowance-factor';
import { convertAllowance } from '../../src/statistics/convert-allowance';
import { normalTime } from '../../src/statistics/normal-time';
import { occasionalFrequency } from '../../src/statistics/occasional-frequency';
import { relaxationAllowance, type WorkingConditions } from '../../src/statistics/relaxation-allowance';
import { standardTime } from '../../src/statistics/standard-time';
import { unoccupiedRest } from '../../src/statistics/unoccupied-rest';
import type { Recompute } from './published-study-answers';

export const recomputeAllowances: Recompute = {
  'allow.ilo': (i: { conditions: WorkingConditions[] }) =>
    i.conditions.map((conditions) => 100 * relaxationAllowance(conditions)),
  'allow.conventions': ({ allowance }: { allowance: number }) => ({
    ofNormalTime: allowanceFactor(allowance, 'normal_time'),
    ofShift: allowanceFactor(allowance, 'shift'),
    shiftAsNormal: convertAllowance(allowance, 'shift', 'normal_time'),
    normalAsShift: convertAllowance(allowance, 'normal_time', 'shift'),
  }),
  'allow.workday': (i: { observed: number; rating: number; allowance: number; basis: AllowanceBasis }) => {
    const normal = normalTime(i.observed, i.rating);
    return { normal, standard: normal * allowanceFactor(i.allowance, i.basis) };
  },
  'allow.worker-only': (i: { machine: number; worker: number; rating: number; allowance: number }) => ({
    standard: standardTime({
      external: normalTime(i.worker, i.rating),
      internal: 0,
      occasional: 0,
      machine: i.machine,
      allowance: i.allowance,
      machineAllowance: 0,
      basis: 'normal_time',
    }).standardTime,
  }),
  'allow.lost-time': (i: { allowance: number; shift: number }) => {
    const worked = i.shift / allowanceFactor(i.allowance, 'normal_time');
    return { worked, lost: i.shift - worked };
  },
  'allow.unoccupied': (i: { waits: number[] }) => i.waits.map(unoccupiedRest),
  'occasional.one-in-thirty': (i: { occurrences: number; units: number; confidence: number }) =>
    occasionalFrequency(i.occurrences, i.units, i.confidence),
};
