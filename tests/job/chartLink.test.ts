import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { decodeStates } from '../../src/job/decodeStates.ts';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, emptyJob, typed } from '../../src/job/edit.ts';
import { encodeStates } from '../../src/job/encodeStates.ts';
import { processesOf } from '../../src/job/processes.ts';
import { addReading } from '../../src/job/readings.ts';
import { readJob } from '../../src/job/schema.ts';
import { jobAir, namedStates } from '../../src/job/states.ts';
import type { Job } from '../../src/job/types.ts';
import { chartWith } from './charts.ts';
import { jobWith } from './jobs.ts';

const readings = (dryBulb: string, humidity: string, of: 'entering' | 'leaving') => ({
  [`${of}.dryBulb`]: [dryBulb, 'degF'],
  [`${of}.relativeHumidity`]: [humidity, 'percent'],
});
const base = jobWith({
  ...readings('75', '50', 'entering'),
  ...readings('56', '88', 'leaving'),
  altitude: ['5,000', 'ft'],
});
const job = chartWith(
  [{ name: 'Outdoor air', dryBulb: '95', wetBulb: '75' }],
  [
    { kind: 'mixing', from: 'a', with: 'entering', airflow: '400', secondAirflow: '0.4 kg/s' },
    { kind: 'heating', from: 'p1', endDryBulb: '110', airflow: '1200' },
  ],
  'ip',
  base,
);
const link =
  '?v=1&r=75F,50rh&s=56F,88rh&a=95F,75Fwb,Outdoor+air&p1=mixing,a,r,,,400cfm,0.4kgs&p2=heating,p1,,,110F,1200cfm&z=5000ft';

const chartOf = (query: string) => {
  const read = decodeStates(query);
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.chart;
};
/** Everything that a chart shows of a job. */
const shown = (of: Job) => ({
  entering: jobAir(of, 'entering'),
  leaving: jobAir(of, 'leaving'),
  states: namedStates(of).map(({ key, name, measure, air }) => ({ key, name, measure, air })),
  processes: processesOf(of).map(({ key, kind, outcome }) => ({ key, kind, outcome })),
});

test('a link can be read by a person, and holds what is not usual only', () => {
  expect(encodeStates({ job, system: 'ip', families: null })).toBe(link);
  expect(encodeStates({ job: emptyJob('x'), system: 'ip', families: null })).toBe('?v=1');
  expect(encodeStates({ job: emptyJob('x'), system: 'si', families: ['enthalpy'] })).toBe('?v=1&u=si&on=enthalpy');
  expect(encodeStates({ job: demoJob, system: 'ip', families: null })).toBe('?v=1&i=1&r=75F,50rh&s=56F,88rh');
});

test('a link of version 1 gives the chart that it was made of', () => {
  const chart = chartOf(link);
  expect(shown(chart.job)).toEqual(shown(job));
  expect(readJob(chart.job)).toEqual({ ok: true, job: chart.job });
});

describe('any chart', () => {
  const text = fc.string({
    maxLength: 20,
    unit: fc.constantFrom('a', 'B', ' ', ',', '&', '=', '%', '+', '#', 'é', '1'),
  });
  const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => (n / 10).toFixed(1));
  const state = fc.oneof(
    fc.record({ name: text, dryBulb: tenths(600, 1100), relativeHumidity: tenths(50, 1000) }),
    fc.record({ name: text, dryBulb: tenths(700, 1100), wetBulb: tenths(500, 690) }),
    fc.record({ name: text, dryBulb: tenths(700, 1100), dewPoint: tenths(300, 690) }),
    fc.record({ name: text, dryBulb: tenths(700, 1100), humidityRatio: tenths(100, 900) }),
  );
  const point = fc.constantFrom('a', 'b', 'c', 'entering', 'p1', '');
  const flow = fc.constantFrom('', '1200', '1,200.5', '0.5 kg/s', '900 m³/h');
  const process = fc.record({
    kind: fc.constantFrom('drying', 'cooling', 'heating', 'mixing'),
    from: point,
    with: point,
    to: point,
    endDryBulb: fc.oneof(tenths(500, 1200), fc.constant('')),
    airflow: flow,
    secondAirflow: flow,
  });
  const chart = fc.record({
    states: fc.array(state, { maxLength: 8 }),
    processes: fc.array(process, { maxLength: 8 }),
    system: fc.constantFrom('ip' as const, 'si' as const),
    own: fc.constantFrom(base, emptyJob('x')),
  });

  it('comes back out of its link', () => {
    fc.assert(
      fc.property(chart, ({ states, processes, system, own }) => {
        const made = chartWith(states, processes, 'ip', own);
        const query = encodeStates({ job: made, system, families: ['wetBulb'] });
        const back = chartOf(query);
        expect(shown(back.job)).toEqual(shown(made));
        expect(back).toMatchObject({ system, families: ['wetBulb'] });
        expect(encodeStates(back)).toBe(query);
      }),
      { numRuns: 300 },
    );
  });

  it('comes back where figures were typed in the other system', () => {
    const si = chartWith([{ dryBulb: '24,5', relativeHumidity: '50' }], [], 'si', jobWith({ altitude: ['1600', 'm'] }));
    expect(shown(chartOf(encodeStates({ job: si, system: 'ip', families: null })).job)).toEqual(shown(si));
  });
});

test('several readings travel as their mean', () => {
  const first = jobWith(readings('75', '50', 'entering') as never);
  const listed = applyEdits(first, addReading(first, 'entering'));
  const both = applyEdits(listed, [typed(listed, 'entering.dryBulb', '76', 'degF')]);
  expect(encodeStates({ job: both, system: 'ip', families: null })).toBe('?v=1&r=75.5F,50rh');
});

test('figures that cannot be read stay behind, and the rest travels', () => {
  const odd = chartWith([
    { dryBulb: 'warm', relativeHumidity: '50' },
    { dryBulb: '75', relativeHumidity: '50' },
  ]);
  expect(encodeStates({ job: odd, system: 'ip', families: null })).toBe('?v=1&b=75F,50rh');
});

test.each([
  ['?v=2&a=75F,50rh', 'newer', 'v'],
  ['?v=99999', 'newer', 'v'],
  ['?v=', 'broken', 'v'],
  ['?v=one', 'broken', 'v'],
  ['?v=-1', 'broken', 'v'],
  ['?a=75F,50rh', 'broken', 'v'],
  ['?v=1&a=75,50', 'broken', 'a'],
  ['?v=1&a=75F', 'broken', 'a'],
  ['?v=1&a=75F,50rh&a=76F,50rh', 'broken', 'a'],
  ['?v=1&a=NaNF,50rh', 'broken', 'a'],
  ['?v=1&a=1e3F,50rh', 'broken', 'a'],
  ['?v=1&a=999F,50rh', 'broken', 'a'],
  ['?v=1&a=75F,150rh', 'broken', 'a'],
  ['?v=1&a=75F,50toString', 'broken', 'a'],
  ['?v=1&a=75constructor,50rh', 'broken', 'a'],
  [`?v=1&a=75F,50rh,${'x'.repeat(41)}`, 'broken', 'a'],
  ['?v=1&r=75F,50Fdp', 'broken', 'r'],
  ['?v=1&r=75F,50rh,Room', 'broken', 'r'],
  ['?v=1&r=75F,50rh&s=56F,54Fwb', 'broken', 's'],
  ['?v=1&p1=boiling,a', 'broken', 'p1'],
  ['?v=1&p1=heating,q', 'broken', 'p1'],
  ['?v=1&p1=heating,a,,,110F,much', 'broken', 'p1'],
  ['?v=1&p1=heating,a,,,110F,1cfm,1cfm,1cfm', 'broken', 'p1'],
  ['?v=1&z=99999ft', 'broken', 'z'],
  ['?v=1&z=5F', 'broken', 'z'],
  ['?v=1&p=2inHg', 'broken', 'p'],
])('%s is refused: %s at %j', (query, reason, part) => {
  expect(decodeStates(query)).toEqual({ ok: false, reason, part });
});

test('a link longer than any of ours is refused unread', () => {
  expect(decodeStates(`?v=1&x=${'y'.repeat(6000)}`)).toEqual({ ok: false, reason: 'tooLong', part: '' });
});

test('keys without a meaning are passed over, and families are named, not trusted', () => {
  expect(chartOf('?v=1&utm=x&class&__proto__=1&a=75F,50rh&on=wetBulb,<script>')).toMatchObject({
    families: ['wetBulb', '<script>'],
  });
});

test('no query makes it throw, and what it takes is a sound job', () => {
  const token = fc.constantFrom(
    '75F',
    '50rh',
    'a',
    'r',
    'p1',
    'mixing',
    ',',
    '',
    '-',
    'é',
    '%',
    '1e9',
    '400cfm',
    '5000ft',
  );
  const part = fc.tuple(
    fc.constantFrom('a', 'b', 'h', 'r', 's', 'p1', 'p8', 'z', 'p', 'on', 'u', 'i', 'q'),
    fc.array(token, { maxLength: 8 }),
  );
  const query = fc.oneof(
    fc.string({ maxLength: 200 }),
    fc
      .array(part, { maxLength: 10 })
      .map((parts) => `?v=1&${parts.map(([key, tokens]) => `${key}=${tokens.join(',')}`).join('&')}`),
  );
  fc.assert(
    fc.property(query, (text) => {
      const read = decodeStates(text);
      if (read.ok) expect(readJob(JSON.parse(JSON.stringify(read.chart.job))).ok).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
