/** What a report leaves out, and which three questions would tell most. */

import type { ReportFacts } from './facts.ts';
import { findingsOf, isOfNameplate } from './findings.ts';
import type { ReportLineId } from './lines.ts';

/** What is missed most on a report, the first most of all. */
const missedMost = [
  'expected',
  'range',
  'airflow',
  'returnHumidity',
  'supplyHumidity',
  'capacity',
  'outdoors',
  'compared',
  'static',
] as const satisfies readonly ReportLineId[];

export type Missing = (typeof missedMost)[number];

/** Of the lines that are not on the report those that matter. */
export function missingOf({ absent, expected, range }: ReportFacts): readonly Missing[] {
  const given: Partial<Record<Missing, boolean>> = { expected: expected !== null, range: range !== null };
  return missedMost.filter((line) => absent.has(line) && !given[line]);
}

type Ask = (facts: ReportFacts) => boolean;
const has = (facts: ReportFacts, ...codes: readonly string[]) =>
  findingsOf(facts).some(({ code }) => codes.includes(code));

/** When each question is worth asking; the first three that are get asked. The last ones always are. */
const asks = {
  disagrees: (facts) => has(facts, 'disagrees', 'shareDiffers', 'dropDiffers'),
  expected: (facts) => isOfNameplate(facts) || facts.absent.has('expected') || has(facts, 'noExpectation'),
  tooHigh: (facts) => has(facts, 'higherThanItCanMake'),
  airflow: ({ airflow, airflowBy, absent }) => absent.has('airflow') || (airflow !== null && airflowBy !== 'measured'),
  range: ({ range, absent }) => !range && absent.has('range'),
  humidity: ({ absent }) => absent.has('returnHumidity') || absent.has('supplyHumidity'),
  probes: ({ compared, absent }) => absent.has('compared') || compared === 'no' || compared === 'unsaid',
  static: (facts) => has(facts, 'staticHigh'),
  below: (facts) => has(facts, 'allBelow'),
  table: () => true,
  steady: () => true,
  again: () => true,
} as const satisfies Record<string, Ask>;

export type Question = keyof typeof asks;

/** Three questions, the one that tells most first. */
export function questionsOf(facts: ReportFacts): readonly Question[] {
  return (Object.keys(asks) as Question[]).filter((question) => asks[question](facts)).slice(0, 3);
}
