/** What the figures of a report say, and what follows from them by the same calculation as on every sheet. */
import { assess } from '../../calc/assess.ts';
import type { Check, MoistAir } from '../../calc/types.ts';
import { tonOfRefrigeration } from '../../calc/units.ts';
import { said } from '../choices.ts';
import { entered } from '../entered.ts';
import { measuredTest } from '../measuredTest.ts';
import type { Job } from '../types.ts';
import { joinReadReport } from './join.ts';
import type { ReportLineId } from './lines.ts';

joinReadReport();

/** SI; `null` where the report shows no such figure, or none that can be read. */
export interface ReportFacts {
  readonly capacity: number | null;
  readonly expected: number | null;
  readonly nominal: number | null;
  readonly share: number | null;
  readonly shareOf: 'hereAndNow' | 'nameplate' | 'unsaid' | null;
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly airflow: number | null;
  readonly airflowBy: 'measured' | 'readout' | 'rule' | 'unsaid' | null;
  readonly compared: 'yes' | 'no' | 'unsaid' | null;
  readonly static: number | null;
  /** As the report says it, and as its two temperatures give it. */
  readonly drop: number | null;
  readonly dropWorked: number | null;
  readonly entering: MoistAir | null;
  readonly leaving: MoistAir | null;
  /** The capacity that both airs and the airflow come to, between its ends. */
  readonly worked: { readonly total: number; readonly low: number; readonly high: number } | null;
  /** m³/s for each ton of the nameplate. */
  readonly perTon: number | null;
  readonly usual: (code: Check['code']) => readonly [number, number];
  /** Lines that were answered with "not on mine". */
  readonly absent: ReadonlySet<ReportLineId>;
}

/** How far an airflow may be out, half-width, by what the report says of it. Common practice, no source. */
const airflowLimits = { measured: 0.1, readout: 0.1, rule: 0.15, unsaid: 0.15 } as const;

/** The facts of a report whose figures stand in a record of their own. */
export function reportFacts(job: Job, absent: ReadonlySet<ReportLineId>): ReportFacts {
  const airflowBy = said(job, 'report.airflowBy');
  const { test } = measuredTest(job);
  const limit = airflowLimits[airflowBy ?? 'unsaid'];
  const found = assess({ ...test, airflow: { ...test.airflow, limit } });
  const [entering, leaving] = [found.entering, found.leaving].map((one) => (one.ok ? one.value : null));
  const { total } = found.ranges;
  const [low, high] = [entered(job, 'report.low'), entered(job, 'report.high')];
  const [inAir, outAir] = [test.entering.dryBulb, test.leaving.dryBulb];
  const { nominalCapacity: nominal } = test;
  const airflow = test.airflow.volumeFlow;
  const checked = (code: Check['code']) => found.checks.find((check) => check.code === code);
  return {
    capacity: entered(job, 'report.capacity'),
    expected: entered(job, 'report.expected'),
    nominal,
    share: entered(job, 'report.share'),
    shareOf: said(job, 'report.shareOf'),
    range: low === null || high === null ? null : { low: Math.min(low, high), high: Math.max(low, high) },
    airflow,
    airflowBy,
    compared: said(job, 'report.compared'),
    static: entered(job, 'report.static'),
    drop: entered(job, 'report.temperatureDrop'),
    dropWorked: inAir === null || outAir === null ? null : inAir - outAir,
    entering: entering ?? null,
    leaving: leaving ?? null,
    worked:
      found.measured.ok && total
        ? { total: found.measured.value.total, low: Math.max(0, total.interval.low), high: total.interval.high }
        : null,
    perTon:
      airflow === null || nominal === null
        ? null
        : (checked('airflowPerCapacity')?.value ?? (airflow * tonOfRefrigeration) / nominal),
    usual: (code) => checked(code)?.usual ?? [0, 0],
    absent,
  };
}
