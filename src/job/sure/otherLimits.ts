/** The ± of the outdoor temperature, the pressure and the blower's power: each stands with its reading, typed in the same unit. */
import type { Test } from '../../calc/types.ts';
import { siOf } from '../entered.ts';
import { type FieldProblem, problemOf } from '../problems.ts';
import { type Read, readLimit } from '../read.ts';
import type { Job } from '../types.ts';
import { differenceUnit } from '../units.ts';

/** What each may be, SI. */
const possible = {
  outdoorDryBulb: [0.01, 10],
  barometer: [1, 10_000],
  'blower.power': [1, 2000],
} as const;
export type OtherLimit = keyof typeof possible;
export const otherLimits = Object.keys(possible) as readonly OtherLimit[];

function readOther(job: Job, key: OtherLimit): Read {
  const { limit = '', unit } = job.entered[key] ?? {};
  return unit === undefined ? { state: 'empty' } : readLimit(limit, differenceUnit(unit), possible[key]);
}

/** The limits that were typed, for a test. The one of the pressure holds whether it was read or taken by the height. */
export function otherLimitsOf(job: Job): NonNullable<Test['otherLimits']> {
  const typed = (key: OtherLimit) => siOf(readOther(job, key));
  return {
    outdoorDryBulb: typed('outdoorDryBulb'),
    pressure: typed('barometer'),
    blowerPower: typed('blower.power'),
  };
}

/** Those of them that cannot be used. */
export const otherLimitProblems = (job: Job): readonly FieldProblem[] =>
  otherLimits.flatMap((key) => problemOf(`${key}.limit`, readOther(job, key)));
