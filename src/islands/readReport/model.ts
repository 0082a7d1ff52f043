/**
 * The figures of somebody's report: a record of its own that is a visitor on this page, so that fields work as everywhere and
 * nothing of it reaches the jobs of this device. A reload of the page finds it again; closing the page ends it.
 */
import { effect, signal } from '@preact/signals';
import { emptyJob } from '~/job/edit.ts';
import { joinReadReport } from '~/job/readReport/join.ts';
import { type ReportLineId, reportLines } from '~/job/readReport/lines.ts';
import { joinReadReportWords } from '~/words/en/readReport.ts';
import { edit, job, show } from '../jobStore.ts';

joinReadReport();
joinReadReportWords();

/** Lines that were answered with "not on mine". */
export const absent = signal<ReadonlySet<ReportLineId>>(new Set());

const place = 'ton-for-ton.report';
const fresh = () => emptyJob('report');

/** Says that a line is not on the report, or that it is after all. What was typed in it is taken back. */
export function setAbsent(id: ReportLineId, isAbsent: boolean): void {
  const next = new Set(absent.value);
  if (isAbsent) next.add(id);
  else next.delete(id);
  absent.value = next;
  const line = reportLines.find((one) => one.id === id);
  if (!isAbsent || !line) return;
  const { entered, chosen } = job.value;
  edit(
    ...line.figures.filter((key) => entered[key]).map((key) => ({ slot: 'entered', key, to: undefined }) as const),
    ...('choice' in line && chosen[line.choice] ? [{ slot: 'chosen', key: line.choice, to: undefined } as const] : []),
  );
}

export function startAgain(): void {
  absent.value = new Set();
  show(fresh(), 'visitor');
}

/** Puts what the page held before a reload back, and keeps what it holds from then on. Returns what ends that. */
export async function startReport(): Promise<() => void> {
  const kept = await keptHere();
  absent.value = kept.absent;
  show(kept.job, 'visitor');
  return effect(() => {
    try {
      sessionStorage.setItem(place, JSON.stringify({ job: job.value, absent: [...absent.value] }));
    } catch {
      // Then a reload begins anew.
    }
  });
}

async function keptHere() {
  const none = { job: fresh(), absent: new Set<ReportLineId>() };
  try {
    const text = sessionStorage.getItem(place);
    if (text === null) return none;
    const { readJob } = await import('~/job/schema.ts');
    const { job: record, absent: lines } = JSON.parse(text);
    const read = readJob(record);
    const known = reportLines.map(({ id }) => id).filter((id) => Array.isArray(lines) && lines.includes(id));
    return read.ok ? { job: read.job, absent: new Set<ReportLineId>(known) } : none;
  } catch {
    return none;
  }
}
