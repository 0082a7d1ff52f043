/** The results of jobs as rows for a spreadsheet: a job a row, plain numbers, their units in the heads. */
import { assess } from '~/calc/assess.ts';
import type { SimulatedAssessment } from '~/calc/confidence/simulateAssessment.ts';
import { outward } from '~/calc/confidence/verdict.ts';
import { orNull } from '~/calc/outcome.ts';
import type { Assessment, Interval, Test } from '~/calc/types.ts';
import { findAirflow } from '~/job/airflow/find.ts';
import { unitLabel } from '~/job/format.ts';
import { lockedOf } from '~/job/lock.ts';
import { readSheet } from '~/job/ratingSheet.ts';
import { toTest } from '~/job/toTest.ts';
import type { Job, System, UnitKey } from '~/job/types.ts';
import { fromSi } from '~/job/units.ts';
import { resultHeads as heads, inventedWord, resultVerdicts } from '~/words/en/resultsTable.ts';

const unitsIn = {
  ip: { temperature: 'degF', flow: 'cfm', power: 'btuh' },
  si: { temperature: 'degC', flow: 'ls', power: 'kw' },
} as const satisfies Readonly<Record<System, Readonly<Record<string, UnitKey>>>>;
/** Digits behind the point, so that a kilowatt says as much as a Btu/h. */
const digits = { degF: 1, degC: 1, cfm: 0, ls: 0, btuh: 0, kw: 3 } as const;

interface Result {
  readonly job: Job;
  readonly test: Test;
  readonly assessment: Assessment;
  readonly drawn: SimulatedAssessment | null;
}

type Column = readonly [head: string, of: (result: Result) => string];

const numberIn = (unit: keyof typeof digits) => (si: number | null | undefined) =>
  si === null || si === undefined ? '' : fromSi(si, unit).toFixed(digits[unit]);
const perCent = (fraction: number | null) => (fraction === null ? '' : (fraction * 100).toFixed(1));

/** The range that decides, as on the sheet: that of the draws where they differ, rounded outward. */
function endsOf({ assessment: { ratio, verdict }, drawn }: Result): Pick<Interval, 'low' | 'high'> | null {
  if (!ratio.ok) return null;
  const byDraws = drawn?.by === 'monteCarlo' ? drawn : null;
  const decided = orNull(byDraws?.verdict ?? verdict);
  return decided ?? outward((orNull(byDraws?.ratio ?? ratio) ?? ratio.value).interval);
}

function verdictOf({ assessment, drawn }: Result): string {
  const found = drawn?.by === 'monteCarlo' ? drawn.verdict : assessment.verdict;
  return resultVerdicts[found.ok ? found.value.outcome : 'none'];
}

function columnsIn(system: System): readonly Column[] {
  const { temperature, flow, power } = unitsIn[system];
  const [degrees, volume, watts] = [numberIn(temperature), numberIn(flow), numberIn(power)];
  const [t, v, p] = [temperature, flow, power].map(unitLabel) as [string, string, string];
  return [
    [heads.job, ({ job }) => job.notes.address ?? ''],
    [heads.system, ({ job }) => job.notes.system ?? ''],
    [heads.readAt, ({ job }) => job.entered['leaving.dryBulb']?.at ?? ''],
    [heads.by, ({ job }) => job.notes.tester ?? ''],
    [heads.returnDryBulb(t), ({ assessment }) => degrees(orNull(assessment.entering)?.dryBulb)],
    [heads.returnHumidity, ({ assessment }) => perCent(orNull(assessment.entering)?.relativeHumidity ?? null)],
    [heads.supplyDryBulb(t), ({ assessment }) => degrees(orNull(assessment.leaving)?.dryBulb)],
    [heads.supplyHumidity, ({ assessment }) => perCent(orNull(assessment.leaving)?.relativeHumidity ?? null)],
    [heads.airflow(v), ({ test }) => volume(test.airflow.volumeFlow)],
    [heads.outdoors(t), ({ test }) => degrees(test.outdoorDryBulb)],
    [heads.makes(p), ({ assessment }) => watts(orNull(assessment.measured)?.total)],
    [heads.makesLow(p), ({ assessment }) => watts(assessment.ranges.total?.interval.low)],
    [heads.makesHigh(p), ({ assessment }) => watts(assessment.ranges.total?.interval.high)],
    [heads.should(p), ({ assessment }) => watts(orNull(assessment.expected)?.total)],
    [heads.share, ({ assessment }) => perCent(orNull(assessment.ratio)?.value ?? null)],
    [heads.shareLow, (result) => perCent(endsOf(result)?.low ?? null)],
    [heads.shareHigh, (result) => perCent(endsOf(result)?.high ?? null)],
    [heads.line, ({ test }) => perCent(test.line)],
    [heads.verdict, verdictOf],
    [heads.lockedAt, ({ job }) => lockedOf(job)?.at ?? ''],
    [heads.code, ({ job }) => lockedOf(job)?.code ?? ''],
    [heads.invented, ({ job }) => (job.invented ? inventedWord : '')],
  ];
}

/** The test of each job: what is drawn before the rows are made. */
export const testOf = (job: Job): Test => toTest(job, findAirflow, readSheet).test;

/** A row of heads and one a job; `drawn` goes with the jobs, `null` where first order stands alone. */
export function resultRows(
  jobs: readonly Job[],
  drawn: readonly (SimulatedAssessment | null)[],
  system: System,
): string[][] {
  const columns = columnsIn(system);
  const rows = jobs.map((job, index): string[] => {
    const test = testOf(job);
    const result = { job, test, assessment: assess(test), drawn: drawn[index] ?? null };
    return columns.map(([, of]) => of(result));
  });
  return [columns.map(([head]) => head), ...rows];
}
