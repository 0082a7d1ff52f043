/** Every list of outside checks, by subject: the test and the page of checks run the same. */
import * as airflow from './airflow.ts';
import * as airflowCurve from './airflowCurve.ts';
import * as atmosphere from './atmosphere.ts';
import * as capacityExample from './capacityExample.ts';
import type { Check } from './check.ts';
import * as coil from './coil.ts';
import * as commonPractice from './commonPractice.ts';
import * as coolingCurves from './coolingCurves.ts';
import * as ducts from './ducts.ts';
import * as enhancement from './enhancement.ts';
import * as factors from './factors.ts';
import * as faults from './faults.ts';
import * as goldenJobs from './goldenJobs.ts';
import * as handbookExamples from './handbookExamples.ts';
import * as handbookTables from './handbookTables.ts';
import * as lines from './lines.ts';
import { type NotOurs, notOurs } from './notOurs.ts';
import * as otherModels from './otherModels.ts';
import * as otherStates from './otherStates.ts';
import * as processes from './processes.ts';
import * as realGas from './realGas.ts';
import * as realGasStates from './realGasStates.ts';
import * as refrigerants from './refrigerants.ts';
import * as saturation from './saturation.ts';
import * as thinAir from './thinAir.ts';
import * as uncertainty from './uncertainty.ts';

export const published = {
  saturation: saturation.checks,
  enhancement: enhancement.checks,
  handbookTables: handbookTables.checks,
  handbookExamples: handbookExamples.checks,
  realGas: realGas.checks,
  realGasStates: realGasStates.checks,
  otherStates: otherStates.checks,
  atmosphere: atmosphere.checks,
  factors: factors.checks,
  coil: coil.checks,
  airflow: airflow.checks,
  airflowCurve: airflowCurve.checks,
  coolingCurves: coolingCurves.checks,
  otherModels: otherModels.checks,
  thinAir: thinAir.checks,
  ducts: ducts.checks,
  processes: processes.checks,
  goldenJobs: goldenJobs.checks,
  refrigerants: refrigerants.checks,
  lines: lines.checks,
  commonPractice: commonPractice.checks,
  uncertainty: uncertainty.checks,
  faults: faults.checks,
  capacityExample: capacityExample.checks,
} as const satisfies Record<string, readonly Check[]>;

export type Subject = keyof typeof published;

/** Published figures that were looked at and are not tested against, of every subject. */
export const leftOut: readonly NotOurs[] = [
  ...notOurs,
  ...airflow.notOurs,
  ...coil.notOurs,
  ...coolingCurves.notOurs,
  ...otherModels.notOurs,
  ...thinAir.notOurs,
  ...uncertainty.notOurs,
  ...lines.notOurs,
];
