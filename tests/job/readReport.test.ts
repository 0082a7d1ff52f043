/** What figures of a report show: each case is a report as somebody may hold it, and what has to be said of it. */
import { describe, expect, test } from 'vitest';
import { assess } from '../../src/calc/index.ts';
import { emptyJob } from '../../src/job/edit.ts';
import { reportFacts } from '../../src/job/readReport/facts.ts';
import { findingsOf } from '../../src/job/readReport/findings.ts';
import { readReport } from '../../src/job/readReport/index.ts';
import { type ReportLineId, reportLines } from '../../src/job/readReport/lines.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { ChoiceKey, Entered, Job, QuantityKey, UnitKey } from '../../src/job/types.ts';
import { findingWords, missingWords, questionWords } from '../../src/words/en/readReportFindings.ts';

type Figures = Readonly<Partial<Record<QuantityKey, readonly [text: string, unit: UnitKey]>>>;
type Chosen = Readonly<Partial<Record<ChoiceKey, string>>>;

function reportOf(figures: Figures, chosen: Chosen = {}): Job {
  const entered = Object.entries(figures).map(([key, [text, unit]]) => {
    return [key, { text, unit, origin: 'typed' } satisfies Entered];
  });
  return { ...emptyJob('report'), entered: Object.fromEntries(entered), chosen };
}

const airs: Figures = {
  'entering.dryBulb': ['75', 'degF'],
  'entering.relativeHumidity': ['50', 'percent'],
  'leaving.dryBulb': ['56', 'degF'],
  'leaving.relativeHumidity': ['88', 'percent'],
};
const flow: Figures = { 'airflow.volumeFlow': ['1,200', 'cfm'], nominalCapacity: ['3', 'ton'] };

interface Case {
  readonly title: string;
  readonly figures: Figures;
  readonly chosen?: Chosen;
  readonly absent?: readonly ReportLineId[];
  readonly says: readonly string[];
  readonly not?: readonly string[];
  readonly asks?: readonly string[];
}

const cases: readonly Case[] = [
  {
    title: 'a drop alone is usual, and says nothing about capacity',
    figures: { 'report.temperatureDrop': ['19', 'degFStep'] },
    absent: ['airflow', 'returnHumidity', 'supplyHumidity', 'range', 'expected'],
    says: ['dropUsual', 'dropAlone'],
    not: ['worksOut'],
    asks: ['expected', 'airflow', 'range'],
  },
  {
    title: 'a drop that is high is no sign of much cooling',
    figures: { 'report.temperatureDrop': ['27', 'degFStep'] },
    says: ['dropHigh', 'dropAlone'],
  },
  {
    title: 'both airs and the airflow come to a capacity with a range, and the drop no longer stands alone',
    figures: { ...airs, ...flow },
    says: ['worksOut', 'dropUsual', 'airflowUsual'],
    not: ['dropAlone', 'nameplateAlone'],
  },
  {
    title: 'a capacity that its own readings do not come to is named',
    figures: { ...airs, ...flow, 'report.capacity': ['44,000', 'btuh'] },
    says: ['worksOut', 'disagrees'],
    asks: ['disagrees', 'expected', 'airflow'],
  },
  {
    title: 'a capacity that they do come to fits',
    figures: { ...airs, ...flow, 'report.capacity': ['29,000', 'btuh'] },
    chosen: { 'report.airflowBy': 'measured', 'report.compared': 'yes' },
    says: ['agrees'],
    not: ['disagrees'],
    asks: ['expected', 'table', 'steady'],
  },
  {
    title: 'a share of the nameplate is the wrong comparison, as it says itself',
    figures: { 'report.share': ['81', 'percent'] },
    chosen: { 'report.shareOf': 'nameplate' },
    absent: ['range'],
    says: ['ofNameplate', 'noRange'],
    asks: ['expected', 'range', 'table'],
  },
  {
    title: 'and so it is where its figures show it: 29,200 of 36,000 is 81 %',
    figures: {
      'report.capacity': ['29,200', 'btuh'],
      nominalCapacity: ['3', 'ton'],
      'report.share': ['81', 'percent'],
    },
    chosen: { 'report.shareOf': 'unsaid' },
    says: ['ofNameplate'],
  },
  {
    title: 'a share of what it should make is not held for one',
    figures: {
      'report.capacity': ['29,200', 'btuh'],
      'report.expected': ['31,400', 'btuh'],
      nominalCapacity: ['3', 'ton'],
      'report.share': ['93', 'percent'],
    },
    chosen: { 'report.shareOf': 'hereAndNow' },
    says: [],
    not: ['ofNameplate', 'shareDiffers', 'noExpectation', 'nameplateAlone'],
  },
  {
    title: 'a share that its two capacities do not come to',
    figures: {
      'report.capacity': ['29,200', 'btuh'],
      'report.expected': ['31,400', 'btuh'],
      'report.share': ['98', 'percent'],
    },
    chosen: { 'report.shareOf': 'hereAndNow' },
    says: ['shareDiffers'],
  },
  {
    title: 'more than a system can make',
    figures: { 'report.share': ['118', 'percent'] },
    chosen: { 'report.shareOf': 'hereAndNow' },
    says: ['higherThanItCanMake'],
    asks: ['tooHigh', 'table', 'steady'],
  },
  {
    title: 'a range with the line inside cannot tell',
    figures: { 'report.low': ['85', 'percent'], 'report.high': ['101', 'percent'] },
    says: ['lineInside'],
  },
  {
    title: 'a range past the line, its ends in either order',
    figures: { 'report.low': ['107', 'percent'], 'report.high': ['90', 'percent'] },
    says: ['allAbove'],
  },
  {
    title: 'a range below the line',
    figures: { 'report.low': ['71', 'percent'], 'report.high': ['85', 'percent'] },
    says: ['allBelow'],
    asks: ['below', 'table', 'steady'],
  },
  {
    title: 'a high static pressure is named, and is no airflow',
    figures: { 'report.static': ['0.95', 'inwcDuct'] },
    says: ['staticHigh', 'staticAlone'],
    asks: ['static', 'table', 'steady'],
  },
  { title: 'a static pressure below that', figures: { 'report.static': ['0.5', 'inwcDuct'] }, says: ['staticBelow'] },
  {
    title: 'an airflow by a rule is nobody’s measurement',
    figures: { ...airs, ...flow },
    chosen: { 'report.airflowBy': 'rule' },
    says: ['airflowByRule', 'airflowUsual'],
  },
  {
    title: 'little air for the size',
    figures: { 'airflow.volumeFlow': ['850', 'cfm'], nominalCapacity: ['3', 'ton'] },
    says: ['airflowLow', 'nameplateAlone'],
  },
  {
    title: 'a drop that its two temperatures do not make',
    figures: { ...airs, 'report.temperatureDrop': ['14', 'degFStep'] },
    says: ['dropDiffers', 'dropLow'],
  },
  {
    title: 'temperatures without humidities do not show the drying',
    figures: { 'entering.dryBulb': ['75', 'degF'], 'leaving.dryBulb': ['56', 'degF'] },
    absent: ['returnHumidity', 'supplyHumidity'],
    says: ['noHumidity', 'dropAlone'],
  },
  {
    title: 'a supply air too dry for a wet coil',
    figures: { ...airs, 'leaving.relativeHumidity': ['62', 'percent'] },
    says: ['supplyDry'],
  },
  {
    title: 'a supply air as damp as a wetted probe',
    figures: { ...airs, 'leaving.relativeHumidity': ['100', 'percent'] },
    says: ['supplyWet'],
  },
  {
    title: 'two capacities without a share come to one',
    figures: { 'report.capacity': ['29,200', 'btuh'], 'report.expected': ['31,400', 'btuh'] },
    says: ['shareIs'],
    not: ['noExpectation'],
    asks: ['table', 'steady', 'again'],
  },
  {
    title: 'much air for the size, found nobody says how, by probes that nobody compared',
    figures: { ...airs, 'airflow.volumeFlow': ['1,500', 'cfm'], nominalCapacity: ['3', 'ton'] },
    chosen: { 'report.airflowBy': 'unsaid', 'report.compared': 'unsaid' },
    says: ['airflowHigh', 'airflowUnsaid', 'notCompared'],
    asks: ['airflow', 'probes', 'table'],
  },
  { title: 'nothing at all', figures: {}, says: [], not: ['dropAlone', 'noExpectation', 'noRange'] },
];

describe('a report is judged by its figures', () => {
  test.each(cases)('$title', ({ figures, chosen, absent = [], says, not = [], asks }) => {
    const { findings, questions } = readReport(reportOf(figures, chosen), new Set(absent));
    const codes = findings.map(({ code }) => code);
    for (const code of says) expect(codes).toContain(code);
    for (const code of not) expect(codes).not.toContain(code);
    if (asks) expect(questions).toEqual(asks);
    expect(questions).toHaveLength(3);
    expect(new Set(codes).size).toBe(codes.length);
  });

  test('the capacity of its readings is that of every sheet, and lies between its ends', () => {
    const job = reportOf({ ...airs, ...flow });
    const { worked } = reportFacts(job, new Set());
    const { measured } = assess(toTest(job).test);
    expect(measured.ok && measured.value.total).toBe(worked?.total);
    expect(worked?.low).toBeLessThan(worked?.total ?? 0);
    expect(worked?.high).toBeGreaterThan(worked?.total ?? 0);
  });

  test('an airflow that nobody measured widens the range', () => {
    const width = (by: string) => {
      const { worked } = reportFacts(reportOf({ ...airs, ...flow }, { 'report.airflowBy': by }), new Set());
      return (worked?.high ?? 0) - (worked?.low ?? 0);
    };
    expect(width('rule')).toBeGreaterThan(1.1 * width('measured'));
  });

  test('nonsense in any field is like an empty field', () => {
    const keys = reportLines.flatMap(({ figures }) => [...figures]);
    const nonsense = Object.fromEntries(keys.map((key) => [key, ['🌡 <b>', 'degF'] as const]));
    expect(readReport(reportOf(nonsense), new Set()).findings).toEqual([]);
  });

  test('every finding of the cases, everything missing and every question has its words', () => {
    const codes = cases.flatMap(({ figures, chosen, absent = [] }) =>
      findingsOf(reportFacts(reportOf(figures, chosen), new Set(absent))).map(({ code }) => code),
    );
    expect([...new Set(codes)].filter((code) => !(code in findingWords))).toEqual([]);
    // Nothing is worded that no rule says.
    expect(Object.keys(findingWords).filter((code) => !codes.includes(code))).toEqual([]);
    expect(Object.values({ ...missingWords, ...questionWords }).every((text) => text.length > 10)).toBe(true);
  });

  test('of what is not on a report that is missing which matters, the worst first', () => {
    const all = new Set(reportLines.map(({ id }) => id));
    const { missing } = readReport(reportOf({}), all);
    expect(missing[0]).toBe('expected');
    expect(missing).not.toContain('nameplate');
    expect(missing.length).toBeGreaterThan(5);
  });
});
