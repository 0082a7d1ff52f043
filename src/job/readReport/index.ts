/** A report of somebody else's, judged by its figures: what they show, what they cannot, what is missing, what to ask. */
import type { Job } from '../types.ts';
import { reportFacts } from './facts.ts';
import { type Finding, findingsOf } from './findings.ts';
import type { ReportLineId } from './lines.ts';
import { type Missing, missingOf, type Question, questionsOf } from './questions.ts';

export interface ReadReport {
  readonly findings: readonly Finding[];
  readonly missing: readonly Missing[];
  readonly questions: readonly Question[];
}

/** Judges the figures that stand in a record of their own; `absent` are the lines answered with "not on mine". Never throws. */
export function readReport(job: Job, absent: ReadonlySet<ReportLineId>): ReadReport {
  const facts = reportFacts(job, absent);
  return { findings: findingsOf(facts), missing: missingOf(facts), questions: questionsOf(facts) };
}
